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
    std::size_t until = 0;  ///< its last point: where the sum was largest; the last of all when it stands
    bool stands = false;    ///< it had not ended when the series did
};
struct Cusum {
    std::vector<double> up, down;  ///< the two sums at every point, in the unit of the values, both 0 or more
    std::vector<Move> moves;       ///< in the order in which they were found
};

/// Sums above and below the centre, begun at nought and never below it. A move has ended when its sum fell from its
/// largest by more than the decision; the sum begins anew then. Codes: stats.not_finite, stats.spread (sigma not above
/// 0), stats.decision (slack or decision not above 0).
[[nodiscard]] Result<Cusum> cusumOf(std::span<const double> values, double centre, double sigma,
                                    const CusumBy& by = {});

}  // namespace taut::stats
