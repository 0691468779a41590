// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/brake.h"

#include "core/physics/dancer.h"
#include "core/physics/lift.h"
#include "core/physics/taper.h"
#include "tests/published/evidence.h"
#include "tests/published/outside.h"
#include "tests/published/us_units.h"

using namespace taut;
using namespace taut::physics;
using namespace source;
using namespace evidence;

TEST_CASE("S24: brake torque and heat of 12 lbf at 200 ft/min, roll 30 in over a 3 in core")
{
    // Brake engineering calculations: 15 lb ft full, 1.5 lb ft at the core; 53 and 54 W (rounded constants).
    const Page page = printed("brake", "S24", "tension and heat example");
    page.check("B1", "12 lbf, roll of 30 in", toPoundFeet(rollTorque(poundsForce(12), inches(30))), 15, "lbf ft",
               share(1e-9));
    page.check("B1", "12 lbf, core of 3 in", toPoundFeet(rollTorque(poundsForce(12), inches(3))), 1.5, "lbf ft",
               share(1e-9));
    form("brake", "S24", "tension and heat example")
        .check("B4", "torque of the full roll over the core's, 30 in over 3 in", buildRatio(inches(30), inches(3)),
               15 / 1.5, "", share(1e-12));
    const double heat = brakeHeat(poundsForce(12), feetPerMinute(200)).si();
    page.check("B3", "12 lbf at 200 ft/min, the lower of the two printed", heat, 53, "W", share(0.025));
    page.check("B3", "12 lbf at 200 ft/min, the higher of the two printed", heat, 54, "W", share(0.025));
    for (const auto& [size, asked] :
         {std::pair(30.0, "15 lbf ft at 25.46 rpm"), std::pair(3.0, "1.5 lbf ft at 254.6 rpm")}) {
        const Torque torque = rollTorque(poundsForce(12), inches(size));
        const Frequency turns = rollFrequency(feetPerMinute(200), inches(size));
        page.check("B3.clutch", std::string(asked) + ", 53 to 54 W printed",
                   clutchHeat(torque, turns, Frequency{}).si(), 53.5, "W", within(1.5));
    }
}

TEST_CASE("GNU units: heat of a clutch from torque and turns")
{
    const Torque torque = Torque::si(15 * kPoundForce * kFoot);
    referee("brake", "units", "2 pi M n")
        .check("B3.clutch", "15 lbf ft, 100 rpm in, 74.54 rpm out",
               clutchHeat(torque, Frequency::si(100.0 / 60), Frequency::si(74.54 / 60)).si(),
               outside::units("15 lbf ft * 2 pi * 25.46 / min", "W"), "W", share(1e-12));
}

TEST_CASE("S30: 50 lbf at 12 in radius is 600 lb in")
{
    // Designers' notebook 2015, p. 2.
    printed("brake", "S30", "p. 2")
        .check("B1", "50 lbf at a radius of 12 in", toPoundFeet(rollTorque(poundsForce(50), inches(24))) * 12, 600,
               "lbf in", share(1e-9));
}

TEST_CASE("S21: heat is lbf times ft/min over 44 watts")
{
    const Page page = printed("brake", "S21", "formulas of heat");
    page.check("B3", "10 lbf at 440 ft/min, over 44", brakeHeat(poundsForce(10), feetPerMinute(440)).si(),
               10.0 * 440 / 44, "W", share(0.01));
    // The factor 0.012 is printed to two digits (0.01183).
    page.check("B3.clutch", "100 lbf in at 60 rpm, times 0.012",
               clutchHeat(Torque::si(100 * kPoundForce * kInch), Frequency::si(1), Frequency{}).si(), 100 * 60 * 0.012,
               "W", share(0.015));
}

TEST_CASE("S32, S33: a caliper's torque is two friction faces, and pressure follows the radius")
{
    // S32, "Disk brakes": torque = 2 mu F r with F = p A. S33: pressure is torque over a constant, so it scales with
    // the radius of the roll.
    const Area piston = Length::si(0.04) * Length::si(0.04) * (kPi / 4);
    const Torque torque = caliperTorque(1, 0.35, piston, Length::si(0.12), Pressure::si(1e5));
    form("brake", "S32", "torque = 2 mu F r, F = p A")
        .check("B5.torque", "friction 0.35, piston 40 mm, radius 120 mm, 1 bar", torque.si(),
               outside::units("2 * 0.35 * 1 bar * pi / 4 * (40 mm)^2 * 120 mm", "N m"), "N m", share(1e-12));
    const TorquePer<Pressure> k = TorquePer<Pressure>::si(12 / 1e5);
    const auto setting = [k](double millimetres) {
        return brakeSetting<Pressure>(Force::si(58), Length::si(millimetres / 1000), k, Pressure{}).si() / 1e5;
    };
    const Page rule = form("brake", "S33", "pressure = torque over the brake's constant");
    for (const auto& [millimetres, bar] : {std::pair(500.0, 58 * 0.25 / 12), std::pair(100.0, 58 * 0.05 / 12)})
        rule.check("B5", "58 N, 12 N m/bar, " + figure(millimetres) + " mm", setting(millimetres), bar, "bar",
                   share(1e-12));
    // The same page: pressure left alone, tension rises as the radius falls.
    const auto leftAlone = [k](double millimetres) {
        return brakeTension<Pressure>(Length::si(millimetres / 1000), k, Pressure{},
                                      Pressure::si(1e5 * 58 * 0.25 / 12));
    };
    rule.check("B5.tension", "pressure for 58 N at 500 mm, left alone to 250 mm", leftAlone(250).si(), 2 * 58, "N",
               share(1e-12));
    referee("brake", "units", "2 k p / D")
        .check("B5.tension", "12 N m/bar at 1.2 bar on 400 mm",
               brakeTension<Pressure>(Length::si(0.4), k, Pressure{}, Pressure::si(1.2e5)).si(),
               outside::units("2 * 12 N m / bar * 1.2 bar / 400 mm", "N"), "N", share(1e-12));
    rule.check("B5.diameter", "58 N, 12 N m/bar, 0.725 bar",
               brakeDiameter<Pressure>(Force::si(58), k, Pressure{}, Pressure::si(72500)).si() * 1000, 300, "mm",
               share(1e-12));
}

TEST_CASE("S34: taper tension of 100 N, half taper, 76 mm to 380 mm")
{
    // Form: tension x (1 - taper x (1 - smallest diameter / present diameter)); exact arithmetic of it.
    const auto tension = [](double taper, double mm) {
        return hyperbolicTaper(Force::si(100), taper, Length::si(mm / 1000), Length::si(0.076)).si();
    };
    const Page page = form("taper", "S34", "formula of the set point");
    page.check("B6.hyperbolic", "100 N from 76 mm, taper 0.5, 380 mm", tension(0.5, 380), 60, "N", share(1e-9));
    page.check("B6.hyperbolic", "100 N from 76 mm, taper 0.5, 228 mm", tension(0.5, 228),
               100 * (1 - 0.5 * (1 - 76.0 / 228)), "N", share(1e-9));
    // S36: constant torque lets tension fall as one over the radius: full taper.
    form("taper", "S36", "constant torque")
        .check("B6.hyperbolic", "100 N from 76 mm, taper 1, 380 mm", tension(1, 380), 100 * 76.0 / 380, "N",
               share(1e-9));
}

TEST_CASE("S35, from memory: linear taper of 100 N, half taper")
{
    // Lee, Kang, Kim, Shin, "Effect of taper tension profile on the telescoping in a winding process", J. Mech. Sci.
    // Technol. 23 (2009) 3036.
    const auto tension = [](double mm) {
        return linearTaper(Force::si(100), 0.5, Length::si(mm / 1000), Length::si(0.076), Length::si(0.380)).si();
    };
    const Page page = fromMemory("taper", "S35", "linear profile");
    for (const auto& [mm, newtons] : {std::pair(76.0, 100.0), std::pair(228.0, 75.0), std::pair(380.0, 50.0)})
        page.check("B6.linear", "100 N from 76 to 380 mm, taper 0.5, " + figure(mm) + " mm", tension(mm), newtons, "N",
                   share(1e-9));
}

TEST_CASE("S38: two 50 mm cylinders at 6 psi on a dancer, arms 120 and 365 mm")
{
    // Dancer force verification: 81.23 N a cylinder, 162.46 N both, 53.41 N at the roller, 26.71 N in the web.
    const Page page = printed("dancer", "S38", "worked example");
    const Length bore = Length::si(0.05);
    const Length a = Length::si(0.120);
    const Length b = Length::si(0.365);
    page.check("N1", "one cylinder", cylinderForce(psi(6), bore, 1).si(), 81.23, "N", within(0.01));
    page.check("N1", "both cylinders", cylinderForce(psi(6), bore, 1).si() * 2, 162.46, "N", within(0.02));
    const Area piston = bore * bore * (kPi / 4);
    const Force tension = dancerTension(2, psi(6), piston, a, b, kPi);
    page.check("B8", "force of the web on the roller, 180 degrees", rollerForce(tension, kPi).si(), 53.41, "N",
               within(0.01));
    page.check("B7", "tension of the web", tension.si(), 26.71, "N", within(0.01));
    page.check("B7.setting", "pressure for 26.71 N", dancerPressure(Force::si(26.71), 2, piston, a, b, kPi).si() / kPsi,
               6, "psi", share(0.001));
    // The same push from a weight on the arm instead of the cylinders.
    form("dancer", "S38", "worked example, its force as a weight")
        .check("B7.weight", "mass that pulls as the cylinders do", dancerWeight(Force::si(26.705), a, b, kPi).si(),
               outside::units("162.46 N / gravity", "kg"), "kg", share(0.001));
}

TEST_CASE("S31b: a roller carries twice the tension times the sine of half the wrap")
{
    const Page page = form("dancer", "S31b", "p. 53, F = 2 T sin(wrap / 2)");
    page.check("B8", "58 N, 90 degrees", rollerForce(Force::si(58), kPi / 2).si(), 58 * std::sqrt(2.0), "N",
               share(1e-12));
    page.check("B8", "58 N, 60 degrees", rollerForce(Force::si(58), kPi / 3).si(), 58, "N", share(1e-12));
    definition("dancer", "share of a range")
        .check("B8.setting", "58 N of a cell of 200 N", shareOfRange(Force::si(58), Force::si(200)) * 100, 29, "%",
               share(1e-12));
}
