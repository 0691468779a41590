// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/history/drift.h"

#include "core/units/plain.h"
#include "tests/core/history/fake_reader.h"

namespace taut::history::test {

namespace {

/// A series of one press in bar, one reading a run, all with the same window.
Series seriesIn(const std::vector<double>& bar)
{
    FakeReader reader;
    reader.perPage = 500;
    reader.readingRows = barReadings(bar);
    records::SeriesQuery query;
    query.target = "tension.unwind.setting";
    auto series = seriesOf(reader, query, Measure::Read);
    REQUIRE(series);
    return *std::move(series);
}
Drift mustDrift(Series series, const DriftBy& by = {})
{
    auto drift = driftOf(std::move(series), by);
    REQUIRE(drift);
    return *std::move(drift);
}
/// Noise of 0.02 bar about 1.5 bar, and from `since` on so much higher.
std::vector<double> noisy(Dice& dice, std::size_t count, std::size_t since = SIZE_MAX, double sigmas = 0)
{
    std::vector<double> bar;
    for (std::size_t i = 0; i < count; ++i) bar.push_back(1.5 + 0.02 * (dice.normal() + (i >= since ? sigmas : 0)));
    return bar;
}
bool worth(const Drift& drift) { return drift.moved && drift.moved->stands && std::abs(drift.moved->sigmas) >= 0.5; }

}  // namespace

TEST_CASE("a phase begins where the press ran by another profile")
{
    Series series = seriesIn(std::vector<double>(30, 1.5));
    for (std::size_t i = 12; i < 30; ++i) series.points[i].pressSha = "second";
    const Drift drift = mustDrift(series);
    REQUIRE(drift.chart.phases.size() == 2);
    CHECK(drift.chart.phases[0].end == 12);
    CHECK(drift.last().begin == 12);
}

TEST_CASE("presses in turn are no phases: only another profile of the same press is")
{
    Series series = seriesIn(std::vector<double>(30, 1.5));
    for (std::size_t i = 0; i < 30; i += 2) {
        series.points[i].press = "south";
        series.points[i].pressSha = i < 20 ? "other" : "other, second";
    }
    const Drift drift = mustDrift(series);
    REQUIRE(drift.chart.phases.size() == 2);
    CHECK(drift.last().begin == 20);
}

TEST_CASE("a series without points is refused, and so is what is no number")
{
    CHECK(driftOf(Series{}).error().code == "stats.too_few");
    Series series = seriesIn({1.5, 1.4});
    series.points[0].value = std::numeric_limits<double>::infinity();
    CHECK(driftOf(series).error().code == "stats.not_finite");
}

TEST_CASE("limits are those of the first thirty of a phase, or of all")
{
    Dice dice(1);
    const Series series = seriesIn(noisy(dice, 80, 30, 4));
    const Drift early = mustDrift(series);
    CHECK(early.last().limits->from == 30);
    CHECK(early.last().limits->centre == Approx(1.5e5).margin(2e3));
    DriftBy all;
    all.baseline = false;
    const Drift whole = mustDrift(series, all);
    CHECK(whole.last().limits->from == 80);
    CHECK(whole.last().limits->centre > early.last().limits->centre + 2e3);
    CHECK(whole.moved->since == early.moved->since);
}

TEST_CASE("the rules that are looked for are those that were asked for")
{
    // Two of three beyond two sigma, which the usual rules do not look for.
    std::vector<double> bar;
    for (int i = 0; i < 30; ++i) bar.push_back(1.5 + (i % 2 ? 0.01 : -0.01) * (i % 3 ? 1 : 2));
    bar.insert(bar.end(), {1.5, 1.57, 1.5, 1.57, 1.48});
    DriftBy early;
    early.rules = RuleSet::Early;
    const auto two = [](const Drift& drift) {
        return std::any_of(drift.chart.patterns.begin(), drift.chart.patterns.end(),
                           [](const auto& s) { return s.rule == stats::Rule::TwoOfThreeBeyondTwo; });
    };
    CHECK_FALSE(two(mustDrift(seriesIn(bar))));
    CHECK(two(mustDrift(seriesIn(bar), early)));
    CHECK(rulesOf(RuleSet::All).size() == 8);
    CHECK(rulesOf(RuleSet::WesternElectric).size() == 4);
}

TEST_CASE("a planted shift is found with its run, its side and its size")
{
    for (const double sigmas : {3.0, -3.0}) {
        Dice dice(7);
        const Drift drift = mustDrift(seriesIn(noisy(dice, 60, 40, sigmas)));
        REQUIRE(drift.moved);
        CHECK(drift.moved->since >= 37);
        CHECK(drift.moved->since <= 41);
        CHECK(drift.moved->side == (sigmas > 0 ? 1 : -1));
        CHECK(drift.moved->by == Approx(0.02e5 * sigmas).epsilon(0.25));
        CHECK(drift.moved->sigmas == Approx(sigmas).epsilon(0.35));
        CHECK(drift.moved->stands);
    }
}

TEST_CASE("a shift of one and a half sigma is found in nineteen of twenty histories, near its run, near its size")
{
    Dice dice(11);
    const int histories = 200;
    int found = 0, near = 0;
    double by = 0;
    for (int i = 0; i < histories; ++i) {
        const Drift drift = mustDrift(seriesIn(noisy(dice, 70, 45, 1.5)));
        if (!worth(drift) || drift.moved->side < 0) continue;
        ++found;
        by += drift.moved->by / 0.02e5;
        if (drift.moved->since >= 41 && drift.moved->since <= 49) ++near;
    }
    CHECK(found > histories * 95 / 100);
    CHECK(near > found * 75 / 100);
    CHECK(by / found == Approx(1.5).epsilon(0.1));
}

TEST_CASE("a trend is found as a move of its side that stands")
{
    Dice dice(3);
    std::vector<double> bar = noisy(dice, 90);
    for (std::size_t i = 30; i < 90; ++i) bar[i] -= 0.002 * static_cast<double>(i - 30);
    const Drift drift = mustDrift(seriesIn(bar));
    REQUIRE(drift.moved);
    CHECK(drift.moved->side == -1);
    CHECK(drift.moved->stands);
    CHECK(drift.moved->since >= 28);
}

TEST_CASE("noise alone is told as a standing move in about one history of a hundred, however long it is")
{
    // A sum beyond 5 sigma comes about once in 465 points when centre and sigma are known, and is back after about ten:
    // two histories of a hundred would end within one. Centre and sigma of a few readings made that thirteen.
    for (const std::size_t count : {12U, 20U, 30U, 60U, 120U, 300U}) {
        Dice dice(count);
        const int histories = 500;
        int told = 0, over = 0;
        for (int i = 0; i < histories; ++i) {
            Series series;
            for (std::size_t k = 0; k < count; ++k) {
                Point point;
                point.value = dice.normal();
                series.points.push_back(point);
            }
            const Drift drift = mustDrift(std::move(series));
            told += worth(drift);
            over += drift.moved && !drift.moved->stands;
        }
        INFO(count << " points: " << told << " stand, " << over << " are over");
        CHECK(told <= histories * 2 / 100);
        CHECK(over <= histories * 8 / 100);
    }
}

TEST_CASE("one reading that stands out is an incident and no move, also among the newest")
{
    for (const std::size_t at : {60U, 75U, 77U, 79U}) {
        Dice dice(11);
        std::vector<double> bar;
        for (std::size_t i = 0; i < 80; ++i) bar.push_back(1.5 + 0.02 * dice.normal() + (i == at ? 0.2 : 0));
        INFO(at);
        CHECK_FALSE(mustDrift(seriesIn(bar)).moved);
        // Where those about it have moved as well, it does not hide that.
        for (std::size_t i = 56; i < 80; ++i) bar[i] += 0.05;
        const Drift drift = mustDrift(seriesIn(bar));
        REQUIRE(drift.moved);
        CHECK(drift.moved->side > 0);
        CHECK(drift.moved->stands);
        CHECK(drift.moved->since >= 52);
        CHECK(drift.moved->since <= 58);
    }
}

TEST_CASE("a single reading the other way does not make a move begin anew behind it")
{
    Dice dice(12);
    std::vector<double> bar = noisy(dice, 400, 100, 5);
    bar[250] = 1.5 - 0.5;
    const Drift drift = mustDrift(seriesIn(bar));
    REQUIRE(drift.moved);
    CHECK(drift.moved->since >= 80);
    CHECK(drift.moved->since <= 101);
    CHECK(drift.moved->stands);
    CHECK(drift.moved->by == Approx(0.1e5).epsilon(0.1));
}

TEST_CASE("what came back is told as over, with the size that it had")
{
    Dice dice(5);
    std::vector<double> bar = noisy(dice, 130);
    for (std::size_t i = 40; i < 80; ++i) bar[i] += 0.06;
    const Drift drift = mustDrift(seriesIn(bar));
    REQUIRE(drift.moved);
    CHECK(drift.moved->since >= 37);
    CHECK(drift.moved->since <= 41);
    CHECK_FALSE(drift.moved->stands);
    CHECK(drift.moved->by == Approx(0.06e5).epsilon(0.15));
    CHECK_FALSE(worth(drift));
}

TEST_CASE("a move is one of the present phase: what was before the profile changed is not held against it")
{
    Dice dice(9);
    Series series = seriesIn(noisy(dice, 60, 40, 4));
    for (std::size_t i = 40; i < 60; ++i) series.points[i].pressSha = "second";
    CHECK_FALSE(mustDrift(series).moved);
}

TEST_CASE("fewer than twelve readings tell no move")
{
    std::vector<double> bar{1.50, 1.51, 1.49, 1.50, 1.51, 2.50, 2.51, 2.49, 2.50, 2.51, 2.50};
    REQUIRE(bar.size() == kFewestWatched - 1);
    CHECK_FALSE(mustDrift(seriesIn(bar)).moved);
    bar.push_back(2.51);
    CHECK(mustDrift(seriesIn(bar)).moved);
}

TEST_CASE("readings that were always the same have not moved, and one step of theirs is found")
{
    std::vector<double> bar(20, 1.5);
    const Drift still = mustDrift(seriesIn(bar));
    CHECK_FALSE(still.moved);
    CHECK(still.last().limits->sigma == 0);
    REQUIRE(still.capability);
    CHECK(still.capability->capability.error().code == "stats.no_spread");
    CHECK(still.capability->performance.error().code == "stats.no_spread");
    bar.insert(bar.end(), 20, 1.7);
    const Drift moved = mustDrift(seriesIn(bar));
    REQUIRE(moved.moved);
    CHECK(moved.moved->since == 20);
    CHECK(moved.moved->by == Approx(0.2e5));
    CHECK(std::isfinite(moved.moved->sigmas));
}

TEST_CASE("a coarse gauge that now and then shows the next mark has not moved")
{
    // A tenth of a bar is what can be read: one reading in so many is a mark higher or lower.
    for (const std::size_t often : {3U, 8U, 20U}) {
        Dice dice(often);
        const int histories = 200;
        int told = 0;
        for (int history = 0; history < histories; ++history) {
            std::vector<double> bar;
            for (int i = 0; i < 80; ++i) {
                const std::size_t die = dice.below(2 * often);
                bar.push_back(die == 0 ? 1.4 : die == 1 ? 1.6 : 1.5);
            }
            told += worth(mustDrift(seriesIn(bar)));
        }
        INFO("one in " << often << ": " << told);
        CHECK(told <= histories * 5 / 100);
    }
}

TEST_CASE("a series in control has its capability by the window of its readings")
{
    Dice dice(21);
    const Drift drift = mustDrift(seriesIn(noisy(dice, 30)));
    REQUIRE(drift.tolerance);
    CHECK(drift.tolerance->low == 1e5);
    CHECK(drift.tolerance->high == 2e5);
    REQUIRE(drift.capability);
    REQUIRE(drift.capability->performance);
    // 1 bar of window, 6 times 0.02 bar of spread.
    CHECK(drift.capability->performance->both->value == Approx(1 / 0.12).epsilon(0.3));
}

TEST_CASE("a window that changed refuses capability and says so, and so does none")
{
    Series series = seriesIn(std::vector<double>(24, 1.5));
    series.points[5].high = Quantity(1.9e5, Kind::Pressure, "bar");
    const Drift changed = mustDrift(series);
    CHECK_FALSE(changed.tolerance);
    CHECK(changed.capability.error().code == "history.window");
    CHECK(plain(changed.capability.error().text) == "The windows of these readings are not all the same.");
    // In the phase before it may have been another.
    for (std::size_t i = 6; i < 24; ++i) series.points[i].pressSha = "second";
    CHECK(mustDrift(series).tolerance);
    for (Point& point : series.points) point.low = point.high = std::nullopt;
    const Drift none = mustDrift(series);
    CHECK(none.capability.error().code == "history.window");
    CHECK(plain(none.capability.error().text) == "The newest of these readings has no window.");
}

TEST_CASE("a window that moves with its aim is the same from target")
{
    FakeReader reader;
    reader.perPage = 500;
    Dice dice(2);
    for (std::uint64_t seq = 30; seq > 0; --seq) {
        records::Reading row = barReading(seq, 1.5);
        row.aimed = (1.2 + 0.017 * static_cast<double>(seq)) * 1e5;
        row.value = *row.aimed + 2e3 * dice.normal();
        row.low = *row.aimed - 1e4;
        row.high = *row.aimed + 1e4;
        reader.readingRows.push_back(row);
    }
    records::SeriesQuery query;
    query.target = "tension.unwind.setting";
    CHECK_FALSE(mustDrift(seriesOf(reader, query, Measure::Read).value()).tolerance);
    const Drift drift = mustDrift(seriesOf(reader, query, Measure::FromTarget).value());
    REQUIRE(drift.tolerance);
    CHECK(*drift.tolerance->low == Approx(-1e4));
    CHECK_FALSE(drift.moved);
}

TEST_CASE("a window with one end has the index of that end alone")
{
    Dice dice(4);
    Series series = seriesIn(noisy(dice, 40));
    for (Point& point : series.points) point.high.reset();
    const Drift drift = mustDrift(series);
    REQUIRE(drift.tolerance);
    CHECK_FALSE(drift.tolerance->high);
    REQUIRE(drift.capability);
    REQUIRE(drift.capability->performance);
    CHECK(drift.capability->performance->both.error().code == "stats.one_sided");
    CHECK(drift.capability->performance->upper.error().code == "stats.one_sided");
    CHECK(drift.capability->performance->least->value == drift.capability->performance->lower->value);
}

TEST_CASE("one reading has a chart without limits and no capability")
{
    const Drift drift = mustDrift(seriesIn({1.5}));
    CHECK_FALSE(drift.last().limits);
    CHECK_FALSE(drift.moved);
    CHECK(drift.capability.error().code == "stats.too_few");
}

}  // namespace taut::history::test
