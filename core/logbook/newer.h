// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/logbook/database.h"

// Inside this folder only.
namespace taut::logbook {

/// Opens a logbook of this layout, or of a newer one as readNewer does.
[[nodiscard]] Result<std::unique_ptr<SQLite::Database>> openForReading(const std::filesystem::path& file, FileKind kind,
                                                                       Findings* notes);

/// What a logbook of a newer layout says through the views that readers from outside may count on (`seals`,
/// `signatures`), in a logbook of this program's layout that is gone with its connection. `refusal`, when those views
/// are not there or the chain is not whole. Taking it over goes once through every document, in stretches: whoever
/// writes in it never waits for the whole of it.
[[nodiscard]] Result<std::unique_ptr<SQLite::Database>> readNewer(const std::filesystem::path& file, FileKind kind,
                                                                  Finding refusal, Findings* notes);

}  // namespace taut::logbook
