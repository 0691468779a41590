// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/brake.h"

#include "core/physics/dancer.h"
#include "core/physics/lift.h"
#include "core/physics/taper.h"
#include "tests/published/outside.h"
#include "tests/published/us_units.h"

using namespace taut;
using namespace taut::physics;
using namespace source;

TEST_CASE("S24: brake torque and heat of 12 lbf at 200 ft/min, roll 30 in over a 3 in core")
{
    // Brake engineering calculations: 15 lb ft full, 1.5 lb ft at the core; 53 and 54 W (rounded constants).
    CHECK(toPoundFeet(rollTorque(poundsForce(12), inches(30))) == Approx(15).epsilon(1e-9));
    CHECK(toPoundFeet(rollTorque(poundsForce(12), inches(3))) == Approx(1.5).epsilon(1e-9));
    CHECK(buildRatio(inches(30), inches(3)) == Approx(10));
    const double heat = brakeHeat(poundsForce(12), feetPerMinute(200)).si();
    CHECK(heat == Approx(53).epsilon(0.025));
    CHECK(heat == Approx(54).epsilon(0.025));
    for (double diameter : {30.0, 3.0}) {
        const Torque torque = rollTorque(poundsForce(12), inches(diameter));
        const Frequency turns = rollFrequency(feetPerMinute(200), inches(diameter));
        CHECK(clutchHeat(torque, turns, Frequency{}).si() == Approx(heat).epsilon(1e-12));
    }
}

TEST_CASE("S30: 50 lbf at 12 in radius is 600 lb in")
{
    // Designers' notebook 2015, p. 2.
    CHECK(toPoundFeet(rollTorque(poundsForce(50), inches(24))) * 12 == Approx(600).epsilon(1e-9));
}

TEST_CASE("S21: heat is lbf times ft/min over 44 watts")
{
    CHECK(brakeHeat(poundsForce(10), feetPerMinute(440)).si() == Approx(10.0 * 440 / 44).epsilon(0.01));
}

TEST_CASE("S32, S33: a caliper's torque is two friction faces, and pressure follows the radius")
{
    // S32, "Disk brakes": torque = 2 mu F r with F = p A. S33: pressure is torque over a constant, so it scales with
    // the radius of the roll.
    const Area piston = Length::si(0.04) * Length::si(0.04) * (kPi / 4);
    const Force push = cylinderForce(Pressure::si(1e5), Length::si(0.04), 1);
    const Torque torque = caliperTorque(1, 0.35, piston, Length::si(0.12), Pressure::si(1e5));
    CHECK(torque.si() == Approx(2 * 0.35 * push.si() * 0.12).epsilon(1e-12));
    const TorquePer<Pressure> k = torque / Pressure::si(1e5);
    const double large = brakeSetting<Pressure>(poundsForce(12), inches(30), k, Pressure{}).si();
    const double small = brakeSetting<Pressure>(poundsForce(12), inches(3), k, Pressure{}).si();
    CHECK(large / small == Approx(10).epsilon(1e-12));
}

TEST_CASE("S34: taper tension of 100 N, half taper, 76 mm to 380 mm")
{
    // Form: tension x (1 - taper x (1 - smallest diameter / present diameter)); exact arithmetic of it.
    const auto tension = [](double taper, double mm) {
        return hyperbolicTaper(Force::si(100), taper, Length::si(mm / 1000), Length::si(0.076)).si();
    };
    CHECK(tension(0.5, 380) == Approx(60).epsilon(1e-9));
    CHECK(tension(0.5, 228) == Approx(100 * (1 - 0.5 * (1 - 76.0 / 228))).epsilon(1e-9));
    // S36: constant torque lets tension fall as one over the radius: full taper.
    CHECK(tension(1, 380) == Approx(100 * 76.0 / 380).epsilon(1e-9));
}

TEST_CASE("S35, from memory: linear taper of 100 N, half taper")
{
    // Lee, Kang, Kim, Shin, "Effect of taper tension profile on the telescoping in a winding process", J. Mech. Sci.
    // Technol. 23 (2009) 3036.
    const auto tension = [](double mm) {
        return linearTaper(Force::si(100), 0.5, Length::si(mm / 1000), Length::si(0.076), Length::si(0.380)).si();
    };
    CHECK(tension(76) == Approx(100).epsilon(1e-9));
    CHECK(tension(228) == Approx(75).epsilon(1e-9));
    CHECK(tension(380) == Approx(50).epsilon(1e-9));
}

TEST_CASE("S38: two 50 mm cylinders at 6 psi on a dancer, arms 120 and 365 mm")
{
    // Dancer force verification: 81.23 N a cylinder, 162.46 N both, 53.41 N at the roller, 26.71 N in the web.
    const Length bore = Length::si(0.05);
    CHECK(cylinderForce(psi(6), bore, 1).si() == Approx(81.23).margin(0.01));
    CHECK(cylinderForce(psi(6), bore, 1).si() * 2 == Approx(162.46).margin(0.02));
    const Area piston = bore * bore * (kPi / 4);
    const Force tension = dancerTension(2, psi(6), piston, Length::si(0.120), Length::si(0.365), kPi);
    CHECK(rollerForce(tension, kPi).si() == Approx(53.41).margin(0.01));
    CHECK(tension.si() == Approx(26.71).margin(0.05));
    CHECK(dancerPressure(Force::si(26.71), 2, piston, Length::si(0.120), Length::si(0.365), kPi).si() ==
          Approx(psi(6).si()).epsilon(0.002));
}
