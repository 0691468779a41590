// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <vector>

#include "core/base/result.h"

// How much of what readings differ by comes from the gauge and from who reads it: a study in which several people read
// the same parts several times. Average and range method of the measurement systems analysis manuals (from memory).
namespace taut::stats {

/// readings[person][part][trial].
using GaugeReadings = std::vector<std::vector<std::vector<double>>>;

/// What is to be thought of a gauge by its share of the whole spread (practice of measurement systems analysis, from
/// memory): below 10 % it is good, up to 30 % it may do, above it does not.
enum class GaugeReading : std::uint8_t { Good, MayDo, DoesNot };

/// Spreads as standard deviations, in the unit of the readings.
struct GaugeStudy {
    double repeatability{};    ///< EV: the same person, part and gauge
    double reproducibility{};  ///< AV: between people; 0 where what they differ by is within the repeatability
    double gauge{};            ///< GRR: both together
    double parts{};            ///< PV: between the parts
    double total{};            ///< TV: all together
    double share{};            ///< of the gauge in the total, 0 to 1
    double categories{};       ///< how many sorts of parts it tells apart: 1.41 PV / GRR, not rounded; 5 are the least
    [[nodiscard]] GaugeReading reading() const noexcept;
    [[nodiscard]] bool tellsEnoughApart() const noexcept;
};
/// Two or three people, two to ten parts, two or three trials, each person reading each part as often. Codes:
/// gauge.size (other numbers), gauge.uneven (not each as often), gauge.no_gauge_spread (every reading of a part the
/// same: the gauge's last place is too coarse to study it), gauge.same_parts (no spread at all between the parts),
/// stats.not_finite.
[[nodiscard]] Result<GaugeStudy> gaugeStudyOf(const GaugeReadings& readings);

}  // namespace taut::stats
