// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <SQLiteCpp/SQLiteCpp.h>

#include <cstdint>
#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>

#include "core/base/crypto.h"
#include "core/base/result.h"

// Inside this folder only: the one place that opens the engine, sets it and turns its errors into findings.
namespace taut::logbook {

/// Look is for what never changes in a file, and for one in which another PC may be writing: without a lock, past its
/// journal, and nothing there is touched.
enum class Access : std::uint8_t { Look, Read, Write };
enum class FileKind : std::uint8_t { Shop, Practice, Any };

/// What went wrong in the engine, by name: logbook.not_a_logbook .broken .disk_full .read_only .folder_read_only .busy
/// .disk .unreadable .failed.
[[nodiscard]] Finding findingOf(const SQLite::Exception& error, const std::filesystem::path& file);

/// Runs `work` and turns an engine error into a Finding; work returns a Result.
template <class F>
auto guarded(const std::filesystem::path& file, F&& work) -> std::invoke_result_t<F>
{
    try {
        return work();
    } catch (const SQLite::Exception& error) {
        return findingOf(error, file);
    }
}

/// Opens a file that exists, sets everything and reads it back (logbook.failed names the setting that did not hold).
/// Throws SQLite::Exception.
[[nodiscard]] std::unique_ptr<SQLite::Database> connect(const std::filesystem::path& file, Access access);

/// connect(), after asking the system whether the file may be read at all, and recognise() after it. `alsoLayout` also
/// refuses a file whose tables, views or guards are not those of its layout. An older layout is read as it is, and
/// never written in (logbook.older_layout).
[[nodiscard]] Result<std::unique_ptr<SQLite::Database>> openLogbook(const std::filesystem::path& file, Access access,
                                                                    FileKind kind, bool alsoLayout);

/// For reading, whatever its layout: one of our files, of this kind.
[[nodiscard]] Result<std::unique_ptr<SQLite::Database>> connectNewer(const std::filesystem::path& file, FileKind kind);

/// For writing, one of our files of an older layout, to bring it up (migrate.h). Throws SQLite::Exception.
[[nodiscard]] std::unique_ptr<SQLite::Database> connectOlder(const std::filesystem::path& file);

/// Makes an empty logbook of this kind; throws SQLite::Exception.
void createLogbook(const std::filesystem::path& file, FileKind kind, const std::string& workplace);

/// nullopt when this is one of our files, of this kind and of a schema that this program reads.
[[nodiscard]] std::optional<Finding> recognise(SQLite::Database& db, const std::filesystem::path& file, FileKind kind);

// Small helpers around statements.
inline std::int64_t asInt(std::uint64_t n) { return static_cast<std::int64_t>(n); }
inline std::uint64_t asUint(std::int64_t n) { return static_cast<std::uint64_t>(n); }
void bindBlob(SQLite::Statement& statement, int index, std::string_view bytes);
void bindBlob(SQLite::Statement& statement, int index, std::span<const std::uint8_t> bytes);
[[nodiscard]] std::string blobText(const SQLite::Column& column);
/// 32 bytes; anything else gives zeros, which no link is.
[[nodiscard]] Digest blobDigest(const SQLite::Column& column);
/// The single whole number that a query gives.
[[nodiscard]] std::int64_t numberOf(SQLite::Database& db, const char* sql);

}  // namespace taut::logbook
