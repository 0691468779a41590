// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/logbook/logbook_fixture.h"

using namespace taut;
using namespace taut::logbook;
using namespace taut::logbook::test;

namespace {

/// Two people and six editions: eight seals.
struct Sealed : Shop {
    seal::Anchor anchor;
    Sealed()
    {
        enrol();
        const people::Actor matteo = actor("p-1");
        for (int i = 1; i <= 6; ++i)
            REQUIRE(writer->keepDefinition("press", "north", "a = " + std::to_string(i) + "\n", matteo));
        anchor = writer->reader().anchor().value();
        writer.reset();
    }
};

}  // namespace

TEST_CASE("verify names the first thing wrong for each way to tamper")
{
    struct Case {
        const char* name;
        const char* sql;
        const char* code;
        const char* subject;
    };
    const std::vector<Case> cases{
        {"a byte of a document",
         "UPDATE seal_rows SET document = CAST(replace(CAST(document AS TEXT), 'a = 3', 'a = 8') AS BLOB) "
         "WHERE seq = 5",
         "chain.broken", "seal 5"},
        {"a link", "UPDATE seal_rows SET link = zeroblob(32) WHERE seq = 5", "chain.broken", "seal 5"},
        {"a previous link", "UPDATE seal_rows SET previous_link = zeroblob(32) WHERE seq = 5", "chain.previous",
         "seal 5"},
        {"a row deleted", "DELETE FROM seal_rows WHERE seq = 5", "chain.gap", "seal 5"},
        {"a row deleted and the rest renumbered",
         "DELETE FROM seal_rows WHERE seq = 5; UPDATE seal_rows SET seq = seq - 1 WHERE seq > 5", "chain.previous",
         "seal 5"},
        {"two rows exchanged",
         "UPDATE seal_rows SET seq = 99 WHERE seq = 5; UPDATE seal_rows SET seq = 5 WHERE seq = 6; "
         "UPDATE seal_rows SET seq = 6 WHERE seq = 99",
         "chain.previous", "seal 5"},
        {"a row appended with a wrong previous link",
         "INSERT INTO seal_rows SELECT 9, kind, id, subject, sealed_at, person, document, zeroblob(32), "
         "randomblob(32) FROM seal_rows WHERE seq = 3",
         "chain.previous", "seal 9"},
        {"a row put before the first",
         "INSERT INTO seal_rows SELECT 0, kind, id, subject, sealed_at, person, document, zeroblob(32), "
         "randomblob(32) FROM seal_rows WHERE seq = 3",
         "chain.gap", "seal 1"},
        {"the person of a row", "UPDATE seal_rows SET person = 'p-2' WHERE seq = 5", "chain.head", "seal 5"},
        {"the time of a row", "UPDATE seal_rows SET sealed_at = sealed_at - 1 WHERE seq = 5", "chain.head", "seal 5"},
        {"the kind of a row", "UPDATE seal_rows SET kind = 'person' WHERE seq = 5", "chain.head", "seal 5"},
        {"the kind of a row made a word of no kind", "UPDATE seal_rows SET kind = 'nonsense' WHERE seq = 5",
         "chain.head", "seal 5"},
        {"the tail cut off", "DELETE FROM definition_rows WHERE seq > 6; DELETE FROM seal_rows WHERE seq > 6",
         "anchor.missing", "seal 7"},
        {"everything deleted",
         "DELETE FROM definition_rows; DELETE FROM secret_rows; DELETE FROM signature_rows; DELETE FROM person_rows; "
         "DELETE FROM seal_rows",
         "anchor.missing", "seal 1"},
    };
    Sealed shop;
    const seal::PartialAnchor typed{shop.anchor.count, hex(shop.anchor.link).substr(0, 32)};
    REQUIRE(verify(shop.file(), {typed})->findings.empty());
    for (const Case& one : cases) {
        INFO(one.name);
        const fs::path copy = shop.folder / "copy.logbook";
        fs::copy_file(shop.file(), copy, fs::copy_options::overwrite_existing);
        tamper(copy, one.sql);
        const auto verified = verify(copy, {typed});
        REQUIRE(verified);
        REQUIRE_FALSE(verified->findings.empty());
        CHECK(verified->findings.front().code == one.code);
        CHECK(verified->findings.front().subject == one.subject);
        // The guards were put back, so only what was done to the rows can tell.
        for (const Finding& finding : verified->findings) CHECK(finding.code != "logbook.layout_changed");
    }
}

TEST_CASE("one byte changed with a hex editor in a document is found at its seal")
{
    Sealed shop;
    std::string bytes = readFile(shop.file()).value();
    const std::size_t at = bytes.find("a = 4");
    REQUIRE(at != std::string::npos);
    bytes[at + 4] = '9';
    REQUIRE(writeFile(shop.file(), bytes));
    CHECK(sqlite(shop.file(), "PRAGMA integrity_check").out == "ok");
    const auto verified = verify(shop.file(), {});
    REQUIRE(verified);
    REQUIRE(verified->findings.size() == 1);
    CHECK(verified->findings[0].code == "chain.broken");
    CHECK(verified->findings[0].subject == "seal 6");
}

TEST_CASE("anchors are judged each for itself and a missing guard is told")
{
    Sealed shop;
    const std::string link = hex(shop.anchor.link);
    std::string other = link;
    other[3] = other[3] == 'a' ? 'b' : 'a';
    auto verified = verify(shop.file(), {{8, link}, {8, other}, {9, link}, {0, std::string(32, '0')}});
    REQUIRE(verified);
    CHECK(verified->end == shop.anchor);
    CHECK(verified->anchors.at(0).holds);
    CHECK_FALSE(verified->anchors.at(1).holds);
    CHECK_FALSE(verified->anchors.at(2).holds);
    CHECK(verified->anchors.at(3).holds);
    REQUIRE(verified->findings.size() == 2);
    CHECK(verified->findings[0].code == "anchor.differs");
    CHECK(verified->findings[1].code == "anchor.missing");
    REQUIRE(sqlite(shop.file(), "DROP TRIGGER seal_rows_no_delete").code == 0);
    verified = verify(shop.file(), {});
    REQUIRE(verified->findings.size() == 1);
    CHECK(verified->findings[0].code == "logbook.layout_changed");
    CHECK(verified->findings[0].subject == "trigger seal_rows_no_delete");
}
