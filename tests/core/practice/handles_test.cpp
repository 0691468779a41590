// SPDX-License-Identifier: GPL-3.0-or-later
// What somebody puts a hand to, against what a world can be told to do.
#include "core/practice/handles.h"

#include <catch2/catch.hpp>

#include <set>

#include "tests/core/targets/demo_inputs.h"

using namespace taut;
using namespace taut::practice;

namespace {

std::set<std::string> namesOf(const std::vector<Handle>& all)
{
    std::set<std::string> names;
    for (const Handle& one : all) names.insert(one.deed.what + '/' + one.deed.item);
    return names;
}

World northWorld()
{
    auto world = World::build({demo::inputs("north", "quince-jelly", "R0041"), 7, {}});
    REQUIRE(world);
    return *std::move(world);
}

Deed tried(const Handle& handle, bool on)
{
    Deed deed = handle.deed;
    deed.on = on;
    if (handle.sort == Handle::Sort::Either) deed.item = handle.ways[on ? 0 : 1];
    if (!handle.kinds.empty()) deed.to = Quantity(0, handle.kinds.front());
    return deed;
}

}  // namespace

TEST_CASE("every deed that a press knows has a row, once, and the press knows every row")
{
    for (const char* id : {"north", "south"}) {
        CAPTURE(id);
        const auto press = demo::press(id);
        const std::vector<Handle> all = handlesOf(*press);
        CHECK(namesOf(all).size() == all.size());
        std::set<std::string> what;
        for (const Handle& one : all) what.insert(one.deed.what);
        for (const inputs::Zone& zone : press->zones) {
            CHECK(what.count(zone.id + "_setting") == 1);
            CHECK(what.count(zone.id + "_diameter") == (zone.needsDiameter ? 1 : 0));
        }
        CHECK(what.count("zero_cell") == (std::string(id) == "south" ? 1 : 0));
        if (std::string(id) == "north")
            for (const std::string& deed : deedNames()) {
                if (deed == "zero_cell" || deed == "dancer_pin") continue;  // it has neither load cell nor dancer
                CAPTURE(deed);
                CHECK(what.count(deed) == 1);
            }
    }
    World world = northWorld();
    for (const Handle& one : handlesOf(*demo::press("north")))
        for (const bool on : {true, false}) {
            if (!on && one.undoes.empty()) continue;
            CAPTURE(one.deed.what, one.deed.item, on);
            const auto done = world.perform(tried(one, on));
            CHECK((done || done.error().code != "practice.deed"));
        }
}

TEST_CASE(
    "a control is called as its shop calls it, a stop says that it is pretended, and what is not there has no row")
{
    const auto press = demo::press("north");
    for (const Handle& one : handlesOf(*press)) {
        CAPTURE(one.deed.what, one.deed.item);
        if (const std::string* label = press->label(one.deed.what)) {
            REQUIRE_FALSE(one.name.args.empty());
            CHECK(std::get<std::string>(one.name.args.front()) == *label);
            CHECK_FALSE(one.what.empty());
        }
        if (one.deed.what == "emergency_stop") CHECK(one.name.source.view().find("Pretend") == 0);
        if (one.deed.what == "run" || one.deed.what == "hold_to_run") CHECK(one.sort == Handle::Sort::Motion);
    }
    inputs::Press bare = *press;
    bare.hasAir = false;
    bare.unwind->lift.reset();
    bare.guides.clear();
    std::set<std::string> what;
    for (const Handle& one : handlesOf(bare)) what.insert(one.deed.what);
    for (const char* gone : {"air_supply", "lift_pressure", "lift_up", "lift_down", "mandrel_air", "guide_automatic"})
        CHECK(what.count(gone) == 0);
    CHECK(what.count("hang_roll") == 1);
}

TEST_CASE("a row tells how it stands from the world alone")
{
    World world = northWorld();
    for (const Handle& one : handlesOf(*demo::press("north"))) {
        const std::string& what = one.deed.what;
        if (what != "main_disconnect" && what != "guard" && what != "lamp_park" && what != "infeed_nip") continue;
        CAPTURE(what, one.deed.item);
        CHECK(stands(world, one) == std::optional(false));
        REQUIRE(world.perform(tried(one, true)));
        CHECK(stands(world, one) == std::optional(true));
        REQUIRE(world.perform(tried(one, false)));
        CHECK(stands(world, one) == std::optional(false));
    }
    CHECK(world.supply() == Pressure{});
    REQUIRE(world.perform({"air_supply"}));
    CHECK(world.supply() > Pressure{});
    for (const Handle& one : handlesOf(*demo::press("north")))
        if (one.deed.what.starts_with("register_")) CHECK(setTo(world, one)->unit() == "mm");
    for (const Handle& one : handlesOf(*demo::press("north")))
        if (one.deed.what == "unwind_setting") {
            CHECK(setTo(world, one)->si() == 0);  // what its gauge shows without air
            REQUIRE(world.perform({"unwind_setting", {}, Quantity(1.4e5, Kind::Pressure, "bar")}));
            CHECK(setTo(world, one)->si() == Approx(1.4e5));
        }
}
