// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/run/command.h"
#include "core/run/run.h"

namespace taut::run {

/// After so long away, what protects people is said again: 30 minutes (policy, no source).
inline constexpr std::int64_t kLongAwayMs = 30LL * 60 * 1000;

/// The steps to be said again before a run goes on: the last answered one, with `vital` every answered vital step of
/// the stage in work, and what gave the statements about the machine that open steps of that stage still need. Never a
/// movement, which would have to be made again, nor a held stop, which the fold opens where hands work remains. In plan
/// order.
[[nodiscard]] std::vector<StepId> toSayAgain(const Run& run, bool vital);
/// The steps that are due when this stage is done again: all of its own, and what was answered of every later stage
/// that rests on what it ends. A later stage rests on it when one of its answers gave a condition that a step of the
/// stage ends (a web joined, a web moved); what such a stage ends is then ended as well, and so on. Of later stages,
/// what holds for longer than the run (valid_for) stays answered. In plan order.
[[nodiscard]] std::vector<StepId> reopenedBy(const Run& run, std::size_t stage);
/// What doing a stage again makes happen, or why it cannot be: gate.no_stage, .no_cause, .stage_not_begun.
[[nodiscard]] Result<Repeated> repeatedBy(const Run& run, const RepeatStage& command);
/// True when everything vital must be said again: long away, power lost, given back after a withdrawal, or another
/// person.
[[nodiscard]] bool mustSayVitalAgain(const Run& run, std::int64_t nowMs, const people::PersonId& by);

}  // namespace taut::run
