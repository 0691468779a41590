// SPDX-License-Identifier: GPL-3.0-or-later
// What a store is asked of many runs: every list to its end, held against a filter of all rows one by one.
#include <sqlite3.h>

#include <algorithm>
#include <functional>
#include <map>
#include <sstream>

#include "core/logbook/file_reader.h"
#include "tests/core/logbook/lists_fixture.h"

using namespace taut;
using namespace taut::logbook;
using namespace taut::logbook::test;
using records::CourseQuery;
using records::RunQuery;
using records::RunRow;
using records::SeriesQuery;

namespace {

constexpr std::int64_t kHour = 3'600'000;
constexpr std::int64_t kStart = 1'764'000'000'000;

/// Runs of two presses, three jobs, two substrates and two people on many days, some with what a supervisor said of
/// them, one sealed long after it began, and one still open.
struct Varied : Many {
    std::map<std::string, Made> made;
    std::string open;
    Varied()
    {
        // The writer is gone while rows are put; the open run is begun before.
        index.reset();
        db->exec("COMMIT");
        db.reset();
        reopen();
        open = begin().run().id();
        writer.reset();
        db = std::make_unique<SQLite::Database>(file().string(), SQLite::OPEN_READWRITE);
        index = std::make_unique<Index>(*db);
        db->exec("BEGIN");
        for (int i = 0; i < 90; ++i) {
            Made one;
            one.id = "run-" + std::to_string(100 + i);
            one.press = i % 3 == 0 ? "south" : "north";
            one.job = "J-" + std::to_string(1 + i % 4);
            one.substrate = i % 5 == 0 ? "film-50" : "paper-label-80";
            one.person = i % 7 == 0 ? "p-5" : "p-2";
            one.name = i % 7 == 0 ? "Zoë Grün" : "Inka Thorsby";
            one.begunMs = kStart + i * 7 * kHour;
            if (i == 40) one.begunMs = kStart - 400 * kHour;  // was open for weeks
            one.state = i % 6 == 0 ? "abandoned" : "completed";
            one.deviated = i % 8 == 0;
            made[one.id] = one;
            const seal::Seal seal = put(one);
            if (i % 9 == 1) follow(seal, seal::Review{true, {}});
            if (i % 9 == 2) follow(seal, seal::Review{false, "the roll is not named"});
            if (i % 9 == 3) follow(seal, seal::Voiding{"entered twice"});
        }
    }
};

/// Made once: it takes longer than all that is asked of it.
Varied& varied()
{
    static Varied all;
    return all;
}
const records::Reader& readerOf(Varied& shop)
{
    static const std::unique_ptr<records::Reader> kReader = shop.reader();
    return *kReader;
}

bool fits(const RunQuery& query, const RunRow& row, const std::map<std::string, Made>& made)
{
    const auto found = made.find(row.run);
    const std::string person = found == made.end() ? "p-2" : found->second.person;
    const bool wanting = row.present == "sealed" || row.present == "corrected";
    return (query.press.empty() || row.press == query.press) && (query.job.empty() || row.job == query.job) &&
           (query.substrate.empty() || row.substrate == query.substrate) &&
           (query.state.empty() || row.state == query.state) && (query.person.empty() || person == query.person) &&
           (!query.withDeviations || row.deviations > 0) && (!query.sinceMs || row.begunMs >= *query.sinceMs) &&
           (!query.untilMs || row.begunMs < *query.untilMs) &&
           (query.present.empty() || (query.present == records::kWantsReview ? wanting : row.present == query.present));
}

/// Each of the filters by itself and with each other one, and some of three.
std::vector<RunQuery> questions()
{
    std::vector<std::function<void(RunQuery&)>> narrow{
        [](RunQuery& q) { q.press = "south"; },
        [](RunQuery& q) { q.job = "J-2"; },
        [](RunQuery& q) { q.substrate = "film-50"; },
        [](RunQuery& q) { q.person = "p-5"; },
        [](RunQuery& q) { q.state = "abandoned"; },
        [](RunQuery& q) { q.state = "open"; },
        [](RunQuery& q) { q.withDeviations = true; },
        [](RunQuery& q) { q.present = records::kWantsReview; },
        [](RunQuery& q) { q.present = "reviewed"; },
        [](RunQuery& q) { q.present = "void"; },
        [](RunQuery& q) { q.sinceMs = kStart + 200 * kHour; },
        [](RunQuery& q) { q.untilMs = kStart + 300 * kHour; },
        [](RunQuery& q) { q.text = "run-1"; },
    };
    std::vector<RunQuery> all(1);
    for (std::size_t a = 0; a < narrow.size(); ++a)
        for (std::size_t b = a; b < narrow.size(); ++b) {
            RunQuery query;
            narrow[a](query);
            narrow[b](query);
            all.push_back(query);
            narrow[(a + b) % narrow.size()](query);
            all.push_back(query);
        }
    return all;
}

/// What the engine is asked on this connection while it lasts, with what was bound.
struct Asked {
    SQLite::Database* db;
    std::vector<std::string> sql;
    explicit Asked(SQLite::Database& on) : db(&on)
    {
        sqlite3_trace_v2(db->getHandle(), SQLITE_TRACE_STMT, &Asked::heard, this);
    }
    ~Asked() { sqlite3_trace_v2(db->getHandle(), 0, nullptr, nullptr); }
    Asked(const Asked&) = delete;
    Asked& operator=(const Asked&) = delete;
    static int heard(unsigned, void* self, void* statement, void*)
    {
        char* text = sqlite3_expanded_sql(static_cast<sqlite3_stmt*>(statement));
        if (text != nullptr) static_cast<Asked*>(self)->sql.emplace_back(text);
        sqlite3_free(text);
        return 0;
    }
};

/// How the engine goes about a question: every line of its plan.
std::string planOf(SQLite::Database& db, const std::string& sql)
{
    SQLite::Statement plan(db, "EXPLAIN QUERY PLAN " + sql);
    std::string lines;
    while (plan.executeStep()) lines += plan.getColumn(3).getString() + "\n";
    return lines;
}

}  // namespace

TEST_CASE("every list of runs goes to its end, narrowed by whatever is asked, and a count says how many there are")
{
    Varied& shop = varied();
    const records::Reader* reader = &readerOf(shop);
    RunQuery whole;
    whole.limit = 7;
    const std::vector<RunRow> rows = allRuns(*reader, whole);
    REQUIRE(rows.size() == 93);
    CHECK(rows.front().run == shop.open);
    CHECK(std::is_sorted(rows.begin() + 1, rows.end(), [](const auto& a, const auto& b) { return a.seq > b.seq; }));
    for (RunQuery query : questions()) {
        RunQuery compared = query;
        compared.text.clear();
        std::vector<std::string> expected;
        for (const RunRow& row : rows)
            if (fits(compared, row, shop.made) && (query.text.empty() || row.run.starts_with("run-1")))
                expected.push_back(row.run);
        INFO(query.press << " " << query.job << " " << query.substrate << " " << query.person << " " << query.state
                         << " " << query.present << " " << query.text << " " << query.withDeviations << " "
                         << query.sinceMs.value_or(0) << " " << query.untilMs.value_or(0));
        for (const std::size_t limit : {1U, 4U, 500U}) {
            query.limit = limit;
            CHECK(idsOf(allRuns(*reader, query)) == expected);
        }
        CHECK(reader->count(query, 1000).value() == static_cast<std::int64_t>(expected.size()));
        CHECK(reader->count(query, 3).value() == std::min<std::int64_t>(3, static_cast<std::int64_t>(expected.size())));
    }
    CHECK(reader->wantingReview().value() == reader
                                                 ->count(
                                                     [] {
                                                         RunQuery query;
                                                         query.present = records::kWantsReview;
                                                         return query;
                                                     }(),
                                                     1000)
                                                 .value());
}

TEST_CASE("no list walks through a table or sorts, whatever it is narrowed by")
{
    Varied& shop = varied();
    readerOf(shop);
    auto own = std::make_unique<SQLite::Database>(shop.file().string(), SQLite::OPEN_READONLY);
    SQLite::Database& db = *own;
    const auto reader = readerOn(std::move(own), shop.file());
    std::vector<std::string> sql;
    {
        Asked asked(db);
        for (RunQuery query : questions()) {
            query.limit = 5;
            const auto page = reader->runs(query, "");
            REQUIRE(page);
            REQUIRE(reader->runs(query, page->next));
            REQUIRE(reader->count(query, 10));
        }
        for (const char* job : {"", "J-2"})
            for (const char* press : {"", "south"})
                for (const char* substrate : {"", "film-50"})
                    for (const std::optional<std::int64_t>& since : {std::optional<std::int64_t>(), {kStart}}) {
                        CourseQuery query{press, job, substrate, since, {}, 5};
                        const auto stages = reader->stageTimes(query, "");
                        REQUIRE(reader->stageTimes(query, stages->next));
                        const auto incidents = reader->incidents(query, "");
                        REQUIRE(reader->incidents(query, incidents->next));
                        SeriesQuery series{press, "lift.pressure", 5, substrate, job, since, {}};
                        const auto readings = reader->readings(series, "");
                        REQUIRE(reader->readings(series, readings->next));
                    }
        REQUIRE(reader->wantingReview());
        REQUIRE(reader->seriesNames());
        sql = asked.sql;
    }
    std::sort(sql.begin(), sql.end());
    sql.erase(std::unique(sql.begin(), sql.end()), sql.end());
    int asked = 0;
    for (const std::string& one : sql) {
        if (!one.starts_with("SELECT") || one.find("_rows") == std::string::npos) continue;
        ++asked;
        const std::string plan = planOf(db, one);
        INFO(one << "\n" << plan);
        CHECK(plan.find("TEMP B-TREE") == std::string::npos);
        std::istringstream lines(plan);
        for (std::string line; std::getline(lines, line);) {
            if (line.find("SCAN") == std::string::npos) continue;
            // A search goes through its own index; what has been put in an order is gone through in it; and of series,
            // presses times targets, there are few.
            const bool ordered = line.find("VIRTUAL TABLE INDEX") != std::string::npos ||
                                 line.find("SCAN series_rows") != std::string::npos ||
                                 line.find("USING COVERING INDEX run_rows_by_wanting") != std::string::npos ||
                                 line.find("USING INDEX run_rows_by_open") != std::string::npos ||
                                 line.find("USING COVERING INDEX run_rows_by_open") != std::string::npos ||
                                 line.find("(subquery") != std::string::npos;
            CHECK(ordered);
        }
    }
    CHECK(asked > 200);
}

TEST_CASE("times of stages and incidents come run by run, newest first, without void runs, and page to their end")
{
    Varied& shop = varied();
    const records::Reader* reader = &readerOf(shop);
    const std::vector<RunRow> rows = allRuns(*reader, {});
    const auto query = GENERATE(CourseQuery{"", "", "", {}, {}, 3}, CourseQuery{"north", "", "", {}, {}, 4},
                                CourseQuery{"", "J-2", "", {}, {}, 1}, CourseQuery{"", "", "film-50", {}, {}, 5},
                                CourseQuery{"south", "J-1", "film-50", {}, {}, 2},
                                CourseQuery{"", "", "", kStart + 100 * kHour, kStart + 200 * kHour, 3},
                                CourseQuery{"north", "", "", kStart - 500 * kHour, kStart - 300 * kHour, 3});
    std::vector<std::string> expected;
    for (const RunRow& row : rows) {
        RunQuery same{query.press, query.job, {}, {}, query.sinceMs, query.untilMs};
        same.substrate = query.substrate;
        if (row.seq > 0 && row.present != "void" && fits(same, row, {})) expected.push_back(row.run);
    }
    REQUIRE_FALSE(expected.empty());
    std::vector<std::string> stages, incidents;
    for (const auto& one :
         allOf<records::StageTime>([&](const auto& after) { return reader->stageTimes(query, after); })) {
        CHECK(one.stage == (stages.empty() || stages.back() != one.run ? "safety" : "set"));
        CHECK(one.workedMs > 0);
        CHECK(one.kind == "full");
        CHECK(one.hour == static_cast<int>((one.begunMs / kHour + 1) % 24));
        if (stages.empty() || stages.back() != one.run) stages.push_back(one.run);
    }
    CHECK(stages == expected);
    for (const auto& one :
         allOf<records::Incident>([&](const auto& after) { return reader->incidents(query, after); })) {
        CHECK(one.what == (incidents.size() % 2 == 0 ? "corrected" : "outside"));
        CHECK(one.detail == (incidents.size() % 2 == 0 ? "read the wrong gauge" : ""));
        CHECK(one.step == kUnwindStep);
        CHECK(one.target == "tension.unwind.setting");
        CHECK(one.n > 1);
        incidents.push_back(one.run);
    }
    std::vector<std::string> twice;
    for (const std::string& run : expected)
        if (run != shop.run) twice.insert(twice.end(), 2, run);
    CHECK(incidents == twice);
    CHECK(reader->stageTimes(query, "nonsense").error().code == "records.bad_page");
    CHECK(reader->incidents(query, "12/outside").error().code == "records.bad_page");
}

TEST_CASE("a series is narrowed by press, job, substrate and time, and says what was aimed at and with which profile")
{
    Varied& shop = varied();
    const records::Reader* reader = &readerOf(shop);
    const std::vector<RunRow> rows = allRuns(*reader, {});
    const auto query =
        GENERATE(SeriesQuery{"", "lift.pressure", 4}, SeriesQuery{"north", "lift.pressure", 3},
                 SeriesQuery{"", "lift.pressure", 2, "film-50"}, SeriesQuery{"south", "lift.pressure", 5, "", "J-2"},
                 SeriesQuery{"", "lift.pressure", 4, "", "", kStart + 30 * kHour, kStart + 90 * kHour},
                 SeriesQuery{"north", "lift.pressure", 1, "paper-label-80", "J-3", kStart, {}});
    std::vector<std::string> expected, read;
    for (const RunRow& row : rows) {
        RunQuery same{query.press, query.job, {}, {}, query.sinceMs, query.untilMs};
        same.substrate = query.substrate;
        if (row.seq > 0 && row.present != "void" && fits(same, row, {})) expected.push_back(row.run);
    }
    REQUIRE_FALSE(expected.empty());
    for (const auto& one : allOf<records::Reading>([&](const auto& after) { return reader->readings(query, after); })) {
        read.push_back(one.run);
        CHECK(one.pressSha == shop.sources.press.sha256);
        REQUIRE(one.aimed);
        CHECK(*one.aimed > 0);
        CHECK(one.first == one.verdict);
        CHECK(one.roll == "R0041");
        CHECK(one.unit == "Pa");
    }
    CHECK(read == expected);
}

TEST_CASE("what can be asked as a series is counted as it comes, and what is void is in none")
{
    Varied& shop = varied();
    const records::Reader* reader = &readerOf(shop);
    const auto names = reader->seriesNames();
    REQUIRE(names);
    REQUIRE_FALSE(names->empty());
    std::string before;
    for (const records::SeriesName& name : *names) {
        INFO(name.press << " " << name.target);
        CHECK(before < name.press + " " + name.target);
        before = name.press + " " + name.target;
        const auto all = allOf<records::Reading>([&](const auto& after) {
            return reader->readings({name.press, name.target}, after);
        });
        CHECK(static_cast<std::int64_t>(all.size()) == name.readings);
        REQUIRE_FALSE(all.empty());
        CHECK(all.front().unit == name.unit);
    }
}

TEST_CASE("the times of a run say whether it was finished or given up")
{
    SealedShop shop;
    OpenRun open = shop.begin();
    const people::Actor inka = shop.actor("p-2");
    while (open.run().next() != run::StepId{kUnwindStep}) REQUIRE(answerNext(open, inka));
    must(open, run::Abandon{"the order was cancelled"}, inka);
    const std::string given = open.run().id();
    REQUIRE(open.seal(*shop.signer("p-2")));
    const auto page = shop.writer->reader().stageTimes({}, "");
    REQUIRE(page);
    REQUIRE_FALSE(page->rows.empty());
    std::size_t rows = 0;
    for (const records::StageTime& row : page->rows) {
        CHECK(row.state == (row.run == given ? "abandoned" : "completed"));
        if (row.run == given) ++rows;
    }
    CHECK(rows > 0);
}

TEST_CASE("a run's row says its kind, its job's title and customer, what was outside, also while it is open")
{
    SealedShop shop;
    OpenRun open = shop.begin();
    const people::Actor inka = shop.actor("p-2");
    while (open.run().next() != run::StepId{kUnwindStep}) REQUIRE(answerNext(open, inka));
    must(open, run::Answer{{kUnwindStep}, "5.9 bar", {}}, inka);
    const RunRow row = shop.row(open.run().id());
    CHECK(row.kind == "full");
    CHECK(row.title == "Quince jelly, front");
    CHECK(row.customer == "PL-31-4");
    CHECK(row.outside == 1);
    CHECK_FALSE(row.wasteM);
    CHECK(shop.row(shop.run).title == row.title);
    CHECK(shop.row(shop.run).customer == row.customer);
    CHECK(shop.row(shop.run).kind == "full");
}
