// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/span.h"

#include "tests/published/evidence.h"
#include "tests/published/outside.h"
#include "tests/published/us_units.h"

using namespace taut;
using namespace taut::physics;
using namespace source;
using namespace evidence;

TEST_CASE("S41: strain of 3 lbf/in on 3 mil at a modulus of a million psi")
{
    // "Have you noticed your Nu": 1000 psi, 0.1 % along, -0.03 % across at a Poisson ratio of 0.3.
    const Page page = printed("span", "S41", "worked example");
    const Length width = inches(10);
    const Force tension = poundsForce(30);
    const double along = strain(tension, psi(1e6), width, mils(3)) * 100;
    page.check("D1", "3 lbf/in, 3 mil, 1,000,000 psi, along", along, 0.1, "%", share(1e-9));
    page.check("D1", "the same across, Poisson 0.3", -0.3 * along, -0.03, "%", share(1e-9));
}

TEST_CASE("S45: time constant of a 50 ft span")
{
    // "Drawing Conclusions, Part II" (2005): 15 s at 200 ft/min; 95 % of a change after three, 45 s; 3 min at 50
    // ft/min.
    const Page page = printed("span", "S45", "worked example");
    page.check("D5", "50 ft at 200 ft/min", spanTime(feet(50), feetPerMinute(200)).si(), 15, "s", share(1e-12));
    page.check("D5", "three times that", 3 * spanTime(feet(50), feetPerMinute(200)).si(), 45, "s", share(1e-12));
    page.check("D5", "three times, at 50 ft/min", 3 * spanTime(feet(50), feetPerMinute(50)).si() / 60, 3, "min",
               share(1e-12));
    page.check("D7", "one span, after 45 s", cascadeShare(1, feetPerMinute(200), feet(50), Time::si(45)) * 100, 95, "%",
               within(0.1));
}

TEST_CASE("GSL: the span equation integrated from slack")
{
    // Equation as in S43: K 74250 N (50 um polyester, 330 mm, 4.5 GPa), L 1.5 m, v1 1 m/s, v2 1.0002 m/s.
    const Page page = referee("span", "GSL", "odeiv2 rk8pd; equation of S43");
    const Force stiffness = Pressure::si(4.5e9) * Length::si(50e-6) * Length::si(0.330);
    for (const char* time : {"1.5", "3", "4.5", "6"})
        page.check("D6", std::string("K 74250 N, 1.5 m, 1 to 1.0002 m/s, after ") + time + " s",
                   spanTension(stiffness, Length::si(1.5), Speed::si(1), Speed::si(1.0002), Force{}, Force{},
                               Time::si(std::stod(time)))
                       .si(),
                   outside::gsl(std::string("span_") + time), "N", share(1e-9));
    page.check("D2.first_order", "the same, after 60 s",
               tensionAfterDraw(stiffness, Speed::si(1), Speed::si(1.0002), Force{}).si(), outside::gsl("span_60"), "N",
               share(1e-9));
}

TEST_CASE("GSL: the strain of a span integrated until it rests")
{
    // S44: d/dt [L / (1 + e2)] = v1 / (1 + e1) - v2 / (1 + e2), from an entering strain of 0.05 %.
    const Page page = referee("span", "GSL", "odeiv2 rk8pd; equation of S44");
    const double rest = outside::gsl("strain_rest");
    page.check("D2", "0.05 % into a span, 1 to 1.002 m/s, at rest",
               strainAfterDraw(0.0005, Speed::si(1), Speed::si(1.002)) * 100, rest * 100, "%", share(1e-9));
    page.check("D2.draw", "draw that makes 0.05 % into that strain", drawForStrain(0.0005, rest) * 100, 0.2, "%",
               share(1e-9));
}

TEST_CASE("GSL gamma_inc_P: a step through equal spans")
{
    const Page page = referee("span", "GSL", "gsl_sf_gamma_inc_P");
    const struct {
        int spans, times;
    } rows[] = {{1, 1}, {2, 2}, {3, 3}, {4, 4}, {3, 6}, {4, 8}, {6, 12}, {20, 9}};
    for (const auto& row : rows) {
        const std::string spans = std::to_string(row.spans);
        const std::string times = std::to_string(row.times);
        page.check("D7", spans + " spans, v t / L = " + times,
                   cascadeShare(row.spans, Speed::si(1), Length::si(0.5), Time::si(row.times * 0.5)),
                   outside::gsl("gamma_" + spans + "_" + times), "", share(1e-12));
    }
    // Three lags in a row, integrated as a system of differential equations.
    referee("span", "GSL", "odeiv2 rk8pd")
        .check("D7", "3 lags in a row, v t / L = 3", cascadeShare(3, Speed::si(1), Length::si(1), Time::si(3)),
               outside::gsl("lags_3_3"), "", share(1e-9));
}

TEST_CASE("S43: parameters of a public control benchmark of six spans")
{
    // K 2400 N; reference tensions 28, 36, 20, 40, 24, 32 N; the first speed, 0.01 m/s. Speeds at rest from
    // v = v1 (K - T1) / (K - T2), nine decimals.
    const Page page = form("span", "S43", "K 2400 N, reference tensions");
    const double references[] = {28, 36, 20, 40, 24, 32};
    const double speeds[] = {0.010118044, 0.010152284, 0.010084034, 0.010169492, 0.010101010, 0.010135135};
    double before = 0.01;
    double tension = 0;
    for (int i = 0; i < 6; ++i) {
        tension = tensionAfterDraw(Force::si(2400), Speed::si(before), Speed::si(speeds[i]), Force::si(tension)).si();
        page.check("D2.first_order", "span " + std::to_string(i + 1) + " at rest", tension, references[i], "N",
                   within(0.001));
        before = speeds[i];
        tension = references[i];
    }
}
