// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/material.h"

#include "core/physics/roll.h"
#include "tests/published/outside.h"
#include "tests/published/us_units.h"

using namespace taut;
using namespace taut::physics;
using namespace source;

namespace {
double gsmOf(double lb, double a, double b) { return grammageOfReam(pounds(lb), inches(a) * inches(b)).si() * 1000; }
}  // namespace

TEST_CASE("S10: grammage of a pound of each basic size")
{
    // Encyclopaedia article "Grammage", table of factors, three decimals. Its factor for 1000 ft2 is a misprint and is
    // not used.
    const struct {
        double a, b, printed;
    } rows[] = {{17, 22, 3.760}, {20, 26, 2.704}, {24, 36, 1.627}, {25, 38, 1.480}};
    for (const auto& row : rows) CHECK(gsmOf(1, row.a, row.b) == Approx(row.printed).epsilon(0.0005));
    CHECK(gsmOf(20, 17, 22) == Approx(75.2).margin(0.1));
    CHECK(103.6 / gsmOf(1, 25, 38) == Approx(69.93).epsilon(0.001));
}

TEST_CASE("S9: worked grammages of two ordinary papers")
{
    // Paper catalogue, standards chapter 16: whole grams.
    CHECK(gsmOf(20, 17, 22) == Approx(75).margin(0.5));
    CHECK(gsmOf(50, 25, 38) == Approx(74).margin(0.5));
}

TEST_CASE("S15: a pound of the 278.70912 m2 ream")
{
    // Forum text on paper units: 1.63 g/m2 (500 sheets of 24 x 36 in are 3000 ft2).
    CHECK(gsmOf(1, 24, 36) == Approx(1.63).margin(0.005));
}

TEST_CASE("S13, S16: yield of six films of one mil")
{
    // Two film makers' yield tables, three digits; the ream is 432,000 in2.
    const struct {
        const char* film;
        double density, inchesPerPound, metresPerKilogram, poundsPerReam, gsm;
    } rows[] = {
        {"OPP", 0.906, 30600, 43.5, 14.1, 23.0},
        {"LLDPE", 0.92, 30100, 42.7, 14.4, 23.4},
        {"HDPE", 0.95, 29200, 41.5, 14.8, 24.1},
        {"biaxial nylon", 1.16, 23900, 33.9, 18.1, 29.5},
        {"oriented polyester", 1.39, 19900, 28.3, 21.7, 35.3},
        {"cellophane", 1.45, 19100, 27.1, 22.6, 36.9},
    };
    for (const auto& row : rows) {
        CAPTURE(row.film);
        const double area = yield(Density::si(row.density * 1000), mils(1)).si();
        CHECK(area * kPound / (kInch * kInch) == Approx(row.inchesPerPound).epsilon(0.003));
        CHECK(area == Approx(row.metresPerKilogram).epsilon(0.003));
        CHECK(1000 / area == Approx(row.gsm).epsilon(0.003));
        CHECK(432000 * kInch * kInch / area / kPound == Approx(row.poundsPerReam).epsilon(0.003));
    }
}

TEST_CASE("S8: area of 900 lb of an 80 lb book paper")
{
    // Paper formulas page: 5,344 thousand square inches, 37.11 thousand square feet.
    const Grammage grammage = grammageOfReam(pounds(80), inches(25) * inches(38));
    const Length width = inches(13);
    const double area = webArea(width, lengthFromMass(pounds(900), width, grammage)).si();
    CHECK(area / (kInch * kInch) / 1000 == Approx(5344).margin(1));
    CHECK(area / (kFoot * kFoot) / 1000 == Approx(37.11).margin(0.01));
}

TEST_CASE("S13: thousand square inches are width in inches times feet times 12 over 1000")
{
    CHECK(webArea(inches(13), feet(1000)).si() / (kInch * kInch) / 1000 == Approx(13.0 * 1000 * 12 / 1000));
}
