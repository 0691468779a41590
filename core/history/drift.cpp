// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/history/drift.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace taut::history {

namespace {

constexpr std::size_t kFewestWatched = 12;
/// A move that is smaller is not told (a proposal, no source).
constexpr double kWorthSigmas = 0.5;

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

/// Where the last phase went from where it began, by cumulative sums over what follows its baseline.
std::optional<Moved> movedIn(const stats::ControlChart& chart)
{
    const stats::Phase& phase = chart.phases.back();
    if (phase.end - phase.begin < kFewestWatched) return std::nullopt;
    // The centre is that of the points with which the phase began, whatever the chart is judged by.
    const std::size_t base = std::min(kBaseline, (phase.end - phase.begin) / 2);
    const auto first = stats::chartOf({chart.values.begin() + static_cast<std::ptrdiff_t>(phase.begin),
                                       chart.values.begin() + static_cast<std::ptrdiff_t>(phase.begin + base)});
    if (!first || !first->phases.front().limits) return std::nullopt;
    const stats::Limits& limits = *first->phases.front().limits;
    if (limits.sigma <= 0) return std::nullopt;
    const std::span<const double> values(chart.values.data() + phase.begin, phase.end - phase.begin);
    const auto sums = stats::cusumOf(values, limits.centre, limits.sigma);
    if (!sums) return std::nullopt;
    const stats::Move* latest = nullptr;
    for (const stats::Move& move : sums->moves)
        if (latest == nullptr || (move.stands && !latest->stands) || (move.stands == latest->stands)) latest = &move;
    if (latest == nullptr) return std::nullopt;
    Moved moved;
    moved.since = phase.begin + latest->since;
    moved.side = latest->side;
    moved.stands = latest->stands;
    moved.by = meanOf(chart.values, moved.since, phase.begin + latest->until + 1) - limits.centre;
    moved.sigmas = moved.by / limits.sigma;
    return moved;
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

Result<stats::Capability> capabilityIn(const stats::ControlChart& chart, const std::optional<stats::Tolerance>& window)
{
    if (!chart.phases.back().limits) return tooFewPoints();
    if (!window)
        return refuse("history.window", "phase",
                      "The windows of these readings are not all the same, or there is none.",
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
    for (std::size_t i = 0; i < series.points.size(); ++i) {
        values.push_back(series.points[i].value);
        if (i > 0 && series.points[i].pressSha != series.points[i - 1].pressSha) rules.starts.push_back(i);
    }
    auto chart = stats::chartOf(std::move(values), rules);
    if (!chart) return chart.error();
    const std::optional<stats::Tolerance> tolerance = toleranceOf(series, chart->phases.back());
    auto capability = capabilityIn(*chart, tolerance);
    auto moved = movedIn(*chart);
    return Drift{std::move(series), *std::move(chart), tolerance, moved, std::move(capability)};
}

Result<std::vector<Watched>> watchedOf(const records::Reader& reader, const std::string& press,
                                       const std::function<bool()>& goOn, std::size_t most)
{
    const auto names = reader.seriesNames();
    if (!names) return names.error();
    std::vector<Watched> all;
    for (const records::SeriesName& name : *names) {
        if (goOn && !goOn()) break;
        if (!press.empty() && name.press != press) continue;
        records::SeriesQuery query;
        query.press = name.press;
        query.target = name.target;
        auto series = seriesOf(reader, query, Measure::FromTarget, most);
        if (!series || series->unaimed > series->points.size()) series = seriesOf(reader, query, Measure::Read, most);
        if (!series) continue;
        const auto drift = driftOf(*std::move(series));
        if (!drift) continue;
        const stats::Phase& last = drift->last();
        if (last.end - last.begin < kFewestWatched) continue;
        Watched one;
        one.name = name;
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
        const double left = a.moved ? std::abs(a.moved->sigmas) : 0, right = b.moved ? std::abs(b.moved->sigmas) : 0;
        if (a.worth) return left > right;
        return a.outside * b.of > b.outside * a.of;
    });
    return all;
}

}  // namespace taut::history
