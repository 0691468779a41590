// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/brake.h"
#include "core/physics/material.h"
#include "core/physics/tension.h"
#include "tests/published/outside.h"
#include "tests/published/us_units.h"

using namespace taut;
using namespace taut::physics;
using namespace source;
using outside::units;

namespace {
Approx near(double v) { return Approx(v).epsilon(1e-12); }
}  // namespace

// GNU units 2.22 (2022), file definitions.units: a general reference for every conversion below.

TEST_CASE("GNU units: the units of the sources are the defined ones")
{
    CHECK(kInch == near(units("in", "m")));
    CHECK(kFoot == near(units("ft", "m")));
    CHECK(kPound == near(units("lb", "kg")));
    CHECK(kPoundForce == near(units("lbf", "N")));
    CHECK(kPsi == near(units("psi", "Pa")));
}

TEST_CASE("GNU units: tension of 1 lbf/in over a width in inches")
{
    CHECK(perInch(1).si() == near(units("lbf/in", "N/m")));
    CHECK(perInch(1).si() == Approx(175.12684).epsilon(1e-6));
    CHECK(totalTension(perInch(1.5), inches(13)).si() == near(units("1.5 lbf/in * 13 in", "N")));
}

TEST_CASE("GNU units: stress of 1 lbf/in per mil is the table's unit")
{
    CHECK(tensionFromStress(psi(1000), mils(1)).si() == near(units("lbf/in", "N/m")));
    CHECK(psi(1000).si() / 1e6 == near(units("lbf/in/mil", "N/m/um")));
}

TEST_CASE("GNU units: brake heat of 12 lbf at 200 ft/min")
{
    CHECK(brakeHeat(poundsForce(12), feetPerMinute(200)).si() == near(units("12 lbf * 200 ft/min", "W")));
    CHECK(brakeHeat(poundsForce(12), feetPerMinute(200)).si() == Approx(54.232718).epsilon(1e-6));
}

TEST_CASE("GNU units: grammage of a ream and yield of a film")
{
    const auto ream = [](double lb, double a, double b) { return grammageOfReam(pounds(lb), inches(a) * inches(b)); };
    CHECK(ream(20, 17, 22).si() == near(units("20 lb / (500 * 17 in * 22 in)", "kg/m^2")));
    CHECK(ream(1, 25, 38).si() == near(units("lb / (500 * 25 in * 38 in)", "kg/m^2")));
    CHECK(yield(Density::si(1390), mils(1)).si() * kPound / (kInch * kInch) ==
          near(units("1 / (1.39 g/cm^3 * 1 mil)", "in^2/lb")));
}
