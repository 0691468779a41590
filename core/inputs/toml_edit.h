// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

#include "core/base/result.h"

// Changes in the text of a TOML file that leave every other byte as somebody wrote it: comments, order, blank lines and
// spelling. What is sealed is the text, so a form never writes a file anew.
namespace taut::inputs {

/// Into a table by a key, or into a list by the place of an item, from 0.
using TomlStep = std::variant<std::string, std::size_t>;
using TomlPath = std::vector<TomlStep>;
/// As findings name it: "zone[0].setting.least".
[[nodiscard]] std::string pathText(const TomlPath& path);

/// Something that stands in a file, and how it is written there.
struct TomlPiece {
    enum class Sort : std::uint8_t { Value, List, Inline, Table, Tables };  ///< Tables: a list of [[tables]]
    TomlPath path;
    Sort sort{};
    std::string written;  ///< of a value, list or inline table: as it stands in the file
};
/// All of a file, tables before their keys, in the order of the file. Refuses what readToml refuses.
[[nodiscard]] Result<std::vector<TomlPiece>> tomlPieces(std::string_view text, std::string_view file);

/// A row of a list of tables: keys and what is written for each ("\"80 mm\"", "3").
using TomlRow = std::vector<std::pair<std::string, std::string>>;

/// Each gives the whole text anew. Refusals: toml.* of a text that cannot be read; toml_edit.not_a_value, .no_place
/// (nothing to put it into, or a value stands where a table is wanted), .not_there, .scattered (rows between which
/// other tables stand cannot change places).
///
/// Puts what is written here ("\"12 N m/bar\"", "true", "[1, 2]") where the path leads; tables that are missing on the
/// way are made.
[[nodiscard]] Result<std::string> setToml(std::string_view text, const TomlPath& path, std::string_view written);
/// An empty table there, for its keys to come: with a header where it is one of the file's own.
[[nodiscard]] Result<std::string> makeTomlTable(std::string_view text, const TomlPath& path);
/// Takes out a key with its line, a table with its keys, an item of a list.
[[nodiscard]] Result<std::string> removeToml(std::string_view text, const TomlPath& path);
/// Puts a row into the list before the item that stands at `at`, or behind the last; a list that is missing is made.
[[nodiscard]] Result<std::string> insertToml(std::string_view text, const TomlPath& list, std::size_t at,
                                             const TomlRow& row);
/// Lets this item and the next of the list change places.
[[nodiscard]] Result<std::string> swapToml(std::string_view text, const TomlPath& list, std::size_t first);

/// The word, or text, or number that a person typed, as a file writes it: numbers, true and false and what stands in
/// quotes or brackets already as they are, anything else between quotes.
[[nodiscard]] std::string tomlWritten(std::string_view typed);

}  // namespace taut::inputs
