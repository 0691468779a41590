// SPDX-License-Identifier: GPL-3.0-or-later
#include <array>

#include "core/logbook/file_reader.h"
#include "core/logbook/index.h"
#include "core/logbook/logbook.h"
#include "core/logbook/schema.h"
#include "core/logbook/writer_impl.h"

// The index tables are answers of the documents. Here the answers are asked for again, and compared.
namespace taut::logbook {

namespace {

/// A table with what names its rows and what stands in them; `rows` narrows it to what documents answer, `added` came
/// with layout 7, as did a table without other columns.
struct Table {
    const char *table, *key, *columns, *rows, *added;
};
constexpr int kAdded = 7;
constexpr std::array<Table, 10> kTables{{
    {"person_rows", "person", "seq, name, role, active, key", "", ""},
    {"definition_rows", "what || ' ' || id || ' ' || edition", "seq, sha256, text", "", ""},
    {"withdrawal_rows", "press", "seq, reason, person, name, at", "", ""},
    {"run_rows", "run_id",
     "seq, press, day, job, substrate, roll, operator, operator_name, begun, ended, state, verdict, present, "
     "reviewed_by, deviations",
     " WHERE seq IS NOT NULL", ", kind, press_edition, press_sha, title, customer, outside, incidents, hour, waste_m"},
    {"reading_rows", "seq || ' ' || step",
     "press, target, si_value, unit, low, high, uncertainty, verdict, entered_text, at, person", "",
     ", aimed, first_verdict"},
    {"series_rows", "press || ' ' || target", "", "", "unit, readings"},
    {"day_rows", "CAST(day AS TEXT)", "", "", "first, last"},
    {"stage_rows", "seq || ' ' || place", "", "", "stage, worked, watched, away, external"},
    {"incident_rows", "seq || ' ' || n || ' ' || what", "", "", "step, target, detail, at"},
    {"word_rows", "CAST(row AS TEXT)", "", " WHERE row > 0",
     "run, job, title, customer, substrate, rolls, operator, remarks"},
}};

/// "quote(a) || '|' || quote(b)": text that is the same only for the same values of the same types.
std::string inQuotes(std::string_view columns)
{
    std::string sql;
    while (!columns.empty()) {
        const std::size_t comma = columns.find(", ");
        sql += (sql.empty() ? "quote(" : " || '|' || quote(") + std::string(columns.substr(0, comma)) + ')';
        columns.remove_prefix(comma == std::string_view::npos ? columns.size() : comma + 2);
    }
    return sql;
}

std::string selectOf(const Table& index, int layout)
{
    return std::string("SELECT ") + index.key + ", " +
           inQuotes(std::string(index.columns) + (layout >= kAdded ? index.added : "")) + " FROM " + index.table +
           index.rows + " ORDER BY 1";
}

Finding differs(const Table& index, const std::string& row, const char* english)
{
    return refuse("index.differs", std::string(index.table) + " " + row, Text(english, {std::string(index.table), row}),
                  "Trust the sealed documents, not this table. Restore the logbook from a backup.");
}

/// Both in the same order, row beside row: what is changed, added or taken away, the first few of each table.
void compare(SQLite::Database& kept, SQLite::Database& rebuilt, const Table& index, int layout, Findings& findings)
{
    constexpr std::size_t kMost = 10;
    const std::string sql = selectOf(index, layout);
    SQLite::Statement one(kept, sql), two(rebuilt, sql);
    bool more = one.executeStep(), also = two.executeStep();
    const std::size_t before = findings.size();
    while ((more || also) && findings.size() - before < kMost) {
        const std::string left = more ? one.getColumn(0).getString() : std::string();
        const std::string right = also ? two.getColumn(0).getString() : std::string();
        if (more && (!also || left < right)) {
            findings.push_back(differs(index, left, "The table %1 has a row that no sealed document tells of: %2."));
            more = one.executeStep();
        } else if (also && (!more || right < left)) {
            findings.push_back(
                differs(index, right, "The table %1 has lost a row that a sealed document tells of: %2."));
            also = two.executeStep();
        } else {
            if (one.getColumn(1).getString() != two.getColumn(1).getString())
                findings.push_back(
                    differs(index, left, "The table %1 says something else than the sealed document: %2."));
            more = one.executeStep();
            also = two.executeStep();
        }
    }
}

/// A private database of this layout: on disk, since a logbook of years has no room in memory.
std::unique_ptr<SQLite::Database> anew()
{
    auto db = std::make_unique<SQLite::Database>("", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    db->exec("PRAGMA foreign_keys = OFF");  // the documents themselves stay where they are
    db->exec(schemaSql());
    return db;
}

/// Every row of a table, of as many columns.
void copyRows(SQLite::Database& from, SQLite::Database& to, const std::string& table)
{
    to.exec("DELETE FROM " + table);
    SQLite::Statement rows(from, "SELECT * FROM " + table);
    std::string places = "?";
    for (int i = 1; i < rows.getColumnCount(); ++i) places += ", ?";
    SQLite::Statement put(to, "INSERT INTO " + table + " VALUES (" + places + ")");
    while (rows.executeStep()) {
        for (int i = 0; i < rows.getColumnCount(); ++i) {
            const SQLite::Column column = rows.getColumn(i);
            if (column.isInteger())
                put.bind(i + 1, column.getInt64());
            else if (column.isBlob())
                bindBlob(put, i + 1, blobText(column));
            else
                put.bind(i + 1, column.getString());
        }
        put.exec();
        put.reset();
    }
}

/// The search beside the words of which it is made. The engine compares them, but only where it may write: in a copy.
void compareSearch(SQLite::Database& kept, Findings& findings)
{
    const auto own = anew();
    try {
        SQLite::Transaction transaction(*own);
        for (const char* table : {"word_rows", "word_search_data", "word_search_idx", "word_search_config"})
            copyRows(kept, *own, table);
        transaction.commit();
        own->exec("INSERT INTO word_search (word_search, rank) VALUES ('integrity-check', 1)");
    } catch (const SQLite::Exception& error) {
        findings.push_back(refuse("index.differs", "word_search",
                                  {"The search finds other words than those that stand beside it; the engine says: %1.",
                                   {std::string(error.what())}},
                                  "Trust the sealed documents, not the search. Restore the logbook from a backup."));
    }
}

}  // namespace

Findings indexDifferences(SQLite::Database& db)
{
    const auto layout = static_cast<int>(numberOf(db, "PRAGMA user_version"));
    const auto rebuilt = anew();
    {
        SQLite::Transaction transaction(*rebuilt);
        Index index(*rebuilt);
        SQLite::Statement seals(db, std::string(kSealColumns) + "ORDER BY seq");
        while (seals.executeStep()) {
            const seal::Seal seal = sealFrom(seals);
            const auto document = seal::read(seal.document);
            // What is wrong with the document itself has been said by the chain.
            if (document) index.answer(seal.seq, *document);
        }
        index.settle();
        transaction.commit();
    }
    Findings findings;
    for (const Table& table : kTables)
        if (*table.columns != '\0' || layout >= kAdded) compare(db, *rebuilt, table, layout, findings);
    if (layout >= kAdded) compareSearch(db, findings);
    return findings;
}

}  // namespace taut::logbook
