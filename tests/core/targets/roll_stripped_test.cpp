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
    for (const double sound : {0.499, 0.5, 0.508, 0.2}) {
        INFO(sound);
        CHECK_FALSE(says(stripped(sound), "input.stripped_larger"));
        CHECK_FALSE(says(stripped(sound), "input.stripped_below_core"));
        CHECK(targets::computeTargets(stripped(sound)).find("strip.length")->ready() != nullptr);
    }
}
