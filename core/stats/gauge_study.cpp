// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/gauge_study.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>

namespace taut::stats {

namespace {

constexpr std::size_t kLeast = 2, kMostPeople = 3, kMostTrials = 3, kMostParts = 10;
/// From a mean range to a standard deviation, by how many values a range is of, from two on: K1, of many ranges, is
/// 1 / d2; K2 and K3, of one range, 1 / d2* (tables of the manuals, from memory; K1 is the same d2 as of control
/// charts).
constexpr std::array<double, 2> kOfTrials{0.8862, 0.5908};
constexpr std::array<double, 2> kOfPeople{0.7071, 0.5231};
constexpr std::array<double, 9> kOfParts{0.7071, 0.5231, 0.4467, 0.4030, 0.3742, 0.3534, 0.3375, 0.3249, 0.3146};
/// The square root of two, as it is rounded there.
constexpr double kApart = 1.41;
constexpr double kGood = 0.1, kMayDo = 0.3, kFewestCategories = 5;

double rangeOf(const std::vector<double>& values)
{
    const auto [low, high] = std::minmax_element(values.begin(), values.end());
    return *high - *low;
}
double meanOf(const std::vector<double>& values)
{
    return std::accumulate(values.begin(), values.end(), 0.0) / static_cast<double>(values.size());
}

Result<Done> mayBeStudied(const GaugeReadings& readings)
{
    const std::size_t people = readings.size();
    const std::size_t parts = people == 0 ? 0 : readings.front().size();
    const std::size_t trials = parts == 0 ? 0 : readings.front().front().size();
    if (people < kLeast || people > kMostPeople || parts < kLeast || parts > kMostParts || trials < kLeast ||
        trials > kMostTrials)
        return refuse("gauge.size", {},
                      "A gauge study takes two or three people, two to ten parts and two or three trials.",
                      "Three people reading ten parts three times tell most.");
    for (const auto& person : readings) {
        const bool whole = person.size() == parts && std::all_of(person.begin(), person.end(), [&](const auto& part) {
                               return part.size() == trials;
                           });
        if (!whole)
            return refuse("gauge.uneven", {}, "Not everybody read every part as often.",
                          "Read what is missing, or leave out the part or the trial for all.");
        for (const auto& part : person)
            if (!std::all_of(part.begin(), part.end(), [](double v) { return std::isfinite(v); }))
                return refuse("stats.not_finite", {}, "One of the values is not a number.", "Take it out.");
    }
    return Done{};
}

}  // namespace

GaugeReading GaugeStudy::reading() const noexcept
{
    if (share < kGood) return GaugeReading::Good;
    return share <= kMayDo ? GaugeReading::MayDo : GaugeReading::DoesNot;
}

bool GaugeStudy::tellsEnoughApart() const noexcept { return std::floor(categories) >= kFewestCategories; }

Result<GaugeStudy> gaugeStudyOf(const GaugeReadings& readings)
{
    if (const auto may = mayBeStudied(readings); !may) return may.error();
    const std::size_t people = readings.size(), parts = readings.front().size(), trials = readings[0][0].size();
    std::vector<double> ranges, ofPeople, ofParts(parts, 0);
    for (const auto& person : readings) {
        double sum = 0;
        for (std::size_t part = 0; part < parts; ++part) {
            ranges.push_back(rangeOf(person[part]));
            const double mean = meanOf(person[part]);
            sum += mean;
            ofParts[part] += mean / static_cast<double>(people);
        }
        ofPeople.push_back(sum / static_cast<double>(parts));
    }
    GaugeStudy study;
    study.repeatability = meanOf(ranges) * kOfTrials[trials - kLeast];
    const double between = rangeOf(ofPeople) * kOfPeople[people - kLeast];
    // What the means of people differ by holds some of the repeatability.
    const double squared =
        between * between - study.repeatability * study.repeatability / static_cast<double>(parts * trials);
    study.reproducibility = std::sqrt(std::max(0.0, squared));
    study.gauge = std::hypot(study.repeatability, study.reproducibility);
    study.parts = rangeOf(ofParts) * kOfParts[parts - kLeast];
    study.total = std::hypot(study.gauge, study.parts);
    if (!(study.gauge > 0))
        return refuse("gauge.no_gauge_spread", {}, "Every part was read the same by everybody, each time.",
                      "Read one more decimal, or the gauge is too coarse to be studied so.");
    if (!(study.parts > 0))
        return refuse("gauge.same_parts", {}, "The parts are all alike, so nothing can be told apart.",
                      "Take parts that differ as those do that the gauge is used for.");
    study.share = study.gauge / study.total;
    study.categories = kApart * study.parts / study.gauge;
    return study;
}

}  // namespace taut::stats
