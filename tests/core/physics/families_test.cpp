// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>
#include <cmath>

#include "core/physics/belt.h"
#include "core/physics/brake.h"
#include "core/physics/dancer.h"
#include "core/physics/domain.h"
#include "core/physics/gearing.h"
#include "core/physics/guide.h"
#include "core/physics/lateral.h"
#include "core/physics/lift.h"
#include "core/physics/material.h"
#include "core/physics/motion.h"
#include "core/physics/roll.h"
#include "core/physics/span.h"
#include "core/physics/taper.h"
#include "core/physics/traction.h"

using namespace taut;
using namespace taut::physics;

namespace {
Length mm(double v) { return Length::si(v / 1000); }
Length um(double v) { return Length::si(v / 1e6); }
Force newtons(double v) { return Force::si(v); }
Pressure bar(double v) { return Pressure::si(v * 1e5); }
Approx near(double v) { return Approx(v).epsilon(1e-12); }
}  // namespace

TEST_CASE("diameter, length and caliper of a roll undo each other")
{
    for (double outer : {110.0, 200.0, 500.0, 1000.0})
        for (double caliper : {36.0, 140.0, 400.0}) {
            CAPTURE(outer, caliper);
            const Length length = rollLength(mm(outer), mm(102.2), um(caliper));
            CHECK(rollDiameter(mm(102.2), um(caliper), length).si() == near(outer / 1000));
            CHECK(rollCaliper(mm(outer), mm(102.2), length).si() == near(caliper / 1e6));
            const double wraps = rollWraps(mm(outer), mm(102.2), um(caliper));
            CHECK(length.si() == near(wraps * kPi * (outer + 102.2) / 2000));
        }
}

TEST_CASE("an empty core carries no web")
{
    CHECK(rollDiameter(mm(102.2), um(140), Length{}).si() == near(0.1022));
    CHECK(std::isnan(rollLength(mm(102.2), mm(102.2), um(140)).si()));
}

TEST_CASE("wraps taken off are the difference of two rolls")
{
    for (double wraps : {0.0, 1.0, 7.5, 100.0, 1000.0}) {
        const Length left = strippedDiameter(mm(500), um(140), wraps);
        const double whole = rollLength(mm(500), mm(102.2), um(140)).si();
        const double rest = rollLength(left, mm(102.2), um(140)).si();
        CHECK(strippedLength(mm(500), um(140), wraps).si() == Approx(whole - rest).margin(1e-9));
    }
}

TEST_CASE("mass from diameters and length from mass agree")
{
    const Grammage grammage = Grammage::si(0.155);
    const Mass mass = rollMass(mm(500), mm(102.2), um(140), mm(330), grammage);
    CHECK(lengthFromMass(mass, mm(330), grammage).si() == near(rollLength(mm(500), mm(102.2), um(140)).si()));
    const Density density = grammage / um(140);
    CHECK(yield(density, um(140)).si() == near(1 / 0.155));
}

TEST_CASE("the spiral and the concentric wraps part only as the square of caliper over diameter")
{
    for (double caliper : {50.0, 140.0, 400.0}) {
        const double exact = spiralLength(mm(500), mm(102.2), um(caliper)).si();
        const double rings = rollLength(mm(500), mm(102.2), um(caliper)).si();
        CHECK(std::abs(rings / exact - 1) < 1e-6);
        CHECK(rings <= exact * (1 + 1e-13));
    }
}

TEST_CASE("a worked label roll comes out as computed by hand")
{
    // Exact arithmetic of R1 to R8: 500 mm over 76.2 mm, 150 um, 330 mm wide, 160 g/m2.
    const Length length = rollLength(mm(500), mm(76.2), um(150));
    CHECK(length.si() == Approx(1278.594).margin(5e-4));
    CHECK(rollWraps(mm(500), mm(76.2), um(150)) == Approx(1412.667).margin(5e-4));
    CHECK(rollMass(mm(500), mm(76.2), um(150), mm(330), Grammage::si(0.160)).si() == Approx(67.510).margin(5e-4));
    CHECK(rollDiameter(mm(76.2), um(150), length / 2).si() == Approx(0.357636).margin(5e-7));
    CHECK(strippedLength(mm(500), um(150), 100).si() == Approx(152.367).margin(5e-4));
    CHECK(strippedDiameter(mm(500), um(150), 100).si() == near(0.470));
    CHECK(runTime(length, Length{}, Speed::si(1)).si() / 60 == Approx(21.31).margin(5e-3));
    CHECK(runTime(length, Length::si(100), Speed::si(1)).si() / 60 == Approx(19.64).margin(5e-3));
}

TEST_CASE("the inner diameter taken for the core's outer overstates a part-used roll")
{
    // 3 in core with an 8 mm wall, 150 um: 1.1 % at 500 mm, 8.6 % at 200 mm, 19 % at 150 mm.
    const struct {
        double outer, error;
    } rows[] = {{500, 0.011}, {200, 0.086}, {150, 0.192}};
    for (const auto& row : rows) {
        const double wrong = rollLength(mm(row.outer), mm(76.2), um(150)).si();
        const double right = rollLength(mm(row.outer), mm(92.2), um(150)).si();
        CHECK(wrong / right - 1 == Approx(row.error).margin(5e-4));
    }
}

TEST_CASE("brake setting and brake diameter undo each other in every kind of setting")
{
    const Force tension = newtons(59.4);
    const TorquePer<Pressure> perPressure = TorquePer<Pressure>::si(1.2e-4);
    const Pressure setting = brakeSetting<Pressure>(tension, mm(500), perPressure, bar(0.15));
    CHECK(setting.si() == near(15000 + 59.4 * 0.5 / 2.4e-4));
    CHECK(brakeDiameter<Pressure>(tension, perPressure, bar(0.15), setting).si() == near(0.5));
    const Ratio share = brakeSetting<Ratio>(tension, mm(300), Torque::si(55), Ratio::si(0.02));
    CHECK(brakeDiameter<Ratio>(tension, Torque::si(55), Ratio::si(0.02), share).si() == near(0.3));
    const Current current = brakeSetting<Current>(tension, mm(300), TorquePer<Current>::si(30), Current{});
    CHECK(brakeDiameter<Current>(tension, TorquePer<Current>::si(30), Current{}, current).si() == near(0.3));
    CHECK(brakeSetting<Pressure>(Force{}, mm(300), perPressure, bar(0.15)).si() == near(15000));
}

TEST_CASE("brake pressure falls in proportion to the diameter")
{
    // Exact arithmetic of B5: k = 12 N m/bar, T = 58 N, no zero.
    const TorquePer<Pressure> k = TorquePer<Pressure>::si(1.2e-4);
    const struct {
        double diameter, bar;
    } rows[] = {{500, 1.208}, {300, 0.725}, {100, 0.242}};
    for (const auto& row : rows)
        CHECK(brakeSetting<Pressure>(newtons(58), mm(row.diameter), k, Pressure{}).si() / 1e5 ==
              Approx(row.bar).margin(5e-4));
    // One caliper, 40 mm piston at 120 mm, friction 0.35.
    const Area piston = mm(40) * mm(40) * (kPi / 4);
    CHECK(caliperTorque(1, 0.35, piston, mm(120), bar(1)).si() == Approx(10.556).margin(5e-4));
}

TEST_CASE("a brake's heat does not depend on the diameter, a slip clutch's does")
{
    // Exact arithmetic of B3.clutch: 100 N at 1.5 m/s, input 10 % above core speed, core 92.2 mm, roll 380 mm.
    const Speed speed = Speed::si(1.5);
    const Frequency input = rollFrequency(speed, mm(92.2)) * 1.1;
    const auto heat = [&](double diameter) {
        return clutchHeat(rollTorque(newtons(100), mm(diameter)), input, rollFrequency(speed, mm(diameter))).si();
    };
    CHECK(brakeHeat(newtons(100), speed).si() == near(150));
    CHECK(heat(92.2) == near(15));
    CHECK(heat(380) == Approx(530).margin(0.5));
    const double turns = rollFrequency(speed, mm(380)).si();
    CHECK(2 * kPi * turns * rollTorque(newtons(100), mm(380)).si() == near(150));
}

TEST_CASE("full hyperbolic taper is constant torque, no taper is constant tension")
{
    for (double diameter : {76.0, 150.0, 380.0}) {
        CHECK(rollTorque(hyperbolicTaper(newtons(100), 1, mm(diameter), mm(76)), mm(diameter)).si() ==
              near(100 * 0.076 / 2));
        CHECK(hyperbolicTaper(newtons(100), 0, mm(diameter), mm(76)).si() == near(100));
        CHECK(linearTaper(newtons(100), 0, mm(diameter), mm(76), mm(380)).si() == near(100));
    }
    CHECK(linearTaper(newtons(100), 0.5, mm(380), mm(76), mm(380)).si() == near(50));
    CHECK(hyperbolicTaper(newtons(100), 0.2, mm(76), mm(76)).si() == near(100));
}

TEST_CASE("dancer tension and dancer pressure undo each other at any wrap")
{
    const Area piston = mm(50) * mm(50) * (kPi / 4);
    for (double wrap : {0.5, 1.0, kPi, 5.0}) {
        const Pressure pressure = dancerPressure(newtons(40), 2, piston, mm(120), mm(365), wrap);
        CHECK(dancerTension(2, pressure, piston, mm(120), mm(365), wrap).si() == near(40));
        // The weight that does the same pulls at the cylinder's arm with the cylinders' force.
        const Mass weight = dancerWeight(newtons(40), mm(120), mm(365), wrap);
        CHECK((weight * kGravity).si() == near((pressure * piston * 2).si()));
    }
}

TEST_CASE("load-cell force and set point follow the tension")
{
    CHECK(rollerForce(newtons(58), kPi / 2).si() == Approx(82.024).margin(5e-4));
    CHECK(rollerForce(newtons(58), kPi).si() == near(116));
    CHECK(rollerForce(newtons(58), 0).si() == 0);
    for (double tension : {0.0, 58.0, 200.0})
        CHECK((newtons(250) * shareOfRange(newtons(tension), newtons(250))).si() == near(tension));
}

TEST_CASE("draw and strain undo each other, and the first-order form is close at running strains")
{
    for (double before : {0.0, 3e-4, 1e-3})
        for (double after : {0.0, 5e-4, 2e-3}) {
            const double draw = drawForStrain(before, after);
            CHECK(strainAfterDraw(before, Speed::si(1.5), Speed::si(1.5 * (1 + draw))) == Approx(after).margin(1e-12));
        }
    const Force stiffness = newtons(74250);
    const double exact = strainAfterDraw(5e-4, Speed::si(1), Speed::si(1.0005));
    const Force first = tensionAfterDraw(stiffness, Speed::si(1), Speed::si(1.0005), stiffness * 5e-4);
    CHECK((first / stiffness).si() == Approx(exact).epsilon(0.01));
    CHECK((first / stiffness).si() != exact);
}

TEST_CASE("a span starts at its first tension and rests at the drawn one")
{
    const auto at = [](double t) {
        return spanTension(newtons(74250), Length::si(1.5), Speed::si(1), Speed::si(1.0002), Force{}, newtons(3),
                           Time::si(t))
            .si();
    };
    CHECK(at(0) == near(3));
    CHECK(at(100) == near(tensionAfterDraw(newtons(74250), Speed::si(1), Speed::si(1.0002), Force{}).si()));
    CHECK(drawError(Pressure::si(4.5e9), um(50), Speed::si(1), Speed::si(1e-4)).si() == near(22.5));
}

TEST_CASE("one span lets a step through as a simple lag, and many spans still give shares")
{
    for (double x : {0.0, 1e-9, 0.3, 1.0, 2.9, 20.0, 700.0, 5000.0}) {
        CHECK(cascadeShare(1, Speed::si(1), Length::si(1), Time::si(x)) == Approx(-std::expm1(-x)).margin(1e-15));
        double last = 1;
        for (int n = 1; n <= 40; ++n) {
            const double share = cascadeShare(n, Speed::si(1), Length::si(1), Time::si(x));
            CHECK(share >= 0);
            CHECK(share <= last);
            last = share;
        }
    }
    CHECK(cascadeShare(1000, Speed::si(1), Length::si(1), Time::si(1000)) == Approx(0.5).margin(0.02));
}

TEST_CASE("wraps on a core grip like the same angle on a roller")
{
    CHECK(coreHold(0.2, 3) == near(capstanRatio(0.2, 6 * kPi)));
    CHECK(coreHold(0.2, 0) == 1);
    CHECK(capstanRatio(0, 3) == 1);
}

TEST_CASE("air takes friction away between one and three roughnesses")
{
    CHECK(frictionOverAir(0.3, um(0.5), um(1)) == near(0.3));
    CHECK(frictionOverAir(0.3, um(1), um(1)) == near(0.3));
    CHECK(frictionOverAir(0.3, um(2), um(1)) == near(0.15));
    CHECK(frictionOverAir(0.3, um(3), um(1)) == 0);
    CHECK(frictionOverAir(0.3, um(30), um(1)) == 0);
}

TEST_CASE("lateral factors go over smoothly from series to closed form and to their limits")
{
    const LateralFactors zero = lateralFactors(0);
    CHECK(zero.f == near(2.0 / 3));
    CHECK(zero.f1 == near(6));
    CHECK(zero.f2 == near(4));
    CHECK(zero.f3 == near(2));
    // First terms of their power series: they must not drown in the cancellation of the closed forms.
    const LateralFactors little = lateralFactors(0.02);
    CHECK(little.f == Approx(2.0 / 3 + 0.02 * 0.02 / 90).epsilon(1e-9));
    CHECK(little.f1 == Approx(6 + 0.02 * 0.02 / 10).epsilon(1e-9));
    const LateralFactors below = lateralFactors(2 - 1e-12);
    const LateralFactors above = lateralFactors(2 + 1e-12);
    CHECK(below.f == Approx(above.f).epsilon(1e-11));
    CHECK(below.f1 == Approx(above.f1).epsilon(1e-11));
    CHECK(below.f2 == Approx(above.f2).epsilon(1e-11));
    CHECK(below.f3 == Approx(above.f3).epsilon(1e-11));
    CHECK(lateralFactors(2000).f == Approx(1).epsilon(1e-3));
    CHECK(lateralFactors(2000).f < 1);
    CHECK(std::isnan(lateralFactors(-1).f));
    double last = 0;
    for (double x = 0; x < 50; x += 0.37) {
        const LateralFactors k = lateralFactors(x);
        CHECK(k.f == Approx(k.f2 / k.f1).epsilon(1e-13));
        CHECK(k.f > last);
        last = k.f;
    }
}

TEST_CASE("the lateral step starts at rest, ends at one and knows no seam between its forms")
{
    const auto step = [](double kl, double s) { return lateralStep(kl, Length::si(1), Speed::si(1), Time::si(s)); };
    for (double kl : {0.0, 1.0, 3.0, 4.5, 8.0, 30.0}) {
        CAPTURE(kl);
        CHECK(step(kl, 0) == 0);
        CHECK(step(kl, 60) == Approx(1).margin(1e-9));
        CHECK(step(kl, 1e-3) > 0);
        for (double s = 0.1; s < 4; s += 0.1) CHECK(std::abs(step(kl, s + 1e-6) - step(kl, s)) < 1e-5);
    }
    // Across the stiffness where the roots change from complex to real.
    for (double kl = 4; kl < 8; kl += 0.01) CHECK(std::abs(step(kl + 0.01, 1) - step(kl, 1)) < 1e-3);
}

TEST_CASE("a guide's edges stand half a width to each side of the centreline")
{
    CHECK(edgePlace(mm(215), mm(330), -1).si() == near(0.050));
    CHECK(edgePlace(mm(215), mm(330), 1).si() == near(0.380));
    CHECK(edgeInWindow(5, 2, 8, mm(20)).si() == near(0.010));
    CHECK(edgeInWindow(2, 2, 8, mm(20)).si() == 0);
    CHECK(edgeInWindow(8, 2, 8, mm(20)).si() == near(0.020));
    CHECK(edgeInWindow(2, 8, 2, mm(20)).si() == near(0.020));
    CHECK(guideShift(mm(300), -0.05).si() == near(-guideShift(mm(300), 0.05).si()));
}

TEST_CASE("the lift's pressure carries exactly the load")
{
    const Pressure pressure = liftPressure(Mass::si(95.464), 2, mm(80), 0.85, 1);
    CHECK(pressure.si() == Approx(109557.352).epsilon(1e-6));
    CHECK((cylinderForce(pressure, mm(80), 0.85) * 2).si() == near((Mass::si(95.464) * kGravity).si()));
    CHECK(liftPressure(Mass::si(95.464), 2, mm(80), 0.85, 1.5).si() == near(1.5 * pressure.si()));
    CHECK(liftPressure(Mass{}, 2, mm(80), 0.85, 1).si() == 0);
}

TEST_CASE("teeth for a repeat are never too few, and an exact repeat needs no extra tooth")
{
    for (int teeth = 20; teeth <= 200; ++teeth) {
        const Length pitch = Length::si(0.0254 / 8);
        const Length exact = repeatByPitch(teeth, pitch);
        CHECK(teethFor(exact, pitch) == teeth);
        CHECK(teethFor(exact + um(10), pitch) == teeth + 1);
        CHECK(teethFor(exact - um(10), pitch) == teeth);
    }
}

TEST_CASE("circular, diametral and module gears of one size have one repeat")
{
    const Length module = mm(2);
    const double byModule = repeatByModule(60, module).si();
    CHECK(repeatByPitch(60, module * kPi).si() == near(byModule));
    CHECK(repeatByDiametralPitch(60, CountPerLength::si(1 / module.si())).si() == near(byModule));
}

TEST_CASE("a turn of the plate cylinder moves the print by one repeat")
{
    CHECK(registerAngle(mm(304.8), mm(304.8)) == near(2 * kPi));
    // 0.001 in on 12 in is 0.03 degrees, exactly.
    CHECK(registerAngle(mm(304.8), mm(0.0254)) * 180 / kPi == near(0.03));
}

TEST_CASE("emergency stops relieve the unwind and load the rewind")
{
    // Exact arithmetic of V4, V6 and V7: the worked roll at 1 m/s, 58 N, brake 14.5 N m.
    const Inertia inertia = rollInertia(Mass::si(67.510), mm(250), mm(38.1));
    CHECK(inertia.si() == Approx(2.15868).margin(5e-5));
    const struct {
        double seconds, unwind, rewind;
    } rows[] = {{5, 51.1, 64.9}, {2, 40.7, 75.3}, {1, 23.5, 92.5}, {0.5, -11.1, 127.1}};
    for (const auto& row : rows) {
        const Acceleration a = Acceleration::si(1 / row.seconds);
        CHECK(unwindStopTension(Torque::si(14.5), inertia, a, mm(250)).si() == Approx(row.unwind).margin(0.05));
        CHECK(rewindStopTension(newtons(58), inertia, a, mm(250)).si() == Approx(row.rewind).margin(0.05));
    }
    const Torque brake = rollTorque(newtons(58), mm(500)) + accelerationTorque(inertia, Acceleration::si(1), mm(250));
    CHECK(brake.si() == Approx(23.13).margin(5e-3));
    CHECK(unwindStopTension(brake, inertia, Acceleration::si(1), mm(250)).si() == near(58));
}

TEST_CASE("stopping takes half the time's way and the reaction's")
{
    CHECK(stopDistance(Speed::si(2.5), Time::si(0.2), Acceleration::si(1)).si() == near(3.625));
    CHECK(stopTime(Speed::si(2.5), Time::si(0.2), Acceleration::si(1)).si() == near(2.7));
    CHECK(stopDistance(Speed{}, Time::si(0.2), Acceleration::si(1)).si() == 0);
}

TEST_CASE("belts of equal rollers are two straights and a circle")
{
    CHECK(openBelt(mm(80), mm(80), mm(1000)).si() == near(2 + kPi * 0.08));
    CHECK(openTangent(mm(40), mm(40), mm(1000)).si() == near(1));
    CHECK(crossedTangent(mm(500), mm(500), mm(1000)).si() == 0);
    CHECK(crossedBelt(mm(80), mm(80), mm(1000)).si() > openBelt(mm(80), mm(80), mm(1000)).si());
}
