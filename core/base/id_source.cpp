// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/id_source.h"

#include <array>
#include <charconv>

#include "core/base/crypto.h"

namespace taut {

std::string RandomIds::next() { return hex(randomBytes(16)); }

std::string CountedIds::next()
{
    std::array<char, 16> digits{};
    const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), ++m_n, 16).ptr;
    const auto used = static_cast<std::size_t>(end - digits.data());
    return std::string(32 - used, '0') + std::string(digits.data(), used);
}

}  // namespace taut
