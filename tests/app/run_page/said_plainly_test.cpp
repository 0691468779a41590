// SPDX-License-Identifier: GPL-3.0-or-later
// What somebody at the press must not overlook stands on the card itself, once, and by its figure.
#include <catch2/catch.hpp>

#include <QTableWidget>
#include <QTest>

#include "tests/app/run_page/walk_support.h"
#include "tests/app/said.h"

using namespace taut;
using namespace taut::app;
using walk::Page;
using walk::Walk;
using K = procedure::StepKind;

namespace {

procedure::StepId order(const run::Run& run)
{
    for (const procedure::Step& step : run.plan().steps)
        if (step.target == "job.covered") return step.id;
    FAIL("no step asks whether the roll is enough");
    return {};
}

}  // namespace

TEST_CASE("a roll that is not enough for the job is told on the order's card by how much, and again when it gets worse")
{
    Walk w = Walk::begin("north", "quince-jelly", "R0047");
    const procedure::StepId step = order(w.run);
    Page page(w);
    page.view.showStep(step);
    const QString at = page.card();
    CAPTURE(at.toStdString());
    const auto metres = [](const QString& said) {
        return said.section(QStringLiteral(" m short: have the next roll stand by"), 0, 0)
            .section(QLatin1Char('\n'), -1)
            .toDouble();
    };
    REQUIRE(at.contains(QStringLiteral(" m short: have the next roll stand by")));
    CHECK(metres(at) > 10);
    w.answerWell(*w.run.plan().find(step));
    REQUIRE_FALSE(run::isOpen(w.run.stateOf(step)));
    w.perform(run::MeasuredDiameter{Length::si(0.430)});
    CHECK(w.run.stateOf(step) == run::StepState::Stale);
    page.view.show(w.run);
    page.view.showStep(step);
    CAPTURE(page.card().toStdString());
    CHECK(metres(page.card()) > metres(at));

    Walk good = Walk::begin("north", "quince-jelly", "R0041");
    Page enough(good);
    enough.view.showStep(order(good.run));
    CHECK_FALSE(enough.card().contains(QStringLiteral("short")));
}

TEST_CASE("a step answered before its time was over says so on its card and where the run is looked through")
{
    Walk w = Walk::begin("north", "quince-jelly", "R0041");
    // Ten seconds pass between two answers of this walk.
    const procedure::Step* watched = w.untilStep([](const procedure::Step& s) { return s.waitSeconds > 20; });
    REQUIRE(watched);
    const procedure::Step step = *watched;
    Page page(w);
    CHECK_FALSE(page.card().contains(QStringLiteral("before its time")));
    w.answerWell(step);
    page.view.show(w.run);
    page.view.showStep(step.id);
    const QString cut = QStringLiteral("10 s of %1 s").arg(step.waitSeconds);
    CAPTURE(page.card().toStdString());
    CHECK(page.card().contains(QStringLiteral("Answered before its time was over: ") + cut));
    page.view.begin(RunAct::Review);
    const auto* table = page.view.findChild<QTableWidget*>(QStringLiteral("steps"));
    QStringList answers;
    for (int row = 0; row < table->rowCount(); ++row) answers << table->item(row, 2)->text();
    CHECK(answers.filter(QStringLiteral("before its time was over: ") + cut).size() == 1);
}

TEST_CASE("a step that is done at many rollers carries none of them as its head")
{
    Walk w = Walk::begin("south", "cold-brew", "R0043");
    Page page(w);
    int among = 0, at = 0;
    for (const procedure::Step& step : w.run.plan().steps) {
        if (step.at.rfind("impression", 0) != 0 && step.at.rfind("rewind", 0) != 0) continue;
        page.view.showStep(step.id);
        const QString head = QStringLiteral("At ") + QString::fromStdString(step.at);
        CAPTURE(step.id.value, step.at);
        if (step.at == "rewind") continue;
        const bool named = page.card().section(QLatin1Char('\n'), 0, 0).contains(head);
        CHECK(named == !step.item.empty());
        ++(step.item.empty() ? among : at);
    }
    CHECK(among > 0);
    CHECK(at > 0);
}

TEST_CASE("before the press is made safe the stops that are held stand once")
{
    Walk w = Walk::begin("north", "quince-jelly", "R0041");
    w.until(K::Scan);
    w.perform(run::HoldStop{"Ines Falk", "latch at the table"});
    w.perform(run::Interrupt{"power"});
    Page page(w);
    CHECK(app::test::said(page.view).count(QStringLiteral("Stops held: ")) == 1);
}
