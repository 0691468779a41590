// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>
#include <numbers>

#include "tests/core/targets/stated.h"

using namespace taut;
using namespace demo::stated;
using targets::Targets;

namespace {

inputs::Inputs stripped(double left, std::optional<double> label = {})
{
    inputs::Inputs in = demo::inputs("north", "quince-jelly", "R0041");
    inputs::Roll roll = *in.roll;
    roll.strippedDiameter = Entry<Kind::Length>(Quantity(left, Kind::Length, "mm"));
    if (label) roll.length = Entry<Kind::Length>(Quantity(*label, Kind::Length, "m"));
    in.roll = std::make_shared<const inputs::Roll>(roll);
    return in;
}

bool says(const inputs::Inputs& in, const char* code)
{
    for (const Finding& f : targets::computeTargets(in).findings)
        if (f.code == code) return f.severity == Severity::Stop;
    return false;
}

}  // namespace

TEST_CASE("what is left of a stripped roll is a share of what its label says, by the areas")
{
    // 500 mm on a core of 102.2 mm outside, down to 465 mm: 0.5^2 - 0.465^2 of 0.5^2 - 0.1022^2 is gone (R1).
    const double share = (0.25 - 0.465 * 0.465) / (0.25 - 0.1022 * 0.1022);
    for (const double label : {1360.0, 1450.0}) {
        const Targets t = targets::computeTargets(stripped(0.465, label));
        CHECK(si(t, "strip.length") == Approx(label * share).epsilon(1e-9));
    }
}

TEST_CASE("a roll measured anew and smaller than it was stripped to goes by the new diameter")
{
    const inputs::Inputs in = stripped(0.49);
    const Targets small = targets::computeTargets(in, Length::si(0.3));
    const Targets plain = targets::computeTargets(demo::inputs("north", "quince-jelly", "R0041"), Length::si(0.3));
    CHECK(si(small, "tension.unwind.setting") == si(plain, "tension.unwind.setting"));
    CHECK(si(small, "roll.inertia") == si(plain, "roll.inertia"));
}

TEST_CASE("what is said to be left is neither larger than the roll nor no more than its core")
{
    CHECK(says(stripped(0.6), "input.stripped_larger"));
    CHECK(says(stripped(0.1), "input.stripped_below_core"));
    // Nobody is given a setting for a roll that cannot be.
    const Targets none = targets::computeTargets(stripped(0.1));
    for (const char* id : {"tension.unwind.setting", "roll.inertia", "stop.unwind.tension", "strip.length"}) {
        INFO(id);
        CHECK(cannot(none, id).why.code == "input.stripped_below_core");
    }
    CHECK(none.find("lift.pressure")->ready() != nullptr);  // it is lifted as it came
    // One that is said to have grown goes by its own diameter until that is mended.
    CHECK(si(targets::computeTargets(stripped(0.6)), "tension.unwind.setting") ==
          si(targets::computeTargets(demo::inputs("north", "quince-jelly", "R0041")), "tension.unwind.setting"));
    for (const double sound : {0.499, 0.5, 0.508, 0.2}) {
        INFO(sound);
        CHECK_FALSE(says(stripped(sound), "input.stripped_larger"));
        CHECK_FALSE(says(stripped(sound), "input.stripped_below_core"));
        CHECK(targets::computeTargets(stripped(sound)).find("strip.length")->ready() != nullptr);
    }
}

TEST_CASE("a roll of which only what was left was measured is reckoned from that, and what came off it is asked")
{
    // As one of which nothing is to come off, by the diameters: R0041 without tag, label and outer diameter.
    const auto left = [](bool whole) {
        inputs::Inputs in = demo::inputs("north", "quince-jelly", "R0041");
        inputs::Roll roll = *in.roll;
        roll.tag.clear();
        roll.length.reset();
        roll.outerDiameter =
            whole ? std::optional(Entry<Kind::Length>(Quantity(0.49, Kind::Length, "mm"))) : std::nullopt;
        if (!whole) roll.strippedDiameter = Entry<Kind::Length>(Quantity(0.49, Kind::Length, "mm"));
        in.roll = std::make_shared<const inputs::Roll>(roll);
        return in;
    };
    const Targets t = targets::computeTargets(left(false)), same = targets::computeTargets(left(true));
    for (const char* id : {"roll.inertia", "stop.unwind.tension", "stop.unwind.hold_torque", "roll.length",
                           "roll.length_by_diameter", "roll.wraps", "tension.unwind.setting"}) {
        INFO(id);
        CHECK(si(t, id) == Approx(si(same, id)).epsilon(1e-12));
    }
    // pi (0.49^2 - 0.1022^2) / (4 x 140 um) = 1288.4 m (R1), less the reserve of 60 m: nothing comes off any more.
    const double length = std::numbers::pi * (0.49 * 0.49 - 0.1022 * 0.1022) / (4 * 140e-6);
    CHECK(si(t, "roll.length") == Approx(length));
    CHECK(si(t, "roll.usable") == Approx(length - 60));
    CHECK(si(t, "roll.run_time") == Approx((length - 60) / 1.5));
    CHECK(t.find("job.enough")->ready() != nullptr);
    // What was lifted, and what came off, only the whole tells.
    for (const char* id : {"strip.length", "roll.diameter", "roll.mass"}) {
        INFO(id);
        const auto* needs = std::get_if<targets::Needs>(&t.find(id)->state);
        REQUIRE(needs != nullptr);
        CHECK(needs->keys == std::vector<std::string>{"roll.outer_diameter"});
    }
    CHECK(si(t, "strip.diameter") == 0.49);
}

TEST_CASE("a label counts as length of the roll it was written for, not of what was left of it")
{
    inputs::Inputs in = stripped(0.49, 1360);
    inputs::Roll roll = *in.roll;
    roll.outerDiameter.reset();
    in.roll = std::make_shared<const inputs::Roll>(roll);
    const Targets t = targets::computeTargets(in);
    CHECK(si(t, "roll.length") == Approx(si(t, "roll.length_by_diameter")));
    CHECK(si(t, "roll.length") < 1300);
    CHECK(t.find("roll.lengths_apart") == nullptr);
    // No difference of a label and a diameter made of that label.
    CHECK(t.find("strip.length")->ready() == nullptr);
    // It hung on the lift as it was written.
    CHECK(si(t, "roll.mass") > 1360 * 0.33 * in.substrate->grammage->si());
    roll.strippedDiameter = Entry<Kind::Length>(Quantity(1.5, Kind::Length, "mm"));
    in.roll = std::make_shared<const inputs::Roll>(roll);
    CHECK(says(in, "input.roll_too_large"));
}
