// SPDX-License-Identifier: GPL-3.0-or-later
// Runs are found by the beginnings of the words in them, open ones too; nothing that is typed is an operator.
#include <algorithm>

#include "tests/core/logbook/lists_fixture.h"

using namespace taut;
using namespace taut::logbook;
using namespace taut::logbook::test;

namespace {

using Ids = std::vector<std::string>;

Ids found(const records::Reader& reader, const std::string& text)
{
    records::RunQuery query;
    query.text = text;
    const auto page = reader.runs(query, "");
    if (!page) FAIL(text << ": " << page.error().text.source);
    CHECK(reader.count(query, 100).value() == static_cast<std::int64_t>(page->rows.size()));
    Ids ids = idsOf(page->rows);
    std::sort(ids.begin(), ids.end());
    return ids;
}

}  // namespace

TEST_CASE("a run is found by the beginning of any word of its job, title, customer, substrate, roll, name or remarks")
{
    Many shop;
    Made one;
    one.id = "north-2026-11-27-01";
    one.roll = "R-88_7";
    one.name = "Zoë Grün";
    one.remarks = "The dancer's arm \"sticks\" AND squeaks NOT every time; rewind: 3*4";
    shop.put(one);
    Made other;
    other.id = "south-2026-11-28-01";
    other.press = "south";
    other.job = "J-77";
    other.substrate = "film-50";
    shop.put(other);
    const auto reader = shop.reader();
    const Ids first{one.id}, second{other.id}, none;
    Ids every{one.id, other.id, shop.run, shop.second.id};
    std::sort(every.begin(), every.end());

    CHECK(found(*reader, "") == every);
    CHECK(found(*reader, "  \t ") == every);
    // The ids, whole, in part, and with signs in them.
    CHECK(found(*reader, "north-2026-11") == first);
    CHECK(found(*reader, "north-2026-11-27-01") == first);
    CHECK(found(*reader, "2026-11") == Ids{one.id, other.id});
    CHECK(found(*reader, "11-2026") == none);
    CHECK(found(*reader, "J-7") == second);
    CHECK(found(*reader, "r-88_7") == first);
    CHECK(found(*reader, "film") == second);
    CHECK(found(*reader, "ilm") == none);
    // The job's title and customer reference, as its edition says them.
    CHECK(found(*reader, "quin jel") == every);
    CHECK(found(*reader, "PL-31-4") == every);
    // With and without what stands over a letter, and in any case.
    CHECK(found(*reader, "zoe") == first);
    CHECK(found(*reader, "ZOË gru") == first);
    CHECK(found(*reader, "grün") == first);
    // Every word has to be there, in whatever order and wherever.
    CHECK(found(*reader, "squeaks film") == none);
    CHECK(found(*reader, "squeaks north zoe") == first);
    // Signs and words that other searches obey mean nothing here.
    CHECK(found(*reader, "AND") == first);
    CHECK(found(*reader, "squeaks AND sticks") == first);
    CHECK(found(*reader, "squeaks OR film") == none);
    CHECK(found(*reader, "NOT film") == none);
    CHECK(found(*reader, "\"sticks\"") == first);
    CHECK(found(*reader, "sti\"") == first);
    CHECK(found(*reader, "(squeaks") == first);
    CHECK(found(*reader, "rewind: 3*4") == first);
    CHECK(found(*reader, "remarks:squeaks") == none);
    CHECK(found(*reader, "-film") == second);
    CHECK(found(*reader, "^dancer") == first);
    CHECK(found(*reader, "dancer's") == first);
    CHECK(found(*reader, "%") == none);
    CHECK(found(*reader, "\"") == none);
    CHECK(found(*reader, "* ( )") == none);
    CHECK(found(*reader, "squeaks *") == first);
    CHECK(found(*reader, "NEAR(squeaks film)") == none);
    CHECK(found(*reader, "'; DROP TABLE word_rows") == none);
    CHECK(found(*reader, std::string("squ\0eaks", 8)) == none);
    CHECK(found(*reader, std::string(100'000, '"')) == none);
    std::string many;
    for (int i = 0; i < 5000; ++i) many += "squeaks ";
    CHECK(found(*reader, many) == first);
}

TEST_CASE("an open run is found by its words as they change, and once when it is sealed")
{
    SealedShop shop;
    const seal::Seal other = shop.abandonRun();
    OpenRun open = shop.begin();
    const people::Actor inka = shop.actor("p-2");
    const records::Reader& reader = shop.writer->reader();
    const Ids it{open.run().id()};
    CHECK(found(reader, open.run().id()) == it);
    CHECK(found(reader, "thorsby R0041").size() == 3);
    CHECK(found(reader, "creases") == Ids{});
    must(open, run::Note{{}, "The web creases before the die"}, inka);
    CHECK(found(reader, "creases") == it);
    must(open, run::ChangeRoll{run::mini::otherRoll("R0999", "420 mm"), {}}, inka);
    CHECK(found(reader, "r0999") == it);
    CHECK(found(reader, "r0041 creases") == it);
    // Pages go on from open to sealed runs.
    records::RunQuery one;
    one.text = "quin";
    one.limit = 1;
    CHECK(idsOf(allRuns(reader, one)) == Ids{open.run().id(), other.id, shop.run});
    must(open, run::Abandon{"the order was cancelled"}, inka);
    REQUIRE(open.seal(*shop.signer("p-2")));
    CHECK(found(reader, "creases r0041 r0999") == it);
    shop.writer.reset();
    const auto verified = verify(shop.file(), {}, Depth::Deep);
    REQUIRE(verified);
    for (const Finding& finding : verified->findings) FAIL_CHECK(finding.code << " " << finding.subject);
}

TEST_CASE("verify --deep finds what is changed, added or taken away in each table that answers for courses and words")
{
    SealedShop shop;
    sealCorrected(shop);
    OpenRun open = shop.begin();
    shop.writer.reset();
    CHECK(verify(shop.file(), {}, Depth::Deep)->findings.empty());
    struct Case {
        const char* sql;
        const char* subject;
    };
    const auto one = GENERATE(
        Case{"UPDATE run_rows SET kind = 'restart' WHERE seq > 0", "run_rows"},
        Case{"UPDATE run_rows SET press_sha = 'ab' WHERE seq > 0", "run_rows"},
        Case{"UPDATE run_rows SET title = 'Plum' WHERE seq > 0", "run_rows"},
        Case{"UPDATE run_rows SET customer = '' WHERE seq > 0", "run_rows"},
        Case{"UPDATE run_rows SET outside = outside + 1 WHERE seq > 0", "run_rows"},
        Case{"UPDATE run_rows SET hour = 5 WHERE seq > 0", "run_rows"},
        Case{"UPDATE run_rows SET waste_m = 1.5 WHERE seq > 0", "run_rows"},
        Case{"UPDATE reading_rows SET aimed = aimed + 1", "reading_rows"},
        Case{"UPDATE reading_rows SET first_verdict = 'outside'", "reading_rows"},
        Case{"UPDATE series_rows SET readings = 7", "series_rows"},
        Case{"INSERT INTO series_rows VALUES ('north', 'a.ghost', 'm', 1)", "series_rows"},
        Case{"DELETE FROM series_rows", "series_rows"}, Case{"UPDATE day_rows SET last = 99", "day_rows"},
        Case{"INSERT INTO day_rows VALUES (1, 1, 1)", "day_rows"}, Case{"DELETE FROM day_rows", "day_rows"},
        Case{"UPDATE stage_rows SET worked = 1", "stage_rows"},
        Case{"INSERT INTO stage_rows SELECT seq, 9, 'ghost', 1, 0, 0, 0 FROM stage_rows LIMIT 1", "stage_rows"},
        Case{"DELETE FROM stage_rows WHERE place = 1", "stage_rows"},
        Case{"UPDATE incident_rows SET detail = 'nothing'", "incident_rows"},
        Case{"INSERT INTO incident_rows SELECT max(seq), 99, 'helped', '', '', '', 0 FROM seal_rows", "incident_rows"},
        Case{"DELETE FROM incident_rows", "incident_rows"},
        Case{"UPDATE word_rows SET title = 'Plum' WHERE row > 0", "word_rows"},
        Case{"INSERT INTO word_rows SELECT 5, run, job, title, customer, substrate, rolls, operator, remarks FROM "
             "word_rows LIMIT 1",
             "word_rows"},
        Case{"DELETE FROM word_rows WHERE row > 0", "word_rows"},
        // The search itself: told to find another word, or none.
        Case{"INSERT INTO word_search (rowid, run, job, title, customer, substrate, rolls, operator, remarks) VALUES "
             "(77, 'ghost', '', '', '', '', '', '', '')",
             "word_search"},
        Case{"INSERT INTO word_search (word_search) VALUES ('delete-all')", "word_search"},
        Case{"UPDATE word_rows SET rolls = 'R1' WHERE row < 0", "word_search"});
    INFO(one.sql);
    const fs::path copy = shop.copy();
    tamper(copy, one.sql);
    CHECK(verify(copy, {})->findings.empty());  // the seals themselves are in order
    const auto deep = verify(copy, {}, Depth::Deep);
    REQUIRE(deep);
    REQUIRE_FALSE(deep->findings.empty());
    CHECK(deep->findings.front().code == "index.differs");
    CHECK(deep->findings.front().subject.starts_with(one.subject));
}
