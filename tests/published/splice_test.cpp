// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/splice.h"

#include "tests/published/outside.h"
#include "tests/published/us_units.h"

using namespace taut;
using namespace taut::physics;
using namespace source;

TEST_CASE("S60: stresses on a joint at 25 degrees to the axis under 18 MPa")
{
    // Gere and Timoshenko, Mechanics of Materials, 3rd SI edition, scarf-joint problem (statement); answers by the
    // stress transformation: 3.215 and 6.894 MPa; normal to shear 6 to 5 at 50.19 degrees.
    const double lean = radians(90 - 25);
    CHECK(spliceNormalStress(Pressure::si(18e6), lean).si() / 1e6 == Approx(3.215).epsilon(0.001));
    CHECK(spliceShearStress(Pressure::si(18e6), lean).si() / 1e6 == Approx(6.894).epsilon(0.001));
    const double even = radians(90 - 50.19);
    CHECK(spliceNormalStress(Pressure::si(1e6), even).si() / spliceShearStress(Pressure::si(1e6), even).si() ==
          Approx(1.2).epsilon(0.001));
}

TEST_CASE("S60: a straight cut carries all of the stress, a cut at 45 degrees half of it each way")
{
    CHECK(spliceNormalStress(Pressure::si(1e6), 0).si() == Approx(1e6));
    CHECK(spliceShearStress(Pressure::si(1e6), 0).si() == 0);
    CHECK(spliceNormalStress(Pressure::si(1e6), radians(45)).si() == Approx(0.5e6));
    CHECK(spliceShearStress(Pressure::si(1e6), radians(45)).si() == Approx(0.5e6));
    CHECK(spliceNormalStress(Pressure::si(1e6), radians(15)).si() == Approx(0.933e6).epsilon(0.001));
}

TEST_CASE("S58: margins of a published film tape over 2 lbf/in")
{
    // National research council evaluation 14018-R, results: tensile 6.32 N/mm, lap shear 3.95 to its own backing and
    // 2.20 to polyethylene film. A building tape: the arithmetic is checked, not a splice tape.
    const auto margin = [](double newtonsPerMm) {
        return spliceMargin(ForcePerWidth::si(newtonsPerMm * 1000), perInch(2));
    };
    CHECK(margin(6.32) == Approx(18.0).epsilon(0.01));
    CHECK(margin(3.95) == Approx(11.3).epsilon(0.01));
    CHECK(margin(2.20) == Approx(6.3).epsilon(0.01));
}

TEST_CASE("S59, load from memory: shear stress of a holding test is a splice's at 2 lbf/in")
{
    // ASTM D3654/D3654M, usual load 1 kg on 25 x 25 mm (from memory): 15.69 kPa. 2 lbf/in over 25 mm: 14.01 kPa.
    const double side = 0.025;
    const double holding = 9.80665 / (side * side);
    CHECK(holding == Approx(15690).epsilon(0.001));
    const ForcePerWidth held = ForcePerWidth::si(holding * side);
    CHECK(spliceMargin(held, perInch(2)) == Approx(15.69 / 14.01).epsilon(0.001));
}
