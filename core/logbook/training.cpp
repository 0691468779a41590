// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/logbook/training.h"

#include "core/logbook/file_reader.h"
#include "core/logbook/writer_impl.h"

// What a practice logbook keeps of people: their attempts, and what trainers say of them.
namespace taut::logbook {

namespace {

std::optional<Finding> notHere(bool practice, const std::string& subject)
{
    if (practice) return std::nullopt;
    return refuse("practice.not_here", subject, "Practice is kept in a logbook of its own, never in the shop's.",
                  "Open the practice logbook.");
}

/// The seals about this subject of one kind, oldest first.
std::vector<seal::Seal> sealsAbout(SQLite::Database& db, const std::string& subject, seal::Kind kind)
{
    SQLite::Statement query(db, std::string(kSealColumns) + "WHERE subject = ? AND subject <> '' ORDER BY seq");
    query.bind(1, subject);
    std::vector<seal::Seal> all;
    while (query.executeStep())
        if (seal::Seal one = sealFrom(query); one.kind == kind) all.push_back(std::move(one));
    return all;
}

/// "p-4-attempt-7": the person's next.
std::string nextId(SQLite::Database& db, const std::string& person)
{
    return person + "-attempt-" + std::to_string(sealsAbout(db, person, seal::Kind::Attempt).size() + 1);
}

Result<practice::Observed> observedFrom(const seal::Seal& seal)
{
    const auto document = seal::read(seal.document);
    if (!document) return document.error();
    auto said = seal::observationIn(*document);
    if (!said) return said.error();
    const Json& body = document->body;
    practice::Observed one;
    one.seq = seal.seq;
    one.link = hex(seal.link);
    one.said = *std::move(said);
    one.by = {body["by"]["id"].text(), body["by"]["name"].text()};
    one.key = body["by"]["key"].text();
    one.at = {seal.sealedAtMs, readOffset(body["sealed_offset"].text()).value_or(0)};
    return one;
}

Result<practice::KeptAttempt> keptFrom(SQLite::Database& db, const seal::Seal& seal)
{
    const auto document = seal::read(seal.document);
    if (!document) return document.error();
    auto attempt = practice::attemptFrom(*document);
    if (!attempt) return attempt.error();
    practice::KeptAttempt kept{seal.seq, hex(seal.link), *std::move(attempt), {}};
    for (const seal::Seal& about : sealsAbout(db, kept.link, seal::Kind::Observation)) {
        auto observed = observedFrom(about);
        if (!observed) return observed.error();
        kept.observations.push_back(*std::move(observed));
    }
    return kept;
}

}  // namespace

Result<seal::Seal> Writer::keepAttempt(const practice::Attempt& given)
{
    practice::Attempt attempt = given;
    if (auto why = notHere(m_impl->options.practice, attempt.id)) return *std::move(why);
    if (attempt.who.id.empty() || attempt.who.name.empty())
        return refuse("practice.nobody", attempt.id, "It was not said whose attempt this is.",
                      "Say who practised, by id and name.");
    return m_impl->write([&](SQLite::Database& db) -> Result<seal::Seal> {
        attempt.id = nextId(db, attempt.who.id);
        return appendSeal(db, practice::attemptDocument(attempt), {attempt.who.id, attempt.who.name},
                          m_impl->clock->now());
    });
}

Result<seal::Seal> Writer::observe(std::uint64_t attempt, const seal::Observation& observation,
                                   const people::Signer& by)
{
    const std::string subject = std::to_string(attempt);
    if (auto why = notHere(m_impl->options.practice, subject)) return *std::move(why);
    return m_impl->write([&](SQLite::Database& db) -> Result<seal::Seal> {
        SQLite::Statement query(db, std::string(kSealColumns) + "WHERE seq = ?");
        query.bind(1, asInt(attempt));
        const bool found = query.executeStep();
        const seal::Seal seal = found ? sealFrom(query) : seal::Seal{};
        query.reset();
        if (!found || seal.kind != seal::Kind::Attempt)
            return refuse("training.no_attempt", subject, {"Seal %1 of this logbook is no attempt.", {asInt(attempt)}},
                          "Choose one of the training record.");
        const auto document = seal::read(seal.document);
        if (!document) return document.error();
        const seal::SealedAttempt sealed = seal::sealedAttempt(seal, *document);
        const people::Actor& actor = by.actor();
        const people::PersonRecord trainer{actor.id(), actor.name(), actor.role(), true, by.key()};
        if (auto why = seal::whyNot(sealed, observation, trainer)) return *std::move(why);
        const Instant now = m_impl->clock->now();
        return appendSeal(db, seal::observationOf(observation, sealed, trainer, now), sealer(by), now);
    });
}

Result<practice::TrainingRecord> trainingOf(const std::filesystem::path& file, std::string_view personId)
{
    auto db = openLogbook(file, Access::Read, FileKind::Practice, true);
    if (!db) return db.error();
    return guarded(file, [&]() -> Result<practice::TrainingRecord> {
        practice::TrainingRecord record;
        for (const seal::Seal& seal : sealsAbout(**db, std::string(personId), seal::Kind::Attempt)) {
            auto kept = keptFrom(**db, seal);
            if (!kept) return kept.error();
            record.attempts.push_back(*std::move(kept));
        }
        if (record.attempts.empty())
            return refuse("training.nobody", std::string(personId),
                          {"This logbook has no attempt of anybody with the id %1.", {std::string(personId)}},
                          "Look up the id of whoever practised.");
        record.who = record.attempts.back().attempt.who;
        return record;
    });
}

Result<std::vector<practice::Who>> traineesIn(const std::filesystem::path& file)
{
    auto db = openLogbook(file, Access::Read, FileKind::Practice, true);
    if (!db) return db.error();
    return guarded(file, [&]() -> Result<std::vector<practice::Who>> {
        SQLite::Statement query(**db, "SELECT DISTINCT subject FROM seal_rows WHERE kind = 'attempt' ORDER BY subject");
        std::vector<practice::Who> all;
        while (query.executeStep()) {
            const std::string id = query.getColumn(0).getString();
            const auto seals = sealsAbout(**db, id, seal::Kind::Attempt);
            const auto document = seal::read(seals.back().document);
            all.push_back({id, document ? document->body["person"]["name"].text() : std::string()});
        }
        return all;
    });
}

}  // namespace taut::logbook
