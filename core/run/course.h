// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/run/run.h"

namespace taut::run {

/// After so long away, what protects people is said again: 30 minutes (policy, no source).
inline constexpr std::int64_t kLongAwayMs = 30LL * 60 * 1000;

/// The last answered step that can be confirmed from memory: never a movement, which would have to be made again, nor a
/// held stop, which is opened by the fold where hands work remains. Empty when nothing was answered yet.
[[nodiscard]] std::vector<StepId> lastAnswered(const Run& run);
/// Every answered vital step of the stage in work, with the same two left out, and the last answered one.
[[nodiscard]] std::vector<StepId> vitalOfStage(const Run& run);
/// True when everything vital must be said again: long away, power lost, given back after a withdrawal, or another
/// person.
[[nodiscard]] bool mustSayVitalAgain(const Run& run, std::int64_t nowMs, const people::PersonId& by);

}  // namespace taut::run
