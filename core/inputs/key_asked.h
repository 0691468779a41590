// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/base/finding.h"
#include "core/base/kind.h"

namespace taut::inputs {

/// A key that the reader of a file knows at this place, whether it stands there or not: what a form can offer. The
/// readers themselves say it while they read, so that no second list of keys is kept.
struct KeyAsked {
    enum class Sort : std::uint8_t {
        Text,
        Id,
        Word,
        Reference,
        Flag,
        Whole,
        Number,
        Quantity,
        Texts,
        Point,
        Table,
        Tables
    };
    std::string table;  ///< path of its table, as findings name it: "zone[0].setting"; "" = the file's own keys
    std::string key;
    Sort sort{};
    std::vector<std::string> words;  ///< what may stand here, or what may be referred to; empty = anything
    std::vector<Kind> kinds;         ///< of a quantity
    bool stands = false;             ///< the file has it
    [[nodiscard]] std::string path() const { return table.empty() ? key : table + '.' + key; }
};

/// What a reader makes of a text, for somebody who is still writing it.
struct Looked {
    Findings findings;            ///< all of them; what makes the file unreadable stands alone
    std::vector<KeyAsked> asked;  ///< in the order in which the reader asked
};
/// Reads a press, job, substrate ("substrate") or roll. Never fails: what is wrong is what it finds.
[[nodiscard]] Looked lookAt(std::string_view what, std::string_view toml);

/// The key that a finding is about, "zone[0].setting.least", and its line; "" and 0 where it names none.
struct FoundAt {
    std::string path;
    int line = 0;
};
[[nodiscard]] FoundAt foundAt(const Finding& finding);

}  // namespace taut::inputs
