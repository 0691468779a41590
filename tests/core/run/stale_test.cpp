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

const StepId kStrip{"threading.lead.strip"};

Run untilStripped(const Sources& sources)
{
    return demo::until(Run::fold(std::vector<Event>{demo::begun(sources, {"full", true, std::nullopt})}), kStrip);
}

bool contains(const Steps& steps, const char* id)
{
    return std::find(steps.begin(), steps.end(), StepId{id}) != steps.end();
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

TEST_CASE(
    "a diameter measured before the roll hangs makes stale what follows from it, and not what merely uses the roll")
{
    const Run run = demo::until(Run::fold(std::vector<Event>{demo::begun(
                                    demo::sources("north", "quince-jelly", "R0041"), {"full", true, std::nullopt})}),
                                {"threading.shaft.slide_on"});
    const Run after = demo::done(run, MeasuredDiameter{Length::si(0.42)});
    Steps wanted;
    for (const StepId& id : byTheRule(run, after, "diameter"))
        if (run.stateOf(id) != StepState::Open) wanted.push_back(id);
    const Steps stale = stateIs(after, StepState::Stale);
    CHECK(stale == wanted);
    CHECK(contains(stale, "threading.lift.lift_pressure"));
    CHECK_FALSE(contains(stale, "threading.lift.tag"));
    CHECK(after.presentDiameter() == Length::si(0.42));
    CHECK(after.sources() == run.sources());
    CHECK(demo::done(run, MeasuredDiameter{Length::si(0.42)}).targets() == after.targets());
}

TEST_CASE("a diameter measured when the roll hangs stripped is what is left of it: it was lifted and hung as it was")
{
    for (const auto& sources :
         {demo::sources("north", "quince-jelly", "R0041"), demo::sources("south", "cold-brew", "R0048")}) {
        const Run run = nearlyDone(sources);
        const Run after = demo::done(run, MeasuredDiameter{Length::si(0.42)});
        Steps wanted;
        for (const StepId& id : byTheRule(run, after, "diameter"))
            if (run.stateOf(id) != StepState::Open && id != kStrip) wanted.push_back(id);
        const Steps stale = stateIs(after, StepState::Stale);
        CHECK(stale == wanted);
        CHECK_FALSE(stale.empty());
        for (const StepId& id : stale) CHECK(id.value.rfind("threading.", 0) != 0);
        // It stands as another answer to the step that measured it first, with both figures.
        const Answered answer = *after.standing(kStrip).answer;
        CHECK(answer.correction);
        CHECK(answer.value->si() == Approx(0.42));
        CHECK(after.stateOf(kStrip) == StepState::Answered);
        CHECK(after.targets().find("strip.diameter")->quantity()->si() == Approx(0.42));
        for (const char* same : {"lift.load", "lift.pressure", "roll.length", "roll.mass", "roll.diameter"}) {
            INFO(same);
            CHECK(after.targets().find(same)->state == run.targets().find(same)->state);
        }
        // Larger than it was is no reading of this roll.
        const auto refused = decide(run, MeasuredDiameter{Length::si(0.7)}, {}, small::person("ana"));
        REQUIRE_FALSE(refused);
        CHECK(refused.error().code == "gate.no_diameter");
    }
}

TEST_CASE("a roll that hangs is not lifted again because it was measured, nor is one on its shaft that no step strips")
{
    const auto unlifted = [](const Run& run, const StepId& until) {
        const Run before = demo::until(run, until);
        REQUIRE(before.conditions().contains("roll_mounted"));
        const Run after = demo::done(before, MeasuredDiameter{Length::si(0.4)});
        CHECK(after.stateOf({"threading.lift.lift_pressure"}) == StepState::Answered);
        CHECK(after.stateOf({"threading.lift.lift_load"}) == StepState::Answered);
        CHECK(after.targets().find("strip.diameter")->quantity()->si() == Approx(0.4));
        CHECK(after.targets().find("tension.unwind.setting")->quantity()->si() <
              before.targets().find("tension.unwind.setting")->quantity()->si());
    };
    const Sources sources = demo::sources("north", "quince-jelly", "R0041");
    unlifted(Run::fold(std::vector<Event>{demo::begun(sources, {"full", true, std::nullopt})}), kStrip);
    std::string stuck;
    const Run parent =
        demo::walked(Run::fold(std::vector<Event>{demo::begun(sources, {"full", true, std::nullopt})}), stuck);
    unlifted(Run::fold(std::vector<Event>{demo::begun(sources, {"next_roll", true, std::nullopt}, &parent)}),
             {"splice.table.join"});
}

TEST_CASE("what is left of a stripped roll sets brake, web and running time, and a whole roll measured anew ends it")
{
    const Run run = untilStripped(demo::sources("north", "quince-jelly", "R0041"));
    const auto si = [](const Run& r, const char* id) { return r.targets().find(id)->quantity()->si(); };
    const Run little = demo::done(run, Answer{kStrip, "498 mm", {}}),
              much = demo::done(run, Answer{kStrip, "400 mm", {}});
    // 500 mm down to 400 mm on a core of 102.2 mm: (0.25 - 0.16) / (0.25 - 0.1022^2) of the label's 1360 m (R1).
    CHECK(si(much, "strip.length") == Approx(510.95).margin(0.05));
    CHECK(si(much, "roll.usable") ==
          Approx(si(little, "roll.usable") - 510.95 + si(little, "strip.length")).margin(0.1));
    CHECK(si(much, "tension.unwind.setting") < si(little, "tension.unwind.setting"));
    CHECK(si(much, "roll.inertia") < 0.5 * si(little, "roll.inertia"));
    CHECK(si(much, "roll.length") == si(little, "roll.length"));
    // Nothing taken off, or two readings of one roll: it is as it was.
    for (const char* same : {"500 mm", "503 mm"}) {
        const Run whole = demo::done(run, Answer{kStrip, same, {}});
        CHECK(whole.stateOf(kStrip) == StepState::Answered);
        CHECK(si(whole, "tension.unwind.setting") == si(run, "tension.unwind.setting"));
        CHECK(whole.targets().find("strip.length")->ready() != nullptr);
    }
    const Run again = demo::done(much, MeasuredDiameter{Length::si(19.9 * 0.0254 * 0.7)});
    CHECK(again.standing(kStrip).answer->entered == "353.822 mm");
    // A reading that grew the roll stands outside, and sets nothing.
    const Run grown = demo::done(run, Answer{kStrip, "600 mm", {}});
    CHECK(grown.stateOf(kStrip) == StepState::Outside);
    CHECK(si(grown, "tension.unwind.setting") == si(run, "tension.unwind.setting"));
    const Run whole = demo::done(much, Correct{{"threading.lift.diameter"}, "495 mm", "measured badly"});
    CHECK(si(whole, "tension.unwind.setting") > si(much, "tension.unwind.setting"));
    CHECK(whole.stateOf(kStrip) == StepState::Stale);
}

TEST_CASE("the same roll again changes no target, so only the steps that use the roll are stale")
{
    const Run run = untilStripped(demo::sources("north", "quince-jelly", "R0041"));
    const Run after = demo::done(run, ChangeRoll{run.sources().roll.text, std::nullopt});
    CHECK(targets::changed(run.targets(), after.targets()) == std::vector<targets::TargetId>{});
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
    Run run = demo::until(Run::fold(std::vector<Event>{demo::begun(demo::sources("north", "quince-jelly", "R0041"),
                                                                   {"full", true, std::nullopt})}),
                          {"threading.shaft.slide_on"});
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
        leadsOn(demo::handedOver(run));
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

TEST_CASE("a diameter that no roll of this core has, or no press takes, is refused before anything is reckoned with it")
{
    for (const bool us : {false, true}) {
        const Run run =
            us ? demo::until(Run::fold(std::vector<Event>{demo::begun(demo::sources("south", "cold-brew", "R0048"),
                                                                      {"full", true, std::nullopt})}),
                             {"threading.shaft.slide_on"})
               : demo::until(Run::fold(std::vector<Event>{demo::begun(demo::sources("north", "quince-jelly", "R0041"),
                                                                      {"full", true, std::nullopt})}),
                             {"threading.shaft.slide_on"});
        const auto refused = [&](double metres) {
            const auto event = decide(run, MeasuredDiameter{Length::si(metres)}, Stamp{}, small::person("ana"));
            return event ? std::string() : event.error().code;
        };
        CHECK(refused(0) == "gate.no_diameter");
        CHECK(refused(0.0508) == "gate.no_diameter");  // 2 in, a core of three
        CHECK(refused(12.7) == "reading.beyond_end");  // 500 in
        CHECK(refused(0.42).empty());
    }
}
