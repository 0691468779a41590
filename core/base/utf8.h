// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace taut {

/// How many bytes the character at the front takes; 0 when it is not UTF-8 (RFC 3629: overlong, surrogate, beyond
/// U+10FFFF, cut off) or text is empty.
[[nodiscard]] std::size_t utf8Step(std::string_view text) noexcept;
/// Index of the first byte that is not UTF-8, npos when all is well.
[[nodiscard]] std::size_t firstBadUtf8(std::string_view text) noexcept;
/// How many characters there are in what is UTF-8.
[[nodiscard]] std::size_t charactersIn(std::string_view text) noexcept;
/// The text with each byte that is not UTF-8 replaced by U+FFFD, so that what is written can always be read again.
[[nodiscard]] std::string cleanUtf8(std::string_view text);

}  // namespace taut
