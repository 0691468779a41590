// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/agreement.h"

#include "core/stats/quantile.h"

namespace taut::stats {

Result<Agreement> agreementOf(const std::vector<std::vector<std::size_t>>& counts)
{
    const std::size_t sorts = counts.size();
    std::vector<double> one(sorts, 0), other(sorts, 0);
    double all = 0, same = 0;
    for (std::size_t i = 0; i < sorts; ++i) {
        if (counts[i].size() != sorts)
            return refuse("stats.table", {}, "The two judges were not given the same answers to choose from.",
                          "Count as many columns as rows.");
        for (std::size_t j = 0; j < sorts; ++j) {
            const auto n = static_cast<double>(counts[i][j]);
            one[i] += n;
            other[j] += n;
            all += n;
            if (i == j) same += n;
        }
    }
    if (all == 0)
        return refuse("stats.too_few", {}, "Nothing was judged by both.", "Have both judge the same things first.");
    Agreement agreement;
    agreement.observed = same / all;
    for (std::size_t i = 0; i < sorts; ++i) agreement.byChance += one[i] / all * (other[i] / all);
    if (agreement.byChance >= 1)
        return refuse("stats.constant", {}, "Both judges always said the same one thing: chance alone gives that.",
                      "Have both judge things of which some are not as the others.");
    agreement.kappa = (agreement.observed - agreement.byChance) / (1 - agreement.byChance);
    return agreement;
}

Result<Sensitivity> sensitivityOf(std::size_t hits, std::size_t there, std::size_t alarms, std::size_t notThere)
{
    if (there == 0 || notThere == 0)
        return refuse("stats.too_few", {}, "There was nothing to find, or nothing to leave alone.",
                      "Take together attempts with some of both.");
    if (hits > there || alarms > notThere)
        return refuse("stats.hits", {}, "More was named than there was.", "Count each thing once.");
    Sensitivity found;
    found.corrected = hits == 0 || hits == there || alarms == 0 || alarms == notThere;
    const double half = found.corrected ? 0.5 : 0, one = found.corrected ? 1 : 0;
    found.hits = (static_cast<double>(hits) + half) / (static_cast<double>(there) + one);
    found.alarms = (static_cast<double>(alarms) + half) / (static_cast<double>(notThere) + one);
    found.dPrime = normalQuantile(found.hits) - normalQuantile(found.alarms);
    return found;
}

}  // namespace taut::stats
