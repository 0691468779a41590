// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "core/logbook/answers.h"
#include "core/logbook/prepared.h"
#include "core/run/run.h"

// Inside this folder only: the words by which a run is found.
namespace taut::logbook {

/// Of a sealed run's document.
[[nodiscard]] Words wordsOf(const Json& body, const JobWords& job, const std::string& personName);
/// Of a run as far as it has come.
[[nodiscard]] Words wordsOf(const run::Run& run, const JobWords& job);
/// Puts the words of a row, or in place of those that stand there. Nothing happens when they are the same. `row` is the
/// number of the run's seal, or minus the number of its row while it is open.
void putWords(Prepared& prepared, std::int64_t row, const Words& words);
/// The same of a row that is not there, without the search: allWordsSearched() does that of all rows in one go.
void putNewWords(Prepared& prepared, std::int64_t row, const Words& words);
void allWordsSearched(SQLite::Database& db);
void dropWords(Prepared& prepared, std::int64_t row);

/// What is typed, as the search takes it: every word is looked for as the beginning of a word, one with signs in it
/// ("north-2026-11") as words one after the other, of which the last is a beginning. Nothing that is typed means
/// anything else. "" = nothing is typed; of signs alone nothing is found.
[[nodiscard]] std::string matchOf(std::string_view typed);

}  // namespace taut::logbook
