// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <catch2/catch.hpp>

#include "core/units/plain.h"
#include "tests/core/run/demo_walk.h"
#include "tests/core/run/small_press.h"

using namespace taut;
using namespace taut::run;

namespace {

Run fresh(const char* press, const char* job, const char* roll, bool web)
{
    return Run::fold(std::vector<Event>{demo::begun(demo::sources(press, job, roll), {"full", web, std::nullopt})});
}

std::size_t stageNamed(const Run& run, const std::string& id)
{
    const auto& stages = run.plan().stages;
    const auto found = std::find_if(stages.begin(), stages.end(), [&](const auto& s) { return s.id == id; });
    REQUIRE(found != stages.end());
    return static_cast<std::size_t>(found - stages.begin());
}

/// Of the stage's steps that were answered in `before`, how many still are.
std::size_t stillAnswered(const Run& before, const Run& run, const std::string& stage)
{
    const auto& steps = run.plan().steps;
    return static_cast<std::size_t>(std::count_if(steps.begin(), steps.end(), [&](const procedure::Step& step) {
        return run.plan().stageOf(step) == stageNamed(run, stage) && !isOpen(before.stateOf(step.id)) &&
               !isOpen(run.stateOf(step.id));
    }));
}

}  // namespace

TEST_CASE("after a web break a press threaded again is spliced, tensioned and proved again, on both presses")
{
    struct Row {
        const char *press, *job, *roll;
        bool web;
    };
    const Row rows[] = {{"north", "quince-jelly", "R0041", true},
                        {"north", "quince-jelly", "R0041", false},
                        {"south", "cold-brew", "R0048", true},
                        {"south", "cold-brew", "R0048", false}};
    for (const Row& row : rows) {
        INFO(row.press << (row.web ? " joined" : " empty"));
        const Run before =
            demo::until(fresh(row.press, row.job, row.roll, row.web), StepId{"web_guide.at_speed.half_speed"});
        const Run run = demo::done(before, RepeatStage{"threading", "web_break"});
        CHECK(stillAnswered(before, run, "threading") == 0);
        CHECK(stillAnswered(before, run, "splice") == 0);
        CHECK(stillAnswered(before, run, "web_guide") == 0);
        for (const procedure::Step& step : run.plan().steps) {
            INFO(step.id.value);
            const std::string stage = run.plan().stages[run.plan().stageOf(step)].id;
            if (stage == "safety" || stage == "power_up") CHECK(run.stateOf(step.id) == before.stateOf(step.id));
            // An adjuster at its mid mark stays there when a web breaks.
            if (stage == "tension") CHECK(isOpen(run.stateOf(step.id)) == (step.validFor == procedure::ValidFor::Run));
            if (!isOpen(before.stateOf(step.id))) CHECK(run.standing(step.id).answer);  // it stays in sight
        }
        for (const char* gone : {"web_joined", "web_moved", "splice_seen", "tension_on"})
            CHECK_FALSE(run.conditions().contains(gone));
        CHECK(run.conditions().contains("stops_tested"));
        CHECK(run.stageInWork() == stageNamed(run, "threading"));
        std::string stuck;
        const Run end = demo::walked(run, stuck);
        CHECK(stuck.empty());
        CHECK(end.phase() == Phase::Completed);
    }
}

TEST_CASE("a splice made again leaves the roll where it is, and what ran over the old one is run again")
{
    for (const bool north : {true, false}) {
        INFO(north);
        const Run before = demo::until(north ? fresh("north", "quince-jelly", "R0041", true)
                                             : fresh("south", "cold-brew", "R0048", true),
                                       StepId{"web_guide.sensors.hold"});
        const Run run = demo::done(before, RepeatStage{"splice", "web_break"});
        CHECK(stillAnswered(before, run, "threading") > 10);
        CHECK(stillAnswered(before, run, "splice") == 0);
        CHECK(run.stateOf({"tension.idle.idle"}) == StepState::Open);
        CHECK(run.stateOf({"tension.settings.setting/unwind"}) == StepState::Open);
        CHECK(run.conditions().contains("roll_retained"));
    }
}

TEST_CASE("a stage on which nothing later rests is done again alone")
{
    const Run before = demo::until(fresh("north", "quince-jelly", "R0041", true), StepId{"web_guide.sensors.hold"});
    const Run run = demo::done(before, RepeatStage{"power_up", "other"});
    CHECK(stillAnswered(before, run, "power_up") == 0);
    for (const char* stage : {"safety", "threading", "splice", "tension"})
        CHECK(stillAnswered(before, run, stage) == stillAnswered(before, before, stage));
}

TEST_CASE("what a repeated stage opens stands in its event, so that a later version shows the same run")
{
    const Run before = demo::until(fresh("north", "quince-jelly", "R0041", true), StepId{"tension.idle.idle"});
    const Run run = demo::done(before, RepeatStage{"threading", "web_break"});
    const auto& happened = std::get<Repeated>(run.events().back().happening());
    CHECK(std::find(happened.reopened.begin(), happened.reopened.end(), StepId{"splice.table.tape"}) !=
          happened.reopened.end());
    const auto back = eventFrom(run.events().back().json());
    REQUIRE(back);
    CHECK(std::get<Repeated>(back->happening()).reopened == happened.reopened);
}

TEST_CASE("a run is not signed while somebody holds a stop, and says who and where")
{
    small::Walk walk;
    walk.upTo("");
    while (!walk.run().heldStops().empty()) walk.must(GiveUpStop{walk.run().heldStops().front().holder});
    walk.must(HoldStop{"Ben Oxley", "latch at the rewind"});
    walk.must(HoldStop{"Ana Wetherby", "latch at the table"});
    const auto refused = walk.tryTo(SignOff{""});
    REQUIRE(refused);
    CHECK(refused->code == "gate.stop_held");
    const std::string said = plain(refused->text);
    CHECK(said.find("Ben Oxley (latch at the rewind), Ana Wetherby (latch at the table)") != std::string::npos);
    CHECK_FALSE(refused->remedy.empty());
    walk.must(GiveUpStop{"Ben Oxley"});
    CHECK(walk.codeOf(SignOff{""}) == "gate.stop_held");
    walk.must(GiveUpStop{"Ana Wetherby"});
    walk.must(SignOff{""});
    CHECK(walk.run().phase() == Phase::Completed);
}

TEST_CASE("a stop held before a hand-over still has to be given up before the run is signed")
{
    small::Walk walk;
    walk.upTo("");
    while (!walk.run().heldStops().empty()) walk.must(GiveUpStop{walk.run().heldStops().front().holder});
    walk.must(HoldStop{"Ana Wetherby", "latch at the table"});
    walk.must(HandOver{small::person("ben")});
    walk.upTo("", "ben");
    while (walk.run().heldStops().size() > 1) walk.must(GiveUpStop{walk.run().heldStops().back().holder}, "ben");
    REQUIRE(walk.run().heldStops().size() == 1);
    CHECK(walk.codeOf(SignOff{""}, "ben") == "gate.stop_held");
}

TEST_CASE("an abandoned run says in its record which stops were still held")
{
    small::Walk walk;
    walk.upTo("threading.splice.clamp");
    REQUIRE_FALSE(walk.run().heldStops().empty());
    walk.must(Abandon{"job cancelled"});
    const auto& end = std::get<Abandoned>(walk.run().events().back().happening());
    REQUIRE(end.held.size() == walk.run().heldStops().size());
    CHECK(end.held.front().where == walk.run().heldStops().front().where);
    const auto json = Json::parse(walk.run().events().back().json());
    REQUIRE(json);
    CHECK((*json)["stops_held"].items().front()["holder"].text() == walk.run().heldStops().front().holder);
    small::Walk none;
    none.must(Abandon{"not begun"});
    CHECK(std::get<Abandoned>(none.run().events().back().happening()).held.empty());
}
