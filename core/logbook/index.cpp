// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/logbook/index.h"

#include "core/logbook/open_runs.h"
#include "core/logbook/writer_impl.h"
#include "core/seal/after.h"

// The index tables are answers of the documents: nothing is written there that does not stand in one. Those of runs are
// written in run_index.cpp.
namespace taut::logbook {

namespace {

std::int64_t msOf(const Json& at)
{
    const auto ms = readUtc(at.text());
    return ms ? *ms : 0;
}

}  // namespace

Index::Index(SQLite::Database& db, Standing standing) : m_prepared(db), m_standing(standing), m_courses(textsIn(db)) {}

void Index::person(std::uint64_t seq, const Json& body)
{
    const auto put = m_prepared("INSERT INTO person_rows (person, seq, name, role, active, key) "
                                "VALUES (?, ?, ?, ?, ?, ?) "
                                "ON CONFLICT (person) DO UPDATE SET seq = excluded.seq, name = excluded.name, "
                                "role = excluded.role, active = excluded.active, key = excluded.key");
    put.with(body["id"].text(), asInt(seq), body["name"].text(), body["role"].text(), body["active"].boolean() ? 1 : 0);
    const auto key = publicKeyFrom(body["key"].text());
    if (key)
        bindBlob(*put, 6, *key);
    else
        put->bind(6);
    put->exec();
}

void Index::definition(std::uint64_t seq, const Json& body)
{
    const auto put = m_prepared("INSERT INTO definition_rows (what, id, edition, sha256, text, seq) "
                                "VALUES (?, ?, ?, ?, ?, ?)");
    put.with(body["what"].text(), body["id"].text(), body["edition"].integer(), body["sha256"].text(),
             body["text"].text(), asInt(seq));
    put->exec();
}

void Index::withdrawal(std::uint64_t seq, const Json& body)
{
    if (body["what"].text() == "returned") {
        const auto gone = m_prepared("DELETE FROM withdrawal_rows WHERE press = ?");
        gone.with(body["press"].text());
        gone->exec();
        return;
    }
    const auto put = m_prepared("INSERT INTO withdrawal_rows (press, seq, reason, person, name, at) "
                                "VALUES (?, ?, ?, ?, ?, ?)");
    put.with(body["press"].text(), asInt(seq), body["reason"].text(), body["by"]["id"].text(),
             body["by"]["name"].text(), msOf(body["at"]));
    put->exec();
}

void Index::sequel(const seal::Document& document)
{
    // What a document lacks is told by the chain; it changes nothing here.
    const auto sequel = seal::sequelIn(document);
    if (!sequel) return;
    const std::string run = document.body["id"].text();
    seal::State before;
    std::int64_t seq = 0;
    {
        const auto now =
            m_prepared("SELECT present, reviewed_by, seq FROM run_rows WHERE run_id = ? AND seq IS NOT NULL");
        now.with(run);
        if (!now->executeStep()) return;
        before = {seal::presentFrom(now->getColumn(0).getString()).value_or(seal::Present::Sealed),
                  now->getColumn(1).getString()};
        seq = now->getColumn(2).getInt64();
    }
    const seal::State state = seal::stateAfter(before, *sequel, document.body["sealed_by"]["name"].text());
    {
        const auto put = m_prepared("UPDATE run_rows SET present = ?, reviewed_by = ? WHERE run_id = ?");
        put.with(std::string(seal::presentWord(state.present)), state.reviewedBy, run);
        put->exec();
    }
    if (state.present == seal::Present::Void && before.present != seal::Present::Void) leaveSeries(seq);
}

void Index::answer(std::uint64_t seq, const seal::Document& document)
{
    switch (document.kind) {
    case seal::Kind::Run:
        return run(seq, answersOf(document.body, m_courses.of(document.body), jobOf(document.body["inputs"]["job"])));
    case seal::Kind::Person: return person(seq, document.body);
    case seal::Kind::Definition: return definition(seq, document.body);
    case seal::Kind::Withdrawal: return withdrawal(seq, document.body);
    case seal::Kind::Review:
    case seal::Kind::Correction:
    case seal::Kind::Void: return sequel(document);
    case seal::Kind::Competence:  // found by their subject, the person
    case seal::Kind::Attempt:
    case seal::Kind::Observation: return;
    }
}

void Index::put(const seal::Seal& seal, std::span<const seal::SealSignature> signatures)
{
    {
        const auto put = m_prepared("INSERT INTO seal_rows (seq, kind, id, subject, sealed_at, person, document, "
                                    "previous_link, link) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)");
        put.with(asInt(seal.seq), std::string(seal::kindWord(seal.kind)), seal.id, seal.subject, seal.sealedAtMs,
                 seal.person);
        bindBlob(*put, 7, seal.document);
        bindBlob(*put, 8, seal.previous);
        bindBlob(*put, 9, seal.link);
        put->exec();
    }
    for (const seal::SealSignature& signature : signatures) {
        const auto put = m_prepared("INSERT INTO signature_rows (seq, person, meaning, signed_at, key, signature) "
                                    "VALUES (?, ?, ?, ?, ?, ?)");
        put.with(asInt(seal.seq), signature.person, signature.meaning, signature.signedAtMs);
        bindBlob(*put, 5, signature.key);
        bindBlob(*put, 6, signature.signature);
        put->exec();
    }
}

void Index::put(const seal::Seal& seal, const seal::Document* document, std::span<const seal::SealSignature> signatures)
{
    put(seal, signatures);
    if (document != nullptr) answer(seal.seq, *document);
}

void Index::put(const seal::Seal& seal, const RunAnswers& answers, std::span<const seal::SealSignature> signatures)
{
    put(seal, signatures);
    run(seal.seq, answers);
}

void putSeal(SQLite::Database& db, const seal::Seal& seal, const seal::Document* document,
             std::span<const seal::SealSignature> signatures)
{
    Index index(db);
    index.put(seal, document, signatures);
    index.settle();
}

std::vector<seal::SealSignature> signaturesOf(SQLite::Database& db, std::uint64_t seq)
{
    SQLite::Statement query(db, "SELECT person, key, meaning, signed_at, signature FROM signature_rows WHERE seq = ? "
                                "ORDER BY person, meaning");
    query.bind(1, asInt(seq));
    std::vector<seal::SealSignature> all;
    while (query.executeStep()) {
        seal::SealSignature one;
        one.person = query.getColumn(0).getString();
        // A blob of another length is a signature that nothing verifies.
        if (const auto key = publicKeyFrom(hex(bytesOf(blobText(query.getColumn(1)))))) one.key = *key;
        one.meaning = query.getColumn(2).getString();
        one.signedAtMs = query.getColumn(3).getInt64();
        if (const auto bytes = signatureFrom(hex(bytesOf(blobText(query.getColumn(4)))))) one.signature = *bytes;
        all.push_back(std::move(one));
    }
    return all;
}

seal::Seal appendSeal(SQLite::Database& db, seal::Document document, const Sealer& by, Instant at)
{
    seal::Seal last;
    SQLite::Statement newest(db, "SELECT seq, link FROM seal_rows ORDER BY seq DESC LIMIT 1");
    if (newest.executeStep()) {
        last.seq = asUint(newest.getColumn(0).getInt64());
        last.link = blobDigest(newest.getColumn(1));
    }
    newest.reset();
    const seal::Document finished = seal::sealedBy(std::move(document), by.id, by.name, at);
    const seal::Head head = seal::headOf(finished);
    seal::Seal seal{last.seq + 1,          finished.kind, head.id, head.subject, head.sealedAtMs, head.person,
                    seal::write(finished), last.link,     {}};
    seal.link = seal::linkAfter(seal.previous, seal.document);

    std::vector<seal::SealSignature> signatures;
    if (by.signer != nullptr) signatures.push_back(seal::signSeal(seal, seal::meaningOf(finished), *by.signer));
    putSeal(db, seal, &finished, signatures);
    return seal;
}

}  // namespace taut::logbook
