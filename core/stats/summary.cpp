// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/summary.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace taut::stats {
namespace {

Result<Done> sortedNumbers(std::vector<double>& values)
{
    if (values.empty())
        return refuse("stats.too_few", "percentile", {"There is no value."}, {"Wait until there is one."});
    if (!std::all_of(values.begin(), values.end(), [](double v) { return std::isfinite(v); }))
        return refuse("stats.not_finite", "percentile", {"One of the values is not a number."}, {"Leave it out."});
    std::sort(values.begin(), values.end());
    return Done{};
}

double atShare(const std::vector<double>& sorted, double p)
{
    const double place = p * static_cast<double>(sorted.size() + 1);
    if (place <= 1) return sorted.front();
    if (place >= static_cast<double>(sorted.size())) return sorted.back();
    const double whole = std::floor(place);
    const auto below = static_cast<std::size_t>(whole) - 1;
    return std::lerp(sorted[below], sorted[below + 1], place - whole);
}

}  // namespace

Result<double> percentileOf(std::vector<double> values, double p)
{
    if (!(p >= 0 && p <= 1))
        return refuse("stats.share", "percentile", {"A share lies between 0 and 1."}, {"0.5 is the median."});
    if (const auto can = sortedNumbers(values); !can) return can.error();
    return atShare(values, p);
}

Result<Quartiles> quartilesOf(std::vector<double> values)
{
    if (const auto can = sortedNumbers(values); !can) return can.error();
    return Quartiles{values.size(),        values.front(),        atShare(values, 0.25),
                     atShare(values, 0.5), atShare(values, 0.75), values.back()};
}

Result<Proportion> proportionOf(std::size_t hits, std::size_t of, double confidence)
{
    if (of == 0)
        return refuse("stats.too_few", "proportion", {"There is nothing yet to take a share of."},
                      {"Wait until there is one."});
    if (hits > of)
        return refuse("stats.hits", "proportion", {"More were counted than there are."}, {"Count the same runs."});
    if (!(confidence > 0 && confidence < 1))
        return refuse("stats.confidence", "proportion", {"A confidence lies between 0 and 1."}, {"0.95 is usual."});
    const auto n = static_cast<double>(of);
    const double p = static_cast<double>(hits) / n;
    const double z = -normalQuantile((1 - confidence) / 2);
    const double whole = 1 + z * z / n;
    const double middle = (p + z * z / (2 * n)) / whole;
    const double half = z * std::sqrt(p * (1 - p) / n + z * z / (4 * n * n)) / whole;
    // At both ends it is exact; rounding must not make it less than none or more than all.
    return Proportion{hits, of, p, {hits == 0 ? 0 : middle - half, hits == of ? 1 : middle + half}};
}

Result<std::vector<ParetoRow>> paretoOf(std::vector<Cause> causes, std::size_t most, const std::string& rest)
{
    for (const Cause& cause : causes)
        if (!(cause.amount >= 0) || !std::isfinite(cause.amount))
            return refuse("stats.amount", cause.name, {"An amount is below zero or not a number."}, {"Leave it out."});
    std::erase_if(causes, [](const Cause& cause) { return cause.amount == 0; });
    std::stable_sort(causes.begin(), causes.end(), [](const Cause& a, const Cause& b) {
        return a.amount != b.amount ? a.amount > b.amount : a.name < b.name;
    });

    std::vector<ParetoRow> rows;
    Cause others{rest, 0, true};
    bool named = false;
    double total = 0;
    for (Cause& cause : causes) {
        total += cause.amount;
        if (!cause.rest && (most == 0 || rows.size() < most)) {
            rows.push_back({std::move(cause), 0, 0});
            continue;
        }
        others.amount += cause.amount;
        if (cause.rest && !std::exchange(named, true)) others.name = cause.name;
    }
    if (others.amount > 0) rows.push_back({std::move(others), 0, 0});
    double sum = 0;
    for (ParetoRow& row : rows) {
        sum += row.cause.amount;
        row.share = row.cause.amount / total;
        row.cumulative = &row == &rows.back() ? 1 : sum / total;
    }
    return rows;
}

}  // namespace taut::stats
