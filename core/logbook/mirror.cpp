// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/logbook/mirror.h"

#include "core/logbook/file_reader.h"
#include "core/logbook/files.h"
#include "core/logbook/medium.h"
#include "core/logbook/writer_impl.h"

namespace taut::logbook {

namespace {

namespace fs = std::filesystem;

constexpr int kStretch = 50;  // seals a transaction, about 5 MB

std::string stemOf(const fs::path& logbook) { return logbook.stem().string() + "-mirror"; }

Finding warn(Finding finding)
{
    finding.severity = Severity::Warn;
    return finding;
}

Finding leftAlone(const char* code, const fs::path& mirror, const char* english)
{
    return warn(refuse(code, mirror.string(), Text(english, {mirror.string()}),
                       "It was left as it is, and another was begun beside it. Keep both until somebody has looked at "
                       "what happened."));
}

/// A file that is in the way will be so for ever; a disk that failed may work the next time.
bool staysInTheWay(const Finding& why)
{
    for (const char* code :
         {"logbook.not_a_logbook", "logbook.broken", "logbook.older_schema", "logbook.newer_schema", "logbook.practice",
          "logbook.not_practice", "mirror.fork", "mirror.ahead", "mirror.not_ours"})
        if (why.code == code) return true;
    return false;
}

struct Kept {
    seal::Seal seal;
    std::vector<seal::SealSignature> signatures;
};

/// Some of the seals after one, and the statement is closed again: the writer never waits long.
std::vector<Kept> sealsAfter(SQLite::Database& db, std::uint64_t seq)
{
    SQLite::Statement query(db, std::string(kSealColumns) + "WHERE seq > ? ORDER BY seq LIMIT ?");
    query.bind(1, asInt(seq));
    query.bind(2, kStretch);
    std::vector<Kept> all;
    while (query.executeStep()) {
        seal::Seal seal = sealFrom(query);
        auto signatures = signaturesOf(db, seal.seq);
        all.push_back({std::move(seal), std::move(signatures)});
    }
    return all;
}

Digest linkAt(SQLite::Database& db, std::uint64_t seq)
{
    SQLite::Statement query(db, "SELECT link FROM seal_rows WHERE seq = ?");
    query.bind(1, asInt(seq));
    return query.executeStep() ? blobDigest(query.getColumn(0)) : Digest{};
}

/// Nothing that is broken goes into a mirror: it would be broken when it is needed.
Result<Done> append(SQLite::Database& mirror, Kept& kept, const seal::Anchor& end)
{
    seal::Seal& seal = kept.seal;
    if (seal.seq != end.count + 1 || seal.previous != end.link ||
        seal::linkAfter(seal.previous, seal.document) != seal.link)
        return refuse("mirror.source_broken", "seal " + std::to_string(seal.seq),
                      {"Seal %1 of the logbook is not in order, so the mirror stays at seal %2.",
                       {asInt(seal.seq), asInt(end.count)}},
                      "Verify the logbook and restore it from this mirror or a copy.");
    const auto document = seal::read(seal.document);
    if (document) {
        // Rows beside the documents answer for nothing: they are made anew here.
        const seal::Head head = seal::headOf(*document);
        seal.kind = document->kind;
        seal.id = head.id;
        seal.subject = head.subject;
        seal.sealedAtMs = head.sealedAtMs;
        seal.person = head.person;
    }
    putSeal(mirror, seal, document ? &*document : nullptr, kept.signatures);
    return Done{};
}

/// Until both ends are the same.
Result<seal::Anchor> follow(SQLite::Database& source, SQLite::Database& mirror, const fs::path& file)
{
    for (;;) {
        seal::Anchor have = headOf(mirror);
        const seal::Anchor want = headOf(source);
        if (have.count > want.count)
            return leftAlone("mirror.ahead", file,
                             "The mirror %1 holds more seals than the logbook: the logbook was restored from an older "
                             "copy, or its newest seals were cut off.");
        if (have.count > 0 && linkAt(source, have.count) != have.link)
            return leftAlone("mirror.fork", file,
                             "The mirror %1 holds other seals than the logbook: one of them was changed, or they are "
                             "of two logbooks.");
        if (have.count == want.count) return have;
        std::vector<Kept> next = sealsAfter(source, have.count);
        if (next.empty()) return have;
        const Result<Done> done = guarded(file, [&]() -> Result<Done> {
            SQLite::Transaction transaction(mirror, SQLite::TransactionBehavior::IMMEDIATE);
            // Somebody else may have brought it further in the meantime.
            if (headOf(mirror) != have) return Done{};
            for (Kept& kept : next) {
                if (const auto put = append(mirror, kept, have); !put) return put.error();
                have = {kept.seal.seq, kept.seal.link};
            }
            transaction.commit();
            return Done{};
        });
        if (!done) return done.error();
    }
}

/// What a mirror is begun for.
struct Source {
    SQLite::Database& db;
    FileKind kind;
    std::string workplace;
};

Result<seal::Anchor> bringUp(const Source& source, const fs::path& file)
{
    auto mirror = openLogbook(file, Access::Write, source.kind, true);
    if (!mirror) return mirror.error();
    return guarded(file, [&]() -> Result<seal::Anchor> {
        if (mirrorOf(**mirror) != source.workplace)
            return leftAlone("mirror.not_ours", file, "%1 is no mirror of this logbook.");
        return follow(source.db, **mirror, file);
    });
}

void toState(MirrorState& state, const Result<seal::Anchor>& end, const fs::path& file, std::uint64_t count)
{
    state.file = file;
    if (end) {
        state.count = end->count;
    } else {
        state.findings.push_back(warn(end.error()));
    }
    state.behind = count > state.count ? count - state.count : 0;
}

}  // namespace

fs::path mirrorIn(const fs::path& folder, const fs::path& logbook)
{
    const std::vector<fs::path> dated = datedFiles(folder, stemOf(logbook));
    if (!dated.empty()) return dated.back();
    const fs::path first = folder / (stemOf(logbook) + ".logbook");
    std::error_code error;
    return fs::exists(fs::symlink_status(first, error)) ? first : fs::path();
}

MirrorState mirrorTo(const fs::path& logbook, const fs::path& folder, Instant now)
{
    MirrorState state;
    auto db = openLogbook(logbook, Access::Read, FileKind::Any, true);
    if (!db) {
        state.findings.push_back(warn(db.error()));
        return state;
    }
    const auto done = guarded(logbook, [&]() -> Result<Done> {
        const std::uint64_t count = headOf(**db).count;
        state.behind = count;
        std::error_code error;
        if (!fs::is_directory(folder, error))
            return refuse("mirror.folder_missing", folder.string(),
                          {"The folder %1, where the logbook is mirrored, is not there.", {folder.string()}},
                          "Put the stick in, or connect to the other machine; the mirror then catches up by itself. "
                          "Else choose another folder.");
        if (auto place = asHomeOfCopies(mediumOf(folder), folder, logbook)) {
            if (place->severity == Severity::Stop) return *place;
            state.findings.push_back(*std::move(place));
        }
        const bool practice = numberOf(**db, "PRAGMA application_id") == std::int64_t{kPracticeApplicationId};
        SQLite::Statement query(**db, "SELECT value FROM file_facts WHERE name = 'workplace'");
        const Source source{**db, practice ? FileKind::Practice : FileKind::Shop,
                            query.executeStep() ? query.getColumn(0).getString() : std::string("?")};
        query.reset();
        fs::path file = mirrorIn(folder, logbook);
        const bool isThere = !file.empty();
        if (isThere) {
            const auto end = bringUp(source, file);
            if (end || !staysInTheWay(end.error())) {
                toState(state, end, file, count);
                return Done{};
            }
            Finding why = end.error();
            if (why.code.rfind("mirror.", 0) != 0)
                why.remedy = "It was left as it is, and another mirror was begun beside it.";
            state.findings.push_back(warn(std::move(why)));
        }
        file = isThere ? freeDated(folder, stemOf(logbook), now) : folder / (stemOf(logbook) + ".logbook");
        const auto made = makeLogbook(file, source.kind, source.workplace, source.workplace);
        if (!made) return made.error();
        toState(state, bringUp(source, file), file, count);
        return Done{};
    });
    if (!done) state.findings.push_back(warn(done.error()));
    return state;
}

}  // namespace taut::logbook
