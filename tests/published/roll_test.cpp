// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/roll.h"

#include "core/physics/brake.h"
#include "core/physics/material.h"
#include "tests/published/evidence.h"
#include "tests/published/outside.h"
#include "tests/published/us_units.h"

using namespace taut;
using namespace taut::physics;
using namespace source;
using namespace evidence;

TEST_CASE("S2: length of an Archimedean spiral, its published test values")
{
    // Giangrandi, "Spiral calculator", equations; values of a public JavaScript test suite of them.
    // Any one unit of length serves.
    const Page page = printed("roll", "S2", "test values of a public JavaScript suite");
    const struct {
        double t, d, outer, length, digits, model;
    } rows[] = {{0.1, 2, 3, 39.27313462, 5e-9, 1e-4}, {0.06, 18, 60, 42882.74547, 5e-6, 1e-6}};
    for (const auto& row : rows) {
        const Length caliper = Length::si(row.t);
        const Length core = Length::si(row.d);
        const Length outer = Length::si(row.outer);
        const std::string roll = "caliper " + figure(row.t) + ", " + figure(row.d) + " to " + figure(row.outer);
        page.check("R3", roll, spiralLength(outer, core, caliper).si(), row.length, "", within(row.digits));
        page.check("R1", roll, rollLength(outer, core, caliper).si(), row.length, "", share(row.model));
        page.check("R1.caliper", roll + ", from its length", rollCaliper(outer, core, Length::si(row.length)).si(),
                   row.t, "", share(row.model));
        page.check("R6", roll + ", from its length", rollDiameter(core, caliper, Length::si(row.length)).si(),
                   row.outer, "", share(row.model));
    }
}

TEST_CASE("GSL quadrature: the same spirals integrated")
{
    const Page page = referee("roll", "GSL", "quadrature qags of the spiral; odeiv2");
    const auto spiral = [](double t, double d, double outer) {
        return spiralLength(Length::si(outer), Length::si(d), Length::si(t)).si();
    };
    page.check("R3", "caliper 0.1, 2 to 3", spiral(0.1, 2, 3), outside::gsl("spiral_1"), "", share(1e-11));
    page.check("R3", "caliper 0.06, 18 to 60", spiral(0.06, 18, 60), outside::gsl("spiral_2"), "", share(1e-11));
    // The outermost hundred turns of the second.
    page.check("R7.length", "caliper 0.06, 100 turns off 60",
               strippedLength(Length::si(60), Length::si(0.06), 100).si(), outside::gsl("spiral_100"), "", share(1e-6));
    page.check("R2", "turns, caliper 0.06, 18 to 60", rollWraps(Length::si(60), Length::si(18), Length::si(0.06)),
               outside::gsl("spiral_turns"), "turns", share(1e-11));
    page.check("R7.diameter", "diameter 100 turns inwards of 60, caliper 0.06",
               strippedDiameter(Length::si(60), Length::si(0.06), 100).si(), outside::gsl("spiral_inner"), "",
               share(1e-11));
}

TEST_CASE("S1: length, wraps and diameter of a roll by its rings")
{
    // "Length of a roll" (2003): pi (D^2 - d^2) / (4 t) and (D - d) / (2 t), each wrap as long as the mean one.
    const Page page = form("roll", "S1", "rings of equal thickness");
    const double wraps = (20 - 3) / (2 * 0.006);
    page.check("R2", "20 in over 3 in, .006 in", rollWraps(inches(20), inches(3), inches(0.006)), wraps, "wraps",
               share(1e-12));
    page.check("R1", "20 in over 3 in, .006 in", toFeet(rollLength(inches(20), inches(3), inches(0.006))),
               wraps * kPi * (20 + 3) / 2 / 12, "ft", share(1e-12));
    page.check("R7.diameter", "20 in, .006 in, 100 wraps off",
               strippedDiameter(inches(20), inches(0.006), 100).si() / kInch, 20 - 1.2, "in", share(1e-12));
    page.check("R7.length", "20 in, .006 in, 100 wraps off", toFeet(strippedLength(inches(20), inches(0.006), 100)),
               100 * kPi * (20 + 18.8) / 2 / 12, "ft", share(1e-12));
}

TEST_CASE("GNU units: time until a roll is run out")
{
    referee("roll", "units", "(L - reserve) / v")
        .check("R8", "4265 ft, reserve 300 ft, 200 ft/min",
               runTime(feet(4265), feet(300), feetPerMinute(200)).si() / 60,
               outside::units("(4265 ft - 300 ft) / (200 ft/min)", "min"), "min", share(1e-12));
}

TEST_CASE("S8, S7: length of web from its weight")
{
    // Paper formulas page: 3,045 ft, basic size 25 x 38 in.
    const Grammage grammage = grammageOfReam(pounds(50), inches(25) * inches(38));
    printed("roll", "S8", "length from weight")
        .check("R4", "100 lb of 50 lb book, 26 in wide", toFeet(lengthFromMass(pounds(100), inches(26), grammage)),
               3045, "ft", within(0.5));
    // "Paper math formulas": 100,000 kg over cm and g/m2.
    form("roll", "S7", "100,000 kg / (cm x g/m2)")
        .check("R4", "67.51 kg, 33 cm, 160 g/m2", lengthFromMass(Mass::si(67.51), Length::si(0.33), gsm(160)).si(),
               100000 * 67.51 / (33 * 160), "m", share(1e-12));
}

TEST_CASE("S7, S12: two sources give bond paper one density, and a roll one mass")
{
    // S7, "Paper math formulas": W = (D^2 - d^2) w 0.021 lb/in3 for bond. S12, "Caliper and paper weight": 20 lb bond
    // is 0.004 in. S10: 20 lb bond is 75.2 g/m2.
    const Grammage grammage = grammageOfReam(pounds(20), inches(17) * inches(22));
    const Page page = printed("roll", "S7, S12", "bond 0.021 lb/in3; 20 lb bond is .004 in");
    page.check("W1", "density of 20 lb bond, 17 x 22 in, .004 in", (grammage / inches(0.004)).si(),
               0.021 / (kPi / 4) * kPound / (kInch * kInch * kInch), "kg/m3", share(0.005));
    form("roll", "S7, S12", "W = (D^2 - d^2) w 0.021; 20 lb bond is .004 in")
        .check("R5", "40 in over 3 in, 17 in wide",
               toPounds(rollMass(inches(40), inches(3), inches(0.004), inches(17), grammage)),
               (40.0 * 40 - 3 * 3) * 17 * 0.021, "lb", share(0.005));
    // The two other bond papers of S12 by the same factor: within the variation of caliper, 5 % (S12) and 7 % (S17).
    const Page spread = form("roll", "S7, S12, S17", "bond 0.021 lb/in3, within the variation of caliper");
    const struct {
        double basis, caliper, variation;
    } rows[] = {{16, 0.00325, 0.05}, {24, 0.0045, 0.07}};
    for (const auto& row : rows)
        spread.check("R5", figure(row.basis) + " lb bond, " + figure(row.caliper) + " in; 40 in over 3 in, 17 in wide",
                     toPounds(rollMass(inches(40), inches(3), inches(row.caliper), inches(17),
                                       grammageOfReam(pounds(row.basis), inches(17) * inches(22)))),
                     (40.0 * 40 - 3 * 3) * 17 * 0.021, "lb", share(row.variation));
}

TEST_CASE("S24: speed of a roll at 200 ft/min, core 3 in and roll 30 in")
{
    // Brake engineering calculations: 25.46 rpm full, 254.6 rpm at the core.
    const Page page = printed("roll", "S24", "tension example");
    page.check("B2", "200 ft/min, 30 in", rollFrequency(feetPerMinute(200), inches(30)).si() * 60, 25.46, "rpm",
               within(0.01));
    page.check("B2", "200 ft/min, 3 in", rollFrequency(feetPerMinute(200), inches(3)).si() * 60, 254.6, "rpm",
               within(0.1));
}

TEST_CASE("S21: rpm is 3.8 times ft/min over inches")
{
    // Brake sizing page; the factor is printed to two digits (12 / pi = 3.82).
    printed("roll", "S21", "rpm = 3.8 ft/min / in")
        .check("B2", "100 ft/min, 10 in", rollFrequency(feetPerMinute(100), inches(10)).si() * 60, 3.8 * 100 / 10,
               "rpm", share(0.01));
}
