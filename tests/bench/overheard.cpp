// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/overheard.h"

#include <sqlite3.h>

#include <cstdio>
#include <cstdlib>
#include <string_view>

#include "core/logbook/logbook.h"
#include "core/units/plain.h"

namespace taut::bench {

namespace {

std::vector<std::string>* listener = nullptr;

int heard(unsigned /*what*/, void* /*context*/, void* statement, void* text)
{
    // Of a trigger the engine says a comment.
    if (listener == nullptr || std::string_view(static_cast<const char*>(text)).starts_with("--")) return 0;
    char* const sql = sqlite3_expanded_sql(static_cast<sqlite3_stmt*>(statement));
    if (sql != nullptr) listener->emplace_back(sql);
    sqlite3_free(sql);
    return 0;
}

int listenTo(sqlite3* db, const char** /*error*/, const sqlite3_api_routines* /*api*/)
{
    return sqlite3_trace_v2(db, SQLITE_TRACE_STMT, heard, nullptr);
}

[[noreturn]] void end(const std::string& why)
{
    std::fprintf(stderr, "%s\n", why.c_str());
    std::exit(4);
}

std::vector<std::string> during(const std::function<void()>& work)
{
    std::vector<std::string> statements;
    listener = &statements;
    work();
    listener = nullptr;
    return statements;
}

}  // namespace

void makeHeard(const std::function<void()>& open)
{
    const auto entry = reinterpret_cast<void (*)()>(listenTo);
    sqlite3_auto_extension(entry);
    open();
    sqlite3_cancel_auto_extension(entry);
}

std::vector<std::string> heardChanges(const std::function<void()>& work)
{
    std::vector<std::string> changes = during(work);
    std::erase_if(changes, [](const std::string& sql) {
        const bool changesRows = sql.starts_with("INSERT") || sql.starts_with("UPDATE") || sql.starts_with("DELETE");
        return !changesRows || sql.find(".'word_search_") != std::string::npos;
    });
    return changes;
}

std::vector<std::string> overheard(const std::string& file, const std::function<void(const records::Reader&)>& question)
{
    std::unique_ptr<records::Reader> reader;
    makeHeard([&] {
        auto opened = logbook::openReader(file);
        if (!opened) end(sentence(opened.error()));
        reader = std::move(*opened);
    });
    return during([&] { question(*reader); });
}

Plain::Plain(const std::string& file)
{
    sqlite3* db = nullptr;
    if (sqlite3_open_v2(file.c_str(), &db, SQLITE_OPEN_READWRITE, nullptr) != SQLITE_OK) end(sqlite3_errmsg(db));
    m_db.reset(db, sqlite3_close);
    for (const char* setting : {"PRAGMA foreign_keys = ON", "PRAGMA recursive_triggers = ON",
                                "PRAGMA trusted_schema = OFF", "PRAGMA cell_size_check = ON",
                                "PRAGMA synchronous = EXTRA", "PRAGMA mmap_size = 0", "PRAGMA query_only = ON"})
        sqlite3_exec(db, setting, nullptr, nullptr, nullptr);
}

std::size_t Plain::run(const std::vector<std::string>& statements) const
{
    std::size_t rows = 0;
    volatile std::size_t read = 0;  // or the compiler would see that nobody wants it
    for (const std::string& sql : statements) {
        sqlite3_stmt* statement = nullptr;
        if (sqlite3_prepare_v2(m_db.get(), sql.c_str(), static_cast<int>(sql.size()) + 1, &statement, nullptr) !=
            SQLITE_OK)
            end(sqlite3_errmsg(m_db.get()));
        while (sqlite3_step(statement) == SQLITE_ROW) {
            ++rows;
            for (int i = 0; i < sqlite3_column_count(statement); ++i) switch (sqlite3_column_type(statement, i)) {
                case SQLITE_INTEGER: read = read + static_cast<std::size_t>(sqlite3_column_int64(statement, i)); break;
                case SQLITE_FLOAT: read = read + static_cast<std::size_t>(sqlite3_column_double(statement, i)); break;
                default:
                    read = read + (sqlite3_column_text(statement, i) != nullptr ? 1 : 0) +
                           static_cast<std::size_t>(sqlite3_column_bytes(statement, i));
                }
        }
        sqlite3_finalize(statement);
    }
    return rows;
}

std::int64_t Plain::number(const std::string& sql) const
{
    sqlite3_stmt* statement = nullptr;
    if (sqlite3_prepare_v2(m_db.get(), sql.c_str(), -1, &statement, nullptr) != SQLITE_OK)
        end(sqlite3_errmsg(m_db.get()));
    const std::int64_t value = sqlite3_step(statement) == SQLITE_ROW ? sqlite3_column_int64(statement, 0) : 0;
    sqlite3_finalize(statement);
    return value;
}

}  // namespace taut::bench
