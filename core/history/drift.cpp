// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/history/drift.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>

namespace taut::history {

namespace {

/// A move that is smaller is not told (a proposal, no source).
constexpr double kWorthSigmas = 0.5;
/// As many sigmas from the centre as a single reading counts at most.
constexpr double kFarthest = 3;
/// How often chance may make a difference of means that is told as a move, for one given place (a proposal, no source;
/// the place is sought, so that about one series of a hundred shows one).
constexpr double kByChance = 0.002;

Finding tooFewPoints()
{
    return refuse("stats.too_few", "phase", "This phase has fewer than two points.", "Wait for more runs.");
}

double meanOf(const std::vector<double>& values, std::size_t begin, std::size_t end)
{
    const auto from = values.begin() + static_cast<std::ptrdiff_t>(begin);
    const auto to = values.begin() + static_cast<std::ptrdiff_t>(end);
    return std::accumulate(from, to, 0.0) / static_cast<double>(end - begin);
}

/// The spread from one reading to the next, of a whole phase: a shift touches one of its ranges only. Where most ranges
/// are nought the gauge is coarser than the spread, and the mean range makes too little of it: then by the mean square.
double sigmaOf(const stats::ControlChart& chart, const stats::Phase& phase)
{
    constexpr double kSame = 1e-9;
    double sum = 0, squares = 0;
    std::size_t differ = 0;
    for (std::size_t i = phase.begin + 1; i < phase.end; ++i) {
        const double range = *chart.ranges[i];
        if (range <= kSame * std::max(std::abs(chart.values[i]), std::abs(chart.values[i - 1]))) continue;
        sum += range;
        squares += range * range;
        ++differ;
    }
    const auto ranges = static_cast<double>(phase.end - phase.begin - 1);
    return 2 * static_cast<double>(differ) < ranges ? std::sqrt(squares / ranges / 2)
                                                    : sum / ranges / stats::kRangeOfTwo;
}

/// Where the last phase went from where it began, by cumulative sums.
std::optional<Moved> movedIn(const stats::ControlChart& chart)
{
    const stats::Phase& phase = chart.phases.back();
    const std::size_t count = phase.end - phase.begin;
    if (count < kFewestWatched) return std::nullopt;
    // The centre is that of the points with which the phase began, whatever the chart is judged by.
    const std::size_t base = std::min(kBaseline, count / 2);
    const double centre = meanOf(chart.values, phase.begin, phase.begin + base);
    const double sigma = sigmaOf(chart, phase);
    if (!(sigma > 0)) return std::nullopt;
    // One reading that stands out is an incident and no move, nor does it end one: it counts as kFarthest and no more
    // (winsorizing, as for a robust cumulative sum; Lucas and Crosier 1982, from memory).
    std::vector<double> counted(chart.values.begin() + static_cast<std::ptrdiff_t>(phase.begin),
                                chart.values.begin() + static_cast<std::ptrdiff_t>(phase.end));
    for (double& value : counted) value = std::clamp(value, centre - kFarthest * sigma, centre + kFarthest * sigma);
    const auto sums = stats::cusumOf(counted, centre, sigma);
    if (!sums) return std::nullopt;
    // The published decision is for a centre and a sigma that are known. Here both are from a few readings: what is
    // told must be more than their own doubt explains as well.
    const double freedom = stats::freedomOfRanges(count - 1);
    for (auto move = sums->moves.rbegin(); move != sums->moves.rend(); ++move) {
        const std::size_t many = move->until - move->since + 1;
        const double by = meanOf(chart.values, phase.begin + move->since, phase.begin + move->until + 1) - centre;
        const double atLeast = move->side * (meanOf(counted, move->since, move->until + 1) - centre);
        const double doubt = sigma * std::sqrt(1.0 / static_cast<double>(base) + 1.0 / static_cast<double>(many));
        // One that is over may lie anywhere: chance had as many places for it as the baseline goes into the phase.
        const double places = move->stands ? 1 : static_cast<double>(count) / static_cast<double>(base);
        if (atLeast <= doubt * stats::studentQuantile(1 - kByChance / places / 2, freedom)) continue;
        return Moved{phase.begin + move->since, move->side, by, by / sigma, move->stands};
    }
    return std::nullopt;
}

/// The window of the newest reading, where every reading of the phase had the same.
std::optional<stats::Tolerance> toleranceOf(const Series& series, const stats::Phase& phase)
{
    const Point& newest = series.points[phase.end - 1];
    if (!newest.low && !newest.high) return std::nullopt;
    const auto same = [](const std::optional<Quantity>& a, const std::optional<Quantity>& b) {
        if (!a || !b) return a.has_value() == b.has_value();
        return std::abs(a->si() - b->si()) <= 1e-9 * std::max(std::abs(a->si()), std::abs(b->si()));
    };
    for (std::size_t i = phase.begin; i < phase.end; ++i)
        if (!same(series.points[i].low, newest.low) || !same(series.points[i].high, newest.high)) return std::nullopt;
    stats::Tolerance tolerance;
    if (newest.low) tolerance.low = newest.low->si();
    if (newest.high) tolerance.high = newest.high->si();
    return tolerance;
}

Result<stats::Capability> capabilityIn(const stats::ControlChart& chart, const std::optional<stats::Tolerance>& window,
                                       const Point& newest)
{
    if (!chart.phases.back().limits) return tooFewPoints();
    if (!window && !newest.low && !newest.high)
        return refuse("history.window", "phase", "The newest of these readings has no window.",
                      "Choose a reading that is judged.");
    if (!window)
        return refuse("history.window", "phase", "The windows of these readings are not all the same.",
                      "Choose one job or one substrate, or the distance from the target.");
    return stats::capabilityOf(chart, chart.phases.back(), *window);
}

}  // namespace

std::span<const stats::Rule> rulesOf(RuleSet set) noexcept
{
    switch (set) {
    case RuleSet::Usual: return stats::kNelsonUsual;
    case RuleSet::Early: return stats::kNelsonEarly;
    case RuleSet::All: return stats::kNelsonAll;
    case RuleSet::WesternElectric: return stats::kWesternElectric;
    }
    return stats::kNelsonUsual;
}

Result<Drift> driftOf(Series series, const DriftBy& by)
{
    stats::ChartRules rules;
    rules.rules = rulesOf(by.rules);
    if (by.baseline) rules.baseline = kBaseline;
    std::vector<double> values;
    std::map<std::string, std::string> profile;
    for (std::size_t i = 0; i < series.points.size(); ++i) {
        const Point& point = series.points[i];
        values.push_back(point.value);
        const auto [known, first] = profile.try_emplace(point.press, point.pressSha);
        if (!first && known->second != point.pressSha) rules.starts.push_back(i);
        known->second = point.pressSha;
    }
    if (values.empty())
        return refuse("stats.too_few", series.target, "There is no reading to be charted.", "Choose a longer time.");
    auto chart = stats::chartOf(std::move(values), rules);
    if (!chart) return chart.error();
    const std::optional<stats::Tolerance> tolerance = toleranceOf(series, chart->phases.back());
    auto capability = capabilityIn(*chart, tolerance, series.points.back());
    auto moved = movedIn(*chart);
    return Drift{std::move(series), *std::move(chart), tolerance, moved, std::move(capability)};
}

Result<std::vector<Watched>> watchedOf(const records::Reader& reader, const records::CourseQuery& within,
                                       const std::function<bool()>& goOn)
{
    const auto names = reader.seriesNames();
    if (!names) return names.error();
    std::vector<Watched> all;
    for (const records::SeriesName& name : *names) {
        if (goOn && !goOn()) break;
        if (!within.press.empty() && name.press != within.press) continue;
        records::SeriesQuery query;
        query.press = name.press;
        query.target = name.target;
        query.job = within.job;
        query.substrate = within.substrate;
        query.sinceMs = within.sinceMs;
        query.untilMs = within.untilMs;
        auto series = seriesOf(reader, query, Measure::FromTarget);
        if (!series || series->unaimed > series->points.size()) series = seriesOf(reader, query, Measure::Read);
        if (!series) continue;
        const auto drift = driftOf(*std::move(series));
        if (!drift) continue;
        const stats::Phase& last = drift->last();
        Watched one;
        one.name = name;
        one.query = std::move(query);
        one.measure = drift->series.measure;
        one.points = last.end - last.begin;
        one.kind = drift->series.kind;
        one.unit = drift->series.unit;
        one.of = std::min(kBaseline, one.points);
        for (std::size_t i = last.end - one.of; i < last.end; ++i)
            if (drift->series.points[i].outside) ++one.outside;
        one.moved = drift->moved;
        if (one.moved) {
            one.sinceRun = drift->series.points[one.moved->since].run;
            one.sinceMs = drift->series.points[one.moved->since].atMs;
            one.worth = one.moved->stands && std::abs(one.moved->sigmas) >= kWorthSigmas;
        }
        all.push_back(std::move(one));
    }
    std::stable_sort(all.begin(), all.end(), [](const Watched& a, const Watched& b) {
        if (a.worth != b.worth) return a.worth;
        if (a.tells() != b.tells()) return a.tells();
        const double left = a.moved ? std::abs(a.moved->sigmas) : 0, right = b.moved ? std::abs(b.moved->sigmas) : 0;
        if (a.worth) return left > right;
        return a.outside * b.of > b.outside * a.of;
    });
    return all;
}

}  // namespace taut::history
