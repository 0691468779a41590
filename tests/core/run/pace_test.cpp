// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/run/pace.h"

#include <catch2/catch.hpp>

#include "core/run/course.h"
#include "tests/core/run/demo_walk.h"
#include "tests/core/run/small_press.h"

// How long looking and saying takes at least is a proposal of our own, no source; the idea of flagging it is CHK-19.

using namespace taut;
using namespace taut::run;
using namespace taut::run::small;

namespace {

constexpr std::int64_t kCommandMs = 1000;  // what the clock of a Walk goes on by itself

/// A walk in which each answer comes so long after what was before it; held stops take a second besides.
struct Paced : Walk {
    using Walk::Walk;
    void after(std::int64_t ms, const std::string& step)
    {
        wait(ms - kCommandMs);
        answer(step);
    }
    void upToAt(std::int64_t ms, const std::string& until)
    {
        for (const GoodEntry& e : goodEntries()) {
            if (e.step == until) return;
            if (isOpen(state(e.step))) after(ms, e.step);
        }
    }
};

Plan watched(const std::string& step, double seconds)
{
    Plan p = plan();
    at(p, step).waitSeconds = seconds;
    return p;
}

std::vector<std::string> idsOf(const Haste& haste)
{
    std::vector<std::string> ids;
    for (const StepId& id : haste.steps) ids.push_back(id.value);
    return ids;
}

}  // namespace

TEST_CASE("a run at the pace at which people look and say has nothing to be looked at")
{
    Paced walk;
    walk.upToAt(20'000, {});
    walk.must(SignOff{"two rolls left"});
    CHECK(hasteOf(walk.run()).empty());
    Paced brisk;
    brisk.upToAt(kLeastReadingMs, {});
    CHECK(hasteOf(brisk.run()).empty());
}

TEST_CASE("answers faster than anybody can look make one finding, from the third in a row on")
{
    Paced walk;
    walk.after(20'000, "safety.walk.order");
    walk.after(1'200, "safety.walk.guard/a");
    walk.after(900, "safety.walk.guard/b");
    CHECK(hasteOf(walk.run()).empty());
    walk.after(1'100, "safety.walk.clear");
    REQUIRE(hasteOf(walk.run()).size() == 1);
    walk.after(kLeastAnswerMs - 1, "safety.walk.done");
    walk.after(20'000, "threading.roll.lift");
    const auto all = hasteOf(walk.run());
    REQUIRE(all.size() == 1);
    CHECK(all[0].what == Haste::What::Quick);
    CHECK(idsOf(all[0]) == std::vector<std::string>{"safety.walk.guard/a", "safety.walk.guard/b", "safety.walk.clear",
                                                    "safety.walk.done"});
    CHECK(all[0].n == walk.run().standing({"safety.walk.done"}).n);
    CHECK(all[0].tookMs == 1'200 + 900 + 1'100 + kLeastAnswerMs - 1);
    CHECK(all[0].leastMs == 4 * kLeastAnswerMs);
}

TEST_CASE("an answer that took its time ends a row of quick ones, and a note neither ends nor begins one")
{
    Paced walk;
    walk.after(20'000, "safety.walk.order");
    walk.after(1'000, "safety.walk.guard/a");
    walk.after(1'000, "safety.walk.guard/b");
    walk.after(kLeastAnswerMs, "safety.walk.clear");
    walk.after(1'000, "safety.walk.done");
    CHECK(hasteOf(walk.run()).empty());

    // Twenty seconds in which a note was written are time in which the step was looked at.
    Paced noted;
    noted.after(20'000, "safety.walk.order");
    for (const char* step : {"safety.walk.guard/a", "safety.walk.guard/b", "safety.walk.clear", "safety.walk.done"}) {
        noted.wait(19'000);
        noted.must(Note{{step}, "the hinge is stiff"});
        noted.after(1'000, step);
    }
    CHECK(hasteOf(noted.run()).empty());
    Paced quick;
    quick.after(20'000, "safety.walk.order");
    quick.after(1'000, "safety.walk.guard/a");
    quick.after(1'000, "safety.walk.guard/b");
    quick.wait(-500);
    quick.must(Note{{"safety.walk.clear"}, "ok so far"});
    quick.after(1'000, "safety.walk.clear");
    CHECK(hasteOf(quick.run()).size() == 1);
}

TEST_CASE("a reading that is typed takes longer at least than a fact that is said")
{
    Plan p = plan();
    for (procedure::PlanPlace& place : p.places) place.doConfirm = false;
    Paced walk(basis(p));
    walk.upToAt(20'000, "tension.settings.setting/unwind");
    walk.after(kLeastReadingMs - 1, "tension.settings.setting/unwind");
    walk.after(kLeastReadingMs - 1, "tension.settings.setting/rewind");
    walk.after(kLeastReadingMs - 1, "tension.settings.strain");
    const auto all = hasteOf(walk.run());
    REQUIRE(all.size() == 1);
    CHECK(all[0].steps.size() == 3);
    CHECK(all[0].leastMs == 3 * kLeastReadingMs);
}

TEST_CASE("what was done first and is confirmed in one go counts together, from when the place could be begun")
{
    const auto confirmed = [](std::int64_t doing) {
        Paced walk;
        walk.upToAt(20'000, "threading.roll.lift");
        walk.after(doing, "threading.roll.lift");
        walk.after(400, "threading.roll.feed");
        walk.after(400, "threading.roll.mounted");
        walk.after(20'000, "threading.splice.stop");
        return hasteOf(walk.run());
    };
    CHECK(confirmed(60'000).empty());
    const std::int64_t least = kLeastReadingMs + 2 * kLeastAnswerMs;
    CHECK(confirmed(least - 800).empty());
    REQUIRE(confirmed(least - 801).size() == 1);
    CHECK(confirmed(least - 801)[0].steps.size() == 3);
}

TEST_CASE("a step that is to be watched and was said sooner is found, to the second")
{
    const auto said = [](std::int64_t ms) {
        Paced walk(basis(watched("safety.walk.clear", 10)));
        walk.upToAt(20'000, "safety.walk.clear");
        walk.after(ms, "safety.walk.clear");
        walk.upToAt(20'000, {});
        return hasteOf(walk.run());
    };
    const auto all = said(2'300);
    REQUIRE(all.size() == 1);
    CHECK(all[0].what == Haste::What::CutShort);
    CHECK(idsOf(all[0]) == std::vector<std::string>{"safety.walk.clear"});
    CHECK(all[0].tookMs == 2'300);
    CHECK(all[0].leastMs == 10'000);
    CHECK(said(9'499).size() == 1);
    CHECK(said(9'500).empty());
    CHECK(said(10'000).empty());
}

TEST_CASE("a time to watch that no procedure has, in a record from outside, is reckoned with as a day")
{
    Paced walk(basis(watched("safety.walk.clear", 1e300)));
    walk.upToAt(20'000, {});
    const auto all = hasteOf(walk.run());
    REQUIRE(all.size() == 1);
    CHECK(all[0].leastMs == 24 * 3'600'000);
}

TEST_CASE("a movement that takes minutes by its target and was said done in seconds is found")
{
    const StepId draw{"splice.through.draw"};
    const Run before = demo::until(Run::fold(std::vector<Event>{demo::begun(
                                       demo::sources("north", "quince-jelly", "R0041"), {"full", true, std::nullopt})}),
                                   draw);
    const double minutes = before.targets().find("thread.crawl_time")->quantity()->si() / 60;
    REQUIRE(minutes > 1);
    const auto found = [&](std::int64_t ms) {
        std::vector<Haste> all;
        auto stamp = before.events().back().stamp();
        ++stamp.n;
        stamp.utcMs += ms;
        const auto event = decide(before, *demo::nextCommand(before), stamp, person("ana"));
        REQUIRE(event);
        for (const Haste& one : hasteOf(before.after(*event)))
            if (one.what == Haste::What::CutShort && one.steps.front() == draw) all.push_back(one);
        return all;
    };
    REQUIRE(found(2'000).size() == 1);
    CHECK(found(2'000)[0].tookMs == 2'000);
    CHECK(static_cast<double>(found(2'000)[0].leastMs) == Approx(minutes * 60'000).margin(1));
    CHECK(found(static_cast<std::int64_t>(minutes * 29'000)).size() == 1);
    CHECK(found(static_cast<std::int64_t>(minutes * 31'000)).empty());
}

TEST_CASE("a reading that was watched too short and is taken again is to be watched again")
{
    const std::string unwind = "tension.settings.setting/unwind";
    Plan p = watched(unwind, 30);
    for (procedure::PlanPlace& place : p.places) place.doConfirm = false;
    Paced walk(basis(p));
    walk.upToAt(20'000, unwind);
    walk.wait(40'000);
    walk.must(Answer{{unwind}, "3 bar", {}});
    REQUIRE(walk.state(unwind) == StepState::Outside);
    CHECK(hasteOf(walk.run()).empty());
    walk.after(5'000, unwind);
    REQUIRE(hasteOf(walk.run()).size() == 1);
    CHECK(hasteOf(walk.run())[0].tookMs == 5'000);
    // A figure that was written down wrong is put right without another look.
    walk.must(Correct{{unwind}, "1.42 bar", "read from the side"});
    CHECK(hasteOf(walk.run()).size() == 1);
}

TEST_CASE("what is only said again after an interruption is not taken for haste")
{
    Paced walk(basis(watched("safety.walk.clear", 10)));
    walk.upToAt(20'000, "threading.splice.draw");
    walk.must(Interrupt{"break"});
    walk.wait(kLongAwayMs);
    walk.must(Resume{{std::begin(kMakeSafe), std::end(kMakeSafe)}, true});
    std::size_t again = 0;
    for (const Step& step : walk.run().plan().steps)
        if (walk.state(step.id.value) == StepState::Reconfirm) {
            walk.after(300, step.id.value);
            ++again;
        }
    REQUIRE(again >= kQuickInARow);
    CHECK(hasteOf(walk.run()).empty());
}

TEST_CASE("a stage that is done again is looked at again, and its quick answers are found")
{
    Paced walk;
    walk.upToAt(20'000, "threading.roll.lift");
    walk.must(RepeatStage{"safety", "other"});
    for (const char* step : {"safety.walk.guard/a", "safety.walk.guard/b", "safety.walk.clear", "safety.walk.done"}) {
        if (walk.state("safety.walk.order") == StepState::Open) walk.after(20'000, "safety.walk.order");
        walk.after(700, step);
    }
    REQUIRE(hasteOf(walk.run()).size() == 1);
    CHECK(hasteOf(walk.run())[0].steps.size() == 4);
}

TEST_CASE("times between which the clock of the PC was set tell nothing")
{
    Paced back(basis(watched("safety.walk.guard/b", 10)));
    back.after(20'000, "safety.walk.order");
    back.after(20'000, "safety.walk.guard/a");
    back.after(-3'600'000, "safety.walk.guard/b");
    CHECK(hasteOf(back.run()).empty());

    // Where the program saw it, it says so, and the event that says it comes with the answer.
    Paced walk(basis(watched("safety.walk.guard/b", 10)));
    walk.upToAt(20'000, "safety.walk.guard/b");
    std::vector<Event> events = walk.run().events();
    Stamp stamp = events.back().stamp();
    stamp.n += 1;
    stamp.utcMs += 600'000;
    const Run jumped = walk.run().after(clockJumped(walk.run(), 580'000, stamp, person("ana")));
    stamp.n += 1;
    const auto answered = decide(jumped, Answer{{"safety.walk.guard/b"}, "yes", {}}, stamp, person("ana"));
    REQUIRE(answered);
    CHECK(hasteOf(jumped.after(*answered)).empty());
}
