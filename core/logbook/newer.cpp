// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/logbook/newer.h"

#include <limits>

#include "core/logbook/attachments.h"
#include "core/logbook/file_reader.h"
#include "core/logbook/index.h"
#include "core/logbook/logbook.h"
#include "core/logbook/schema.h"
#include "core/logbook/writer_impl.h"

namespace taut::logbook {

namespace {

namespace fs = std::filesystem;

constexpr int kStretch = 50;  // seals read at a time, about 5 MB

/// What readers from outside may count on, whatever the layout behind it.
constexpr const char* kSeals = "SELECT seq, kind, id, subject, sealed_at, person, document, previous_link, link FROM "
                               "seals WHERE seq > ? ORDER BY seq LIMIT ?";
constexpr const char* kSignatures = "SELECT person, key, meaning, signed_at, signature FROM signatures WHERE seq = ?";

std::vector<seal::SealSignature> signaturesIn(SQLite::Database& db, std::uint64_t seq)
{
    SQLite::Statement query(db, kSignatures);
    query.bind(1, asInt(seq));
    std::vector<seal::SealSignature> all;
    while (query.executeStep()) {
        seal::SealSignature one;
        one.person = query.getColumn(0).getString();
        if (const auto key = publicKeyFrom(query.getColumn(1).getString())) one.key = *key;
        one.meaning = query.getColumn(2).getString();
        const auto at = readUtc(query.getColumn(3).getString());
        one.signedAtMs = at ? *at : 0;
        if (const auto bytes = signatureFrom(query.getColumn(4).getString())) one.signature = *bytes;
        all.push_back(std::move(one));
    }
    return all;
}

/// Some of the seals after one, each with its signatures, and the statements are closed again.
std::vector<std::pair<seal::Seal, std::vector<seal::SealSignature>>> sealsAfter(SQLite::Database& db, std::int64_t seq)
{
    SQLite::Statement query(db, kSeals);
    query.bind(1, seq);
    query.bind(2, kStretch);
    std::vector<std::pair<seal::Seal, std::vector<seal::SealSignature>>> all;
    while (query.executeStep()) {
        seal::Seal seal;
        seal.seq = asUint(query.getColumn(0).getInt64());
        seal.id = query.getColumn(2).getString();
        seal.subject = query.getColumn(3).getString();
        const auto at = readUtc(query.getColumn(4).getString());
        seal.sealedAtMs = at ? *at : 0;
        seal.person = query.getColumn(5).getString();
        seal.document = blobText(query.getColumn(6));
        if (const auto link = publicKeyFrom(query.getColumn(7).getString())) seal.previous = *link;
        if (const auto link = publicKeyFrom(query.getColumn(8).getString())) seal.link = *link;
        auto signatures = signaturesIn(db, seal.seq);
        all.emplace_back(std::move(seal), std::move(signatures));
    }
    return all;
}

/// Every seal of the newer file in a logbook of this program's own layout, its tables made from the documents. Nothing
/// is ever written back. What is sealed meanwhile is taken as well.
void takeOver(SQLite::Database& newer, SQLite::Database& own)
{
    Index index(own);
    std::int64_t last = std::numeric_limits<std::int64_t>::min();
    for (auto next = sealsAfter(newer, last); !next.empty(); next = sealsAfter(newer, last))
        for (auto& [seal, signatures] : next) {
            last = asInt(seal.seq);
            const auto document = seal::read(seal.document);
            // A kind that this program does not know is kept for its place in the chain, and answers nothing.
            seal.kind = document ? document->kind : seal::Kind::Competence;
            index.put(seal, document ? &*document : nullptr, signatures);
            if (document) copyAttachments(newer, own, *document);
        }
    index.settle();
}

}  // namespace

Result<std::unique_ptr<SQLite::Database>> openForReading(const fs::path& file, FileKind kind, Findings* notes)
{
    auto db = openLogbook(file, Access::Read, kind, true);
    if (db || db.error().code != "logbook.newer_schema") return db;
    return readNewer(file, kind, db.error(), notes);
}

Result<std::unique_ptr<SQLite::Database>> readNewer(const fs::path& file, FileKind kind, Finding refusal,
                                                    Findings* notes)
{
    return guarded(file, [&]() -> Result<std::unique_ptr<SQLite::Database>> {
        auto newer = connectNewer(file, kind);
        if (!newer) return newer.error();
        // On disk and private, gone with the connection: a logbook of years has no room in memory.
        auto own = std::make_unique<SQLite::Database>("", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
        own->exec(schemaSql());
        own->exec("PRAGMA user_version = " + std::to_string(kSchema));
        try {
            SQLite::Transaction transaction(*own);
            takeOver(**newer, *own);
            transaction.commit();
        } catch (const SQLite::Exception&) {
            // A view that is not there or says something else, or a chain with a gap: then it is as it was, not read.
            return refusal;
        }
        own->exec("PRAGMA query_only = ON");
        if (notes != nullptr) {
            Finding note = std::move(refusal);
            note.severity = Severity::Note;
            note.remedy = "It is shown for reading only, as far as this version understands it: runs still open, and "
                          "records of a kind that is new, are not. Update the program on this PC to write in it.";
            notes->push_back(std::move(note));
        }
        return own;
    });
}

}  // namespace taut::logbook
