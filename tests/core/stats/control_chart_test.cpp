// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/control_chart.h"

#include <catch2/catch.hpp>

#include <limits>
#include <utility>

using namespace taut::stats;

namespace {

/// Up and down about a centre in a pattern that no usual rule finds.
std::vector<double> quiet(std::size_t count, double centre)
{
    const double steps[] = {0.4, -0.3, 0.1, 0.5, -0.6, -0.2, 0.3};
    std::vector<double> values;
    for (std::size_t i = 0; i < count; ++i) values.push_back(centre + steps[i % 7]);
    return values;
}

ChartRules inPhases(std::vector<std::size_t> starts)
{
    ChartRules by;
    by.starts = std::move(starts);
    return by;
}
ChartRules from(std::size_t points)
{
    ChartRules by;
    by.baseline = points;
    return by;
}
ChartRules allRules()
{
    ChartRules by;
    by.rules = kNelsonAll;
    return by;
}

}  // namespace

TEST_CASE("a chart says why it cannot be made")
{
    CHECK(chartOf({1, std::numeric_limits<double>::infinity()}).error().code == "stats.not_finite");
    CHECK(chartOf({1, 2, 3}, inPhases({2, 1})).error().code == "stats.starts");
    CHECK(chartOf({1, 2, 3}, inPhases({1, 1})).error().code == "stats.starts");
    CHECK(chartOf({1, 2, 3}, from(1)).error().code == "stats.baseline");
}

TEST_CASE("nothing and one point have no limits, and below twenty they are provisional")
{
    const auto none = chartOf({});
    REQUIRE(none);
    CHECK(none->phases.empty());
    const auto one = chartOf({5});
    REQUIRE(one);
    REQUIRE(one->phases.size() == 1);
    CHECK_FALSE(one->phases[0].limits);
    CHECK_FALSE(one->inControl(one->phases[0]));
    for (const auto& [count, provisional] : {std::pair(2U, true), std::pair(19U, true), std::pair(20U, false)}) {
        CAPTURE(count);
        const auto chart = chartOf(quiet(count, 10));
        REQUIRE(chart);
        REQUIRE(chart->phases[0].limits);
        CHECK(chart->phases[0].limits->provisional == provisional);
        CHECK(chart->phases[0].limits->from == count);
    }
}

TEST_CASE("sigma is the mean moving range over 1.128, and ranges end at 3.267 times their mean")
{
    const auto chart = chartOf({10, 12, 11, 14});
    REQUIRE(chart);
    const Limits& limits = *chart->phases[0].limits;
    CHECK(limits.centre == 11.75);
    CHECK(limits.meanRange == 2);
    CHECK(limits.sigma == Approx(2 / 1.128));
    CHECK(limits.line(-3) == Approx(11.75 - 6 / 1.128));
    CHECK(limits.rangeLimit() == Approx(6.534));
}

TEST_CASE("phases have limits of their own, and no range and no run reaches over their border")
{
    std::vector<double> values = quiet(21, 10);
    const std::vector<double> after = quiet(21, 20);
    values.insert(values.end(), after.begin(), after.end());
    const auto whole = chartOf(values);
    REQUIRE(whole);
    CHECK_FALSE(whole->inControl(whole->phases[0]));
    CHECK(whole->widened == std::vector<std::size_t>{21});

    const auto split = chartOf(values, inPhases({21}));
    REQUIRE(split);
    REQUIRE(split->phases.size() == 2);
    CHECK(split->phases[0].limits->centre == Approx(10 + 0.2 / 7));
    CHECK(split->phases[1].limits->centre == Approx(20 + 0.2 / 7));
    CHECK_FALSE(split->ranges[0]);
    CHECK_FALSE(split->ranges[21]);
    CHECK(split->ranges[22] == Approx(0.7));
    CHECK(split->patterns.empty());
    CHECK(split->widened.empty());
    CHECK(split->inControl(split->phases[1]));
    CHECK(&split->phaseOf(20) == &split->phases[0]);
    CHECK(&split->phaseOf(21) == &split->phases[1]);
    CHECK(&split->phaseOf(41) == &split->phases[1]);
    // One that begins at the first point is no border, one after the last is none yet.
    CHECK(chartOf(values, inPhases({0, 21, 42, 99}))->phases.size() == 2);
}

TEST_CASE("a signal in one phase leaves the others in control and names the points of the whole")
{
    std::vector<double> values = quiet(21, 10);
    const std::vector<double> after = quiet(21, 20);
    values.insert(values.end(), after.begin(), after.end());
    values[30] = 26;
    const auto chart = chartOf(values, inPhases({21}));
    REQUIRE(chart);
    CHECK(chart->inControl(chart->phases[0]));
    CHECK_FALSE(chart->inControl(chart->phases[1]));
    REQUIRE(chart->patterns.size() == 1);
    CHECK(chart->patterns[0].rule == Rule::BeyondThree);
    CHECK(chart->patterns[0].points == std::vector<std::size_t>{30});
    CHECK(chart->widened == std::vector<std::size_t>{30, 31});
}

TEST_CASE("with a baseline later points are held against how it began")
{
    // 25 quiet points, then a slow climb: by all points the middle of the climb is the centre, and the early points
    // fire too; by the first 25 only what left them does.
    std::vector<double> values = quiet(25, 10);
    for (int i = 0; i < 25; ++i) values.push_back(quiet(25, 10)[static_cast<std::size_t>(i)] + 0.15 * (i + 1));
    const auto all = chartOf(values);
    const auto held = chartOf(values, from(25));
    REQUIRE(all);
    REQUIRE(held);
    CHECK(held->phases[0].limits->from == 25);
    CHECK(held->phases[0].limits->centre == Approx(chartOf(quiet(25, 10))->phases[0].limits->centre));
    REQUIRE_FALSE(all->patterns.empty());
    REQUIRE_FALSE(held->patterns.empty());
    CHECK(all->patterns.front().points.front() < 25);
    for (const Signal& signal : held->patterns) CHECK(signal.points.back() >= 25);
    // More than there are: all of them.
    CHECK(chartOf(quiet(5, 10), from(20))->phases[0].limits->from == 5);
}

TEST_CASE("readings that never differ are in control, whatever their sum rounds to")
{
    const auto chart = chartOf(std::vector<double>(30, 0.1), allRules());
    REQUIRE(chart);
    CHECK(chart->phases[0].limits->sigma == 0);
    CHECK(chart->patterns.empty());
    CHECK(chart->widened.empty());
    CHECK(chart->inControl(chart->phases[0]));
}

TEST_CASE("a far-off origin changes no finding")
{
    std::vector<double> values = quiet(30, 0);
    values[12] = 5;
    std::vector<double> far = values;
    for (double& v : far) v += 1e9;
    const auto here = chartOf(values, allRules());
    const auto there = chartOf(far, allRules());
    REQUIRE(here);
    REQUIRE(there);
    REQUIRE(here->patterns.size() == there->patterns.size());
    for (std::size_t i = 0; i < here->patterns.size(); ++i)
        CHECK(here->patterns[i].points == there->patterns[i].points);
    CHECK(there->phases[0].limits->sigma == Approx(here->phases[0].limits->sigma).epsilon(1e-6));
}
