// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/lift.h"

#include "tests/published/outside.h"
#include "tests/published/us_units.h"

using namespace taut;
using namespace taut::physics;
using namespace source;

TEST_CASE("S38, S74: push of an air cylinder")
{
    // S38: 50 mm at 6 psi, 81.23 N. S74, force of a cylinder: pressure times piston area; 2 in at 80 psi is
    // 251.33 lbf, 50 mm at 6 bar 1178.1 N (arithmetic).
    CHECK(cylinderForce(psi(6), Length::si(0.05), 1).si() == Approx(81.23).margin(0.01));
    CHECK(cylinderForce(psi(80), inches(2), 1).si() / kPoundForce == Approx(251.33).margin(0.005));
    CHECK(cylinderForce(Pressure::si(6e5), Length::si(0.05), 1).si() == Approx(1178.1).margin(0.05));
}

TEST_CASE("S75: pressure that lifts 300 kg on two 100 mm bores at an efficiency of 0.85")
{
    // Pneumatic cylinder calculator: 0.85 is typical; 220.34 kPa by arithmetic.
    const Pressure pressure = liftPressure(Mass::si(300), 2, Length::si(0.1), 0.85, 1);
    CHECK(pressure.si() / 1000 == Approx(220.34).margin(0.005));
    const double weight = outside::units("300 kg gravity", "N");
    CHECK(2 * cylinderForce(pressure, Length::si(0.1), 0.85).si() == Approx(weight).epsilon(1e-12));
}
