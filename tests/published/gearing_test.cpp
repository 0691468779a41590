// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/gearing.h"

#include "core/physics/material.h"
#include "tests/published/outside.h"
#include "tests/published/us_units.h"

using namespace taut;
using namespace taut::physics;
using namespace source;

TEST_CASE("S77: an impression cylinder of 60.001 in with 754 teeth at a quarter inch")
{
    // Flexography: Principles and Practices, 5th edition, 1999, presses, about p. 74: circumference 188.5 in.
    CHECK(repeatByPitch(754, inches(0.25)).si() / kInch == Approx(188.5).margin(0.005));
    CHECK(repeatByPitch(754, inches(0.25)).si() / kInch == Approx(kPi * 60.001).margin(0.005));
    // About 600 teeth of 10 diametral pitch: the same circumference, not the same repeats.
    const CountPerLength tenPitch = CountPerLength::si(10 / kInch);
    CHECK(repeatByDiametralPitch(600, tenPitch).si() / kInch == Approx(188.5).margin(0.005));
    CHECK(teethFor(inches(188.5), inches(0.25)) == 754);
}

TEST_CASE("S76: circular pitch, diametral pitch and module of one tooth")
{
    // "Circular pitch and diametral pitch": definitions.
    CHECK(repeatByPitch(96, inches(0.125)).si() / kInch == Approx(12).epsilon(1e-12));
    CHECK(repeatByPitch(120, inches(0.125)).si() == Approx(0.381).epsilon(1e-12));
    CHECK(repeatByDiametralPitch(1, CountPerLength::si(10 / kInch)).si() * 1000 == Approx(7.97965).margin(5e-6));
    CHECK(repeatByModule(1, Length::si(0.005)).si() * 1000 == Approx(15.70796).margin(5e-6));
}

TEST_CASE("S78: shortening of a plate on a 15 in repeat")
{
    // Plate distortion questions and answers: 2 pi times thickness over repeat. The stretchless base of 0.005 in and
    // the chart of K are from memory (plate makers' charts).
    CHECK((1 - plateStretch(inches(15), inches(0.067), Length{})) * 100 ==
          Approx(2 * kPi * 0.067 / 15 * 100).epsilon(1e-12));
    CHECK(plateStretch(inches(15), inches(0.067), inches(0.005)) * 100 == Approx(97.403).margin(0.005));
    const struct {
        double plate, base, k;
    } rows[] = {{0.030, 0.005, 0.157}, {0.045, 0.005, 0.251}, {0.067, 0.005, 0.390}, {0.107, 0.007, 0.628},
                {0.112, 0.007, 0.660}, {0.125, 0.007, 0.741}, {0.155, 0.007, 0.930}, {0.250, 0.007, 1.527}};
    for (const auto& row : rows) {
        CAPTURE(row.plate);
        const double k = 15 * (1 - plateStretch(inches(15), inches(row.plate), inches(row.base)));
        CHECK(k == Approx(row.k).margin(0.001));
    }
}

TEST_CASE("web for 100,000 labels, 3 across, 4 around a 12 in repeat, 8 % waste")
{
    // Exact arithmetic of the definition.
    CHECK(toFeet(jobLength(100000, 3, 4, inches(12), 0)) == Approx(8333.33).margin(0.005));
    const Length gross = jobLength(100000, 3, 4, inches(12), 0.08);
    CHECK(toFeet(gross) == Approx(9057.97).margin(0.005));
    CHECK(gross.si() == Approx(2760.87).margin(0.005));
    CHECK(webArea(inches(13), gross).si() / (kInch * kInch) / 1000 == Approx(1413.04).margin(0.005));
}
