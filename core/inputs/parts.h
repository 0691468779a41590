// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.h"
#include "core/inputs/job.h"
#include "core/inputs/key_reader.h"
#include "core/inputs/press.h"
#include "core/inputs/roll.h"
#include "core/inputs/substrate.h"

namespace taut::inputs {

// Parts of the four files that have a source of their own.

/// The readers of inputs.h, with all that is found left in these notes.
[[nodiscard]] Result<Press> readPress(std::string_view toml, FileNotes& found);
[[nodiscard]] Result<Job> readJob(std::string_view toml, FileNotes& found);
[[nodiscard]] Result<std::vector<Substrate>> readSubstrates(std::string_view toml, FileNotes& found);
[[nodiscard]] Result<Roll> readRoll(std::string_view toml, FileNotes& found);

/// The key `tension` of a job or substrate.
[[nodiscard]] std::optional<TensionRange> readTension(KeyReader& above);
/// What a press file names for its other keys to refer to.
struct Names {
    std::vector<std::string> rollers, places;
};
/// The tables [[zone]] of a press. A second zone that ends at the same rewind is left out, with a finding
/// (input.rewind_taken).
[[nodiscard]] std::vector<Zone> readZones(KeyReader& top, const Names& names, const std::vector<Rewind>& rewinds);
/// [web], [lengths], [[guide]], [printing] and [splice_table] of a press.
void readWeb(KeyReader& top, const Names& names, Press& press);
/// The table [policy] of a press: rows of core/inputs/policy.h that this shop sets itself. An unknown row, one of
/// another kind, one that cannot be believed and one that turns a window round are refused; then the usual value holds.
void readPolicy(KeyReader keys, Press& press);
/// The table [limits] of a press: windows of this shop by a target's id, each end of the kind that the target has.
/// Where the id alone does not tell the kind, it is whatever the unit says.
void readLimits(KeyReader keys, Press& press);
/// A control's range: least, most, uncertainty, each of one of these kinds.
[[nodiscard]] Setting readSetting(KeyReader& above, std::string_view key, std::span<const Kind> kinds);

/// True, with a finding (input.duplicate_id), when one of `all` has this id already.
template <class T>
[[nodiscard]] bool isTaken(KeyReader& keys, const std::string& id, const std::vector<T>& all)
{
    if (std::none_of(all.begin(), all.end(), [&](const T& t) { return t.id == id; })) return false;
    keys.complain("id", refuse("input.duplicate_id", {}, {"The name %1 is used twice.", {id}},
                               "Give this one another name; it is left out until then."));
    return true;
}

}  // namespace taut::inputs
