// SPDX-License-Identifier: GPL-3.0-or-later
#include <array>

#include "core/logbook/file_reader.h"
#include "core/logbook/schema.h"
#include "core/logbook/writer_impl.h"

// The index tables are answers of the documents. Here the answers are asked for again, and compared.
namespace taut::logbook {

namespace {

/// A table with what names its rows and what stands in them; `rows` narrows it to what documents answer.
struct Index {
    const char *table, *key, *columns, *rows;
};
constexpr std::array<Index, 5> kIndexes{{
    {"person_rows", "person", "seq, name, role, active, key", ""},
    {"definition_rows", "what || ' ' || id || ' ' || edition", "seq, sha256, text", ""},
    {"withdrawal_rows", "press", "seq, reason, person, name, at", ""},
    {"run_rows", "run_id",
     "seq, press, day, job, substrate, roll, operator, operator_name, begun, ended, state, verdict, present, "
     "reviewed_by, deviations",
     " WHERE seq IS NOT NULL"},
    {"reading_rows", "seq || ' ' || step",
     "press, target, si_value, unit, low, high, uncertainty, verdict, entered_text, at, person", ""},
}};

/// "quote(a) || '|' || quote(b)": text that is the same only for the same values of the same types.
std::string quoted(std::string_view columns)
{
    std::string sql;
    while (!columns.empty()) {
        const std::size_t comma = columns.find(", ");
        sql += (sql.empty() ? "quote(" : " || '|' || quote(") + std::string(columns.substr(0, comma)) + ')';
        columns.remove_prefix(comma == std::string_view::npos ? columns.size() : comma + 2);
    }
    return sql;
}

std::string selectOf(const Index& index)
{
    return std::string("SELECT ") + index.key + ", " + quoted(index.columns) + " FROM " + index.table + index.rows +
           " ORDER BY 1";
}

Finding differs(const Index& index, const std::string& row, const char* english)
{
    return refuse("index.differs", std::string(index.table) + " " + row, Text(english, {std::string(index.table), row}),
                  "Trust the sealed documents, not this table. Restore the logbook from a backup.");
}

/// Both in the same order, row beside row: what is changed, added or taken away, the first few of each table.
void compare(SQLite::Database& kept, SQLite::Database& rebuilt, const Index& index, Findings& findings)
{
    constexpr std::size_t kMost = 10;
    const std::string sql = selectOf(index);
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

}  // namespace

Findings indexDifferences(SQLite::Database& db)
{
    SQLite::Database rebuilt(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE | SQLite::OPEN_MEMORY);
    rebuilt.exec("PRAGMA foreign_keys = OFF");  // the documents themselves stay where they are
    rebuilt.exec(schemaSql());
    SQLite::Statement seals(db, std::string(kSealColumns) + "ORDER BY seq");
    while (seals.executeStep()) {
        const seal::Seal seal = sealFrom(seals);
        const auto document = seal::read(seal.document);
        // What is wrong with the document itself has been said by the chain.
        if (document) indexSeal(rebuilt, seal.seq, *document);
    }
    Findings findings;
    for (const Index& index : kIndexes) compare(db, rebuilt, index, findings);
    return findings;
}

}  // namespace taut::logbook
