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
/// "07:41" on the day on which the run began, the whole date later.
[[nodiscard]] std::string timeInRun(const run::Run& run, std::int64_t utcMs, int offsetMinutes);
/// Every step of the run with its answer, who gave it and when.
[[nodiscard]] Table stepsTable(const Ground& ground, const run::Run& run);
/// Every step with room for a tick, a name and a time.
[[nodiscard]] Table blankStepsTable(const Ground& ground);
/// "1 in force", "1 in force, 1 no longer in force"; empty when none was ever accepted (run/deviation.h counts).
[[nodiscard]] Text deviationsSaid(const run::Run& run);
/// Readings outside that a supervisor accepted, in force or not; nothing when there are none.
[[nodiscard]] std::optional<Table> deviationsTable(const Ground& ground, const run::Run& run);
/// Every value that was read, also those that were read again or belong to a roll that was changed.
[[nodiscard]] std::optional<Table> readingsTable(const run::Run& run);
/// What a supervisor should look at in the times of the answers (run/pace.h), one sentence each: "watched too short:
/// Every emergency stop is released: 2 s of 10 s".
[[nodiscard]] std::vector<Text> hasteSaid(const run::Run& run);
/// "2 s of 60 s" of a step whose answer that stands was given before its time was over; empty of any other.
[[nodiscard]] Text cutShortSaid(const run::Run& run, const procedure::StepId& step);
/// What changed under way, in order: rolls, corrections, stages done again, interruptions, hand-overs, held stops, and
/// answers given too fast.
[[nodiscard]] std::optional<Table> historyTable(const run::Run& run);
/// The pictures and files of a run, each with the beginning of its hash; nothing when there are none.
[[nodiscard]] std::optional<Table> attachmentsTable(const run::Run& run);

}  // namespace taut::report
