// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/logbook/competence.h"

#include <map>

#include "core/inputs/inputs.h"
#include "core/inputs/policy.h"
#include "core/logbook/file_reader.h"
#include "core/logbook/writer_impl.h"

namespace taut::logbook {

namespace {

/// What was said of somebody at a press last.
struct Newest {
    seal::Seal seal;
    seal::Competence said;
    std::string byName;
    Instant at;
};

Result<std::optional<Newest>> newestOf(SQLite::Database& db, const std::string& person, const std::string& press)
{
    // Seals are found by whom they are about: a competence names its person as the subject.
    SQLite::Statement query(db, std::string(kSealColumns) + "WHERE subject = ? AND subject <> '' ORDER BY seq DESC");
    query.bind(1, person);
    while (query.executeStep()) {
        seal::Seal seal = sealFrom(query);
        if (seal.kind != seal::Kind::Competence || seal.id != press) continue;
        const auto document = seal::read(seal.document);
        if (!document) return document.error();
        auto said = seal::competenceIn(*document);
        if (!said) return said.error();
        const Instant at{seal.sealedAtMs, readOffset(document->body["sealed_offset"].text()).value_or(0)};
        return std::optional(Newest{std::move(seal), *std::move(said), document->body["sealed_by"]["name"].text(), at});
    }
    return std::optional<Newest>();
}

/// When somebody last had a run of this press in hand that was finished.
std::optional<std::int64_t> lastAt(SQLite::Database& db, const std::string& person, const std::string& press)
{
    SQLite::Statement query(db,
                            "SELECT begun FROM run_rows WHERE operator = ? AND press = ? AND state = 'completed' AND "
                            "seq IS NOT NULL AND present <> 'void' ORDER BY seq DESC LIMIT 1");
    query.bind(1, person);
    query.bind(2, press);
    if (!query.executeStep()) return std::nullopt;
    return query.getColumn(0).getInt64();
}

/// The newest edition of a press, and what it says.
struct Profile {
    run::Source source;
    inputs::Press press;
};
Result<Profile> profileOf(SQLite::Database& db, const std::string& press)
{
    for (run::Source& source : newestDefinitions(db, "press")) {
        if (source.id != press) continue;
        Findings notes;
        auto read = inputs::readPress(source.text, source.id, notes);
        if (!read) return read.error();
        return Profile{std::move(source), *std::move(read)};
    }
    return refuse("press.unknown", press, {"This logbook knows no press %1.", {press}},
                  "Choose one of the presses that are kept here.");
}

Result<std::optional<Finding>> standing(SQLite::Database& db, const std::string& person, const std::string& name,
                                        const std::string& press, const inputs::Press& profile, std::int64_t nowMs)
{
    const auto newest = newestOf(db, person, press);
    if (!newest) return newest.error();
    const seal::CompetenceNow now{nowMs, seal::safetyStamp(profile), lastAt(db, person, press),
                                  inputs::policyFigure(profile, "competence_away")};
    const std::optional<seal::Competence> said = *newest ? std::optional((*newest)->said) : std::nullopt;
    return seal::notCompetent(said, *newest ? (*newest)->at.utcMs : 0, name, press, now);
}

/// A run that was watched: sealed, finished, of this press, and not void.
Result<seal::ObservedRun> observedRun(SQLite::Database& db, const std::string& run, const std::string& press)
{
    const auto seals = sealsOf(db, run);
    if (!seals) return seals.error();
    SQLite::Statement row(db, "SELECT press, state, present FROM run_rows WHERE run_id = ?");
    row.bind(1, run);
    (void)row.executeStep();
    const auto refused = [&](const char* english) {
        return refuse("competence.run", run, {english, {run, press}}, "Name a finished set-up of this press.");
    };
    if (row.getColumn(0).getString() != press) return refused("Run %1 is not one of the press %2.");
    if (row.getColumn(1).getString() != "completed") return refused("Run %1 was not finished.");
    if (row.getColumn(2).getString() == "void") return refused("Run %1 is void.");
    return seal::ObservedRun{run, hex(seals->front().link)};
}

Result<seal::Seal> say(SQLite::Database& db, const seal::Competence& competence, const people::Signer& by, Instant now)
{
    const auto standing = findPerson(db, by.actor().id().value);
    if (!standing || standing->key != by.key())
        return refuse("gate.role", competence.press,
                      {"The key that was opened for %1 does not stand in this logbook any more.", {by.actor().name()}},
                      "Open it again; a supervisor can look up who is enrolled.");
    if (auto why = seal::whyNot(competence, *standing, now.utcMs)) return *std::move(why);
    return appendSeal(db, seal::competenceOf(competence, *standing, now), sealer(by), now);
}

Result<people::PersonRecord> personIn(SQLite::Database& db, const std::string& id)
{
    auto person = findPerson(db, id);
    if (person && person->active) return *std::move(person);
    return refuse("person.unknown", id, {"Nobody in service here has the id %1.", {id}},
                  "Choose somebody from the list.");
}

std::optional<Finding> notInPractice(bool practice, const std::string& press)
{
    if (!practice) return std::nullopt;
    return refuse("practice.not_here", press, "Practice qualifies nobody: competence stands in the shop's logbook.",
                  "Open the shop's logbook.");
}

}  // namespace

std::optional<Finding> notAlone(SQLite::Database& db, const run::Run& run, const people::Actor& who, bool countersigned,
                                std::int64_t nowMs)
{
    if (countersigned || people::may(who.role(), people::Act::Qualify)) return std::nullopt;
    const run::Source& source = run.sources().press;
    Findings notes;
    const auto press = inputs::readPress(source.text, source.id, notes);
    if (!press) return press.error();
    if (inputs::policyFigure(*press, "competence_asked") < 1) return std::nullopt;
    const auto why = standing(db, who.id().value, who.name(), source.id, *press, nowMs);
    if (!why) return why.error();
    if (!*why) return std::nullopt;
    return refuse("gate.not_competent", run.id(),
                  {"%1 does not sign a set-up of this press alone: %2", {who.name(), std::vector<Text>{(*why)->text}}},
                  "Have a supervisor look at it here and sign beside you.");
}

Result<seal::Seal> Writer::qualify(const Qualifying& who, const people::Signer& by)
{
    if (auto why = notInPractice(m_impl->options.practice, who.press)) return *std::move(why);
    return m_impl->write([&](SQLite::Database& db) -> Result<seal::Seal> {
        const auto person = personIn(db, who.personId);
        if (!person) return person.error();
        const auto profile = profileOf(db, who.press);
        if (!profile) return profile.error();
        seal::Competence competence;
        competence.personId = who.personId;
        competence.personName = person->name;
        competence.press = who.press;
        competence.pressEdition = profile->source.edition;
        competence.pressSha256 = profile->source.sha256;
        competence.safety = seal::safetyStamp(profile->press);
        competence.trainingRecord = who.trainingRecord;
        competence.validUntilMs = who.validUntilMs;
        for (const std::string& run : who.observed) {
            auto observed = observedRun(db, run, who.press);
            if (!observed) return observed.error();
            competence.observed.push_back(*std::move(observed));
        }
        const double wanted = inputs::policyFigure(profile->press, "competence_runs");
        if (static_cast<double>(competence.observed.size()) < wanted)
            return refuse("competence.too_few", who.press,
                          {"%1 set-ups of this press are named, and this shop wants %2 that somebody watched.",
                           {static_cast<std::int64_t>(competence.observed.size()), static_cast<std::int64_t>(wanted)}},
                          "Have them do more set-ups with a trainer beside them. Practice does not count.");
        return say(db, competence, by, m_impl->clock->now());
    });
}

Result<seal::Seal> Writer::endCompetence(std::string_view personId, std::string_view press, std::string_view reason,
                                         const people::Signer& by)
{
    const std::string person(personId), where(press);
    if (auto why = notInPractice(m_impl->options.practice, where)) return *std::move(why);
    return m_impl->write([&](SQLite::Database& db) -> Result<seal::Seal> {
        const auto newest = newestOf(db, person, where);
        if (!newest) return newest.error();
        if (!*newest || !(*newest)->said.granted)
            return refuse("competence.none", where,
                          {"Nobody with the id %1 is competent at the press %2.", {person, where}},
                          "Nothing has to be ended.");
        seal::Competence ended;
        ended.granted = false;
        ended.personId = person;
        ended.personName = (*newest)->said.personName;
        ended.press = where;
        ended.reason = std::string(reason);
        return say(db, ended, by, m_impl->clock->now());
    });
}

Result<std::vector<CompetenceStanding>> Writer::competences() const
{
    return m_impl->read([&](SQLite::Database& db) -> Result<std::vector<CompetenceStanding>> {
        std::map<std::string, inputs::Press> presses;
        for (const run::Source& source : newestDefinitions(db, "press")) {
            Findings notes;
            if (auto read = inputs::readPress(source.text, source.id, notes)) presses[source.id] = *std::move(read);
        }
        SQLite::Statement people(db, "SELECT person FROM person_rows ORDER BY person");
        std::vector<CompetenceStanding> all;
        const std::int64_t nowMs = m_impl->clock->now().utcMs;
        while (people.executeStep())
            for (const auto& [id, press] : presses) {
                const std::string person = people.getColumn(0).getString();
                auto newest = newestOf(db, person, id);
                if (!newest) return newest.error();
                if (!*newest) continue;
                auto why = standing(db, person, (*newest)->said.personName, id, press, nowMs);
                if (!why) return why.error();
                all.push_back({(*newest)->said, (*newest)->at, (*newest)->byName, *std::move(why)});
            }
        return all;
    });
}

}  // namespace taut::logbook
