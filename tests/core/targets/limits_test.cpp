// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/targets/limits.h"

#include <catch2/catch.hpp>

#include "tests/core/targets/demo_inputs.h"
#include "tests/core/targets/stated.h"

// A shop's own windows: they narrow what protects people and web, and never widen it.
using namespace taut;
using demo::finding;
using demo::noted;
using demo::ready;
using demo::si;
using demo::withPress;
using targets::Targets;

namespace {

Quantity bar(double value) { return {value * 1e5, Kind::Pressure, "bar"}; }
Quantity count(double value) { return {value, Kind::Count}; }

/// The north press with these limits of its own in place of what it has for them.
Targets limited(const std::string& id, Range range)
{
    return withPress("north", "quince-jelly", "R0041", [&](inputs::Press& p) {
        std::erase_if(p.limits, [&](const auto& one) { return one.first == id; });
        p.limits.emplace_back(id, std::move(range));
    });
}

}  // namespace

TEST_CASE("a shop's limits narrow the window of a splice, a stop or a clutch, and never widen it")
{
    for (const auto& [id, wide, narrow] :
         {std::tuple{"splice.margin", Range{count(1), count(100)}, Range{count(6), {}}},
          {"splice.transient_margin", Range{count(1), count(100)}, Range{count(3), {}}},
          {"tension.rewind.slip_power", Range{Quantity(0, Kind::Power), Quantity(5000, Kind::Power)},
           Range{{}, Quantity(100, Kind::Power)}},
          {"tension.unwind.strain", Range{{}, Quantity(0.05, Kind::Share)},
           Range{{}, Quantity(0.0005, Kind::Share)}}}) {
        INFO(id);
        const targets::Window usual =
            ready(targets::computeTargets(demo::inputs("north", "quince-jelly", "R0041")), id).window;
        REQUIRE((usual.low || usual.high));
        const Targets t = limited(id, wide);
        const targets::Window& held = ready(t, id).window;
        if (usual.low) CHECK(held.low->si() == usual.low->si());
        if (usual.high) CHECK(held.high->si() == usual.high->si());
        CHECK(finding(t, "limits.only_narrower").severity == Severity::Warn);
        const targets::Window& tight = ready(limited(id, narrow), id).window;
        if (narrow.low) CHECK(tight.low->si() == narrow.low->si());
        if (narrow.high) CHECK(tight.high->si() == narrow.high->si());
        CHECK_FALSE(noted(limited(id, narrow), "limits.only_narrower"));
    }
    CHECK(targets::onlyNarrows("stop.diameter"));
    CHECK_FALSE(targets::onlyNarrows("air.supply"));
}

TEST_CASE("limits that cannot hold are named: a slip, what is never judged, what comes from elsewhere")
{
    for (const auto& [id, code] : {std::pair{"air.suply", "limits.unknown_id"},
                                   {"foo.bar", "limits.unknown_id"},
                                   {"tension.unwnd.swing", "limits.unknown_id"},
                                   {"lift.pressure", "limits.not_judged"},
                                   {"tension.unwind.setting", "limits.by_tension"},
                                   {"tension.unwind.per_width", "limits.by_tension"}}) {
        INFO(id);
        const Targets t = limited(id, Range{bar(1), bar(2)});
        CHECK(finding(t, code).subject == std::string("press.limits.") + id);
        CHECK_FALSE(finding(t, code).remedy.empty());
        const targets::Target* target = t.find(id);
        if (target != nullptr && target->ready() != nullptr && target->ready()->window.low)
            CHECK(target->ready()->window.low->si() != 1e5);
    }
    CHECK(std::get<std::string>(
              finding(limited("air.suply", Range{bar(1), bar(2)}), "limits.unknown_id").remedy.args.at(0)) ==
          "air.supply");
    CHECK(noted(limited("air.supply", Range{count(5), count(6)}), "limits.other_kind"));
    CHECK(noted(limited("air.supply", Range{{}, Quantity(3, Kind::Length)}), "limits.other_kind"));
    // The demo shop's own all hold.
    for (const char* press : {"north", "south"}) CHECK(targets::checkLimits(*demo::press(press)).empty());
}

TEST_CASE("a limit that is so many times something is a bare number")
{
    Findings notes;
    const auto press = inputs::readPress(demo::text("presses/north.toml") + "\n", "north.toml", notes);
    REQUIRE(press);
    std::string toml = demo::text("presses/north.toml");
    toml.insert(toml.find("[labels]"), "\"splice.margin\" = { low = 25 }\n");
    const auto own = inputs::readPress(toml, "north.toml", notes);
    REQUIRE(own);
    CHECK(notes.empty());
    CHECK(own->limits.back().second.low->si() == 25);
}

TEST_CASE("where no formula gives a value, it is aimed at inside the shop's own window")
{
    const Targets low = limited("air.supply", Range{bar(4.5), bar(5.5)});
    CHECK(si(low, "air.supply") == Approx(5.0e5));
    CHECK(ready(low, "air.supply").because.given.front().from == "press.limits.air.supply");
    CHECK(si(limited("air.drop", Range{bar(0), bar(0.1)}), "air.drop") == Approx(0.05e5));
    CHECK(si(limited("air.supply", Range{bar(6.4), {}}), "air.supply") == Approx(6.4e5));
    // One that lies inside stays where it is.
    CHECK(si(limited("air.supply", Range{bar(5.8), bar(7)}), "air.supply") == Approx(6.25e5));
}
