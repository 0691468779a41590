// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/base/finding.h"

// What no reader of a single key can find in a definition: that the press cannot be threaded as it is written, that
// something else bears its id, that a job has not what a run of it needs.
namespace taut::inputs {

/// The logbook that a definition is written for.
struct Around {
    std::string own;                      ///< the id under which it stands there already; "" = it is new
    std::vector<std::string> taken;       ///< ids of all definitions of its kind, its own among them
    std::vector<std::string> substrates;  ///< ids of those it knows; empty: nothing is said about them
};
/// Subjects are those of the readers, "file:line:column web.roller[2]", so that each belongs to its place in the form.
/// Silent where the text cannot be read: the readers say that. Codes: those of crossCheck of a press by itself,
/// input.id_taken, input.substrate_unknown, input.run_needs, input.no_title.
[[nodiscard]] Findings findingsAround(std::string_view what, std::string_view toml, std::string_view file,
                                      const Around& around);

}  // namespace taut::inputs
