// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include "core/units/plain.h"
#include "tests/core/run/small_press.h"

using namespace taut;
using namespace taut::run;
using namespace taut::run::small;

namespace {

/// What closedBecause says of a step, which must be closed.
Finding why(const Walk& walk, const std::string& step)
{
    const auto closed = closedBecause(walk.run(), {step});
    INFO(step);
    REQUIRE(closed);
    CHECK(closed->subject == step);
    CHECK_FALSE(closed->text.empty());
    CHECK_FALSE(closed->remedy.empty());
    return *closed;
}
std::string said(const Finding& f) { return plain(f.text) + ' ' + plain(f.remedy); }
bool has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

}  // namespace

TEST_CASE("a step that this run does not have is closed")
{
    CHECK(why(Walk(), "safety.walk.sing").code == "gate.no_step");
}

TEST_CASE("an answered step is corrected and not answered twice")
{
    Walk walk;
    walk.answer("safety.walk.guard/a");
    CHECK(why(walk, "safety.walk.guard/a").code == "gate.answered");
    CHECK(walk.codeOf(Answer{{"safety.walk.guard/a"}, "yes", {}}) == "gate.answered");
}

TEST_CASE("a later stage waits for an earlier one and names the first open step")
{
    Walk walk;
    const Finding closed = why(walk, "threading.roll.lift");
    CHECK(closed.code == "gate.earlier_open");
    CHECK(has(said(closed), "The guard is closed"));
}

TEST_CASE("a later place of a stage waits for an earlier one")
{
    Walk walk;
    walk.upTo("threading.roll.lift");
    const Finding closed = why(walk, "threading.splice.stop");
    CHECK(closed.code == "gate.earlier_open");
    CHECK(has(said(closed), "Read the lift's gauge"));
}

TEST_CASE("read_do steps go in order and do_confirm steps in any")
{
    Walk walk;
    const Finding closed = why(walk, "safety.walk.clear");
    CHECK(closed.code == "gate.order");
    CHECK(has(said(closed), "The guard is closed"));
    walk.upTo("threading.roll.lift");
    CHECK(walk.closed("threading.roll.mounted").empty());
    CHECK(walk.closed("threading.roll.lift").empty());
}

TEST_CASE("an external step can be answered at any time, and unanswered it keeps calls closed")
{
    Walk walk;
    walk.answer("threading.roll.tag");  // while safety is not even begun
    CHECK(walk.state("threading.roll.tag") == StepState::Answered);
    CHECK(walk.closed("safety.walk.guard/a").empty());  // the open external step before it is no obstacle
    for (const char* step : {"safety.walk.guard/a", "safety.walk.guard/b", "safety.walk.clear"}) walk.answer(step);
    const Finding closed = why(walk, "safety.walk.done");
    CHECK(closed.code == "gate.stage_open");
    CHECK(has(said(closed), "The order is at hand"));
    CHECK(walk.run().next() == StepId{"safety.walk.order"});
    walk.answer("safety.walk.order");
    CHECK(walk.closed("safety.walk.done").empty());
}

TEST_CASE("an external step of an earlier stage keeps the call of a later one closed")
{
    // The external step appears behind the call of its stage, so only the later stage can miss it.
    Plan p = plan();
    at(p, "safety.walk.done").kind = StepKind::Confirm;
    Walk walk(basis(p));
    for (const GoodEntry& e : goodEntries())
        if (e.step != "safety.walk.order" && e.step.find("tension") != 0 && e.step != "threading.splice.done")
            walk.answer(e.step);
    const Finding closed = why(walk, "threading.splice.done");
    CHECK(closed.code == "gate.stage_open");
    CHECK(has(said(closed), "The order is at hand"));
}

// FAA/CAA guidance for electronic checklists (from memory): with an item open the completion call is refused and the
// item is named and counted.
TEST_CASE("a stage with an open step is not called done, and the open steps are counted and named")
{
    Walk walk;
    walk.upTo("tension.settings.setting/unwind");
    walk.answer("tension.settings.setting/unwind");
    const Finding closed = why(walk, "tension.settings.done");
    CHECK(closed.code == "gate.stage_open");
    CHECK(has(said(closed), "2 open"));
    CHECK(has(said(closed), "Set it and read it back"));
}

TEST_CASE("a step that needs a condition waits for it, in words, and names the step that gives it")
{
    Plan p = plan();
    at(p, "threading.roll.lift").needs = {"roll_mounted"};
    Walk walk(basis(p));
    walk.upTo("threading.roll.lift");
    Finding closed = why(walk, "threading.roll.lift");
    CHECK(closed.code == "gate.needs");
    CHECK(has(said(closed), "The roll is not on the shaft yet."));
    CHECK(has(said(closed), "do it first: The roll is on the shaft"));
    walk.answer("threading.roll.mounted");
    CHECK(walk.closed("threading.roll.lift").empty());

    at(p, "threading.roll.lift").needs = {"air_on"};
    Walk nowhere(basis(p));
    nowhere.upTo("threading.roll.lift");
    closed = why(nowhere, "threading.roll.lift");
    CHECK(closed.code == "gate.needs");
    CHECK(has(said(closed), "begin a full set-up"));
}

TEST_CASE("a statement that a movement has outlived can be said again, and the gate says which")
{
    Plan p = plan();
    at(p, "tension.settings.strain").needs = {"guards_closed"};
    Walk walk(basis(p));
    walk.upTo("tension.settings.strain");
    REQUIRE_FALSE(walk.has("guards_closed"));  // the web was drawn through since
    const Finding closed = why(walk, "tension.settings.strain");
    CHECK(closed.code == "gate.needs");
    CHECK(has(said(closed), "Say it again: The guard is closed"));
    CHECK(walk.run().next() == StepId{"safety.walk.guard/a"});
    walk.answer("safety.walk.guard/b");
    CHECK(walk.closed("tension.settings.strain") == "gate.needs");  // the other guard is as old as before
    walk.answer("safety.walk.guard/a");
    CHECK(walk.closed("tension.settings.strain").empty());
    CHECK(walk.closed("safety.walk.guard/a") == "gate.answered");
}

TEST_CASE("what a movement gave and something ended since is had by doing its stage again")
{
    Plan p = plan();
    at(p, "tension.settings.setting/unwind").ends = {"web_moved"};
    at(p, "tension.settings.strain").needs = {"web_moved"};
    Walk walk(basis(p));
    walk.upTo("tension.settings.strain");
    const Finding closed = why(walk, "tension.settings.strain");
    CHECK(closed.code == "gate.needs");
    CHECK(has(said(closed), "Do this stage again, with its cause: Threading"));
}

// 29 CFR 1910.147 and the printing letters on inch-stop-lock-clean (from memory): hands go in only under a stop that
// somebody holds, or under lockout.
TEST_CASE("hands wait for a held stop, which the gate names")
{
    Plan p = plan();
    at(p, "threading.splice.stop").external = true;  // so that it can be left open
    Walk walk(basis(p));
    walk.upTo("threading.splice.stop");
    const Finding closed = why(walk, "threading.splice.clamp");
    CHECK(closed.code == "gate.stop_not_held");
    CHECK(has(said(closed), "latch at the table"));
    walk.must(HoldStop{"Ana", "latch at the table"});
    CHECK(walk.closed("threading.splice.clamp").empty());
    walk.must(GiveUpStop{"Ana"});
    CHECK(walk.closed("threading.splice.clamp") == "gate.stop_not_held");
}

TEST_CASE("where no stop is named hands wait for the isolator, and a locked isolator lets them in")
{
    Plan p = plan();
    at(p, "threading.roll.mounted").hands = true;
    at(p, "threading.roll.lift").gives = {"locked_out"};
    Walk walk(basis(p));
    walk.upTo("threading.roll.lift");
    const Finding closed = why(walk, "threading.roll.mounted");
    CHECK(closed.code == "gate.stop_not_held");
    CHECK(has(said(closed), "lock the isolator by your site's procedure"));
    walk.answer("threading.roll.lift");
    CHECK(walk.closed("threading.roll.mounted").empty());
}

TEST_CASE("nothing moves while a stop is held, and every holder is named")
{
    Walk walk;
    walk.upTo("threading.splice.draw");
    walk.must(HoldStop{"Ben", "latch at the rewind"});
    const Finding closed = why(walk, "threading.splice.draw");
    CHECK(closed.code == "gate.stop_held");
    CHECK(has(said(closed), "Ana (latch at the table)"));
    CHECK(has(said(closed), "Ben (latch at the rewind)"));
    walk.must(GiveUpStop{"Ana"});
    CHECK(walk.closed("threading.splice.draw") == "gate.stop_held");
    walk.must(GiveUpStop{"Ben"});
    CHECK(walk.closed("threading.splice.draw").empty());
}

TEST_CASE("a target that the press cannot deliver closes its step with the target's own words")
{
    Walk walk(basis(plan(), small::targets(1.1, 1.7, true)));
    walk.upTo("threading.roll.lift");
    const Finding closed = why(walk, "threading.roll.lift");
    CHECK(closed.code == "gate.target_cannot");
    CHECK(closed.text == Text("The lift cannot carry this roll."));
    CHECK(closed.remedy == Text("Use the hoist."));
    CHECK(walk.codeOf(SkipStep{{"threading.roll.lift"}, "by hand", person("sue")}) == "gate.not_waivable");
    CHECK(walk.run().stageState(1) == StageState::Blocked);
}

TEST_CASE("an interrupted, a withdrawn and an ended run close every step")
{
    Walk walk;
    walk.must(Interrupt{"power"});
    CHECK(why(walk, "safety.walk.guard/a").code == "gate.interrupted");
    walk.must(Withdraw{"the guard is broken"});
    CHECK(why(walk, "safety.walk.guard/a").code == "gate.withdrawn");
    walk.must(Abandon{"press out of use"});
    CHECK(why(walk, "safety.walk.guard/a").code == "gate.ended");
}

TEST_CASE("a call is made with yes and a stage cannot be called done by passing the call by")
{
    Walk walk;
    walk.upTo("safety.walk.done");
    CHECK(walk.codeOf(SkipStep{{"safety.walk.done"}, "obvious", person("sue")}) == "gate.not_waivable");
    CHECK(walk.codeOf(Answer{{"safety.walk.done"}, "no", {}}) == "answer.not_yes");
    walk.answer("safety.walk.done");
}

TEST_CASE("each stage looks from far what it is")
{
    using enum StageState;
    Walk walk;
    const auto states = [&] {
        return std::vector<StageState>{walk.run().stageState(0), walk.run().stageState(1), walk.run().stageState(2)};
    };
    CHECK(states() == std::vector<StageState>{InWork, NotBegun, NotBegun});
    walk.answer("threading.roll.tag");  // prepared early: the stage itself is not begun
    CHECK(states() == std::vector<StageState>{InWork, NotBegun, NotBegun});
    walk.upTo("threading.roll.tag");
    CHECK(states() == std::vector<StageState>{Done, InWork, NotBegun});
    walk.upTo("tension.settings.setting/unwind");
    walk.must(Answer{{"tension.settings.setting/unwind"}, "2.5 bar", {}});
    CHECK(states() == std::vector<StageState>{Done, Done, Blocked});
    walk.must(AcceptDeviation{{"tension.settings.setting/unwind"}, "old brake", signer("sue")});
    walk.upTo("");
    CHECK(states() == std::vector<StageState>{Done, Done, DoneWithDeviation});
    CHECK(walk.run().deviations() == 1);
    walk.must(RepeatStage{"safety", "other"});
    CHECK(states() == std::vector<StageState>{InWork, Done, DoneWithDeviation});
    walk.must(Withdraw{"the guard is broken"});
    CHECK(walk.run().stageState(0) == Blocked);
}

// A held stop guards hands: common practice, no source.
TEST_CASE("a reading or a letter is nobody's name, so no stop is held in it")
{
    Walk walk;
    for (const char* text : {"", "0.2", "zz", "  .  ", "R0041", "Ana Reyes0.4"})
        CHECK(walk.codeOf(HoldStop{text, "latch"}) == "answer.no_holder");
    CHECK(walk.codeOf(HoldStop{"Ana", "latch"}).empty());
}
