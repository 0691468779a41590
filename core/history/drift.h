// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/history/series.h"
#include "core/stats/capability.h"
#include "core/stats/control_chart.h"
#include "core/stats/cusum.h"

namespace taut::history {

/// Which run rules are looked for.
enum class RuleSet : std::uint8_t { Usual, Early, All, WesternElectric };
[[nodiscard]] std::span<const stats::Rule> rulesOf(RuleSet set) noexcept;

/// From how many points of a phase the limits come, where it has more: a long phase judged by all its points hides its
/// own drift, and shows a signal by chance in about one point of a hundred.
inline constexpr std::size_t kBaseline = 30;

/// A phase of fewer readings does not tell whether it has moved.
inline constexpr std::size_t kFewestWatched = 12;

struct DriftBy {
    RuleSet rules = RuleSet::Usual;
    bool baseline = true;  ///< limits from the first kBaseline points of a phase; else from all
};

/// A phase's move away from where it began.
struct Moved {
    std::size_t since{};  ///< first point of the move, or a few before it where they happened to lie that way
    int side{};           ///< +1 up, -1 down
    double by{};          ///< mean of the points from then on, less the centre of the baseline; SI
    double sigmas{};      ///< that over the scatter from one reading to the next, of the whole phase
    bool stands{};        ///< to the end of the series
};

/// A series with its chart, phase by phase, and what is found in it.
struct Drift {
    Series series;
    stats::ControlChart chart;
    std::optional<stats::Tolerance> tolerance;  ///< window of the newest reading, where it is the same in the phase
    std::optional<Moved> moved;                 ///< in the last phase: the latest that is more than chance
    Result<stats::Capability> capability;       ///< of the last phase

    [[nodiscard]] const stats::Phase& last() const { return chart.phases.back(); }
};
/// Phases begin where a press ran by another profile than before. Refuses as stats::chartOf does, and a series without
/// points with stats.too_few.
[[nodiscard]] Result<Drift> driftOf(Series series, const DriftBy& by = {});

/// One line of the list of what drifts.
struct Watched {
    records::SeriesName name;
    records::SeriesQuery query;  ///< what was asked, so that a chart asks the same
    Measure measure{};
    std::size_t points{};  ///< of its last phase
    std::optional<Moved> moved;
    std::string sinceRun;  ///< the run at which the move began
    std::int64_t sinceMs{};
    std::size_t outside{};  ///< of the last kBaseline readings, how many were outside at first
    std::size_t of{};
    Kind kind{};
    std::string unit;
    bool worth = false;  ///< the move stands and is more than half a sigma: it comes first

    /// Enough points to say whether it has moved.
    [[nodiscard]] bool tells() const { return points >= kFewestWatched; }
};
/// Every reading of the runs that were asked for, judged as driftOf judges it, what moved most first. Readings with an
/// aim are followed as their distance from it. Those of which the last phase tells nothing yet stand last. `goOn` is
/// asked between two series; false ends it with what there is.
[[nodiscard]] Result<std::vector<Watched>> watchedOf(const records::Reader& reader, const records::CourseQuery& within,
                                                     const std::function<bool()>& goOn = {});

}  // namespace taut::history
