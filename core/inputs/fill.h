// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/inputs/inputs.h"
#include "core/inputs/roll_tag.h"

namespace taut::inputs {

/// What was learnt of a roll at the press: a value that was read, or a word that was chosen.
using Learnt = std::variant<Quantity, std::string>;

/// Enters it under a key of the roll's file ("roll.width", "roll.condition"). What is known already stays as it was
/// written. False, and nothing changed, when this entry is not told so: no such key, a quantity of
/// another kind, a word that the file does not know.
[[nodiscard]] bool fill(Roll& roll, std::string_view key, const Learnt& learnt);

/// Enters what a tag says under a key where the roll's file says nothing; what somebody entered by hand counts. `text`
/// is the tag as it was scanned. False when no tag tells this entry: a net mass is not what hangs on the lift.
[[nodiscard]] bool fillFromTag(Roll& roll, std::string_view key, const RollTag& tag, std::string_view text);
/// The same of all that the roll's own tag tells; Roll::fromTag names what it filled. A tag that cannot be read, or is
/// that of another roll, fills nothing. Whoever reads inputs to compute or show them takes them so: targets, facts,
/// plan and sheet go by one roll. What is written to a file is the roll as it was entered.
[[nodiscard]] Roll filledFromTag(Roll roll);
[[nodiscard]] Inputs filledFromTag(Inputs inputs);

}  // namespace taut::inputs
