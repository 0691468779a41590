// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/path.h"

#include "core/physics/belt.h"
#include "tests/published/evidence.h"
#include "tests/published/outside.h"
#include "tests/published/us_units.h"

using namespace taut;
using namespace taut::physics;
using namespace evidence;

namespace {

/// Closed belt over two pulleys, put together from two webs: there and back, and the arcs between where one meets and
/// the other leaves.
double belt(double diameter, double other, double centres, bool crossed)
{
    const RollerPlace a{"a", Length{}, Length{}, Length::si(diameter), false, Length{}};
    const RollerPlace b{"b", Length::si(centres), Length{}, Length::si(other), crossed, Length{}};
    const auto there = webPath(std::vector<RollerPlace>{a, b});
    const auto back = webPath(std::vector<RollerPlace>{b, a});
    REQUIRE(there);
    REQUIRE(back);
    const auto arc = [](const RollerPlace& r, double meets, double leaves) {
        const double turned = r.counterClockwise ? leaves - meets : meets - leaves;
        return r.diameter.si() / 2 * (turned < 0 ? turned + 2 * kPi : turned);
    };
    return (there->length() + back->length()).si() + arc(b, there->arcs[1].startAngle, back->arcs[0].startAngle) +
           arc(a, back->arcs[1].startAngle, there->arcs[0].startAngle);
}

}  // namespace

TEST_CASE("S82, S83: open belt over pulleys of 10 and 5, 20 apart")
{
    // S82, Encyclopaedia Britannica, 11th edition (1911), "Mechanics", equation 32B; S83, belt length calculator. The
    // approximate form of other pages gives 63.8744.
    const Page page = form("path", "S82, S83", "equation 32B; formula of the page");
    const double open = 2 * std::sqrt(20 * 20 - 2.5 * 2.5) + kPi * 7.5 + 5 * std::asin(2.5 / 20);
    page.check("V3.open_belt", "diameters 10 and 5, 20 apart",
               openBelt(Length::si(10), Length::si(5), Length::si(20)).si(), open, "", share(1e-12));
    page.check("–", "path of two webs, 10 and 5, 20 apart, open", belt(10, 5, 20, false), open, "", share(1e-12));
    page.check("–", "path of two webs, 5 and 10, 20 apart, open", belt(5, 10, 20, false), open, "", share(1e-12));
    CHECK(open == Approx(63.874854).epsilon(1e-8));
    page.check("V3.same", "radii 5 and 2.5, 20 apart", openTangent(Length::si(5), Length::si(2.5), Length::si(20)).si(),
               std::sqrt(20 * 20 - 2.5 * 2.5), "", share(1e-12));
}

TEST_CASE("S82: crossed belt over the same pulleys")
{
    // Equation 32A, with the sign of the geometry: the belt wraps pi + 2 asin((R + r) / C) on both.
    const Page page = form("path", "S82", "equation 32A, sign by geometry");
    const double crossed = 2 * std::sqrt(20 * 20 - 7.5 * 7.5) + 7.5 * (kPi + 2 * std::asin(7.5 / 20));
    page.check("V3.crossed_belt", "diameters 10 and 5, 20 apart",
               crossedBelt(Length::si(10), Length::si(5), Length::si(20)).si(), crossed, "", share(1e-12));
    page.check("–", "path of two webs, 10 and 5, 20 apart, crossed", belt(10, 5, 20, true), crossed, "", share(1e-12));
    page.check("V3.crossed", "radii 5 and 2.5, 20 apart",
               crossedTangent(Length::si(5), Length::si(2.5), Length::si(20)).si(), std::sqrt(20 * 20 - 7.5 * 7.5), "",
               share(1e-12));
}

TEST_CASE("S82: belts of many sizes, put together from webs")
{
    Tally open;
    Tally crossed;
    for (double diameter : {2.0, 7.0, 10.0})
        for (double other : {1.0, 7.0, 12.0})
            for (double centres : {11.5, 20.0, 300.0}) {
                const double sum = (diameter + other) / 2;
                const double off = (diameter - other) / 2;
                const double byB =
                    2 * std::sqrt(centres * centres - off * off) + kPi * sum + 2 * off * std::asin(off / centres);
                const double byA =
                    2 * std::sqrt(centres * centres - sum * sum) + sum * (kPi + 2 * std::asin(sum / centres));
                CAPTURE(diameter, other, centres);
                CHECK(belt(diameter, other, centres, false) == Approx(byB).epsilon(1e-12));
                CHECK(belt(diameter, other, centres, true) == Approx(byA).epsilon(1e-12));
                open.note(share(1e-12).holds(belt(diameter, other, centres, false), byB));
                crossed.note(share(1e-12).holds(belt(diameter, other, centres, true), byA));
            }
    open.check(form("path", "S82", "equation 32B"), "–", "open belts of many sizes from two webs, to 1e-12");
    crossed.check(form("path", "S82", "equation 32A"), "–", "crossed belts of many sizes from two webs, to 1e-12");
}
