// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/people/meant.h"

#include <algorithm>

namespace taut::people {

namespace {

using Words = std::vector<std::string>;

/// The words of a name in small letters.
Words wordsOf(std::string_view name)
{
    Words words;
    bool within = false;
    for (const char c : name) {
        const bool blank = c == ' ' || c == '\t' || c == '\n' || c == '\r';
        if (!blank && !within) words.emplace_back();
        within = !blank;
        if (!blank) words.back() += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    }
    return words;
}

bool eachBegins(const Words& typed, const Words& name)
{
    return std::all_of(typed.begin(), typed.end(), [&](const std::string& beginning) {
        return std::any_of(name.begin(), name.end(),
                           [&](const std::string& word) { return word.starts_with(beginning); });
    });
}

}  // namespace

std::vector<std::string> namesMeant(const std::vector<std::string>& all, std::string_view typed)
{
    const Words words = wordsOf(typed);
    std::vector<std::string> meant;
    if (words.empty()) return meant;
    for (const std::string& name : all) {
        const Words own = wordsOf(name);
        if (own == words) return {name};
        if (eachBegins(words, own)) meant.push_back(name);
    }
    return meant;
}

}  // namespace taut::people
