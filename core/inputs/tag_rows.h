// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/clock.h"
#include "core/inputs/inputs.h"
#include "core/inputs/roll_tag.h"

// A tag as people go through it before anything of it counts: each field with what it fills or is compared with.
namespace taut::inputs {

/// What becomes of a field.
enum class TagUse : std::uint8_t {
    Shown,   ///< nothing of the roll; people compare it with the label
    Fills,   ///< it is entered once somebody says that the tag is right
    Agrees,  ///< the same is entered
    Differs  ///< something else is entered, and that stays
};
/// One line.
struct TagRow {
    TagField field;
    TagUse use{};
    Text entry;                 ///< what of the roll it tells, "width"; empty = nothing
    std::vector<Text> against;  ///< what it is compared with
    Findings findings;          ///< what is odd about it, and what to do
};
/// All lines in the order of the tag.
struct TagRows {
    std::vector<TagRow> rows;
    Findings findings;  ///< of no one line
    /// Whether any line fills an entry.
    [[nodiscard]] bool fills() const;
};

/// The day on which something happens where it happens.
[[nodiscard]] TagDate dayOf(const Instant& moment);

/// Goes through a tag. `around` holds what it is compared with, and the roll as far as it was entered; `text` is the
/// tag as it will be kept. Without `today` no date is past.
[[nodiscard]] TagRows tagRows(const Inputs& around, const RollTag& tag, std::string_view text,
                              const std::optional<TagDate>& today);
/// The roll with everything that a tag tells and nobody has entered, its number by the serial number, and the tag. The
/// tag of another roll changes nothing.
[[nodiscard]] Roll takenOver(Roll roll, const RollTag& tag, std::string_view text);

}  // namespace taut::inputs
