// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>
#include <random>

#include "core/seal/difference.h"

using namespace taut;

namespace {

Json json(const char* text) { return Json::parse(text).value(); }

std::string told(const char* before, const char* after)
{
    const auto difference = seal::differenceOf(json(before), json(after));
    return difference ? difference->dump() : "nothing";
}

std::string with(const char* before, const char* difference)
{
    const auto after = seal::withDifference(json(before), json(difference));
    return after ? after->dump() : "nothing";
}

/// Values as a target set has them, put together by chance.
class Chance {
public:
    explicit Chance(unsigned seed) : m_numbers(seed) {}
    [[nodiscard]] std::size_t below(std::size_t n) { return m_numbers() % n; }
    Json target()
    {
        Json item = Json::object();
        item.set("id", "t" + std::to_string(below(9)));
        if (below(2) == 0) item.set("value", static_cast<std::int64_t>(below(3)));
        if (below(3) == 0) item.set("most", Json());
        Json window = Json::object();
        window.set("low", below(2) == 0 ? Json() : Json(0.5)).set("rule", below(2) == 0 ? "job" : "none");
        if (below(4) == 0) window.set("low_rule", "maker");
        if (below(4) != 0) item.set("window", std::move(window));
        Json because = Json::array();
        for (std::size_t i = below(4); i > 0; --i) {
            Json given = Json::object();
            because.add(
                given.set("symbol", below(2) == 0 ? "D" : "w").set("value", static_cast<std::int64_t>(below(3))));
        }
        if (below(4) != 0) item.set("because", std::move(because));
        return item;
    }
    Json set()
    {
        Json set = Json::object(), targets = Json::array(), rows = Json::array();
        if (below(4) == 0) set.set("from", static_cast<std::int64_t>(below(9)));
        for (std::size_t i = below(8); i > 0; --i) targets.add(target());
        for (std::size_t i = below(4); i > 0; --i) rows.add(Json::array().add(static_cast<std::int64_t>(below(2))));
        set.set("targets", std::move(targets)).set("schedules", Json::array().add(Json::object().set("rows", rows)));
        if (below(3) == 0) set.set("note", below(2) == 0 ? Json("7") : json(R"({"was":1})"));
        return set;
    }

private:
    std::mt19937 m_numbers;
};

}  // namespace

TEST_CASE("a difference states what changed and names what stayed by its place")
{
    const char* before =
        R"({"from":1,"targets":[{"id":"a","value":1},{"id":"b","value":2,"window":{"low":1,"high":3}},)"
        R"({"id":"c","value":3},{"id":"d","value":4,"most":9}],"findings":[]})";
    CHECK(told(before, before) == "{}");
    CHECK(told(before,
               R"({"from":5,"targets":[{"id":"a","value":1},{"id":"b","value":2.5,"window":{"low":1,"high":4}},)"
               R"({"id":"c","value":3},{"id":"d","value":4}],"findings":[{"code":"x"}]})") ==
          R"({"from":5,"targets":["0",{"was":1,"id":"b","value":2.5,"window":{"high":4}},"2",)"
          R"({"was":3,"id":"d","without":["most"]}],"findings":[{"code":"x"}]})");
    // One new, one gone, two that changed places.
    CHECK(told(R"({"steps":[{"id":"a"},{"id":"b"},{"id":"c"},{"id":"d"}]})",
               R"({"steps":[{"id":"b"},{"id":"c"},{"id":"new"},{"id":"a"}]})") ==
          R"({"steps":["1..2",{"id":"new"},"0"]})");
    // Other lists are stated whole.
    CHECK(told(R"({"needs":["a","b"]})", R"({"needs":["a"]})") == R"({"needs":["a"]})");
}

TEST_CASE("a difference done to what was before gives the same again to the last member and its order")
{
    Chance chance(20261126);
    std::size_t told = 0, whole = 0;
    for (int i = 0; i < 4000; ++i) {
        const Json before = chance.set(), after = chance.set();
        const auto difference = seal::differenceOf(before, after);
        if (!difference) {
            ++whole;
            continue;
        }
        ++told;
        const auto again = seal::withDifference(before, *difference);
        REQUIRE(again);
        REQUIRE(again->dump() == after.dump());
    }
    CHECK(told > 2000);
    CHECK(whole > 100);  // a member that came before others
}

TEST_CASE("what would be read as words about places is not told as a difference")
{
    CHECK(told("{}", R"({"was":1})") == "nothing");
    CHECK(told("{}", R"({"without":[]})") == "nothing");
    CHECK(told(R"({"rows":[]})", R"({"rows":["7"]})") == "nothing");
    CHECK(told(R"({"rows":[]})", R"({"rows":[{"was":0}]})") == "nothing");
    CHECK(told(R"({"a":1,"c":1})", R"({"a":1,"b":1,"c":1})") == "nothing");
    CHECK(told(R"({"a":1,"b":1})", R"({"b":1,"a":1})") == "nothing");
    CHECK(told("[]", "{}") == "nothing");
    // In a list such an item stands whole.
    CHECK(told(R"({"targets":[{"id":"a","c":1}]})", R"({"targets":[{"id":"a","b":1,"c":1}]})") ==
          R"({"targets":[{"id":"a","b":1,"c":1}]})");
}

TEST_CASE("a difference that names what is not there gives nothing")
{
    const char* before = R"({"targets":[{"id":"a"},{"id":"b"},{"id":"c"}],"kind":"full"})";
    CHECK(with(before, R"({"targets":["1..2"]})") == R"({"targets":[{"id":"b"},{"id":"c"}],"kind":"full"})");
    for (const char* wrong :
         {R"({"targets":["3"]})", R"({"targets":["1..3"]})", R"({"targets":["2..1"]})", R"({"targets":["1.2"]})",
          R"({"targets":["1..1"]})", R"({"targets":[""]})", R"({"targets":["a"]})", R"({"targets":["-1"]})",
          R"({"targets":["0","0"]})", R"({"targets":["0..2",{"was":1}]})", R"({"targets":[{"was":3}]})",
          R"({"targets":[{"was":-1}]})", R"({"targets":[{"was":"0"}]})", R"({"without":["x"]})", R"({"without":[1]})",
          R"({"targets":["99999999999999999999999"]})", R"({"targets":["0..99999999999999999999999"]})", "[]"}) {
        INFO(wrong);
        CHECK(with(before, wrong) == "nothing");
    }
}

TEST_CASE("a list told in differences is whole again, and only from those before")
{
    const Json::Array values = json(R"([{"kind":"full","steps":[{"id":"a"},{"id":"b"}]},
        {"kind":"full","steps":[{"id":"a"},{"id":"b"},{"id":"c"}]}, {"was":1}, {"was":1},
        {"kind":"full","steps":[{"id":"c"}]}, {"kind":"full","steps":[{"id":"c"}]}])")
                                   .items();
    const Json list = seal::inDifferences(values);
    CHECK(list.items()[1].dump() == R"({"since":0,"steps":["0..1",{"id":"c"}]})");
    CHECK(list.items()[2].dump() == R"({"was":1})");
    CHECK(list.items()[5].dump() == R"({"since":4})");
    const auto again = seal::wholeAgain(list.items());
    REQUIRE(again);
    CHECK(*again == values);
    for (const char* wrong : {R"([{"since":0}])", R"([{"a":1},{"since":1}])", R"([{"a":1},{"since":-1}])",
                              R"([{"a":1},{"since":"0"}])", R"([{"steps":[]},{"since":0,"steps":["0"]}])"})
        CHECK_FALSE(seal::wholeAgain(json(wrong).items()));
}
