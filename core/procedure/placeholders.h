// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/base/text.h"
#include "core/units/quantity.h"
#include "core/units/unit.h"

namespace taut::procedure {

/// A text of a procedure cut at its placeholders: "Set {control} now" = words "Set ", name "control", words " now".
struct Piece {
    bool placeholder = false;
    std::string text;  ///< the words, or the placeholder's name without braces
};
[[nodiscard]] std::vector<Piece> piecesOf(std::string_view text);

/// A quantity that stands in the text itself, as placeholder "= 0.5 mm", or as each press's people say it, metric
/// first:
/// "= 0.5 mm | 0.02 in". It is said in the units of whoever reads it. nullopt for any other placeholder, and for what
/// is no quantity.
[[nodiscard]] std::optional<Quantity> quantityOf(const Piece& piece, UnitSystem system);

using Filling = std::vector<std::pair<std::string, TextArg>>;
/// The text with %1, %2 ... in place of its placeholders: the source stays one per text of the file, whatever the press
/// (a translation finds it), and what was filled in travels beside it. A name used twice is one argument.
[[nodiscard]] Text filled(std::string_view text, const Filling& filling, UnitSystem system = UnitSystem::Metric);
/// A pattern of an id ("tension.{zone}.setting") with the item's id in its place.
[[nodiscard]] std::string withItem(std::string_view pattern, std::string_view repetition, std::string_view id);

}  // namespace taut::procedure
