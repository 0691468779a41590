// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/json.h"
#include "core/run/run.h"

namespace taut::run {

/// What a supervisor signs who accepts a value outside its window: for this run, this step, this value and this window
/// only. Ed25519 over `tautweb-deviation-1` 00 ‖ deviationText().
inline constexpr std::string_view kDeviationPurpose = "tautweb-deviation-1";

/// As documents write it: step, entered, value, unit, low, high, reason, by, at.
[[nodiscard]] Json deviationJson(const Deviated& deviation);
/// The lines run=, step=, entered=, unit=, value=, low=, high=, reason=, by=, at=, each with the JSON text that stands
/// in the document, quotes and escapes included, and a line feed: no entry can pass itself off as another line.
[[nodiscard]] std::string deviationText(std::string_view run, const Json& deviation);

/// A deviation that a supervisor accepted in a run. In force while the step still stands by it: not when it was read
/// again since, or taken back with a roll that was changed.
struct Accepted {
    const Event* event = nullptr;  ///< of the run; happening: the Deviated below
    const Deviated* deviation = nullptr;
    bool inForce = false;
};
/// Every one of them, in the order in which they were accepted. Whoever counts deviations counts these.
[[nodiscard]] std::vector<Accepted> acceptedIn(const Run& run);
/// How many of them are in force, and how many are no longer.
struct AcceptedCount {
    std::size_t inForce = 0, lapsed = 0;
};
[[nodiscard]] AcceptedCount countAccepted(const Run& run);

}  // namespace taut::run
