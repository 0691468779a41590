// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/logbook/keep.h"

#include "tests/core/logbook/keep_fixture.h"

using namespace taut;
using namespace taut::logbook;
using namespace taut::logbook::test;

TEST_CASE("where a logbook is kept twice is a supervisor's matter, and nobody's who is not signed in")
{
    Keeping shop;
    CHECK_FALSE(whyNotKeeper(shop.actor("p-1")));
    const auto inka = whyNotKeeper(shop.actor("p-2"));
    REQUIRE(inka);
    CHECK(inka->code == "gate.role");
    CHECK(inka->subject == "p-2");
    CHECK(sentence(*inka).find("Inka Thorsby is enrolled as operator") != std::string::npos);
    const auto nobody = whyNotKeeper(std::nullopt);
    REQUIRE(nobody);
    CHECK(nobody->code == "gate.nobody");
    CHECK_FALSE(nobody->remedy.empty());
}

TEST_CASE("no other file takes the place of a logbook in which a run is open")
{
    Keeping shop;
    CHECK_FALSE(whyNotReplaced(*shop.writer));
    OpenRun open = shop.begin();
    const auto why = whyNotReplaced(*shop.writer);
    REQUIRE(why);
    CHECK(why->code == "restore.run_open");
    CHECK(why->subject == open.run().id());
    must(open, run::Abandon{"The roll is used up"}, *shop.inka);
    REQUIRE(open.seal(*shop.signer("p-2")));
    CHECK_FALSE(whyNotReplaced(*shop.writer));
}
