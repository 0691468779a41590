// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include "core/procedure/procedure.h"
#include "core/run/words.h"
#include "tests/core/run/small_press.h"

using namespace taut;
using namespace taut::run;
using namespace taut::run::small;

TEST_CASE("every condition, and every statement of making safe, has words of its own")
{
    std::set<std::string> said;
    for (const std::string& condition : procedure::allConditions()) {
        INFO(condition);
        CHECK_FALSE(conditionSaid(condition).empty());
        CHECK_FALSE(conditionMissing(condition).empty());
        said.insert(conditionSaid(condition).source.str());
        said.insert(conditionMissing(condition).source.str());
    }
    CHECK(said.size() == 2 * procedure::allConditions().size());
    for (const char* word : kMakeSafe) CHECK_FALSE(makeSafeSaid(word).empty());
    CHECK(conditionSaid("web_knitted").empty());
    CHECK(makeSafeSaid("coffee_made").empty());
}

TEST_CASE("an answer gives its conditions and ends others")
{
    Walk walk;
    walk.upTo("threading.splice.tape");
    CHECK(walk.has("webs_clamped"));
    CHECK_FALSE(walk.has("web_joined"));
    walk.answer("threading.splice.tape");
    CHECK_FALSE(walk.has("webs_clamped"));
    CHECK(walk.has("web_joined"));
}

TEST_CASE("a repeated step gives its condition when every item is answered")
{
    Walk walk;
    walk.answer("safety.walk.guard/a");
    CHECK_FALSE(walk.has("guards_closed"));
    walk.answer("safety.walk.guard/b");
    CHECK(walk.has("guards_closed"));
}

TEST_CASE("items passed by give nothing, and do not keep the others from giving")
{
    Plan p = plan();
    for (const char* item : {"a", "b"}) at(p, std::string("safety.walk.guard/") + item).waivable = true;
    Walk one(basis(p));
    one.must(SkipStep{{"safety.walk.guard/a"}, "taken away for repair", person("sue")});
    CHECK_FALSE(one.has("guards_closed"));
    one.answer("safety.walk.guard/b");
    CHECK(one.has("guards_closed"));
    Walk both(basis(p));
    both.must(SkipStep{{"safety.walk.guard/a"}, "none here", person("sue")});
    both.must(SkipStep{{"safety.walk.guard/b"}, "none here", person("sue")});
    CHECK_FALSE(both.has("guards_closed"));
}

TEST_CASE("a movement ends what was said about the machine and nothing else")
{
    Walk walk;
    walk.upTo("threading.splice.draw");
    CHECK(walk.has("guards_closed"));
    CHECK(walk.has("people_clear"));
    walk.answer("threading.splice.draw");
    CHECK_FALSE(walk.has("guards_closed"));
    CHECK_FALSE(walk.has("people_clear"));
    CHECK(walk.has("web_joined"));
    CHECK(walk.has("web_moved"));
    CHECK(walk.has("roll_mounted"));
    // The words stay what they were: the steps are not open again.
    CHECK(walk.state("safety.walk.guard/a") == StepState::Answered);
}

TEST_CASE("what ended stays ended when the answer that ended it is opened again")
{
    Walk walk;
    walk.upTo("threading.splice.draw");
    REQUIRE_FALSE(walk.has("webs_clamped"));
    // A hand-over asks the vital clamp step again; the clamps have been off since.
    walk.must(HandOver{person("ben")});
    CHECK(walk.state("threading.splice.clamp") == StepState::Reconfirm);
    CHECK_FALSE(walk.has("webs_clamped"));
    walk.answer("threading.roll.mounted", "ben");
    walk.answer("threading.splice.stop", "ben");
    walk.answer("threading.splice.clamp", "ben");
    CHECK(walk.state("threading.splice.clamp") == StepState::Answered);
    CHECK_FALSE(walk.has("webs_clamped"));
    walk.answer("threading.splice.tape", "ben");  // the last answer, said again; it needed clamps only to be done
    CHECK_FALSE(walk.has("webs_clamped"));
    CHECK(walk.has("web_joined"));
}

TEST_CASE("a stage done again takes back what its steps gave until they give it again")
{
    Walk walk;
    walk.upTo("tension.settings.setting/unwind");
    walk.must(RepeatStage{"threading", "web_break"});
    for (const char* c : {"roll_mounted", "web_joined", "web_moved", "webs_clamped"}) {
        INFO(c);
        CHECK_FALSE(walk.has(c));
    }
    walk.upTo("threading.splice.tape");
    CHECK(walk.has("webs_clamped"));
    CHECK(walk.has("roll_mounted"));
    walk.answer("threading.splice.tape");
    CHECK(walk.has("web_joined"));
    CHECK_FALSE(walk.has("webs_clamped"));
}

TEST_CASE("a passed-by step gives nothing and can still be answered")
{
    Walk walk;
    walk.upTo("threading.roll.mounted");
    CHECK(walk.codeOf(SkipStep{{"threading.roll.mounted"}, "already on", std::nullopt}) == "gate.supervisor");
    walk.must(SkipStep{{"threading.roll.mounted"}, "already on", person("sue")});
    CHECK(walk.state("threading.roll.mounted") == StepState::NotApplicable);
    CHECK_FALSE(walk.has("roll_mounted"));
    walk.upTo("threading.splice.tape");
    CHECK(walk.closed("threading.splice.tape") == "gate.needs");
    walk.answer("threading.roll.mounted");
    CHECK(walk.closed("threading.splice.tape").empty());
}

TEST_CASE("a stop counts while its holder holds it")
{
    Walk walk;
    CHECK(walk.codeOf(HoldStop{" ", "latch"}) == "answer.no_holder");
    CHECK(walk.codeOf(HoldStop{"Ana", " "}) == "gate.no_place");
    CHECK(walk.codeOf(GiveUpStop{"Ana"}) == "gate.no_such_stop");
    walk.must(HoldStop{"Ana", "latch at the panel"});
    walk.must(HoldStop{"Ana", "latch at the panel"});  // said twice, held once
    walk.must(HoldStop{"Ben", "latch at the rewind"});
    CHECK(walk.run().heldStops().size() == 2);
    walk.must(GiveUpStop{"Ana"});
    CHECK(walk.has("stop_held"));
    CHECK(walk.codeOf(GiveUpStop{"Ana"}) == "gate.no_such_stop");
    walk.must(GiveUpStop{"Ben"});
    CHECK_FALSE(walk.has("stop_held"));
}

TEST_CASE("a repeated step that something ended is given again when every item is done again")
{
    Plan p = plan();
    at(p, "tension.settings.strain").ends = {"tension_on"};
    Walk walk(basis(p));
    walk.upTo("tension.settings.done");
    REQUIRE_FALSE(walk.has("tension_on"));
    walk.answer("tension.settings.setting/rewind");
    CHECK_FALSE(walk.has("tension_on"));
    walk.answer("tension.settings.setting/unwind");
    CHECK(walk.has("tension_on"));
}
