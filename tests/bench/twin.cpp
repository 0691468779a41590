// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/twin.h"

#include <sqlite3.h>

#include <cstdio>
#include <cstdlib>

namespace taut::bench {

namespace {

[[noreturn]] void end(sqlite3* db)
{
    std::fprintf(stderr, "the twin: %s\n", sqlite3_errmsg(db));
    std::exit(4);
}

sqlite3_stmt* compiled(sqlite3* db, const std::string& sql)
{
    sqlite3_stmt* statement = nullptr;
    if (sqlite3_prepare_v2(db, sql.c_str(), static_cast<int>(sql.size()) + 1, &statement, nullptr) != SQLITE_OK)
        end(db);
    return statement;
}

void run(sqlite3* db, sqlite3_stmt* statement)
{
    while (sqlite3_step(statement) == SQLITE_ROW) {
    }
    if (sqlite3_reset(statement) != SQLITE_OK) end(db);
}

}  // namespace

Twin::Twin(const std::string& file)
{
    if (sqlite3_open_v2(file.c_str(), &m_db, SQLITE_OPEN_READWRITE, nullptr) != SQLITE_OK) end(m_db);
    for (const char* setting : {"PRAGMA foreign_keys = ON", "PRAGMA recursive_triggers = ON",
                                "PRAGMA trusted_schema = OFF", "PRAGMA cell_size_check = ON",
                                "PRAGMA synchronous = EXTRA", "PRAGMA mmap_size = 0", "PRAGMA journal_mode = DELETE"})
        step(setting);
    m_begin = compiled(m_db, "BEGIN IMMEDIATE");
    m_commit = compiled(m_db, "COMMIT");
}

Twin::~Twin()
{
    for (sqlite3_stmt* one : m_prepared) sqlite3_finalize(one);
    sqlite3_finalize(m_begin);
    sqlite3_finalize(m_commit);
    sqlite3_close(m_db);
}

void Twin::prepare(const std::vector<std::string>& changes)
{
    for (sqlite3_stmt* one : m_prepared) sqlite3_finalize(one);
    m_prepared.clear();
    for (const std::string& sql : changes) m_prepared.push_back(compiled(m_db, sql));
}

void Twin::commit()
{
    run(m_db, m_begin);
    for (sqlite3_stmt* one : m_prepared) run(m_db, one);
    run(m_db, m_commit);
}

std::string Twin::settings() const
{
    return value("PRAGMA journal_mode") + " journal, synchronous " + value("PRAGMA synchronous") + ", pages of " +
           value("PRAGMA page_size") + " bytes";
}

void Twin::step(const char* sql) const
{
    sqlite3_stmt* statement = compiled(m_db, sql);
    run(m_db, statement);
    sqlite3_finalize(statement);
}

std::string Twin::value(const char* sql) const
{
    sqlite3_stmt* statement = compiled(m_db, sql);
    std::string text;
    if (sqlite3_step(statement) == SQLITE_ROW) text = reinterpret_cast<const char*>(sqlite3_column_text(statement, 0));
    sqlite3_finalize(statement);
    return text;
}

}  // namespace taut::bench
