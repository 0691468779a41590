// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

#include "core/base/result.h"
#include "core/units/quantity.h"

namespace taut {

/// Whether a number without a unit may stand for a count or a share (a key of a file that says so); else it is refused.
enum class Bare : std::uint8_t { Refuse, Accept };

/// Reads "13 1/4 in", "13.25in", "13,25 in", "-0.5 %", "1e-3 m", "5 ft 3 in", "60 lb 25x38 in". Dot and comma both mean
/// decimal, also before three digits ("1,234 mm" is 1.234 mm); a group separator ("1,234.5", "1.234,5", "1 234",
/// "1'234") is refused with both readings in the message. "µm", "m²" and "Nm" are read as um, m2 and N m. The
/// quantity must be of the expected kind. Codes: quantity.empty, .not_a_number, .group_separator, .no_unit,
/// .unknown_unit (names near misses), .wrong_kind (says what was found and lists the units expected), .not_finite.
/// Findings have an empty subject: the caller says where.
[[nodiscard]] Result<Quantity> parseQuantity(std::string_view text, Kind expected, Bare bare = Bare::Refuse);

/// A plain number in either decimal style, with the same refusals; C locale, no unit.
[[nodiscard]] Result<double> parseNumber(std::string_view text);

}  // namespace taut
