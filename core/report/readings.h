// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/parts.h"

namespace taut::report {

/// What every reading step of a plan asks, answered or not; run = nullptr leaves room to write.
struct Settings {
    Table ofJob;    ///< follow from this job, substrate or roll: what is set anew each time
    Table ofPress;  ///< the same in every run of this press
};
[[nodiscard]] Settings settingsOf(const Ground& ground, const run::Run* run);
/// Every step of the run with its answer, who gave it and when.
[[nodiscard]] Table stepsTable(const Ground& ground, const run::Run& run);
/// Every step with room for a tick, a name and a time.
[[nodiscard]] Table blankStepsTable(const Ground& ground);
/// Readings outside that a supervisor accepted; nothing when there are none.
[[nodiscard]] std::optional<Table> deviationsTable(const Ground& ground, const run::Run& run);
/// What changed under way, in order: rolls, corrections, stages done again, interruptions, hand-overs, held stops.
[[nodiscard]] std::optional<Table> historyTable(const Ground& ground, const run::Run& run);

}  // namespace taut::report
