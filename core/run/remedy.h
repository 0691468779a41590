// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/run/command.h"
#include "core/run/run.h"

namespace taut::run {

/// Stands where a remedy is counted: whoever was there does not know what helped.
inline constexpr int kNotKnown = -1;

/// The steps of which nobody has said yet what helped, in the order in which they came right: read outside, then read
/// again and no longer outside. A reading that was put right only because it was written down wrongly, or that a
/// supervisor accepted as it was, came right by nothing that was done.
[[nodiscard]] std::vector<StepId> cameRight(const Run& run);
/// Whether this step is among them.
[[nodiscard]] bool cameRight(const Run& run, const StepId& step);

/// What saying it makes happen, or why not: gate.nothing_helped, .no_remedy, .no_reason, .no_step.
[[nodiscard]] Result<Helped> helpedBy(const Run& run, const SayHelped& command);

/// What helped, in words: one of the step's own remedies, or what somebody wrote.
[[nodiscard]] Text remedySaid(const Run& run, const Helped& helped);

}  // namespace taut::run
