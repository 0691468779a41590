// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/logbook/export.h"
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
