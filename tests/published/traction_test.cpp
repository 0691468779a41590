// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/traction.h"

#include "tests/published/outside.h"
#include "tests/published/us_units.h"

using namespace taut;
using namespace taut::physics;
using namespace source;

TEST_CASE("S49: five turns of rope at a friction of 0.6")
{
    // Encyclopaedia article "Capstan equation": 153,552,935 times the holding force.
    CHECK(capstanRatio(0.6, 5 * 2 * kPi) == Approx(153552935).margin(1));
    CHECK(coreHold(0.6, 5) == Approx(153552935).margin(1));
    // Table of the same article, one and two turns: from memory, to the digits shown.
    CHECK(coreHold(0.2, 1) == Approx(3.51).margin(0.005));
    CHECK(coreHold(0.3, 1) == Approx(6.59).margin(0.005));
    CHECK(coreHold(0.5, 2) == Approx(535.5).margin(0.05));
}

TEST_CASE("S47, S50: a quarter turn at paper's friction on steel")
{
    // S47, the belt equation; S50, paper on a steel drum about 0.35. Exact arithmetic.
    CHECK(capstanRatio(0.35, kPi / 2) == Approx(std::pow(std::exp(1.0), 0.35 * kPi / 2)).epsilon(1e-12));
}

TEST_CASE("GSL: the constant of the air film under a web")
{
    // H''' = (H - 1) / H^3 integrated away from the uniform film. The constant 0.643 is from memory: Blok and van
    // Rossum 1953, Knox and Sweeney 1971.
    CHECK(outside::gsl("film") == Approx(0.6430).margin(5e-4));
    // At 6 eta U / Tw = 1 the film is the constant times the radius.
    const double constant = airFilm(Length::si(1), Viscosity::si(1), Speed::si(1), ForcePerWidth::si(6)).si();
    CHECK(constant == Approx(outside::gsl("film")).margin(5e-4));
}

TEST_CASE("air film at a label press's speeds")
{
    // Exact arithmetic of 0.643 R (6 eta U / Tw)^(2/3), eta 1.81e-5 Pa s at 20 C, U twice the web speed.
    const Viscosity air = Viscosity::si(1.81e-5);
    CHECK(airFilm(Length::si(0.05), air, Speed::si(5), perInch(1)).si() * 1e6 == Approx(6.836).epsilon(0.001));
    CHECK(airFilm(Length::si(0.0381), air, 2 * feetPerMinute(150), perInch(1)).si() * 1e6 ==
          Approx(2.36).epsilon(0.003));
    CHECK(airFilm(Length::si(0.1), air, Speed::si(10), perInch(1)).si() * 1e6 == Approx(21.7).epsilon(0.002));
    // S53: the film grows with the two-thirds power of speed over tension and in proportion to the radius.
    const double once = airFilm(Length::si(0.05), air, Speed::si(1), perInch(1)).si();
    CHECK(airFilm(Length::si(0.1), air, Speed::si(8), perInch(1)).si() / once == Approx(8).epsilon(1e-12));
    CHECK(airFilm(Length::si(0.05), air, Speed::si(1), perInch(8)).si() / once == Approx(0.25).epsilon(1e-12));
}

TEST_CASE("S55, S56: traction begins to go at one roughness and is gone at three")
{
    // Ducotey and Good, J. Tribology 121 (1999); "Are You Rough Enough?". The line between is from memory.
    CHECK(frictionOverAir(0.3, Length::si(1e-6), Length::si(1e-6)) == Approx(0.3));
    CHECK(frictionOverAir(0.3, Length::si(1.001e-6), Length::si(1e-6)) < 0.3);
    CHECK(frictionOverAir(0.3, Length::si(2.999e-6), Length::si(1e-6)) > 0);
    CHECK(frictionOverAir(0.3, Length::si(3e-6), Length::si(1e-6)) == 0);
}
