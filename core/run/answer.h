// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/run/run.h"

namespace taut::run {

/// What an answer says, judged: what stands in the event. Refusals ("answer.*", and the parser's own codes) have the
/// step as their subject. Gates are not looked at here.
///   confirm, call: "yes", else answer.not_yes.  motion: "done" (answer.not_done), and every machine state that it
///   needs in `stated` (answer.not_stated).  hold: the holder's name (answer.no_holder).  choice: one of its words
///   (answer.not_a_choice); a choice that stops the run, or another word than its target's where the target's word is
///   among the choices, is outside.  scan: the roll's tag or id, anything else is outside (answer.nothing_scanned when
///   empty).  reading: a value with its unit that can be (reading.*, verdict/plausible.h); without a window it is
///   recorded.
[[nodiscard]] Result<Answered> answerTo(const Run& run, const procedure::Step& step, std::string_view entered,
                                        const std::vector<std::string>& stated);

/// What an answer is held against: the target of its step, nullptr when it has none, and the roll that is meant.
struct Against {
    const targets::Target* target = nullptr;
    const Source* roll = nullptr;
};
/// The same for whoever has no run: practice judges an answer as a run does.
[[nodiscard]] Result<Answered> answerAgainst(const Against& against, const procedure::Step& step,
                                             std::string_view entered, const std::vector<std::string>& stated);

/// The target that a reading of this step is judged by and shown against; nullptr when it has none or this press has no
/// such target. Where the step's own answer filled an entry it is the target as it stood before that: measured again, a
/// roll is held against what its file said and not against what was read last. A roll changed or measured under way
/// begins anew.
[[nodiscard]] const targets::Target* judgedBy(const Run& run, const procedure::Step& step);

/// A tag as it is compared: without symbology identifier, separators, blanks and the brackets of its printed form.
[[nodiscard]] std::string comparableTag(std::string_view tag);

}  // namespace taut::run
