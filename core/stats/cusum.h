// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

#include "core/base/result.h"

// Cumulative sums: where a process moved away from its centre, and since when. E. S. Page, Continuous inspection
// schemes, Biometrika 41 (1954) 100; NIST/SEMATECH e-Handbook 6.3.2.3 (both from memory).
namespace taut::stats {

/// What a cumulative sum is kept by, in sigmas.
struct CusumBy {
    double slack = 0.5;     ///< k: half of the shift that is to be found
    double decision = 5.0;  ///< h: a sum beyond it has found one; with k = 0.5 a false one about every 930 points on
                            ///< one side (ARL of the handbook's tables, from memory)
};
/// A move away from the centre.
struct Move {
    int side = 0;           ///< +1 upwards, -1 downwards
    std::size_t since = 0;  ///< its first point: the one after the sum was last nought
    std::size_t found = 0;  ///< the point at which the sum went beyond the decision
    std::size_t until = 0;  ///< the last point before the sum came back to nought; the last of all when it has not
    bool stands = false;    ///< it had not come back when the series ended
};
struct Cusum {
    std::vector<double> up, down;  ///< the two sums at every point, in the unit of the values, both 0 or more
    std::vector<Move> moves;       ///< in the order in which they were found
};

/// Sums above and below the centre, begun at nought and never below it. Where sigma is 0 every value off the centre is
/// a move by itself. Codes: stats.not_finite, stats.spread (sigma below 0), stats.decision (slack or decision not
/// above 0).
[[nodiscard]] Result<Cusum> cusumOf(std::span<const double> values, double centre, double sigma,
                                    const CusumBy& by = {});

}  // namespace taut::stats
