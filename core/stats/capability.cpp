// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/capability.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <functional>
#include <numbers>
#include <utility>

namespace taut::stats {
namespace {

Finding oneSided(const char* what)
{
    return refuse("stats.one_sided", what, {"Only one limit is given."},
                  {"Give both, or take the index of that side."});
}

Result<Done> usable(const Tolerance& tolerance, double confidence)
{
    const auto number = [](const std::optional<double>& end) { return !end || std::isfinite(*end); };
    if (!tolerance.low && !tolerance.high)
        return refuse("stats.tolerance", "capability", {"There is no limit to hold the values against."},
                      {"Give a lower or an upper limit, or both."});
    if (!number(tolerance.low) || !number(tolerance.high) ||
        (tolerance.low && tolerance.high && !(*tolerance.low < *tolerance.high)))
        return refuse("stats.tolerance", "capability", {"The lower limit is not below the upper one."},
                      {"Give them the other way round."});
    if (!(confidence > 0 && confidence < 1))
        return refuse("stats.confidence", "capability", {"A confidence lies between 0 and 1."}, {"0.95 is usual."});
    return Done{};
}

Index ofBoth(double value, const Spread& spread, double confidence)
{
    const double tail = (1 - confidence) / 2;
    return {value,
            {value * std::sqrt(chiSquareQuantile(tail, spread.freedom) / spread.freedom),
             value * std::sqrt(chiSquareQuantile(1 - tail, spread.freedom) / spread.freedom)}};
}

Index ofOne(double value, const Spread& spread, double confidence)
{
    const double half = -normalQuantile((1 - confidence) / 2) *
                        std::sqrt(1 / (9 * static_cast<double>(spread.count)) + value * value / (2 * spread.freedom));
    return {value, {value - half, value + half}};
}

// From point to point, by all ranges of the phase: its limits may come from its first points alone.
Spread withinSpread(const ControlChart& chart, const Phase& phase, double mean)
{
    long double sum = 0;
    std::size_t ranges = 0;
    for (std::size_t i = phase.begin; i < phase.end; ++i)
        if (chart.ranges[i]) {
            sum += *chart.ranges[i];
            ++ranges;
        }
    const double sigma = ranges == 0 ? 0 : static_cast<double>(sum / static_cast<long double>(ranges)) / kRangeOfTwo;
    return {mean, sigma, phase.end - phase.begin, freedomOfRanges(ranges)};
}

}  // namespace

Result<Spread> overallSpread(std::span<const double> values)
{
    if (values.empty()) return refuse("stats.too_few", "spread", {"There is no value."}, {"Wait until there is one."});
    const auto count = static_cast<long double>(values.size());
    long double mean = 0;
    for (const double v : values) mean += v;
    mean /= count;
    long double squares = 0;
    for (const double v : values) squares += (v - mean) * (v - mean);
    const std::size_t freedom = values.size() - 1;
    // Equal values have no spread: what rounding makes of them is none.
    const bool equal = std::adjacent_find(values.begin(), values.end(), std::not_equal_to<>()) == values.end();
    return Spread{static_cast<double>(mean),
                  equal ? 0 : static_cast<double>(std::sqrt(squares / static_cast<long double>(freedom))),
                  values.size(), static_cast<double>(freedom)};
}

double freedomOfRanges(std::size_t ranges) noexcept
{
    if (ranges == 0) return 0;
    // Differences of neighbours correlate by -1/2; E|uv| of two such with unit variance is
    // 2/pi (sqrt(1 - r^2) + r asin r), and E|u| is sqrt(2/pi). All over the square of d2 = 2/sqrt(pi).
    using std::numbers::pi;
    const double own = pi / 2 - 1;
    const double neighbours = std::sqrt(3.0) / 2 + pi / 12 - 1;
    const auto m = static_cast<double>(ranges);
    return m * m / (2 * (m * own + 2 * (m - 1) * neighbours));
}

Result<Indices> indicesOf(const Spread& spread, const Tolerance& tolerance, double confidence)
{
    if (const auto can = usable(tolerance, confidence); !can) return can.error();
    if (spread.count < kFirmPoints)
        return refuse("stats.too_few", "capability",
                      {"%1 values are too few to speak of capability.", {static_cast<std::int64_t>(spread.count)}},
                      {"It takes at least %1.", {static_cast<std::int64_t>(kFirmPoints)}});
    if (!(spread.sigma > 0))
        return refuse("stats.no_spread", "capability", {"All values are equal: there is no spread to reckon with."},
                      {"Read the instrument to finer steps."});
    Indices all{spread, oneSided("both"), oneSided("lower"), oneSided("upper"), oneSided("least")};
    const double six = 6 * spread.sigma;
    if (tolerance.low && tolerance.high)
        all.both = ofBoth((*tolerance.high - *tolerance.low) / six, spread, confidence);
    if (tolerance.low) all.lower = ofOne((spread.mean - *tolerance.low) / (six / 2), spread, confidence);
    if (tolerance.high) all.upper = ofOne((*tolerance.high - spread.mean) / (six / 2), spread, confidence);
    all.least = !all.upper || (all.lower && all.lower->value < all.upper->value) ? all.lower : all.upper;
    return all;
}

Fallout falloutOf(const Spread& spread, const Tolerance& tolerance) noexcept
{
    return {tolerance.low ? normalBelow((*tolerance.low - spread.mean) / spread.sigma) : 0,
            tolerance.high ? normalAbove((*tolerance.high - spread.mean) / spread.sigma) : 0};
}

Result<Capability> capabilityOf(const ControlChart& chart, const Phase& phase, const Tolerance& tolerance,
                                double confidence)
{
    if (const auto can = usable(tolerance, confidence); !can) return can.error();
    const auto values = std::span<const double>(chart.values).subspan(phase.begin, phase.end - phase.begin);
    const Result<Spread> overall = overallSpread(values);
    if (!overall) return overall.error();

    Capability all{refuse("stats.not_in_control", "capability",
                          {"The readings are not in control: what they were says nothing of what they will be."},
                          {"Look at the signals, find their cause and begin a new phase after it."}),
                   indicesOf(*overall, tolerance, confidence), oneSided("centre")};
    // Too few points or none that vary come first: nothing can be in control of which too little is known.
    Result<Indices> indices = indicesOf(withinSpread(chart, phase, overall->mean), tolerance, confidence);
    if (!indices || chart.inControl(phase)) all.capability = std::move(indices);
    if (tolerance.low && tolerance.high)
        all.offCentre =
            std::abs((*tolerance.low + *tolerance.high) / 2 - overall->mean) / ((*tolerance.high - *tolerance.low) / 2);
    for (const double v : values) {
        if (tolerance.low && v < *tolerance.low) ++all.below;
        if (tolerance.high && v > *tolerance.high) ++all.above;
    }
    return all;
}

}  // namespace taut::stats
