// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/history/times.h"

#include <algorithm>
#include <numeric>

#include "core/history/times_report.h"
#include "tests/core/history/times_rows.h"
#include "tests/core/report/report_walk.h"

namespace taut::history::test {

namespace {

Times mustTimes(const FakeReader& reader, const records::CourseQuery& query = {}, std::size_t most = 20000)
{
    auto times = timesOf(reader, query, {}, most);
    REQUIRE(times);
    return *std::move(times);
}
/// 400 runs of an hour or so, newest first, of two kinds; of those that `trait` picks, longer.
template <class Trait>
FakeReader shop(std::uint64_t seed, Trait trait)
{
    FakeReader reader;
    reader.perPage = 500;
    Dice dice(seed);
    for (std::uint64_t seq = 400; seq > 0; --seq) {
        Row row;
        row.seq = seq;
        row.kind = seq % 2 ? "full" : "next_roll";
        row.job = "J-" + std::to_string(dice.below(12));
        row.substrate = "s-" + std::to_string(dice.below(5));
        row.press = dice.below(2) ? "north" : "south";
        row.hour = static_cast<int>(dice.below(24));
        const double minutes = (seq % 2 ? 60 : 20) * std::exp(0.25 * dice.normal());
        row.workedMs = static_cast<std::int64_t>(minutes * (trait(row) ? 1.8 : 1) * 60000);
        add(reader, row);
        if (dice.below(4) == 0) add(reader, row, "outside", "set.brake");
    }
    return reader;
}

}  // namespace

TEST_CASE("shifts begin at six, at two and at ten")
{
    CHECK(shiftOf(5) == Shift::Night);
    CHECK(shiftOf(6) == Shift::Early);
    CHECK(shiftOf(13) == Shift::Early);
    CHECK(shiftOf(14) == Shift::Late);
    CHECK(shiftOf(21) == Shift::Late);
    CHECK(shiftOf(22) == Shift::Night);
    CHECK(shiftOf(0) == Shift::Night);
}

TEST_CASE("the stages of a run stay together, whatever the pages")
{
    FakeReader reader;
    for (std::uint64_t seq = 9; seq > 0; --seq)
        for (const char* stage : {"safety", "thread", "set"}) {
            Row row;
            row.seq = seq;
            row.stage = stage;
            add(reader, row);
        }
    for (const std::size_t perPage : {1U, 2U, 4U, 500U}) {
        reader.perPage = perPage;
        const Times times = mustTimes(reader);
        REQUIRE(times.runs.size() == 9);
        CHECK(times.runs.front().seq == 9);
        for (const RunTime& run : times.runs) CHECK(run.stages.size() == 3);
        CHECK_FALSE(times.older);
        const Times four = mustTimes(reader, {}, 4);
        CHECK(four.runs.size() == 4);
        CHECK(four.runs.back().stages.size() == 3);
        CHECK(four.older);
        CHECK_FALSE(mustTimes(reader, {}, 9).older);
    }
}

TEST_CASE("what is done beside the running press and at the standing one make the whole")
{
    // Set-up reduction: internal and external time together are all of it (Shingo, A Revolution in Manufacturing, from
    // memory).
    FakeReader reader;
    Row row;
    row.seq = 1;
    row.stage = "thread";
    row.workedMs = 20 * 60000;
    row.watchedMs = 4 * 60000;
    row.externalMs = 6 * 60000;
    row.awayMs = 9 * 60000;
    add(reader, row);
    row.stage = "set";
    row.workedMs = 15 * 60000;
    row.watchedMs = 0;
    row.externalMs = 3 * 60000;
    row.awayMs = 0;
    add(reader, row);
    const Times times = mustTimes(reader);
    const RunTime& run = times.runs.front();
    CHECK(run.wholeMs() == 39 * 60000);
    CHECK(run.externalMs() == 9 * 60000);
    CHECK(run.awayMs() == 9 * 60000);
    const auto all = quartilesBy(times, Group::Press);
    REQUIRE(all.size() == 3);
    CHECK(all[0].stage.empty());
    double inside = 0, outside = 0;
    for (const StageQuartiles& one : all) {
        if (one.stage.empty()) continue;
        outside += one.seconds.median * one.externalShare;
        inside += one.seconds.median * (1 - one.externalShare);
    }
    CHECK(outside == Approx(9 * 60));
    CHECK(inside + outside == Approx(all[0].seconds.median));
    CHECK(all[0].externalShare == Approx(9.0 / 39));
    CHECK(all[0].awaySeconds == Approx(9 * 60));
}

TEST_CASE("quartiles stand group by group, the whole run first, then the stages that it has")
{
    FakeReader reader;
    for (std::uint64_t seq = 8; seq > 0; --seq) {
        Row row;
        row.seq = seq;
        row.hour = seq % 2 ? 7 : 15;
        for (const char* stage : {"safety", "set"}) {
            if (seq % 2 == 0 && std::string(stage) == "safety") continue;
            row.stage = stage;
            row.workedMs = static_cast<std::int64_t>(seq) * 60000;
            add(reader, row);
        }
    }
    const auto all = quartilesBy(mustTimes(reader), Group::Shift);
    REQUIRE(all.size() == 5);
    CHECK(all[0].group == "early");
    CHECK(all[0].stage.empty());
    CHECK(all[0].seconds.count == 4);
    CHECK(all[0].seconds.median == Approx(8 * 60));  // 1, 3, 5, 7 minutes, twice
    CHECK(all[1].stage == "set");
    CHECK(all[2].stage == "safety");
    CHECK(all[3].group == "late");
    CHECK(all[4].stage == "set");
    CHECK(quartilesBy({}, Group::Job).empty());
}

TEST_CASE("a trait that makes runs slow is found among the slowest tenth")
{
    const FakeReader reader = shop(1, [](const Row& row) { return row.substrate == "s-3"; });
    const auto all = commonToSlowest(mustTimes(reader));
    REQUIRE_FALSE(all.empty());
    CHECK(all.front().group == Group::Substrate);
    CHECK(all.front().value == "s-3");
    CHECK_FALSE(all.front().incident);
    CHECK(all.front().slow.of == 40);
    CHECK(all.front().others.of == 360);
    CHECK(all.front().slow.interval.low > all.front().others.interval.high);
    CHECK(all.size() == 1);
}

TEST_CASE("where nothing makes runs slow nothing is found, in ninety-five of a hundred shops")
{
    int told = 0;
    for (std::uint64_t seed = 100; seed < 160; ++seed)
        told += !commonToSlowest(mustTimes(shop(seed, [](const Row&) { return false; }))).empty();
    CHECK(told <= 3);
}

TEST_CASE("runs of a kind of which none is slow are not the others")
{
    // All of the many are at night, and none of the few: the slowest of the many share nothing with each other alone.
    FakeReader reader;
    reader.perPage = 500;
    for (std::uint64_t seq = 381; seq > 0; --seq) {
        Row row;
        row.seq = seq;
        row.kind = seq <= 300 ? "full" : "few-" + std::to_string(seq % 9);
        row.hour = seq <= 300 ? 23 : 8;
        row.workedMs = static_cast<std::int64_t>(seq) * 60000;
        add(reader, row);
    }
    CHECK(commonToSlowest(mustTimes(reader)).empty());
    // Of few runs altogether none is slow.
    reader.stageRows.erase(reader.stageRows.begin(), reader.stageRows.end() - 9);
    CHECK(commonToSlowest(mustTimes(reader)).empty());
}

TEST_CASE("losses stand by step or by cause, the largest first, the rest last and all of it told")
{
    FakeReader reader;
    const std::pair<const char*, int> causes[] = {{"splice.tape", 31},
                                                  {"set.tension", 22},
                                                  {"guide.offset", 14},
                                                  {"thread.path", 9},
                                                  {"guard", 6},
                                                  {"a", 3},
                                                  {"b", 2},
                                                  {"c", 2},
                                                  {"d", 1}};
    for (std::uint64_t seq = 90; seq > 0; --seq) {
        Row row;
        row.seq = seq;
        add(reader, row);
    }
    for (const auto& [step, times] : causes)
        for (int i = 0; i < times; ++i) {
            Row row;
            row.seq = 90 - static_cast<std::uint64_t>(i);
            add(reader, row, "outside", step);
        }
    std::stable_sort(reader.incidentRows.begin(), reader.incidentRows.end(),
                     [](const auto& a, const auto& b) { return a.seq > b.seq; });
    const auto rows = lossesOf(mustTimes(reader), Loss::Outside, 5);
    REQUIRE(rows.size() == 6);
    CHECK(rows.front().cause.name == "splice.tape");
    CHECK(rows.back().cause.name == "other");
    CHECK(rows.back().cause.amount == 8);
    CHECK(rows.back().cumulative == 1);
    CHECK(rows[1].cumulative == Approx(53.0 / 90));
    CHECK(lossesOf(mustTimes(reader), Loss::Deviations).empty());
}

TEST_CASE("causes are told for what is done again, and a remedy by its words")
{
    FakeReader reader;
    Row row;
    row.seq = 1;
    add(reader, row);
    add(reader, row, "repeated", "", "web_break");
    add(reader, row, "repeated", "", "other");
    add(reader, row, "helped", "set.brake", "2 Loosen the brake");
    const Times times = mustTimes(reader);
    Names names(reader);
    const auto again = lossBars(times, Loss::Repeated, "north", names);
    REQUIRE(again);
    REQUIRE(again->rows.size() == 2);
    CHECK(plain(again->rows[0].name) == "web break");
    CHECK(plain(again->rows[1].name) == "other");
    CHECK(plain(again->rows[1].said) == "1, together 100 %");
    CHECK(plain(lossBars(times, Loss::Remedies, "north", names)->rows[0].name) == "Loosen the brake");
    // The second remedy of one step is not the second of another, and one that nobody knew is said so.
    add(reader, row, "helped", "set.nip", "2 Close the nip");
    add(reader, row, "helped", "set.nip", "-1");
    const auto helped = lossBars(mustTimes(reader), Loss::Remedies, "north", names);
    REQUIRE(helped);
    REQUIRE(helped->rows.size() == 3);
    CHECK(std::any_of(helped->rows.begin(), helped->rows.end(),
                      [](const auto& one) { return plain(one.name) == "not known"; }));
    CHECK(std::all_of(helped->rows.begin(), helped->rows.end(),
                      [](const auto& one) { return !plain(one.name).empty(); }));
    CHECK_FALSE(lossBars(times, Loss::Deviations, "north", names));
}

TEST_CASE("a run at the first go had nothing outside, accepted, corrected or done again")
{
    FakeReader reader;
    const char* had[] = {"", "outside", "deviated", "corrected", "repeated", "not_applicable", "interrupted", "helped"};
    for (std::uint64_t seq = 8; seq > 0; --seq) {
        Row row;
        row.seq = seq;
        add(reader, row);
        if (*had[seq - 1] != '\0') add(reader, row, had[seq - 1], "set.brake");
    }
    const auto rate = firstGoRate(mustTimes(reader));
    REQUIRE(rate);
    CHECK(rate->hits == 4);
    CHECK(rate->of == 8);
    CHECK_FALSE(firstGoRate({}));
}

TEST_CASE("a run that was given up is neither at the first go nor a time of setting up")
{
    FakeReader reader;
    for (std::uint64_t seq = 30; seq > 0; --seq) {
        Row row;
        row.seq = seq;
        // Every third was given up after two minutes, with nothing outside.
        if (seq % 3 == 0) {
            row.state = "abandoned";
            row.workedMs = 2 * 60000;
        }
        add(reader, row);
        if (seq % 10 == 1) add(reader, row, "outside", "set.brake");
    }
    const Times times = mustTimes(reader);
    CHECK(times.runs.size() == 30);
    CHECK(givenUpOf(times) == 10);
    const auto rate = firstGoRate(times);
    REQUIRE(rate);
    CHECK(rate->of == 20);
    CHECK(rate->hits == 18);
    for (const StageQuartiles& one : quartilesBy(times, Group::Press)) {
        CHECK(one.seconds.count == 20);
        CHECK(one.seconds.least == 1800);
    }
    CHECK(lossesOf(times, Loss::Outside).front().cause.amount == 3);
}

TEST_CASE("the web of set-ups is told by group, with how many runs say it")
{
    FakeReader reader;
    for (std::uint64_t seq = 12; seq > 0; --seq) {
        Row row;
        row.seq = seq;
        row.job = seq % 2 ? "J-1" : "J-2";
        row.press = seq > 8 ? "south" : "north";
        if (seq == 12) row.state = "abandoned";
        add(reader, row);
        // What was read before the question was asked: none of the first three.
        if (seq > 3) reader.readingRows.push_back(metres(seq, seq % 2 ? 40 + static_cast<double>(seq) : 100));
    }
    const Times times = mustTimes(reader);
    const auto byJob = webBy(times, Group::Job);
    REQUIRE(byJob.size() == 2);
    CHECK(byJob[0].group == "J-1");
    CHECK(byJob[0].metres.count == 4);
    CHECK(byJob[0].of == 6);
    // 45, 47, 49 and 51 m: quartiles at places 1.25, 2.5 and 3.75 (NIST/SEMATECH e-Handbook 7.2.6.2).
    CHECK(byJob[0].metres.lower == Approx(45.5));
    CHECK(byJob[0].metres.median == Approx(48));
    CHECK(byJob[0].metres.upper == Approx(50.5));
    CHECK(byJob[1].metres.count == 4);
    CHECK(byJob[1].of == 5);
    CHECK(byJob[1].metres.median == Approx(100));
    const auto byPress = webBy(times, Group::Press);
    REQUIRE(byPress.size() == 2);
    CHECK(byPress[1].group == "south");
    CHECK(byPress[1].of == 3);

    Names names(reader);
    const report::Report page = timesReport(times, {}, Group::Job, names, 0);
    const report::Table table = report::test::tableOf(page, "Web used in setting up");
    REQUIRE(table.rows.size() == 2);
    CHECK(report::test::wordsOf(table.rows[0][1]) == "4 of 6");
    CHECK(report::test::wordsOf(table.rows[0][3]) == "48 m");
    CHECK(report::test::everyWord(page).find("said by 8 of 11 runs") != std::string::npos);
    // Where nobody was ever asked there is nothing to tell.
    reader.readingRows.clear();
    CHECK(webBy(mustTimes(reader), Group::Job).empty());
}

TEST_CASE("incidents and metres of older runs than were asked for count for none")
{
    FakeReader reader;
    for (std::uint64_t seq = 30; seq > 0; --seq) {
        Row row;
        row.seq = seq;
        add(reader, row);
        add(reader, row, "outside", "set.brake");
        reader.readingRows.push_back(metres(seq, 40));
    }
    const Times times = mustTimes(reader, {}, 10);
    CHECK(times.incidents.size() == 10);
    CHECK(times.byRun.size() == 10);
    CHECK(times.webM.size() == 10);
    CHECK(firstGoRate(times)->hits == 0);
    CHECK(times.webM.at(30) == 40);
}

TEST_CASE("where it is told to end, only runs of which all was read are told of")
{
    FakeReader reader;
    reader.perPage = 5;
    for (std::uint64_t seq = 30; seq > 0; --seq) {
        Row row;
        row.seq = seq;
        for (const char* stage : {"safety", "set", "run"}) {
            row.stage = stage;
            add(reader, row);
        }
        add(reader, row, "outside", "set.brake");
        reader.readingRows.push_back(metres(seq, 40));
    }
    for (int most = 0; most < 40; ++most) {
        int asked = 0;
        const auto times = timesOf(reader, {}, [&] { return ++asked <= most; });
        REQUIRE(times);
        INFO("told to go on " << most << " times: " << times->runs.size() << " runs");
        CHECK((times->older || times->runs.size() == 30));
        CHECK(times->byRun.size() == times->runs.size());
        CHECK(times->webM.size() == times->runs.size());
        CHECK(times->incidents.size() == times->runs.size());
        for (const RunTime& run : times->runs) CHECK(run.stages.size() == 3);
        if (const auto rate = firstGoRate(*times)) CHECK(rate->hits == 0);
    }
}

TEST_CASE("a store that fails is told, whichever question it failed")
{
    FakeReader reader;
    Row row;
    row.seq = 1;
    add(reader, row);
    for (const char* question : {"stageTimes", "incidents", "readings"}) {
        reader.broken = question;
        CHECK(timesOf(reader, {}).error().code == "store.failed");
    }
}

TEST_CASE("the page of times says what was chosen, and that there is nothing where there is nothing")
{
    FakeReader reader;
    Names names(reader);
    records::CourseQuery query;
    query.press = "north";
    query.sinceMs = kJune;
    const report::Report none = timesReport({}, query, Group::Press, names, 0);
    CHECK(plain(none.subtitle) == "north, from 2026-06-01");
    CHECK(report::test::everyWord(none).find("No sealed run was chosen.") != std::string::npos);
    const FakeReader full = shop(1, [](const Row& r) { return r.substrate == "s-3"; });
    Names of(full);
    const report::Report page = timesReport(mustTimes(full), {}, Group::RunKind, of, 0);
    CHECK(plain(page.subtitle) == "all presses");
    const report::Table slow = report::test::tableOf(page, "What the slowest tenth have in common");
    CHECK(slow.rows.size() == 1);
    CHECK(report::test::wordsOf(slow.rows[0][0]) == "s-3");
    const auto bars = report::test::allOf<report::Bars>(page);
    REQUIRE(bars.size() == 2);
    CHECK(plain(bars[0].rows[0].name) == "full set-up");
    CHECK(bars[0].rows[0].from < *bars[0].rows[0].mark);
    CHECK(*bars[0].rows[0].mark < bars[0].rows[0].to);
}

}  // namespace taut::history::test
