// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/history/compare.h"

#include "tests/core/history/times_rows.h"
#include "tests/core/report/report_walk.h"

namespace taut::history::test {

namespace {

using report::test::tableOf;
using report::test::wordsOf;

constexpr const char* kBrake = "set.lift.setting/unwind";

/// A run in which the brake was set to this; "" = not answered so far.
run::Run walked(const std::string& id, const std::string& brake, std::int64_t atMs = kJune)
{
    NamedWalk walk(id, atMs);
    walk.answerUpTo(kBrake);
    if (!brake.empty()) walk.must(run::Answer{{kBrake}, brake, {}});
    return *walk.run;
}
records::RunRow completed(std::uint64_t seq)
{
    records::RunRow row;
    row.seq = seq;
    row.state = "completed";
    row.present = "sealed";
    row.kind = "full";
    return row;
}
report::Report mustCompare(const FakeReader& reader, const std::vector<std::string>& runs,
                           const std::string& reference = {})
{
    const auto report = compareRuns(reader, runs, reference, 0);
    if (!report) FAIL(report.error().code << " " << plain(report.error().text));
    return *report;
}
bool has(const report::Table& table, const std::string& words)
{
    return std::any_of(table.rows.begin(), table.rows.end(), [&](const auto& row) {
        return row.size() > 1 && wordsOf(row.front()).find(words) != std::string::npos;
    });
}
records::RunRow row(const std::string& run, std::uint64_t seq, std::int64_t deviations, std::int64_t outside,
                    std::int64_t minutes)
{
    records::RunRow one = completed(seq);
    one.run = run;
    one.press = "north";
    one.job = "J-1";
    one.begunMs = kJune;
    one.endedMs = kJune + minutes * 60000;
    one.deviations = deviations;
    one.outside = outside;
    return one;
}

}  // namespace

TEST_CASE("runs beside each other say first what differs, then what is the same")
{
    FakeReader reader;
    reader.addSealed(walked("a", "1.40 bar"), completed(1));
    reader.addSealed(walked("b", "1.60 bar", kJune + kDayMs), completed(2));
    const report::Report report = mustCompare(reader, {"a", "b"});
    const auto tables = report::test::allOf<report::Table>(report);
    REQUIRE(tables.size() == 2);
    CHECK(plain(tables[0].caption) == "What differs");
    CHECK(plain(tables[1].caption) == "What is the same");
    REQUIRE(tables[0].columns.size() == 3);
    CHECK(plain(tables[0].columns[1].head) == "a");
    CHECK(plain(tables[0].columns[2].head) == "b");
    CHECK(has(tables[0], "Day"));
    CHECK(has(tables[0], "BRAKE"));
    CHECK(has(tables[1], "Press"));
    CHECK(has(tables[1], "Kind of run"));
    CHECK_FALSE(has(tables[1], "Day"));
    const auto brake = report::test::rowOf(tables[0], "BRAKE");
    CHECK(wordsOf(brake[1]) == "1.40 bar");
    CHECK(wordsOf(brake[2]) == "1.60 bar");
    CHECK(wordsOf(report::test::rowOf(tables[1], "Kind of run")[1]) == "full set-up");
}

TEST_CASE("readings that their instrument cannot tell apart count as the same")
{
    // The gauge is known to 0.1 bar.
    FakeReader reader;
    reader.addSealed(walked("a", "1.40 bar"), completed(1));
    reader.addSealed(walked("b", "1.45 bar"), completed(2));
    reader.addSealed(walked("c", "1.28 bar"), completed(3));
    CHECK(has(tableOf(mustCompare(reader, {"a", "b"}), "What is the same"), "BRAKE"));
    CHECK(has(tableOf(mustCompare(reader, {"a", "b", "c"}), "What differs"), "BRAKE"));
}

TEST_CASE("a reading and none differ, and so do a step that did not apply and one still open")
{
    FakeReader reader;
    reader.addSealed(walked("a", "1.40 bar"), completed(1));
    reader.addSealed(walked("b", ""), completed(2));
    NamedWalk walk("c");
    walk.answerUpTo(kBrake);
    walk.must(run::SkipStep{{kBrake}, "the brake is locked", walk.matteo});
    reader.addSealed(*walk.run, completed(3));
    CHECK(has(tableOf(mustCompare(reader, {"a", "b"}), "What differs"), "BRAKE"));
    CHECK(has(tableOf(mustCompare(reader, {"b", "c"}), "What differs"), "BRAKE"));
}

TEST_CASE("minutes differ from a quarter and a minute on, and a run without times has none")
{
    FakeReader reader;
    std::uint64_t seq = 4;
    for (const auto& [id, minutes] : {std::pair{"a", 40}, {"b", 45}, {"c", 70}}) {
        reader.addSealed(walked(id, "1.40 bar", kJune + static_cast<std::int64_t>(seq) * kDayMs), completed(seq));
        Row row;
        row.seq = seq;
        row.job = "J-2101";
        row.begunMs = reader.runRows.front().begunMs;
        row.workedMs = minutes * 60000LL;
        add(reader, row);
        reader.stageRows.back().run = id;
        --seq;
    }
    reader.addSealed(walked("d", "1.40 bar"), completed(1));
    CHECK(has(tableOf(mustCompare(reader, {"a", "b"}), "What is the same"), "The whole run"));
    const report::Table differs = tableOf(mustCompare(reader, {"a", "c", "d"}), "What differs");
    const auto whole = report::test::rowOf(differs, "The whole run");
    CHECK(wordsOf(whole[1]).find("40") != std::string::npos);
    CHECK(wordsOf(whole[2]).find("70") != std::string::npos);
    CHECK(wordsOf(whole[3]).empty());
    CHECK(has(differs, "Set"));
    CHECK(has(tableOf(mustCompare(reader, {"a", "d"}), "What is the same"), "The whole run"));
}

TEST_CASE("the run to measure by stands first and is named")
{
    FakeReader reader;
    reader.addSealed(walked("a", "1.40 bar"), completed(1));
    reader.addSealed(walked("b", "1.60 bar"), completed(2));
    const report::Report report = mustCompare(reader, {"a", "b"}, "b");
    CHECK(plain(report.subtitle) == "measured by the run b");
    CHECK(plain(tableOf(report, "What differs").columns[1].head) == "b");
    CHECK(plain(mustCompare(reader, {"a", "b"}).subtitle) == "measured by the run a");
    CHECK(compareRuns(reader, {"a", "b"}, "c", 0).error().code == "history.compare");
}

TEST_CASE("one run, five, one twice and one that is not there are not compared")
{
    FakeReader reader;
    reader.addSealed(walked("a", "1.40 bar"), completed(1));
    CHECK(compareRuns(reader, {}, "", 0).error().code == "history.compare");
    CHECK(compareRuns(reader, {"a"}, "", 0).error().code == "history.compare");
    CHECK(compareRuns(reader, {"a", "a"}, "", 0).error().code == "history.compare");
    CHECK(compareRuns(reader, {"a", "b", "c", "d", "e"}, "", 0).error().code == "history.compare");
    CHECK(compareRuns(reader, {"a", "z"}, "", 0).error().code == "run.unknown");
}

TEST_CASE("the best run has the fewest deviations, then the fewest readings outside, then the shortest time")
{
    FakeReader reader;
    reader.perPage = 2;
    const records::RunRow like = row("like", 9, 0, 0, 5);
    const auto best = [&](std::vector<records::RunRow> rows) {
        rows.insert(rows.begin(), like);
        reader.runRows = std::move(rows);
        const auto found = bestRun(reader, like);
        REQUIRE(found);
        return *found ? (*found)->run : "";
    };
    CHECK(best({}).empty());
    CHECK(best({row("a", 8, 1, 0, 10), row("b", 7, 0, 3, 60)}) == "b");
    CHECK(best({row("a", 8, 0, 2, 10), row("b", 7, 0, 1, 60)}) == "b");
    CHECK(best({row("a", 8, 0, 1, 30), row("b", 7, 0, 1, 20), row("c", 6, 0, 1, 25)}) == "b");
    CHECK(best({row("a", 8, 0, 1, 20), row("b", 7, 0, 1, 20)}) == "a");
}

TEST_CASE("void runs, those sent back, of another kind, abandoned ones and old ones are not the best")
{
    FakeReader reader;
    const records::RunRow like = row("like", 9, 0, 0, 5);
    records::RunRow isVoid = row("void", 8, 0, 0, 1), sentBack = row("sent back", 7, 0, 0, 1),
                    next = row("next roll", 6, 0, 0, 1), abandoned = row("abandoned", 5, 0, 0, 1),
                    other = row("other job", 4, 0, 0, 1);
    isVoid.present = "void";
    sentBack.present = "sent_back";
    next.kind = "next_roll";
    abandoned.state = "abandoned";
    other.job = "J-2";
    reader.runRows = {like, isVoid, sentBack, next, abandoned, other, row("good", 3, 2, 2, 90), row("old", 2, 0, 0, 9)};
    CHECK((*bestRun(reader, like))->run == "old");
    CHECK((*bestRun(reader, like, 5))->run == "good");
    reader.broken = "runs";
    CHECK(bestRun(reader, like).error().code == "store.failed");
}

}  // namespace taut::history::test
