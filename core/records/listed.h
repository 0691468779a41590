// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/json.h"
#include "core/records/records.h"

namespace taut::records {

/// A run as `tautweb runs --json` lists it.
[[nodiscard]] Json runJson(const RunRow& row);
/// Every run that fits, newest first, whatever the query's limit: a line of names, then a line a run (RFC 4180), times
/// in UTC, numbers with a point; or {"runs": [...]}. Refuses as Reader::runs does.
[[nodiscard]] Result<std::string> runsCsv(const Reader& reader, RunQuery query);
[[nodiscard]] Result<std::string> runsJson(const Reader& reader, RunQuery query);

}  // namespace taut::records
