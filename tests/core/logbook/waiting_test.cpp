// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include "core/history/waiting.h"
#include "core/records/checked.h"
#include "core/records/listed.h"
#include "tests/core/logbook/after_fixture.h"

using namespace taut;
using namespace taut::logbook;
using namespace taut::logbook::test;

namespace {

std::string codeOf(const Result<Done>& result) { return result ? std::string() : result.error().code; }

}  // namespace

TEST_CASE("a run waits for its review, then for its correction, then no longer")
{
    SealedShop shop;
    const records::Reader& reader = shop.writer->reader();
    auto waiting = history::waitingOf(reader);
    REQUIRE(waiting);
    CHECK(waiting->toReview == 1);
    REQUIRE(waiting->others.size() + waiting->deviations.size() == 1);
    CHECK(waiting->sentBack.empty());

    REQUIRE(shop.writer->review(shop.run, {false, "Is the gauge the new one?"}, *shop.signer("p-1")));
    waiting = history::waitingOf(reader);
    REQUIRE(waiting);
    CHECK(waiting->toReview == 0);
    REQUIRE(waiting->sentBack.size() == 1);
    CHECK(waiting->sentBack.front().note == "Is the gauge the new one?");
    CHECK(waiting->sentBack.front().run.run == shop.run);
    // Whoever had it in hand is asked, and nobody else.
    CHECK(history::sentBackTo(reader, "p-2")->size() == 1);
    CHECK(history::sentBackTo(reader, "p-4")->empty());

    REQUIRE(shop.writer->correct(shop.run, SealedShop::correction(), *shop.signer("p-2")));
    waiting = history::waitingOf(reader);
    REQUIRE(waiting);
    CHECK(waiting->sentBack.empty());
    CHECK(waiting->toReview == 1);
    REQUIRE(shop.writer->review(shop.run, {true, ""}, *shop.signer("p-1")));
    CHECK(history::waitingOf(reader)->toReview == 0);
}

TEST_CASE("several are accepted at once only when each was opened as it stands")
{
    SealedShop shop;
    const std::string second = shop.sealRun().id;
    const records::Reader& reader = shop.writer->reader();
    history::Opened opened;
    CHECK(codeOf(opened.mayAccept(reader, {})) == "review.none");
    REQUIRE(opened.open(reader, shop.run));
    CHECK(codeOf(opened.mayAccept(reader, {shop.run})).empty());
    const auto refused = opened.mayAccept(reader, {shop.run, second});
    REQUIRE_FALSE(refused);
    CHECK(refused.error().code == "review.not_opened");
    CHECK(refused.error().subject == second);
    REQUIRE(opened.open(reader, second));
    CHECK(codeOf(opened.mayAccept(reader, {shop.run, second})).empty());

    // What was sealed about it since has not been seen.
    REQUIRE(shop.writer->correct(second, SealedShop::correction(), *shop.signer("p-2")));
    CHECK(codeOf(opened.mayAccept(reader, {shop.run, second})) == "review.not_opened");
    REQUIRE(opened.open(reader, second));
    CHECK(codeOf(opened.mayAccept(reader, {shop.run, second})).empty());
    opened.forget();
    CHECK(codeOf(opened.mayAccept(reader, {shop.run})) == "review.not_opened");
    CHECK_FALSE(opened.open(reader, "nowhere-2026-01-01-01"));
}

TEST_CASE("what was asked last stands first, whichever run it is about")
{
    SealedShop shop;
    const std::string second = shop.sealRun().id;
    REQUIRE(shop.writer->review(second, {false, "asked first"}, *shop.signer("p-1")));
    REQUIRE(shop.writer->review(shop.run, {false, "asked last"}, *shop.signer("p-1")));
    const auto asked = history::sentBackTo(shop.writer->reader(), "");
    REQUIRE(asked);
    REQUIRE(asked->size() == 2);
    CHECK(asked->front().note == "asked last");
    CHECK(asked->back().note == "asked first");
}

TEST_CASE("the seals about a run hold until a byte of one is changed")
{
    SealedShop shop;
    REQUIRE(shop.writer->review(shop.run, {true, "seen"}, *shop.signer("p-1")));
    const auto holds = records::sealsHold(shop.writer->reader(), shop.run);
    REQUIRE(holds);
    CHECK(*holds == 2);

    const fs::path beside = shop.copy();
    tamper(beside, "UPDATE seal_rows SET document = CAST(replace(CAST(document AS TEXT), '1.40 bar', '1.41 bar') AS "
                   "BLOB) WHERE seq = 11");
    const auto changed = openReader(beside);
    REQUIRE(changed);
    const auto broken = records::sealsHold(**changed, shop.run);
    REQUIRE_FALSE(broken);
    CHECK(broken.error().code == "seal.broken");
    CHECK(broken.error().subject == "seal 11");
}

TEST_CASE(
    "a list is written whole, whatever a page holds, with what a spreadsheet would take for a formula made harmless")
{
    SealedShop shop;
    for (int i = 0; i < 3; ++i) shop.abandonRun();
    records::RunQuery query;
    query.limit = 1;
    const auto csv = records::runsCsv(shop.writer->reader(), query);
    REQUIRE(csv);
    CHECK(std::count(csv->begin(), csv->end(), '\n') == 5);
    CHECK(csv->starts_with("seq,run,press,job,title,"));
    CHECK(csv->find(shop.run) != std::string::npos);
    const auto json = records::runsJson(shop.writer->reader(), query);
    REQUIRE(json);
    const auto read = Json::parse(*json);
    REQUIRE(read);
    CHECK((*read)["runs"].items().size() == 4);
    query.state = "abandoned";
    const auto some = records::runsCsv(shop.writer->reader(), query);
    REQUIRE(some);
    CHECK(std::count(some->begin(), some->end(), '\n') == 4);
}

TEST_CASE("a list is written with the columns that were asked for, in that order, and an unknown one is named")
{
    SealedShop shop;
    const records::Reader& reader = shop.writer->reader();
    const auto csv = records::runsCsv(reader, {}, {"state", "run"});
    REQUIRE(csv);
    CHECK(*csv == "state,run\r\ncompleted," + shop.run + "\r\n");
    const auto json = records::runsJson(reader, {}, {"roll", "waste_m"});
    REQUIRE(json);
    const auto read = Json::parse(*json);
    REQUIRE(read);
    const Json& only = (*read)["runs"].items().front();
    REQUIRE(only.members().size() == 2);
    CHECK(only.members().front().first == "roll");
    CHECK(only["waste_m"].isNull());

    const auto wrong = records::runsCsv(reader, {}, {"run", "colour"});
    REQUIRE_FALSE(wrong);
    CHECK(wrong.error().code == "runs.column");
    CHECK(wrong.error().subject == "colour");
    CHECK(static_cast<bool>(records::checkColumns({})));
    // Whatever there is, by its name, is what the list has of itself.
    records::Columns all;
    for (const std::string_view name : records::runColumns()) all.emplace_back(name);
    CHECK(records::runsCsv(reader, {}, all).value() == records::runsCsv(reader, {}).value());
}

TEST_CASE("a day begins when it does where the clock stands")
{
    CHECK(*records::dayBegins("2026-11-25", 0) == *readUtc("2026-11-25T00:00:00.000Z"));
    CHECK(*records::dayBegins("2026-11-25", 60) == *readUtc("2026-11-24T23:00:00.000Z"));
    for (const char* none : {"2026-02-30", "25.11.2026", "2026-11-2", "", "2026-11-25 "}) {
        const auto day = records::dayBegins(none, 0);
        REQUIRE_FALSE(day);
        CHECK(day.error().code == "day.unknown");
    }
}
