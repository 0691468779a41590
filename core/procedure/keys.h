// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/finding.h"
#include "core/base/toml.h"

namespace taut::procedure {

/// The word of the list that somebody most likely meant; "" when none is near.
[[nodiscard]] std::string nearest(std::string_view word, const std::vector<std::string>& known);

/// The keys of one table of a procedure file. Each asked-for key is remembered, so that finish() can name the others.
class Keys {
public:
    /// where: "file:line" comes from the table itself; what: "step walk", "place walk_round", for the findings'
    /// subject.
    Keys(const Toml& table, std::string_view file, std::string what, bool newerFormat, Findings& lint);

    [[nodiscard]] int line() const noexcept { return m_line; }
    [[nodiscard]] std::string subject() const;
    void rename(std::string what) { m_what = std::move(what); }

    /// A text; lint.missing_key when required and absent or empty, lint.wrong_type when it is no text.
    std::string text(std::string_view key, bool required = false);
    bool flag(std::string_view key, bool fallback);
    std::optional<std::int64_t> whole(std::string_view key, bool required = false);
    std::vector<std::string> words(std::string_view key);
    /// Tables of a list ([[stage]]); the key is remembered, the caller reads them.
    std::vector<const Toml*> tables(std::string_view key);
    const Toml* table(std::string_view key);
    /// One of these words, else lint.unknown_word and the fallback. Absent and not required: the fallback.
    std::string oneOf(std::string_view key, const std::vector<std::string>& allowed, std::string fallback,
                      bool required = false);
    void wrong(std::string code, Text text, Text remedy);
    /// Names every key that was not asked for (lint.unknown_key; a note when the file's format is newer than ours).
    void finish();

private:
    const Toml* find(std::string_view key);
    const Toml* typed(std::string_view key, bool required, const char* expected, bool (*isIt)(const Toml&));
    const Toml& m_table;
    std::string m_file, m_what;
    int m_line;
    bool m_newer;
    Findings& m_lint;
    std::vector<std::string> m_asked;
};

}  // namespace taut::procedure
