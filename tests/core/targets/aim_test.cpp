// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/targets/aim.h"

#include <tuple>

#include <catch2/catch.hpp>

#include "core/units/format.h"
#include "core/units/parse.h"
#include "tests/core/targets/demo_inputs.h"

using namespace taut;
using namespace taut::targets;

namespace {

/// What stands on screen and paper, as a number that can be compared.
double read(const Quantity& q, UnitSystem system, Rounding rounding)
{
    const Shown shown = show(q, system, rounding);
    const Unit* unit = findUnit(q.kind(), shown.unit.empty() ? "1" : shown.unit);
    REQUIRE(unit != nullptr);
    const auto number = parseNumber(shown.number);
    REQUIRE(number);
    return toSi(*number, *unit);
}

bool isShownInside(const Ready& ready, const Quantity& value, UnitSystem system)
{
    const double aim = read(value, system, Rounding::Nearest);
    return (!ready.window.low || aim >= read(*ready.window.low, system, Rounding::Up)) &&
           (!ready.window.high || aim <= read(*ready.window.high, system, Rounding::Down));
}

}  // namespace

TEST_CASE("a value inside its window is shown inside the window as it is shown, in metric and in US units")
{
    int windows = 0, moved = 0, narrow = 0;
    for (const char* press : {"north", "south"})
        for (const char* job : {"cold-brew", "parcel-tag", "quince-jelly", "seed-window"})
            for (const char* roll :
                 {"R0041", "R0042", "R0043", "R0044", "R0045", "R0046", "R0047", "R0048", "R0049", "R0050"}) {
                const Targets all = computeTargets(demo::inputs(press, job, roll));
                for (const Target& target : all.all) {
                    const Ready* ready = target.ready();
                    const Quantity* value = target.quantity();
                    if (value == nullptr || !(ready->window.low || ready->window.high)) continue;
                    if (!Range{ready->window.low, ready->window.high}.contains(value->si())) continue;
                    ++windows;
                    for (const UnitSystem system : {UnitSystem::Metric, UnitSystem::Us}) {
                        const Quantity aim = std::get<Quantity>(aimOf(*ready, system));
                        if (aim.si() != value->si()) ++moved;
                        // A window that what can be set leaves narrower than the last place shows no value inside.
                        if (ready->window.low && ready->window.high &&
                            read(*ready->window.low, system, Rounding::Up) >
                                read(*ready->window.high, system, Rounding::Down)) {
                            ++narrow;
                            continue;
                        }
                        INFO(press << ' ' << job << ' ' << roll << ' ' << target.id << ' ' << format(aim, system));
                        CHECK(isShownInside(*ready, aim, system));
                        CHECK(aim.unit() == value->unit());
                    }
                }
            }
    CHECK(windows > 1000);
    CHECK(moved > 0);
    CHECK(narrow < 5);
}

TEST_CASE("a value that stands on a limit is aimed at in the middle of its window, one beside it at the limit as shown")
{
    Ready stop;
    stop.value = Quantity(0.11943, Kind::Length, "mm");
    stop.window.low = std::get<Quantity>(stop.value);
    stop.window.high = Quantity(0.12943, Kind::Length, "mm");
    const auto aim = [&](UnitSystem system) { return format(std::get<Quantity>(aimOf(stop, system)), system); };
    CHECK(format(std::get<Quantity>(stop.value), UnitSystem::Metric) == "119.4 mm");
    CHECK(aim(UnitSystem::Metric) == "124.4 mm");
    CHECK(aim(UnitSystem::Us) == "4.90 in");  // 4.8988 in
    // A little above the least: 4.7024 in, the least as shown is 4.71 in.
    stop.value = Quantity(0.11944, Kind::Length, "mm");
    CHECK(format(std::get<Quantity>(stop.value), UnitSystem::Metric) == "119.4 mm");
    CHECK(aim(UnitSystem::Metric) == "119.5 mm");
    CHECK(aim(UnitSystem::Us) == "4.71 in");
    // One limit alone has no middle.
    stop.value = *stop.window.low;
    stop.window.high.reset();
    CHECK(aim(UnitSystem::Metric) == "119.5 mm");
}

TEST_CASE("what the automatic stop is to be set to is inside its window for whoever reads it to a millimetre")
{
    for (const auto& [press, job, roll] :
         {std::tuple{"north", "quince-jelly", "R0041"}, {"south", "cold-brew", "R0048"}}) {
        const Targets t = computeTargets(demo::inputs(press, job, roll));
        const Ready* stop = t.find("stop.diameter")->ready();
        REQUIRE(stop != nullptr);
        const double aim = std::get<Quantity>(aimOf(*stop, UnitSystem::Metric)).si();
        CHECK(aim - stop->window.low->si() > 0.001);
        CHECK(stop->window.high->si() - aim > 0.001);
    }
}

TEST_CASE("a value away from its limits, outside them, or without any is shown as it is")
{
    Ready ready;
    ready.value = Quantity(0.1243, Kind::Length, "mm");
    CHECK(aimOf(ready, UnitSystem::Metric) == ready.value);
    ready.window.low = Quantity(0.11943, Kind::Length, "mm");
    ready.window.high = Quantity(0.12943, Kind::Length, "mm");
    CHECK(aimOf(ready, UnitSystem::Metric) == ready.value);
    ready.value = Quantity(0.11940, Kind::Length, "mm");
    CHECK(aimOf(ready, UnitSystem::Metric) == ready.value);
    ready.value = std::string("over");
    CHECK(aimOf(ready, UnitSystem::Metric) == ready.value);
}
