// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/logbook/migrate.h"

#include <SQLiteCpp/Backup.h>

#include "core/logbook/file_reader.h"
#include "core/logbook/files.h"
#include "core/logbook/index.h"
#include "core/logbook/logbook.h"
#include "core/logbook/open_runs.h"
#include "core/logbook/schema.h"

namespace taut::logbook {

namespace {

namespace fs = std::filesystem;

int layoutOf(SQLite::Database& db) { return static_cast<int>(numberOf(db, "PRAGMA user_version")); }

Result<int> layoutIn(const fs::path& file)
{
    auto db = openLogbook(file, Access::Read, FileKind::Any, true);
    if (!db) return db.error();
    return guarded(file, [&]() -> Result<int> { return layoutOf(**db); });
}

/// The first thing that is wrong with a file, to the depth.
Result<std::optional<Finding>> wrongTo(const fs::path& file)
{
    const auto verified = verify(file, {}, Depth::Deep);
    if (!verified) return verified.error();
    if (verified->findings.empty()) return std::optional<Finding>();
    return std::optional(verified->findings.front());
}

/// Makes every table anew that answers for the documents, and brings the rows of open runs up to date: those and the
/// people's, whom others name, stay where they are.
void answerAnew(SQLite::Database& db)
{
    for (const char* table : {"reading_rows", "definition_rows", "withdrawal_rows", "series_rows", "day_rows",
                              "stage_rows", "incident_rows"})
        db.exec(std::string("DELETE FROM ") + table);
    {
        Index index(db);
        SQLite::Statement seals(db, std::string(kSealColumns) + "ORDER BY seq");
        while (seals.executeStep()) {
            const seal::Seal seal = sealFrom(seals);
            const auto document = seal::read(seal.document);
            if (document) index.answer(seal.seq, *document);
        }
        index.settle();
    }
    for (const std::string& id : unsealedRuns(db, {}))
        if (const auto run = foldStored(db, id)) putOpenRow(db, *run);
}

/// What layouts add, in one transaction: either the file is of the new layout, or it is as it was.
Result<Done> stepIn(SQLite::Database& db, const fs::path& file)
{
    return guarded(file, [&]() -> Result<Done> {
        SQLite::Transaction transaction(db, SQLite::TransactionBehavior::IMMEDIATE);
        for (int layout = layoutOf(db) + 1; layout <= kSchema; ++layout) db.exec(stepTo(layout));
        answerAnew(db);
        db.exec("PRAGMA user_version = " + std::to_string(kSchema));
        if (const auto differences = layoutDifferences(db); !differences.empty())
            return refuse("migrate.failed", file.string(),
                          {"%1 could not be brought to the layout of this program (first difference: %2). Nothing was "
                           "changed.",
                           {file.string(), differences.front()}},
                          "Verify the logbook; keep it, and restore a copy.");
        transaction.commit();
        return Done{};
    });
}

Result<Done> step(const fs::path& file)
{
    return guarded(file, [&]() -> Result<Done> { return stepIn(*connectOlder(file), file); });
}

/// A whole copy beside the file, under its own name once it is in order.
Result<fs::path> keepCopy(const fs::path& file, Instant now)
{
    const std::string stem = file.stem().string() + "-before-layout-" + std::to_string(kSchema);
    Unfinished unfinished(file.parent_path(), stem, now);
    {
        auto db = openLogbook(file, Access::Read, FileKind::Any, true);
        if (!db) return db.error();
        const auto made = guarded(unfinished.file(), [&] { return copyPages(**db, unfinished.file()); });
        if (!made) return made.error();
    }
    const auto wrong = wrongTo(unfinished.file());
    if (!wrong) return wrong.error();
    if (*wrong)
        return refuse("logbook.not_in_order", file.string(),
                      {"%1 is of an older layout, and it is not in order (%2, %3), so it was left as it is.",
                       {file.string(), (*wrong)->subject, (*wrong)->code}},
                      "Read it, verify it, and restore it from its mirror or a copy that is in order.");
    for (Instant at = now;; at.utcMs += 1000) {
        const fs::path copy = freeDated(file.parent_path(), stem, at);
        const auto named = unfinished.name(copy);
        if (!named) return named.error();
        if (*named) return copy;
    }
}

}  // namespace

Result<std::optional<fs::path>> bringUp(const fs::path& file, Instant now)
{
    const auto layout = layoutIn(file);
    if (!layout) return layout.error();
    if (*layout == kSchema) return std::optional<fs::path>();
    const auto copy = keepCopy(file, now);
    if (!copy) return copy.error();
    if (const auto stepped = step(file); !stepped) return stepped.error();
    const auto wrong = wrongTo(file);
    if (wrong && !*wrong) return std::optional(*copy);
    const Finding& first = wrong ? **wrong : wrong.error();
    return refuse("migrate.failed", file.string(),
                  {"%1 was brought to the layout of this program and is not in order since (%2). As it was, it is kept "
                   "as %3.",
                   {file.string(), first.code, copy->string()}},
                  "Have the disk checked, then restore the logbook from that copy.");
}

Result<std::unique_ptr<SQLite::Database>> broughtUp(std::unique_ptr<SQLite::Database> db, const fs::path& file)
{
    return guarded(file, [&]() -> Result<std::unique_ptr<SQLite::Database>> {
        if (layoutOf(*db) >= kSchema) return std::move(db);
        // On disk and private, gone with the connection.
        auto own = std::make_unique<SQLite::Database>("", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
        SQLite::Backup(*own, *db).executeStep(-1);
        if (const auto stepped = stepIn(*own, file); !stepped) return stepped.error();
        own->exec("PRAGMA query_only = ON");
        return own;
    });
}

Result<Done> bringUpCopy(const fs::path& file)
{
    const auto layout = layoutIn(file);
    if (!layout) return layout.error();
    if (*layout == kSchema) return Done{};
    return step(file);
}

}  // namespace taut::logbook
