// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <memory>
#include <optional>

#include "core/base/clock.h"
#include "core/base/result.h"
#include "core/logbook/database.h"

// Inside this folder only.
namespace taut::logbook {

/// Brings a logbook of an older layout up to this program's, before anybody writes in it: a whole copy of it is kept
/// beside it first, verified to the depth, as NAME-before-layout-N-DATE.logbook; then what each layout adds is added in
/// one transaction, the number last; then the whole is verified to the depth. Documents, links and signatures are never
/// touched. nullopt: it is of this layout already; else where the copy is. Whoever calls it holds the pen.
/// logbook.not_in_order (nothing was changed); migrate.failed (says where the copy is); what copying and writing
/// refuse.
[[nodiscard]] Result<std::optional<std::filesystem::path>> bringUp(const std::filesystem::path& file, Instant now);

/// The same of a file that is a copy itself, and so needs none: what a restore is made of.
[[nodiscard]] Result<Done> bringUpCopy(const std::filesystem::path& file);

/// For reading: a logbook of an older layout as a private copy of this one's, gone with its connection; the file is
/// left as it is. One of this layout is given back.
[[nodiscard]] Result<std::unique_ptr<SQLite::Database>> broughtUp(std::unique_ptr<SQLite::Database> db,
                                                                  const std::filesystem::path& file);

}  // namespace taut::logbook
