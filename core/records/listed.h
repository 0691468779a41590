// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/json.h"
#include "core/records/records.h"

namespace taut::records {

/// What a list of runs can say of each, by the names that the files have, in their usual order.
[[nodiscard]] const std::vector<std::string_view>& runColumns();
/// Some of these columns, as they were asked for. runs.column: there is none of that name.
using Columns = std::vector<std::string>;
[[nodiscard]] Result<Done> checkColumns(const Columns& columns);

/// A run as `tautweb runs --json` lists it: with these columns, {} = with all.
[[nodiscard]] Json runJson(const RunRow& row, const Columns& columns = {});
/// Every run that fits, newest first, whatever the query's limit: a line of names, then a line a run (RFC 4180), times
/// in UTC, numbers with a point; or {"runs": [...]}. Refuses as Reader::runs and checkColumns do.
[[nodiscard]] Result<std::string> runsCsv(const Reader& reader, RunQuery query, const Columns& columns = {});
[[nodiscard]] Result<std::string> runsJson(const Reader& reader, RunQuery query, const Columns& columns = {});

/// The moment at which a day, "2026-11-25", begins where it is so many minutes later than in UTC. day.unknown.
[[nodiscard]] Result<std::int64_t> dayBegins(const std::string& day, int offsetMinutes);

}  // namespace taut::records
