// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/logbook/mirror.h"

#include <unistd.h>

#include <algorithm>
#include <cerrno>

#include "core/logbook/attachments.h"
#include "core/logbook/file_reader.h"
#include "core/logbook/files.h"
#include "core/logbook/index.h"
#include "core/logbook/medium.h"
#include "core/logbook/writer_impl.h"

namespace taut::logbook {

namespace {

namespace fs = std::filesystem;

constexpr int kLooks = 20;    // at a folder in which others begin mirrors at the same moment
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
    for (const char* code : {"logbook.not_a_logbook", "logbook.broken", "logbook.older_schema", "logbook.older_layout",
                             "logbook.newer_schema", "logbook.practice", "logbook.not_practice", "mirror.fork",
                             "mirror.ahead", "mirror.not_ours", "mirror.closed"})
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
Result<Done> append(SQLite::Database& mirror, Index& index, Kept& kept, const seal::Anchor& end,
                    SQLite::Database& source)
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
    index.put(seal, document ? &*document : nullptr, kept.signatures);
    if (document) copyAttachments(source, mirror, *document);
    return Done{};
}

/// Whether a mirror goes on where the logbook does; nullopt = it does.
std::optional<Finding> whyNotFollowed(SQLite::Database& source, const seal::Anchor& have, const seal::Anchor& want,
                                      const fs::path& file)
{
    if (have.count > want.count)
        return leftAlone("mirror.ahead", file,
                         "The mirror %1 holds more seals than the logbook: the logbook was restored from an older "
                         "copy, or its newest seals were cut off.");
    if (have.count > 0 && linkAt(source, have.count) != have.link)
        return leftAlone("mirror.fork", file,
                         "The mirror %1 holds other seals than the logbook: one of them was changed, or they are "
                         "of two logbooks.");
    return std::nullopt;
}

/// What a mirror is kept of.
struct Source {
    SQLite::Database& db;
    FileFacts facts;
    std::function<bool()> giveUp;
};

/// Until both ends are the same.
Result<seal::Anchor> follow(const Source& source, SQLite::Database& mirror, const fs::path& file)
{
    Index index(mirror);
    for (;;) {
        if (source.giveUp && source.giveUp())
            return warn(refuse("mirror.given_up", file.string(),
                               {"The mirror %1 was not brought to its end.", {file.string()}},
                               "It follows at the next seal."));
        seal::Anchor have = headOf(mirror);
        const seal::Anchor want = headOf(source.db);
        if (auto why = whyNotFollowed(source.db, have, want, file)) return *std::move(why);
        if (have.count == want.count) return have;
        std::vector<Kept> next = sealsAfter(source.db, have.count);
        if (next.empty()) return have;
        const Result<Done> done = guarded(file, [&]() -> Result<Done> {
            SQLite::Transaction transaction(mirror, SQLite::TransactionBehavior::IMMEDIATE);
            // Somebody else may have brought it further in the meantime.
            if (headOf(mirror) != have) return Done{};
            for (Kept& kept : next) {
                if (const auto put = append(mirror, index, kept, have, source.db); !put) return put.error();
                have = {kept.seal.seq, kept.seal.link};
            }
            index.settle();
            transaction.commit();
            return Done{};
        });
        if (!done) return done.error();
    }
}

/// Where several people and PCs mirror into one folder nothing is wrong.
Finding anothers(const char* code, const fs::path& file, const char* english)
{
    Finding others = refuse(code, file.string(), {english, {file.string()}},
                            "It was left as it is, and a mirror of this logbook was begun beside it.");
    others.severity = Severity::Note;
    return others;
}

/// Whether a file says that it is a mirror of this logbook; nullopt = it does. It may be another PC's, which is just
/// writing in it: a file says whose it is from when it has its name, so it is only looked at.
std::optional<Finding> whyNotOurs(const Source& source, const fs::path& file)
{
    if (::access(file.c_str(), R_OK) != 0 && errno == EACCES)
        return anothers("mirror.closed", file,
                        "%1 may not be read by this user, so nobody here can say whose mirror it is.");
    auto mirror = openLogbook(file, Access::Look, source.facts.kind, false);
    if (!mirror) return mirror.error();
    const auto facts = guarded(file, [&]() -> Result<FileFacts> { return factsOf(**mirror); });
    if (!facts) return facts.error();
    if (facts->mirrorOf == source.facts.workplace) return std::nullopt;
    if (facts->mirrorOf.empty()) return leftAlone("mirror.not_ours", file, "%1 is no mirror of this logbook.");
    return anothers("mirror.not_ours", file, "%1 is the mirror of another PC's logbook.");
}

/// Brings a file up to date if it is the mirror of this logbook; `ours` says whether it is.
Result<seal::Anchor> bringUp(const Source& source, const fs::path& file, bool& ours)
{
    auto why = whyNotOurs(source, file);
    ours = !why;
    if (why) return *std::move(why);
    auto mirror = openLogbook(file, Access::Write, source.facts.kind, true);
    if (!mirror) return mirror.error();
    return guarded(file, [&] { return follow(source, **mirror, file); });
}

/// A full disk under the mirror has lost no record.
Finding ofTheMirror(Finding why, const fs::path& file)
{
    if (why.code != "logbook.disk_full") return why;
    why.text = {"There is no room left for the mirror %1. The logbook has every record; the mirror is behind.",
                {file.string()}};
    why.remedy = "Free some room there, and the mirror catches up by itself; or choose a folder on another disk.";
    return why;
}

void toState(MirrorState& state, const Result<seal::Anchor>& end, const fs::path& file, std::uint64_t count)
{
    state.file = file;
    if (end) {
        state.count = end->count;
    } else {
        state.findings.push_back(warn(ofTheMirror(end.error(), file)));
    }
    state.behind = count > state.count ? count - state.count : 0;
}

/// What lies there under the name of a mirror of this logbook, or of another PC's of the same name: the newest first.
std::vector<fs::path> namedLikeMirrors(const fs::path& folder, const fs::path& logbook)
{
    std::vector<fs::path> files = datedFiles(folder, stemOf(logbook));
    std::reverse(files.begin(), files.end());
    std::error_code error;
    if (fs::path first = folder / (stemOf(logbook) + ".logbook"); fs::exists(fs::symlink_status(first, error)))
        files.push_back(std::move(first));
    return files;
}

/// Brings up to date what is in use, or begins one where everything there was seen to be of no use. False: somebody
/// else has begun one under that name in the meantime.
Result<bool> bringUpOne(const Source& source, const fs::path& logbook, const fs::path& folder, Instant now,
                        MirrorState& state)
{
    const std::uint64_t count = state.behind;
    const std::vector<fs::path> files = namedLikeMirrors(folder, logbook);
    std::optional<Finding> ofNoUse, unknown;
    fs::path unknownFile;
    bool ours = false;
    for (const fs::path& file : files) {
        const auto end = bringUp(source, file, ours);
        if (end || (ours && !staysInTheWay(end.error()))) {
            toState(state, end, file, count);
            return true;
        }
        if (staysInTheWay(end.error())) {
            // That another PC mirrors here as well is the least that there is to say.
            if (!ofNoUse || (ofNoUse->severity == Severity::Note && end.error().severity != Severity::Note))
                ofNoUse = end.error();
        } else if (!unknown) {
            unknown = end.error();
            unknownFile = file;
        }
    }
    if (unknown) {
        toState(state, *std::move(unknown), unknownFile, count);
        return true;
    }
    const fs::path first = folder / (stemOf(logbook) + ".logbook");
    const fs::path file = files.empty() ? first : freeDated(folder, stemOf(logbook), now);
    const auto made = makeLogbook(file, source.facts.kind, source.facts.workplace, now, source.facts.workplace);
    if (!made) return ofTheMirror(made.error(), file);
    if (!*made) return false;
    if (ofNoUse) {
        if (ofNoUse->code.rfind("mirror.", 0) != 0) {
            ofNoUse->remedy = "It was left as it is, and another mirror was begun beside it.";
            ofNoUse->severity = Severity::Warn;
        }
        state.findings.push_back(*std::move(ofNoUse));
    }
    toState(state, bringUp(source, file, ours), file, count);
    return true;
}

}  // namespace

fs::path mirrorIn(const fs::path& folder, const fs::path& logbook)
{
    auto db = openLogbook(logbook, Access::Read, FileKind::Any, false);
    if (!db) return {};
    fs::path unknown;
    for (const fs::path& file : namedLikeMirrors(folder, logbook)) {
        const auto looked = guarded(file, [&]() -> Result<Done> {
            const Source source{**db, factsOf(**db), {}};
            if (auto why = whyNotOurs(source, file)) return *std::move(why);
            auto mirror = openLogbook(file, Access::Read, source.facts.kind, false);
            if (!mirror) return mirror.error();
            if (auto why = whyNotFollowed(source.db, headOf(**mirror), headOf(source.db), file)) return *std::move(why);
            return Done{};
        });
        if (looked) return file;
        if (unknown.empty() && (looked.error().code == "logbook.broken" || !staysInTheWay(looked.error())))
            unknown = file;
    }
    return unknown;
}

MirrorState mirrorTo(const fs::path& logbook, const fs::path& folder, Instant now, const std::function<bool()>& giveUp)
{
    MirrorState state;
    auto db = openLogbook(logbook, Access::Read, FileKind::Any, true);
    if (!db) {
        state.findings.push_back(warn(db.error()));
        return state;
    }
    const auto done = guarded(logbook, [&]() -> Result<Done> {
        state.behind = headOf(**db).count;
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
        // Each time that somebody was faster there is one mirror more to be seen.
        const Source source{**db, factsOf(**db), giveUp};
        for (int look = 0; look < kLooks; ++look, now.utcMs += 1000) {
            const auto brought = bringUpOne(source, logbook, folder, now, state);
            if (!brought) return brought.error();
            if (*brought) return Done{};
        }
        return refuse(
            "logbook.busy", folder.string(),
            {"Others begin mirrors in %1 all the time, and none could be begun for this logbook.", {folder.string()}},
            "It is tried again at the next seal; else choose another folder.");
    });
    if (!done) state.findings.push_back(warn(done.error()));
    return state;
}

}  // namespace taut::logbook
