// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/records/records.h"

namespace taut::records {

/// A field of text (RFC 4180 section 2): in quotes where it must be, quotes doubled. What a spreadsheet would take for
/// a formula gets an apostrophe before it.
[[nodiscard]] std::string csvField(std::string text);

/// Readings of sealed runs as RFC 4180 text in UTF-8, one a line, oldest run first: what was entered stays as text
/// beside its value and limits in SI units, numbers with a decimal point. Text that a spreadsheet would take for a
/// formula (it begins with = + - @, a tab or a return) has an apostrophe before it; numbers never do. They are what the
/// sealed documents say; `present` says how the run stands now: a corrected or void one is not left out.
[[nodiscard]] Result<std::string> readingsCsv(const Reader& reader, const RunQuery& query);
/// Of one run's seal, and how that run stands now: document.broken.
[[nodiscard]] Result<std::string> readingsCsvOf(const seal::Seal& run, std::string_view present);

}  // namespace taut::records
