// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/history/week.h"

#include "tests/core/history/times_rows.h"
#include "tests/core/report/report_walk.h"

namespace taut::history::test {

namespace {

using report::test::everyWord;
using report::test::tableOf;
using report::test::wordsOf;

constexpr std::int64_t kWeekMs = 7 * kDayMs;

report::Report mustWeek(const FakeReader& reader, std::int64_t begin = kJune, const std::function<bool()>& goOn = {})
{
    Names names(reader);
    const auto report = weekReport(reader, "north", begin, names, 0, goOn);
    REQUIRE(report);
    return *report;
}
/// A run every two hours of the week, newest first, of half an hour each.
FakeReader busy(std::size_t runs)
{
    FakeReader reader;
    for (std::size_t i = runs; i-- > 0;) {
        Row row;
        row.seq = i + 1;
        row.begunMs = kJune + static_cast<std::int64_t>(i) * 2 * kHourMs;
        add(reader, row);
        reader.begun[row.run()] = row.begunMs;
        records::RunRow one;
        one.seq = row.seq;
        one.run = row.run();
        one.press = row.press;
        one.job = row.job;
        one.state = "completed";
        one.present = "sealed";
        one.kind = "full";
        one.begunMs = row.begunMs;
        one.endedMs = row.begunMs + kHourMs;
        reader.runRows.push_back(one);
    }
    return reader;
}
std::string factOf(const report::Report& report, const std::string& name)
{
    for (const report::Facts& facts : report::test::allOf<report::Facts>(report))
        for (const auto& [text, cell] : facts.pairs)
            if (plain(text) == name) return wordsOf(cell);
    return "not told";
}

}  // namespace

TEST_CASE("a week begins on the Monday before, by the clock where the press stands")
{
    // 1 June 2026 is a Monday.
    CHECK(weekBegin(kJune, 0) == kJune);
    CHECK(weekBegin(kJune + 6 * kDayMs + 23 * kHourMs, 0) == kJune);
    CHECK(weekBegin(kJune - 1, 0) == kJune - kWeekMs);
    // At 23:00 UTC on Sunday it is Monday already two hours further east.
    CHECK(weekBegin(kJune - kHourMs, 120) == kJune - 2 * kHourMs);
    CHECK(weekBegin(kJune + kHourMs, -300) == kJune - kWeekMs + 5 * kHourMs);
    CHECK(weekBegin(kJune, 345) == kJune - 345 * 60000);
    // Over the turn of a year: Friday, 1 January 2027 belongs to the week of 28 December 2026.
    constexpr std::int64_t kNewYear = 1'798'761'600'000;
    CHECK(weekBegin(kNewYear, 0) == kNewYear - 4 * kDayMs);
    // 29 February 2028 is a Tuesday.
    constexpr std::int64_t kLeap = 1'835'395'200'000;
    CHECK(weekBegin(kLeap, 0) == kLeap - kDayMs);
    // 1 January 1970 was a Thursday; before it days go on backwards.
    CHECK(weekBegin(0, 0) == -3 * kDayMs);
    CHECK(weekBegin(-4 * kDayMs, 0) == -10 * kDayMs);
    CHECK(weekBegin(-3 * kDayMs - 1, 0) == -10 * kDayMs);
}

TEST_CASE("every moment lies in its week, and a week is the same for all of its moments")
{
    Dice dice(1);
    for (int i = 0; i < 2000; ++i) {
        const std::int64_t at = static_cast<std::int64_t>((dice.share() - 0.2) * 4e12);
        const int offset = static_cast<int>(dice.below(27)) * 60 - 720;
        const std::int64_t begin = weekBegin(at, offset);
        CHECK((begin <= at && at < begin + kWeekMs));
        CHECK(weekBegin(begin, offset) == begin);
        CHECK(weekBegin(begin - 1, offset) == begin - kWeekMs);
    }
}

TEST_CASE("a week with nothing in it says so and claims nothing")
{
    const report::Report report = mustWeek(FakeReader());
    CHECK(plain(report.title).find("north") != std::string::npos);
    CHECK(plain(report.subtitle) == "2026-06-01 to 2026-06-07");
    CHECK(factOf(report, "Runs") == "0");
    CHECK(factOf(report, "At the first go") == "not told");
    CHECK(factOf(report, "Web used in setting up") == "not told");
    CHECK(report::test::allOf<report::Table>(report).empty());
    CHECK(everyWord(report).find("No reading has moved away and stayed there.") != std::string::npos);
}

TEST_CASE("a week of sixty runs shows as many as a page holds and says how many more there are")
{
    FakeReader reader = busy(60);
    const report::Report report = mustWeek(reader);
    CHECK(factOf(report, "Runs") == "60");
    CHECK(factOf(report, "Not reviewed") == "60");
    CHECK(factOf(report, "At the first go") == "60 of 60");
    const report::Table runs = tableOf(report, "Runs");
    REQUIRE(runs.rows.size() == 23);
    CHECK(wordsOf(runs.rows.front()[1]) == "run-1");
    CHECK(wordsOf(runs.rows.front()[0]) == "2026-06-01 00:00");
    CHECK(wordsOf(runs.rows.back()[0]) == "and 38 more");
    CHECK(tableOf(mustWeek(busy(22)), "Runs").rows.size() == 22);
}

TEST_CASE("a week tells the web of its set-ups, and of how many runs")
{
    FakeReader reader = busy(6);
    for (std::uint64_t seq = 6; seq > 3; --seq) {
        records::Reading one = metres(seq, 20 * static_cast<double>(seq));
        one.run = "run-" + std::to_string(seq);
        reader.readingRows.push_back(one);
    }
    const report::Report report = mustWeek(reader);
    CHECK(factOf(report, "Web used in setting up") == "300 m");
    CHECK(factOf(report, "Web of a set-up, median") == "100 m, said by 3 of 6 runs");
    reader.stageRows.front().state = "abandoned";  // the sixth: 120 m
    CHECK(factOf(mustWeek(reader), "Web used in setting up") == "180 m");
    CHECK(factOf(mustWeek(reader), "At the first go") == "5 of 5");
}

TEST_CASE("a week has its own runs only, and says how each stands")
{
    FakeReader reader = busy(6);
    reader.runRows[0].begunMs = kJune + kWeekMs;
    reader.runRows[1].begunMs = kJune - 1;
    reader.runRows[2].state = "open";
    reader.runRows[2].present = "open";
    reader.runRows[3].state = "abandoned";
    reader.runRows[3].present = "reviewed";
    reader.runRows[4].present = "reviewed";
    reader.runRows[5].present = "void";
    const report::Report report = mustWeek(reader);
    CHECK(factOf(report, "Runs") == "4");
    CHECK(factOf(report, "Abandoned") == "1");
    CHECK(factOf(report, "Still open") == "1");
    CHECK(factOf(report, "Not reviewed") == "0");
    const report::Table runs = tableOf(report, "Runs");
    const auto stateOf = [&](std::size_t at) { return wordsOf(runs.rows[at].back()); };
    CHECK(stateOf(0) == "void");
    CHECK(stateOf(1) == "reviewed");
    CHECK(stateOf(2) == "abandoned, reviewed");
    CHECK(stateOf(3) == "open");
}

TEST_CASE("deviations stand with their reason, as many as fit")
{
    FakeReader reader = busy(12);
    for (std::uint64_t seq = 12; seq > 0; --seq) {
        Row row;
        row.seq = seq;
        row.begunMs = reader.begun[row.run()];
        if (seq > 3) add(reader, row, "deviated", "set.brake", "gauge under repair");
        add(reader, row, "outside", "set.brake");
    }
    const report::Report report = mustWeek(reader);
    const report::Table table = tableOf(report, "Readings outside that a supervisor accepted");
    REQUIRE(table.rows.size() == 8);
    CHECK(wordsOf(table.rows.front()[2]) == "gauge under repair");
    CHECK(wordsOf(table.rows.back()[0]) == "and 2 more");
    CHECK(report::test::allOf<report::Bars>(report).size() == 1);
}

TEST_CASE("a week tells what had drifted by its end, not what drifted after it")
{
    FakeReader reader;
    reader.perPage = 500;
    Dice dice(4);
    std::vector<double> bar;
    for (int i = 0; i < 200; ++i) bar.push_back(1.5 + 0.02 * (dice.normal() + (i >= 100 ? 4 : 0)));
    reader.readingRows = barReadings(bar);  // one an hour: the hundredth in the first week
    const std::string caption = "What has moved away from where it began, and stays there";
    const report::Table told = tableOf(mustWeek(reader, kJune + kWeekMs), caption);
    REQUIRE(told.rows.size() == 1);
    CHECK(wordsOf(told.rows[0][0]) == "tension.unwind.setting");
    CHECK(wordsOf(told.rows[0][1]).find("bar") != std::string::npos);
    CHECK_FALSE(report::test::hasTable(mustWeek(reader, kJune - 4 * kDayMs), caption));
}

TEST_CASE("a press out of use is told from the week on in which it was taken out")
{
    FakeReader reader;
    reader.withdrawn = {{"north", "bearing", "p-1", "Matteo Quill", kJune + kWeekMs + kHourMs},
                        {"south", "guard", "p-1", "Matteo Quill", kJune}};
    CHECK(everyWord(mustWeek(reader, kJune)).find("Out of use") == std::string::npos);
    CHECK(everyWord(mustWeek(reader, kJune + kWeekMs)).find("Out of use since 2026-06-08: bearing") !=
          std::string::npos);
}

TEST_CASE("a page that was told to end says that it is not finished, and claims nothing of what it did not read")
{
    FakeReader reader = busy(60);
    for (int most = 0; most < 3; ++most) {
        int asked = 0;
        const std::string words = everyWord(mustWeek(reader, kJune, [&] { return ++asked <= most; }));
        INFO(most);
        CHECK(words.find("This page was not finished") != std::string::npos);
        CHECK(words.find("No reading has moved away") == std::string::npos);
    }
    CHECK(everyWord(mustWeek(reader, kJune, [] { return true; })).find("not finished") == std::string::npos);
}

TEST_CASE("a store that fails fails the week")
{
    FakeReader reader = busy(3);
    Names names(reader);
    for (const char* question : {"runs", "stageTimes", "seriesNames"}) {
        reader.broken = question;
        CHECK(weekReport(reader, "north", kJune, names, 0).error().code == "store.failed");
    }
}

}  // namespace taut::history::test
