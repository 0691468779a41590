// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/motion.h"

#include "core/physics/roll.h"
#include "tests/published/evidence.h"
#include "tests/published/outside.h"
#include "tests/published/us_units.h"

using namespace taut;
using namespace taut::physics;
using namespace source;
using namespace evidence;

TEST_CASE("S81: threading 12 m within the limits of powered movement")
{
    // Printing machine control definitions: inch at most 25 mm, limited inch 75 mm, crawl 1 m/min and 5 m/min.
    const Page page = form("motion", "S81", "limits of powered movement");
    const Length path = Length::si(12);
    for (const auto& [mm, presses] : {std::pair(25.0, 480.0), std::pair(75.0, 160.0)})
        page.check("V2.inches", "12 m by " + figure(mm) + " mm a press", physics::inches(path, Length::si(mm / 1000)),
                   presses, "presses", share(1e-12));
    // 12 m by 70 mm is 171.43 presses: the last part of a press is pressed like the others.
    page.check("V2.inches", "12 m by 70 mm a press, rounded up", physics::inches(path, Length::si(0.07)), 172,
               "presses", share(1e-12));
    for (const auto& [crawl, minutes] : {std::pair(1.0, 12.0), std::pair(5.0, 2.4)})
        page.check("V2.crawl", "12 m at " + figure(crawl) + " m/min", crawlTime(path, Speed::si(crawl / 60)).si() / 60,
                   minutes, "min", share(1e-12));
}

TEST_CASE("GSL: a web that runs on and then slows, integrated")
{
    // ds/dt = v, dv/dt = 0 until the brake acts and -a after it; 150 m/min, 0.2 s, 1 m/s2.
    const Speed speed = Speed::si(2.5);
    referee("motion", "GSL", "odeiv2 rk8pd")
        .check("V1.distance", "150 m/min, 0.2 s before it slows, 1 m/s2",
               stopDistance(speed, Time::si(0.2), Acceleration::si(1)).si(), outside::gsl("stop_distance"), "m",
               share(1e-10));
    referee("motion", "units", "tr + v / a")
        .check("V1.time", "150 m/min, 0.2 s before it slows, 1 m/s2",
               stopTime(speed, Time::si(0.2), Acceleration::si(1)).si(),
               outside::units("0.2 s + 150 m/min / (1 m/s^2)", "s"), "s", share(1e-12));
}

TEST_CASE("S84: a hollow spool whose bore is half its radius")
{
    // Textbook problem "hollow cylindrical spool": its factor 5 M / 4 comes from J = 0.625 M R^2 alone.
    const Page page = form("motion", "S84", "problem with a factor of 5 M / 4");
    for (double radius : {0.1, 0.25, 1.0})
        page.check("V4", "3 kg, radius " + figure(radius) + " m",
                   rollInertia(Mass::si(3), Length::si(radius), Length::si(radius / 2)).si(),
                   0.625 * 3 * radius * radius, "kg m2", share(1e-12));
}

TEST_CASE("S84: the same spool as web wound on a core, two bodies of one density")
{
    // Cut anywhere between bore and rim, the two hollow cylinders turn like the spool: masses go by R^2 - r^2.
    const Page page = form("motion", "S84", "problem with a factor of 5 M / 4, spool cut in two");
    for (double cut : {0.55, 0.75, 0.95}) {
        const double core = 3 * (cut * cut - 0.25) / 0.75;
        page.check("V4.roll", "3 kg, radius 0.25 m, core up to " + figure(cut) + " of it",
                   woundRollInertia(Mass::si(3 - core), Length::si(0.25), Length::si(0.25 * cut), Mass::si(core),
                                    Length::si(0.125))
                       .si(),
                   0.625 * 3 * 0.25 * 0.25, "kg m2", share(1e-12));
    }
}

TEST_CASE("S24: torque that stops 1000 lb ft2 from 360 rpm in a minute")
{
    // Brake engineering calculations: 19.5 lb ft.
    const Inertia inertia = Inertia::si(1000 * kPound * kFoot * kFoot);
    const double surface = 2 * kPi * 360 / 60 / 60;  // m/s2 at a radius of 1 m
    const Torque torque = accelerationTorque(inertia, Acceleration::si(surface), Length::si(1));
    printed("motion", "S24", "inertia example")
        .check("V5", "1000 lb ft2 from 360 rpm in 60 s", toPoundFeet(torque), 19.5, "lbf ft", share(0.005));
    referee("motion", "units", "J 2 pi n / t")
        .check("V5", "1000 lb ft2 from 360 rpm in 60 s", torque.si(),
               outside::units("1000 lb ft^2 * 360 rpm / radian / 60 s", "N m / radian"), "N m", share(1e-9));
}

TEST_CASE("S43: a unit of tension and the roller equation of the benchmark")
{
    // dv/dt = (R^2 / J) (T2 - T1) + (R / J) u, J 0.95 kg m2, R 0.04 m: R^2 / J = 0.00168421, R / J = 0.0421053.
    const Page page = form("motion", "S43", "roller equation, J 0.95 kg m2, R 0.04 m");
    const Inertia inertia = Inertia::si(0.95);
    const Length radius = Length::si(0.04);
    page.check("V5", "torque for R / J = 0.0421053 m/s2",
               accelerationTorque(inertia, Acceleration::si(0.0421053), radius).si(), 1, "N m", share(2e-6));
    page.check("V6", "tension without a brake at R^2 / J = 0.00168421 m/s2",
               unwindStopTension(Torque{}, inertia, Acceleration::si(0.00168421), radius).si(), -1, "N", share(2e-6));
    page.check("V7", "tension above none at R^2 / J = 0.00168421 m/s2",
               rewindStopTension(Force{}, inertia, Acceleration::si(0.00168421), radius).si(), 1, "N", share(2e-6));
    page.check("V6", "the same with u = 0.04 N m at the brake, which is 1 N",
               unwindStopTension(Torque::si(0.08), inertia, Acceleration::si(0.00168421), radius).si(), 1, "N",
               share(4e-6));
    page.check("V7", "the same over a running tension of 28 N",
               rewindStopTension(Force::si(28), inertia, Acceleration::si(0.00168421), radius).si(), 29, "N",
               share(2e-6));
}

TEST_CASE("S43: the torque that keeps a unit of tension while the benchmark's roller slows")
{
    // dv/dt = (R^2 / J) (T2 - T1) + (R / J) u: 1 N held at R = 0.04 m takes 0.04 N m, slowing at R^2 / J as much again.
    const Page page = form("motion", "S43", "roller equation, J 0.95 kg m2, R 0.04 m");
    page.check("V6.hold", "1 N kept at R^2 / J = 0.00168421 m/s2",
               unwindHoldTorque(Force::si(1), Inertia::si(0.95), Acceleration::si(0.00168421), Length::si(0.04)).si(),
               0.08, "N m", share(2e-6));
    referee("motion", "units", "T R + J a / R")
        .check("V6.hold", "58 N, 2.1587 kg m2, 1 m/s2, radius 250 mm",
               unwindHoldTorque(Force::si(58), Inertia::si(2.1587), Acceleration::si(1), Length::si(0.25)).si(),
               outside::units("58 N * 250 mm + 2.1587 kg m^2 * 1 m/s^2 / (250 mm)", "N m"), "N m", share(1e-12));
}

TEST_CASE("an emergency stop in one second from 1 m/s, roll of 500 mm")
{
    // Exact arithmetic: 67.51 kg, 58 N, brake set to 14.5 N m.
    const Page page = definition("motion", "equilibrium of the roll");
    const Mass mass = rollMass(Length::si(0.5), Length::si(0.0762), Length::si(150e-6), Length::si(0.33), gsm(160));
    const Inertia inertia = rollInertia(mass, Length::si(0.25), Length::si(0.0381));
    const Acceleration slowing = Acceleration::si(1);
    page.check("V6", "58 N, 500 mm, 1 m/s to rest in 1 s",
               unwindStopTension(Torque::si(14.5), inertia, slowing, Length::si(0.25)).si(), 23.46, "N", share(1e-3));
    page.check("V7", "58 N, 500 mm, 1 m/s to rest in 1 s",
               rewindStopTension(Force::si(58), inertia, slowing, Length::si(0.25)).si(), 92.54, "N", share(1e-3));
}
