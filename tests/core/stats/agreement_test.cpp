// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/agreement.h"

#include <catch2/catch.hpp>

using namespace taut;
using namespace taut::stats;

TEST_CASE("what two judges agree on beyond chance is Cohen's kappa")
{
    // Cohen 1960, formula from memory. 50 attempts: both pass 40, apart on 4 and on 2, both fail 4.
    // Agreed 44/50 = 0.88, by chance (44 x 42 + 6 x 8) / 2500 = 0.7584, kappa 0.1216 / 0.2416.
    const auto two = agreementOf({{40, 4}, {2, 4}});
    REQUIRE(two);
    CHECK(two->observed == Approx(0.88));
    CHECK(two->byChance == Approx(0.7584));
    CHECK(two->kappa == Approx(0.5033).margin(0.00005));
    // By its definition: all of one mind is 1, independent 0, never of one mind below.
    CHECK(agreementOf({{10, 0, 0}, {0, 5, 0}, {0, 0, 5}})->kappa == Approx(1));
    CHECK(agreementOf({{4, 4}, {4, 4}})->kappa == Approx(0).margin(1e-12));
    CHECK(agreementOf({{0, 5}, {5, 0}})->kappa == Approx(-1));
    // Which judge stands in the rows makes no difference.
    CHECK(agreementOf({{40, 2}, {4, 4}})->kappa == Approx(two->kappa));
}

TEST_CASE("where chance leaves nothing open, or nothing was judged, there is no agreement to tell")
{
    CHECK(agreementOf({{50, 0}, {0, 0}}).error().code == "stats.constant");
    CHECK(agreementOf({{0, 0}, {0, 0}}).error().code == "stats.too_few");
    CHECK(agreementOf({}).error().code == "stats.too_few");
    CHECK(agreementOf({{1, 2}, {3}}).error().code == "stats.table");
}

TEST_CASE("who finds what is there and leaves the rest alone has a large d', who guesses has none")
{
    // Signal detection theory, d' = z(H) - z(F), formula from memory: 7 of 8 found, 1 of 16 named in vain.
    const auto good = sensitivityOf(7, 8, 1, 16);
    REQUIRE(good);
    CHECK(good->hits == Approx(0.875));
    CHECK(good->alarms == Approx(0.0625));
    CHECK(good->dPrime == Approx(2.6845).margin(0.00005));
    CHECK_FALSE(good->corrected);
    CHECK(sensitivityOf(4, 8, 8, 16)->dPrime == Approx(0).margin(1e-9));
    CHECK(sensitivityOf(1, 8, 15, 16)->dPrime == Approx(-2.6845).margin(0.00005));
}

TEST_CASE("all found and nothing in vain is finite: half a thing is added, and one to how many there were")
{
    // Hautus, Behavior Research Methods 27 (1995) 46 (from memory): (8 + .5) / 9 and (0 + .5) / 17.
    const auto all = sensitivityOf(8, 8, 0, 16);
    REQUIRE(all);
    CHECK(all->corrected);
    CHECK(all->hits == Approx(8.5 / 9));
    CHECK(all->alarms == Approx(0.5 / 17));
    CHECK(all->dPrime == Approx(1.593219 + 1.889510).margin(0.00001));
    CHECK(sensitivityOf(0, 1, 0, 3)->dPrime < sensitivityOf(1, 1, 0, 3)->dPrime);
    CHECK(sensitivityOf(1, 0, 0, 16).error().code == "stats.too_few");
    CHECK(sensitivityOf(0, 8, 0, 0).error().code == "stats.too_few");
    CHECK(sensitivityOf(9, 8, 0, 16).error().code == "stats.hits");
}
