// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/utf8.h"

#include <algorithm>

namespace taut {

std::size_t utf8Step(std::string_view text) noexcept
{
    const auto byte = [&](std::size_t i) { return i < text.size() ? static_cast<unsigned char>(text[i]) : 0U; };
    const auto follows = [&](std::size_t i) { return (byte(i) & 0xC0U) == 0x80U; };
    if (text.empty()) return 0;
    const unsigned first = byte(0);
    if (first < 0x80U) return 1;
    if (first < 0xC2U) return 0;
    if (first < 0xE0U) return follows(1) ? 2 : 0;
    if (first < 0xF0U) {
        if (!follows(1) || !follows(2)) return 0;
        if (first == 0xE0U && byte(1) < 0xA0U) return 0;
        if (first == 0xEDU && byte(1) > 0x9FU) return 0;
        return 3;
    }
    if (first > 0xF4U || !follows(1) || !follows(2) || !follows(3)) return 0;
    if (first == 0xF0U && byte(1) < 0x90U) return 0;
    if (first == 0xF4U && byte(1) > 0x8FU) return 0;
    return 4;
}

std::size_t firstBadUtf8(std::string_view text) noexcept
{
    for (std::size_t i = 0; i < text.size();) {
        const std::size_t step = utf8Step(text.substr(i, 4));
        if (step == 0) return i;
        i += step;
    }
    return std::string_view::npos;
}

std::size_t charactersIn(std::string_view text) noexcept
{
    return static_cast<std::size_t>(std::count_if(
        text.begin(), text.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; }));
}

std::string cleanUtf8(std::string_view text)
{
    std::string clean;
    clean.reserve(text.size());
    for (std::size_t i = 0; i < text.size();) {
        const std::size_t step = utf8Step(text.substr(i, 4));
        if (step == 0)
            clean += "\xEF\xBF\xBD";
        else
            clean.append(text, i, step);
        i += step == 0 ? 1 : step;
    }
    return clean;
}

}  // namespace taut
