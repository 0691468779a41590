// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <catch2/catch.hpp>

#include "tests/core/run/demo_walk.h"
#include "tests/core/run/small_press.h"

using namespace taut;
using namespace taut::run;

namespace {

using Steps = std::vector<StepId>;

/// What must go stale, by the rule itself: the step's own target differs, or it names the input.
Steps byTheRule(const Run& before, const Run& after, const std::string& input)
{
    Steps all;
    for (const procedure::Step& step : after.plan().steps) {
        const targets::Target* a = step.target.empty() ? nullptr : before.targets().find(step.target);
        const targets::Target* b = step.target.empty() ? nullptr : after.targets().find(step.target);
        const auto said = [](const targets::Target* t) {
            const targets::Ready* r = t == nullptr ? nullptr : t->ready();
            return std::make_pair(r == nullptr ? targets::TargetValue() : r->value,
                                  r == nullptr ? targets::Window() : r->window);
        };
        const bool differs = (a == nullptr) != (b == nullptr) ||
                             (a != nullptr && (a->state.index() != b->state.index() || !(said(a) == said(b))));
        const bool uses = std::find(step.uses.begin(), step.uses.end(), input) != step.uses.end();
        if (differs || uses) all.push_back(step.id);
    }
    return all;
}

Steps stateIs(const Run& run, StepState state)
{
    Steps all;
    for (const procedure::Step& step : run.plan().steps)
        if (run.stateOf(step.id) == state) all.push_back(step.id);
    return all;
}

/// Walked until only the last call is open.
Run nearlyDone(const Sources& sources)
{
    Run run = Run::fold(std::vector<Event>{demo::begun(sources, {"full", true, std::nullopt})});
    while (run.openSteps().size() > 1) {
        const auto command = demo::nextCommand(run);
        REQUIRE(command);
        run = demo::done(run, *command);
    }
    return run;
}

std::string replaced(std::string text, const std::string& from, const std::string& to)
{
    const std::size_t at = text.find(from);
    INFO(from);
    REQUIRE(at != std::string::npos);
    return text.replace(at, from.size(), to);
}

}  // namespace

TEST_CASE("after a change of roll exactly the steps whose target differs or that use the roll are stale")
{
    struct Row {
        const char* press;
        const char* job;
        const char* roll;
        const char* from;
        const char* to;
    };
    const Row rows[] = {
        {"north", "quince-jelly", "R0041", "outer_diameter = \"500 mm\"", "outer_diameter = \"420 mm\""},
        {"north", "quince-jelly", "R0041", "width = \"330 mm\"", "width = \"331 mm\""},
        {"north", "quince-jelly", "R0041", "splices = 1", "splices = 2"},
        {"north", "quince-jelly", "R0041", "off_centre = \"2 mm\"", "off_centre = \"1 mm\""},
        {"north", "quince-jelly", "R0041", "winding = \"face_out\"", "winding = \"face_in\""},
        {"south", "cold-brew", "R0048", "width = \"12 in\"", "width = \"12.05 in\""},
        {"south", "cold-brew", "R0048", "splices = ", "splices = 1"},
    };
    for (const Row& row : rows) {
        INFO(row.press << ' ' << row.to);
        const Run run = nearlyDone(demo::sources(row.press, row.job, row.roll));
        const Run after = demo::done(run, ChangeRoll{replaced(demo::rollText(row.roll), row.from, row.to), {}});
        Steps wanted;
        for (const StepId& id : byTheRule(run, after, "roll"))
            if (run.stateOf(id) != StepState::Open) wanted.push_back(id);
        CHECK(wanted.size() > 3);
        CHECK(stateIs(after, StepState::Stale) == wanted);
        CHECK(std::get<InputsChanged>(after.events().back().happening()).stale == wanted);
        CHECK(staleSteps(after.plan(), run.targets(), after.targets(), "roll") == byTheRule(run, after, "roll"));
        for (const StepId& id : wanted) CHECK(after.standing(id).answer);  // the old answer stays in sight
    }
}

TEST_CASE("a measured diameter makes stale what follows from it, and not what merely uses the roll")
{
    const Run run = nearlyDone(demo::sources("north", "quince-jelly", "R0041"));
    const Run after = demo::done(run, MeasuredDiameter{Length::si(0.42)});
    const Steps stale = stateIs(after, StepState::Stale);
    CHECK(stale == byTheRule(run, after, "diameter"));
    CHECK(std::find(stale.begin(), stale.end(), StepId{"tension.settings.setting/unwind"}) != stale.end());
    CHECK(std::find(stale.begin(), stale.end(), StepId{"threading.lift.tag"}) == stale.end());
    CHECK(after.presentDiameter() == Length::si(0.42));
    CHECK(after.sources() == run.sources());
    CHECK(demo::done(run, MeasuredDiameter{Length::si(0.42)}).targets() == after.targets());
}

TEST_CASE("the same roll again changes no target, so only the steps that use the roll are stale")
{
    const Run run = nearlyDone(demo::sources("north", "quince-jelly", "R0041"));
    const Run after = demo::done(run, ChangeRoll{demo::rollText("R0041"), std::nullopt});
    CHECK(targets::changed(run.targets(), after.targets()).empty());
    for (const StepId& id : stateIs(after, StepState::Stale)) {
        const auto& uses = after.plan().find(id)->uses;
        CHECK(std::find(uses.begin(), uses.end(), "roll") != uses.end());
    }
}

TEST_CASE("nothing unanswered goes stale, and steps that the new roll brings are open")
{
    Run run = Run::fold(
        std::vector<Event>{demo::begun(demo::sources("south", "cold-brew", "R0048"), {"full", true, std::nullopt})});
    const StepId adapter{"threading.lift.adapter"};
    REQUIRE(run.plan().find(adapter) == nullptr);
    run = demo::done(run, ChangeRoll{demo::rollText("R0043"), std::nullopt});  // its six-inch core needs an adapter
    REQUIRE(run.plan().find(adapter) != nullptr);
    CHECK(run.stateOf(adapter) == StepState::Open);
    CHECK(stateIs(run, StepState::Stale).empty());
    CHECK(std::get<InputsChanged>(run.events().back().happening()).stale.empty());
    CHECK(run.sources().roll.id == "R0043");
}

TEST_CASE("a stale step that is answered again is judged against the new window")
{
    const StepId setting{"tension.settings.setting/unwind"};
    Run run = nearlyDone(demo::sources("north", "quince-jelly", "R0041"));
    const Answered old = *run.standing(setting).answer;
    run = demo::done(run, MeasuredDiameter{Length::si(0.25)});
    std::string stuck;
    run = demo::walked(run, stuck);
    CHECK(stuck.empty());
    const Answered now = *run.standing(setting).answer;
    CHECK_FALSE(now.window == old.window);
    CHECK(now.window == run.targets().find("tension.unwind.setting")->ready()->window);
    // Brake pressure falls with the diameter: p = p0 + T D / (2 k).
    CHECK(now.value->si() < old.value->si());
}

TEST_CASE("a roll that turns out too heavy for the lift closes its steps, and another roll opens them again")
{
    Run run = nearlyDone(demo::sources("north", "quince-jelly", "R0041"));
    run = demo::done(run, MeasuredDiameter{Length::si(1.0)});
    const auto closed = closedBecause(run, {"threading.lift.lift_pressure"});
    REQUIRE(closed);
    std::string stuck;
    run = demo::walked(run, stuck);
    CHECK(stuck.find("gate.target_cannot") == 0);
    CHECK(run.phase() == Phase::Running);
    run = demo::done(run, ChangeRoll{demo::rollText("R0047"), std::nullopt});
    run = demo::walked(run, stuck);
    CHECK(stuck.empty());
    CHECK(run.phase() == Phase::Completed);
}

TEST_CASE("a roll that cannot work here takes no other's place, and nothing is computed for it")
{
    const Run run = nearlyDone(demo::sources("north", "quince-jelly", "R0041"));
    // Too heavy, wound for another press, thermal paper for a label job.
    for (const char* roll : {"R0042", "R0045"}) {
        INFO(roll);
        const auto refused = decide(run, ChangeRoll{demo::rollText(roll), std::nullopt}, {}, small::person("ana"));
        REQUIRE_FALSE(refused);
        CHECK(refused.error().code == "gate.cannot_work");
        CHECK_FALSE(refused.error().remedy.empty());
    }
}

TEST_CASE("wherever a run is handed over or its roll measured anew, hands work asks for its stop first, never in vain")
{
    Run run = Run::fold(
        std::vector<Event>{demo::begun(demo::sources("north", "quince-jelly", "R0041"), {"full", true, std::nullopt})});
    const auto leadsOn = [](const Run& after) {
        const auto next = after.next();
        if (!next) return;
        const auto closed = closedBecause(after, *next);
        INFO(next->value);
        // The step that comes first is itself the one that holds the stop.
        CHECK_FALSE((closed && closed->code == "gate.stop_not_held"));
    };
    int points = 0;
    while (run.openSteps().size() > 1) {
        leadsOn(demo::done(run, HandOver{small::person("ben")}));
        leadsOn(demo::done(run, MeasuredDiameter{Length::si(0.45)}));
        const auto command = demo::nextCommand(run);
        REQUIRE(command);
        run = demo::done(run, *command);
        ++points;
    }
    CHECK(points > 80);
}

TEST_CASE("a roll file that cannot be used changes nothing, and its refusal says where")
{
    const Run run = Run::fold(
        std::vector<Event>{demo::begun(demo::sources("north", "quince-jelly", "R0041"), {"full", true, std::nullopt})});
    struct Row {
        std::string toml;
    };
    const Row rows[] = {
        {"this is no TOML"}, {""}, {replaced(demo::rollText("R0047"), "width = \"330 mm\"", "width = \"330 bar\"")}};
    for (const Row& row : rows) {
        INFO(row.toml);
        const auto refused = decide(run, ChangeRoll{row.toml, std::nullopt}, {}, small::person("ana"));
        REQUIRE_FALSE(refused);
        CHECK_FALSE(refused.error().text.empty());
    }
    CHECK_FALSE(decide(run, MeasuredDiameter{Length::si(0)}, {}, small::person("ana")));
    CHECK_FALSE(decide(run, MeasuredDiameter{Length::si(-0.4)}, {}, small::person("ana")));
}
