// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

#include "core/inputs/roll_tag.h"

// What a scanner makes of a label: the signs that it sends for separators, and several bar codes one after the other.
namespace taut::inputs {

/// The text with GS between its fields. A scanner that cannot send GS is set to send something else for it: the
/// pictures of the control characters (U+241D), their names in brackets, or one of | ~ ^, which stand in no field of
/// GS1. Those are taken for separators only where the text cannot be read as it stands, names and pictures always.
[[nodiscard]] std::string withSeparators(std::string_view scanned, const TagOptions& options = {});

/// What a bar code is to the one that was scanned before it.
enum class SecondTag : std::uint8_t {
    Replaces,   ///< there was none, or it contradicts it: that of another roll
    Completes,  ///< another of the same label: it adds fields
    Same        ///< nothing new
};
/// What the bar codes scanned so far say together.
struct ScannedTag {
    std::string text;  ///< one tag, as the roll's file keeps it; as it was scanned where that can be read again
    RollTag tag;
    SecondTag second{};
    std::size_t added = 0;  ///< fields that it adds
};
/// Reads a bar code scanned after another ("" = none, or one that says nothing alone). Refuses as readTag does, with
/// the place in `scanned`; what was before stands then.
[[nodiscard]] Result<ScannedTag> readScanned(std::string_view before, std::string_view scanned,
                                             const TagOptions& options = {});

}  // namespace taut::inputs
