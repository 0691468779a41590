// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/capability.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <limits>
#include <random>

using namespace taut::stats;

namespace {

/// Normal values, the same for every compiler.
std::vector<double> normals(std::mt19937_64& dice, std::size_t count)
{
    std::vector<double> values;
    for (std::size_t i = 0; i < count; ++i)
        values.push_back(normalQuantile((static_cast<double>(dice() >> 11U) + 0.5) / 9007199254740992.0));
    return values;
}
ControlChart chart(std::vector<double> values)
{
    auto made = chartOf(std::move(values));
    REQUIRE(made);
    return *made;
}
std::vector<double> calm(std::size_t count)
{
    const double steps[] = {0.4, -0.3, 0.1, 0.5, -0.6, -0.2, 0.3};
    std::vector<double> values;
    for (std::size_t i = 0; i < count; ++i) values.push_back(10 + steps[i % 7]);
    return values;
}

}  // namespace

TEST_CASE("a phase in control has both pairs of indices, each by its own spread")
{
    const ControlChart of = chart(calm(28));
    const auto all = capabilityOf(of, of.phases[0], {8.0, 12.0});
    REQUIRE(all);
    REQUIRE(all->capability);
    REQUIRE(all->performance);
    const Indices& capable = *all->capability;
    CHECK(capable.of.sigma == Approx(of.phases[0].limits->sigma));
    CHECK(capable.both->value == Approx(4 / (6 * of.phases[0].limits->sigma)));
    CHECK(capable.least->value == capable.upper->value);  // the mean lies above the middle
    CHECK(capable.least->value < capable.lower->value);
    CHECK(capable.of.freedom < 27);
    const auto s = overallSpread(of.values);
    REQUIRE(s);
    CHECK(s->freedom == 27);
    CHECK(all->performance->both->value == Approx(4 / (6 * s->sigma)));
    REQUIRE(all->offCentre);
    CHECK(*all->offCentre == Approx((0.2 / 7) / 2));
    // As the handbook has it: the least is (1 - k) of both.
    CHECK(capable.least->value == Approx((1 - *all->offCentre) * capable.both->value));
    CHECK(all->below == 0);
    CHECK(all->above == 0);
}

TEST_CASE("a phase that is not in control has no capability, and says so, but a performance")
{
    std::vector<double> values = calm(28);
    values[9] = 13;
    const ControlChart of = chart(values);
    const auto all = capabilityOf(of, of.phases[0], {8.0, 12.0});
    REQUIRE(all);
    REQUIRE_FALSE(all->capability);
    CHECK(all->capability.error().code == "stats.not_in_control");
    REQUIRE(all->performance);
    CHECK(all->above == 1);
    CHECK(all->below == 0);
}

TEST_CASE("too few values and values without spread are refused with the reason")
{
    const ControlChart few = chart(calm(19));
    const auto little = capabilityOf(few, few.phases[0], {8.0, 12.0});
    REQUIRE(little);
    CHECK(little->capability.error().code == "stats.too_few");
    CHECK(little->performance.error().code == "stats.too_few");
    const ControlChart equal = chart(std::vector<double>(30, 0.1));
    const auto stiff = capabilityOf(equal, equal.phases[0], {0.0, 12.0});
    REQUIRE(stiff);
    CHECK(stiff->capability.error().code == "stats.no_spread");
    CHECK(stiff->performance.error().code == "stats.no_spread");
    const ControlChart one = chart({5});
    CHECK(capabilityOf(one, one.phases[0], {0.0, 12.0})->capability.error().code == "stats.too_few");
    CHECK(overallSpread({}).error().code == "stats.too_few");
    const double single[] = {5};
    CHECK(overallSpread(single)->sigma == 0);
}

TEST_CASE("of one limit there is only the index of its side")
{
    const ControlChart of = chart(calm(28));
    const auto above = capabilityOf(of, of.phases[0], {std::nullopt, 12.0});
    REQUIRE(above);
    REQUIRE(above->capability);
    CHECK(above->capability->both.error().code == "stats.one_sided");
    CHECK(above->capability->lower.error().code == "stats.one_sided");
    CHECK(above->capability->least->value == above->capability->upper->value);
    CHECK(above->offCentre.error().code == "stats.one_sided");
    const auto below = capabilityOf(of, of.phases[0], {8.0, std::nullopt});
    REQUIRE(below);
    REQUIRE(below->capability);
    CHECK(below->capability->upper.error().code == "stats.one_sided");
    CHECK(below->capability->least->value == below->capability->lower->value);
}

TEST_CASE("limits that are none are refused as a whole, and so is a confidence that is none")
{
    const ControlChart of = chart(calm(28));
    CHECK(capabilityOf(of, of.phases[0], {}).error().code == "stats.tolerance");
    CHECK(capabilityOf(of, of.phases[0], {12.0, 8.0}).error().code == "stats.tolerance");
    CHECK(capabilityOf(of, of.phases[0], {8.0, 8.0}).error().code == "stats.tolerance");
    CHECK(capabilityOf(of, of.phases[0], {std::numeric_limits<double>::quiet_NaN(), 8.0}).error().code ==
          "stats.tolerance");
    CHECK(capabilityOf(of, of.phases[0], {8.0, 12.0}, 1).error().code == "stats.confidence");
    CHECK(indicesOf({10, 1, 30, 29}, {8.0, 12.0}, 0).error().code == "stats.confidence");
}

TEST_CASE("a value at a limit is not outside")
{
    const ControlChart of = chart(calm(28));  // 9.4 to 10.5
    const auto all = capabilityOf(of, of.phases[0], {10 - 0.6, 10 + 0.5});
    REQUIRE(all);
    CHECK(all->below + all->above == 0);
    CHECK(capabilityOf(of, of.phases[0], {9.5, 10.45})->below == 4);
    CHECK(capabilityOf(of, of.phases[0], {9.5, 10.45})->above == 4);
}

TEST_CASE("only the phase's own values are counted")
{
    std::vector<double> values = calm(28);
    for (const double v : calm(28)) values.push_back(v + 10);
    ChartRules by;
    by.starts = {28};
    const auto two = chartOf(values, by);
    REQUIRE(two);
    const auto second = capabilityOf(*two, two->phases[1], {18.0, 22.0});
    const ControlChart alone = chart(calm(28));
    const auto first = capabilityOf(alone, alone.phases[0], {8.0, 12.0});
    REQUIRE(second);
    REQUIRE(first);
    REQUIRE(second->capability);
    CHECK(second->capability->least->value == Approx(first->capability->least->value));
    CHECK(second->capability->of.count == 28);
    CHECK(second->below == 0);
}

TEST_CASE("a baseline lends its limits, not its spread, to the capability")
{
    ChartRules by;
    by.baseline = 20;
    const auto of = chartOf(calm(42), by);
    const ControlChart whole = chart(calm(42));
    REQUIRE(of);
    CHECK(capabilityOf(*of, of->phases[0], {8.0, 12.0})->capability->of.sigma ==
          Approx(capabilityOf(whole, whole.phases[0], {8.0, 12.0})->capability->of.sigma));
}

TEST_CASE("the freedom of ranges is what their scatter shows")
{
    // 40,000 phases of twenty normal values: the variance of mean range / d2, over the square of its mean, is 1 / 2
    // freedom. The scatter of that variance itself is 0.7 %.
    std::mt19937_64 dice(20);
    double sum = 0;
    double squares = 0;
    const int phases = 40000;
    for (int i = 0; i < phases; ++i) {
        const std::vector<double> z = normals(dice, 20);
        double range = 0;
        for (std::size_t k = 1; k < z.size(); ++k) range += std::abs(z[k] - z[k - 1]) / 19;
        sum += range;
        squares += range * range;
    }
    const double mean = sum / phases;
    const double variance = squares / phases - mean * mean;
    CHECK(mean * mean / (2 * variance) == Approx(freedomOfRanges(19)).epsilon(0.025));
    // One range has the scatter of one value: |x| / E|x|, variance pi / 2 - 1.
    CHECK(freedomOfRanges(1) == Approx(1 / (3.14159265358979 - 2)));
    CHECK(freedomOfRanges(0) == 0);
}

TEST_CASE("intervals cover the true index as often as they say")
{
    // True Cp 1.3333 and Cpk 1.1667: limits -3.5 and 4.5 about a standard normal distribution.
    std::mt19937_64 dice(6);
    int cp = 0;
    int cpk = 0;
    int pp = 0;
    int ppk = 0;
    const int phases = 4000;
    ChartRules none;
    none.rules = {};
    for (int i = 0; i < phases; ++i) {
        const auto of = chartOf(normals(dice, 30), none);
        REQUIRE(of);
        const auto all = capabilityOf(*of, of->phases[0], {-3.5, 4.5});
        const auto covers = [](const taut::Result<Index>& index, double truth) {
            return index && index->interval.low <= truth && truth <= index->interval.high ? 1 : 0;
        };
        cp += covers(all->capability->both, 8.0 / 6);
        cpk += covers(all->capability->least, 3.5 / 3);
        pp += covers(all->performance->both, 8.0 / 6);
        ppk += covers(all->performance->least, 3.5 / 3);
    }
    // 95 % of 4000, give or take three times 0.34 %; the normal approximation and the freedom of ranges may miss by one
    // percent more.
    CHECK(pp == Approx(0.95 * phases).margin(0.0104 * phases));
    CHECK(cp == Approx(0.95 * phases).margin(0.02 * phases));
    CHECK(ppk == Approx(0.95 * phases).margin(0.02 * phases));
    CHECK(cpk == Approx(0.95 * phases).margin(0.02 * phases));
}
