// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/logbook/database.h"

namespace taut::logbook {

/// Everything that an empty logbook consists of: tables, guards (triggers), indexes, and the views for readers from
/// outside (formats §9). Seals are the truth; every other table but open_events, pins and file_facts can be rebuilt
/// from the documents.
[[nodiscard]] const std::string& schemaSql();

/// What a layout adds to the one before it: the step that migrate.h takes, and part of schemaSql().
[[nodiscard]] std::string stepTo(int layout);

/// Names of tables, views, guards and indexes that are missing, added or other than a logbook of its layout has them;
/// sorted.
[[nodiscard]] std::vector<std::string> layoutDifferences(SQLite::Database& db);

}  // namespace taut::logbook
