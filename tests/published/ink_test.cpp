// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/ink.h"

#include "tests/published/evidence.h"
#include "tests/published/outside.h"
#include "tests/published/us_units.h"

using namespace taut;
using namespace taut::physics;
using namespace source;
using namespace evidence;

namespace {
/// One billion cubic micrometres per square inch.
Length bcm(double v) { return Length::si(v * 1e-9 / (kInch * kInch)); }
}  // namespace

TEST_CASE("GNU units: a billion cubic micrometres per square inch")
{
    const Page page = referee("ink", "units", "1e9 um^3/in^2");
    const double one = outside::units("1e9 um^3/in^2", "cm^3/m^2");
    page.check("F7", "1 BCM, all of it", wetFilm(bcm(1), 1).si() * 1e6, one, "um", share(1e-12));
    page.check("F7", "4.5 BCM, a quarter of it", wetFilm(bcm(4.5), 0.25).si() * 1e6, 4.5 * one / 4, "um", share(1e-12));
    page.check("F8", "100 m2, coverage 0.3, 4.5 BCM, a quarter of it, 1.05 g/cm3",
               inkMass(Area::si(100), 0.3, bcm(4.5), 0.25, Density::si(1050)).si(),
               outside::units("100 m^2 * 0.3 * 4.5e9 um^3/in^2 * 0.25 * 1.05 g/cm^3", "kg"), "kg", share(1e-12));
}

TEST_CASE("S79: two billion cubic micrometres leave three quarters of a micrometre on the film")
{
    // "The Flexo Process: Be Careful" (2001): about 3 um on the roll, half to the plate, half of that to the film.
    const Page page = printed("ink", "S79", "transfer of ink");
    page.check("F7", "2 BCM on the roll", wetFilm(bcm(2), 1).si() * 1e6, 3, "um", share(0.05));
    page.check("F7", "2 BCM, half and half again, on the film", wetFilm(bcm(2), 0.5 * 0.5).si() * 1e6, 0.75, "um",
               share(0.05));
}

TEST_CASE("S40: a quarter of 4 cm3/m2 is a gram to the square metre")
{
    // Article on anilox units (2024); an ink of about 1 g/cm3.
    printed("ink", "S40", "quarter rule")
        .check("F8", "1 m2, 4 cm3/m2, a quarter of it, 1 g/cm3",
               inkMass(Area::si(1), 1, Length::si(4e-6), 0.25, Density::si(1000)).si() * 1000, 1, "g", share(1e-12));
}

TEST_CASE("S80: ink for a million square inches")
{
    // Ink coverage page: 180,000 in2 to the pound (4 to 5 BCM, non-porous), 9 lb to the gallon; 5.5 lb and 3 lb in the
    // pan and 0.5 lb to set up make 9 lb.
    const Page page = printed("ink", "S80", "worked example");
    const Area area = Area::si(1e6 * kInch * kInch);
    const Density ink = Density::si(9 * kPound / outside::units("gallon", "m^3"));
    const Length chart = Length::si(kPound / (180000 * kInch * kInch) / ink.si());
    const double mass = toPounds(inkMass(area, 1, chart, 1, ink));
    page.check("F8", "1,000,000 in2 at 180,000 in2/lb", mass, 5.5, "lb", within(0.1));
    page.check("F8", "the same, with pan 3 lb and set-up 0.5 lb", mass + 3 + 0.5, 9, "lb", within(0.1));
    // The chart's film is about half of 4.5 BCM, twice S79's quarter.
    page.check("F8", "the same by 52 % of 4.5 BCM", toPounds(inkMass(area, 1, bcm(4.5), 0.52, ink)), 1e6 / 180000, "lb",
               share(0.01));
}
