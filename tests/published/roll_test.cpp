// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/roll.h"

#include "core/physics/brake.h"
#include "core/physics/material.h"
#include "tests/published/outside.h"
#include "tests/published/us_units.h"

using namespace taut;
using namespace taut::physics;
using namespace source;

TEST_CASE("S2: length of an Archimedean spiral, its published test values")
{
    // Giangrandi, "Spiral calculator", equations; values of a public JavaScript test suite of them.
    // Any one unit of length serves.
    const auto roll = [](double t, double d, double outer, auto length) {
        return length(Length::si(outer), Length::si(d), Length::si(t)).si();
    };
    CHECK(roll(0.1, 2, 3, spiralLength) == Approx(39.27313462).margin(5e-9));
    CHECK(roll(0.06, 18, 60, spiralLength) == Approx(42882.74547).margin(5e-6));
    CHECK(roll(0.1, 2, 3, rollLength) == Approx(39.27313462).epsilon(1e-4));
    CHECK(roll(0.06, 18, 60, rollLength) == Approx(42882.74547).epsilon(1e-6));
}

TEST_CASE("GSL quadrature: the same spirals integrated")
{
    const auto spiral = [](double t, double d, double outer) {
        return spiralLength(Length::si(outer), Length::si(d), Length::si(t)).si();
    };
    CHECK(spiral(0.1, 2, 3) == Approx(outside::gsl("spiral_1")).epsilon(1e-11));
    CHECK(spiral(0.06, 18, 60) == Approx(outside::gsl("spiral_2")).epsilon(1e-11));
}

TEST_CASE("S8: feet of web in 100 lb of a 50 lb book paper, 26 in wide")
{
    // Paper formulas page: 3,045 ft, basic size 25 x 38 in.
    const Grammage grammage = grammageOfReam(pounds(50), inches(25) * inches(38));
    CHECK(toFeet(lengthFromMass(pounds(100), inches(26), grammage)) == Approx(3045).margin(0.5));
}

TEST_CASE("S7, S12: two sources give bond paper one density, and a roll one mass")
{
    // S7, "Paper math formulas": W = (D^2 - d^2) w 0.021 lb/in3 for bond. S12, "Caliper and paper weight": 20 lb bond
    // is 0.004 in. S10: 20 lb bond is 75.2 g/m2.
    const Grammage grammage = grammageOfReam(pounds(20), inches(17) * inches(22));
    const double density = (grammage / inches(0.004)).si();
    CHECK(density == Approx(740.1).epsilon(0.005));
    CHECK(0.021 / (kPi / 4) * kPound / (kInch * kInch * kInch) == Approx(density).epsilon(0.005));
    const Mass roll = rollMass(inches(40), inches(3), inches(0.004), inches(17), grammage);
    CHECK(toPounds(roll) == Approx((40.0 * 40 - 3 * 3) * 17 * 0.021).epsilon(0.005));
}

TEST_CASE("S24: speed of a roll at 200 ft/min, core 3 in and roll 30 in")
{
    // Brake engineering calculations: 25.46 rpm full, 254.6 rpm at the core.
    CHECK(rollFrequency(feetPerMinute(200), inches(30)).si() * 60 == Approx(25.46).margin(0.01));
    CHECK(rollFrequency(feetPerMinute(200), inches(3)).si() * 60 == Approx(254.6).margin(0.1));
}

TEST_CASE("S21: rpm is 3.8 times ft/min over inches")
{
    // Brake sizing page; the factor is printed to two digits (12 / pi = 3.82).
    CHECK(rollFrequency(feetPerMinute(100), inches(10)).si() * 60 == Approx(3.8 * 100 / 10).epsilon(0.01));
}
