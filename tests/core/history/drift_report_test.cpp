// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/history/drift_report.h"

#include "core/history/times_report.h"
#include "tests/core/history/fake_reader.h"
#include "tests/core/report/report_walk.h"

namespace taut::history::test {

namespace {

using report::test::everyWord;
using report::test::tableOf;
using report::test::wordsOf;

/// A press that reads 0.06 bar too much from its 41st run on; one run an hour.
FakeReader shop(std::size_t count = 60, double by = 0.06)
{
    FakeReader reader;
    reader.perPage = 500;
    Dice dice(7);
    std::vector<double> bar;
    for (std::size_t i = 0; i < count; ++i) bar.push_back(1.5 + 0.02 * dice.normal() + (i >= 40 ? by : 0));
    reader.readingRows = barReadings(bar);
    return reader;
}
Drift driftIn(const FakeReader& reader, Measure measure = Measure::Read, const DriftBy& by = {})
{
    records::SeriesQuery query;
    query.press = "north";
    query.target = "tension.unwind.setting";
    auto drift = driftOf(seriesOf(reader, query, measure).value(), by);
    REQUIRE(drift);
    return *std::move(drift);
}
report::Report mustReport(const FakeReader& reader, const Drift& drift)
{
    Names names(reader);
    const auto report = driftReport(reader, drift, names, 0);
    REQUIRE(report);
    return *report;
}
std::string said(const FakeReader& reader) { return plain(movedSaid(driftIn(reader), 0)); }
records::Edition edition(const std::string& id, int number, std::int64_t atMs)
{
    return {id, number, "", atMs, "Matteo Quill"};
}

}  // namespace

TEST_CASE("a move is one plain sentence with its day, its run and its size")
{
    const Drift drift = driftIn(shop());
    REQUIRE(drift.moved);
    const std::string words = plain(movedSaid(drift, 0));
    CHECK(words.find("Since 2026-06-02 (run run-") == 0);
    CHECK(words.find(" bar higher: ") != std::string::npos);
    CHECK(words.find(" times its usual scatter.") != std::string::npos);
    CHECK(plain(movedSaid(driftIn(shop(60, -0.06)), 0)).find(" bar lower: ") != std::string::npos);
}

TEST_CASE("what has not moved is said to have stayed only where there are readings enough to tell")
{
    CHECK(said(shop(30)) == "It has stayed where it began.");
    CHECK(said(shop(11)) == "There are too few readings to tell whether it has moved: 12 are wanted.");
    FakeReader reader = shop(40);
    for (std::size_t i = 0; i < 15; ++i) reader.readingRows[i].pressSha = "second";
    CHECK(said(reader) == "It has stayed where it began under the present profile.");
}

TEST_CASE("the chart of values has every reading, its phases and where the move began")
{
    FakeReader reader = shop();
    reader.readingRows.front().first = "outside";
    const Drift drift = driftIn(reader);
    Names names(reader);
    const report::ControlFigure figure = valuesFigure(drift, names, 0);
    REQUIRE(figure.dots.size() == 60);
    CHECK(figure.dots.back().outside);
    CHECK_FALSE(figure.dots.front().outside);
    CHECK(figure.dots.front().day == "2026-06-01");
    CHECK(figure.since == drift.moved->since);
    REQUIRE(figure.phases.size() == 1);
    CHECK(figure.phases[0].end == 60);
    CHECK(figure.phases[0].high->si() - figure.phases[0].low->si() == Approx(6 * figure.phases[0].sigma->si()));
    CHECK(plain(figure.summary.front()) == "Readings: 60. Phases: 1.");
    CHECK(std::any_of(figure.dots.begin(), figure.dots.end(), [](const auto& dot) { return dot.signal; }));
}

TEST_CASE("the chart of differences has no dot for a reading that none stands before")
{
    FakeReader reader = shop(40);
    for (std::size_t i = 0; i < 15; ++i) reader.readingRows[i].pressSha = "second";
    reader.readingRows.back().pressSha = "before the first";
    const Drift drift = driftIn(reader);
    REQUIRE(drift.chart.phases.size() == 3);
    Names names(reader);
    const report::ControlFigure figure = rangesFigure(drift, names, 0);
    REQUIRE(figure.phases.size() == 2);
    CHECK(figure.dots.size() == 23 + 14);
    CHECK(figure.phases[0].begin == 0);
    CHECK(figure.phases[0].end == 23);
    CHECK(figure.phases[1].begin == 23);
    CHECK(figure.phases[1].end == 37);
    for (std::size_t i = 0; i < 23; ++i) CHECK(figure.dots[i].y.si() == Approx(*drift.chart.ranges[i + 2]));
    CHECK(figure.phases[1].centre->si() == Approx(drift.last().limits->meanRange));
}

TEST_CASE("what changed around a move is what this series met, oldest first")
{
    FakeReader reader = shop();
    const std::int64_t moved = kJune + 41 * kHourMs;
    reader.editionRows["press"] = {edition("north", 3, moved - kDayMs), edition("north", 2, moved - 30 * kDayMs),
                                   edition("south", 5, moved - kDayMs)};
    reader.editionRows["job"] = {edition("J-1", 2, moved - 2 * kDayMs), edition("J-9", 2, moved - 2 * kDayMs),
                                 edition("J-8", 1, moved)};
    reader.editionRows["procedure"] = {edition("cold-start", 4, moved + 2 * kDayMs),
                                       edition("cold-start", 5, moved + 9 * kDayMs)};
    const report::Table table = tableOf(mustReport(reader, driftIn(reader)), "What changed then");
    REQUIRE(table.rows.size() == 3);
    CHECK(wordsOf(table.rows[0][1]) == "job J-1, edition 2");
    CHECK(wordsOf(table.rows[1][1]) == "profile of the press north, edition 3");
    CHECK(wordsOf(table.rows[1][2]) == "Matteo Quill");
    CHECK(wordsOf(table.rows[2][1]) == "procedure cold-start, edition 4");
    const auto all = changedAround(reader, moved);
    REQUIRE(all);
    CHECK(all->size() == 5);
    CHECK(std::is_sorted(all->begin(), all->end(), [](auto& a, auto& b) { return a.atMs < b.atMs; }));
}

TEST_CASE("a move that began with the first run of a substrate or job says so, and one without a change says that")
{
    FakeReader reader = shop();
    const std::string none = everyWord(mustReport(reader, driftIn(reader)));
    CHECK(none.find("look at the press itself") != std::string::npos);
    const std::size_t since = driftIn(reader).moved->since;
    for (std::size_t i = 0; i < 60; ++i)
        if (59 - i >= since) reader.readingRows[i].substrate = "film";
    const std::string words = everyWord(mustReport(reader, driftIn(reader)));
    CHECK(words.find("first run with the substrate film") != std::string::npos);
    CHECK(words.find("first run of the job") == std::string::npos);
    CHECK(words.find("look at the press itself") == std::string::npos);
}

TEST_CASE("a report says what limits were reckoned from, and what is left out")
{
    FakeReader reader = shop(45, 0);
    reader.readingRows[3].aimed.reset();
    const std::string words = everyWord(mustReport(reader, driftIn(reader, Measure::FromTarget)));
    CHECK(words.find("from the first 30 readings of a phase") != std::string::npos);
    CHECK(words.find("no target to hold them against: 1.") != std::string::npos);
    CHECK(words.find("away from its target") != std::string::npos);
    DriftBy all;
    all.baseline = false;
    CHECK(everyWord(mustReport(reader, driftIn(reader, Measure::Read, all))).find("from all readings of a phase") !=
          std::string::npos);
}

TEST_CASE("capability stands with its interval, or the reason why there is none")
{
    const FakeReader calm = shop(30);
    const report::Report good = mustReport(calm, driftIn(calm));
    const report::Table table = tableOf(good, "Does it fit its window?");
    CHECK(table.rows.size() == 5);
    CHECK(wordsOf(table.rows[0][1]).find("with 95 % between") != std::string::npos);
    FakeReader changed = shop(30);
    changed.readingRows[4].low.reset();
    const report::Table none = tableOf(mustReport(changed, driftIn(changed)), "Does it fit its window?");
    REQUIRE(none.rows.size() == 1);
    CHECK(wordsOf(none.rows[0][1]) == "Not said: The windows of these readings are not all the same.");
}

TEST_CASE("targets, steps and stages have the names of the newest run that has them, else their ids")
{
    FakeReader reader;
    NamedWalk walk("a");
    walk.answerUpTo();
    records::RunRow row;
    row.seq = 1;
    row.state = "completed";
    row.kind = "full";
    reader.addSealed(*walk.run, row);
    Names names(reader);
    CHECK(plain(names.stage("north", "set")) == "Set");
    CHECK(plain(names.target("north", "tension.unwind.setting")) ==
          plain(walk.run->targets().find("tension.unwind.setting")->name));
    CHECK(plain(names.step("north", "set.lift.setting/unwind")).find("BRAKE") != std::string::npos);
    CHECK(plain(names.step("north", "no.such.step")) == "no.such.step");
    CHECK(plain(names.target("south", "tension.unwind.setting")) == "tension.unwind.setting");
    const int before = reader.pages;
    static_cast<void>(names.stage("north", "safety"));
    CHECK(reader.pages == before);
    CHECK(names.units("south") == UnitSystem::Metric);
}

TEST_CASE("what is told of several presses is told in the units that they have in common, else in metric ones")
{
    const auto sealed = [](FakeReader& reader, const std::string& press, bool inches) {
        run::Sources sources = run::mini::sources();
        std::string text = sources.press.text;
        const auto put = [&](const std::string& from, const std::string& to) {
            REQUIRE(text.find(from) != std::string::npos);
            text.replace(text.find(from), from.size(), to);
        };
        put("id = \"north\"", "id = \"" + press + "\"");
        if (inches) put("units = \"metric\"", "units = \"us\"");
        sources.press = run::sourceOf(press, 1, text);
        NamedWalk walk(press + "-1", kJune, sources);
        walk.answerUpTo();
        records::RunRow row;
        row.seq = reader.runRows.size() + 1;
        row.state = "completed";
        row.kind = "full";
        reader.addSealed(*walk.run, row);
    };
    FakeReader inches;
    sealed(inches, "east", true);
    CHECK(Names(inches).units("") == UnitSystem::Us);
    FakeReader both;
    sealed(both, "north", false);
    sealed(both, "east", true);
    CHECK(Names(both).units("east") == UnitSystem::Us);
    CHECK(Names(both).units("") == UnitSystem::Metric);
    Times times;
    times.runs.emplace_back();
    times.runs.back().press = "east";
    Names names(both);
    CHECK(timesReport(times, {}, Group::Press, names, 0, {}).units == UnitSystem::Metric);
    CHECK(Names(FakeReader()).units("") == UnitSystem::Metric);
}

}  // namespace taut::history::test
