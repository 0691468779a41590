// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/summary.h"

#include <catch2/catch.hpp>

#include <limits>

using namespace taut::stats;

TEST_CASE("a median is the middle one or between the two middle ones")
{
    CHECK(*percentileOf({3, 1, 2}, 0.5) == 2);
    CHECK(*percentileOf({4, 1, 3, 2}, 0.5) == 2.5);
    CHECK(*percentileOf({7}, 0.5) == 7);
}

TEST_CASE("quartiles stand at p (n + 1), and the ends are ends")
{
    // Eleven values: the third and the ninth. Seven: the second and the sixth.
    const auto eleven = quartilesOf({11, 10, 9, 8, 7, 6, 5, 4, 3, 2, 1});
    REQUIRE(eleven);
    CHECK(eleven->count == 11);
    CHECK(eleven->lower == 3);
    CHECK(eleven->median == 6);
    CHECK(eleven->upper == 9);
    CHECK(eleven->least == 1);
    CHECK(eleven->most == 11);
    const auto four = quartilesOf({10, 20, 40, 80});
    REQUIRE(four);
    CHECK(four->lower == 12.5);  // place 1.25
    CHECK(four->upper == 70);    // place 3.75
    const auto one = quartilesOf({5});
    REQUIRE(one);
    CHECK(one->lower == 5);
    CHECK(one->upper == 5);
    CHECK(*percentileOf({1, 2, 3}, 0) == 1);
    CHECK(*percentileOf({1, 2, 3}, 1) == 3);
    CHECK(*percentileOf({1, 2, 3}, 0.01) == 1);
}

TEST_CASE("quartiles of nothing, of what is no number and of a share that is none are refused")
{
    CHECK(quartilesOf({}).error().code == "stats.too_few");
    CHECK(quartilesOf({1, std::numeric_limits<double>::quiet_NaN()}).error().code == "stats.not_finite");
    CHECK(percentileOf({1, 2}, 1.5).error().code == "stats.share");
    CHECK(percentileOf({1, 2}, std::numeric_limits<double>::quiet_NaN()).error().code == "stats.share");
}

TEST_CASE("a rate has an interval that stays between none and all, also where it is one of them")
{
    for (const auto& [hits, of] : {std::pair(0U, 1U), std::pair(0U, 12U), std::pair(12U, 12U), std::pair(5U, 12U)}) {
        CAPTURE(hits, of);
        const auto rate = proportionOf(hits, of);
        REQUIRE(rate);
        CHECK(rate->interval.low >= 0);
        CHECK(rate->interval.high <= 1);
        CHECK(rate->interval.low <= rate->share);
        CHECK(rate->share <= rate->interval.high);
        CHECK(rate->interval.high - rate->interval.low > 0.1);
    }
    CHECK(proportionOf(0, 12)->interval.low == 0);
    // Of none the upper end is z^2 / (n + z^2).
    CHECK(proportionOf(0, 12)->interval.high == Approx(3.841458821 / (12 + 3.841458821)));
    CHECK(proportionOf(12, 12)->interval.high == 1);
    CHECK(proportionOf(45, 50, 0.99)->interval.low < proportionOf(45, 50, 0.95)->interval.low);
}

TEST_CASE("a rate of nothing, of more than all and without confidence is refused")
{
    CHECK(proportionOf(0, 0).error().code == "stats.too_few");
    CHECK(proportionOf(3, 2).error().code == "stats.hits");
    CHECK(proportionOf(1, 2, 1).error().code == "stats.confidence");
}

TEST_CASE("causes stand by their amount, and what is a sum of several stands last")
{
    const auto rows = paretoOf({{"rest of it", 50, true}, {"b", 10}, {"none", 0}, {"c", 30}, {"a", 10}});
    REQUIRE(rows);
    REQUIRE(rows->size() == 4);
    CHECK((*rows)[0].cause.name == "c");
    CHECK((*rows)[1].cause.name == "a");
    CHECK((*rows)[2].cause.name == "b");
    CHECK((*rows)[3].cause.name == "rest of it");
    CHECK((*rows)[3].share == 0.5);
    CHECK((*rows)[0].cumulative == Approx(0.3));
    CHECK(rows->back().cumulative == 1);
}

TEST_CASE("of many causes the smallest are put together with the rest")
{
    const std::vector<Cause> causes = {{"a", 5}, {"b", 4}, {"c", 3}, {"d", 2}, {"more", 1, true}};
    const auto named = paretoOf(causes, 2);
    REQUIRE(named);
    REQUIRE(named->size() == 3);
    CHECK(named->back().cause.name == "more");
    CHECK(named->back().cause.amount == 6);
    CHECK(named->back().cause.rest);
    CHECK(paretoOf({{"few", 1, true}, {"a", 2}, {"many", 7, true}})->back().cause.name == "many");
    const auto bare = paretoOf({{"a", 5}, {"b", 4}, {"c", 3}}, 1);
    REQUIRE(bare);
    REQUIRE(bare->size() == 2);
    CHECK(bare->back().cause.name == "other");
    CHECK(bare->back().cause.amount == 7);
    CHECK(paretoOf({{"a", 5}, {"b", 4}}, 2)->size() == 2);
}

TEST_CASE("no causes are no rows, and an amount below nought is refused by its name")
{
    CHECK(paretoOf({})->empty());
    CHECK(paretoOf({{"a", 0}})->empty());
    const auto wrong = paretoOf({{"a", 1}, {"b", -1}});
    REQUIRE_FALSE(wrong);
    CHECK(wrong.error().code == "stats.amount");
    CHECK(wrong.error().subject == "b");
}
