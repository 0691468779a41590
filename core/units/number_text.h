// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

#include "core/base/result.h"

namespace taut {

/// What hands, keyboards and copied documents write, in the few characters that the parser knows: one kind of space,
/// minus, quote and fraction ("½" becomes "1/2"), "um" for "µm", "m2" for "m²". Spaces are single and none stands at
/// either end.
[[nodiscard]] std::string plainTyped(std::string_view text);

/// A number at the front of a plain text.
struct NumberRead {
    long double value{};    ///< finite as a double, and zero only when written so
    bool negative{};        ///< kept apart for "-0 ft 3 in"
    bool whole{};           ///< written in digits alone
    std::string_view rest;  ///< what follows, without leading space; a view into the text given
};
/// Reads "13", "13.25", "13,25", "1e-3", "1/4", "13 1/4", "13-1/4", each with a sign before. Codes:
/// quantity.not_a_number, .group_separator (both readings are in the message), .not_finite.
[[nodiscard]] Result<NumberRead> readNumber(std::string_view plain);

/// A person's text as a message may carry it: UTF-8, no longer than a line.
[[nodiscard]] std::string quoted(std::string_view text);

}  // namespace taut
