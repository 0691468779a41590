// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <catch2/catch.hpp>

#include "core/run/answer.h"
#include "core/units/plain.h"
#include "tests/core/run/demo_walk.h"
#include "tests/core/run/small_press.h"

using namespace taut;
using namespace taut::run;

namespace {

using Steps = std::vector<StepId>;

struct Shop {
    const char* press;
    const char* job;
    const char* roll;
    const char* larger;  ///< within two percent of what the file says
    const char* far;     ///< beyond it
};
const Shop kShops[] = {{"north", "quince-jelly", "R0041", "506 mm", "470 mm"},
                       {"south", "cold-brew", "R0048", "20.2 in", "18 in"}};
const StepId kDiameter{"threading.lift.diameter"};

Run fresh(const Sources& sources)
{
    return Run::fold(std::vector<Event>{demo::begun(sources, {"full", true, std::nullopt})});
}
Run fresh(const Shop& shop) { return fresh(demo::sources(shop.press, shop.job, shop.roll)); }

/// Walked until only the last call is open, then one answer is corrected.
Run corrected(const Shop& shop, const StepId& step, const std::string& entered, Run& before)
{
    Run run = fresh(shop);
    while (run.openSteps().size() > 1) run = demo::done(run, *demo::nextCommand(run));
    before = run;
    return demo::done(run, Correct{step, entered, "misread"});
}

/// The answered steps, the one that was corrected apart, whose target differs between the two runs.
Steps touched(const Run& before, const Run& after, const StepId& but)
{
    Steps all;
    const auto differing = targets::changed(before.targets(), after.targets());
    for (const procedure::Step& step : after.plan().steps)
        if (!(step.id == but) && before.stateOf(step.id) != StepState::Open &&
            std::find(differing.begin(), differing.end(), step.target) != differing.end())
            all.push_back(step.id);
    return all;
}

Steps staleIn(const Run& run)
{
    Steps all;
    for (const procedure::Step& step : run.plan().steps)
        if (run.stateOf(step.id) == StepState::Stale) all.push_back(step.id);
    return all;
}

std::string replaced(std::string text, const std::string& from, const std::string& to)
{
    const std::size_t at = text.find(from);
    INFO(from);
    REQUIRE(at != std::string::npos);
    return text.replace(at, from.size(), to);
}

std::optional<Finding> refusal(const Run& run, const Command& command)
{
    const auto event = decide(run, command, Stamp{}, small::person("ana"));
    return event ? std::nullopt : std::optional(event.error());
}

double diameterIn(const Run& run) { return run.targets().find("roll.diameter")->quantity()->si(); }

}  // namespace

TEST_CASE("the diameter that was measured is the run's diameter from then on, and targets follow it")
{
    for (const Shop& shop : kShops) {
        INFO(shop.press);
        const Run before = demo::until(fresh(shop), kDiameter);
        const Run after = demo::done(before, Answer{kDiameter, shop.larger, {}});
        CHECK(diameterIn(after) == Approx(after.standing(kDiameter).answer->value->si()));
        CHECK(diameterIn(after) > diameterIn(before));
        CHECK(after.sources().roll.sha256 != before.sources().roll.sha256);
        CHECK(after.sources().roll.text.find(std::string("outer_diameter = \"") + shop.larger) != std::string::npos);
        CHECK(after.targets().find("lift.load")->quantity()->si() >
              before.targets().find("lift.load")->quantity()->si());
        // Brake torque: T D / 2, so its setting rises with the diameter.
        CHECK(after.targets().find("tension.unwind.torque")->quantity()->si() >
              before.targets().find("tension.unwind.torque")->quantity()->si());
        // One event, and the same run when it is folded from what was stored.
        CHECK(after.events().size() == before.events().size() + 1);
        const auto back = eventFrom(after.events().back().json());
        REQUIRE(back);
        CHECK(before.after(*back).targets() == after.targets());
        CHECK(before.after(*back).sources() == after.sources());
        CHECK(after.stateOf(kDiameter) == StepState::Answered);
    }
}

TEST_CASE("when a measured diameter is put right, exactly the steps whose target differs are stale")
{
    for (const Shop& shop : kShops) {
        INFO(shop.press);
        Run before = fresh(shop);
        const Run after = corrected(shop, kDiameter, shop.larger, before);
        const Steps wanted = touched(before, after, kDiameter);
        CHECK(wanted.size() >= 3);
        CHECK(staleIn(after) == wanted);
        CHECK(after.stateOf(kDiameter) == StepState::Answered);
        CHECK(after.stateOf({"threading.lift.tag"}) == StepState::Answered);  // the same roll as before
        CHECK(std::find(wanted.begin(), wanted.end(), StepId{"threading.lift.lift_pressure"}) != wanted.end());
        std::string stuck;
        CHECK(demo::walked(after, stuck).phase() == Phase::Completed);
        CHECK(stuck.empty());
    }
}

TEST_CASE("the same diameter as before changes nothing, in whichever unit it is said")
{
    const Run before = demo::until(fresh(kShops[0]), kDiameter);
    for (const char* same : {"500 mm", "50 cm", "0.5 m"}) {
        INFO(same);
        const Run after = demo::done(before, Answer{kDiameter, same, {}});
        CHECK(after.sources() == before.sources());
        CHECK_FALSE(std::get<Answered>(after.events().back().happening()).filled);
    }
}

TEST_CASE("a diameter outside its window fills nothing until a supervisor has accepted it")
{
    for (const Shop& shop : kShops) {
        INFO(shop.press);
        const Run before = demo::until(fresh(shop), kDiameter);
        const Run outside = demo::done(before, Answer{kDiameter, shop.far, {}});
        REQUIRE(outside.stateOf(kDiameter) == StepState::Outside);
        CHECK(outside.targets() == before.targets());
        const Run accepted =
            demo::done(outside, AcceptDeviation{kDiameter, "cut down by the maker", small::signer("sue")});
        CHECK(accepted.stateOf(kDiameter) == StepState::Deviated);
        CHECK(diameterIn(accepted) == Approx(outside.standing(kDiameter).answer->value->si()));
    }
}

TEST_CASE("a roll that was measured under way is measured anew, and its file stays as it is")
{
    Run run = demo::until(fresh(kShops[0]), kDiameter);
    run = demo::done(run, MeasuredDiameter{Length::si(0.4)});
    const Sources sources = run.sources();
    run = demo::done(run, Answer{kDiameter, "403 mm", {}});
    CHECK(run.presentDiameter() == Length::si(0.403));
    CHECK(run.sources() == sources);
    CHECK(diameterIn(run) == Approx(0.403));
}

TEST_CASE("a roll said to have been opened is no longer as long as its tag says")
{
    const StepId opened{"threading.lift.opened"};
    // 506 mm on this core is more web than the label's 1360 m: once opened, only the geometry counts (practice).
    Run run = demo::until(fresh(kShops[0]), opened);
    const double label = run.targets().find("roll.length")->quantity()->si();
    CHECK(label == Approx(1360));
    const Run no = demo::done(run, Answer{opened, "no", {}});
    CHECK(no.sources() == run.sources());
    const Run yes = demo::done(run, Answer{opened, "yes", {}});
    CHECK(yes.targets().find("roll.length")->quantity()->si() ==
          Approx(yes.targets().find("roll.length_by_diameter")->quantity()->si()));
    CHECK(yes.sources().roll.text.find("opened = true") != std::string::npos);
}

TEST_CASE("the condition that was seen stands in the roll's data")
{
    const StepId condition{"safety.prepare.roll_condition"};
    const Run run = demo::done(fresh(kShops[0]), Answer{condition, "nicked", {}});
    CHECK(run.sources().roll.text.find("condition = \"nicked\"") != std::string::npos);
    const Run crushed = demo::done(fresh(kShops[0]), Answer{condition, "crushed", {}});
    CHECK(crushed.stateOf(condition) == StepState::Outside);
    CHECK(crushed.sources().roll.text.find("crushed") == std::string::npos);
}

TEST_CASE("a scanned tag fills what nobody had entered, and never what somebody measured")
{
    Sources sources = demo::sources("north", "quince-jelly", "R0041");
    std::string text = sources.roll.text;
    // The tag says 330 mm, 1360 m, a 76 mm core, wound face out, one splice (GS1 General Specifications, AI 8001).
    const std::string tag = "]C10199521000001018800103300136007601\x1d"
                            "10Q31C\x1d"
                            "21R0041";
    text = text.substr(0, text.find("tag = ")) + text.substr(text.find("substrate = "));
    text = replaced(replaced(text, "length = \"1360 m\"\n", ""), "splices = 1\n", "");
    text = replaced(text, "width = \"330 mm\"", "width = \"329 mm\"");
    sources.roll = sourceOf("R0041", 0, text);
    Run run = fresh(sources);
    const StepId step{"threading.lift.tag"};
    run = demo::until(std::move(run), step);
    const double before = run.targets().find("roll.length")->quantity()->si();
    run = demo::done(run, Answer{step, tag, {}});
    CHECK(run.stateOf(step) == StepState::Answered);
    CHECK(run.targets().find("roll.length")->quantity()->si() == Approx(1360));
    CHECK(before != Approx(1360));
    CHECK(run.targets().find("roll.width")->quantity()->si() == Approx(0.329));
    CHECK(run.sources().roll.text.find("splices = 1") != std::string::npos);
    // Another roll's tag is a contradiction, and fills nothing.
    const std::string other = tag.substr(0, tag.size() - 1) + "7";
    CHECK(demo::done(demo::until(fresh(sources), step), Answer{step, other, {}}).stateOf(step) == StepState::Outside);
}

TEST_CASE("an answer that cannot be true of this roll is refused with its step, and nothing changes")
{
    Run before = fresh(kShops[0]);
    Run run = demo::until(fresh(kShops[0]), kDiameter);
    run = demo::done(run, Answer{kDiameter, "60 mm", {}});  // smaller than its core
    REQUIRE(run.stateOf(kDiameter) == StepState::Outside);
    Stamp stamp;
    const auto refused =
        decide(run, AcceptDeviation{kDiameter, "so it is", small::signer("sue")}, stamp, small::person("ana"));
    if (!refused)
        CHECK(refused.error().subject == kDiameter.value);
    else
        CHECK(run.after(*refused).targets().find("roll.length_by_diameter")->ready() == nullptr);
}

TEST_CASE("what only the roll's tag tells counts for the plan as for the targets: the adapter's step is there")
{
    // As R0041, on a core of 152 mm by its tag (field 8001), which this shaft holds with an adapter only.
    Sources entered = demo::sources("north", "quince-jelly", "R0041");
    std::string text = replaced(entered.roll.text, "033001360076", "033001360152");
    text = replaced(text, "core = \"76.2 mm\"", "core = \"152 mm\"");
    entered.roll = sourceOf("R0041", 0, text);
    Sources tagged = entered;
    tagged.roll = sourceOf("R0041", 0, replaced(text, "core = \"152 mm\"\n", ""));
    const auto whole = basisFor(entered, {}), byTag = basisFor(tagged, {});
    REQUIRE(whole);
    REQUIRE(byTag);
    CHECK(std::get<targets::Ready>(byTag->targets.find("core.adapter")->state).value == targets::TargetValue(true));
    CHECK(byTag->facts == whole->facts);
    CHECK(std::find(byTag->facts.begin(), byTag->facts.end(), "needs_adapter") != byTag->facts.end());
    REQUIRE(byTag->plan.steps.size() == whole->plan.steps.size());
    CHECK(byTag->plan.find({"threading.lift.adapter"}) != nullptr);
    CHECK(byTag->inputs.roll->core->si() == Approx(0.152));
    // The file stays as it was entered.
    CHECK(byTag->sources.roll.text.find("core = ") == std::string::npos);
}

TEST_CASE("a diameter put right is held against what the roll's file says, however often it was read")
{
    for (const Shop& shop : kShops) {
        INFO(shop.press);
        const Run before = demo::until(fresh(shop), kDiameter);
        const targets::Window first = before.targets().find("roll.diameter")->ready()->window;
        Run run = demo::done(before, Answer{kDiameter, shop.larger, {}});
        // The window moves with no reading: two more of half the size lead out of it.
        const double step = diameterIn(run) - diameterIn(before);
        const std::string further = std::to_string((diameterIn(before) + 2.5 * step) * 1000) + " mm";
        const auto* judged = judgedBy(run, *run.plan().find(kDiameter));
        REQUIRE(judged != nullptr);
        CHECK(judged->ready()->window == first);
        run = demo::done(run, Correct{kDiameter, further, "misread"});
        const StepStanding standing = run.standing(kDiameter);
        CHECK(standing.answer->window == first);
        CHECK(standing.state == StepState::Outside);
        CHECK(diameterIn(run) == Approx(diameterIn(before) + step));
        // Read back in, it stands, and the same run comes of what was stored.
        run = demo::done(run, Answer{kDiameter, shop.larger, {}});
        CHECK(run.stateOf(kDiameter) == StepState::Answered);
        CHECK(run.standing(kDiameter).answer->window == first);
    }
}

TEST_CASE("a roll that is changed or measured under way is held against itself")
{
    Run run = demo::until(fresh(kShops[0]), kDiameter);
    run = demo::done(run, Answer{kDiameter, "506 mm", {}});
    run = demo::done(run, MeasuredDiameter{Length::si(0.4)});
    const auto* judged = judgedBy(run, *run.plan().find(kDiameter));
    REQUIRE(judged != nullptr);
    CHECK(judged->ready()->window.low->si() < 0.4);
    CHECK(judged->ready()->window.high->si() > 0.4);
    CHECK(judged->ready()->window.high->si() < 0.5);
}

TEST_CASE("a diameter that no roll of this press has is refused, not recorded as outside")
{
    for (const Shop& shop : kShops) {
        INFO(shop.press);
        const Run before = demo::until(fresh(shop), kDiameter);
        for (const char* absurd : {"9000 mm", "506 in"}) {
            INFO(absurd);
            const auto refused = refusal(before, Answer{kDiameter, absurd, {}});
            REQUIRE(refused);
            CHECK(refused->code == "reading.beyond_end");
            CHECK(refused->subject == kDiameter.value);
        }
        // Too large for this press is still a roll that somebody measured.
        CHECK_FALSE(refusal(before, Answer{kDiameter, "1100 mm", {}}));
    }
}
