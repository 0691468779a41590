// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include "tests/core/run/small_press.h"

using namespace taut;
using namespace taut::run;
using namespace taut::run::small;

namespace {

constexpr const char* kUnwind = "tension.settings.setting/unwind";

Walk outside(const std::string& reader = "ana")
{
    Walk walk;
    if (reader != "ana") walk.must(HandOver{person(reader)});
    walk.upTo(kUnwind);
    walk.must(Answer{{kUnwind}, "2.5 bar", {}});
    return walk;
}

}  // namespace

TEST_CASE("nobody may pass by a step that protects people")
{
    Walk walk;
    for (const std::string& by : everybody()) {
        if (by == "pip") continue;
        if (by != "ana") walk.must(HandOver{person(by)});
        for (const std::string& supervisor : everybody()) {
            INFO(by << " with " << supervisor);
            CHECK(walk.codeOf(SkipStep{{"safety.walk.guard/a"}, "in a hurry", person(supervisor)}, by) ==
                  "gate.not_waivable");
        }
        CHECK(walk.codeOf(SkipStep{{"safety.walk.guard/a"}, "in a hurry", std::nullopt}, by) == "gate.not_waivable");
    }
    CHECK(walk.codeOf(AcceptDeviation{{"safety.walk.guard/a"}, "in a hurry", signer("sue")}) == "gate.not_deviable");
}

TEST_CASE("a step that does not apply needs a reason, and a vital one a supervisor who is somebody else")
{
    Walk walk;
    CHECK(walk.codeOf(SkipStep{{"safety.walk.order"}, "  ", std::nullopt}) == "gate.no_reason");
    walk.must(SkipStep{{"safety.walk.order"}, "sample run", std::nullopt});
    CHECK(walk.run().standing({"safety.walk.order"}).skipReason == "sample run");
    walk.upTo("threading.roll.mounted");
    const auto skip = [&](std::optional<people::Actor> who, const char* by) {
        return walk.codeOf(SkipStep{{"threading.roll.mounted"}, "already on", std::move(who)}, by);
    };
    CHECK(skip(std::nullopt, "ana") == "gate.supervisor");
    CHECK(skip(person("ben"), "ana") == "gate.supervisor");
    CHECK(skip(person("tom"), "ana") == "gate.supervisor");
    walk.must(HandOver{person("sue")});
    CHECK(skip(person("sue"), "sue") == "gate.supervisor");
    walk.must(HandOver{person("sol")});
    CHECK(skip(person("sue"), "sol").empty());
    const auto& event = std::get<NotApplicable>(walk.run().events().back().happening());
    CHECK(event.approvedBy == "sue");
    CHECK(event.approvedByName == "Sue Marlpit");
    CHECK(skip(person("sue"), "sol") == "gate.answered");
}

TEST_CASE("an outside reading is accepted by a supervisor who did not read it, with a reason")
{
    Walk walk = outside();
    const auto accept = [&](const char* who, const char* reason) {
        return walk.codeOf(AcceptDeviation{{kUnwind}, reason, signer(who)});
    };
    for (const char* who : {"ana", "ben", "tom", "pip"}) CHECK(accept(who, "old brake") == "gate.supervisor");
    CHECK(accept("sue", " ") == "gate.no_reason");
    CHECK(accept("sue", "old brake").empty());
    CHECK(walk.state(kUnwind) == StepState::Deviated);
    const StepStanding s = walk.run().standing({kUnwind});
    REQUIRE(s.deviation);
    CHECK(s.deviation->by == "sue");
    CHECK(s.deviation->byName == "Sue Marlpit");
    CHECK(s.deviation->entered == "2.5 bar");
    CHECK(s.deviation->value.si() == Approx(2.5e5));
    CHECK(s.deviation->window == s.answer->window);
    CHECK(s.by == "ana");  // who read it
    CHECK(accept("sol", "again") == "gate.not_outside");
    CHECK(walk.has("tension_on") == false);
    walk.answer("tension.settings.setting/rewind");
    CHECK(walk.has("tension_on"));  // a deviation gives what the answer would have given
}

TEST_CASE("a reading that came out outside is not passed by as if it did not apply")
{
    Walk walk = outside();
    CHECK(walk.codeOf(SkipStep{{kUnwind}, "not needed today", std::nullopt}) == "gate.outside");
    CHECK(walk.codeOf(SkipStep{{kUnwind}, "not needed today", person("sue")}) == "gate.outside");
    CHECK(walk.state(kUnwind) == StepState::Outside);
}

TEST_CASE("nobody accepts their own reading")
{
    Walk walk = outside("sue");
    CHECK(walk.codeOf(AcceptDeviation{{kUnwind}, "old brake", signer("sue")}) == "gate.own_deviation");
    walk.must(AcceptDeviation{{kUnwind}, "old brake", signer("sol")});
}

TEST_CASE("a deviation is for that reading only")
{
    Walk walk = outside();
    walk.must(AcceptDeviation{{kUnwind}, "old brake", signer("sue")});
    walk.must(Correct{{kUnwind}, "2.6 bar", "misread"});
    CHECK(walk.state(kUnwind) == StepState::Outside);
    CHECK_FALSE(walk.run().standing({kUnwind}).deviation);
    walk.must(Answer{{kUnwind}, "1.4 bar", {}});
    CHECK(walk.run().deviations() == 0);
}

TEST_CASE("what is inside, unread, or nobody may waive is no deviation")
{
    Walk walk;
    walk.upTo(kUnwind);
    CHECK(walk.codeOf(AcceptDeviation{{kUnwind}, "x", signer("sue")}) == "gate.not_outside");
    walk.answer(kUnwind);
    CHECK(walk.codeOf(AcceptDeviation{{kUnwind}, "x", signer("sue")}) == "gate.not_outside");
    CHECK(walk.codeOf(AcceptDeviation{{"nowhere"}, "x", signer("sue")}) == "gate.no_step");

    Plan p = plan();
    at(p, kUnwind).waivable = false;
    Walk strict(basis(p));
    strict.upTo(kUnwind);
    strict.must(Answer{{kUnwind}, "2.5 bar", {}});
    CHECK(strict.codeOf(AcceptDeviation{{kUnwind}, "x", signer("sue")}) == "gate.not_deviable");
}
