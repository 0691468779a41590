// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/base/result.h"
#include "core/units/quantity.h"

namespace taut::inputs {

/// Whose identifiers a field goes by: GS1 application identifiers, or the data identifiers of MH10.
enum class TagSystem : std::uint8_t { Application, Data };
/// What of the roll a field tells. Amount: a length or a mass, as its unit says.
enum class TagGives : std::uint8_t { Nothing, Item, Lot, Serial, Width, Length, Core, Winding, Splices, Mass, Amount };

/// A day on a tag. Where only the month is said, it is the last day of that month.
struct TagDate {
    int year{}, month{}, day{};
    bool monthOnly = false;
    friend bool operator==(const TagDate&, const TagDate&) = default;
};
/// Nothing where the text is all there is; a Text where a figure stands for a word.
using TagValue = std::variant<std::monostate, Quantity, TagDate, Text>;

/// One thing that a tag says. An identifier that says several (8001) makes a field of each.
struct TagField {
    TagSystem system{};
    std::string id;  ///< "8001", "3103", "1T"
    int part = 0;    ///< which of several under one identifier, from 0
    Text name;       ///< for people: "lot", "net mass"
    std::string text;
    TagValue value;
    TagGives gives{};
    std::size_t first{}, length{};  ///< its characters in the scanned text, from 1; the identifier is the first part's
    friend bool operator==(const TagField&, const TagField&) = default;
};

/// How a tag is to be read.
struct TagOptions {
    /// This year, for dates that give two figures of theirs: the century is the one nearest to it. Without it such a
    /// date has no value, only its text.
    std::optional<int> year;
    /// Whether a single data identifier without an envelope ("1TLOT7A") is a tag. Only where a bar code is sure to have
    /// been scanned: typed by hand, "S0042" is a roll's own number.
    bool singleField = false;
};

/// What stands on a tag, in the order in which it stands there.
struct Tag {
    std::vector<TagField> fields;
    Findings notes;  ///< what is odd and yet readable: tag.alone, tag.not_variable; subject "roll.tag"
};

/// Reads a tag as a scanner gives it: GS1 element strings with or without a carrier's prefix (]C1 ]e0 ]d2 ]Q3) and GS
/// (0x1D) between fields, the envelope of ISO/IEC 15434 with either sort of identifiers, a GS1 Digital Link.
/// A tag that cannot be trusted whole is refused whole. Codes: tag.not_gs1, tag.empty, tag.unknown_field,
/// tag.unknown_format, tag.too_short, tag.check_digit, tag.bad_value, tag.separator_missing, tag.fields_disagree,
/// tag.alone (a field says nothing without another), tag.order. Each finding says at which character (tagPlace). A
/// separator lost after a field of free length cannot be noticed: show what was read and let people say that it is
/// right.
[[nodiscard]] Result<Tag> readTag(std::string_view scanned, const TagOptions& options = {});

/// The character of the scanned text, from 1, at which a finding of code tag.* points: the first argument of its text.
/// Control characters count as the scanner sent them. nullopt for any other finding.
[[nodiscard]] std::optional<std::size_t> tagPlace(const Finding& finding);

}  // namespace taut::inputs
