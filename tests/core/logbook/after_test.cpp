// SPDX-License-Identifier: GPL-3.0-or-later
#include <chrono>

#include "core/records/sheet.h"
#include "tests/core/logbook/after_fixture.h"

using namespace taut;
using namespace taut::logbook;
using namespace taut::logbook::test;
using seal::Present;

TEST_CASE("a run goes from sealed to sent back, corrected, reviewed and void, each by a seal that names it")
{
    SealedShop shop;
    Writer& writer = *shop.writer;
    const std::string document = shop.own.document;
    const auto wants = [&] { return writer.reader().wantingReview().value(); };
    CHECK(shop.row(shop.run).present == "sealed");
    CHECK(shop.row(shop.run).reviewedBy.empty());
    CHECK(wants() == 1);

    const auto back = writer.review(shop.run, {false, "the brake cannot be right"}, *shop.signer("p-1"));
    REQUIRE(back);
    CHECK(back->seq == 12);
    CHECK(back->kind == seal::Kind::Review);
    CHECK(back->id == shop.run);
    CHECK(back->subject == hex(shop.own.link));
    CHECK(shop.row(shop.run).present == "sent_back");
    CHECK(wants() == 0);

    REQUIRE(writer.correct(shop.run, SealedShop::correction(), *shop.signer("p-2")));
    CHECK(shop.row(shop.run).present == "corrected");
    CHECK(wants() == 1);

    REQUIRE(writer.review(shop.run, {true, "seen the gauge"}, *shop.signer("p-1")));
    CHECK(shop.row(shop.run).present == "reviewed");
    CHECK(shop.row(shop.run).reviewedBy == "Matteo Quill");
    CHECK(shop.present(shop.run) == "reviewed");
    CHECK(wants() == 0);

    REQUIRE(writer.voidRun(shop.run, "set up on the wrong press", *shop.signer("p-3")));
    CHECK(shop.row(shop.run).present == "void");
    CHECK(shop.row(shop.run).reviewedBy.empty());

    // The document and the row of the run itself are what they were; its readings too.
    CHECK(writer.reader().sealOfRun(shop.run)->document == document);
    CHECK(shop.row(shop.run).verdict == "clean");
    CHECK(sqlite(shop.file(), "SELECT entered_text FROM readings WHERE step LIKE '%/unwind'").out == "1.40 bar");
    CHECK(sqlite(shop.file(), "SELECT person || ' ' || meaning FROM signatures WHERE seq > 10 ORDER BY seq").out ==
          "p-2 performed\np-1 reviewed\np-2 corrected\np-1 reviewed\np-3 voided");
    CHECK(sqlite(shop.file(), "SELECT count(*) FROM seals WHERE kind IN ('review', 'correction', 'void') AND subject = "
                              "(SELECT link FROM sealed_runs) AND id = (SELECT run_id FROM sealed_runs)")
              .out == "4");
    CHECK(verify(shop.file(), {}, Depth::Deep)->findings.empty());

    const auto story = writer.reader().sealsAbout(shop.run);
    REQUIRE(story);
    REQUIRE(story->size() == 5);
    const auto& all = *story;
    CHECK_FALSE(all[0].sequel);
    CHECK(all[0].meaning == "performed");
    CHECK(all[0].byName == "Inka Thorsby");
    CHECK(all[1].meaning == "reviewed");
    CHECK(*all[1].sequel == seal::Sequel(seal::Review{false, "the brake cannot be right"}));
    const auto& corrected = std::get<seal::Correction>(*all[2].sequel);
    CHECK(all[2].byId == "p-2");
    CHECK(corrected.reason == "read from the side");
    CHECK(corrected.steps.at(0).stood == "1.40 bar");
    CHECK(corrected.steps.at(0).shouldBe == "1.45 bar");
    CHECK(corrected.steps.at(0).verdict == "inside");
    CHECK(corrected.steps.at(0).value.value() == Approx(145000));
    CHECK(all[4].byName == "Ada Sund");
    CHECK(all[4].offsetMinutes == 60);
    for (std::size_t i = 0; i < all.size(); ++i) CHECK(all[i].seq == 11 + i);
    CHECK(all[3].atMs < all[4].atMs);
    CHECK(seal::stateOf(all).present == Present::Void);
}

TEST_CASE("each thing that may not be sealed about a run is refused by name, and writes nothing")
{
    SealedShop shop;
    Writer& writer = *shop.writer;
    const auto matteo = shop.signer("p-1");
    const auto inka = shop.signer("p-2");
    const auto ada = shop.signer("p-3");
    const auto tove = shop.signer("p-4");
    OpenRun open = shop.begin();
    const std::string still = open.run().id();
    const auto refused = [&](const Result<seal::Seal>& said, const char* code) {
        REQUIRE_FALSE(said);
        CHECK(said.error().code == code);
        CHECK_FALSE(said.error().text.empty());
        CHECK_FALSE(said.error().remedy.empty());
    };
    const std::string before = readFile(shop.file()).value();
    refused(writer.review("north-2025-11-25-77", {true, {}}, *matteo), "run.unknown");
    refused(writer.correct("north-2025-11-25-77", SealedShop::correction(), *matteo), "run.unknown");
    refused(writer.voidRun("north-2025-11-25-77", "wrong press", *matteo), "run.unknown");
    refused(writer.review(still, {true, {}}, *matteo), "run.not_sealed");
    refused(writer.correct(still, SealedShop::correction(), *matteo), "run.not_sealed");
    refused(writer.voidRun(still, "wrong press", *matteo), "run.not_sealed");
    refused(writer.review(shop.run, {true, {}}, *inka), "gate.role");
    refused(writer.voidRun(shop.run, "wrong press", *inka), "gate.role");
    refused(writer.review(shop.run, {true, {}}, *tove), "gate.role");
    refused(writer.correct(shop.run, SealedShop::correction(), *tove), "gate.role");
    refused(writer.voidRun(shop.run, "wrong press", *tove), "gate.role");
    refused(writer.review(shop.run, {false, " no "}, *matteo), "gate.no_reason");
    refused(writer.voidRun(shop.run, "", *matteo), "gate.no_reason");
    seal::Correction correction = SealedShop::correction();
    correction.reason = "..";
    refused(writer.correct(shop.run, correction, *inka), "gate.no_reason");
    refused(writer.correct(shop.run, {{}, {}, "misread"}, *inka), "correction.empty");
    refused(writer.correct(shop.run, SealedShop::correction("1.40 bar", "1.40 bar"), *inka), "correction.same");
    refused(writer.correct(shop.run, SealedShop::correction("1.50 bar", "1.45 bar"), *inka), "correction.stale");
    refused(writer.correct(shop.run, SealedShop::correction("1.40 bar", "13 mm"), *inka), "quantity.wrong_kind");
    CHECK(readFile(shop.file()).value() == before);

    // Who corrected it waits for another; nobody corrects for the time after a void.
    REQUIRE(writer.correct(shop.run, SealedShop::correction(), *matteo));
    refused(writer.review(shop.run, {true, {}}, *matteo), "gate.own_correction");
    REQUIRE(writer.review(shop.run, {true, {}}, *ada));
    refused(writer.review(shop.run, {true, {}}, *matteo), "run.reviewed");
    REQUIRE(writer.review(shop.run, {false, "look again"}, *matteo));
    refused(writer.review(shop.run, {true, {}}, *ada), "run.sent_back");
    refused(writer.correct(shop.run, SealedShop::correction("1.40 bar", "1.50 bar"), *inka), "correction.stale");
    REQUIRE(writer.voidRun(shop.run, "wrong press", *ada));
    refused(writer.review(shop.run, {true, {}}, *matteo), "run.void");
    refused(writer.correct(shop.run, SealedShop::correction("1.45 bar", "1.50 bar"), *inka), "run.void");
    refused(writer.voidRun(shop.run, "wrong press", *matteo), "run.void");
    CHECK(verify(shop.file(), {}, Depth::Deep)->findings.empty());
}

TEST_CASE("a supervisor who sealed the run or had it in hand neither reviews nor voids it")
{
    SealedShop shop;
    OpenRun open = shop.begin();
    must(open, run::HandOver{shop.actor("p-1")}, shop.actor("p-2"));
    must(open, run::Abandon{"the order was cancelled"}, shop.actor("p-1"));
    const std::string handed = open.seal(*shop.signer("p-2"))->id;
    OpenRun other = shop.begin();
    must(other, run::Abandon{"the order was cancelled"}, shop.actor("p-2"));
    const std::string sealed = other.seal(*shop.signer("p-1"))->id;
    for (const std::string& id : {handed, sealed}) {
        INFO(id);
        CHECK(shop.writer->review(id, {true, {}}, *shop.signer("p-1")).error().code == "gate.own_run");
        CHECK(shop.writer->voidRun(id, "wrong press", *shop.signer("p-1")).error().code == "gate.own_run");
        CHECK(shop.writer->review(id, {true, {}}, *shop.signer("p-3")));
    }
    CHECK(verify(shop.file(), {}, Depth::Deep)->findings.empty());
}

TEST_CASE("a key that stands no more signs no review, and a role taken away counts at once")
{
    SealedShop shop;
    const auto ada = shop.signer("p-3");
    const auto matteo = shop.signer("p-1");
    people::PersonRecord record = people::newPerson({"p-3"}, "Ada Sund", people::Role::Operator).value();
    REQUIRE(shop.writer->changePerson(record, *matteo));
    CHECK(shop.writer->review(shop.run, {true, {}}, *ada).error().code == "gate.role");
    record.role = people::Role::Supervisor;
    REQUIRE(shop.writer->changePerson(record, *matteo));
    const std::string code = shop.writer->invite(record, *matteo).value();
    CHECK(shop.writer->review(shop.run, {true, {}}, *ada).error().code == "gate.role");
    REQUIRE(shop.writer->choose("p-3", code, people::test::kChosen, PinCost::Least));
    CHECK(shop.writer->review(shop.run, {true, {}}, *ada).error().code == "gate.role");  // the old key
    REQUIRE(shop.writer->review(shop.run, {true, {}}, *shop.signer("p-3")));
    record.active = false;
    REQUIRE(shop.writer->changePerson(record, *matteo));
    CHECK(shop.row(shop.run).reviewedBy == "Ada Sund");  // it stood when it was given
    CHECK(verify(shop.file(), {}, Depth::Deep)->findings.empty());
}

TEST_CASE("an abandoned run is reviewed, corrected and voided like a completed one")
{
    SealedShop shop;
    const seal::Seal abandoned = shop.abandonRun();
    Writer& writer = *shop.writer;
    CHECK(writer.reader().wantingReview().value() == 2);
    REQUIRE(writer.review(abandoned.id, {true, {}}, *shop.signer("p-1")));
    // A step that nobody answered: what stood is nothing.
    REQUIRE(writer.correct(abandoned.id, SealedShop::correction("", "1.45 bar"), *shop.signer("p-2")));
    REQUIRE(
        writer.correct(abandoned.id, {{}, "the roll stood on the lift", "not written down then"}, *shop.signer("p-2")));
    CHECK(writer.correct(abandoned.id, SealedShop::correction("", "1.50 bar"), *shop.signer("p-2")).error().code ==
          "correction.stale");
    REQUIRE(writer.correct(abandoned.id, SealedShop::correction("1.45 bar", "1.50 bar"), *shop.signer("p-2")));
    REQUIRE(writer.voidRun(abandoned.id, "never set up", *shop.signer("p-1")));
    CHECK(shop.row(abandoned.id).state == "abandoned");
    CHECK(shop.row(abandoned.id).present == "void");
    CHECK(shop.present(shop.run) == "sealed");  // the other run is as it was
    CHECK(verify(shop.file(), {}, Depth::Deep)->findings.empty());
}

TEST_CASE("the list of runs narrows by present state, and counts those that want a review")
{
    SealedShop shop;
    const std::string reviewed = shop.sealRun().id, corrected = shop.sealRun().id, back = shop.sealRun().id,
                      gone = shop.sealRun().id;
    const auto matteo = shop.signer("p-1");
    REQUIRE(shop.writer->review(reviewed, {true, {}}, *matteo));
    REQUIRE(shop.writer->correct(corrected, SealedShop::correction(), *shop.signer("p-2")));
    REQUIRE(shop.writer->review(back, {false, "look again"}, *matteo));
    REQUIRE(shop.writer->voidRun(gone, "wrong press", *matteo));
    const std::string open = shop.begin().run().id();
    const auto ids = [&](const char* present) {
        records::RunQuery query;
        query.present = present;
        std::vector<std::string> all;
        const auto page = shop.writer->reader().runs(query, "");
        REQUIRE(page);
        for (const records::RunRow& row : page->rows) all.push_back(row.run);
        return all;
    };
    using Ids = std::vector<std::string>;
    CHECK(ids("open") == Ids{open});
    CHECK(ids("sealed") == Ids{shop.run});
    CHECK(ids("reviewed") == Ids{reviewed});
    CHECK(ids("corrected") == Ids{corrected});
    CHECK(ids("sent_back") == Ids{back});
    CHECK(ids("void") == Ids{gone});
    CHECK(ids(records::kWantsReview) == Ids{corrected, shop.run});
    CHECK(ids("").size() == 6);
    CHECK(shop.writer->reader().wantingReview().value() == 2);
    CHECK(shop.writer->reader().sealsAbout(open).error().code == "run.not_sealed");
    CHECK(shop.writer->reader().sealsAbout("nowhere").error().code == "run.unknown");
    CHECK(shop.writer->reader().sealsAbout(shop.run)->size() == 1);
    CHECK(shop.row(open).present == "open");
    // Pages go on within what was narrowed.
    records::RunQuery one;
    one.present = records::kWantsReview;
    one.limit = 1;
    const auto first = shop.writer->reader().runs(one, "");
    REQUIRE(first->rows.size() == 1);
    const auto second = shop.writer->reader().runs(one, first->next);
    REQUIRE(second->rows.size() == 1);
    CHECK(second->rows[0].run == shop.run);
    CHECK(second->next.empty());
    // What a list and a count ask is answered by an index, not by a walk through every row.
    CHECK(sqlite(shop.file(), "EXPLAIN QUERY PLAN SELECT count(*) FROM run_rows WHERE present IN ('sealed', "
                              "'corrected')")
              .out.find("USING COVERING INDEX run_rows_by_") != std::string::npos);
    CHECK(sqlite(shop.file(), "EXPLAIN QUERY PLAN SELECT seq FROM seal_rows WHERE subject = 'aa' AND subject <> '' "
                              "ORDER BY seq")
              .out.find("seal_rows_by_subject") != std::string::npos);
}

TEST_CASE("the sheet of a run tells how it came to stand as it does, and its anchor is the logbook's")
{
    SealedShop shop;
    const auto sheet = [&] { return records::sheetOf(shop.writer->reader(), shop.run).value(); };
    const auto tables = [](const report::Report& report) {
        std::vector<std::string> captions;
        for (const report::Section& section : report.sections)
            if (const auto* table = std::get_if<report::Table>(&section))
                captions.push_back(table->caption.source.str());
        return captions;
    };
    const auto has = [&](const report::Report& report, const std::string& caption) {
        const auto all = tables(report);
        return std::find(all.begin(), all.end(), caption) != all.end();
    };
    CHECK_FALSE(has(sheet(), "How this record came to stand as it does"));
    REQUIRE(shop.writer->correct(shop.run, SealedShop::correction(), *shop.signer("p-2")));
    CHECK(has(sheet(), "Corrected after it was sealed"));
    CHECK(has(sheet(), "How this record came to stand as it does"));
    REQUIRE(shop.writer->voidRun(shop.run, "wrong press", *shop.signer("p-1")));
    CHECK(sheet().title.source.starts_with("VOID"));
    CHECK(sheet().anchor == shop.writer->reader().anchor().value());
    CHECK(sheet().draft.empty());
}

TEST_CASE("a review is on disk when it is shown")
{
    SealedShop shop;
    shop.reopen(false, 300);
    const auto before = std::chrono::steady_clock::now();
    REQUIRE(shop.writer->review(shop.run, {true, {}}, *shop.signer("p-1")));
    CHECK(std::chrono::steady_clock::now() - before >= std::chrono::milliseconds(300));
    shop.reopen();
    CHECK(shop.row(shop.run).present == "reviewed");
}
