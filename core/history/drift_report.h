// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/history/drift.h"
#include "core/history/names.h"
#include "core/report/report.h"

namespace taut::history {

/// What was sealed in the weeks before a series began to move: another edition of its press, or of a job, substrate or
/// procedure; and with which roll and substrate it began.
struct ChangedThen {
    std::string what, id;  ///< press job substrate procedure
    int edition{};
    std::string byName;
    std::int64_t atMs{};
};
/// Editions from three weeks before the moment to one week after, oldest first.
[[nodiscard]] Result<std::vector<ChangedThen>> changedAround(const records::Reader& reader, std::int64_t atMs);

/// The charts of a drift as they are drawn: values, and their moving ranges.
[[nodiscard]] report::ControlFigure valuesFigure(const Drift& drift, Names& names, int offsetMinutes);
[[nodiscard]] report::ControlFigure rangesFigure(const Drift& drift, Names& names, int offsetMinutes);
/// A move in one sentence: "Since 2026-03-04 (run north-2026-03-04-02) 0.12 bar higher, 2.3 sigma; it stands."
[[nodiscard]] Text movedSaid(const Drift& drift, int offsetMinutes);

/// All that is told of a series, to be seen, printed and filed.
[[nodiscard]] Result<report::Report> driftReport(const records::Reader& reader, const Drift& drift, Names& names,
                                                 int offsetMinutes);

}  // namespace taut::history
