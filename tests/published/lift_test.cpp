// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/lift.h"

#include "tests/published/evidence.h"
#include "tests/published/outside.h"
#include "tests/published/us_units.h"

using namespace taut;
using namespace taut::physics;
using namespace source;
using namespace evidence;

TEST_CASE("S38, S74: push of an air cylinder")
{
    // S38: 50 mm at 6 psi, 81.23 N. S74, force of a cylinder: pressure times piston area.
    printed("lift", "S38", "worked example")
        .check("N1", "50 mm at 6 psi", cylinderForce(psi(6), Length::si(0.05), 1).si(), 81.23, "N", within(0.01));
    const Page page = form("lift", "S74", "pressure times piston area");
    page.check("N1", "2 in at 80 psi", cylinderForce(psi(80), inches(2), 1).si() / kPoundForce,
               outside::units("80 psi * pi / 4 * (2 in)^2", "lbf"), "lbf", share(1e-12));
    page.check("N1", "50 mm at 6 bar", cylinderForce(Pressure::si(6e5), Length::si(0.05), 1).si(),
               outside::units("6 bar * pi / 4 * (50 mm)^2", "N"), "N", share(1e-12));
}

TEST_CASE("S75: pressure that lifts 300 kg on two 100 mm bores at an efficiency of 0.85")
{
    // Pneumatic cylinder calculator: 0.85 is typical.
    const Pressure pressure = liftPressure(Mass::si(300), 2, Length::si(0.1), 0.85, 1);
    form("lift", "S75", "efficiency 0.85")
        .check("N2", "300 kg, two bores of 100 mm", pressure.si() / 1000,
               outside::units("300 kg gravity / (2 * pi / 4 * (100 mm)^2 * 0.85)", "kPa"), "kPa", share(1e-12));
    referee("lift", "units", "weight of 300 kg")
        .check("N1", "both cylinders at that pressure", 2 * cylinderForce(pressure, Length::si(0.1), 0.85).si(),
               outside::units("300 kg gravity", "N"), "N", share(1e-12));
}
