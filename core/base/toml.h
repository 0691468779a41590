// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

#include "core/base/result.h"

namespace taut {

/// A TOML 1.0 value with the place where it stands. Tables keep file order. The parser library stays behind toml.cpp.
struct Toml {
    using Array = std::vector<Toml>;
    using Table = std::vector<std::pair<std::string, Toml>>;

    Toml() = default;  // declared: else clang 14 needs the whole type within the variant
    std::variant<std::monostate, bool, std::int64_t, double, std::string, Array, Table> value;
    int line = 0;    ///< from 1
    int column = 0;  ///< from 1

    [[nodiscard]] const std::string* text() const { return std::get_if<std::string>(&value); }
    [[nodiscard]] const Array* array() const { return std::get_if<Array>(&value); }
    [[nodiscard]] const Table* table() const { return std::get_if<Table>(&value); }
    /// Member of a table, or nullptr.
    [[nodiscard]] const Toml* find(std::string_view key) const;
    /// "a text", "a whole number", "a table" ...: for messages.
    [[nodiscard]] const char* typeName() const;
};

/// Reads a whole file's text; the root is a table. Refuses by name: too large (1 MiB), not UTF-8 (toml.not_utf8), a
/// control character (toml.control_character), a syntax error (toml.syntax), each with its line and column, dates
/// (write them as text). `file` only serves the message.
[[nodiscard]] Result<Toml> readToml(std::string_view text, std::string_view file);
/// A TOML basic string with its quotes and escapes.
[[nodiscard]] std::string tomlQuoted(std::string_view text);

}  // namespace taut
