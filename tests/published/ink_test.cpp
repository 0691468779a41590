// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/ink.h"

#include "tests/published/outside.h"
#include "tests/published/us_units.h"

using namespace taut;
using namespace taut::physics;
using namespace source;

namespace {
/// One billion cubic micrometres per square inch.
Length bcm(double v) { return Length::si(v * 1e-9 / (kInch * kInch)); }
}  // namespace

TEST_CASE("GNU units: a billion cubic micrometres per square inch")
{
    CHECK(bcm(1).si() * 1e6 == Approx(outside::units("1e9 um^3/in^2", "cm^3/m^2")).epsilon(1e-12));
    CHECK(bcm(1).si() * 1e6 == Approx(1.5500031).epsilon(1e-6));
}

TEST_CASE("S79: two billion cubic micrometres leave three quarters of a micrometre on the film")
{
    // "The Flexo Process: Be Careful" (2001): about 3 um on the roll, half to the plate, half of that to the film.
    CHECK(wetFilm(bcm(2), 1).si() * 1e6 == Approx(3).epsilon(0.05));
    CHECK(wetFilm(bcm(2), 0.5 * 0.5).si() * 1e6 == Approx(0.75).epsilon(0.05));
}

TEST_CASE("S40: a quarter of 4 cm3/m2 is a gram to the square metre")
{
    // Article on anilox units (2024); an ink of about 1 g/cm3.
    const Mass ink = inkMass(Area::si(1), 1, Length::si(4e-6), 0.25, Density::si(1000));
    CHECK(ink.si() * 1000 == Approx(1).epsilon(1e-12));
}

TEST_CASE("S80: ink for a million square inches")
{
    // Ink coverage page: 180,000 in2 to the pound (4 to 5 BCM, non-porous), 9 lb to the gallon; 5.5 lb and 3 lb in the
    // pan and 0.5 lb to set up make 9 lb.
    const Area area = Area::si(1e6 * kInch * kInch);
    const Density ink = Density::si(9 * kPound / outside::units("gallon", "m^3"));
    const Length chart = Length::si(kPound / (180000 * kInch * kInch) / ink.si());
    const double printed = toPounds(inkMass(area, 1, chart, 1, ink));
    CHECK(printed == Approx(5.5).margin(0.1));
    CHECK(printed + 3 + 0.5 == Approx(9).margin(0.1));
    // The chart's film is about half of 4.5 BCM, twice S79's quarter.
    CHECK(toPounds(inkMass(area, 1, bcm(4.5), 0.52, ink)) == Approx(printed).epsilon(0.01));
}
