// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/inputs/roll.h"

namespace taut::inputs {

/// What the bar code of a roll says, in the open data format of GS1: application identifiers (AI) one after the other.
struct RollTag {
    std::string item, lot, serial;            ///< AI 01, 10, 21; "" = not said
    Maybe<Kind::Length> width, length, core;  ///< AI 8001, or 312n and 311n; core is its inside in whole millimetres
    Maybe<Kind::Mass> mass;                   ///< AI 310n, net
    std::optional<Winding> winding;
    std::optional<int> splices;  ///< empty also when the tag says that nobody knows
};

/// Reads a tag as a scanner gives it: with or without a carrier's prefix (]C1 ]e0 ]d2 ]Q3), GS (0x1D) between fields.
/// A tag that cannot be trusted whole is refused whole. Codes: tag.not_gs1, tag.empty, tag.unknown_field,
/// tag.too_short, tag.check_digit, tag.bad_value, tag.separator_missing, tag.fields_disagree. A separator lost after a
/// field of free length cannot be noticed: show what was read and let people say that it is right.
[[nodiscard]] Result<RollTag> readRollTag(std::string_view scanned);

}  // namespace taut::inputs
