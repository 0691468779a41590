// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/logbook/writer_impl.h"
#include "core/run/run.h"

// Inside this folder only: the tables of runs that are not sealed yet. All of it inside a transaction or a read.
namespace taut::logbook {

/// The stored events of a run from event n + 1 on; event.broken.
[[nodiscard]] Result<std::vector<run::Event>> eventsAfter(SQLite::Database& db, std::string_view runId, std::size_t n);
/// Why nothing can be added to a run: run.unknown, run.sealed.
[[nodiscard]] std::optional<Finding> notOpen(SQLite::Database& db, std::string_view runId);
/// A run folded from its stored events; run.unknown, run.sealed, event.broken.
[[nodiscard]] Result<run::Run> foldStored(SQLite::Database& db, std::string_view runId);
/// Brings the row and the words of an open run up to date; makes them when they are missing.
void putOpenRow(SQLite::Database& db, const run::Run& run);
/// Appends the newest event of a run and brings its row up to date.
void appendEvent(SQLite::Database& db, const run::Run& run);
/// Ids of runs not sealed, oldest first; press "" = of every press.
[[nodiscard]] std::vector<std::string> unsealedRuns(SQLite::Database& db, std::string_view press);
/// "north-2026-11-25-01": press, local date, and a number within both.
[[nodiscard]] std::string nextRunId(SQLite::Database& db, const std::string& press, Instant at);
/// Local date "2026-11-25".
[[nodiscard]] std::string dayOf(std::int64_t utcMs, int offsetMinutes);
/// Who does what now, as the next event of a run is stamped.
[[nodiscard]] run::Stamp stampFor(std::size_t n, Instant at, const people::Actor& by);

}  // namespace taut::logbook
