// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/records/records.h"

// What a press, a job or a substrate did over many runs, as values that are asked of any store. Nothing here holds a
// store open; nothing here is stored.
namespace taut::history {

/// What of a reading is followed: what was read, or how far it was from what was aimed at. The second follows the press
/// where the first follows the jobs.
enum class Measure : std::uint8_t { Read, FromTarget };

/// One reading in the order of its run.
struct Point {
    std::uint64_t seq{};  ///< of its run's seal
    std::string run, step, press, job, substrate, roll, pressSha;
    std::int64_t atMs{};
    double value{};                     ///< SI: what was read, or that less its aim
    std::optional<Quantity> low, high;  ///< of its window, moved with the value
    bool outside = false;               ///< when it was first entered
};
struct Series {
    std::string press, target;
    std::string job, substrate;  ///< where only those of one were asked for
    Measure measure{};
    Kind kind{};
    std::string unit;           ///< in which it was entered last
    std::vector<Point> points;  ///< oldest first
    std::size_t unaimed = 0;    ///< readings left out because they had no aim
    bool older = false;         ///< there are older ones than were asked for

    /// A value of this series, in its unit.
    [[nodiscard]] Quantity quantity(double si) const { return {si, kind, unit}; }
};

/// So many of a series are followed: ten a day for three years. Whoever tells of a series speaks of the same readings,
/// since where it began decides what is told as a move.
inline constexpr std::size_t kFollowed = 10'000;

/// The newest `most` readings of the query. Refuses as the reader does, with stats.too_few when there is none, and
/// history.kind when what was entered is of no unit that is known here.
[[nodiscard]] Result<Series> seriesOf(const records::Reader& reader, records::SeriesQuery query, Measure measure,
                                      std::size_t most = kFollowed);
/// A reading as it was entered: its kind and unit are those of the entered text; nullopt when no kind fits.
[[nodiscard]] std::optional<Quantity> quantityOf(const records::Reading& reading);

}  // namespace taut::history
