// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/control_chart.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <functional>
#include <iterator>
#include <utility>

namespace taut::stats {
namespace {

std::optional<Limits> limitsOf(std::span<const double> values)
{
    if (values.size() < 2) return std::nullopt;
    // Readings of a far-off origin: what the mean loses would be taken for a shift.
    long double sum = 0;
    long double ranges = 0;
    for (std::size_t i = 0; i < values.size(); ++i) {
        sum += values[i];
        if (i > 0) ranges += std::abs(static_cast<long double>(values[i]) - values[i - 1]);
    }
    Limits limits;
    limits.centre = static_cast<double>(sum / static_cast<long double>(values.size()));
    limits.meanRange = static_cast<double>(ranges / static_cast<long double>(values.size() - 1));
    limits.sigma = limits.meanRange / kRangeOfTwo;
    limits.from = values.size();
    limits.provisional = values.size() < kFirmPoints;
    return limits;
}

Result<Done> usable(std::span<const double> values, const ChartRules& by)
{
    if (!std::all_of(values.begin(), values.end(), [](double v) { return std::isfinite(v); }))
        return refuse("stats.not_finite", "chart", {"One of the values is not a number."}, {"Leave it out."});
    if (std::adjacent_find(by.starts.begin(), by.starts.end(), std::greater_equal<>()) != by.starts.end())
        return refuse("stats.starts", "chart", {"The phases do not follow each other."},
                      {"Give where they begin in rising order."});
    if (by.baseline && *by.baseline < 2)
        return refuse("stats.baseline", "chart", {"Limits cannot be reckoned from fewer than two points."},
                      {"Take 20 or more."});
    return Done{};
}

}  // namespace

const Phase& ControlChart::phaseOf(std::size_t point) const noexcept
{
    assert(point < values.size());
    return *std::prev(std::upper_bound(phases.begin(), phases.end(), point,
                                       [](std::size_t p, const Phase& phase) { return p < phase.begin; }));
}

bool ControlChart::inControl(const Phase& phase) const noexcept
{
    const auto inside = [&phase](std::size_t point) { return point >= phase.begin && point < phase.end; };
    return phase.limits && std::none_of(patterns.begin(), patterns.end(),
                                        [&inside](const Signal& signal) { return inside(signal.points.front()); });
}

Result<ControlChart> chartOf(std::vector<double> values, const ChartRules& by)
{
    if (const auto can = usable(values, by); !can) return can.error();
    ControlChart chart;
    chart.values = std::move(values);
    const std::size_t count = chart.values.size();
    chart.ranges.assign(count, std::nullopt);
    std::vector<std::size_t> begins;
    if (count > 0) begins.push_back(0);
    for (const std::size_t start : by.starts)
        if (start > 0 && start < count) begins.push_back(start);
    for (std::size_t p = 0; p < begins.size(); ++p) {
        Phase phase{begins[p], p + 1 < begins.size() ? begins[p + 1] : count, std::nullopt};
        const auto points = std::span<const double>(chart.values).subspan(phase.begin, phase.end - phase.begin);
        phase.limits = limitsOf(points.first(std::min(points.size(), by.baseline.value_or(points.size()))));
        for (std::size_t i = phase.begin + 1; i < phase.end; ++i) {
            chart.ranges[i] = std::abs(chart.values[i] - chart.values[i - 1]);
            // Where nothing varied there is no limit to be above of.
            if (phase.limits && phase.limits->meanRange > 0 && *chart.ranges[i] > phase.limits->rangeLimit())
                chart.widened.push_back(i);
        }
        if (phase.limits) {
            std::vector<Signal> found =
                signalsIn(points, phase.limits->centre, phase.limits->sigma, by.rules, phase.begin);
            chart.patterns.insert(chart.patterns.end(), std::make_move_iterator(found.begin()),
                                  std::make_move_iterator(found.end()));
        }
        chart.phases.push_back(phase);
    }
    return chart;
}

}  // namespace taut::stats
