// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <iosfwd>
#include <string>

#include "core/base/finding.h"
#include "core/base/json.h"

namespace taut::app::verbs {

/// How a verb ended; the numbers are for scripts and never change.
enum class Exit : int {
    Done = 0,
    NotInOrder = 1,  ///< done, and the answer is "not in order"
    WrongInput = 2,  ///< a file, an option, a unit
    Refused = 3,     ///< by a rule: a gate, a role, a sign-off
    Machine = 4,     ///< disk, lock, printer, font
};

/// Where a verb writes: results on `out`, refusals on `err`.
struct Console {
    std::ostream& out;
    std::ostream& err;
};

/// Which exit code a finding of this code means.
[[nodiscard]] Exit exitFor(const Finding& finding);

/// One sentence on `err`; with json {"format":1,"findings":[...]} on `out`. Gives the exit code back.
Exit refused(const Console& console, bool json, const Finding& finding);
/// The same for several findings: one sentence a line; the exit code of the first Stop.
Exit refused(const Console& console, bool json, const Findings& findings);

/// What is worth knowing beside an answer, a sentence a line on `err`.
void noted(const Console& console, const Findings& findings);
/// NotInOrder when one of them is more than a note, else what was said.
[[nodiscard]] Exit worst(const Findings& findings, Exit otherwise);

/// {"format": 1}, to be filled.
[[nodiscard]] Json answer();
/// As every --json answer lists them.
[[nodiscard]] Json findingsJson(const Findings& findings);
/// One JSON object and a line feed.
void print(const Console& console, const Json& json);

/// Columns side by side, two spaces apart, no space at a line's end. The last column is not padded.
[[nodiscard]] std::string table(const std::vector<std::vector<std::string>>& rows);
/// How many columns of a terminal a UTF-8 text takes (one a code point).
[[nodiscard]] std::size_t columnsOf(std::string_view text);

}  // namespace taut::app::verbs
