// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/inputs/toml_edit.h"

// Where each part of a TOML text lies, byte for byte; for toml_edit.cpp.
namespace taut::inputs {

struct ByteSpan {
    std::size_t begin = 0, end = 0;
};

struct TomlMember;

/// A key, item or table of the text with the bytes that are its.
struct TomlNode {
    using Sort = TomlPiece::Sort;
    /// How one more key comes into a table.
    enum class Room : std::uint8_t {
        Line,    ///< a line of its own at `at`
        Comma,   ///< behind a comma at `at`
        Braces,  ///< the first between braces: the whole value is written anew
        Header   ///< the table is only implied: its header goes to `at`, with the key below it
    };
    Sort sort = Sort::Value;
    ByteSpan value;         ///< of a value, list or inline table
    ByteSpan whole;         ///< with its key, for what stands in an inline table or a list; with its line else
    ByteSpan tail;          ///< of an item of a list: what stands behind it and its comma on its line
    bool endsLine = false;  ///< nothing but a comment is behind it on its line
    Room room = Room::Line;
    std::size_t at = 0;
    std::string prefix;              ///< what dotted keys of it begin with, "web_width."
    std::string header;              ///< between the brackets, as written or as it would be
    std::vector<ByteSpan> sections;  ///< of a table with headers: comment above, header and body
    std::vector<TomlMember> members;
    std::vector<TomlNode> items;

    [[nodiscard]] bool isTable() const { return sort == Sort::Table || sort == Sort::Inline; }
    [[nodiscard]] bool isList() const { return sort == Sort::List || sort == Sort::Tables; }
    [[nodiscard]] TomlNode* member(std::string_view key);
    [[nodiscard]] const TomlNode* member(std::string_view key) const;
    /// One more member, behind the others.
    TomlNode& add(const std::string& key, TomlNode node);
};

/// What a table has under a key.
struct TomlMember {
    std::string key;
    TomlNode node;
};

/// Lays out a text that readToml has accepted.
[[nodiscard]] TomlNode layoutOf(std::string_view text);
/// Where the value that begins this text ends.
[[nodiscard]] std::size_t endOfTomlValue(std::string_view text);
/// A key as a file writes it: bare, or between quotes.
[[nodiscard]] std::string writtenKey(std::string_view key);

}  // namespace taut::inputs
