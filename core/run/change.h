// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <optional>
#include <string_view>

#include "core/run/run.h"

namespace taut::run {

/// Everything anew from changed sources: facts, targets, plan, and which answers go stale by it. Only here and in
/// begin() are targets computed for a run. `what` is the input that changed; `by` the step whose answer changed it,
/// which does not go stale by itself. Refuses as basisFor does.
[[nodiscard]] Result<InputsChanged> changedInputs(const Run& run, const Sources& sources,
                                                  std::optional<Length> presentDiameter, std::string_view what,
                                                  const StepId* by = nullptr);

/// Why nobody should lift this roll: the first of the targets' findings that stops, under the code gate.cannot_work.
[[nodiscard]] std::optional<Finding> cannotWork(const targets::Targets& targets);

/// What an answer that stands makes known of the roll, by the entries that its step fills: a value read, a word chosen,
/// what the scanned tag says where nobody had said it. nullptr when the step fills nothing, or nothing is new. A roll
/// measured under way, which is no longer what its file says, is measured anew.
[[nodiscard]] Result<std::shared_ptr<const InputsChanged>> filledBy(const Run& run, const procedure::Step& step,
                                                                    const Answered& answer);

/// The step whose standing answer says what was left of the roll when its outer wraps had come off; nullptr: none.
[[nodiscard]] const procedure::Step* strippedBy(const Run& run);
/// Why nobody can have measured this across the run's roll: nothing, no more than its core, or far beyond what a press
/// takes. Codes gate.no_diameter, and those of verdict/plausible.h.
[[nodiscard]] std::optional<Finding> noDiameter(const Run& run, Length across);
/// Why this cannot be what is left of the roll: it was smaller before. Code gate.no_diameter.
[[nodiscard]] std::optional<Finding> largerThanBefore(const Run& run, Length left);
/// A length as somebody of this run's press would have typed it.
[[nodiscard]] Quantity asTyped(const Run& run, Length length);
/// Everything anew for a roll of which so much is left.
[[nodiscard]] Result<InputsChanged> strippedTo(const Run& run, const Quantity& left);

}  // namespace taut::run
