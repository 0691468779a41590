// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/material.h"

#include "core/physics/roll.h"
#include "tests/published/evidence.h"
#include "tests/published/outside.h"
#include "tests/published/us_units.h"

using namespace taut;
using namespace taut::physics;
using namespace source;
using namespace evidence;

namespace {
double gsmOf(double lb, double a, double b) { return grammageOfReam(pounds(lb), inches(a) * inches(b)).si() * 1000; }
}  // namespace

TEST_CASE("S10: grammage of a pound of each basic size")
{
    // Encyclopaedia article "Grammage", table of factors, three decimals. Its factor for 1000 ft2 is a misprint and is
    // not used.
    const Page page = printed("material", "S10", "table of basic sizes");
    const struct {
        double a, b, factor;
    } rows[] = {{17, 22, 3.760}, {20, 26, 2.704}, {24, 36, 1.627}, {25, 38, 1.480}};
    for (const auto& row : rows)
        page.check("W1", "1 lb of " + figure(row.a) + " x " + figure(row.b) + " in", gsmOf(1, row.a, row.b), row.factor,
                   "g/m2", share(0.0005));
    page.check("W1", "20 lb bond, 17 x 22 in", gsmOf(20, 17, 22), 75.2, "g/m2", within(0.1));
    page.check("W1", "103.6 g/m2 book, 25 x 38 in", 103.6 / gsmOf(1, 25, 38), 69.93, "lb", share(0.001));
}

TEST_CASE("S9: worked grammages of two ordinary papers")
{
    // Paper catalogue, standards chapter 16: whole grams.
    const Page page = printed("material", "S9", "worked examples");
    page.check("W1", "20 lb of 17 x 22 in", gsmOf(20, 17, 22), 75, "g/m2", within(0.5));
    page.check("W1", "50 lb of 25 x 38 in", gsmOf(50, 25, 38), 74, "g/m2", within(0.5));
}

TEST_CASE("S15: a pound of the 278.70912 m2 ream")
{
    // Forum text on paper units: 1.63 g/m2 (500 sheets of 24 x 36 in are 3000 ft2).
    printed("material", "S15", "ream of 278.70912 m2")
        .check("W1", "1 lb of 24 x 36 in", gsmOf(1, 24, 36), 1.63, "g/m2", within(0.005));
}

TEST_CASE("S13, S16: yield of six films of one mil")
{
    // Two film makers' yield tables, three digits; the ream is 432,000 in2.
    const Page page = printed("material", "S13, S16", "yield tables, film of 1 mil");
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
        const std::string film = row.film;
        const double area = yield(Density::si(row.density * 1000), mils(1)).si();
        page.check("W3", film, area * kPound / (kInch * kInch), row.inchesPerPound, "in2/lb", share(0.003));
        page.check("W3", film, area, row.metresPerKilogram, "m2/kg", share(0.003));
        page.check("W3", film + ", grammage", 1000 / area, row.gsm, "g/m2", share(0.003));
        page.check("W3", film + ", ream of 432,000 in2", 432000 * kInch * kInch / area / kPound, row.poundsPerReam,
                   "lb", share(0.003));
    }
}

TEST_CASE("S8: area of 900 lb of an 80 lb book paper")
{
    // Paper formulas page: 5,344 thousand square inches, 37.11 thousand square feet.
    const Page page = printed("material", "S8", "area of a roll");
    const Grammage grammage = grammageOfReam(pounds(80), inches(25) * inches(38));
    const Length width = inches(13);
    const double area = webArea(width, lengthFromMass(pounds(900), width, grammage)).si();
    page.check("W4", "900 lb of 80 lb book", area / (kInch * kInch) / 1000, 5344, "thousand in2", within(1));
    page.check("W4", "900 lb of 80 lb book", area / (kFoot * kFoot) / 1000, 37.11, "thousand ft2", within(0.01));
}

TEST_CASE("S13: thousand square inches are width in inches times feet times 12 over 1000")
{
    form("material", "S13", "width x feet x 12 / 1000")
        .check("W4", "13 in, 1000 ft", webArea(inches(13), feet(1000)).si() / (kInch * kInch) / 1000,
               13.0 * 1000 * 12 / 1000, "thousand in2", share(1e-12));
}
