// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/span.h"

#include "core/physics/motion.h"
#include "tests/published/outside.h"
#include "tests/published/us_units.h"

using namespace taut;
using namespace taut::physics;
using namespace source;

TEST_CASE("S41: strain of 3 lbf/in on 3 mil at a modulus of a million psi")
{
    // "Have you noticed your Nu": 1000 psi, 0.1 % along, -0.03 % across at a Poisson ratio of 0.3.
    const Length width = inches(10);
    const Force tension = poundsForce(30);
    CHECK((tension / (width * mils(3))).si() == Approx(psi(1000).si()).epsilon(1e-12));
    const double along = strain(tension, psi(1e6), width, mils(3));
    CHECK(along == Approx(0.001).epsilon(1e-9));
    CHECK(-0.3 * along == Approx(-0.0003).epsilon(1e-9));
}

TEST_CASE("S45: time constant of a 50 ft span")
{
    // "Drawing Conclusions, Part II" (2005): 15 s at 200 ft/min; 95 % of a change after three, 45 s; 3 min at 50
    // ft/min.
    CHECK(spanTime(feet(50), feetPerMinute(200)).si() == Approx(15).epsilon(1e-12));
    CHECK(3 * spanTime(feet(50), feetPerMinute(200)).si() == Approx(45).epsilon(1e-12));
    CHECK(3 * spanTime(feet(50), feetPerMinute(50)).si() == Approx(180).epsilon(1e-12));
    CHECK(cascadeShare(1, feetPerMinute(200), feet(50), Time::si(45)) == Approx(0.95).margin(0.001));
}

TEST_CASE("GSL: the span equation integrated from slack")
{
    // Equation as in S43: K 74250 N (50 um polyester, 330 mm, 4.5 GPa), L 1.5 m, v1 1 m/s, v2 1.0002 m/s.
    const struct {
        const char* name;
        double time, printed;
    } rows[] = {
        {"span_1.5", 1.5, 9.386206}, {"span_3", 3, 12.83851}, {"span_4.5", 4.5, 14.10828}, {"span_6", 6, 14.57532}};
    const Force stiffness = Pressure::si(4.5e9) * Length::si(50e-6) * Length::si(0.330);
    for (const auto& row : rows) {
        const double tension = spanTension(stiffness, Length::si(1.5), Speed::si(1), Speed::si(1.0002), Force{},
                                           Force{}, Time::si(row.time))
                                   .si();
        CHECK(tension == Approx(outside::gsl(row.name)).epsilon(1e-9));
        CHECK(tension == Approx(row.printed).epsilon(1e-6));
    }
    CHECK(tensionAfterDraw(stiffness, Speed::si(1), Speed::si(1.0002), Force{}).si() ==
          Approx(14.847031).epsilon(1e-6));
}

TEST_CASE("GSL gamma_inc_P: a step through equal spans")
{
    const struct {
        int spans, times;
        double printed;
    } rows[] = {{1, 1, 0.632121}, {2, 2, 0.593994},  {3, 3, 0.5768099}, {4, 4, 0.566530},
                {3, 6, 0.938031}, {4, 8, 0.9576199}, {6, 12, 0.979659}};
    for (const auto& row : rows) {
        CAPTURE(row.spans, row.times);
        const double share = cascadeShare(row.spans, Speed::si(1), Length::si(0.5), Time::si(row.times * 0.5));
        const std::string name = "gamma_" + std::to_string(row.spans) + "_" + std::to_string(row.times);
        CHECK(share == Approx(outside::gsl(name)).epsilon(1e-12));
        CHECK(share == Approx(row.printed).margin(6e-7));
    }
    CHECK(cascadeShare(20, Speed::si(1), Length::si(1), Time::si(9)) ==
          Approx(outside::gsl("gamma_20_9")).epsilon(1e-12));
    // Three lags in a row, integrated as a system of differential equations.
    CHECK(cascadeShare(3, Speed::si(1), Length::si(1), Time::si(3)) == Approx(outside::gsl("lags_3_3")).epsilon(1e-9));
}

TEST_CASE("S43: parameters of a public control benchmark of six spans")
{
    // K 2400 N, J 0.95 kg m2, R 0.04 m; reference tensions 28, 36, 20, 40, 24, 32 N, first speed 0.01 m/s. Speeds at
    // rest from v = v1 (K - T1) / (K - T2), nine decimals.
    const double references[] = {28, 36, 20, 40, 24, 32};
    const double speeds[] = {0.010118044, 0.010152284, 0.010084034, 0.010169492, 0.010101010, 0.010135135};
    double before = 0.01;
    double tension = 0;
    for (int i = 0; i < 6; ++i) {
        tension = tensionAfterDraw(Force::si(2400), Speed::si(before), Speed::si(speeds[i]), Force::si(tension)).si();
        CHECK(tension == Approx(references[i]).margin(0.001));
        before = speeds[i];
        tension = references[i];
    }
    // Its roller equation: a unit torque changes the surface speed by R / J, a unit of tension by R^2 / J.
    const Inertia inertia = Inertia::si(0.95);
    const Length radius = Length::si(0.04);
    CHECK(accelerationTorque(inertia, Acceleration::si(0.0421053), radius).si() == Approx(1).epsilon(2e-6));
    CHECK(unwindStopTension(Torque{}, inertia, Acceleration::si(0.00168421), radius).si() == Approx(-1).epsilon(2e-6));
}
