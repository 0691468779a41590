// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <SQLiteCpp/SQLiteCpp.h>

#include "core/logbook/index.h"
#include "core/logbook/writer_impl.h"
#include "tests/core/logbook/after_fixture.h"

namespace taut::logbook::test {

/// What is different about one of many runs.
struct Made {
    std::string id, press = "north", job = "J-2101", substrate = "paper-label-80", person = "p-2";
    std::string name = "Inka Thorsby";
    std::int64_t begunMs = 1'764'052'863'120;
    std::string state = "completed";
    bool deviated = false;
    std::string roll = "R0041", remarks;
};

/// One more run, in which a reading came out outside and was corrected.
inline seal::Seal sealCorrected(SealedShop& shop)
{
    OpenRun open = shop.begin();
    const people::Actor inka = shop.actor("p-2");
    while (open.run().next() != run::StepId{kUnwindStep}) REQUIRE(answerNext(open, inka));
    must(open, run::Answer{{kUnwindStep}, "5.9 bar", {}}, inka);
    must(open, run::Correct{{kUnwindStep}, "1.40 bar", "read the wrong gauge"}, inka);
    answerAll(open, inka);
    must(open, run::SignOff{""}, inka);
    auto sealed = open.seal(*shop.signer("p-2"));
    REQUIRE(sealed);
    return *std::move(sealed);
}

/// A logbook with two runs as people made it, and many more that are the second under other names. They are put into
/// the chain as a mirror's are, so the tables are those of any logbook; only nobody signed them.
struct Many : SealedShop {
    seal::Seal second = sealCorrected(*this);
    seal::Document model = seal::read(second.document).value();
    std::unique_ptr<SQLite::Database> db;
    std::unique_ptr<Index> index;
    seal::Anchor last;
    Many() : last(writer->reader().anchor().value())
    {
        writer.reset();
        db = std::make_unique<SQLite::Database>(file().string(), SQLite::OPEN_READWRITE);
        index = std::make_unique<Index>(*db);
        db->exec("BEGIN");
    }
    seal::Seal put(const seal::Document& document, std::int64_t at)
    {
        const seal::Document finished = seal::sealedBy(document, "p-2", "Inka Thorsby", {at, 60});
        const seal::Head head = seal::headOf(finished);
        seal::Seal seal{last.count + 1,        finished.kind, head.id, head.subject, head.sealedAtMs, head.person,
                        seal::write(finished), last.link,     {}};
        seal.link = seal::linkAfter(seal.previous, seal.document);
        index->put(seal, &finished, {});
        last = {seal.seq, seal.link};
        return seal;
    }
    [[nodiscard]] seal::Document documentOf(const Made& made) const
    {
        seal::Document document = model;
        Json& body = document.body;
        Json inputs = body["inputs"];
        const auto named = [&](const char* input, const std::string& id) {
            inputs.set(input, Json(inputs[input]).set("id", id));
        };
        named("press", made.press);
        named("job", made.job);
        named("substrate", made.substrate);
        named("roll", made.roll);
        Json person = Json::object();
        person.set("id", made.person).set("name", made.name).set("role", "operator");
        Json people = Json::array();
        people.add(std::move(person));
        Json deviations = Json::array();
        if (made.deviated) deviations.add(Json::object().set("step", kUnwindStep));
        body.set("id", made.id).set("inputs", std::move(inputs)).set("operator", made.person);
        body.set("people", std::move(people)).set("begun", utcText(made.begunMs)).set("state", made.state);
        body.set("deviations", std::move(deviations)).set("remarks", made.remarks);
        return document;
    }
    seal::Seal put(const Made& made) { return put(documentOf(made), made.begunMs + 3'600'000); }
    /// What a supervisor says of a run's seal, as its own seal.
    void follow(const seal::Seal& about, const seal::Sequel& sequel)
    {
        seal::SealedRun sealed;
        sealed.id = about.id;
        sealed.subject = hex(about.link);
        people::PersonRecord person;
        person.id.value = "p-1";
        person.name = "Matteo Quill";
        person.role = people::Role::Supervisor;
        put(seal::sequelOf(sequel, sealed, person, {1'764'060'000'000, 60}), 1'764'060'000'000);
    }
    /// On disk, with a reader.
    [[nodiscard]] std::unique_ptr<records::Reader> reader()
    {
        index->settle();
        index.reset();
        db->exec("COMMIT");
        db.reset();
        auto opened = openReader(file());
        if (!opened) FAIL(opened.error().text.source);
        return *std::move(opened);
    }
};

/// Every row of a list, page by page.
template <class T, class Ask>
std::vector<T> allOf(const Ask& ask)
{
    std::vector<T> all;
    std::string after;
    for (int pages = 0; pages < 1000; ++pages) {
        const auto page = ask(after);
        if (!page) FAIL(page.error().code);
        all.insert(all.end(), page->rows.begin(), page->rows.end());
        after = page->next;
        if (after.empty()) return all;
    }
    FAIL("the list never ends");
    return all;
}
inline std::vector<records::RunRow> allRuns(const records::Reader& reader, const records::RunQuery& query)
{
    return allOf<records::RunRow>([&](const std::string& after) { return reader.runs(query, after); });
}
inline std::vector<std::string> idsOf(const std::vector<records::RunRow>& rows)
{
    std::vector<std::string> ids;
    for (const records::RunRow& row : rows) ids.push_back(row.run);
    return ids;
}

}  // namespace taut::logbook::test
