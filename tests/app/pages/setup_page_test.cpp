// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <QAbstractButton>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>

#include "app/pages/setup/choose_page.h"
#include "app/pages/setup/setup_page.h"
#include "app/pages/start/start_page.h"
#include "app/shell/main_window.h"
#include "app/shell/no_logbook_page.h"
#include "app/widgets/row_list.h"
#include "app/widgets/secret_line.h"
#include "core/base/file.h"
#include "tests/app/pages/shop_window.h"
#include "tests/app/shop.h"

using namespace taut;
using namespace taut::app;
using namespace taut::app::shop;

namespace {

constexpr const char* kPassphrase = "four grey herons wait";

}  // namespace

TEST_CASE("a path without a logbook makes none until it is asked for, and then its first supervisor is enrolled")
{
    Window w(false);
    until([&] { return visible<NoLogbookPage>(w.window) != nullptr && !w.session().busy(); }, "the page says so");
    const auto file = w.session().options().logbook;
    CHECK_FALSE(std::filesystem::exists(file));
    CHECK(w.said().contains(QStringLiteral("There is no logbook here yet")));
    w.click("Begin a new logbook here");
    until([&] { return visible<ChoosePage>(w.window) != nullptr && !w.session().busy(); }, "it asks who");
    CHECK(std::filesystem::exists(file));
    for (const char* door : {"Run", "History", "Shop"})
        CHECK_FALSE(called<QAbstractButton>(w.window, door)->isEnabled());

    w.type("Name", QStringLiteral("Ines Falk"));
    w.chooseSecrets("4821", kPassphrase);
    // A slip of the fingers is said at its field, and nothing else is typed anew.
    auto* again = called<QLineEdit>(w.window, "PIN, once more");
    again->setText(QStringLiteral("4822"));
    w.click("Begin the logbook as its supervisor");
    CHECK(w.said().contains(QStringLiteral("The two PINs are not the same.")));
    CHECK(w.window.focusWidget() == again);
    again->setText(QStringLiteral("4821"));
    w.click("Begin the logbook as its supervisor");
    until([&] { return w.session().actor() && !w.session().busy(); }, "enrolled and signed in");
    CHECK(w.session().actor()->role() == people::Role::Supervisor);
    // What the PC keeps for itself is asked first.
    until([&] { return visible<QAbstractButton>(w.window, "pcDone") != nullptr; }, "the PC is asked about");
    visible<QAbstractButton>(w.window, "pcDone")->click();
    until([&] { return visible<StartPage>(w.window) != nullptr; }, "it goes on");
    CHECK(w.said().contains(QStringLiteral("knows no press")));
    CHECK(w.session().definitions("procedure").size() == 1);
    // What was chosen can be read nowhere in the file.
    const std::string bytes = readFile(file).value();
    CHECK(bytes.find(kPassphrase) == std::string::npos);
    CHECK(bytes.find("Ines Falk") != std::string::npos);
}

TEST_CASE("a weak PIN is refused where it is chosen, with the reason, and nothing typed is lost")
{
    Window w(false);
    until([&] { return visible<NoLogbookPage>(w.window) != nullptr && !w.session().busy(); }, "the page says so");
    w.click("Begin a new logbook here");
    until([&] { return visible<ChoosePage>(w.window) != nullptr && !w.session().busy(); }, "it asks who");
    w.type("Name", QStringLiteral("Ines Falk"));
    w.chooseSecrets("1234", kPassphrase);
    w.click("Begin the logbook as its supervisor");
    until([&] { return w.said().contains(QStringLiteral("straight run")) && !w.session().busy(); }, "refused");
    CHECK_FALSE(w.session().actor());
    CHECK(called<QLineEdit>(w.window, "Passphrase")->text() == QString::fromLatin1(kPassphrase));
}

TEST_CASE("somebody is enrolled with a code that is shown once, and chooses what nobody else knows")
{
    Window w(true);
    signIn(w.session(), "p-1");
    w.click("Shop");
    REQUIRE(visible<SetupPage>(w.window));
    w.click("Enrol somebody");
    w.type("Name", QStringLiteral("Wim Aldous"));
    auto* role = called<QComboBox>(w.window, "Role");
    REQUIRE(role);
    role->setCurrentIndex(role->findData(QStringLiteral("operator")));
    w.type("Passphrase, or badge", QStringLiteral("nine slow barges at dusk"));
    w.click("Enrol them");
    until([&] { return visible<QLabel>(w.window, "code") != nullptr && !w.session().busy(); }, "the code is shown");
    const QString code = visible<QLabel>(w.window, "code")->text();
    CHECK(code.size() == 9);
    w.click("Done: take it off the screen");
    for (const auto* label : w.window.findChildren<QLabel*>()) CHECK_FALSE(label->text().contains(code));

    w.lock();
    auto* who = called<QComboBox>(w.window, "Who are you?");
    REQUIRE(who);
    who->setCurrentIndex(who->findText(QStringLiteral("Wim Aldous")));
    CHECK(called<QLineEdit>(w.window, "Your PIN") == nullptr);
    w.click("Choose PIN and passphrase");
    REQUIRE(visible<ChoosePage>(w.window));
    w.type("First-use code", QStringLiteral("aaaa-aaaa"));
    w.chooseSecrets("7391", kPassphrase);
    w.click("Choose, and sign in");
    until([&] { return w.said().contains(QStringLiteral("do not belong together")) && !w.session().busy(); },
          "refused");
    called<QLineEdit>(w.window, "First-use code")->setText(code);
    w.click("Choose, and sign in");
    until([&] { return w.session().actor() && !w.session().busy(); }, "signed in");
    CHECK(w.session().actor()->name() == "Wim Aldous");
    // An operator changes nobody here.
    w.click("Shop");
    for (const char* name : {"Enrol somebody", "Give a new first-use code", "Change the role", "Take out of service"})
        CHECK_FALSE(called<QAbstractButton>(w.window, name)->isEnabled());
    CHECK(called<QAbstractButton>(w.window, "Make me a badge")->isEnabled());
}

TEST_CASE("a badge is made once and signs, with its PIN, wherever a passphrase is asked for")
{
    Window w(true);
    signIn(w.session(), "p-1");
    w.click("Shop");
    w.click("Make me a badge");
    for (const char* name : {"PIN of the badge", "PIN of the badge, once more"}) w.type(name, QStringLiteral("402917"));
    w.type("Passphrase, or badge", QStringLiteral("nine slow barges at dusk"));
    QSignalSpy made(w.window.session(), &Session::badgeMade);
    w.click("Make the badge");
    until([&] { return !made.isEmpty() && !w.session().busy(); }, "the badge is made");
    const QString code = made.at(0).at(0).toString();
    CHECK(called<QWidget>(w.window, "The badge as a scanner reads it"));
    w.click("Done: take it off the screen");

    w.click("Enrol somebody");
    w.type("Name", QStringLiteral("Wim Aldous"));
    called<QComboBox>(w.window, "Role")->setCurrentIndex(0);
    // As a scanner types it: the code and Enter, then the person their PIN.
    auto* secret = called<QLineEdit>(w.window, "Passphrase, or badge");
    REQUIRE(secret);
    secret->setFocus();
    QTest::keyClicks(secret, code);
    QTest::keyClick(secret, Qt::Key_Return);
    CHECK(secret->text().isEmpty());
    CHECK(secret->accessibleName() == QStringLiteral("PIN of this badge"));
    QTest::keyClicks(secret, QStringLiteral("402918"));
    w.click("Enrol them");
    until([&] { return w.said().contains(QStringLiteral("badge and PIN do not open")) && !w.session().busy(); },
          "a wrong PIN is refused");
    QTest::keyClicks(secret, code);
    QTest::keyClick(secret, Qt::Key_Return);
    QTest::keyClicks(secret, QStringLiteral("402917"));
    QTest::keyClick(secret, Qt::Key_Return);
    until([&] { return visible<QLabel>(w.window, "code") != nullptr && !w.session().busy(); }, "enrolled by badge");
}

TEST_CASE("whoever is out of service is gone from the door, and the last supervisor stays")
{
    Window w(true);
    signIn(w.session(), "p-1");
    w.click("Shop");
    auto* list = w.window.findChild<SetupPage*>()->findChild<RowList*>(QStringLiteral("people"));
    REQUIRE(list->choose(QStringLiteral("p-2")));
    w.click("Take out of service");
    w.type("Passphrase, or badge", QStringLiteral("nine slow barges at dusk"));
    QSignalSpy changed(w.window.session(), &Session::shopChanged);
    // The button of the question has the act's own words.
    QAbstractButton* accept = nullptr;
    for (auto* b : w.window.findChildren<QAbstractButton*>(QStringLiteral("accept")))
        if (b->isVisible()) accept = b;
    REQUIRE(accept);
    QTest::mouseClick(accept, Qt::LeftButton);
    until([&] { return !changed.isEmpty() && !w.session().busy(); }, "out of service");
    w.lock();
    auto* who = called<QComboBox>(w.window, "Who are you?");
    REQUIRE(who);
    CHECK(who->findData(QStringLiteral("p-2")) < 0);
    CHECK(who->findData(QStringLiteral("p-1")) >= 0);
}

TEST_CASE("a press is taken in from its file, and what is wrong with a file is said before anything is kept")
{
    Window w(false);
    until([&] { return visible<NoLogbookPage>(w.window) != nullptr && !w.session().busy(); }, "the page says so");
    w.session().beginLogbook(w.session().options().logbook);
    until([&] { return w.session().isOpen() && !w.session().busy(); }, "open");
    w.session().enrolFirst(QStringLiteral("Ines Falk"), {"4821", kPassphrase});
    until([&] { return w.session().actor() && !w.session().busy(); }, "enrolled");
    const auto resources = w.session().options().resources;
    w.session().takeIn({resources / "presses" / "north.toml", resources / "substrates.toml"});
    until([&] { return !w.session().busy(); }, "taken in");
    CHECK(w.session().definitions("press").size() == 1);
    CHECK(w.session().definitions("substrate").size() >= 4);
    QSignalSpy refused(w.window.session(), &Session::refused);
    w.session().takeIn({resources / "demo" / "people.toml"});
    until([&] { return !w.session().busy(); }, "refused");
    REQUIRE(refused.size() == 1);
    CHECK(refused.at(0).at(0).value<Finding>().code == "take_in.not_a_definition");
    // The same text again is the same edition.
    w.session().takeIn({resources / "presses" / "north.toml"});
    until([&] { return !w.session().busy(); }, "taken in again");
    CHECK(w.session().definitions("press").front().source.edition == 1);
}

TEST_CASE("a screen that nobody touches locks itself, and a touch puts it off")
{
    Window w(true);
    signIn(w.session(), "p-2");
    QTimer* idle = w.window.idleTimer();
    REQUIRE(idle->isActive());
    CHECK(idle->interval() == 10 * 60 * 1000);
    idle->setInterval(400);
    idle->start();
    for (int i = 0; i < 4; ++i) {
        QTest::qWait(150);
        QTest::keyClick(&w.window, Qt::Key_Shift);
    }
    CHECK(w.session().actor());
    until([&] { return !w.session().actor(); }, "locked");
    CHECK(called<QLineEdit>(w.window, "Your PIN"));
}

TEST_CASE("a run that somebody walked away from is interrupted, one in other hands is not")
{
    Window w(true);
    signIn(w.session(), "p-2");
    begin(w.session());
    const auto away = [&] {
        w.window.idleTimer()->start(200);
        until([&] { return !w.session().actor(); }, "locked");
    };
    const auto stops = [&] {
        std::vector<std::string> reasons;
        for (const run::Event& event : w.session().run()->events())
            if (const auto* stop = std::get_if<run::Interrupted>(&event.happening())) reasons.push_back(stop->reason);
        return reasons;
    };
    w.window.idleTimer()->start(60 * 1000);
    signIn(w.session(), "p-1");
    away();
    CHECK(stops().empty());
    CHECK(w.session().run()->phase() == run::Phase::Running);
    w.window.idleTimer()->start(60 * 1000);
    signIn(w.session(), "p-2");
    away();
    CHECK(stops() == std::vector<std::string>{"left_alone"});
    CHECK(w.session().run()->phase() == run::Phase::Interrupted);
    // Once: what is interrupted is not interrupted again.
    w.window.idleTimer()->start(60 * 1000);
    signIn(w.session(), "p-2");
    away();
    CHECK(stops().size() == 1);
}

TEST_CASE("somebody chooses another PIN and passphrase by themselves, without a supervisor")
{
    Window w(true);
    signIn(w.session(), "p-2");
    w.click("Shop");
    REQUIRE(visible<SetupPage>(w.window));
    const auto change = [&](const char* passphrase) {
        w.type("Passphrase, or badge", QString::fromLatin1(passphrase));
        w.click("Change it");
        w.done();
    };
    w.click("Change my PIN or passphrase");
    w.type("PIN until now", QStringLiteral("2806"));
    for (const char* name : {"New PIN", "New PIN, once more"}) w.type(name, QStringLiteral("1234"));
    change("copper kettle by the window");
    CHECK(w.says("straight run"));
    CHECK(w.window.focusWidget() == called<QLineEdit>(w.window, "New PIN"));
    called<QLineEdit>(w.window, "New PIN")->setText(QStringLiteral("7391"));
    change("copper kettle by the window");
    CHECK(w.says("The two PINs are not the same."));
    called<QLineEdit>(w.window, "New PIN, once more")->setText(QStringLiteral("7391"));
    change("copper kettle at the window");
    CHECK(w.says("does not open this person's key"));
    CHECK(called<QLineEdit>(w.window, "New PIN")->text() == QStringLiteral("7391"));
    const auto before = w.session().reader()->anchor()->count;
    change("copper kettle by the window");
    CHECK(w.says("Changed."));
    CHECK(w.session().reader()->anchor()->count == before + 1);
    CHECK(called<QLineEdit>(w.window, "New PIN") == nullptr);
    CHECK(visible<SetupPage>(w.window)->isAncestorOf(w.window.focusWidget()));

    w.click("Change my PIN or passphrase");
    w.type("PIN until now", QStringLiteral("2806"));
    for (const char* name : {"New passphrase", "New passphrase, once more"})
        w.type(name, QString::fromLatin1(kPassphrase));
    change("copper kettle by the window");
    CHECK(w.says("do not belong together"));  // the PIN of before
    called<QLineEdit>(w.window, "PIN until now")->setText(QStringLiteral("7391"));
    change("copper kettle by the window");
    CHECK(w.says("Changed."));
    w.lock();
    w.session().signIn(QStringLiteral("p-2"), QStringLiteral("7391"));
    until([&] { return w.session().actor() && !w.session().busy(); }, "the new PIN opens");
    // Nobody changes it for somebody else.
    auto* list = w.window.findChild<SetupPage*>()->findChild<RowList*>(QStringLiteral("people"));
    REQUIRE(list->choose(QStringLiteral("p-3")));
    CHECK_FALSE(called<QAbstractButton>(w.window, "Change my PIN or passphrase")->isEnabled());
    REQUIRE(list->choose(QStringLiteral("p-2")));
    CHECK(called<QAbstractButton>(w.window, "Change my PIN or passphrase")->isEnabled());
}
