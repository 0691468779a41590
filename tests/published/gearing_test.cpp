// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/gearing.h"

#include "core/physics/material.h"
#include "tests/published/evidence.h"
#include "tests/published/outside.h"
#include "tests/published/us_units.h"

using namespace taut;
using namespace taut::physics;
using namespace source;
using namespace evidence;

TEST_CASE("S77: an impression cylinder of 60.001 in with 754 teeth at a quarter inch")
{
    // Flexography: Principles and Practices, 5th edition, 1999, presses, about p. 74: circumference 188.5 in.
    const Page page = printed("gearing", "S77", "presses, about p. 74");
    const double circular = repeatByPitch(754, inches(0.25)).si() / kInch;
    page.check("F1.circular", "754 teeth of 1/4 in", circular, 188.5, "in", within(0.005));
    // The count of its 10-pitch gear is cut off in the copy; 60 in of pitch diameter are 600 teeth: the same
    // circumference, not the same repeats.
    const Page computed = form("gearing", "S77", "presses, about p. 74");
    computed.check("F1.circular", "the circumference of 60.001 in", circular, kPi * 60.001, "in", within(0.005));
    const CountPerLength tenPitch = CountPerLength::si(10 / kInch);
    computed.check("F1.diametral", "600 teeth of 10 diametral pitch",
                   repeatByDiametralPitch(600, tenPitch).si() / kInch, 188.5, "in", within(0.005));
    page.check("F2", "188.5 in by 1/4 in", teethFor(inches(188.5), inches(0.25)), 754, "teeth", kExact);
}

TEST_CASE("S76: circular pitch, diametral pitch and module of one tooth")
{
    // "Circular pitch and diametral pitch": definitions.
    const Page page = form("gearing", "S76", "definitions of pitch");
    page.check("F1.circular", "96 teeth of 1/8 in", repeatByPitch(96, inches(0.125)).si() / kInch, 12, "in",
               share(1e-12));
    page.check("F1.circular", "120 teeth of 1/8 in", repeatByPitch(120, inches(0.125)).si() * 1000, 381, "mm",
               share(1e-12));
    page.check("F1.diametral", "one tooth of 10 diametral pitch",
               repeatByDiametralPitch(1, CountPerLength::si(10 / kInch)).si() * 1000, 7.97965, "mm", within(5e-6));
    page.check("F1.module", "one tooth of module 5 mm", repeatByModule(1, Length::si(0.005)).si() * 1000, 15.70796,
               "mm", within(5e-6));
    page.check("F2.diametral", "188.4 in by 10 diametral pitch, 600 teeth of 60 in",
               teethForDiametralPitch(inches(188.4), CountPerLength::si(10 / kInch)), 600, "teeth", kExact);
    page.check("F2.module", "376 mm by module 5 mm, 24 teeth of 15.70796 mm",
               teethForModule(Length::si(0.376), Length::si(0.005)), 24, "teeth", kExact);
    page.check("F2", "14.99 in by 1/8 in, rounded up", teethFor(inches(14.99), inches(0.125)), 120, "teeth", kExact);
}

TEST_CASE("S78: shortening of a plate on a 15 in repeat")
{
    // Plate distortion questions and answers: 2 pi times thickness over repeat. The stretchless base of 0.005 in and
    // the chart of K are from memory (plate makers' charts).
    form("gearing", "S78", "2 pi t / R, no base")
        .check("F3", "plate .067 in on 15 in", (1 - plateStretch(inches(15), inches(0.067), Length{})) * 100,
               2 * kPi * 0.067 / 15 * 100, "%", share(1e-12));
    const Page chart = fromMemory("gearing", "S78", "plate makers' charts of K");
    chart.check("F3", "length of the film, plate .067 in, base .005 in, 15 in",
                plateStretch(inches(15), inches(0.067), inches(0.005)) * 100, 97.403, "%", within(0.005));
    const struct {
        double plate, base, k;
    } rows[] = {{0.030, 0.005, 0.157}, {0.045, 0.005, 0.251}, {0.067, 0.005, 0.390}, {0.107, 0.007, 0.628},
                {0.112, 0.007, 0.660}, {0.125, 0.007, 0.741}, {0.155, 0.007, 0.930}, {0.250, 0.007, 1.527}};
    for (const auto& row : rows)
        chart.check("F3", "K of plate " + figure(row.plate) + " in, base " + figure(row.base) + " in",
                    15 * (1 - plateStretch(inches(15), inches(row.plate), inches(row.base))), row.k, "in",
                    within(0.001));
}

TEST_CASE("GNU units: running register as an angle of the cylinder")
{
    const Page page = referee("gearing", "units", "circle s / R");
    page.check("F4", "0.001 in on 12 in", registerAngle(inches(12), inches(0.001)) / radians(1),
               outside::units("circle * 0.001 / 12", "degree"), "degrees", share(1e-12));
    page.check("F4", "0.5 mm on 381 mm", registerAngle(Length::si(0.381), Length::si(0.0005)) / radians(1),
               outside::units("circle * 0.5 / 381", "degree"), "degrees", share(1e-12));
}

TEST_CASE("GNU units: a repeat printed under strain, let go")
{
    // A length that was L (1 + e) under strain comes back as L.
    referee("gearing", "units", "R - R / (1 + e)")
        .check("D1.repeat", "12 in at 0.1 %", repeatRelaxed(inches(12), 0.001).si() * 1000,
               outside::units("12 in - 12 in / 1.001", "mm"), "mm", share(1e-9));
}

TEST_CASE("GNU units: web for 100,000 labels, 3 across, 4 around a 12 in repeat, 8 % waste")
{
    const Page page = referee("job", "units", "Q R / (across around (1 - waste))");
    page.check("F5", "100,000 labels, 3 x 4, 12 in, no waste", toFeet(jobLength(100000, 3, 4, inches(12), 0)),
               outside::units("100000 / 12 * 12 in", "ft"), "ft", share(1e-12));
    const Length gross = jobLength(100000, 3, 4, inches(12), 0.08);
    page.check("F5", "the same, 8 % waste", gross.si(), outside::units("100000 / 12 * 12 in / 0.92", "m"), "m",
               share(1e-12));
    page.check("F5.total", "the same, 60 m of make-ready, 2 splices of 8 m, 9 m of path",
               webLength(gross, Length::si(60), 2, Length::si(8), Length::si(9)).si(),
               outside::units("100000 / 12 * 12 in / 0.92 + 60 m + 2 * 8 m + 9 m", "m"), "m", share(1e-12));
    page.check("W4", "the same, web of 13 in", webArea(inches(13), gross).si(),
               outside::units("100000 / 12 * 12 in / 0.92 * 13 in", "m^2"), "m2", share(1e-12));
}
