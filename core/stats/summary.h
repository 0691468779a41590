// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "core/base/result.h"
#include "core/stats/quantile.h"

// What many values come to in a few: quartiles, shares with their intervals, the order of causes.
namespace taut::stats {

/// Quartiles of a set of values, its ends and its middle.
struct Quartiles {
    std::size_t count = 0;
    double least = 0;
    double lower = 0;  ///< a quarter lies below
    double median = 0;
    double upper = 0;  ///< three quarters lie below
    double most = 0;
};

/// The value below which the share p (0 to 1) of the values lies: the one at place p (n + 1) of the sorted values, on
/// the straight line between two neighbours, the first or the last where that place is beyond them (NIST/SEMATECH
/// e-Handbook 7.2.6.2). Codes: stats.too_few (none), stats.not_finite, stats.share.
[[nodiscard]] Result<double> percentileOf(std::vector<double> values, double p);
/// By the definition of percentileOf, and with its codes.
[[nodiscard]] Result<Quartiles> quartilesOf(std::vector<double> values);

/// How many of how many, and between which shares the true one lies.
struct Proportion {
    std::size_t hits = 0;
    std::size_t of = 0;
    double share = 0;
    Interval interval;
};

/// With the interval of Wilson, J. American Statistical Association 22 (1927) 209, which is the first choice of
/// NIST/SEMATECH e-Handbook 7.2.4.1 (both from memory): right for few runs and for none or all of them, where the
/// simple one is empty. For the first-pass rate: runs without a re-check or deviation of all that were completed.
/// Codes: stats.too_few (of none), stats.hits (more than of), stats.confidence.
[[nodiscard]] Result<Proportion> proportionOf(std::size_t hits, std::size_t of, double confidence = 0.95);

/// A cause and how much of it there was: times, minutes, metres.
struct Cause {
    std::string name;
    double amount = 0;
    bool rest = false;  ///< already a sum of several ("other")
};

/// A row of a Pareto table.
struct ParetoRow {
    Cause cause;
    double share = 0;       ///< of the whole, 0 to 1
    double cumulative = 0;  ///< with all rows before it; exactly 1 in the last
};

/// The largest first, equal ones by name, what is a sum of several always last and in one row; causes of nothing are
/// left out. Of more than `most` causes the smallest go into that row as well, which is named by its largest sum, else
/// `rest`; most 0 = all. Codes: stats.amount (below 0 or not a number).
[[nodiscard]] Result<std::vector<ParetoRow>> paretoOf(std::vector<Cause> causes, std::size_t most = 0,
                                                      const std::string& rest = "other");

}  // namespace taut::stats
