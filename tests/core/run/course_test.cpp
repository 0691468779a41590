// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include "core/units/plain.h"
#include "tests/core/run/small_press.h"

using namespace taut;
using namespace taut::run;
using namespace taut::run::small;

namespace {

const std::vector<std::string> kSafe(std::begin(kMakeSafe), std::end(kMakeSafe));
constexpr std::int64_t kMinute = 60'000;

std::vector<std::string> inState(const Walk& walk, StepState state)
{
    std::vector<std::string> all;
    for (const Step& s : walk.run().plan().steps)
        if (walk.state(s.id.value) == state) all.push_back(s.id.value);
    return all;
}
using Steps = std::vector<std::string>;

}  // namespace

TEST_CASE("an interrupted run goes on only when it is made safe, and the refusal lists what was not said")
{
    Walk walk;
    walk.upTo("safety.walk.clear");
    CHECK(walk.codeOf(Resume{kSafe, false}) == "gate.not_interrupted");
    walk.must(Interrupt{"ended_without_sign_off"});
    const auto refused = walk.tryTo(Resume{{"nobody_in", "web_secured"}, false});
    REQUIRE(refused);
    CHECK(refused->code == "gate.make_safe");
    CHECK(plain(refused->text).find("The roll is supported") != std::string::npos);
    CHECK(plain(refused->text).find("The lamps are parked") != std::string::npos);
    CHECK(plain(refused->text).find("Nobody is in the press") == std::string::npos);
    walk.must(Resume{kSafe, false});
    CHECK(walk.run().phase() == Phase::Running);
}

TEST_CASE("an interruption begins no stage: what was not begun before is not begun after")
{
    Walk walk;
    walk.upTo("safety.walk.clear");
    walk.must(Interrupt{"power"});
    walk.must(Resume{kSafe, false});
    CHECK(walk.run().stageState(0) == StageState::InWork);
    for (std::size_t i = 1; i < walk.run().plan().stages.size(); ++i)
        CHECK(walk.run().stageState(i) == StageState::NotBegun);
    CHECK(walk.refolded().stageState(1) == StageState::NotBegun);
}

TEST_CASE("while a run is interrupted only resuming, abandoning, withdrawing and noting are possible")
{
    Walk walk;
    walk.upTo("safety.walk.clear");
    walk.must(Interrupt{"power"});
    const Command closed[] = {Answer{{"safety.walk.clear"}, "yes", {}},
                              Correct{{"safety.walk.guard/a"}, "yes", "x"},
                              SkipStep{{"safety.walk.order"}, "x", {}},
                              AcceptDeviation{{"tension.settings.setting/unwind"}, "x", signer("sue")},
                              HoldStop{"Ana", "latch"},
                              GiveUpStop{"Ana"},
                              MeasuredDiameter{Length::si(0.4)},
                              RepeatStage{"safety", "other"},
                              Interrupt{"power"},
                              HandOver{person("ben")},
                              SignOff{""}};
    for (const Command& c : closed) {
        INFO("command " << c.index());
        CHECK(walk.codeOf(c, "ana") == "gate.interrupted");
    }
    CHECK(walk.codeOf(Return{"x"}, "sue") == "gate.interrupted");
    walk.must(Note{{}, "the light went out"});
    walk.must(Resume{kSafe, false});
}

// Prospective memory research asks for the last item to be said again after any interruption, and for everything vital
// after a long one; the half hour is our policy.
TEST_CASE("after a short interruption the last answer is said again and nothing is ticked")
{
    Walk walk;
    walk.upTo("safety.walk.clear");
    walk.wait(2 * kMinute);
    walk.must(Interrupt{"ended_without_sign_off"});
    walk.must(Resume{kSafe, false});
    CHECK(inState(walk, StepState::Reconfirm) == Steps{"safety.walk.guard/b"});
    CHECK(walk.state("safety.walk.guard/a") == StepState::Answered);
    CHECK(walk.state("safety.walk.clear") == StepState::Open);
    CHECK(walk.run().standing({"safety.walk.guard/b"}).answer);  // the old answer stays in sight
    CHECK(walk.run().next() == StepId{"safety.walk.guard/b"});
    walk.answer("safety.walk.guard/b");
    CHECK(walk.state("safety.walk.guard/b") == StepState::Answered);
}

TEST_CASE("after a long interruption every vital answer of the stage is said again")
{
    const Steps vital{"safety.walk.guard/a", "safety.walk.guard/b"};
    SECTION("31 minutes since anybody did anything, noticed when the program starts again")
    {
        Walk walk;
        walk.upTo("safety.walk.clear");
        walk.wait(31 * kMinute);
        walk.must(Interrupt{"ended_without_sign_off"});
        walk.must(Resume{kSafe, false});
        CHECK(inState(walk, StepState::Reconfirm) == vital);
    }
    SECTION("29 minutes are not long")
    {
        Walk walk;
        walk.upTo("safety.walk.clear");
        walk.wait(29 * kMinute);
        walk.must(Interrupt{"ended_without_sign_off"});
        walk.must(Resume{kSafe, false});
        CHECK(inState(walk, StepState::Reconfirm) == Steps{"safety.walk.guard/b"});
    }
    SECTION("a break of 31 minutes")
    {
        Walk walk;
        walk.upTo("safety.walk.clear");
        walk.must(Interrupt{"break"});
        walk.wait(31 * kMinute);
        walk.must(Resume{kSafe, false});
        CHECK(inState(walk, StepState::Reconfirm) == vital);
    }
    SECTION("a short break after a long step is short")
    {
        Walk walk;
        walk.upTo("safety.walk.clear");
        walk.wait(40 * kMinute);
        walk.must(Interrupt{"break"});
        walk.must(Resume{kSafe, false});
        CHECK(inState(walk, StepState::Reconfirm) == Steps{"safety.walk.guard/b"});
    }
    SECTION("a clock set back while nobody was there tells no length at all")
    {
        Walk walk;
        walk.upTo("safety.walk.clear");
        walk.must(Interrupt{"break"});
        walk.wait(-20 * kMinute);
        walk.must(Resume{kSafe, false});
        CHECK(inState(walk, StepState::Reconfirm) == vital);
    }
    SECTION("a power cut, however short")
    {
        Walk walk;
        walk.upTo("safety.walk.clear");
        walk.must(Interrupt{"power"});
        walk.must(Resume{kSafe, false});
        CHECK(inState(walk, StepState::Reconfirm) == vital);
    }
    SECTION("another person")
    {
        Walk walk;
        walk.upTo("safety.walk.clear");
        walk.must(Interrupt{"ended_without_sign_off"});
        CHECK(walk.codeOf(Resume{kSafe, false}, "ben") == "gate.other_hands");  // never by the way
        walk.must(Resume{kSafe, false, true}, "ben");
        CHECK(std::get<Resumed>(walk.run().events().back().happening()).from == "Ana Wetherby");
        CHECK(inState(walk, StepState::Reconfirm) == vital);
        CHECK(walk.run().operatorId() == "ben");
        CHECK(walk.run().standing({"safety.walk.guard/a"}).byName == "Ana Wetherby");  // who said it first
    }
    SECTION("somebody says that it was long")
    {
        Walk walk;
        walk.upTo("safety.walk.clear");
        walk.must(Interrupt{"ended_without_sign_off"});
        walk.must(Resume{kSafe, true});
        CHECK(inState(walk, StepState::Reconfirm) == vital);
    }
}

TEST_CASE("a second interruption is measured from itself")
{
    Walk walk;
    walk.upTo("safety.walk.clear");
    walk.must(Interrupt{"power"});
    walk.must(Resume{kSafe, false});
    walk.upTo("safety.walk.clear");
    walk.must(Interrupt{"ended_without_sign_off"});
    walk.must(Resume{kSafe, false});
    CHECK(inState(walk, StepState::Reconfirm).size() == 1);
}

TEST_CASE("a movement is never made again from memory, and a held stop is held anew where hands are still to go in")
{
    Walk walk;
    walk.upTo("threading.splice.tape");  // stop held, clamped, tape still to come
    walk.must(Interrupt{"power"});
    CHECK_FALSE(walk.has("stop_held"));
    CHECK(walk.run().heldStops() == std::vector<HeldStop>{{"Ana", "latch at the table", true}});
    walk.must(Resume{kSafe, false});
    CHECK(inState(walk, StepState::Reconfirm) ==
          Steps{"threading.roll.mounted", "threading.splice.stop", "threading.splice.clamp"});
    CHECK(walk.run().standing({"threading.splice.stop"}).answer->entered == "Ana");
    walk.answer("threading.roll.mounted");
    CHECK(walk.closed("threading.splice.clamp") == "gate.order");
    walk.answer("threading.splice.stop");
    CHECK(walk.run().heldStops() == std::vector<HeldStop>{{"Ana", "latch at the table", false}});
    walk.upTo("threading.splice.done");
    CHECK(walk.state("threading.splice.draw") == StepState::Answered);

    walk.must(Interrupt{"power"});
    walk.must(Resume{kSafe, false});
    CHECK(walk.state("threading.splice.draw") == StepState::Answered);
    CHECK(walk.state("threading.splice.clamp") == StepState::Reconfirm);
}

TEST_CASE("a stop from before an interruption covers no hands and still keeps the press from moving")
{
    Walk walk;
    walk.upTo("threading.splice.draw");
    walk.must(Interrupt{"ended_without_sign_off"});
    walk.must(Resume{kSafe, false});  // the tape, the last answer, is said again: hands
    CHECK(inState(walk, StepState::Reconfirm) == Steps{"threading.splice.stop", "threading.splice.tape"});
    CHECK(walk.closed("threading.splice.tape") == "gate.order");
    walk.answer("threading.splice.stop");
    walk.answer("threading.splice.tape");
    walk.must(Interrupt{"ended_without_sign_off"});
    walk.must(Resume{kSafe, false});
    walk.answer("threading.splice.stop");
    walk.answer("threading.splice.tape");
    walk.must(HandOver{person("ben")});
    for (const char* step :
         {"threading.roll.mounted", "threading.splice.stop", "threading.splice.clamp", "threading.splice.tape"}) {
        INFO(step);
        REQUIRE(isOpen(walk.state(step)));
        walk.answer(step, "ben");
    }
    CHECK(walk.closed("threading.splice.draw") == "gate.stop_held");
}

TEST_CASE("without hands work to come a held stop is only to be given up")
{
    Plan p = plan();
    at(p, "threading.splice.tape").hands = false;
    at(p, "threading.splice.clamp").hands = false;
    Walk walk(basis(p));
    walk.upTo("threading.splice.draw");
    walk.must(Interrupt{"ended_without_sign_off"});
    walk.must(Resume{kSafe, false});
    CHECK(walk.state("threading.splice.stop") == StepState::Answered);
    walk.answer("threading.splice.tape");
    CHECK(walk.closed("threading.splice.draw") == "gate.stop_held");
    walk.must(GiveUpStop{"Ana"});
    CHECK(walk.closed("threading.splice.draw").empty());
}

TEST_CASE("an interruption, a hand-over and a withdrawal end what was said about the machine")
{
    for (const int how : {0, 1, 2}) {
        Walk walk;
        walk.upTo("threading.splice.stop");
        REQUIRE(walk.has("guards_closed"));
        if (how == 0) walk.must(Interrupt{"ended_without_sign_off"});
        if (how == 1) walk.must(HandOver{person("ben")});
        if (how == 2) walk.must(Withdraw{"smoke"});
        INFO("how " << how);
        CHECK_FALSE(walk.has("guards_closed"));
        CHECK_FALSE(walk.has("people_clear"));
        CHECK(walk.has("roll_mounted") == (how != 1));  // the hand-over asks it again
    }
}

TEST_CASE("a run is handed over to somebody else who may answer steps")
{
    Walk walk;
    walk.upTo("safety.walk.clear");
    CHECK(walk.codeOf(HandOver{person("pip")}) == "gate.role");
    CHECK(walk.codeOf(HandOver{person("ana")}) == "gate.same_person");
    walk.must(HandOver{person("tom")});
    CHECK(walk.run().operatorId() == "tom");
    CHECK(walk.run().operatorName() == "Tom Askrigg");
    CHECK(inState(walk, StepState::Reconfirm) == Steps{"safety.walk.guard/a", "safety.walk.guard/b"});
}

TEST_CASE("somebody else carries a run on only after a hand-over, which they may take themselves")
{
    Walk walk;
    walk.upTo("safety.walk.clear");
    const Command carriesOn[] = {Answer{{"safety.walk.clear"}, "yes", {}},
                                 Correct{{"safety.walk.guard/a"}, "yes", "looked again"},
                                 SkipStep{{"safety.walk.clear"}, "nobody here", std::nullopt},
                                 MeasuredDiameter{Length::si(0.4)},
                                 RepeatStage{"safety", "other"},
                                 SignOff{""}};
    for (const Command& command : carriesOn) {
        const auto refused = walk.tryTo(command, "ben");
        REQUIRE(refused);
        CHECK(refused->code == "gate.other_hands");
        CHECK(refused->text.args.size() == 1);  // whose hands
    }
    // What makes safer or is only written down is never refused for that.
    walk.must(HoldStop{"Ben", "latch at the table"}, "ben");
    CHECK(walk.codeOf(GiveUpStop{"Ben"}, "ben") == "gate.other_hands");
    walk.must(Note{{}, "the floor is wet"}, "ben");
    CHECK(walk.codeOf(HandOver{person("pip")}, "pip") == "gate.role");
    walk.must(HandOver{person("ben")}, "ben");
    CHECK(walk.run().operatorId() == "ben");
    CHECK(walk.run().standing({"safety.walk.guard/a"}).byName == "Ana Wetherby");
    CHECK(walk.codeOf(Answer{{"safety.walk.guard/a"}, "yes", {}}, "ana") == "gate.other_hands");
    walk.must(Answer{{"safety.walk.guard/a"}, "yes", {}}, "ben");
}

TEST_CASE("a reason of a letter or two says nothing")
{
    Walk walk;
    for (const char* nothing : {"", " ", "x", "--", "ok", "?!?!"}) {
        INFO(nothing);
        CHECK(walk.codeOf(Abandon{nothing}) == "gate.no_reason");
        CHECK(walk.codeOf(Withdraw{nothing}) == "gate.no_reason");
        CHECK(walk.codeOf(SkipStep{{"safety.walk.order"}, nothing, std::nullopt}) == "gate.no_reason");
    }
    walk.must(Abandon{"\u00f6l\u00f6"});  // letters of any script count
}

TEST_CASE("anybody signed in may withdraw the press, and only another supervisor gives it back")
{
    Walk walk;
    walk.upTo("safety.walk.clear");
    CHECK(walk.codeOf(Withdraw{" "}, "pip") == "gate.no_reason");
    CHECK(walk.codeOf(Return{"x"}, "sue") == "gate.not_withdrawn");
    SECTION("a trainee withdraws it")
    {
        walk.must(Withdraw{"the guard does not close"}, "pip");
        CHECK(walk.run().phase() == Phase::Withdrawn);
        CHECK(walk.codeOf(Answer{{"safety.walk.clear"}, "yes", {}}) == "gate.withdrawn");
        CHECK(walk.codeOf(Resume{kSafe, false}) == "gate.withdrawn");
        CHECK(walk.codeOf(Withdraw{"again"}) == "gate.withdrawn");
        for (const char* who : {"ana", "ben", "tom", "pip"})
            CHECK(walk.codeOf(Return{"new hinge"}, who) == "gate.role");
        CHECK(walk.codeOf(Return{""}, "sue") == "gate.no_reason");
        walk.must(Note{{}, "fitter called"});
        walk.must(Return{"new hinge"}, "sue");
        CHECK(walk.run().phase() == Phase::Interrupted);  // made safe before it goes on
        walk.must(Resume{kSafe, false});
        CHECK(inState(walk, StepState::Reconfirm) == Steps{"safety.walk.guard/a", "safety.walk.guard/b"});
    }
    SECTION("a supervisor withdraws it")
    {
        walk.must(Withdraw{"the guard does not close"}, "sue");
        CHECK(walk.codeOf(Return{"new hinge"}, "sue") == "gate.own_return");
        walk.must(Return{"new hinge"}, "sol");
    }
    SECTION("an interrupted run")
    {
        walk.must(Interrupt{"stop_by_other"});
        walk.must(Withdraw{"the stop does not latch"}, "pip");
        walk.must(Return{"new latch"}, "sue");
        walk.must(Resume{kSafe, false});
    }
}

TEST_CASE("a stage is done again with its cause, and its earlier answers stay in the events")
{
    Walk walk;
    walk.upTo("tension.settings.setting/unwind");
    CHECK(walk.codeOf(RepeatStage{"nowhere", "other"}) == "gate.no_stage");
    CHECK(walk.codeOf(RepeatStage{"threading", "boredom"}) == "gate.no_cause");
    CHECK(walk.codeOf(RepeatStage{"tension", "other"}) == "gate.stage_not_begun");
    const std::size_t events = walk.run().events().size();
    walk.must(RepeatStage{"threading", "web_break"});
    CHECK(walk.run().events().size() == events + 1);
    CHECK(walk.state("threading.splice.draw") == StepState::Open);
    CHECK(walk.run().standing({"threading.splice.draw"}).answer);
    CHECK(walk.state("safety.walk.done") == StepState::Answered);
    CHECK(walk.closed("tension.settings.setting/unwind") == "gate.earlier_open");
    walk.upTo("");
    walk.must(SignOff{""});
}

TEST_CASE("a run is signed only with nothing open, and abandoned only with a reason")
{
    Walk walk;
    walk.upTo("tension.settings.strain");
    const auto refused = walk.tryTo(SignOff{""});
    REQUIRE(refused);
    CHECK(refused->code == "gate.open_steps");
    CHECK(refused->subject == "tension.settings.strain");
    CHECK(plain(refused->text).find("2 open") == 0);
    CHECK(walk.codeOf(Abandon{" "}) == "gate.no_reason");
    walk.must(Abandon{"job cancelled"});
    CHECK(walk.run().phase() == Phase::Abandoned);
    CHECK(walk.codeOf(Note{{}, "too late"}) == "gate.ended");
    CHECK(walk.codeOf(Withdraw{"too late"}) == "gate.ended");
}

TEST_CASE("a trainee may do nothing in a real run but withdraw the press")
{
    Walk walk;
    walk.upTo("safety.walk.clear");
    const Command closed[] = {Answer{{"safety.walk.clear"}, "yes", {}},
                              Correct{{"safety.walk.guard/a"}, "yes", "x"},
                              SkipStep{{"safety.walk.order"}, "x", {}},
                              Note{{}, "x"},
                              HoldStop{"Pip", "latch"},
                              RepeatStage{"safety", "other"},
                              HandOver{person("ben")},
                              SignOff{""},
                              Abandon{"x"}};
    for (const Command& c : closed) {
        INFO("command " << c.index());
        CHECK(walk.codeOf(c, "pip") == "gate.role");
    }
    walk.must(Withdraw{"smoke"}, "pip");
}

TEST_CASE("a note belongs to a step of the run or to the run, and says something")
{
    Walk walk;
    CHECK(walk.codeOf(Note{{"safety.walk.sing"}, "x"}) == "gate.no_step");
    CHECK(walk.codeOf(Note{{"safety.walk.clear"}, "  "}) == "gate.no_reason");
    walk.must(Note{{"safety.walk.clear"}, "two visitors today"});
    CHECK(walk.state("safety.walk.clear") == StepState::Open);
}
