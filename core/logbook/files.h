// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "core/base/clock.h"
#include "core/logbook/database.h"
#include "core/seal/chain.h"

// Inside this folder only: logbook files beside each other, their names and how they come by them.
namespace taut::logbook {

/// A new name is on disk once its folder is.
void syncFolder(const std::filesystem::path& folder);
/// What the engine itself has not written is on disk once it was asked for.
void syncFile(const std::filesystem::path& file);

/// A file that is being made: under a name that nobody takes for a logbook until it is whole and is given its own. What
/// was given none is removed, with the engine's journal.
class Unfinished {
public:
    /// FOLDER/.STEM-RANDOM.part. What others of that stem left there when they were killed, a day ago or more, goes.
    Unfinished(const std::filesystem::path& folder, const std::string& stem, Instant now);
    ~Unfinished();
    Unfinished(const Unfinished&) = delete;
    Unfinished& operator=(const Unfinished&) = delete;
    [[nodiscard]] const std::filesystem::path& file() const noexcept { return m_file; }
    /// Gives it a name of the same folder, whoever else wants that name at the same moment; false: something has it by
    /// now, and it was left as it is. file.unwritable.
    [[nodiscard]] Result<bool> name(const std::filesystem::path& file);

private:
    std::filesystem::path m_file;
};

/// Makes an empty logbook and gives it this name, so that no half-made one ever has it; false: something else has the
/// name by now. A `mirrorOf` that is not empty marks it as the mirror of that logbook.
[[nodiscard]] Result<bool> makeLogbook(const std::filesystem::path& file, FileKind kind, const std::string& workplace,
                                       Instant now, const std::string& mirrorOf = {});
/// What a file says of itself.
struct FileFacts {
    FileKind kind{};
    std::string workplace;  ///< id of the PC that began the logbook
    std::string mirrorOf;   ///< whose mirror it is; "" = none
    friend bool operator==(const FileFacts&, const FileFacts&) = default;
};
/// Of an open file of ours. Throws SQLite::Exception.
[[nodiscard]] FileFacts factsOf(SQLite::Database& db);
/// Of a file that is opened for it; what opening refuses.
[[nodiscard]] Result<FileFacts> factsIn(const std::filesystem::path& file);

/// "20261126-075148", UTC, so that names sort by time.
[[nodiscard]] std::string dateOf(Instant at);
/// FOLDER/STEM-DATE.logbook, a second or more later when that is taken.
[[nodiscard]] std::filesystem::path freeDated(const std::filesystem::path& folder, const std::string& stem, Instant at);
/// Files FOLDER/STEM-DATE.logbook, oldest first.
[[nodiscard]] std::vector<std::filesystem::path> datedFiles(const std::filesystem::path& folder,
                                                            const std::string& stem);
/// The date in such a name, in milliseconds UTC; nullopt when it is none.
[[nodiscard]] std::optional<std::int64_t> dateIn(const std::filesystem::path& file);

/// Every page of an open database into a new file that only this user may read; a writer at work in it may go on.
/// The file is on disk then. Throws SQLite::Exception; file.unwritable.
[[nodiscard]] Result<Done> copyPages(SQLite::Database& from, const std::filesystem::path& to);

/// Count and last link as the rows say it.
[[nodiscard]] seal::Anchor headOf(SQLite::Database& db);

}  // namespace taut::logbook
