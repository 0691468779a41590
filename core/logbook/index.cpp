// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/logbook/open_runs.h"
#include "core/seal/after.h"

// The index tables are answers of the documents: nothing is written there that does not stand in one.
namespace taut::logbook {

namespace {

std::int64_t msOf(const Json& at)
{
    const auto ms = readUtc(at.text());
    return ms ? *ms : 0;
}

void indexPerson(SQLite::Database& db, std::uint64_t seq, const Json& body)
{
    SQLite::Statement put(db, "INSERT INTO person_rows (person, seq, name, role, active, key) "
                              "VALUES (?, ?, ?, ?, ?, ?) "
                              "ON CONFLICT (person) DO UPDATE SET seq = excluded.seq, name = excluded.name, "
                              "role = excluded.role, active = excluded.active, key = excluded.key");
    put.bind(1, body["id"].text());
    put.bind(2, asInt(seq));
    put.bind(3, body["name"].text());
    put.bind(4, body["role"].text());
    put.bind(5, body["active"].boolean() ? 1 : 0);
    const auto key = publicKeyFrom(body["key"].text());
    if (key)
        bindBlob(put, 6, *key);
    else
        put.bind(6);
    put.exec();
}

void indexDefinition(SQLite::Database& db, std::uint64_t seq, const Json& body)
{
    SQLite::Statement put(db, "INSERT INTO definition_rows (what, id, edition, sha256, text, seq) "
                              "VALUES (?, ?, ?, ?, ?, ?)");
    put.bind(1, body["what"].text());
    put.bind(2, body["id"].text());
    put.bind(3, body["edition"].integer());
    put.bind(4, body["sha256"].text());
    put.bind(5, body["text"].text());
    put.bind(6, asInt(seq));
    put.exec();
}

void indexWithdrawal(SQLite::Database& db, std::uint64_t seq, const Json& body)
{
    if (body["what"].text() == "returned") {
        SQLite::Statement gone(db, "DELETE FROM withdrawal_rows WHERE press = ?");
        gone.bind(1, body["press"].text());
        gone.exec();
        return;
    }
    SQLite::Statement put(db, "INSERT INTO withdrawal_rows (press, seq, reason, person, name, at) "
                              "VALUES (?, ?, ?, ?, ?, ?)");
    put.bind(1, body["press"].text());
    put.bind(2, asInt(seq));
    put.bind(3, body["reason"].text());
    put.bind(4, body["by"]["id"].text());
    put.bind(5, body["by"]["name"].text());
    put.bind(6, msOf(body["at"]));
    put.exec();
}

void indexReading(SQLite::Database& db, std::uint64_t seq, const std::string& press, const Json& step)
{
    if (!step["value"].isNumber() || step["target"].text().empty()) return;
    SQLite::Statement put(db, "INSERT INTO reading_rows (seq, step, press, target, si_value, unit, low, high, "
                              "uncertainty, verdict, entered_text, at, person) "
                              "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)");
    const auto number = [&put](int index, const Json& value) {
        if (value.isNumber())
            put.bind(index, value.number());
        else
            put.bind(index);
    };
    put.bind(1, asInt(seq));
    put.bind(2, step["step"].text());
    put.bind(3, press);
    put.bind(4, step["target"].text());
    number(5, step["value"]);
    put.bind(6, step["unit"].text());
    number(7, step["low"]);
    number(8, step["high"]);
    number(9, step["uncertainty"]);
    put.bind(10, step["verdict"].text());
    put.bind(11, step["entered"].text());
    put.bind(12, msOf(step["at"]));
    put.bind(13, step["by"].text());
    put.exec();
}

std::string nameIn(const Json& people, const std::string& id)
{
    for (const Json& person : people.items())
        if (person["id"].text() == id) return person["name"].text();
    return {};
}

void indexRun(SQLite::Database& db, std::uint64_t seq, const Json& body)
{
    const Json& inputs = body["inputs"];
    const std::string press = inputs["press"]["id"].text();
    const std::string person = body["operator"].text();
    const std::int64_t begun = msOf(body["begun"]);
    SQLite::Statement put(
        db, "INSERT INTO run_rows (run_id, seq, press, day, job, substrate, roll, operator, operator_name, "
            "begun, ended, state, verdict, present, reviewed_by, deviations) "
            "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, 'sealed', '', ?) "
            "ON CONFLICT (run_id) DO UPDATE SET seq = excluded.seq, roll = excluded.roll, "
            "operator = excluded.operator, operator_name = excluded.operator_name, "
            "ended = excluded.ended, state = excluded.state, verdict = excluded.verdict, "
            "present = excluded.present, reviewed_by = excluded.reviewed_by, deviations = excluded.deviations");
    put.bind(1, body["id"].text());
    put.bind(2, asInt(seq));
    put.bind(3, press);
    put.bind(4, dayOf(begun, readOffset(body["offset"].text()).value_or(0)));
    put.bind(5, inputs["job"]["id"].text());
    put.bind(6, inputs["substrate"]["id"].text());
    put.bind(7, inputs["roll"]["id"].text());
    put.bind(8, person);
    put.bind(9, nameIn(body["people"], person));
    put.bind(10, begun);
    put.bind(11, msOf(body["ended"]));
    put.bind(12, body["state"].text());
    put.bind(13, body["verdict"].text());
    put.bind(14, static_cast<std::int64_t>(body["deviations"].items().size()));
    put.exec();
    for (const Json& step : seal::stepsOf(body)) indexReading(db, seq, press, step);
}

/// What a review, a correction or a void makes of its run.
void indexSequel(SQLite::Database& db, const seal::Document& document)
{
    // What a document lacks is told by the chain; it changes nothing here.
    const auto sequel = seal::sequelIn(document);
    if (!sequel) return;
    SQLite::Statement now(db, "SELECT present, reviewed_by FROM run_rows WHERE run_id = ? AND seq IS NOT NULL");
    now.bind(1, document.body["id"].text());
    if (!now.executeStep()) return;
    const seal::State before{seal::presentFrom(now.getColumn(0).getString()).value_or(seal::Present::Sealed),
                             now.getColumn(1).getString()};
    now.reset();
    const seal::State state = seal::stateAfter(before, *sequel, document.body["sealed_by"]["name"].text());
    SQLite::Statement put(db, "UPDATE run_rows SET present = ?, reviewed_by = ? WHERE run_id = ?");
    put.bind(1, seal::presentWord(state.present));
    put.bind(2, state.reviewedBy);
    put.bind(3, document.body["id"].text());
    put.exec();
}

}  // namespace

void indexSeal(SQLite::Database& db, std::uint64_t seq, const seal::Document& document)
{
    switch (document.kind) {
    case seal::Kind::Run: return indexRun(db, seq, document.body);
    case seal::Kind::Person: return indexPerson(db, seq, document.body);
    case seal::Kind::Definition: return indexDefinition(db, seq, document.body);
    case seal::Kind::Withdrawal: return indexWithdrawal(db, seq, document.body);
    case seal::Kind::Review:
    case seal::Kind::Correction:
    case seal::Kind::Void: return indexSequel(db, document);
    case seal::Kind::Competence: return;  // nothing is asked of them by index yet
    }
}

namespace {

void appendSignature(SQLite::Database& db, std::uint64_t seq, const seal::SealSignature& signature)
{
    SQLite::Statement put(db, "INSERT INTO signature_rows (seq, person, key, meaning, signed_at, signature) "
                              "VALUES (?, ?, ?, ?, ?, ?)");
    put.bind(1, asInt(seq));
    put.bind(2, signature.person);
    bindBlob(put, 3, signature.key);
    put.bind(4, signature.meaning);
    put.bind(5, signature.signedAtMs);
    bindBlob(put, 6, signature.signature);
    put.exec();
}

}  // namespace

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

void putSeal(SQLite::Database& db, const seal::Seal& seal, const seal::Document* document,
             std::span<const seal::SealSignature> signatures)
{
    SQLite::Statement put(db, "INSERT INTO seal_rows (seq, kind, id, subject, sealed_at, person, document, "
                              "previous_link, link) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)");
    put.bind(1, asInt(seal.seq));
    put.bind(2, seal::kindWord(seal.kind));
    put.bind(3, seal.id);
    put.bind(4, seal.subject);
    put.bind(5, seal.sealedAtMs);
    put.bind(6, seal.person);
    bindBlob(put, 7, seal.document);
    bindBlob(put, 8, seal.previous);
    bindBlob(put, 9, seal.link);
    put.exec();
    for (const seal::SealSignature& signature : signatures) appendSignature(db, seal.seq, signature);
    if (document != nullptr) indexSeal(db, seal.seq, *document);
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
    if (by.signer != nullptr) signatures.push_back(seal::signSeal(seal, finished, *by.signer));
    putSeal(db, seal, &finished, signatures);
    return seal;
}

}  // namespace taut::logbook
