// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/logbook/database.h"

#include <sqlite3.h>
#include <unistd.h>

#include <array>
#include <cstring>

#include "core/logbook/logbook.h"
#include "core/logbook/schema.h"

namespace taut::logbook {

namespace {

namespace fs = std::filesystem;

constexpr int kBusyMs = 5000;

struct Setting {
    const char* pragma;
    const char* set;
    std::int64_t holds;
};
/// Of every connection. synchronous 3 = EXTRA: the folder is synced too when the rollback journal goes.
constexpr std::array kSettings{
    Setting{"foreign_keys", "ON", 1},    Setting{"recursive_triggers", "ON", 1}, Setting{"trusted_schema", "OFF", 0},
    Setting{"cell_size_check", "ON", 1}, Setting{"synchronous", "EXTRA", 3},     Setting{"mmap_size", "0", 0},
};
/// Of the engine's connection object: refuse what could change the file behind its tables' backs, and text in double
/// quotes.
constexpr std::array kDefences{std::pair{SQLITE_DBCONFIG_DEFENSIVE, 1}, std::pair{SQLITE_DBCONFIG_DQS_DML, 0},
                               std::pair{SQLITE_DBCONFIG_DQS_DDL, 0}, std::pair{SQLITE_DBCONFIG_TRUSTED_SCHEMA, 0},
                               std::pair{SQLITE_DBCONFIG_ENABLE_LOAD_EXTENSION, 0}};
constexpr int kLongestValue = 64 << 20;  // bytes; a run's document has about 90 000

void mustHold(bool holds, const std::string& what)
{
    if (!holds) throw SQLite::Exception("the setting " + what + " does not hold", SQLITE_ERROR);
}

void configure(SQLite::Database& db, Access access)
{
    for (const auto& [op, value] : kDefences) {
        if (access == Access::Look && op == SQLITE_DBCONFIG_DEFENSIVE) continue;  // it forbids what connect() sets
        int now = -1;
        sqlite3_db_config(db.getHandle(), op, value, &now);
        mustHold(now == value, "number " + std::to_string(op));
    }
    sqlite3_limit(db.getHandle(), SQLITE_LIMIT_LENGTH, kLongestValue);
    for (const Setting& setting : kSettings) {
        const std::string pragma = std::string("PRAGMA ") + setting.pragma;
        db.exec(pragma + " = " + setting.set);
        mustHold(numberOf(db, pragma.c_str()) == setting.holds, setting.pragma);
    }
    if (access != Access::Write) {
        db.exec("PRAGMA query_only = ON");
        mustHold(numberOf(db, "PRAGMA query_only") == 1, "query_only");
    } else {
        SQLite::Statement mode(db, "PRAGMA journal_mode = DELETE");
        mustHold(mode.executeStep() && mode.getColumn(0).getString() == "delete", "journal_mode");
    }
}

/// As the engine takes a name with settings behind it.
std::string asUri(const fs::path& file)
{
    std::string uri = "file://";
    for (const char c : fs::absolute(file).string()) {
        if (c == '%')
            uri += "%25";
        else if (c == '?')
            uri += "%3f";
        else if (c == '#')
            uri += "%23";
        else
            uri += c;
    }
    return uri;
}

Finding notALogbook(const fs::path& file, const char* text)
{
    return refuse("logbook.not_a_logbook", file.string(), {text, {file.string()}},
                  "Choose another file, or a new name to begin a new logbook. Nothing was changed.");
}

Finding otherSchema(const fs::path& file, std::int64_t found)
{
    const std::vector<TextArg> args{file.string(), found, std::int64_t{kSchema}};
    if (found > kSchema)
        return refuse(
            "logbook.newer_schema", file.string(),
            {"The logbook %1 was written by a newer version of this program (layout %2, this one knows %3).", args},
            "Update the program on this PC to write in it. Until then its sealed runs can be read: tautweb runs, sheet "
            "and export. Nothing was changed.");
    return refuse(
        "logbook.older_schema", file.string(),
        {"The logbook %1 was made by a version from before the first release (layout %2, this one needs %3).", args},
        "Keep the file with the version that made it, and begin a new logbook. Nothing was changed.");
}

Finding notBroughtUp(const fs::path& file)
{
    return refuse("logbook.older_layout", file.string(),
                  {"%1 is of an older layout, and nothing is written in it as it is.", {file.string()}},
                  "Open it in the program, which keeps a copy of it and brings it up.");
}

}  // namespace

Finding findingOf(const SQLite::Exception& error, const fs::path& file)
{
    const std::string name = file.string();
    const int code = error.getErrorCode() & 0xFF;
    const int extended = error.getExtendedErrorCode();
    if (code == SQLITE_NOTADB) return notALogbook(file, "%1 is not a logbook: it is a file of another kind.");
    if (code == SQLITE_CORRUPT)
        return refuse("logbook.broken", name,
                      {"The logbook %1 is damaged: parts of the file are missing or scrambled.", {name}},
                      "Leave the file as it is, have the disk checked, and restore the logbook from a backup.");
    if (code == SQLITE_FULL)
        return refuse("logbook.disk_full", name,
                      {"There is no room left to write in %1. Nothing was recorded.", {name}},
                      "Free some room on this disk, then do the last thing again.");
    if (extended == SQLITE_READONLY_ROLLBACK || extended == SQLITE_READONLY_RECOVERY)
        return refuse("logbook.unreadable", name,
                      {"The program ended while it was writing in %1, and the half-written part can only be taken back "
                       "where the file may be written.",
                       {name}},
                      "Open it once as a user who may write there, or copy the file and its -journal to a folder of "
                      "your own and open it there.");
    if (extended == SQLITE_READONLY_DIRECTORY)
        return refuse("logbook.folder_read_only", name, {"The folder of %1 may not be written in.", {name}},
                      "Choose a folder that you may write in, or have its owner allow writing.");
    if (extended == SQLITE_READONLY_DBMOVED)
        return refuse("logbook.moved", name,
                      {"%1 is no longer there: it was moved, renamed or deleted while it was open. Nothing was "
                       "recorded.",
                       {name}},
                      "Put the same file back under this name, then do the last thing again.");
    if (code == SQLITE_READONLY)
        return refuse("logbook.read_only", name, {"%1 may be read but not written.", {name}},
                      "Have its owner allow writing, or open it for reading.");
    if (code == SQLITE_BUSY || code == SQLITE_LOCKED)
        return refuse("logbook.busy", name,
                      {"Another program has kept %1 busy for %2 s.", {name, std::int64_t{kBusyMs / 1000}}},
                      "Close other programs that have the logbook open, then do the last thing again.");
    if (code == SQLITE_CANTOPEN || code == SQLITE_PERM || code == SQLITE_AUTH)
        return refuse("logbook.unreadable", name,
                      {"%1 cannot be opened; the system says: %2.", {name, std::string(error.what())}},
                      "Check that the file and its folder may be read by this user.");
    if (code == SQLITE_IOERR)
        return refuse(
            "logbook.disk", name,
            {"The disk failed while %1 was read or written; the system says: %2.", {name, std::string(error.what())}},
            "Have the disk or the network drive checked; keep a copy of the file elsewhere.");
    return refuse("logbook.failed", name, {"The logbook %1 refused: %2.", {name, std::string(error.what())}},
                  "Nothing was recorded. Start the program again; if it comes back, report it.");
}

std::unique_ptr<SQLite::Database> connect(const fs::path& file, Access access)
{
    if (access == Access::Look) {
        auto db = std::make_unique<SQLite::Database>(asUri(file) + "?immutable=1",
                                                     SQLite::OPEN_READONLY | SQLite::OPEN_URI, kBusyMs);
        // A half-written file may say that it is longer than it is yet: only so does the engine overlook that.
        db->exec("PRAGMA writable_schema = ON");
        return db;
    }
    // Readers too open for reading and writing where they may: only so can what a killed writer left half done be taken
    // back. query_only keeps them from changing anything.
    return std::make_unique<SQLite::Database>(file.string(), SQLite::OPEN_READWRITE, kBusyMs);
}

std::optional<Finding> recognise(SQLite::Database& db, const fs::path& file, FileKind kind)
{
    const std::int64_t id = numberOf(db, "PRAGMA application_id");
    const bool practice = id == std::int64_t{kPracticeApplicationId};
    if (id != std::int64_t{kApplicationId} && !practice) {
        if (numberOf(db, "PRAGMA page_count") == 0) {
            Finding empty = notALogbook(file, "%1 is not a logbook: it is empty.");
            empty.remedy =
                "If it never held a run, since the program ended while it was being made, remove it and begin again. "
                "If it did, restore it from the mirror or a copy. Nothing was changed.";
            return empty;
        }
        return notALogbook(file, "%1 is not a logbook: it is a database of another program.");
    }
    if (practice && kind == FileKind::Shop)
        return refuse("logbook.practice", file.string(),
                      {"%1 is a practice logbook: what stands in it never happened on a press.", {file.string()}},
                      "Choose the shop's own logbook, or open this one from practice.");
    if (!practice && kind == FileKind::Practice)
        return refuse("logbook.not_practice", file.string(),
                      {"%1 is the shop's own logbook, and practice never writes in it.", {file.string()}},
                      "Choose a practice logbook, or a new name to begin one.");
    const std::int64_t version = numberOf(db, "PRAGMA user_version");
    if (version < kOldestSchema || version > kSchema) return otherSchema(file, version);
    return std::nullopt;
}

Result<std::unique_ptr<SQLite::Database>> openLogbook(const fs::path& file, Access access, FileKind kind,
                                                      bool alsoLayout)
{
    // Only asks the system, never opens: closing a second descriptor would drop the locks of this process's own
    // connections.
    std::error_code error;
    const fs::file_status status = fs::status(file, error);
    if (status.type() == fs::file_type::not_found)
        return refuse("logbook.missing", file.string(), {"There is no logbook %1.", {file.string()}},
                      "Check the spelling and the folder, or choose another file.");
    if (status.type() == fs::file_type::directory) return notALogbook(file, "%1 is not a logbook: it is a folder.");
    if (status.type() == fs::file_type::none || ::access(file.c_str(), R_OK) != 0)
        return refuse("logbook.unreadable", file.string(),
                      {"The logbook %1 may not be read by this user.", {file.string()}},
                      "Have its owner allow reading, or copy it to a place of your own.");
    return guarded(file, [&]() -> Result<std::unique_ptr<SQLite::Database>> {
        auto db = connect(file, access);
        if (auto finding = recognise(*db, file, kind)) return *finding;
        if (access == Access::Write && numberOf(*db, "PRAGMA user_version") < kSchema) return notBroughtUp(file);
        configure(*db, access);
        if (alsoLayout && !layoutDifferences(*db).empty())
            return refuse("logbook.older_schema", file.string(),
                          {"The logbook %1 is laid out otherwise than this program lays one out (first difference: "
                           "%2): it was made by a version from before the first release, or changed by hand.",
                           {file.string(), layoutDifferences(*db).front()}},
                          "Verify it, keep the file, and begin a new logbook. Nothing was changed.");
        return db;
    });
}

Result<std::unique_ptr<SQLite::Database>> connectNewer(const fs::path& file, FileKind kind)
{
    auto db = connect(file, Access::Read);
    auto finding = recognise(*db, file, kind);
    if (finding && finding->code != "logbook.newer_schema") return *finding;
    configure(*db, Access::Read);
    return db;
}

std::unique_ptr<SQLite::Database> connectOlder(const fs::path& file)
{
    auto db = connect(file, Access::Write);
    configure(*db, Access::Write);
    return db;
}

void createLogbook(const fs::path& file, FileKind kind, const std::string& workplace)
{
    SQLite::Database db(file.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE, kBusyMs);
    configure(db, Access::Write);
    SQLite::Transaction transaction(db, SQLite::TransactionBehavior::IMMEDIATE);
    db.exec(schemaSql());
    const std::uint32_t id = kind == FileKind::Practice ? kPracticeApplicationId : kApplicationId;
    db.exec("PRAGMA application_id = " + std::to_string(id));
    db.exec("PRAGMA user_version = " + std::to_string(kSchema));
    SQLite::Statement insert(db, "INSERT INTO file_facts (name, value) VALUES ('workplace', ?)");
    insert.bind(1, workplace);
    insert.exec();
    transaction.commit();
}

void bindBlob(SQLite::Statement& statement, int index, std::string_view bytes)
{
    statement.bind(index, static_cast<const void*>(bytes.data()), static_cast<int>(bytes.size()));
}

void bindBlob(SQLite::Statement& statement, int index, std::span<const std::uint8_t> bytes)
{
    statement.bind(index, static_cast<const void*>(bytes.data()), static_cast<int>(bytes.size()));
}

std::string blobText(const SQLite::Column& column)
{
    const void* bytes = column.getBlob();
    return bytes == nullptr ? std::string{}
                            : std::string(static_cast<const char*>(bytes), static_cast<std::size_t>(column.getBytes()));
}

Digest blobDigest(const SQLite::Column& column)
{
    Digest digest{};
    const void* bytes = column.getBlob();
    if (bytes != nullptr && column.getBytes() == static_cast<int>(digest.size()))
        std::memcpy(digest.data(), bytes, digest.size());
    return digest;
}

std::int64_t numberOf(SQLite::Database& db, const char* sql)
{
    SQLite::Statement query(db, sql);
    return query.executeStep() ? query.getColumn(0).getInt64() : -1;
}

}  // namespace taut::logbook
