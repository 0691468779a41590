// SPDX-License-Identifier: GPL-3.0-or-later
// What a PC keeps for itself: asked once, and there to be changed.
#include <catch2/catch.hpp>

#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>

#include "app/pages/setup/choose_page.h"
#include "app/pages/setup/setup_page.h"
#include "app/pages/setup/this_pc_page.h"
#include "app/print/print.h"
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
    w.window.findChild<SetupPage*>()->showThisPc(false);
    QTest::keyClick(&w.window, Qt::Key_3, Qt::AltModifier);
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
