// SPDX-License-Identifier: GPL-3.0-or-later
#include <future>
#include <limits>

#include "core/logbook/attachments.h"
#include "core/logbook/file_reader.h"
#include "core/logbook/logbook.h"
#include "core/logbook/schema.h"
#include "core/logbook/writer_impl.h"

namespace taut::logbook {

namespace {

namespace fs = std::filesystem;

constexpr int kMostFindings = 50;

/// What the engine itself finds: broken pages, indexes, checks; then rows that point to nothing.
void checkEngine(SQLite::Database& db, const fs::path& file, Findings& findings)
{
    SQLite::Statement integrity(db, "PRAGMA integrity_check(" + std::to_string(kMostFindings) + ")");
    while (integrity.executeStep()) {
        const std::string said = integrity.getColumn(0).getString();
        if (said == "ok") continue;
        findings.push_back(refuse("logbook.broken", file.string(),
                                  {"The logbook is damaged; its engine says: %1.", {said}},
                                  "Have the disk checked and restore the logbook from a backup."));
    }
    SQLite::Statement foreign(db, "PRAGMA foreign_key_check");
    for (int n = 0; n < kMostFindings && foreign.executeStep(); ++n)
        findings.push_back(refuse(
            "logbook.broken", file.string(),
            {"The logbook is damaged: a row of %1 belongs to a row that is gone.", {foreign.getColumn(0).getString()}},
            "Restore the logbook from a backup."));
}

void checkLayout(SQLite::Database& db, Findings& findings)
{
    for (const std::string& name : layoutDifferences(db))
        findings.push_back(refuse("logbook.layout_changed", name,
                                  {"The logbook's layout was changed: %1 is missing, added or other than this program "
                                   "makes it. Guards against changing sealed rows are part of it.",
                                   {name}},
                                  "The seals are checked all the same. Keep this file and restore a backup."));
}

/// What is practised and what counts never stand in one file.
std::optional<Finding> wrongFile(const seal::Seal& seal, bool practice)
{
    const bool practised = seal.kind == seal::Kind::Attempt || seal.kind == seal::Kind::Observation;
    if (practised == practice || (!practised && seal.kind != seal::Kind::Competence)) return std::nullopt;
    return refuse("practice.wrong_file", "seal " + std::to_string(seal.seq),
                  practised
                      ? Text("Seal %1 is of the practice press, and this is the logbook of a shop.", {asInt(seal.seq)})
                      : Text("Seal %1 says who is competent, and this is a practice logbook.", {asInt(seal.seq)}),
                  "Do not trust it. Ask who wrote in this file, and with which program.");
}

/// In stretches, so that a writer at work never waits for the whole walk; seals do not change under it.
template <class Look>
void walk(SQLite::Database& db, const char* which, const Look& look)
{
    constexpr int kStretch = 100;
    std::int64_t last = std::numeric_limits<std::int64_t>::min();
    for (int taken = kStretch; taken == kStretch;) {
        taken = 0;
        SQLite::Statement seals(db, std::string(kSealColumns) + "WHERE seq > ?" + which + " ORDER BY seq LIMIT ?");
        seals.bind(1, last);
        seals.bind(2, kStretch);
        for (; seals.executeStep(); ++taken) {
            const seal::Seal seal = sealFrom(seals);
            last = asInt(seal.seq);
            look(seal);
        }
    }
}

void walkChain(SQLite::Database& db, seal::ChainCheck& chain, AttachmentCheck& attachments, Findings& misplaced)
{
    const bool practice = numberOf(db, "PRAGMA application_id") == static_cast<std::int64_t>(kPracticeApplicationId);
    walk(db, "", [&](const seal::Seal& seal) {
        chain.next(seal, signaturesOf(db, seal.seq));
        attachments.next(seal);
        if (auto where = wrongFile(seal, practice)) misplaced.push_back(*std::move(where));
    });
}

/// What has nothing to do with how one seal follows another. A seal that cannot be read, the chain's walk has told.
Findings examine(const fs::path& file, Depth depth)
{
    Findings findings;
    auto db = openLogbook(file, Access::Read, FileKind::Any, false);
    if (!db) return {db.error()};
    const Result<Done> quoted = guarded(file, [&]() -> Result<Done> {
        walk(**db, " AND kind = 'correction'", [&](const seal::Seal& seal) {
            if (auto wrong = misquoted(**db, seal)) findings.push_back(*std::move(wrong));
        });
        return Done{};
    });
    const Result<Done> examined = guarded(file, [&]() -> Result<Done> {
        checkEngine(**db, file, findings);
        checkLayout(**db, findings);
        if (depth == Depth::Deep)
            for (Finding& finding : indexDifferences(**db)) findings.push_back(std::move(finding));
        return Done{};
    });
    if (!examined)
        findings.push_back(examined.error());
    else if (!quoted)
        findings.push_back(quoted.error());
    return findings;
}

}  // namespace

Result<Verification> verify(const fs::path& file, const std::vector<seal::PartialAnchor>& anchors, Depth depth)
{
    Verification result;
    seal::ChainCheck chain(anchors);
    auto db = openLogbook(file, Access::Read, FileKind::Any, false);
    if (!db) {
        if (db.error().code != "logbook.broken") return db.error();
        result.findings.push_back(db.error());
        return result;
    }
    // Two halves that need nothing of each other, each over a connection of its own.
    auto others = std::async(std::launch::async, [&file, depth] { return examine(file, depth); });
    Findings misplaced;
    AttachmentCheck attachments;
    const Result<Done> walked = guarded(file, [&]() -> Result<Done> {
        walkChain(**db, chain, attachments, misplaced);
        return Done{};
    });
    result.findings = chain.finish();
    for (Finding& finding : misplaced) result.findings.push_back(std::move(finding));
    result.end = chain.end();
    result.anchors = chain.anchors();
    if (!walked) {
        Finding unread = walked.error();
        unread.subject = "seal " + std::to_string(chain.end().count + 1);
        result.findings.insert(result.findings.begin(), std::move(unread));
    }
    const Result<Done> attached = guarded(file, [&]() -> Result<Done> {
        for (Finding& finding : attachments.finish(**db)) result.findings.push_back(std::move(finding));
        return Done{};
    });
    if (!attached) result.findings.push_back(attached.error());
    for (Finding& finding : others.get()) result.findings.push_back(std::move(finding));
    return result;
}

}  // namespace taut::logbook
