// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/logbook/export.h"

#include <algorithm>
#include <map>
#include <set>

#include "core/logbook/attachments.h"
#include "core/logbook/file_reader.h"
#include "core/logbook/newer.h"
#include "core/logbook/writer_impl.h"

namespace taut::logbook {

namespace {

using Seals = std::map<std::uint64_t, seal::Envelope::Sealed>;

std::vector<seal::Seal> sealsWhere(SQLite::Database& db, const char* condition, const Narrowed::Value& value)
{
    Narrowed where;
    where.with(condition, {value});
    SQLite::Statement query(db, std::string(kSealColumns) + where.sql() + " ORDER BY seq");
    where.bind(query);
    std::vector<seal::Seal> all;
    while (query.executeStep()) all.push_back(sealFrom(query));
    return all;
}

void put(SQLite::Database& db, Seals& seals, seal::Seal seal)
{
    const std::uint64_t seq = seal.seq;
    if (!seals.contains(seq)) seals[seq] = {std::move(seal), signaturesOf(db, seq)};
}

/// Whose keys the run's signatures are checked with: who sealed, and who accepted a value outside its window.
std::set<std::string> signersOf(const Seals& seals, const Json& run)
{
    std::set<std::string> signers;
    for (const auto& [seq, sealed] : seals) signers.insert(sealed.seal.person);
    for (const Json& event : run["events"].items())
        if (event["what"].text() == "deviated") signers.insert(event["supervisor"].text());
    return signers;
}

/// Their own seals, and those of whoever enrolled them, up to the first of all.
void putPeople(SQLite::Database& db, Seals& seals, std::set<std::string> signers)
{
    const std::int64_t last = asInt(seals.rbegin()->first);
    const std::vector<seal::Seal> people = sealsWhere(db, "kind = 'person' AND seq <= ?", last);
    for (std::size_t before = 0; before != signers.size();) {
        before = signers.size();
        for (const seal::Seal& seal : people)
            if (signers.contains(seal.id)) signers.insert(seal.person);
    }
    for (const seal::Seal& seal : people)
        if (signers.contains(seal.id)) put(db, seals, seal);
}

/// Every {"id", "edition", "sha256"} below a value.
void hashesIn(const Json& value, std::set<std::string>& hashes)
{
    if (value["sha256"].isString()) hashes.insert(value["sha256"].text());
    for (const Json::Member& member : value.members()) hashesIn(member.second, hashes);
}

void putDefinitions(SQLite::Database& db, Seals& seals, const Json& run)
{
    std::set<std::string> hashes;
    hashesIn(run["inputs"], hashes);
    hashesIn(run["procedure"], hashes);
    for (const Json& event : run["events"].items())
        for (const char* part : {"inputs", "procedure"}) hashesIn(event[part], hashes);
    for (const char* list : {"target_sets", "plans"})
        for (const Json& told : run[list].items()) hashesIn(told["since"], hashes);
    for (const std::string& sha256 : hashes)
        for (seal::Seal& seal : sealsWhere(db, "seq IN (SELECT seq FROM definition_rows WHERE sha256 = ?)", sha256))
            put(db, seals, std::move(seal));
}

}  // namespace

Result<seal::Envelope> envelopeOf(const std::filesystem::path& file, std::string_view runId, Findings* notes)
{
    const std::string id(runId);
    auto db = openForReading(file, FileKind::Any, notes);
    if (!db) return db.error();
    return guarded(file, [&]() -> Result<seal::Envelope> {
        // One moment of the logbook, whatever its writer does meanwhile.
        SQLite::Transaction moment(**db);
        auto own = sealsOf(**db, id);
        if (!own) return own.error();
        const auto document = seal::read(own->front().document);
        if (!document) return document.error();
        Seals seals;
        for (seal::Seal& one : *own) put(**db, seals, std::move(one));
        const std::set<std::string> signers = signersOf(seals, document->body);
        putPeople(**db, seals, signers);
        putDefinitions(**db, seals, document->body);
        seal::Envelope envelope{id, {}, {}};
        for (const seal::NamedFile& one : seal::filesOf(*document))
            if (auto bytes = attachmentIn(**db, one.sha256)) envelope.files[one.sha256] = *std::move(bytes);
        for (auto& [seq, sealed] : seals) envelope.seals.push_back(std::move(sealed));
        return envelope;
    });
}

}  // namespace taut::logbook
