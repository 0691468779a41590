// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/logbook/file_reader.h"
#include "core/logbook/writer_impl.h"

namespace taut::logbook {

namespace {

Finding notAllowed(std::string subject, const people::Actor& by, Text remedy)
{
    return refuse(
        "gate.role", std::move(subject),
        {"%1 is enrolled as %2, which does not allow this.", {by.name(), std::string(people::roleWord(by.role()))}},
        std::move(remedy));
}

}  // namespace

std::optional<people::PersonRecord> findPerson(SQLite::Database& db, std::string_view id)
{
    SQLite::Statement query(db, "SELECT p.name, p.role, p.active, k.hash FROM person_rows AS p "
                                "LEFT JOIN pins AS k ON k.person = p.person WHERE p.person = ?");
    query.bind(1, std::string(id));
    if (!query.executeStep()) return std::nullopt;
    people::PersonRecord person;
    person.id = {std::string(id)};
    person.name = query.getColumn(0).getString();
    // A role that this program does not know may do the least.
    person.role = people::roleFrom(query.getColumn(1).getString()).value_or(people::Role::Trainee);
    person.active = query.getColumn(2).getInt() != 0;
    person.pinHash = query.getColumn(3).getString();
    return person;
}

Result<Done> Writer::addPerson(const people::PersonRecord& person, const people::Actor* by)
{
    return m_impl->write([&](SQLite::Database& db) -> Result<Done> {
        if (by == nullptr && numberOf(db, "SELECT count(*) FROM person_rows") > 0)
            return refuse("person.needs_supervisor", person.id.value,
                          "People are enrolled already, so the next one is enrolled by a supervisor.",
                          "Have a supervisor sign in first.");
        if (by == nullptr && person.role != people::Role::Supervisor)
            return refuse("person.first_is_supervisor", person.id.value,
                          "The first person in a logbook must be a supervisor: only a supervisor can enrol the others.",
                          "Enrol a supervisor first.");
        if (by != nullptr && !people::may(by->role(), people::Act::EditPeople))
            return notAllowed(person.id.value, *by, "Have a supervisor enrol this person.");
        if (person.id.value.empty() || findPerson(db, person.id.value))
            return refuse("person.id_taken", person.id.value,
                          {"The id %1 belongs to somebody for ever, also when they have left.", {person.id.value}},
                          "Choose an id that nobody has had.");
        const Sealer sealedBy = by != nullptr ? sealer(*by) : Sealer{person.id.value, person.name};
        const seal::Seal seal = appendSeal(db, seal::personOf(person, "enrolled"), sealedBy, m_impl->clock->now());
        SQLite::Statement pin(db, "INSERT INTO pins (person, hash) VALUES (?, ?)");
        pin.bind(1, person.id.value);
        pin.bind(2, person.pinHash);
        pin.exec();
        return Done{};
    });
}

Result<people::Actor> Writer::signIn(std::string_view personId, std::string_view pin)
{
    const auto person = m_impl->read(
        [&](SQLite::Database& db) -> Result<std::optional<people::PersonRecord>> { return findPerson(db, personId); });
    if (!person) return person.error();
    // Hashing takes its time outside the lock.
    return people::signIn(*person ? &**person : nullptr, pin);
}

Result<run::Source> Writer::keepDefinition(std::string_view what, std::string_view id, std::string_view toml,
                                           const people::Actor& by)
{
    run::Source source{std::string(id), 0, hex(sha256(toml)), std::string(toml)};
    const std::string kind(what);
    if (kind != "press" && kind != "job" && kind != "substrate" && kind != "procedure")
        return refuse("definition.what", kind, {"A logbook keeps no definitions of the kind %1.", {kind}},
                      "Use press, job, substrate or procedure.");
    if (id.empty() || toml.empty())
        return refuse("definition.empty", kind, {"A definition of a %1 needs an id and a text.", {kind}},
                      "Give the file its id and try again.");
    return m_impl->write([&](SQLite::Database& db) -> Result<run::Source> {
        SQLite::Statement same(db, "SELECT edition FROM definition_rows WHERE what = ? AND id = ? AND sha256 = ?");
        same.bind(1, kind);
        same.bind(2, source.id);
        same.bind(3, source.sha256);
        if (same.executeStep()) {
            source.edition = same.getColumn(0).getInt();
            return source;
        }
        if (!people::may(by.role(), people::Act::EditInputs))
            return notAllowed(kind + " " + source.id, by, "Have a supervisor keep this file in the logbook first.");
        SQLite::Statement newest(db, "SELECT coalesce(max(edition), 0) FROM definition_rows WHERE what = ? AND id = ?");
        newest.bind(1, kind);
        newest.bind(2, source.id);
        newest.executeStep();
        source.edition = newest.getColumn(0).getInt() + 1;
        newest.reset();
        const seal::Seal seal = appendSeal(db, seal::definitionOf(kind, source), sealer(by), m_impl->clock->now());
        return source;
    });
}

Result<std::vector<Definition>> Writer::definitions(std::string_view what) const
{
    return m_impl->read([&](SQLite::Database& db) -> Result<std::vector<Definition>> {
        std::vector<Definition> all;
        for (run::Source& source : newestDefinitions(db, what)) all.push_back({std::string(what), std::move(source)});
        return all;
    });
}

}  // namespace taut::logbook
