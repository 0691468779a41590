// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <span>

#include "core/base/result.h"
#include "core/stats/control_chart.h"
#include "core/stats/quantile.h"

// Capability and performance: how well what a process makes fits between its limits. NIST/SEMATECH e-Handbook 6.1.6;
// which spread is called what, after ISO 22514-1 and -2 (from memory).
namespace taut::stats {

/// What the values should keep to; one end may be missing.
struct Tolerance {
    std::optional<double> low;
    std::optional<double> high;
};

/// Centre and spread, and how well the spread is known.
struct Spread {
    double mean = 0;
    double sigma = 0;
    std::size_t count = 0;  ///< values
    double freedom = 0;     ///< of sigma as an estimate; need not be whole
};

/// An index of capability and the interval that covers the true one.
struct Index {
    double value = 0;
    Interval interval;
};

/// The four indices of one spread. Where an end is missing, what needs it is refused: stats.one_sided.
struct Indices {
    Spread of;
    Result<Index> both;   ///< (high - low) / 6 sigma: Cp, or Pp
    Result<Index> lower;  ///< (mean - low) / 3 sigma
    Result<Index> upper;  ///< (high - mean) / 3 sigma
    Result<Index> least;  ///< the smaller of lower and upper: Cpk, or Ppk
};

/// Shares of a normal distribution that lie outside.
struct Fallout {
    double below = 0;
    double above = 0;
};

/// What can be said of a phase.
struct Capability {
    /// Cp, Cpk by the spread from point to point (mean moving range / d2). Codes: stats.not_in_control besides those of
    /// indicesOf.
    Result<Indices> capability;
    /// Pp, Ppk by the spread of all values (s): what was, whether or not it was in control.
    Result<Indices> performance;
    /// How far the mean is from the middle, over half the tolerance: 0 in the middle, 1 at a limit. stats.one_sided.
    Result<double> offCentre;
    std::size_t below = 0;  ///< values that were below the tolerance
    std::size_t above = 0;  ///< values that were above it
};

/// Mean and s of the values (n - 1 degrees of freedom); zero spread for one value. stats.too_few for none.
[[nodiscard]] Result<Spread> overallSpread(std::span<const double> values);
/// The freedom of a sigma from so many moving ranges of two: fewer than there are ranges, about 0.61 of them, since
/// neighbours share a value. From the variance of their mean, which follows from the normal distribution (Cryer and
/// Ryan, J. Quality Technology 22 (1990) 187, have it as 0.8264 sigma^2 d2^2 / n for many; from memory).
[[nodiscard]] double freedomOfRanges(std::size_t ranges) noexcept;
/// The four indices. Intervals: (high - low) / 6 sigma by chi-square, the others by the normal approximation value +-
/// z sqrt(1 / 9n + value^2 / 2 freedom), both in e-Handbook 6.1.6 with freedom n - 1. Codes: stats.tolerance (none, or
/// the ends not in order), stats.too_few (below kFirmPoints), stats.no_spread (sigma 0), stats.confidence.
[[nodiscard]] Result<Indices> indicesOf(const Spread& spread, const Tolerance& tolerance, double confidence = 0.95);
/// For a normal distribution of this centre and spread; sigma > 0.
[[nodiscard]] Fallout falloutOf(const Spread& spread, const Tolerance& tolerance) noexcept;
/// All that can be said of one phase of a chart. Refused as a whole only for its tolerance and its confidence.
[[nodiscard]] Result<Capability> capabilityOf(const ControlChart& chart, const Phase& phase, const Tolerance& tolerance,
                                              double confidence = 0.95);

}  // namespace taut::stats
