// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/traction.h"

#include "tests/published/evidence.h"
#include "tests/published/outside.h"
#include "tests/published/us_units.h"

using namespace taut;
using namespace taut::physics;
using namespace source;
using namespace evidence;

TEST_CASE("S49: five turns of rope at a friction of 0.6")
{
    // Encyclopaedia article "Capstan equation": 153,552,935 times the holding force.
    const Page page = printed("traction", "S49", "text");
    page.check("C1", "friction 0.6, five turns", capstanRatio(0.6, 5 * 2 * kPi), 153552935, "", within(1));
    page.check("C2", "friction 0.6, five turns", coreHold(0.6, 5), 153552935, "", within(1));
    // Table of the same article, one and two turns: from memory, to the digits shown.
    const Page table = fromMemory("traction", "S49", "table");
    table.check("C2", "friction 0.2, one turn", coreHold(0.2, 1), 3.51, "", within(0.005));
    table.check("C2", "friction 0.3, one turn", coreHold(0.3, 1), 6.59, "", within(0.005));
    table.check("C2", "friction 0.5, two turns", coreHold(0.5, 2), 535.5, "", within(0.05));
}

TEST_CASE("S47, S48, S50: parts of a turn at paper's friction on steel and at a web roller's")
{
    // S47, the belt equation; S48, friction 0.3 of a web on a roller; S50, paper on a steel drum about 0.35.
    const auto power = [](const std::string& mu, const std::string& degrees) {
        return outside::units("exp(" + mu + " * " + degrees + " degree / radian)", "1");
    };
    form("traction", "S47, S50", "belt equation; paper on steel 0.35")
        .check("C1", "friction 0.35, 90 degrees", capstanRatio(0.35, kPi / 2), power("0.35", "90"), "", share(1e-12));
    const Page page = form("traction", "S47, S48", "belt equation; web roller 0.3");
    for (const char* degrees : {"30", "60", "180"})
        page.check("C1", std::string("friction 0.3, ") + degrees + " degrees",
                   capstanRatio(0.3, radians(std::stod(degrees))), power("0.3", degrees), "", share(1e-12));
}

TEST_CASE("GSL: the pull of a web around a roller, integrated")
{
    // dT / dbeta = mu T around half a turn at 0.3.
    referee("traction", "GSL", "odeiv2 rk8pd")
        .check("C1", "friction 0.3, 180 degrees", capstanRatio(0.3, kPi), outside::gsl("capstan"), "", share(1e-10));
}

TEST_CASE("GSL: the constant of the air film under a web")
{
    // H''' = (H - 1) / H^3 integrated away from the uniform film. The constant 0.643 is from memory: Blok and van
    // Rossum 1953, Knox and Sweeney 1971. At 6 eta U / Tw = 1 the film is the constant times the radius.
    referee("traction", "GSL", "odeiv2 rk8pd")
        .check("C4", "constant of H''' = (H - 1) / H^3",
               airFilm(Length::si(1), Viscosity::si(1), Speed::si(1), ForcePerWidth::si(6)).si(), outside::gsl("film"),
               "", within(5e-4));
}

TEST_CASE("S53: air film at a label press's speeds")
{
    // gap = const R (U eta / Tw)^(2/3); eta 1.81e-5 Pa s at 20 C, U twice the web speed, constant from memory.
    const Page page = form("traction", "S53", "chapter 4, constant 0.643 from memory");
    const Viscosity air = Viscosity::si(1.81e-5);
    const auto film = [air](double radius, Speed speeds, double pli) {
        return airFilm(Length::si(radius), air, speeds, perInch(pli)).si();
    };
    page.check("C4", "50 mm, 150 m/min, 1 lbf/in", film(0.05, Speed::si(5), 1) * 1e6, 6.836, "um", share(0.001));
    page.check("C4", "38.1 mm, 150 ft/min, 1 lbf/in", film(0.0381, 2 * feetPerMinute(150), 1) * 1e6, 2.36, "um",
               within(0.005));
    page.check("C4", "100 mm, 300 m/min, 1 lbf/in", film(0.1, Speed::si(10), 1) * 1e6, 21.7, "um", within(0.05));
    // S53: the film grows with the two-thirds power of speed over tension and in proportion to the radius.
    const double once = film(0.05, Speed::si(1), 1);
    page.check("C4", "twice the radius and eight times the speed", film(0.1, Speed::si(8), 1) / once, 8, "",
               share(1e-12));
    page.check("C4", "eight times the tension", film(0.05, Speed::si(1), 8) / once, 0.25, "", share(1e-12));
}

TEST_CASE("S55, S56: traction begins to go at one roughness and is gone at three")
{
    // Ducotey and Good, J. Tribology 121 (1999); "Are You Rough Enough?". The line between is from memory.
    const auto friction = [](double roughnesses) {
        return frictionOverAir(0.3, Length::si(roughnesses * 1e-6), Length::si(1e-6));
    };
    const Page page = printed("traction", "S55, S56", "one and three roughnesses");
    page.check("C5", "friction 0.3, film of one roughness", friction(1), 0.3, "", share(1e-12));
    page.check("C5", "friction 0.3, film of three roughnesses", friction(3), 0, "", kExact);
    CHECK(friction(1.001) < 0.3);
    CHECK(friction(2.999) > 0);
    fromMemory("traction", "S55", "straight line between")
        .check("C5", "friction 0.3, film of two roughnesses", friction(2), 0.15, "", share(1e-12));
}

TEST_CASE("S47, S55, S56: a wrap at speed holds what the air leaves it")
{
    // S47, the belt equation; S55, S56, all of the friction up to one roughness and none of it from three on.
    const auto ratio = [](double roughnesses) {
        return capstanOverAir(0.3, kPi, Length::si(roughnesses * 1e-6), Length::si(1e-6));
    };
    referee("traction", "GSL", "odeiv2 rk8pd")
        .check("C1.air", "friction 0.3, 180 degrees, film of one roughness", ratio(1), outside::gsl("capstan"), "",
               share(1e-10));
    printed("traction", "S55, S56", "one and three roughnesses")
        .check("C1.air", "friction 0.3, 180 degrees, film of three roughnesses", ratio(3), 1, "", kExact);
    fromMemory("traction", "S55", "straight line between")
        .check("C1.air", "friction 0.3, 180 degrees, film of two roughnesses", ratio(2),
               outside::units("exp(0.15 * 180 degree / radian)", "1"), "", share(1e-12));
}
