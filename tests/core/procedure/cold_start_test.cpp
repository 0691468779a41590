// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <catch2/catch.hpp>
#include <map>
#include <set>

#include "core/procedure/lint.h"
#include "core/targets/aim.h"
#include "core/units/format.h"
#include "shop.h"

using namespace taut;
using namespace taut::procedure;
using namespace taut::procedure::shop;

namespace {

std::string lower(std::string text)
{
    std::transform(text.begin(), text.end(), text.begin(),
                   [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    return text;
}

/// Every text of a step as somebody reads it.
std::vector<std::string> textsOf(const Step& step)
{
    std::vector<std::string> all{plain(step.say), plain(step.why), plain(step.caution), plain(step.see)};
    for (const Text& t : step.tries) all.push_back(plain(t));
    for (const Choice& c : step.choices) {
        all.push_back(c.say);
        all.push_back(c.remedy);
    }
    return all;
}

bool has(const std::vector<std::string>& list, const char* word)
{
    return std::find(list.begin(), list.end(), word) != list.end();
}

bool defers(const Step& step)
{
    const std::string why = lower(plain(step.why));
    return why.find("press manual") != std::string::npos && why.find("site's procedures") != std::string::npos &&
           why.find("local law") != std::string::npos;
}

template <class Check>
void eachPlan(Check check)
{
    for (const Case& c : allCases()) {
        INFO(c.name());
        check(c, planOf(c));
    }
}

}  // namespace

TEST_CASE("the procedure passes its lint without a word")
{
    Findings lint;
    const std::string path = "resources/procedures/cold_start.toml";
    const Result<Procedure> read = readProcedure(fileText(path), path, lint);
    REQUIRE(read);
    for (const Finding& f : lint) UNSCOPED_INFO(sentence(f));
    CHECK(lint.empty());
    CHECK(read->id == "cold_start");
    CHECK(read->edition == 1);
    std::vector<std::string> stages;
    for (const StageSpec& s : read->stages) stages.push_back(s.id);
    CHECK(stages ==
          std::vector<std::string>{"safety", "power_up", "threading", "splice", "tension", "web_guide", "hand_over"});
}

TEST_CASE("every kind of run on every press closes its stages with a call, in places of at most nine")
{
    eachPlan([](const Case&, const Plan& plan) {
        REQUIRE_FALSE(plan.stages.empty());
        for (const PlanStage& stage : plan.stages) {
            REQUIRE(stage.count > 0);
            const PlanPlace& last = plan.places[stage.first + stage.count - 1];
            CHECK(plan.steps[last.first + last.count - 1].kind == StepKind::Call);
        }
        for (const PlanPlace& place : plan.places) {
            CHECK(place.count > 0);
            CHECK(place.count <= kMostSteps);
        }
    });
}

TEST_CASE("walked in order, every step's needs are given before it and hands are only under a held stop")
{
    eachPlan([](const Case&, const Plan& plan) {
        std::set<std::string> ever, now;
        for (const Step& step : plan.steps) {
            INFO(step.id.value);
            const bool moves = step.kind == StepKind::Motion;
            for (const std::string& need : step.needs) {
                INFO(need);
                // a movement asks the machine's state anew in its own card; it must have been looked at once before
                CHECK((moves && isMachineState(need) ? ever : now).count(need) == 1);
            }
            if (moves) {
                for (const char* n : kMotionNeeds) CHECK(has(step.needs, n));
                CHECK(now.count("stop_held") == 0);
                std::erase_if(now, [](const std::string& c) { return isMachineState(c); });
            }
            if (step.hands) CHECK(now.count("stop_held") == 1);
            for (const std::string& c : step.ends) now.erase(c);
            if (!step.lastOfItems) continue;
            now.insert(step.gives.begin(), step.gives.end());
            ever.insert(step.gives.begin(), step.gives.end());
        }
    });
}

TEST_CASE("no web is drawn and no idle begun before the roll is held, stations are off and knives covered")
{
    eachPlan([](const Case& c, const Plan& plan) {
        for (const Step& step : plan.steps) {
            if (step.kind != StepKind::Motion || step.id.value.rfind("power_up", 0) == 0) continue;
            INFO(step.id.value);
            for (const char* need : {"stations_off", "lamps_parked", "blades_covered", "roll_retained"})
                CHECK(has(step.needs, need));
            CHECK(has(step.needs, "stops_tested") == (c.kind == "full"));  // stands for the shift in the others
            if (step.id.value.rfind("splice", 0) != 0) CHECK(has(step.needs, "rewind_locked"));
        }
    });
}

TEST_CASE("every hazard stage defers to manual, site and law, in its first step of a full set-up")
{
    eachPlan([](const Case& c, const Plan& plan) {
        for (const PlanStage& stage : plan.stages) {
            if (stage.id == "hand_over") continue;
            INFO(stage.id);
            const std::size_t first = plan.places[stage.first].first;
            const PlanPlace& last = plan.places[stage.first + stage.count - 1];
            bool said = false;
            for (std::size_t i = first; i < last.first + last.count; ++i) said = said || defers(plan.steps[i]);
            CHECK(said);
            if (c.kind == "full" && c.webInPress) CHECK(defers(plan.steps[first]));
        }
    });
}

TEST_CASE("no text claims that the press is safe, orders gloves at a movement or is too long for its card")
{
    const char* const forbidden[] = {"safe to start", "safe to run",    "is safe",   "certified",
                                     "guaranteed",    "lockout is not", "no lockout"};
    eachPlan([&](const Case&, const Plan& plan) {
        for (const Step& step : plan.steps) {
            INFO(step.id.value);
            for (const std::string& text : textsOf(step)) {
                for (const char* word : forbidden) CHECK(lower(text).find(word) == std::string::npos);
                CHECK(text.find('{') == std::string::npos);
                if (step.kind == StepKind::Motion) CHECK(lower(text).find("glove") == std::string::npos);
            }
            CHECK_FALSE(step.say.empty());
            CHECK(step.say.source.size() <= kLongestSay);
            CHECK(step.why.source.size() <= kLongestWhy);
            CHECK(step.tries.size() <= kMostTries);
            for (const Text* t : {&step.say, &step.why, &step.caution})
                for (std::size_t i = t->args.size() + 1; i < 9; ++i)
                    CHECK(t->source.find('%' + std::to_string(i)) == std::string::npos);
        }
    });
}

TEST_CASE("a vital step says why, a movement says that this screen moves nothing")
{
    eachPlan([](const Case&, const Plan& plan) {
        for (const Step& step : plan.steps) {
            INFO(step.id.value);
            if (step.vital) CHECK_FALSE(step.why.empty());
            if (step.kind != StepKind::Call) CHECK_FALSE(step.why.empty());
            if (step.kind == StepKind::Motion) {
                CHECK(plain(step.why).find("This screen moves nothing and stops nothing") != std::string::npos);
                CHECK(plain(step.say).rfind("Call out, look along the press, then ", 0) == 0);
                CHECK_FALSE(step.control.empty());
            }
            // a hazard to hands or body carries a signal word: motion and hands that cut or are crushed
            if (step.kind == StepKind::Motion || step.kind == StepKind::Hold)
                CHECK((step.signal == SignalWord::Warning || step.id.value == "power_up.stations.hold"));
            CHECK((step.signal == SignalWord::None) == step.caution.empty());
        }
    });
}

TEST_CASE("what protects people cannot be waived")
{
    // practice: locks and tags, guards, stops tested, people clear, stop held, roll and shaft held, lift rating, lamps
    // parked, knives covered
    const char* const never[] = {
        "safety.people.different_today",  "safety.people.blades",        "safety.walk_round.guard_closed",
        "safety.walk_round.stop_seen",    "safety.walk_round.all_round", "safety.walk_round.stored_energy",
        "power_up.tests.stop_test",       "power_up.tests.no_motion",    "power_up.stations.station_off",
        "power_up.stations.stations_off", "threading.lift.lift_load",    "threading.lift.lift_pressure",
        "threading.shaft.retained",       "threading.shaft.lowered",     "splice.rewind.core",
        "splice.through.hands_out"};
    const Plan plan = planOf({"resources/presses/north.toml", "quince-jelly", "R0041", "full", true});
    for (const char* id : never) {
        INFO(id);
        bool found = false;
        for (const Step& step : plan.steps) {
            if (step.id.value.substr(0, step.id.value.find('/')) != id) continue;
            found = true;
            CHECK_FALSE(step.waivable);
            CHECK(step.vital);
        }
        CHECK(found);
    }
}

TEST_CASE("a next roll asks at most twenty things, its calls and repetitions aside")
{
    for (const Case& c : allCases()) {
        if (c.kind != "next_roll") continue;
        std::set<std::string> asked;
        for (const Step& step : planOf(c).steps)
            // What sets a zone is one thing, whether it draws or brakes.
            if (step.kind != StepKind::Call && step.id.value.rfind("tension.settings.draw/", 0) != 0)
                asked.insert(step.id.value.substr(0, step.id.value.find('/')));
        CAPTURE(c.name(), asked.size());
        CHECK(asked.size() <= 20);
    }
}

TEST_CASE("labels are those of the press and what it has not is not asked")
{
    const Plan north = planOf({"resources/presses/north.toml", "quince-jelly", "R0041", "full", true});
    CHECK(plain(north.find({"power_up.switch_on.power"})->say).find("Q1") != std::string::npos);
    CHECK(plain(north.find({"tension.settings.setting/unwind"})->say).find("BRAKE") != std::string::npos);
    CHECK(plain(north.find({"threading.unwind_free.hold"})->say).find("latching stop at the unwind") !=
          std::string::npos);
    CHECK(north.find({"power_up.tests.reset"}) != nullptr);  // this press wakes stopped
    CHECK(north.find({"threading.shaft.mandrel_air"}) != nullptr);
    CHECK(north.find({"threading.lead.lead_web"}) == nullptr);
    CHECK(north.find({"tension.idle.rest/unwind"}) == nullptr);  // no dancer

    const Plan south = planOf({"resources/presses/south.toml", "cold-brew", "R0044", "full", false});
    CHECK(south.find({"power_up.tests.reset"}) == nullptr);
    CHECK(south.find({"threading.shaft.mandrel_air"}) == nullptr);
    CHECK(south.find({"threading.lead.lead_web"}) != nullptr);
    CHECK(south.find({"splice.table.tape"}) == nullptr);
    CHECK(south.find({"tension.idle.rest/unwind"}) != nullptr);
    CHECK(south.find({"splice.rewind.cell_zero/rewind_2"}) != nullptr);
    CHECK(south.find({"splice.rewind.core/waste"}) != nullptr);
    CHECK(south.find({"splice.rewind.wraps/waste"}) == nullptr);
    CHECK(south.find({"web_guide.sensors.operator_sensor/web"}) == nullptr);  // it follows the drive-side edge
    CHECK(south.find({"web_guide.sensors.drive_sensor/web"}) != nullptr);
    CHECK(south.find({"splice.rewind.hold"})->at == "rewind 1");

    const Plan bare = planOf({"tests/data/presses/bare.toml", "quince-jelly", "R0041", "full", true});
    for (const Step& step : bare.steps) {
        const std::string text = lower(plain(step.say));
        CHECK(step.id.value.find("guide_middle") == std::string::npos);
        CHECK(step.id.value.rfind("web_guide.sensors", 0) != 0);
        CHECK(step.target != "lift.pressure");
        CHECK(step.target != "air.supply");
    }
    CHECK(bare.find({"threading.lift.carry"}) != nullptr);
    CHECK(bare.find({"tension.settings.by_feel"}) != nullptr);
    CHECK(bare.find({"web_guide.proving.edge_marks"}) != nullptr);
    CHECK(bare.find({"splice.table.automatic_stop"}) == nullptr);
    CHECK(bare.find({"web_guide.at_speed.stops_held"}) == nullptr);
    CHECK(bare.find({"web_guide.at_speed.stands_taut"}) != nullptr);
    CHECK(plain(bare.find({"threading.unwind_free.hold"})->say).find("isolator, locked") != std::string::npos);
}

TEST_CASE("every plan of the delivered procedure reads back from JSON to an equal one")
{
    eachPlan([](const Case&, const Plan& plan) {
        const Result<Json> json = Json::parse(planJson(plan).dump());
        REQUIRE(json);
        const Result<Plan> back = planFrom(*json);
        REQUIRE(back);
        CHECK(*back == plan);
    });
}

TEST_CASE("the source of a text is one per text of the file, whatever the press")
{
    std::set<std::string> written;
    for (const StageSpec& stage : coldStart().stages)
        for (const PlaceSpec& place : stage.places)
            for (const StepSpec& step : place.steps) written.insert(step.id + std::to_string(step.line));
    std::map<std::string, std::set<std::string>> sources;
    eachPlan([&](const Case&, const Plan& plan) {
        for (const Step& step : plan.steps)
            sources[step.id.value.substr(0, step.id.value.find('/'))].insert(step.say.source.str());
    });
    CHECK(sources.size() == written.size() - 1);  // no demo roll here needs an adapter
    for (const auto& [id, said] : sources) {
        INFO(id);
        CHECK(said.size() == 1);
    }
}

TEST_CASE("the automatic stop is ordered at a diameter that its window does not forbid")
{
    // In each of these the diameter, rounded to the nearest, would stand below the limit, rounded up.
    for (const Case& c : {Case{"resources/presses/north.toml", "parcel-tag", "R0043", "full"},
                          Case{"resources/presses/north.toml", "seed-window", "R0049", "full"},
                          Case{"resources/presses/south.toml", "parcel-tag", "R0041", "full"}}) {
        const inputs::Inputs in = inputsOf(c.press, c.job, c.roll);
        const targets::Targets all = targets::computeTargets(in);
        const Plan plan = planOf(c);
        const auto step = std::find_if(plan.steps.begin(), plan.steps.end(),
                                       [](const Step& s) { return s.target == "stop.diameter"; });
        REQUIRE(step != plan.steps.end());
        const targets::Ready* stop = all.find("stop.diameter")->ready();
        REQUIRE(stop != nullptr);
        INFO(c.press << ' ' << c.job);
        // The value stands on its limit: what is ordered is the middle of the window, well clear of both ends.
        const auto aim = std::get<Quantity>(targets::aimOf(*stop, in.press->units));
        CHECK(aim.si() == Approx((stop->window.low->si() + stop->window.high->si()) / 2));
        CHECK(plain(step->say, in.press->units).find(" to " + format(aim, in.press->units)) != std::string::npos);
    }
}
