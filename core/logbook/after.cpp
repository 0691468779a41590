// SPDX-License-Identifier: GPL-3.0-or-later
#include <limits>

#include "core/logbook/file_reader.h"
#include "core/logbook/writer_impl.h"

// What follows a sealed run: reviewed, corrected, voided, each by a further seal.
namespace taut::logbook {

namespace {

Result<std::vector<seal::Sealing>> sealingsOf(const std::vector<seal::Seal>& seals)
{
    std::vector<seal::Sealing> sealings;
    for (const seal::Seal& one : seals) {
        auto sealing = seal::sealingOf(one);
        if (!sealing) return sealing.error();
        sealings.push_back(*std::move(sealing));
    }
    return sealings;
}

/// A sealed run as it stands now, with what it stands on.
struct Found {
    seal::SealedRun run;
    seal::Document document;
    std::vector<seal::Sealing> sealings;
};

Result<Found> findSealed(SQLite::Database& db, std::string_view runId)
{
    const auto seals = sealsOf(db, runId);
    if (!seals) return seals.error();
    auto document = seal::read(seals->front().document);
    if (!document) return document.error();
    auto sealings = sealingsOf(*seals);
    if (!sealings) return sealings.error();
    seal::SealedRun run = seal::sealedRun(seals->front(), *document);
    for (const seal::Sealing& sealing : *sealings)
        if (sealing.sequel) run = seal::after(std::move(run), *sealing.sequel, sealing.byId, sealing.byName);
    return Found{std::move(run), *std::move(document), *std::move(sealings)};
}

/// The seals about a run's seal that stand before this number, oldest first.
std::vector<seal::Seal> sealsAfter(SQLite::Database& db, const std::string& subject, std::int64_t before)
{
    SQLite::Statement query(db,
                            std::string(kSealColumns) + "WHERE subject = ? AND subject <> '' AND seq < ? ORDER BY seq");
    query.bind(1, subject);
    query.bind(2, before);
    std::vector<seal::Seal> all;
    while (query.executeStep()) all.push_back(sealFrom(query));
    return all;
}

Result<seal::Sequel> readSequel(SQLite::Database& db, const Found& found, seal::Sequel sequel)
{
    auto* correction = std::get_if<seal::Correction>(&sequel);
    if (correction == nullptr) return sequel;
    const auto events = seal::eventsOf(found.document, textsIn(db));
    if (!events) return events.error();
    auto read = seal::readCorrection(run::Run::fold(*events), found.sealings, std::move(*correction));
    if (!read) return read.error();
    return seal::Sequel(*std::move(read));
}

}  // namespace

Result<std::vector<seal::Seal>> sealsOf(SQLite::Database& db, std::string_view runId)
{
    const std::string id(runId);
    SQLite::Statement row(db, "SELECT seq FROM run_rows WHERE run_id = ?");
    row.bind(1, id);
    if (!row.executeStep())
        return refuse("run.unknown", id, {"This logbook has no run %1.", {id}}, "Choose one from the list of runs.");
    if (row.getColumn(0).isNull())
        return refuse("run.not_sealed", id, {"Run %1 is not sealed yet.", {id}},
                      "End it and seal it first; until then it is changed by its own steps.");
    SQLite::Statement own(db, std::string(kSealColumns) + "WHERE seq = ?");
    own.bind(1, row.getColumn(0).getInt64());
    std::vector<seal::Seal> all;
    if (own.executeStep()) all.push_back(sealFrom(own));
    if (all.empty())
        return refuse("document.broken", id, {"The seal of run %1 is gone.", {id}},
                      "Verify the logbook and restore it from a backup.");
    for (seal::Seal& later : sealsAfter(db, hex(all.front().link), std::numeric_limits<std::int64_t>::max()))
        all.push_back(std::move(later));
    return all;
}

std::optional<Finding> misquoted(SQLite::Database& db, const seal::Seal& correction)
{
    // What else may be wrong with any of these documents the chain tells.
    const auto link = publicKeyFrom(correction.subject);  // a link is written as a key is
    if (!link) return std::nullopt;
    SQLite::Statement query(db, std::string(kSealColumns) + "WHERE link = ?");
    bindBlob(query, 1, *link);
    if (!query.executeStep()) return std::nullopt;
    const auto document = seal::read(sealFrom(query).document);
    const auto before = sealingsOf(sealsAfter(db, correction.subject, asInt(correction.seq)));
    if (!document || !before) return std::nullopt;
    return seal::misquoted(correction, *document, *before, textsIn(db));
}

Result<std::vector<seal::Sealing>> FileReader::sealsAbout(std::string_view runId) const
{
    return ask([&]() -> Result<std::vector<seal::Sealing>> {
        const auto seals = sealsOf(*m_db, runId);
        if (!seals) return seals.error();
        return sealingsOf(*seals);
    });
}

Result<seal::Seal> Writer::follow(std::string_view runId, seal::Sequel sequel, const people::Signer& by)
{
    return m_impl->write([&](SQLite::Database& db) -> Result<seal::Seal> {
        const auto found = findSealed(db, runId);
        if (!found) return found.error();
        // Who signs must stand in the logbook as they say they do, now.
        const auto standing = findPerson(db, by.actor().id().value);
        if (!standing || standing->key != by.key())
            return refuse(
                "gate.role", found->run.id,
                {"The key that was opened for %1 does not stand in this logbook any more.", {by.actor().name()}},
                "Open it again; a supervisor can look up who is enrolled.");
        if (auto why = seal::whyNot(found->run, sequel, *standing)) return *std::move(why);
        const auto read = readSequel(db, *found, std::move(sequel));
        if (!read) return read.error();
        const Instant now = m_impl->clock->now();
        return appendSeal(db, seal::sequelOf(*read, found->run, *standing, now), sealer(by), now);
    });
}

Result<seal::Seal> Writer::review(std::string_view runId, seal::Review review, const people::Signer& by)
{
    return follow(runId, std::move(review), by);
}

Result<seal::Seal> Writer::correct(std::string_view runId, seal::Correction correction, const people::Signer& by)
{
    return follow(runId, std::move(correction), by);
}

Result<seal::Seal> Writer::voidRun(std::string_view runId, std::string_view reason, const people::Signer& by)
{
    return follow(runId, seal::Voiding{std::string(reason)}, by);
}

}  // namespace taut::logbook
