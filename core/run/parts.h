// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/finding.h"
#include "core/procedure/plan.h"
#include "core/targets/target.h"

namespace taut::run {

class Run;

// Small things that the fold and the gates share.

/// The two conditions that the gates themselves know: a stop that somebody holds now, and an isolator locked by the
/// site's own procedure. Either lets hands into the press.
inline constexpr const char* kStopHeld = "stop_held";
inline constexpr const char* kLockedOut = "locked_out";

/// Without blanks at either end, and as valid UTF-8, so that what is kept in memory is what a store gives back.
[[nodiscard]] std::string trimmed(std::string_view text);
/// Whether a reason says anything: three letters or digits at least, in any script.
[[nodiscard]] bool saysSomething(std::string_view text);
/// Why this is nobody's name, for whoever holds a stop: it says nothing, or has figures in it, as a tag or a reading
/// has.
[[nodiscard]] std::optional<Finding> whyNoName(std::string_view text, std::string subject);
/// The step without its item: "safety.walk_round.guard_closed" of "safety.walk_round.guard_closed/infeed_guard".
[[nodiscard]] std::string_view baseOf(const procedure::StepId& id);
/// Where a stop is held for this step: the maintained stop of its place, else "place:" and the id of the place.
/// words.h, stopSaid, says it.
inline constexpr std::string_view kPlace = "place:";
[[nodiscard]] std::string placeOfStop(const procedure::Plan& plan, const procedure::Step& step);
/// Everybody who holds a stop, and where: "Ana (latch at the panel), Ben (latch at the table)".
[[nodiscard]] std::vector<Text> holdersOf(const Run& run);
/// The step's words, as an argument of a message about it.
[[nodiscard]] std::vector<Text> wordsOf(const procedure::Step& step);
/// The step's target, nullptr when it has none or this press has no such target.
[[nodiscard]] const targets::Target* targetOf(const targets::Targets& targets, const procedure::Step& step);
/// Why this press cannot deliver the step's target, nullptr when it can.
[[nodiscard]] const Finding* cannotOf(const targets::Targets& targets, const procedure::Step& step);

}  // namespace taut::run
