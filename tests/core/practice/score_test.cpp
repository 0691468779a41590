// SPDX-License-Identifier: GPL-3.0-or-later
// What an attempt comes to. The worked figures (24 items of 46 points; who passes, who does not) were reckoned by hand
// by the rule of the house: 3, 2 and 1 points, a hint halves, the wrong order takes half a point, nine tenths pass.
#include "core/practice/score.h"

#include <catch2/catch.hpp>

#include "tests/core/targets/demo_inputs.h"

using namespace taut;
using namespace taut::practice;

namespace {

/// Six vital, ten measured, eight others.
std::vector<Item> items()
{
    std::vector<Item> all;
    for (std::size_t i = 0; i < 24; ++i) all.push_back({"s" + std::to_string(i), i < 6 ? 3 : i < 16 ? 2 : 1, i < 6, i});
    return all;
}
std::vector<Outcome> everything()
{
    std::vector<Outcome> all;
    for (const Item& item : items()) all.push_back({item.step, Fate::Done, false, false});
    return all;
}
Score of(const std::vector<Outcome>& outcomes) { return scoreOf(items(), outcomes); }
std::vector<Outcome> runA()
{
    auto all = everything();
    all[6].fate = Fate::Left;
    all[7].hinted = true;
    all[8].outOfOrder = true;
    return all;
}
std::vector<Outcome> runB()
{
    auto all = everything();
    all[0].fate = Fate::Left;
    return all;
}
std::vector<Outcome> runC()
{
    auto all = everything();
    all[23].fate = Fate::Left;
    return all;
}
Tried tried(const std::vector<Outcome>& outcomes, const char* fault) { return {of(outcomes).passed(), {{fault}}}; }

}  // namespace

TEST_CASE("an attempt is scored by weight, and a vital step left is not yet whatever the sum")
{
    CHECK(of(everything()).total == 46);
    CHECK(of(everything()).share() == 1);
    const Score a = of(runA());
    CHECK(a.earned == 42.5);
    CHECK(100 * a.share() == Approx(92.39).margin(0.005));
    CHECK(a.passed());
    CHECK(a.hints == 1);
    CHECK(a.orderErrors == 1);
    const Score b = of(runB());
    CHECK(b.earned == 43);
    CHECK(100 * b.share() == Approx(93.48).margin(0.005));
    CHECK(b.vitalMissed == std::vector<std::string>{"s0"});
    CHECK_FALSE(b.passed());
    CHECK(std::string(resultWord(b)) == "not_yet");
    const Score c = of(runC());
    CHECK(c.earned == 45);
    CHECK(100 * c.share() == Approx(97.83).margin(0.005));
    CHECK(std::string(resultWord(c)) == "passed");
    auto four = everything();
    for (std::size_t i = 6; i < 10; ++i) four[i].fate = Fate::Left;
    const Score d = of(four);
    CHECK(d.earned == 38);
    CHECK(100 * d.share() == Approx(82.61).margin(0.005));
    CHECK_FALSE(d.passed());
}

TEST_CASE("a vital step that the press contradicted is missed, and what nobody answered is too")
{
    auto said = everything();
    said[2].fate = Fate::Contradicted;
    CHECK(of(said).vitalMissed == std::vector<std::string>{"s2"});
    CHECK(of(said).earned == 43);
    CHECK(of({}).vitalMissed.size() == 6);
    CHECK(of({}).earned == 0);
    CHECK_FALSE(scoreOf({}, {}).passed());
    // Half of the smallest, less the wrong order, is nothing, not less.
    const std::vector<Item> one{{"x", 1, false, 0}};
    CHECK(scoreOf(one, std::vector<Outcome>{{"x", Fate::Done, true, true}}).earned == 0);
    // What is no item counts nothing.
    auto more = everything();
    more.push_back({"elsewhere", Fate::Done, false, false});
    CHECK(of(more) == of(everything()));
}

TEST_CASE("nine tenths pass to the half point")
{
    const std::vector<Item> ten(10, {"", 1, false, 0});
    std::vector<Item> named = ten;
    std::vector<Outcome> outcomes;
    for (std::size_t i = 0; i < 10; ++i) {
        named[i].step = "s" + std::to_string(i);
        outcomes.push_back({named[i].step, i == 0 ? Fate::Left : Fate::Done, false, false});
    }
    CHECK(scoreOf(named, outcomes).passed());
    outcomes[1].hinted = true;
    CHECK_FALSE(scoreOf(named, outcomes).passed());
}

TEST_CASE("of an order as few as possible are taken for moved")
{
    const auto moved = [](std::vector<std::size_t> ranks) { return movedOf(ranks); };
    CHECK(moved({}).empty());
    CHECK(moved({1, 2, 3}) == std::vector<bool>{false, false, false});
    // One done too late, among many.
    CHECK(moved({1, 3, 4, 5, 2}) == std::vector<bool>{false, false, false, false, true});
    // One done too early.
    CHECK(moved({5, 1, 2, 3, 4}) == std::vector<bool>{true, false, false, false, false});
    // Alike in rank is done and confirmed in any order.
    CHECK(moved({1, 1, 2, 1, 2}) == std::vector<bool>{false, false, true, false, false});
    CHECK(moved({3, 2, 1}) == std::vector<bool>{true, true, false});
}

TEST_CASE("three in a row with three different faults are ready to be observed, and a failure begins anew")
{
    CHECK(inARow(std::vector{tried(runC(), "a"), tried(runA(), "b"), tried(runC(), "c")}) == kInARow);
    CHECK(inARow(std::vector{tried(runC(), "a"), tried(runB(), "b"), tried(runC(), "c")}) == 1);
    CHECK(inARow(std::vector{tried(runC(), "a"), tried(runA(), "a"), tried(runC(), "a")}) == 1);
    // The same faults again say nothing new: the row goes back only to them.
    CHECK(inARow(std::vector{tried(runC(), "a"), tried(runA(), "b"), tried(runC(), "a")}) == 2);
    CHECK(inARow(std::vector{tried(runC(), "a"), Tried{true, {}}, tried(runC(), "b")}) == 2);
    CHECK(inARow(std::vector{tried(runC(), "a"), Tried{false, {}}, tried(runC(), "b")}) == 2);
    CHECK(inARow({}) == 0);
    // Another amount of the same fault, or another order of them, is no other fault.
    CHECK(inARow(std::vector{Tried{true, {{"a", "", 1}, {"b"}}}, Tried{true, {{"b"}, {"a", "", 2}}}}) == 1);
    CHECK(inARow(std::vector{Tried{true, {{"a", "x"}}}, Tried{true, {{"a", "y"}}}}) == 2);
}

TEST_CASE("what is named is held against what can be wrong at the press")
{
    const auto press = demo::press("north");
    const auto all = suspectsOf(*press);
    const std::vector<Fault> faults{{"guard.sticks", "infeed_guard"}, {"air.low"}};
    const auto nothing = detectionOf(*press, faults, {});
    CHECK(nothing == Detection{0, 2, 0, all.size() - 2});
    const std::vector<Suspect> named{{"guard.sticks", "infeed_guard"}, {"guard.sticks", "outfeed_guard"}};
    CHECK(detectionOf(*press, faults, named) == Detection{1, 1, 1, all.size() - 2});
    // Said twice counts once; said of every guard is in vain for those that are in order.
    const std::vector<Suspect> wide{{"guard.sticks", ""}, {"guard.sticks", "infeed_guard"}};
    const auto many = detectionOf(*press, faults, wide);
    CHECK(many.hits == 1);
    CHECK(many.falseAlarms == press->guards.size() - 1);
    Detection pooled{3, 0, 0, 8};
    pooled += Detection{4, 1, 1, 8};
    CHECK(pooled.sensitivity()->dPrime == Approx(2.6845).margin(0.00005));
    for (const Suspect& suspect : all) CHECK_FALSE(suspectText(suspect, *press).empty());
}

TEST_CASE("the same seed draws the same faults, another seed others, and never one twice")
{
    const auto press = demo::press("south");
    CHECK(drawnFaults(*press, 41, 3) == drawnFaults(*press, 41, 3));
    std::size_t others = 0;
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        const auto drawn = drawnFaults(*press, seed, 3);
        REQUIRE(drawn.size() == 3);
        for (std::size_t i = 0; i < 3; ++i)
            for (std::size_t j = 0; j < i; ++j)
                CHECK_FALSE((drawn[i].what == drawn[j].what && drawn[i].item == drawn[j].item));
        if (drawn != drawnFaults(*press, 41, 3)) ++others;
    }
    CHECK(others >= 19);
    CHECK(drawnFaults(*press, 1, 1000).size() == suspectsOf(*press).size());
}
