// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/logbook/logbook.h"

// Who keeps a logbook twice, and when. Mirror, copy and restore themselves ask nobody: from the command line whoever
// may read and write the file has what they need.
namespace taut::logbook {

/// Why whoever sits at the window may not choose where this logbook is kept twice, have it copied or restored:
/// gate.role, gate.nobody (nobody is signed in). nullopt = they may.
[[nodiscard]] std::optional<Finding> whyNotKeeper(const std::optional<people::Actor>& actor);

/// Why no other file may take this logbook's place now: restore.run_open, else what reading it refuses.
[[nodiscard]] std::optional<Finding> whyNotReplaced(const Writer& writer);

}  // namespace taut::logbook
