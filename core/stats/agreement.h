// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <vector>

#include "core/base/result.h"

// Whether two people who judge the same things agree, and whether somebody who looks for something finds it.
namespace taut::stats {

/// How far two judges agree, and what of it is more than chance.
struct Agreement {
    double observed = 0;  ///< share on which they agree
    double byChance = 0;  ///< share on which they would, judging as often as they do but by the roll of a die
    double kappa = 0;     ///< of what chance leaves open, the share on which they agree
};
/// Cohen, Educational and Psychological Measurement 20 (1960) 37 (from memory). `counts[i][j]` things were judged i by
/// the one and j by the other. Codes: stats.table (not as many rows as columns), stats.too_few (nothing was judged),
/// stats.constant (both always said the same: nothing is left that chance does not give).
[[nodiscard]] Result<Agreement> agreementOf(const std::vector<std::vector<std::size_t>>& counts);

/// How well what is there is told from what is not.
struct Sensitivity {
    double hits = 0;    ///< share of what was there that was found
    double alarms = 0;  ///< share of what was not there that was named all the same
    double dPrime = 0;  ///< z(hits) - z(alarms): 0 for whoever guesses
    bool corrected = false;
};
/// Signal detection theory (Green and Swets 1966, from memory). Where a share is 0 or 1, both are (x + 1/2) / (n + 1)
/// instead (Hautus 1995, from memory), since z has no end there. Codes: stats.too_few (nothing there, or nothing that
/// was not), stats.hits (more found than there were).
[[nodiscard]] Result<Sensitivity> sensitivityOf(std::size_t hits, std::size_t there, std::size_t alarms,
                                                std::size_t notThere);

}  // namespace taut::stats
