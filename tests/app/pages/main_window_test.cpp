// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <map>
#include <memory>
#include <set>

#include <QAbstractButton>
#include <QAccessible>
#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QShortcut>

#include "app/pages/history/history_page.h"
#include "app/pages/run/run_page.h"
#include "app/pages/start/start_page.h"
#include "app/shell/main_window.h"
#include "app/shell/no_logbook_page.h"
#include "app/shell/screen_menu.h"
#include "app/widgets/controls.h"
#include "app/widgets/finding_strip.h"
#include "app/widgets/row_list.h"
#include "core/base/file.h"
#include "tests/app/pages/signed_run.h"
#include "tests/app/said.h"
#include "tests/app/shop.h"

using namespace taut;
using namespace taut::app;
using namespace taut::app::shop;

namespace {

struct Window {
    QTemporaryDir folder;
    MainWindow window;

    explicit Window(double scale = 1.0) : window(prepared(folder, scale))
    {
        window.setWindowState(Qt::WindowNoState);
        window.resize(1366, 740);
        window.show();
        window.activateWindow();
        until([&] { return session().isOpen() && !session().busy(); }, "the logbook is open");
    }
    static Session::Options prepared(const QTemporaryDir& folder, double scale)
    {
        qputenv("XDG_CONFIG_HOME", folder.path().toUtf8());  // nobody's settings are read or written
        applyTheme({false, scale, 1.0});
        return optionsIn(folder);
    }
    Session& session() { return *window.session(); }
    void type(const char* pin)
    {
        auto* field = called<QLineEdit>(window, "Your PIN");
        REQUIRE(field);
        QTest::keyClicks(field, QString::fromLatin1(pin));
        QTest::keyClick(field, Qt::Key_Return);
    }
    void click(const char* name)
    {
        auto* button = called<QAbstractButton>(window, name);
        INFO(name);
        REQUIRE(button);
        QTest::mouseClick(button, Qt::LeftButton);
    }
    [[nodiscard]] const FindingStrip* refusal() const
    {
        for (const auto* strip : window.findChildren<FindingStrip*>())
            if (strip->isVisible()) return strip;
        return nullptr;
    }
};

/// Goes round by Tab and tells which widgets had the focus.
std::set<QWidget*> roundByTab(QWidget& window)
{
    std::set<QWidget*> seen;
    for (int i = 0; i < 200; ++i) {
        QTest::keyClick(&window, Qt::Key_Tab);
        QWidget* now = window.focusWidget();
        if (!now || !seen.insert(now).second) break;
    }
    return seen;
}

/// Every letter that answers to Alt just now, and how often: what carries it, and what a label hands it on to.
std::map<QString, int> altLetters(const QWidget& window)
{
    std::map<QString, int> letters;
    const auto add = [&](const QKeySequence& keys) {
        if (!keys.isEmpty()) ++letters[keys.toString()];
    };
    for (const auto* button : window.findChildren<QAbstractButton*>())
        if (button->isVisible()) add(button->shortcut());
    for (const auto* label : window.findChildren<QLabel*>())
        if (label->isVisible() && label->buddy()) add(QKeySequence::mnemonic(label->text()));
    for (const auto* key : window.findChildren<QShortcut*>())
        if (key->isEnabled()) add(key->key());
    return letters;
}

/// Where everything stands that can be touched or typed into.
std::map<const QWidget*, QRect> places(const QWidget& window)
{
    std::map<const QWidget*, QRect> all;
    for (const QWidget* w : window.findChildren<QWidget*>())
        if (w->isVisible() && w->focusPolicy() != Qt::NoFocus) all[w] = {w->mapTo(&window, QPoint(0, 0)), w->size()};
    return all;
}

void noLetterTwice(const QWidget& window)
{
    for (const auto& [letter, count] : altLetters(window)) {
        CAPTURE(letter.toStdString());
        CHECK(count == 1);
    }
}

void everyControlIsReachedAndNamed(QWidget& window)
{
    const std::set<QWidget*> reached = roundByTab(window);
    int controls = 0;
    for (QWidget* w : window.findChildren<QWidget*>()) {
        if (!w->isVisible() || !w->isEnabled() || !(w->focusPolicy() & Qt::TabFocus)) continue;
        if (w->objectName().startsWith(QLatin1String("qt_")) || w->focusProxy()) continue;
        ++controls;
        CAPTURE(w->metaObject()->className(), w->accessibleName().toStdString(), w->objectName().toStdString());
        CHECK(reached.count(w) == 1);
        QAccessibleInterface* access = QAccessible::queryAccessibleInterface(w);
        REQUIRE(access);
        CHECK_FALSE(access->text(QAccessible::Name).isEmpty());
        if (qobject_cast<QAbstractButton*>(w) || qobject_cast<QLineEdit*>(w) || qobject_cast<QComboBox*>(w))
            CHECK(w->height() >= 44);
    }
    CHECK(controls >= 5);
}

}  // namespace

TEST_CASE("the window opens on the start page with the cursor in the PIN")
{
    Window w;
    CHECK(visible<StartPage>(w.window));
    CHECK(w.window.focusWidget() == called<QLineEdit>(w.window, "Your PIN"));
    CHECK(called<QComboBox>(w.window, "Who are you?")->count() == 5);
}

TEST_CASE("a wrong PIN signs nobody in, says so, and a right one takes the refusal away")
{
    Window w;
    settled(*visible<StartPage>(w.window));
    const auto before = places(w.window);
    w.type("0000");
    until([&] { return w.refusal() != nullptr; }, "it is refused");
    CHECK_FALSE(w.session().actor());
    CHECK(places(w.window) == before);
    CHECK(w.refusal()->visibleRegion().boundingRect() == w.refusal()->rect());
    CHECK(called<QLineEdit>(w.window, "Your PIN")->text().isEmpty());
    CHECK(w.window.focusWidget() == called<QLineEdit>(w.window, "Your PIN"));
    w.type("4417");
    until([&] { return w.session().actor().has_value() && !w.session().busy(); }, "signed in");
    CHECK(w.refusal() == nullptr);
    CHECK(called<QLineEdit>(w.window, "Your PIN") == nullptr);
    QString all;
    for (const auto* label : w.window.findChildren<QLabel*>()) all += label->text() + QLatin1Char('\n');
    CHECK(all.contains(QStringLiteral("Matteo Quill, supervisor")));
}

TEST_CASE("an empty PIN asks for it and reaches nobody")
{
    Window w;
    w.click("Sign in");
    CHECK_FALSE(w.session().busy());
    CHECK(w.window.focusWidget() == called<QLineEdit>(w.window, "Your PIN"));
}

TEST_CASE("somebody whom the logbook does not know is refused with a sentence")
{
    Window w;
    w.session().signIn(QStringLiteral("p-77"), QStringLiteral("4417"));
    until([&] { return w.refusal() != nullptr; }, "it is refused");
    CHECK_FALSE(w.session().actor());
    CHECK_FALSE(w.refusal()->text().isEmpty());
}

TEST_CASE("locking puts the cursor back into the PIN, so that the next person types at once")
{
    Window w;
    w.type("4417");
    until([&] { return w.session().actor().has_value() && !w.session().busy(); }, "signed in");
    QTest::keyClick(&w.window, Qt::Key_L, Qt::ControlModifier);
    until([&] { return !w.session().actor() && !w.session().busy(); }, "locked");
    CHECK(w.window.focusWidget() == called<QLineEdit>(w.window, "Your PIN"));
    CHECK(called<QComboBox>(w.window, "Who are you?")->currentText() == QStringLiteral("Matteo Quill"));
}

TEST_CASE("the doors are opened by mouse and by Alt and a number, and a run stands behind the first")
{
    Window w;
    w.click("History");
    CHECK(visible<HistoryPage>(w.window));
    QTest::keyClick(&w.window, Qt::Key_1, Qt::AltModifier);
    CHECK(visible<StartPage>(w.window));
    QTest::keyClick(&w.window, Qt::Key_2, Qt::AltModifier);
    CHECK(visible<HistoryPage>(w.window));
    w.click("Run");
    signIn(w.session(), "p-2");
    begin(w.session());
    CHECK(visible<RunPage>(w.window));
    w.click("History");
    CHECK(visible<RunPage>(w.window) == nullptr);
    w.click("Run");
    CHECK(visible<RunPage>(w.window));
    w.session().leaveRun();
    until([&] { return w.session().run() == nullptr && !w.session().busy(); }, "left");
    CHECK(visible<StartPage>(w.window));
}

TEST_CASE("a window closed in the middle of a run says first that the run stays open, and then quits")
{
    Window w;
    const auto asked = [&] { return visible<QPushButton>(w.window, "stay"); };
    signIn(w.session(), "p-2");
    begin(w.session());
    const QString run = QString::fromStdString(w.session().run()->id());
    QTest::qWait(0);
    QWidget* before = w.window.focusWidget();
    QTest::keyClick(&w.window, Qt::Key_Q, Qt::ControlModifier);
    until([&] { return asked() != nullptr; }, "the window asks");
    CHECK(w.window.isVisible());
    CHECK(asked()->hasFocus());
    CHECK(asked()->parentWidget()->accessibleName().contains(run));
    CHECK(asked()->parentWidget()->accessibleName().contains(QStringLiteral("goes on from the start page")));
    // Enter, still on its way from the step, stays.
    QTest::keyClick(w.window.focusWidget(), Qt::Key_Return);
    CHECK(w.window.isVisible());
    CHECK_FALSE(asked());
    CHECK(w.window.focusWidget() == before);
    CHECK_FALSE(w.window.close());
    REQUIRE(asked());
    CHECK(asked()->hasFocus());
    QTest::keyClick(w.window.focusWidget(), Qt::Key_Escape);
    CHECK_FALSE(asked());
    CHECK_FALSE(w.window.close());
    QTest::mouseClick(visible<QPushButton>(w.window, "quit"), Qt::LeftButton);
    CHECK_FALSE(w.window.isVisible());
    CHECK(w.session().openRuns().size() == 1);
}

TEST_CASE("without an open run the window closes at once")
{
    Window w;
    signIn(w.session(), "p-2");
    begin(w.session());
    w.session().leaveRun();
    until([&] { return w.session().run() == nullptr && !w.session().busy(); }, "left");
    CHECK(w.window.close());
    CHECK_FALSE(w.window.isVisible());
}

TEST_CASE("light, dark and the size of type change at once and are kept for the next start")
{
    Window w;
    const auto pick = [&](const char* name) {
        auto* screen = w.window.findChild<QPushButton*>(QStringLiteral("screen"));
        REQUIRE(screen);
        for (QAction* action : screen->menu()->actions())
            if (action->text().remove(QLatin1Char('&')) == QLatin1String(name)) return action->trigger();
        FAIL("no such choice");
    };
    pick("Dark");
    CHECK(themeChoice().dark);
    pick("Text 125 %");
    CHECK(themeChoice().textScale == Approx(1.25));
    CHECK(keptTheme().dark);
    CHECK(keptTheme().textScale == Approx(1.25));
    pick("Light");
    CHECK_FALSE(keptTheme().dark);
    applyTheme({});
}

TEST_CASE("every control of every page is reached by Tab, has a name, and is high enough for a finger")
{
    Window w;
    SECTION("before signing in") {}
    SECTION("the start page") { signIn(w.session(), "p-2"); }
    SECTION("the history")
    {
        signIn(w.session(), "p-2");
        w.click("History");
    }
    SECTION("a run")
    {
        signIn(w.session(), "p-2");
        begin(w.session());
    }
    SECTION("the shop")
    {
        signIn(w.session(), "p-1");
        w.click("Shop");
        SECTION("with somebody chosen") {}
        SECTION("with a question to answer") { w.click("Enrol somebody"); }
        SECTION("with one's own secrets to choose") { w.click("Change my PIN or passphrase"); }
        SECTION("with the card of the logbook") { w.click("Keep the logbook twice"); }
    }
    SECTION("the shop of somebody who is no supervisor")
    {
        signIn(w.session(), "p-2");
        w.click("Shop");
    }
    QTest::qWait(300);
    everyControlIsReachedAndNamed(w.window);
    noLetterTwice(w.window);
}

TEST_CASE("when a run is sealed the focus goes to the list in which it stands now")
{
    Window w;
    signIn(w.session(), "p-2");
    begin(w.session());
    QTest::qWait(100);
    w.session().finish(run::Abandon{"The roll is used up"}, passphraseOf(w.session(), "p-2"));
    until([&] { return w.session().run() == nullptr && !w.session().busy(); }, "sealed");
    auto* history = visible<HistoryPage>(w.window);
    REQUIRE(history);
    QTest::qWait(100);
    REQUIRE(w.window.focusWidget());
    CHECK(history->isAncestorOf(w.window.focusWidget()));
    CHECK(qobject_cast<RowList*>(w.window.focusWidget()) != nullptr);
}

TEST_CASE("in the history of a sealed run every control is reached by Tab, and no letter answers twice")
{
    Window w;
    signIn(w.session(), "p-2");
    begin(w.session());
    w.session().finish(run::Abandon{"The roll is used up"}, passphraseOf(w.session(), "p-2"));
    until([&] { return w.session().run() == nullptr && !w.session().busy(); }, "sealed");
    w.session().signOut();
    signIn(w.session(), "p-1");
    w.click("History");
    QTest::qWait(300);
    SECTION("as it opens") {}
    SECTION("with each thing that can be said of it asked")
    {
        const char* act = GENERATE("Review", "Correct", "Make void");
        QAbstractButton* button = nullptr;
        for (auto* one : w.window.findChildren<QAbstractButton*>())
            if (one->isVisible() && one->isEnabled() && one->accessibleName() == QLatin1String(act)) button = one;
        INFO(act);
        REQUIRE(button);
        QTest::mouseClick(button, Qt::LeftButton);
        QTest::qWait(100);
    }
    everyControlIsReachedAndNamed(w.window);
    noLetterTwice(w.window);
}

TEST_CASE("with large type the window is no wider than the small screen")
{
    Window w(2.0);
    QTest::qWait(300);
    CHECK(w.window.minimumSizeHint().width() <= 1366);
    CHECK(w.window.minimumSizeHint().height() <= 740);
    signIn(w.session(), "p-2");
    CHECK(w.window.minimumSizeHint().width() <= 1366);
    begin(w.session());
    QTest::qWait(300);
    CHECK(w.window.minimumSizeHint().width() <= 1366);
    CHECK(w.window.minimumSizeHint().height() <= 740);
    applyTheme({});
}

TEST_CASE("whatever is said at the top, the window stays on the small screen")
{
    Window w;
    signIn(w.session(), "p-2");
    begin(w.session());
    w.session().withdraw(QStringLiteral("north"), QStringLiteral("The infeed guard does not close"));
    until([&] { return !w.session().withdrawals().empty() && !w.session().busy(); }, "withdrawn");
    w.session().leaveRun();
    until([&] { return w.session().run() == nullptr && !w.session().busy(); }, "the start page");
    w.session().signOut();
    signIn(w.session(), "p-1");
    w.window.resize(1366, 740);
    QAbstractButton* give = nullptr;
    until([&] { return (give = called<QAbstractButton>(w.window, "Give it back to use")) && give->isEnabled(); },
          "another supervisor may give it back");
    QTest::mouseClick(give, Qt::LeftButton);
    until([&] { return w.refusal() != nullptr && !w.session().busy(); }, "refused");
    QTest::qWait(200);
    CHECK(w.window.height() == 740);
    CHECK(w.window.width() == 1366);
    CHECK(called<QLineEdit>(w.window, "What was put right")->hasFocus());
}

TEST_CASE("a window whose logbook another one holds says so, and takes over when that one is closed")
{
    QTemporaryDir folder;
    const Session::Options options = Window::prepared(folder, 1.0);
    auto first = std::make_unique<Session>(options);
    open(*first);
    MainWindow second(options);
    second.show();
    const auto held = [&second] { return visible<NoLogbookPage>(second) != nullptr; };
    until(held, "the second window says who holds the logbook");
    CHECK_FALSE(second.session()->isOpen());
    first.reset();
    until([&] { return second.session()->isOpen(); }, "the second window has taken over");
    CHECK_FALSE(held());
}

TEST_CASE("a program that ended by a fault is told of over every page until somebody has read it", "[pages]")
{
    Window w;
    w.window.tellOfFaults({});
    auto* strip = w.window.findChild<QWidget*>(QStringLiteral("ended"));
    CHECK(strip == nullptr);
    const std::filesystem::path log = w.folder.filePath(QStringLiteral("ended-7.log")).toStdString();
    REQUIRE(writeFile(log, "tautweb 0\nfault SIGSEGV\n"));
    w.window.tellOfFaults({log});
    strip = w.window.findChild<QWidget*>(QStringLiteral("ended"));
    REQUIRE(strip);
    CHECK(strip->isVisible());
    CHECK(qobject_cast<FindingStrip*>(strip)->text().contains(QString::fromStdString(log.string())));
    w.click("History");
    CHECK(strip->isVisible());
    w.click("I have read it");
    CHECK_FALSE(strip->isVisible());
    CHECK_FALSE(std::filesystem::exists(log));
}

TEST_CASE("a sheet's code that is scanned where a run begins opens its run in the history")
{
    QTemporaryDir folder;
    MainWindow window(signedRun(folder));
    window.show();
    window.activateWindow();
    until([&] { return window.session()->isOpen() && !window.session()->busy(); }, "the logbook is open");
    const auto anchor = window.session()->reader()->anchor();
    REQUIRE(anchor);
    const auto runs = window.session()->reader()->runs({}, {});
    REQUIRE(runs);
    REQUIRE_FALSE(runs->rows.empty());
    const std::string run = runs->rows.front().run;
    // Not into the line for the PIN: a secret is not read.
    window.findChild<QComboBox*>()->setFocus();
    ulong clock = 5000;
    const auto type = [&](int key, const QString& text) {
        clock += 3;
        QKeyEvent press(QEvent::KeyPress, key, {}, text);
        press.setTimestamp(clock);
        QWidget* to = window.focusWidget() ? window.focusWidget() : &window;
        QCoreApplication::sendEvent(to, &press);
    };
    for (const QChar sign : QString::fromStdString(seal::anchorUri(run, *anchor))) type(sign.toUpper().unicode(), sign);
    type(Qt::Key_Return, QStringLiteral("\r"));
    until([&] { return visible<HistoryPage>(window) != nullptr; }, "the history is shown");
    until([&] { return test::said(window).contains(QStringLiteral("The sheet is of this logbook")); }, "it is said");
}
