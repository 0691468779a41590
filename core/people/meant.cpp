// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/people/meant.h"

#include <algorithm>

#include "core/base/utf8.h"

namespace taut::people {

namespace {

using Words = std::vector<std::string>;

/// The small letter of a byte of UTF-8 that follows `before`: of A to Z, and of U+00C0 to U+00DE, the capitals with
/// marks of western Europe.
char smallOf(char c, char before)
{
    const auto byte = static_cast<unsigned char>(c);
    const bool marked = static_cast<unsigned char>(before) == 0xC3U && byte >= 0x80U && byte <= 0x9EU && byte != 0x97U;
    if (marked) return static_cast<char>(byte + 0x20U);
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

/// The words of a name in small letters, without what stands between them ("Roth, Ines").
Words wordsOf(std::string_view name)
{
    constexpr std::string_view kBetween = " \t\n\r,.;";
    Words words;
    bool within = false;
    char before = 0;
    for (const char c : name) {
        const bool between = kBetween.find(c) != std::string_view::npos;
        if (!between && !within) words.emplace_back();
        within = !between;
        if (!between) words.back() += smallOf(c, before);
        before = c;
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

bool saysWhom(std::string_view name, std::string_view typed)
{
    constexpr std::size_t kLetters = 3;
    const Words own = wordsOf(name);
    std::size_t letters = 0;
    for (const std::string& word : wordsOf(typed)) {
        if (std::find(own.begin(), own.end(), word) != own.end()) return true;
        letters += charactersIn(word);
    }
    return letters >= kLetters;
}

}  // namespace taut::people
