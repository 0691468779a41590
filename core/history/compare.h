// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/records/records.h"
#include "core/report/report.h"

namespace taut::history {

/// More runs beside each other nobody reads on one sheet.
inline constexpr std::size_t kMostCompared = 4;

/// The run to measure others by: among the newest `among` completed runs of this press and job, of those of its kind,
/// neither void nor sent back, the one with the fewest deviations, then the fewest readings outside at first, then the
/// shortest time, then the newest; the run itself is left out. nullopt when there is none.
[[nodiscard]] Result<std::optional<records::RunRow>> bestRun(const records::Reader& reader, const records::RunRow& like,
                                                             std::size_t among = 200);

/// Two to four runs beside each other: what they were run with, what was aimed at and read, deviations and
/// times; what differs first, what is the same after it. `reference` names which of them the others are measured by
/// and stands first, "" = the first. A run that is open or void has no times. history.compare (not two to four, one
/// twice, or a reference that is none of them); refuses as records::runOf does.
[[nodiscard]] Result<report::Report> compareRuns(const records::Reader& reader, const std::vector<std::string>& runs,
                                                 const std::string& reference, int offsetMinutes);

}  // namespace taut::history
