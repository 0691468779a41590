// SPDX-License-Identifier: GPL-3.0-or-later
// Whatever anybody does, in whatever order: the world stays one that physics allows. TAUTWEB_SEQUENCES says how many
// sequences are tried (10,000 take an hour), TAUTWEB_FIRST from which on.
#include <catch2/catch.hpp>

#include <cmath>
#include <cstdlib>

#include "core/base/file.h"
#include "core/practice/scenario.h"
#include "tests/core/practice/basis.h"
#include "tests/core/targets/demo_inputs.h"

using namespace taut;
using namespace taut::practice;

namespace {

/// A deed of any sort with anything in it.
Deed anyDeed(Chance& chance, const World& world, const inputs::Press& press)
{
    Deed deed;
    const std::size_t zones = press.zones.size(), names = deedNames().size();
    const std::size_t which = chance.below(names + zones + 2);
    if (which < names)
        deed.what = deedNames()[which];
    else if (which < names + zones)
        deed.what = press.zones[which - names].id + "_setting";
    else
        deed.what = which == names + zones ? "infeed_nip" : "outfeed_nip";
    const auto item = [&]() -> std::string {
        switch (chance.below(6)) {
        case 0: return chance.oneOf(press.guards).id;
        case 1: return chance.oneOf(press.emergencyStops).id;
        case 2: return chance.is(0.5) ? "over" : "under";
        case 3: return chance.is(0.5) ? "1" : "2";
        case 4: return press.rewinds.front().id;
        default: return {};
        }
    };
    deed.item = item();
    // Most things are done the right way round, or nothing would ever move.
    if (deed.what == "guard") deed.item = chance.oneOf(press.guards).id;
    if (deed.what == "emergency_stop") deed.item = chance.oneOf(press.emergencyStops).id;
    if (deed.what == "hang_roll") deed.item = chance.is(0.7) ? "over" : "under";
    if (deed.what == "cut_ends" || deed.what == "tape_joint") deed.item = chance.is(0.5) ? "eye" : "rule";
    deed.on = deed.what == "emergency_stop" ? chance.is(0.2) : chance.is(0.8);
    if (deed.what == "hold_stop") deed.on = chance.is(0.3);
    if (deed.what == "lift_pressure")
        deed.to = Quantity(world.liftBalance().si() * chance.between(0.5, 3), Kind::Pressure, "bar");
    else if (deed.what == "run")
        deed.to = Quantity(chance.between(-1, 5), Kind::Speed, "m/min");
    else if (deed.what == "hang_roll" || deed.what == "guide_sensor" || deed.what.starts_with("register_"))
        deed.to = Quantity(chance.between(-0.05, 0.05), Kind::Length, "mm");
    else if (deed.what == "print_setting")
        deed.to = Quantity(chance.between(-0.02, 0.05), Kind::Share, "%");
    else if (deed.what.ends_with("_setting"))
        deed.to = Quantity(chance.between(-1e5, 8e5), Kind::Pressure, "bar");
    return deed;
}

/// Nothing is there that cannot be.
void checkSound(const World& world)
{
    const WebLine& line = world.line().web;
    const WebState& web = world.web();
    CHECK(std::isfinite(web.unwound));
    CHECK(web.unwound >= 0);
    CHECK(web.rewound >= 0);
    CHECK(std::isfinite(web.unwindSpeed));
    CHECK(std::isfinite(web.rewindSpeed));
    for (std::size_t s = 0; s < line.spans.size(); ++s) {
        const double pull = tensionIn(line, web, s).si();
        CAPTURE(s, pull, web.held[s]);
        CHECK(std::isfinite(pull));
        CHECK(web.held[s] > 0);
        // It tears at its strength; a tick later it is torn.
        CHECK(pull < 3 * world.line().breaks.si());
        CHECK(std::isfinite(world.lateral().at[s]));
        CHECK(std::abs(world.lateral().at[s]) < 1);
    }
    for (const double speed : web.speed) CHECK(std::abs(speed) < 100);
}

int said(const char* name, int otherwise)
{
    const char* text = std::getenv(name);
    return text == nullptr ? otherwise : std::atoi(text);
}

const inputs::Inputs& northMorning()
{
    static const inputs::Inputs in = demo::inputs("north", "quince-jelly", "R0041");
    return in;
}
const std::vector<Action>& book()
{
    static const std::vector<Action> all = [] {
        Findings notes;
        const auto text = readFile(std::string(TAUTWEB_SOURCE_DIR) + "/resources/demo/actions/by_the_book.toml");
        REQUIRE(text);
        auto read = readActions(*text, "by_the_book.toml", shift::basis(), notes);
        REQUIRE(read);
        return *std::move(read);
    }();
    return all;
}

/// Whether the press moved in it.
bool moves(int i)
{
    const inputs::Inputs& in = northMorning();
    Chance chance(20261127, static_cast<std::uint64_t>(i));
    CAPTURE(i);
    std::vector<Fault> faults;
    for (const Suspect& suspect : suspectsOf(*in.press))
        if (chance.is(0.1)) faults.push_back({suspect.what, suspect.item, usualAmount(suspect.what)});
    auto world = World::build({in, static_cast<std::uint64_t>(i), faults});
    REQUIRE(world);
    // By the book up to somewhere, half of it to where the web runs, so that what follows matters; some from cold.
    constexpr std::size_t kRuns = 8;
    const std::size_t byTheBook = chance.is(0.5)   ? book().size() - chance.below(kRuns)
                                  : chance.is(0.6) ? chance.below(book().size())
                                                   : 0;
    for (std::size_t k = 0; k < byTheBook; ++k) {
        world->advance(book()[k].after);
        if (book()[k].act) static_cast<void>(world->perform(std::get<Deed>(*book()[k].act)));
    }
    bool ran = false;
    for (int k = 0; k < 40; ++k) {
        static_cast<void>(world->perform(anyDeed(chance, *world, *in.press)));
        world->advance(Time::si(chance.is(0.2) ? chance.between(0, 4) : 0.1));
        checkSound(*world);
        ran = ran || world->speed() > Speed{};
    }
    return ran;
}

}  // namespace

TEST_CASE("whatever is done at the practice press, in whatever order, nothing comes of it that physics does not allow")
{
    int moved = 0;
    const int first = said("TAUTWEB_FIRST", 0), many = said("TAUTWEB_SEQUENCES", 25);
    for (int i = first; i < first + many; ++i) moved += moves(i) ? 1 : 0;
    INFO(moved << " of them moved");
    CHECK(5 * moved >= many);
}

TEST_CASE("a span that is drawn empty within a step holds nothing, and never less")
{
    // Of ten thousand sequences the one that came to it.
    moves(2031);
}
