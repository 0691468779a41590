// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/brake.h"
#include "core/physics/material.h"
#include "core/physics/span.h"
#include "core/physics/tension.h"
#include "tests/published/evidence.h"
#include "tests/published/outside.h"
#include "tests/published/us_units.h"

using namespace taut;
using namespace taut::physics;
using namespace source;
using namespace evidence;

using outside::units;

namespace {
// GNU units 2.22 (2022), file definitions.units: a general reference for every conversion below.
Page gnu(const char* topic) { return referee(topic, "units", "definitions.units"); }
constexpr Tolerance kNear = share(1e-12);
}  // namespace

TEST_CASE("GNU units: the units of the sources are the defined ones")
{
    const Page page = gnu("units");
    page.check("–", "1 in, as the sources' figures are read", kInch, units("in", "m"), "m", kNear);
    page.check("–", "1 ft", kFoot, units("ft", "m"), "m", kNear);
    page.check("–", "1 lb", kPound, units("lb", "kg"), "kg", kNear);
    page.check("–", "1 lbf", kPoundForce, units("lbf", "N"), "N", kNear);
    page.check("–", "1 psi", kPsi, units("psi", "Pa"), "Pa", kNear);
}

TEST_CASE("GNU units: tension of 1 lbf/in over a width in inches")
{
    const Page page = gnu("tension");
    page.check("T1", "1 lbf/in over 1 m", totalTension(perInch(1), Length::si(1)).si(), units("lbf/in", "N/m"), "N",
               kNear);
    page.check("T1", "1.5 lbf/in over 13 in", totalTension(perInch(1.5), inches(13)).si(),
               units("1.5 lbf/in * 13 in", "N"), "N", kNear);
}

TEST_CASE("GNU units: stress of 1 lbf/in per mil is the table's unit")
{
    const Page page = gnu("tension");
    page.check("T2", "1000 psi on 1 mil", tensionFromStress(psi(1000), mils(1)).si(), units("lbf/in", "N/m"), "N/m",
               kNear);
    page.check("T2", "1 lbf/in per mil on 1 um", tensionFromStress(psi(1000), Length::si(1e-6)).si(),
               units("lbf/in/mil", "N/m/um"), "N/m", kNear);
}

TEST_CASE("GNU units: brake heat of 12 lbf at 200 ft/min")
{
    gnu("brake").check("B3", "12 lbf at 200 ft/min", brakeHeat(poundsForce(12), feetPerMinute(200)).si(),
                       units("12 lbf * 200 ft/min", "W"), "W", kNear);
}

TEST_CASE("GNU units: grammage of a ream and yield of a film")
{
    const auto ream = [](double lb, double a, double b) { return grammageOfReam(pounds(lb), inches(a) * inches(b)); };
    const Page page = gnu("material");
    page.check("W1", "20 lb, 500 sheets of 17 x 22 in", ream(20, 17, 22).si() * 1000,
               units("20 lb / (500 * 17 in * 22 in)", "g/m^2"), "g/m2", kNear);
    page.check("W1", "1 lb, 500 sheets of 25 x 38 in", ream(1, 25, 38).si() * 1000,
               units("lb / (500 * 25 in * 38 in)", "g/m^2"), "g/m2", kNear);
    page.check("W3", "1.39 g/cm3, 1 mil", yield(Density::si(1390), mils(1)).si() * kPound / (kInch * kInch),
               units("1 / (1.39 g/cm^3 * 1 mil)", "in^2/lb"), "in2/lb", kNear);
}

TEST_CASE("GNU units: what a speed error does to a stiff film")
{
    gnu("span").check("D3", "polyester 50 um, 4.5 GPa, 0.01 % of 150 m/min",
                      drawError(Pressure::si(4.5e9), Length::si(50e-6), Speed::si(2.5), Speed::si(2.5e-4)).si(),
                      units("4.5 GPa * 50 um * 0.01 percent", "N/m"), "N/m", kNear);
}
