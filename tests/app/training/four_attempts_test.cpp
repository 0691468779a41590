// SPDX-License-Identifier: GPL-3.0-or-later
// Somebody learns: the first attempt ends in a mess that is told, a later one is clean, and their trainer sees both.
#include "app/pages/practice/after_lesson.h"
#include "app/pages/practice/training_page.h"
#include "app/print/report_pane.h"
#include "app/widgets/row_list.h"
#include "core/base/file.h"
#include "core/logbook/training.h"
#include "core/units/plain.h"
#include "tests/app/practice/practice_support.h"
#include "tests/app/run_page/walk_support.h"

using namespace taut;
using namespace taut::app;
using namespace taut::app::shop;

namespace {

/// Time goes on; what happens meanwhile is looked at, as far as that leads anywhere.
void passes(PracticeWindow& w, Time time)
{
    const double end = w.world().time() + time.si();
    while (w.world().time() < end - 1e-9) {
        w.wait(end - w.world().time());
        if (w.practice().happened() != nullptr) w.practice().goOn();
        w.practice().setPace(Pace::Stopped);
    }
}

/// A reading is what the press shows, a choice what somebody saw, all else as whoever did everything right says it.
void answers(PracticeWindow& w, const practice::Answer& given)
{
    Session& runs = *w.practice().runs();
    const auto done = [&](const run::Command& command) {
        runs.perform(command);
        until([&] { return !runs.busy(); }, "it is on disk");
    };
    const procedure::Step step = *runs.run()->plan().find({given.step});
    if (const auto closed = run::closedBecause(*runs.run(), step.id); closed && closed->code == "gate.stop_held")
        while (!runs.run()->heldStops().empty()) done(run::GiveUpStop{runs.run()->heldStops().front().holder});
    run::Answer answer = walk::rightAnswer(*runs.run(), step);
    if (step.kind == procedure::StepKind::Hold) answer.entered = w.session().actor()->name();
    if (step.kind == procedure::StepKind::Choice) answer.entered = given.entered;
    if (step.kind == procedure::StepKind::Reading)
        if (const auto shown = practice::readNow(w.world(), step.target))
            answer.entered = walk::typedAs(*shown, UnitSystem::Metric);
    const std::size_t before = runs.run()->events().size();
    done(answer);
    INFO(given.step << ' ' << answer.entered);
    CHECK(runs.run()->events().size() > before);
}

/// The lesson from its beginning to its end, by this file of actions.
void practises(PracticeWindow& w, const char* actions)
{
    w.begin("quiet_morning");
    Findings notes;
    const auto text = readFile((w.session().options().resources / "demo/actions" / actions).string());
    REQUIRE(text);
    const auto all = practice::readActions(*text, actions, w.practice().played()->basis(), notes);
    REQUIRE(all);
    for (const practice::Action& action : *all) {
        passes(w, action.after);
        if (!action.act) continue;
        if (const auto* deed = std::get_if<practice::Deed>(&*action.act)) (void)w.practice().perform(*deed);
        if (const auto* answer = std::get_if<practice::Answer>(&*action.act)) answers(w, *answer);
    }
    w.click("endLesson");
    REQUIRE(visible<AfterLesson>(w.window));
    until([&] { return !w.practice().runs()->busy(); }, "the attempt is kept");
}

/// How much the paper after a lesson tells of what happened.
std::size_t happenings(PracticeWindow& w)
{
    const auto& paper = visible<AfterLesson>(w.window)->findChild<ReportPane*>()->report();
    REQUIRE(paper);
    for (const report::Section& section : paper->sections)
        if (const auto* table = std::get_if<report::Table>(&section))
            if (plain(table->caption).find("What happened") == 0) return table->rows.size();
    return 0;
}

}  // namespace

TEST_CASE("the first attempt ends in a mess that is told, the fourth is clean, and the trainer sees both")
{
    PracticeWindow w;
    for (int attempt = 1; attempt <= 3; ++attempt) {
        practises(w, "in_a_hurry.toml");
        // What happened, and the step that would have kept it from happening, stand on the paper in front of them.
        CHECK(happenings(w) >= 2);
        w.click("toScenarios");
    }
    practises(w, "quiet_morning.toml");
    CHECK(happenings(w) == 0);

    const auto record = logbook::trainingOf(usualPracticeLogbook(), "p-2");
    REQUIRE(record);
    REQUIRE(record->attempts.size() == 4);
    const practice::Attempt& first = record->attempts.front().attempt;
    const practice::Attempt& last = record->attempts.back().attempt;
    CHECK(first.consequences.size() >= 2);
    CHECK_FALSE(first.score.passed());
    CHECK(last.consequences.empty());
    CHECK(last.contradictions.empty());
    CHECK(last.score.passed());
    CHECK(last.score.earned == last.score.total);

    // A trainer finds all four, and is told which ended how.
    w.session().signOut();
    until([&] { return !w.session().actor() && !w.session().busy(); }, "locked");
    signIn(w.session(), "p-4");
    w.door(Qt::Key_4);
    w.click("toTraining");
    auto* page = visible<TrainingPage>(w.window);
    REQUIRE(page);
    auto* list = page->findChild<RowList*>(QStringLiteral("attempts"));
    REQUIRE(list);
    until([&] { return list->count() == 4; }, "the attempts are read");
    int clean = 0;
    for (int i = 0; i < list->count(); ++i)
        clean += list->item(i)->text().contains(QStringLiteral("Nothing happened that should not have.")) ? 1 : 0;
    CHECK(clean == 1);
}
