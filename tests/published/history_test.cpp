// SPDX-License-Identifier: GPL-3.0-or-later
// The same examples as in stats_test.cpp, asked as a supervisor asks: readings and incidents of runs in a store, read
// as a series, charted, counted.
#include "core/history/drift.h"
#include "tests/core/history/times_rows.h"
#include "tests/published/evidence.h"

using namespace evidence;
using namespace taut::history::test;
namespace history = taut::history;

TEST_CASE("the individuals chart of the handbook is what a series of runs shows")
{
    FakeReader reader;
    const double batches[] = {49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1};
    for (std::uint64_t seq = 10; seq > 0; --seq) {
        taut::records::Reading row = metres(seq, batches[seq - 1]);
        row.low = 40;
        row.high = 60;
        reader.readingRows.push_back(row);
    }
    taut::records::SeriesQuery query;
    query.target = history::kWebOfSetUp;
    auto series = history::seriesOf(reader, query, history::Measure::Read);
    REQUIRE(series);
    const auto drift = history::driftOf(*std::move(series));
    REQUIRE(drift);
    const taut::stats::Limits& limits = *drift->last().limits;
    const Page page = fromMemory("statistics", "e-Handbook", "6.3.2.2, individuals control charts, example, as runs");
    page.check("–", "centre", limits.centre, 50.81, "", within(0.00005));
    page.check("–", "upper control limit", limits.line(3), 55.8041, "", within(0.00005));
    page.check("–", "lower control limit", limits.line(-3), 45.8159, "", within(0.00005));
    page.check("–", "signals", static_cast<double>(drift->chart.patterns.size()), 0, "", kExact);
    // Ten readings are too few to speak of capability (common practice, no source).
    REQUIRE(drift->capability);
    CHECK(drift->capability->capability.error().code == "stats.too_few");
}

TEST_CASE("capability of a series is that of the handbook's example")
{
    // Mean 16, s 2 and the limits 8 and 20 are those of 6.1.6; the runs are made so that they have them.
    FakeReader reader;
    reader.perPage = 500;
    Dice dice(616);
    std::vector<double> values;
    double mean = 0, squares = 0;
    for (int i = 0; i < 30; ++i) {
        values.push_back(dice.normal());
        mean += values.back() / 30;
    }
    for (const double v : values) squares += (v - mean) * (v - mean);
    for (std::uint64_t seq = 30; seq > 0; --seq) {
        taut::records::Reading row = metres(seq, 16 + 2 * (values[seq - 1] - mean) / std::sqrt(squares / 29));
        row.low = 8;
        row.high = 20;
        reader.readingRows.push_back(row);
    }
    taut::records::SeriesQuery query;
    query.target = history::kWebOfSetUp;
    const auto drift = history::driftOf(history::seriesOf(reader, query, history::Measure::Read).value());
    REQUIRE(drift);
    REQUIRE(drift->capability);
    REQUIRE(drift->capability->performance);
    const auto& of = *drift->capability->performance;
    const Page page = form("statistics", "e-Handbook", "6.1.6, what is process capability, example, as runs");
    page.check("–", "Pp", of.both->value, 1, "", within(0.00005));
    page.check("–", "Ppu", of.upper->value, 0.6667, "", within(0.00005));
    page.check("–", "Ppl", of.lower->value, 1.3333, "", within(0.00005));
    page.check("–", "Ppk", of.least->value, 0.6667, "", within(0.00005));
    page.check("–", "off centre", *drift->capability->offCentre, 0.3333, "", within(0.00005));
}

TEST_CASE("losses of runs are a Pareto table, and runs at the first go have Wilson's interval")
{
    FakeReader reader;
    reader.perPage = 500;
    for (std::uint64_t seq = 50; seq > 0; --seq) {
        taut::history::test::Row row;
        row.seq = seq;
        add(reader, row);
        if (seq % 20 == 5) add(reader, row, "deviated", "set.brake");
        if (seq == 17) {
            const std::pair<const char*, int> causes[] = {{"splice_tape_missed", 31}, {"tension_out_of_band", 22},
                                                          {"web_guide_offset", 14},   {"threading_path", 9},
                                                          {"guard_open", 6},          {"other", 8}};
            for (const auto& [cause, times] : causes)
                for (int i = 0; i < times; ++i) add(reader, row, "interrupted", "", cause);
        }
    }
    const auto times = history::timesOf(reader, {});
    REQUIRE(times);
    const auto rows = history::lossesOf(*times, history::Loss::Interruptions);
    REQUIRE(rows.size() == 6);
    const double cumulative[] = {34.44, 58.89, 74.44, 84.44, 91.11, 100};
    const Page page = definition("statistics", "running sums over the total, largest first, the rest last, as runs");
    for (std::size_t i = 0; i < 6; ++i)
        page.check("–", "cumulative to " + rows[i].cause.name, 100 * rows[i].cumulative, cumulative[i], "%",
                   within(0.005));
    const auto rate = history::firstGoRate(*times);
    REQUIRE(rate);
    const Page wilson = form("statistics", "e-Handbook, Wilson", "7.2.4.1, interval of a proportion, as runs");
    wilson.check("–", "47 of 50", 100 * rate->share, 94.0, "%", within(0.05));
    wilson.check("–", "47 of 50, lower end", 100 * rate->interval.low, 83.8, "%", within(0.05));
    wilson.check("–", "47 of 50, upper end", 100 * rate->interval.high, 97.9, "%", within(0.05));
}
