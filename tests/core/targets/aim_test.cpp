// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/targets/aim.h"

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

TEST_CASE("the automatic stop is shown at the limit that its diameter must not fall below")
{
    Ready stop;
    stop.value = Quantity(0.11943, Kind::Length, "mm");
    stop.window.low = std::get<Quantity>(stop.value);
    stop.window.high = Quantity(0.12943, Kind::Length, "mm");
    const auto aim = [&](UnitSystem system) { return format(std::get<Quantity>(aimOf(stop, system)), system); };
    CHECK(format(std::get<Quantity>(stop.value), UnitSystem::Metric) == "119.4 mm");
    CHECK(aim(UnitSystem::Metric) == "119.5 mm");
    CHECK(format(std::get<Quantity>(stop.value), UnitSystem::Us) == "4.70 in");  // 4.7020 in
    CHECK(aim(UnitSystem::Us) == "4.71 in");
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
