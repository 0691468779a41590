// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/logbook/file_reader.h"
#include "core/logbook/writer_impl.h"

namespace taut::logbook {

namespace {

/// The edition in which this text stands; 0 = in none.
int editionOf(SQLite::Database& db, const std::string& what, const run::Source& source)
{
    SQLite::Statement same(db, "SELECT edition FROM definition_rows WHERE what = ? AND id = ? AND sha256 = ?");
    same.bind(1, what);
    same.bind(2, source.id);
    same.bind(3, source.sha256);
    return same.executeStep() ? same.getColumn(0).getInt() : 0;
}

}  // namespace

run::Source sealedOnce(SQLite::Database& db, const std::string& what, run::Source source, const Sealer& by, Instant at)
{
    source.edition = editionOf(db, what, source);
    if (source.edition > 0) return source;
    SQLite::Statement newest(db, "SELECT coalesce(max(edition), 0) FROM definition_rows WHERE what = ? AND id = ?");
    newest.bind(1, what);
    newest.bind(2, source.id);
    newest.executeStep();
    source.edition = newest.getColumn(0).getInt() + 1;
    newest.reset();
    const seal::Seal seal = appendSeal(db, seal::definitionOf(what, source), by, at);
    return source;
}

seal::TextBySha textsIn(SQLite::Database& db)
{
    return [&db](std::string_view what, const std::string& sha256) {
        const auto found = findDefinition(db, what, sha256);
        return found ? found->text : std::string();
    };
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
        if (editionOf(db, kind, source) == 0 && !people::may(by.role(), people::Act::EditInputs))
            return people::notAllowed(by, kind + " " + source.id,
                                      "Have a supervisor keep this file in the logbook first.");
        return sealedOnce(db, kind, source, sealer(by), m_impl->clock->now());
    });
}

Result<std::vector<records::Edition>> FileReader::editions(std::string_view what) const
{
    return ask([&]() -> Result<std::vector<records::Edition>> {
        SQLite::Statement query(*m_db,
                                "SELECT d.id, d.edition, d.sha256, s.sealed_at, coalesce(p.name, s.person) "
                                "FROM definition_rows AS d JOIN seal_rows AS s ON s.seq = d.seq LEFT JOIN person_rows "
                                "AS p ON p.person = s.person WHERE d.what = ? ORDER BY d.id, d.edition DESC");
        query.bind(1, std::string(what));
        std::vector<records::Edition> all;
        while (query.executeStep())
            all.push_back({query.getColumn(0).getString(), query.getColumn(1).getInt(), query.getColumn(2).getString(),
                           query.getColumn(3).getInt64(), query.getColumn(4).getString()});
        return all;
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
