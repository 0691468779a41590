// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/cusum.h"

#include <algorithm>
#include <cmath>

namespace taut::stats {

namespace {

/// One side of the sums; `turned` is -1 for the lower.
std::vector<double> sumsOf(std::span<const double> values, double centre, double slack, double decision, int turned,
                           std::vector<Move>& moves)
{
    std::vector<double> sums;
    sums.reserve(values.size());
    double sum = 0, peak = 0;
    std::size_t from = 0;
    std::optional<Move> open;
    for (std::size_t i = 0; i < values.size(); ++i) {
        if (sum == 0) from = i;
        sum = std::max(0.0, sum + turned * (values[i] - centre) - slack);
        if (!open && sum > decision) {
            open = Move{turned, from, i, i, false};
            peak = sum;
        }
        if (open && sum >= peak) {
            open->until = i;
            peak = sum;
        }
        // The sum of a long move takes as long again to come back to nought: it has ended where it fell from its peak
        // as far as it had to rise to be found, and what comes next begins anew.
        if (open && peak - sum > decision) {
            moves.push_back(*open);
            open.reset();
            sum = 0;
        }
        sums.push_back(sum);
    }
    if (open) {
        open->until = values.size() - 1;
        open->stands = true;
        moves.push_back(*open);
    }
    return sums;
}

}  // namespace

Result<Cusum> cusumOf(std::span<const double> values, double centre, double sigma, const CusumBy& by)
{
    if (!std::all_of(values.begin(), values.end(), [](double v) { return std::isfinite(v); }) || !std::isfinite(centre))
        return refuse("stats.not_finite", "cusum", "A value of the series is not a number.", "Leave it out.");
    if (!(sigma > 0) || !std::isfinite(sigma))
        return refuse("stats.spread", "cusum", "The spread is not a number above nought.",
                      "Give the sigma of the chart.");
    if (!(by.slack > 0) || !(by.decision > 0))
        return refuse("stats.decision", "cusum", "Slack and decision have to be above nought.",
                      "Usual are 0.5 and 5 sigma.");
    Cusum cusum;
    cusum.up = sumsOf(values, centre, by.slack * sigma, by.decision * sigma, 1, cusum.moves);
    cusum.down = sumsOf(values, centre, by.slack * sigma, by.decision * sigma, -1, cusum.moves);
    std::stable_sort(cusum.moves.begin(), cusum.moves.end(),
                     [](const Move& a, const Move& b) { return a.found < b.found; });
    return cusum;
}

}  // namespace taut::stats
