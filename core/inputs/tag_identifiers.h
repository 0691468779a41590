// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>

#include "core/inputs/tag.h"

// The identifiers that are read: one table says length, characters, check, value and name of each.
namespace taut::inputs {

/// How the text under an identifier is made.
enum class TagForm : std::uint8_t {
    Checked,    ///< figures, the last a check digit
    Digits,     ///< figures
    Free,       ///< the 82 characters of GS1
    Printable,  ///< what ASCII can print
    Count,
    Measure,    ///< figures; a last figure of the identifier says how many are decimals
    Size,       ///< a measure that cannot be nought
    ShortDate,  ///< YYMMDD, day 00: the whole month
    LongDate,   ///< YYYYMMDD, then a code of what happened that day where there is room for one
    Winding,
    Splices,
    WithUnit  ///< a number, then two letters of the unit
};

/// A row of the table. Rows of one identifier that follow each other are its parts.
struct TagIdentifier {
    TagSystem system{};
    std::string_view id;  ///< "310n": n is the number of decimals, 0 to 5
    const char* name{};
    TagForm form{};
    std::size_t least{}, most{};  ///< characters
    bool predefined = false;      ///< GS1: its length is known to every reader, no separator follows
    TagGives gives{};             ///< of the roll
    Kind kind{};                  ///< of a measure
    const char* unit = "";        ///< of a measure
    int path = 0;                 ///< place in the path of a Digital Link; 0: in its query
};

/// The parts of the identifier that stands at the front of a text; empty when none of the table does.
[[nodiscard]] std::span<const TagIdentifier> identifierAt(TagSystem system, std::string_view text);
/// How many characters the data identifier at the front of a text takes, known or not: up to three figures and a
/// capital letter. 0 when there is none.
[[nodiscard]] std::size_t dataIdentifierSize(std::string_view text);
/// The row that a data identifier goes by which is not in the table: its text is kept as it is.
[[nodiscard]] std::span<const TagIdentifier> otherDataIdentifier();

/// What is wrong with a text under an identifier.
struct TagFault {
    const char* code{};
    const char* what{};           ///< English; %1 is the place, %2 the identifier, %3 the text, %4 and %5 the details
    std::size_t at{};             ///< index in the text
    std::string found, wanted{};  ///< details
};
/// The value that a text has under a row, or its fault. `id` as it stands on the tag.
[[nodiscard]] std::variant<TagValue, TagFault> tagValue(const TagIdentifier& row, std::string_view id,
                                                        std::string_view text, const TagOptions& options);

}  // namespace taut::inputs
