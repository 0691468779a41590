// SPDX-License-Identifier: GPL-3.0-or-later
// The window speaks otherwise at once, for whoever wants it so, and nothing that was entered is lost.
#include <catch2/catch.hpp>

#include <QAction>
#include <QComboBox>
#include <QLineEdit>
#include <QMenu>
#include <QPlainTextEdit>
#include <QPointer>
#include <QPushButton>

#include "app/pages/run/run_page.h"
#include "app/pages/run/run_view.h"
#include "app/pages/start/start_page.h"
#include "app/seams/kept_settings.h"
#include "app/text/language.h"
#include "app/text/words.h"
#include "app/widgets/step_card.h"
#include "core/run/decide.h"
#include "tests/app/pages/shop_window.h"

using namespace taut;
using namespace taut::app;
using namespace taut::app::shop;

namespace {

/// English and the press's units again when a test ends, however it does.
struct AsBefore {
    AsBefore() { back(); }
    ~AsBefore() { back(); }
    static void back()
    {
        setLanguage(QStringLiteral("en"));
        setUnitsWish(UnitsWish::AsPress);
    }
};

struct Speaking : AsBefore, Window {
    explicit Speaking(bool demo = true) : Window(demo)
    {
        keptSettings().clear();  // what the test before this one chose
    }

    /// By hand, in the menu "Screen": the entry of one of its menus that is called so.
    void chooseInMenu(const char* name)
    {
        auto* button = visible<QPushButton>(window, "screen");
        REQUIRE(button);
        for (QMenu* menu : button->menu()->findChildren<QMenu*>())
            for (QAction* action : menu->actions())
                if (action->text() == QString::fromUtf8(name)) {
                    action->trigger();
                    QTest::qWait(50);
                    return;
                }
        FAIL("no entry is called " << name);
    }
    void speaks(const char* id)
    {
        until([&] { return language() == QLatin1String(id); }, id);
        QTest::qWait(250);
        if (start()) settled(*start());
    }
    StartPage* start() { return visible<StartPage>(window); }
    RunView* run()
    {
        auto* page = visible<RunPage>(window);
        return page ? page->view() : nullptr;
    }
    QLineEdit* diameter()
    {
        for (auto* line : window.findChildren<QLineEdit*>())
            if (line->isVisible() && line->placeholderText().contains(QStringLiteral("18 3/4 in"))) return line;
        return nullptr;
    }
};

}  // namespace

TEST_CASE("days and numbers are written as the language writes them, units as somebody wants to read them")
{
    const AsBefore after;
    constexpr qint64 kMorning = 1795585263000;  // 2026-11-25 05:41:03 UTC
    const Quantity pressure(139000, Kind::Pressure, "bar");
    CHECK(momentText(kMorning, 60) == QStringLiteral("2026-11-25 06:41"));
    CHECK(quantityText(pressure, UnitSystem::Metric) == QStringLiteral("1.39\u00A0bar"));
    setLanguage(QStringLiteral("de"));
    CHECK(momentText(kMorning, 60) == QStringLiteral("25.11.2026 06:41"));
    CHECK(quantityText(pressure, UnitSystem::Metric) == QStringLiteral("1,39\u00A0bar"));
    setLanguage(QStringLiteral("es"));
    CHECK(momentText(kMorning, 60) == QStringLiteral("25/11/2026 06:41"));
    setUnitsWish(UnitsWish::Us);
    CHECK(quantityText(pressure, UnitSystem::Metric) == QStringLiteral("20,2\u00A0psi"));
    // What a panel is read in is a fact, and a sheet is for everybody.
    CHECK(quantityText(Quantity(139000, Kind::Pressure, "bar!"), UnitSystem::Metric) ==
          QStringLiteral("1,39\u00A0bar"));
    {
        const InPressUnits sheet;
        CHECK(quantityText(pressure, UnitSystem::Metric) == QStringLiteral("1,39\u00A0bar"));
    }
    setLanguage(QStringLiteral("xx"));
    CHECK(language() == QStringLiteral("es"));
}

TEST_CASE("the language is chosen in the menu, the window is said anew, and what was entered stands there")
{
    Speaking w;
    signIn(w.session(), "p-2");
    QTest::qWait(250);
    const QString begin = visible<QPushButton>(w.window)->text();
    REQUIRE(w.diameter());
    w.diameter()->setText(QStringLiteral("480 mm"));
    auto* web = called<QPushButton>(w.window, "The press is empty");
    REQUIRE(web);
    web->setChecked(true);
    QStringList chosen;
    for (const auto* list : w.start()->findChildren<QComboBox*>()) chosen << list->currentData().toString();
    // Another press than the first, another job: what is chosen is not merely what stands there by itself.
    QPointer<StartPage> before = w.start();
    for (auto* list : w.start()->findChildren<QComboBox*>())
        if (list->isVisible() && list->count() > 1) list->setCurrentIndex(1);
    QTest::qWait(250);
    QStringList entered;
    for (const auto* list : w.start()->findChildren<QComboBox*>()) entered << list->currentData().toString();
    REQUIRE(entered != chosen);

    w.chooseInMenu("Deutsch");
    w.speaks("de");
    CHECK(before.isNull());
    REQUIRE(w.start());
    CHECK(w.session().actor());
    CHECK_FALSE(called<QPushButton>(w.window, "The press is empty"));
    REQUIRE(w.diameter());
    CHECK(w.diameter()->text() == QStringLiteral("480 mm"));
    QStringList kept;
    for (const auto* list : w.start()->findChildren<QComboBox*>()) kept << list->currentData().toString();
    CHECK(kept == entered);
    w.chooseInMenu("English");
    w.speaks("en");
    web = called<QPushButton>(w.window, "The press is empty");
    REQUIRE(web);
    CHECK(web->isChecked());
    CHECK(w.diameter()->text() == QStringLiteral("480 mm"));
}

TEST_CASE("each person finds the language and the units that they chose, and the PC those that it was left in")
{
    Speaking w;
    signIn(w.session(), "p-2");
    w.chooseInMenu("Espa\u00F1ol");
    w.speaks("es");
    w.lock();
    w.speaks("en");
    signIn(w.session(), "p-1");
    QTest::qWait(250);
    CHECK(language() == QStringLiteral("en"));
    w.chooseInMenu("US (in, lbf, psi)");
    until([] { return unitsWish() == UnitsWish::Us; }, "in inches");
    CHECK(
        words(Text("%1", {Magnitude{0.0254, Kind::Length, "mm"}}), UnitSystem::Metric).endsWith(QStringLiteral("in")));
    w.lock();
    until([] { return unitsWish() == UnitsWish::AsPress; }, "as the press says");
    signIn(w.session(), "p-2");
    w.speaks("es");
    CHECK(unitsWish() == UnitsWish::AsPress);
}

TEST_CASE("a half typed secret is not lost: the window waits with its language until it is done")
{
    Speaking w;
    QLineEdit* pin = called<QLineEdit>(w.window, "Your PIN");
    REQUIRE(pin);
    pin->setText(QStringLiteral("44"));
    w.chooseInMenu("Deutsch");
    QTest::qWait(900);
    CHECK(language() == QStringLiteral("en"));
    REQUIRE(called<QLineEdit>(w.window, "Your PIN") == pin);
    CHECK(pin->text() == QStringLiteral("44"));
    CHECK(w.says("speaks otherwise as soon as"));
    pin->clear();
    w.speaks("de");
}

TEST_CASE("in a run the step that is looked at stays, with what was typed and what was begun to be noted")
{
    Speaking w;
    signIn(w.session(), "p-2");
    begin(w.session());
    QTest::qWait(250);
    REQUIRE(w.run());
    const run::Run& run = *w.session().run();
    const procedure::Step* reading = nullptr;
    for (const procedure::Step& step : run.plan().steps)
        if (!reading && step.kind == procedure::StepKind::Reading) reading = &step;
    REQUIRE(reading);
    // A note that was begun and left is a draft of that step.
    w.run()->showStep(reading->id);
    w.run()->begin(RunAct::Note);
    auto* note = visible<QPlainTextEdit>(*w.run());
    REQUIRE(note);
    note->setPlainText(QStringLiteral("the gauge sticks"));
    w.chooseInMenu("Deutsch");
    QTest::qWait(900);
    CHECK(language() == QStringLiteral("en"));  // a question is open
    w.run()->showStep(reading->id);
    w.speaks("de");
    REQUIRE(w.run());
    CHECK(w.run()->shownStep() == reading->id);
    w.run()->begin(RunAct::Note);
    note = visible<QPlainTextEdit>(*w.run());
    REQUIRE(note);
    CHECK(note->toPlainText() == QStringLiteral("the gauge sticks"));
}
