// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/logbook/export.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <atomic>
#include <thread>

#include "core/records/sheet.h"
#include "tests/core/logbook/keep_fixture.h"

using namespace taut;
using namespace taut::logbook;
using namespace taut::logbook::test;

namespace {

/// As a later version might lay a logbook out: other tables behind the same two views, and more in them.
constexpr const char* kLater = "PRAGMA user_version = 99;\n"
                               "CREATE TABLE later_rows (n INTEGER PRIMARY KEY, body BLOB, rest TEXT);\n"
                               "ALTER TABLE run_rows RENAME TO walks;\n"
                               "ALTER TABLE person_rows RENAME COLUMN name TO called;\n"
                               "ALTER TABLE reading_rows ADD COLUMN mood TEXT;";

struct Later : Keeping {
    std::string run;
    seal::Anchor sheet;
    Later()
    {
        sealRun();
        run = sealRun();
        sheet = end();
        writer.reset();
        const Said done = sqlite(file(), kLater);
        INFO(done.out);
        REQUIRE(done.code == 0);
    }
};

}  // namespace

TEST_CASE("a logbook of a newer layout is read through its views, with a note, and never written in")
{
    Later shop;
    const std::string before = readFile(shop.file()).value();
    Findings notes;
    const auto reader = openReader(shop.file(), false, &notes);
    if (!reader) FAIL(sentence(reader.error()));
    REQUIRE(notes.size() == 1);
    CHECK(notes.front().code == "logbook.newer_schema");
    CHECK(notes.front().severity == Severity::Note);
    CHECK(sentence(notes.front()).find("newer version") != std::string::npos);
    CHECK((*reader)->anchor().value() == shop.sheet);
    CHECK((*reader)->runs({}, "")->rows.size() == 2);
    CHECK((*reader)->people()->size() == 2);
    CHECK((*reader)->definitions("press")->size() == 1);
    CHECK(records::sheetOf(**reader, shop.run));
    // What the refusal says can be had, in every form.
    Findings said;
    const auto exported = envelopeOf(shop.file(), shop.run, &said);
    if (!exported) FAIL(sentence(exported.error()));
    CHECK(said == notes);
    CHECK(exported->seals.back().seal.link == shop.sheet.link);
    CHECK(seal::checkEnvelope(*exported, {{shop.sheet.count, hex(shop.sheet.link)}}).findings.empty());
    const auto refused = Writer::open(shop.file(), shop.clock, shop.ids, {false, "an older program", 0});
    REQUIRE_FALSE(refused);
    CHECK(refused.error().code == "logbook.newer_schema");
    CHECK(sentence(refused.error()).find("can be read") != std::string::npos);
    CHECK(readFile(shop.file()).value() == before);
}

TEST_CASE("a newer logbook whose views are others, or whose chain is not whole, is refused as before")
{
    Later shop;
    const fs::path copy = shop.folder / "copy.logbook";
    for (const char* sql : {"DROP VIEW seals", "DROP VIEW signatures",
                            "DROP VIEW seals; CREATE VIEW seals AS SELECT seq, document FROM seal_rows",
                            "DROP TRIGGER seal_rows_no_delete; PRAGMA foreign_keys = OFF; DELETE FROM seal_rows WHERE "
                            "seq = 4"}) {
        INFO(sql);
        fs::remove(copy);
        fs::copy_file(shop.file(), copy);
        const Said done = sqlite(copy, sql);
        INFO(done.out);
        REQUIRE(done.code == 0);
        Findings notes;
        const auto refused = openReader(copy, false, &notes);
        REQUIRE_FALSE(refused);
        CHECK(refused.error().code == "logbook.newer_schema");
        CHECK(refused.error().severity == Severity::Stop);
        CHECK(notes.empty());
    }
}

TEST_CASE("whoever writes in a newer logbook does not wait until it has been read, and what they seal is read too")
{
    Later shop;
    const std::string last = std::to_string(shop.sheet.count);
    // Each row of the view takes its time, as a logbook of years does; the newer program writes meanwhile.
    const Said many = sqlite(
        shop.file(),
        "DROP VIEW seals; CREATE TABLE more_rows (seq, kind, id, subject, sealed_at, person, document, previous_link, "
        "link); CREATE VIEW seals AS SELECT * FROM more_rows; CREATE TABLE written (n)");
    INFO(many.out);
    REQUIRE(many.code == 0);
    std::string rows;
    Digest before{};
    for (int i = 1; i <= 2000; ++i) {
        const std::string document = "{\"format\":1,\"kind\":\"later\",\"n\":" + std::to_string(i) + "," +
                                     "\"rest\":\"" + std::string(500, 'x') + "\"}";
        const Digest link = seal::linkAfter(before, document);
        rows += "INSERT INTO more_rows VALUES (" + std::to_string(i) +
                ", 'later', 'x', '', '2025-11-25T06:41:03.120Z', "
                "'p-1', '" +
                document + "', '" + hex(before) + "', '" + hex(link) + "');\n";
        before = link;
    }
    const Said filled = sqlite(shop.file(), "BEGIN;\n" + rows + "COMMIT;");
    INFO(filled.out);
    REQUIRE(filled.code == 0);
    std::atomic<bool> ended = false;
    std::atomic<int> written = 0;
    std::thread newer([&] {
        SQLite::Database db(shop.file().string(), SQLite::OPEN_READWRITE, 1);
        for (; !ended; std::this_thread::sleep_for(std::chrono::milliseconds(2))) {
            try {
                db.exec("INSERT INTO written VALUES (1)");
                ++written;
            } catch (const SQLite::Exception&) {
                continue;  // the next try comes at once
            }
        }
    });
    while (written == 0) std::this_thread::yield();
    const int sofar = written;
    const auto reader = openReader(shop.file());
    const int meanwhile = written - sofar;
    ended = true;
    newer.join();
    if (!reader) FAIL(sentence(reader.error()));
    CHECK((*reader)->anchor()->count == 2000);
    CHECK(meanwhile > 3);
}
