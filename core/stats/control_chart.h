// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

#include "core/base/result.h"
#include "core/stats/run_rules.h"

// The chart of individuals and moving ranges, NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2. Values are
// plain numbers in one unit; whoever asks gives them back their kind.
namespace taut::stats {

/// The mean range of two over sigma (d2), as the handbook prints it; 2 / sqrt(pi) = 1.128379 to more places.
inline constexpr double kRangeOfTwo = 1.128;
/// The upper limit of ranges of two over their mean (D4), as printed; the lower is 0.
inline constexpr double kRangeLimit = 3.267;
/// Below so many points limits are provisional (common practice, no source).
inline constexpr std::size_t kFirmPoints = 20;

/// Centre and spread of a phase.
struct Limits {
    double centre = 0;         ///< mean of the points that they were reckoned from
    double sigma = 0;          ///< mean moving range / d2
    double meanRange = 0;      ///< centre of the chart of ranges
    std::size_t from = 0;      ///< how many points they were reckoned from
    bool provisional = false;  ///< from fewer than kFirmPoints

    /// The line so many sigma above the centre, below for a negative number: -3 and 3 are the control limits, 1 and 2
    /// part the zones.
    [[nodiscard]] double line(double sigmas) const noexcept { return centre + sigmas * sigma; }
    /// The upper limit of the chart of ranges.
    [[nodiscard]] double rangeLimit() const noexcept { return kRangeLimit * meanRange; }
};

/// Points between two changes of the process, charted and judged by themselves.
struct Phase {
    std::size_t begin = 0;         ///< its first point
    std::size_t end = 0;           ///< one after its last
    std::optional<Limits> limits;  ///< none where it has fewer than two points
};

struct ControlChart {
    std::vector<double> values;
    std::vector<std::optional<double>> ranges;  ///< from the point before; none for the first of a phase
    std::vector<Phase> phases;                  ///< in order, without gaps
    std::vector<Signal> patterns;               ///< of all phases, in order; indices are those of `values`
    std::vector<std::size_t> widened;           ///< points whose range is above the limit of ranges

    /// The phase of a point that there is.
    [[nodiscard]] const Phase& phaseOf(std::size_t point) const noexcept;
    /// The phase has limits and no signal. Ranges above theirs do not count: neighbours share a value, so they come
    /// about once in a hundred points by chance and tell little of their own (Nelson, J. Quality Technology 14 (1982)
    /// 172, as others tell it).
    [[nodiscard]] bool inControl(const Phase& phase) const noexcept;
};

/// What a chart is made by.
struct ChartRules {
    std::span<const Rule> rules = kNelsonUsual;
    std::vector<std::size_t> starts;      ///< where new phases begin, rising; 0 need not be said
    std::optional<std::size_t> baseline;  ///< limits from the first so many points of each phase; none = from all
};

/// Charts the values in the order of their time. A start beyond the last value is none yet. Codes: stats.not_finite,
/// stats.starts (not rising), stats.baseline (fewer than two points).
[[nodiscard]] Result<ControlChart> chartOf(std::vector<double> values, const ChartRules& by = {});

}  // namespace taut::stats
