// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/run/attention.h"

#include <algorithm>
#include <catch2/catch.hpp>

#include "core/run/words.h"
#include "core/units/plain.h"
#include "tests/core/run/small_press.h"

using namespace taut;
using namespace taut::run;
using namespace taut::run::small;

TEST_CASE("a run is looked through with what deviates first, then what is not done, then what is near")
{
    Walk walk;
    walk.must(SkipStep{{"safety.walk.order"}, "sample", std::nullopt});
    walk.upTo("tension.settings.setting/unwind");
    walk.must(Answer{{"tension.settings.setting/unwind"}, "1.65 bar", {}});  // near: 1.1 to 1.7 bar, read to 0.1 bar
    walk.must(Answer{{"tension.settings.setting/rewind"}, "2 bar", {}});
    walk.must(AcceptDeviation{{"tension.settings.setting/rewind"}, "brake", signer("sue")});
    walk.must(Correct{{"threading.roll.feed"}, "under", "looked again"});
    std::vector<std::string> ids;
    for (const procedure::Step* step : byAttention(walk.run())) ids.push_back(step->id.value);
    const std::vector<std::string> first{
        "threading.roll.feed",   "tension.settings.setting/rewind", "safety.walk.order",   "tension.settings.strain",
        "tension.settings.done", "tension.settings.setting/unwind", "safety.walk.guard/a", "safety.walk.guard/b"};
    REQUIRE(ids.size() == walk.run().plan().steps.size());
    CHECK(std::vector<std::string>(ids.begin(), ids.begin() + 8) == first);
    // The rest keeps the order of the plan.
    CHECK(ids.back() == "threading.splice.done");
}

TEST_CASE("a choice is told in the words of its button, and a reading as it was typed")
{
    const Plan p = plan();
    const Step* feed = p.find({"threading.roll.feed"});
    CHECK(plain(enteredSaid(feed, "over")) == "Over");
    CHECK(plain(enteredSaid(feed, "no such word")) == "no such word");
    CHECK(plain(enteredSaid(p.find({"threading.roll.lift"}), "1,2 bar")) == "1,2 bar");
    CHECK(enteredSaid(p.find({"safety.walk.clear"}), "yes").args.empty());  // a word of ours: it can be translated
    CHECK(enteredSaid(p.find({"threading.splice.draw"}), "done").args.empty());
    CHECK(plain(enteredSaid(p.find({"threading.splice.stop"}), "yes")) == "held by yes");  // a name, whatever it is
    CHECK(plain(enteredSaid(nullptr, "over")) == "over");
}
