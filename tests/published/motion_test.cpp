// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/motion.h"

#include "core/physics/roll.h"
#include "tests/published/outside.h"
#include "tests/published/us_units.h"

using namespace taut;
using namespace taut::physics;
using namespace source;

TEST_CASE("S81: threading 12 m within the limits of powered movement")
{
    // Printing machine control definitions: inch at most 25 mm, limited inch 75 mm, crawl 1 m/min and 5 m/min.
    const Length path = Length::si(12);
    CHECK(inches(path, Length::si(0.025)) == Approx(480).epsilon(1e-12));
    CHECK(inches(path, Length::si(0.075)) == Approx(160).epsilon(1e-12));
    CHECK(crawlTime(path, Speed::si(1.0 / 60)).si() / 60 == Approx(12).epsilon(1e-12));
    CHECK(crawlTime(path, Speed::si(5.0 / 60)).si() / 60 == Approx(2.4).epsilon(1e-12));
}

TEST_CASE("S84: a hollow spool whose bore is half its radius")
{
    // Textbook problem "hollow cylindrical spool": J = 0.625 M R^2.
    for (double radius : {0.1, 0.25, 1.0})
        CHECK(rollInertia(Mass::si(3), Length::si(radius), Length::si(radius / 2)).si() ==
              Approx(0.625 * 3 * radius * radius).epsilon(1e-12));
}

TEST_CASE("S24: torque that stops 1000 lb ft2 from 360 rpm in a minute")
{
    // Brake engineering calculations: 19.5 lb ft.
    const Inertia inertia = Inertia::si(1000 * kPound * kFoot * kFoot);
    const double surface = 2 * kPi * 360 / 60 / 60;  // m/s2 at a radius of 1 m
    const Torque torque = accelerationTorque(inertia, Acceleration::si(surface), Length::si(1));
    CHECK(toPoundFeet(torque) == Approx(19.5).epsilon(0.005));
    CHECK(torque.si() ==
          Approx(outside::units("1000 lb ft^2 * 360 rpm / radian / 60 s", "N m / radian")).epsilon(1e-9));
}

TEST_CASE("an emergency stop in one second from 1 m/s, roll of 500 mm")
{
    // Exact arithmetic: 67.51 kg, 58 N, brake set to 14.5 N m.
    const Mass mass = rollMass(Length::si(0.5), Length::si(0.0762), Length::si(150e-6), Length::si(0.33), gsm(160));
    const Inertia inertia = rollInertia(mass, Length::si(0.25), Length::si(0.0381));
    const Acceleration slowing = Acceleration::si(1);
    CHECK(unwindStopTension(Torque::si(14.5), inertia, slowing, Length::si(0.25)).si() == Approx(23.46).epsilon(1e-3));
    CHECK(rewindStopTension(Force::si(58), inertia, slowing, Length::si(0.25)).si() == Approx(92.54).epsilon(1e-3));
}
