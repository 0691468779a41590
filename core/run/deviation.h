// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

#include "core/base/json.h"
#include "core/run/event.h"

namespace taut::run {

/// What a supervisor signs who accepts a value outside its window: for this run, this step, this value and this window
/// only. Ed25519 over `tautweb-deviation-1` 00 ‖ deviationText().
inline constexpr std::string_view kDeviationPurpose = "tautweb-deviation-1";

/// As documents write it: step, entered, value, unit, low, high, reason, by, at.
[[nodiscard]] Json deviationJson(const Deviated& deviation);
/// The lines run=, step=, entered=, unit=, value=, low=, high=, reason=, by=, at=, each with the JSON text that stands
/// in the document, quotes and escapes included, and a line feed: no entry can pass itself off as another line.
[[nodiscard]] std::string deviationText(std::string_view run, const Json& deviation);

}  // namespace taut::run
