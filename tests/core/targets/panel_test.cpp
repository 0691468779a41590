// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include "core/base/json.h"
#include "core/targets/aim.h"
#include "core/targets/target_json.h"
#include "core/units/format.h"
#include "core/units/plain.h"
#include "tests/core/targets/demo_inputs.h"
#include "tests/core/targets/stated.h"

// What stands on screen and paper beside a control: in the unit of its panel, and inside the window beside it.
using namespace taut;
using namespace demo::stated;
using targets::Targets;

namespace {

std::string shown(const targets::Ready& r, UnitSystem system)
{
    return format(std::get<Quantity>(targets::aimOf(r, system)), system);
}
/// One member of a target as the verb prints it.
Json printed(const Targets& t, const std::string& id, UnitSystem system)
{
    const Json all = targets::targetsJson(t, system);
    for (const Json& one : all["targets"].items())
        if (one["id"].text() == id) return one;
    FAIL(id);
    return {};
}

}  // namespace

TEST_CASE("a tension that the panel takes in newtons is said in newtons on a press of US units, its window too")
{
    const Targets t =
        withPress("south", "cold-brew", "R0048", [](inputs::Press& p) { zone(p, "rewind_1").loadCell->setIn = "N"; });
    const double newtons = si(t, "tension.rewind_1.setting");  // 3.25 lbf
    CHECK(newtons == Approx(14.45).margin(0.005));
    for (const char* id : {"tension.rewind_1.setting", "tension.rewind_1.total", "tension.rewind_1.zero"}) {
        INFO(id);
        const targets::Ready& r = ready(t, id);
        for (const UnitSystem system : {UnitSystem::Us, UnitSystem::Metric}) {
            CHECK(show(std::get<Quantity>(targets::aimOf(r, system)), system).unit == "N");
            CHECK(show(*r.window.low, system).unit == "N");
            CHECK(show(*r.window.high, system).unit == "N");
            if (r.instrument) CHECK(show(*r.instrument, system).unit == "N");
        }
    }
    CHECK(shown(ready(t, "tension.rewind_1.setting"), UnitSystem::Us) == "14.4 N");
    CHECK(showRange(*ready(t, "tension.rewind_1.setting").window.low, *ready(t, "tension.rewind_1.setting").window.high,
                    UnitSystem::Us)
              .first.text() == "13.2 N");
    // It stays so when it is stored.
    const Json one = printed(t, "tension.rewind_1.setting", UnitSystem::Us);
    CHECK(one["shown_unit"].text() == "N");
    CHECK(one["text"].text() == "14.4 N");
    const auto back = targets::targetsFrom(targets::targetsJson(t, UnitSystem::Us));
    REQUIRE(back);
    CHECK(shown(ready(*back, "tension.rewind_1.setting"), UnitSystem::Us) == "14.4 N");
    // Where the panel takes lbf nothing is special.
    const Targets usual = targets::computeTargets(demo::inputs("south", "cold-brew", "R0048"));
    CHECK(shown(ready(usual, "tension.rewind_1.setting"), UnitSystem::Us).ends_with(" lbf"));
    CHECK_FALSE(printed(usual, "tension.rewind_1.setting", UnitSystem::Us).has("unit_fixed"));
}

TEST_CASE("a gauge marked in bar is read in bar on a press of US units, in its schedule too")
{
    std::string toml = demo::text("presses/north.toml");
    toml.replace(toml.find("units = \"metric\""), 16, "units = \"us\"");
    inputs::Inputs in = demo::inputs("north", "quince-jelly", "R0041");
    in.press = demo::pressOf(toml);
    const Targets t = targets::computeTargets(in);
    CHECK(shown(ready(t, "tension.unwind.setting"), UnitSystem::Us) == "1.39 bar");
    const targets::Schedule* schedule = t.schedule("tension.unwind.schedule");
    REQUIRE(schedule != nullptr);
    CHECK(format(schedule->rows.front()[2], UnitSystem::Us) == "1.39 bar");
    const auto back = targets::targetsFrom(targets::targetsJson(t, UnitSystem::Us));
    REQUIRE(back);
    CHECK(format(back->schedule("tension.unwind.schedule")->rows.front()[2], UnitSystem::Us) == "1.39 bar");
    CHECK(format(schedule->rows.front()[0], UnitSystem::Us).ends_with(" in"));
}

TEST_CASE("beside a window that is shown with more decimals the value is shown with as many, and inside it")
{
    const auto narrow = [](double low, double high) {
        inputs::Inputs in = demo::inputs("north", "quince-jelly", "R0041");
        inputs::Job job = *in.job;
        job.tension->low = Entry<Kind::ForcePerWidth>(ForcePerWidth::si(low * 1000), "N/mm");
        job.tension->high = Entry<Kind::ForcePerWidth>(ForcePerWidth::si(high * 1000), "N/mm");
        in.job = std::make_shared<const inputs::Job>(std::move(job));
        return targets::computeTargets(in);
    };
    const Targets t = narrow(0.180, 0.181);
    const targets::Ready& rewind = ready(t, "tension.rewind.setting");
    const auto [low, high] = showRange(*rewind.window.low, *rewind.window.high, UnitSystem::Metric);
    CHECK(low.text() == "0.438 bar");
    CHECK(high.text() == "0.439 bar");
    const std::string value = shown(rewind, UnitSystem::Metric);
    CHECK((value == "0.438 bar" || value == "0.439 bar"));
    CHECK(printed(t, "tension.rewind.setting", UnitSystem::Metric)["text"].text() == value);
    // Both ends one figure: the value is that figure.
    const Targets single = narrow(0.180, 0.180);
    CHECK(shown(ready(single, "tension.unwind.setting"), UnitSystem::Metric) == "1.3875 bar");
}

TEST_CASE("a value that is not what is aimed at says so in a member of its own")
{
    const Targets t = targets::computeTargets(demo::inputs("north", "quince-jelly", "R0041"));
    const Json stop = printed(t, "stop.diameter", UnitSystem::Metric);
    CHECK(stop["value"].number() == Approx(0.145396).epsilon(1e-5));
    CHECK(stop["aim"].number() == Approx(0.150396).epsilon(1e-5));
    CHECK(stop["text"].text() == "150.4 mm");
    CHECK_FALSE(printed(t, "roll.diameter", UnitSystem::Metric).has("aim"));
    // A control that begins at nought can be set to nought: no aim beside the value.
    targets::Ready draw;
    draw.value = Quantity(0, Kind::Share, "%");
    draw.window = {Quantity(0, Kind::Share, "%"), Quantity(0.000068, Kind::Share, "%"), targets::Rule::Job, "",
                   targets::Rule::Press};
    CHECK(shown(draw, UnitSystem::Metric) == "0 %");
}
