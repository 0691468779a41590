// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cctype>
#include <cstddef>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <string>
#include <string_view>

#include "core/base/finding.h"
#include "core/base/json.h"
#include "core/base/utf8.h"
#include "core/units/plain.h"

// What must hold of every answer to a text from outside, whatever it says.
namespace taut::fuzz {

/// Ends the program when it does not hold: a crash to the fuzzer, a failure to the replay.
inline void require(bool holds, const char* what, std::string_view about = {})
{
    if (holds) return;
    std::fprintf(stderr, "Does not hold: %s\n  %.*s\n", what, static_cast<int>(about.size()), about.data());
    std::abort();
}

inline bool isUtf8(std::string_view text) { return firstBadUtf8(text) == std::string_view::npos; }

inline std::string_view textOf(const std::uint8_t* data, std::size_t size)
{
    return {reinterpret_cast<const char*>(data), size};
}

/// Every %n has its argument, it can be said in both systems of units, and a stored copy says the same.
inline void checkText(const Text& text)
{
    for (std::size_t i = 0; i + 1 < text.source.size(); ++i) {
        const char n = text.source[i + 1];
        if (text.source[i] == '%' && n >= '1' && n <= '9')
            require(static_cast<std::size_t>(n - '1') < text.args.size(), "a text has all its arguments", text.source);
    }
    require(isUtf8(plain(text, UnitSystem::Metric)), "a text is UTF-8", text.source);
    require(isUtf8(plain(text, UnitSystem::Us)), "a text is UTF-8 in US units", text.source);
    require(textFrom(textJson(text)) == text, "a stored text says the same", text.source);
}

/// A refusal or a note has a code to branch on, says what is wrong and what to do, and can be stored and read again.
inline void checkFinding(const Finding& finding)
{
    const std::string line = sentence(finding);
    require(!finding.code.empty() && finding.code.find('.') != std::string::npos, "a finding has a dotted code", line);
    for (const char c : finding.code)
        require((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '.' || c == '_', "a code is lower case",
                finding.code);
    require(!plain(finding.text).empty(), "a finding says what is wrong", finding.code);
    require(!plain(finding.remedy).empty(), "a finding says what to do", line);
    require(isUtf8(finding.subject), "a subject is UTF-8", finding.code);
    checkText(finding.text);
    checkText(finding.remedy);
    const std::string stored = findingJson(finding).dump();
    const auto back = Json::parse(stored);
    require(static_cast<bool>(back) && findingFrom(*back) == finding, "a stored finding reads back", stored);
}

inline void checkFindings(const Findings& findings)
{
    for (const Finding& finding : findings) checkFinding(finding);
}

}  // namespace taut::fuzz
