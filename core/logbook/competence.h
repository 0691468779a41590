// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/logbook/database.h"
#include "core/people/person.h"
#include "core/run/run.h"

// Inside this folder only.
namespace taut::logbook {

/// Why this person may not sign a finished run of this press alone: gate.not_competent, where the shop asks it (policy
/// row competence_asked of the press with which the run was begun). A supervisor needs no competence, since they may
/// countersign; nor does whoever signs with one beside them.
[[nodiscard]] std::optional<Finding> notAlone(SQLite::Database& db, const run::Run& run, const people::Actor& who,
                                              bool countersigned, std::int64_t nowMs);

}  // namespace taut::logbook
