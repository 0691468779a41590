// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/run/run.h"

namespace taut::run {

/// After so long away, what protects people is said again: 30 minutes (policy, no source).
inline constexpr std::int64_t kLongAwayMs = 30LL * 60 * 1000;

/// The steps to be said again before a run goes on: the last answered one, with `vital` every answered vital step of
/// the stage in work, and what gave the statements about the machine that open steps of that stage still need. Never a
/// movement, which would have to be made again, nor a held stop, which the fold opens where hands work remains. In plan
/// order.
[[nodiscard]] std::vector<StepId> toSayAgain(const Run& run, bool vital);
/// True when everything vital must be said again: long away, power lost, given back after a withdrawal, or another
/// person.
[[nodiscard]] bool mustSayVitalAgain(const Run& run, std::int64_t nowMs, const people::PersonId& by);

}  // namespace taut::run
