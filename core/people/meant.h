// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace taut::people {

/// Whom somebody can have meant by what they typed: the one of this name, whatever its capitals and blanks, else
/// everybody in whose name each word typed begins a word ("ines r" is Ines Roth, and Ines Rathke too). Empty: nobody of
/// these. Capitals are told apart beyond western Europe.
[[nodiscard]] std::vector<std::string> namesMeant(const std::vector<std::string>& all, std::string_view typed);
/// Whether what was typed is enough to put a name down to: three letters, or a whole word of it ("Bo" of Bo Lind).
[[nodiscard]] bool saysWhom(std::string_view name, std::string_view typed);

}  // namespace taut::people
