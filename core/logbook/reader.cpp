// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/logbook/attachments.h"
#include "core/logbook/file_reader.h"
#include "core/logbook/migrate.h"
#include "core/logbook/newer.h"
#include "core/logbook/open_runs.h"
#include "core/logbook/writer_impl.h"

namespace taut::logbook {

namespace {

Finding noSeal(std::string subject, Text text)
{
    return refuse("records.no_seal", std::move(subject), std::move(text),
                  "Look it up in the list of runs; a run has a seal only once it has ended and was signed off.");
}

seal::Kind kindFrom(const std::string& word)
{
    // A word of no kind is a changed row: verifying says so; here any kind that is not a run's will do.
    for (const seal::Kind kind : seal::kAllKinds)
        if (word == seal::kindWord(kind)) return kind;
    return seal::Kind::Void;
}

}  // namespace

seal::Seal sealFrom(SQLite::Statement& row)
{
    seal::Seal seal;
    seal.seq = asUint(row.getColumn(0).getInt64());
    seal.kind = kindFrom(row.getColumn(1).getString());
    seal.id = row.getColumn(2).getString();
    seal.subject = row.getColumn(3).getString();
    seal.sealedAtMs = row.getColumn(4).getInt64();
    seal.person = row.getColumn(5).getString();
    seal.document = blobText(row.getColumn(6));
    seal.previous = blobDigest(row.getColumn(7));
    seal.link = blobDigest(row.getColumn(8));
    return seal;
}

std::optional<records::Withdrawal> findWithdrawal(SQLite::Database& db, std::string_view press)
{
    SQLite::Statement query(db, "SELECT reason, person, name, at FROM withdrawal_rows WHERE press = ?");
    query.bind(1, std::string(press));
    if (!query.executeStep()) return std::nullopt;
    return records::Withdrawal{std::string(press), query.getColumn(0).getString(), query.getColumn(1).getString(),
                               query.getColumn(2).getString(), query.getColumn(3).getInt64()};
}

Result<seal::Seal> FileReader::seal(std::uint64_t seq) const
{
    return ask([&]() -> Result<seal::Seal> {
        SQLite::Statement query(*m_db, std::string(kSealColumns) + "WHERE seq = ?");
        query.bind(1, asInt(seq));
        if (!query.executeStep())
            return noSeal("seal " + std::to_string(seq), {"This logbook has no seal %1.", {asInt(seq)}});
        return sealFrom(query);
    });
}

Result<seal::Seal> FileReader::sealOfRun(std::string_view runId) const
{
    return ask([&]() -> Result<seal::Seal> {
        SQLite::Statement query(*m_db,
                                std::string(kSealColumns) + "WHERE seq = (SELECT seq FROM run_rows WHERE run_id = ?)");
        query.bind(1, std::string(runId));
        if (!query.executeStep())
            return noSeal(std::string(runId), {"This logbook has no sealed run %1.", {std::string(runId)}});
        return sealFrom(query);
    });
}

Result<run::Run> FileReader::openRun(std::string_view runId) const
{
    return ask([&]() -> Result<run::Run> { return foldStored(*m_db, runId); });
}

Result<seal::Anchor> FileReader::anchor() const
{
    return ask([&]() -> Result<seal::Anchor> {
        SQLite::Statement query(*m_db, "SELECT seq, link FROM seal_rows ORDER BY seq DESC LIMIT 1");
        if (!query.executeStep()) return seal::Anchor{};
        return seal::Anchor{asUint(query.getColumn(0).getInt64()), blobDigest(query.getColumn(1))};
    });
}

Result<std::vector<records::Withdrawal>> FileReader::withdrawals() const
{
    return ask([&]() -> Result<std::vector<records::Withdrawal>> {
        SQLite::Statement query(*m_db, "SELECT press, reason, person, name, at FROM withdrawal_rows ORDER BY seq");
        std::vector<records::Withdrawal> all;
        while (query.executeStep())
            all.push_back({query.getColumn(0).getString(), query.getColumn(1).getString(),
                           query.getColumn(2).getString(), query.getColumn(3).getString(),
                           query.getColumn(4).getInt64()});
        return all;
    });
}

Result<std::vector<people::PersonRecord>> FileReader::people() const
{
    return ask([&]() -> Result<std::vector<people::PersonRecord>> {
        std::vector<std::string> ids;
        SQLite::Statement query(*m_db, "SELECT person FROM person_rows ORDER BY seq");
        while (query.executeStep()) ids.push_back(query.getColumn(0).getString());
        std::vector<people::PersonRecord> all;
        for (const std::string& id : ids)
            if (auto person = findPerson(*m_db, id)) all.push_back(std::move(*person));
        return all;
    });
}

run::Source sourceFrom(SQLite::Statement& row)
{
    return {row.getColumn(0).getString(), row.getColumn(1).getInt(), row.getColumn(2).getString(),
            row.getColumn(3).getString()};
}

std::vector<run::Source> newestDefinitions(SQLite::Database& db, std::string_view what)
{
    SQLite::Statement query(db, "SELECT id, edition, sha256, text FROM definition_rows AS d WHERE what = ?1 AND "
                                "edition = (SELECT max(edition) FROM definition_rows WHERE what = ?1 AND "
                                "id = d.id) ORDER BY id");
    query.bind(1, std::string(what));
    std::vector<run::Source> all;
    while (query.executeStep()) all.push_back(sourceFrom(query));
    return all;
}

std::optional<run::Source> findDefinition(SQLite::Database& db, std::string_view what, std::string_view sha256)
{
    SQLite::Statement query(db, "SELECT id, edition, sha256, text FROM definition_rows WHERE what = ?1 AND "
                                "sha256 = ?2 ORDER BY edition LIMIT 1");
    query.bind(1, std::string(what));
    query.bind(2, std::string(sha256));
    if (!query.executeStep()) return std::nullopt;
    return sourceFrom(query);
}

Result<std::vector<run::Source>> FileReader::definitions(std::string_view what) const
{
    return ask([&]() -> Result<std::vector<run::Source>> { return newestDefinitions(*m_db, what); });
}

Result<std::optional<run::Source>> FileReader::definition(std::string_view what, std::string_view sha256) const
{
    return ask([&]() -> Result<std::optional<run::Source>> { return findDefinition(*m_db, what, sha256); });
}

Result<std::optional<std::string>> FileReader::attachment(std::string_view sha256Digits) const
{
    return ask([&]() -> Result<std::optional<std::string>> {
        auto bytes = attachmentIn(*m_db, sha256Digits);
        if (bytes && hex(sha256(*bytes)) != sha256Digits)
            return refuse("attachment.changed", std::string(sha256Digits),
                          "These are not the bytes that were attached: they were changed since.",
                          "Verify the logbook, and restore it from the mirror or a copy.");
        return bytes;
    });
}

std::unique_ptr<records::Reader> readerOn(std::unique_ptr<SQLite::Database> db, const std::filesystem::path& file)
{
    return std::make_unique<FileReader>(std::move(db), file);
}

Result<std::unique_ptr<records::Reader>> openReader(const std::filesystem::path& file, bool practice, Findings* notes)
{
    const FileKind kind = practice ? FileKind::Practice : FileKind::Shop;
    auto db = openForReading(file, kind, notes);
    if (!db) return db.error();
    auto current = broughtUp(std::move(*db), file);
    if (!current) return current.error();
    return readerOn(std::move(*current), file);
}

}  // namespace taut::logbook
