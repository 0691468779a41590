// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/inputs/roll.h"
#include "core/inputs/tag.h"

namespace taut::inputs {

/// What the bar code of a roll says of it. What one field says twice, roughly and exactly, counts as AI 8001 says it:
/// that was wound, the other was ordered.
struct RollTag {
    std::string item, lot, serial;            ///< AI 01, 10, 21; DI 1P, 1T, S; "" = not said
    Maybe<Kind::Length> width, length, core;  ///< AI 8001, or 312n and 311n and their twins, DI 7Q; core is its inside
    Maybe<Kind::Mass> mass;                   ///< AI 310n, 320n, DI 7Q; net
    std::optional<Winding> winding;
    std::optional<int> splices;    ///< empty also when the tag says that nobody knows
    std::vector<TagField> fields;  ///< all that stands on it, in order: to show, and to be said right
    Findings notes;                ///< what is odd and yet readable
};

/// Reads a tag (readTag) and takes of it what it tells of the roll.
[[nodiscard]] Result<RollTag> readRollTag(std::string_view scanned, const TagOptions& options = {});

}  // namespace taut::inputs
