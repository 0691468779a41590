// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/history/open_steps.h"

#include "core/history/times_report.h"
#include "tests/core/history/times_rows.h"
#include "tests/core/report/report_walk.h"

namespace taut::history::test {

namespace {

constexpr const char* kBrake = "set.lift.setting/unwind";

/// A store with one row of times for each of these runs, all given up, newest first.
FakeReader storeOf(const std::vector<run::Run>& newestFirst)
{
    FakeReader reader;
    std::uint64_t seq = newestFirst.size();
    for (const run::Run& run : newestFirst) {
        reader.sealed.emplace(run.id(), run);
        Row row;
        row.seq = seq--;
        row.state = "abandoned";
        add(reader, row);
        reader.stageRows.back().run = run.id();
    }
    return reader;
}
std::vector<std::string> openIn(const Times& times)
{
    std::vector<std::string> steps;
    for (const records::Incident& one : times.incidents)
        if (one.what == kLeftOpen) steps.push_back(one.step);
    return steps;
}

}  // namespace

TEST_CASE("of a run that was given up the step that was next stood open, and nothing behind it")
{
    NamedWalk walk("a");
    walk.answerUpTo(kBrake);
    walk.must(run::Abandon{"the order was taken back"});
    const FakeReader reader = storeOf({*walk.run});
    Times times = timesOf(reader, {}).value();
    CHECK(openIn(times).empty());
    REQUIRE(addOpenSteps(reader, times));
    CHECK(openIn(times) == std::vector<std::string>{kBrake});
    CHECK(times.lookedInto == 1);
    CHECK(times.incidents.front().target == "tension.unwind.setting");
}

TEST_CASE("a reading that was outside stood open too, and what was never begun begins with its first step")
{
    NamedWalk outside("a"), none("b");
    outside.answerUpTo(kBrake);
    outside.must(run::Answer{{kBrake}, "5.9 bar", {}});
    REQUIRE(outside.run->stateOf({kBrake}) == run::StepState::Outside);
    outside.must(run::Abandon{"the brake does not hold"});
    none.must(run::Abandon{"wrong press"});
    const FakeReader reader = storeOf({*outside.run, *none.run});
    Times times = timesOf(reader, {}).value();
    REQUIRE(addOpenSteps(reader, times));
    const auto steps = openIn(times);
    REQUIRE(steps.size() == 3);
    CHECK(steps[0] == kBrake);
    CHECK(steps[1] == "set.lift.setting/rewind");
    CHECK(steps[2] == "safety.walk.clear");
}

TEST_CASE("a step is called as the press calls it that has it, whichever press comes first")
{
    NamedWalk given("a"), whole("b");
    given.answerUpTo(kBrake);
    given.must(run::Abandon{"wrong press"});
    whole.answerUpTo();
    whole.must(run::SignOff{""});
    FakeReader reader = storeOf({*given.run});
    records::RunRow row;
    row.seq = 9;
    row.state = "completed";
    row.kind = "full";
    reader.addSealed(*whole.run, row);
    Row other;
    other.seq = 2;
    other.press = "south";
    FakeReader both = reader;
    both.stageRows.clear();
    add(both, other);
    both.stageRows.insert(both.stageRows.end(), reader.stageRows.begin(), reader.stageRows.end());
    Times times = timesOf(both, {}).value();
    REQUIRE(times.runs.front().press == "south");
    REQUIRE(addOpenSteps(both, times));
    Names names(both);
    const auto bars = lossBars(times, Loss::LeftOpen, "south", names);
    REQUIRE(bars);
    CHECK(plain(bars->rows.front().name).find("BRAKE") != std::string::npos);
}

TEST_CASE("only runs that were given up are looked into, the newest of them, and no further than one is let")
{
    std::vector<run::Run> runs;
    for (int i = 0; i < 5; ++i) {
        NamedWalk walk("run-" + std::to_string(5 - i));
        walk.must(run::Abandon{"wrong press"});
        runs.push_back(*walk.run);
    }
    FakeReader reader = storeOf(runs);
    reader.stageRows[2].state = "completed";
    Times times = timesOf(reader, {}).value();
    REQUIRE(addOpenSteps(reader, times, {}, 3));
    CHECK(times.lookedInto == 3);
    CHECK(reader.documents == 3);
    REQUIRE(times.incidents.size() == 3);
    CHECK(times.incidents.back().run == "run-2");
    Names names(reader);
    const report::Report page = timesReport(times, {}, Group::Press, names, 0);
    CHECK(report::test::everyWord(page).find("Steps left open are told of the newest 3 abandoned runs.") !=
          std::string::npos);
    bool told = false;
    for (const report::Bars& bars : report::test::allOf<report::Bars>(page))
        if (plain(bars.caption) == "Left open in abandoned runs, by step") {
            told = true;
            REQUIRE(bars.rows.size() == 1);
            CHECK(plain(bars.rows[0].said) == "3, together 100 %");
        }
    CHECK(told);
    Times stopped = timesOf(reader, {}).value();
    REQUIRE(addOpenSteps(reader, stopped, [] { return false; }));
    CHECK(stopped.lookedInto == 0);
    // A run whose document is gone is told, not passed over.
    reader.sealed.erase("run-5");
    Times again = timesOf(reader, {}).value();
    CHECK(addOpenSteps(reader, again).error().code == "run.unknown");
}

}  // namespace taut::history::test
