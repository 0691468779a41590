// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/procedure/plan.h"

namespace taut::run {

/// A condition as a statement that a person can make, for a card and for messages: "Every guard is closed". Empty for a
/// word that is no condition.
[[nodiscard]] Text conditionSaid(std::string_view condition);
/// The same as a refusal: "Nobody has said that every guard is closed."
[[nodiscard]] Text conditionMissing(std::string_view condition);
/// A statement of kMakeSafe: "Nobody is in the press".
[[nodiscard]] Text makeSafeSaid(std::string_view word);

/// Where a stop is held, as it is told: the stop as it was named, or the title of the place. Records of before may hold
/// that title in English.
[[nodiscard]] Text stopSaid(const procedure::Plan& plan, const std::string& where);
/// Every stop of the plan that a person may hold, as HoldStop::where names it, once each, in the order of the places.
[[nodiscard]] std::vector<std::string> stopsOf(const procedure::Plan& plan);
/// "Ana (latch at the panel)"
[[nodiscard]] Text holderSaid(const procedure::Plan& plan, const std::string& holder, const std::string& where);
/// Why a stage was done again ("web_break"): "web break". What is no known word is told as it stands.
[[nodiscard]] Text causeSaid(std::string_view cause);
/// Why an answer was corrected, in the words of whoever did it; of kMeasuredAgain, which stands where a diameter
/// measured on the shaft corrected the reading of the strip: "measured again".
[[nodiscard]] Text correctionSaid(std::string_view reason);
inline constexpr std::string_view kMeasuredAgain = "measured_again";
/// What interrupted a run ("stop_by_other"): "somebody else stopped the press".
[[nodiscard]] Text interruptionSaid(std::string_view reason);
/// An answer as it is told: a choice in the words that its button shows, "yes" and "done" as words, a stop as held by
/// whom, anything else as it was entered. `step` may be nullptr: a step that the plan no longer has.
[[nodiscard]] Text enteredSaid(const procedure::Step* step, const std::string& entered);

}  // namespace taut::run
