// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "core/inputs/around.h"
#include "core/inputs/key_asked.h"
#include "core/inputs/toml_edit.h"

// A definition's text as a form: which tables it has and could have, with every key that its reader knows. One form
// serves press, job and substrate, since it is made of what the readers ask for.
namespace taut::inputs {

/// One key of one table or row.
struct FormCell {
    TomlPath path;
    KeyAsked::Sort sort{};
    std::vector<std::string> words;     ///< that may stand here; empty = anything
    std::vector<Kind> kinds;            ///< of a quantity
    bool known = false;                 ///< the reader asks for it in this row
    bool stands = false;                ///< the file has it
    std::string said;                   ///< as a person reads it, without quotes; "" where it does not stand
    std::vector<std::size_t> findings;  ///< about it, in Form::findings
};
/// A table of the file, or a list of tables with a row each.
struct FormGroup {
    std::string name;  ///< "press", "zone", "web.roller"
    TomlPath path;
    bool list = false, nested = false;         ///< nested: its rows have tables of their own
    std::vector<std::string> keys;             ///< "name", "setting.least", "at[0]"
    std::vector<std::vector<FormCell>> items;  ///< rows of a list, else one or none; a cell for each key
};
struct Form {
    std::vector<FormGroup> groups;
    Findings findings;
    bool readable = false;  ///< the text could be read at all: there are groups
};
/// The form of a press, job or substrate: with what its reader finds, and then what findingsAround does. A job's
/// substrate is one of those that the logbook knows.
[[nodiscard]] Form formOf(std::string_view what, std::string_view toml, const Around& around = {});

/// The whole text with this cell saying what a person typed; nothing typed takes the key out.
[[nodiscard]] Result<std::string> typedInto(std::string_view toml, const FormCell& cell, std::string_view typed);
/// One more row of a list, before the one at `at` or behind the last, with a name that no other row has; of a table
/// that is missing, the table.
[[nodiscard]] Result<std::string> addedTo(std::string_view toml, const FormGroup& group, std::size_t at);

}  // namespace taut::inputs
