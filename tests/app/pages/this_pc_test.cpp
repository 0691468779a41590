// SPDX-License-Identifier: GPL-3.0-or-later
// What a PC keeps for itself: asked once, and there to be changed.
#include <catch2/catch.hpp>

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include "app/pages/setup/choose_page.h"
#include "app/pages/setup/setup_page.h"
#include "app/pages/setup/this_pc_page.h"
#include "app/print/print.h"
#include "app/seams/kept_settings.h"
#include "app/seams/resources.h"
#include "app/shell/no_logbook_page.h"
#include "app/shell/screen_menu.h"
#include "app/text/language.h"
#include "tests/app/pages/shop_window.h"

using namespace taut;
using namespace taut::app;
using namespace taut::app::shop;

namespace {

ThisPcPage* page(Window& w) { return visible<ThisPcPage>(w.window); }

void pick(Window& w, const char* list, int row)
{
    auto* box = called<QComboBox>(w.window, list);
    REQUIRE(box);
    box->setCurrentIndex(row);
    emit box->activated(row);
    QTest::qWait(50);
}

struct AsBefore {
    ~AsBefore()
    {
        setLanguage(QStringLiteral("en"));
        setUnitsWish(UnitsWish::AsPress);
        applyTheme({});
    }
};

}  // namespace

TEST_CASE("whoever is the first of a logbook is asked how this PC is to be, once, and goes on to the first run")
{
    const AsBefore before;
    Window w(false);
    until([&] { return visible<NoLogbookPage>(w.window) != nullptr && !w.session().busy(); }, "the page says so");
    w.click("Begin a new logbook here");
    until([&] { return visible<ChoosePage>(w.window) != nullptr && !w.session().busy(); }, "it asks who");
    w.type("Name", QStringLiteral("Ada Brindle"));
    w.chooseSecrets("4827", "a kettle on a cold window sill");
    w.click("Begin the logbook as its supervisor");
    w.done();
    until([&] { return page(w) != nullptr; }, "the questions are asked");
    CHECK(page(w)->isFirstTime());
    CHECK(visible<QPushButton>(w.window, "demo"));
    // No secret that was typed lies about, and nothing keeps the window from speaking otherwise at once.
    for (const QLineEdit* line : w.window.findChildren<QLineEdit*>())
        if (line->echoMode() != QLineEdit::Normal) CHECK(line->text().isEmpty());
    pick(w, "Language", 1);
    until([&] { return language() == QStringLiteral("es") && page(w) != nullptr; }, "Spanish is spoken");
    CHECK(page(w)->isFirstTime());
    visible<QPushButton>(w.window, "pcDone")->click();
    QTest::qWait(30);
    CHECK(page(w) == nullptr);
    CHECK(wasThisPcAsked());
}

TEST_CASE("paper, units and the size of the screen are kept on this PC")
{
    const AsBefore before;
    Window w(true);
    signIn(w.session(), "p-1");
    QTest::keyClick(&w.window, Qt::Key_3, Qt::AltModifier);
    w.window.findChild<SetupPage*>()->showThisPc(false);
    QTest::qWait(30);
    REQUIRE(page(w));
    CHECK(visible<QPushButton>(w.window, "demo") == nullptr);
    report::Report sheet;
    sheet.units = UnitSystem::Metric;
    CHECK(print::paperHere(sheet) == print::Paper::A4);
    pick(w, "Paper of the sheets", 2);
    CHECK(print::paperHere(sheet) == print::Paper::Letter);
    pick(w, "Paper of the sheets", 0);
    sheet.units = UnitSystem::Us;
    CHECK(print::paperHere(sheet) == print::Paper::Letter);

    auto* read = visible<QLineEdit>(w.window, "rulerRead");
    REQUIRE(read);
    read->setText(QStringLiteral("80 mm"));
    visible<QPushButton>(w.window, "rulerTake")->click();
    CHECK(themeChoice().rulerScale == Approx(1.25));
    CHECK(keptTheme().rulerScale == Approx(1.25));
}

TEST_CASE("a language that is chosen for this PC is spoken at once, and the page stays open")
{
    const AsBefore before;
    Window w(true);
    QTest::keyClick(&w.window, Qt::Key_3, Qt::AltModifier);
    w.window.findChild<SetupPage*>()->showThisPc(false);
    QTest::qWait(30);
    REQUIRE(page(w));
    pick(w, "Language", 1);
    until([&] { return language() != QStringLiteral("en") && page(w) != nullptr; }, "it is spoken");
    CHECK_FALSE(w.says("Paper of the sheets"));
}

TEST_CASE("what is chosen for this PC also holds when nobody is signed in")
{
    const AsBefore before;
    Window w(true);
    signIn(w.session(), "p-1");
    QTest::keyClick(&w.window, Qt::Key_3, Qt::AltModifier);
    w.window.findChild<SetupPage*>()->showThisPc(false);
    QTest::qWait(30);
    REQUIRE(page(w));
    pick(w, "Language", 2);
    until([&] { return language() == QStringLiteral("de") && page(w) != nullptr; }, "German is spoken");
    w.lock();
    QTest::qWait(200);
    CHECK(language() == QStringLiteral("de"));
}

TEST_CASE("a language that was asked for this time holds for whoever signs in, until somebody chooses")
{
    const AsBefore before;
    {
        Window w(true);
        signIn(w.session(), "p-1");
        QSettings kept = keptSettings();
        kept.setValue(QStringLiteral("language"), QStringLiteral("en"));
        kept.setValue(QStringLiteral("people/p-1/language"), QStringLiteral("es"));
        w.lock();
    }
    setLanguage(QStringLiteral("de"));
    QTemporaryDir folder;
    MainWindow window(optionsIn(folder));
    window.show();
    until([&] { return window.session()->isOpen() && !window.session()->busy(); }, "the logbook is open");
    signIn(*window.session(), "p-1");
    QTest::qWait(200);
    CHECK(language() == QStringLiteral("de"));
}

TEST_CASE("a PC that is new is welcomed, and told of no file that it has never heard of")
{
    const AsBefore before;
    const QTemporaryDir data;
    const QByteArray was = qgetenv("XDG_DATA_HOME");
    qputenv("XDG_DATA_HOME", data.path().toUtf8());
    {
        const QTemporaryDir settings;
        qputenv("XDG_CONFIG_HOME", settings.path().toUtf8());
        Session::Options options;
        const auto resources = resourcesFolder();
        REQUIRE(resources);
        options.resources = *resources;
        options.logbook = usualLogbook();
        MainWindow window(options);
        window.show();
        window.activateWindow();
        until([&] { return visible<NoLogbookPage>(window) != nullptr; }, "there is none");
        const QString said = test::said(window);
        CHECK(said.contains(QStringLiteral("Welcome")));
        CHECK_FALSE(said.contains(QStringLiteral("spelling")));
        CHECK(visible<QAbstractButton>(window, "again") == nullptr);
        CHECK(visible<QAbstractButton>(window, "demoFirst"));
        auto* begin = visible<QAbstractButton>(window, "begin");
        REQUIRE(begin);
        CHECK(window.focusWidget() == begin);
    }
    was.isEmpty() ? qunsetenv("XDG_DATA_HOME") : qputenv("XDG_DATA_HOME", was);
}

TEST_CASE("the demo shop says that it is one, and with what its people sign in, until somebody has")
{
    const AsBefore before;
    Window w(true);
    auto* note = visible<QLabel>(w.window, "demoNote");
    REQUIRE(note);
    const QString pin = pinOf(w.session(), "p-1");
    CHECK(note->text().contains(pin));
    CHECK(note->text().contains(passphraseOf(w.session(), "p-1")));
    w.type("Your PIN", pin);
    w.click("Sign in");
    until([&] { return w.session().actor().has_value() && !w.session().busy(); }, "signed in");
    CHECK_FALSE(note->isVisible());
}
