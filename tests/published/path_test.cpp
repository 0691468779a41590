// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/path.h"

#include "core/physics/belt.h"
#include "tests/published/outside.h"
#include "tests/published/us_units.h"

using namespace taut;
using namespace taut::physics;

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
    // S82, Encyclopaedia Britannica, 11th edition (1911), "Mechanics", equation 32B; S83, belt length calculator:
    // 63.874854. The approximate form of other pages gives 63.8744.
    CHECK(openBelt(Length::si(10), Length::si(5), Length::si(20)).si() == Approx(63.874854).epsilon(1e-8));
    CHECK(belt(10, 5, 20, false) == Approx(63.874854).epsilon(1e-8));
    CHECK(belt(5, 10, 20, false) == Approx(63.874854).epsilon(1e-8));
}

TEST_CASE("S82: crossed belt over the same pulleys")
{
    // Equation 32A, with the sign of the geometry: the belt wraps pi + 2 asin((R + r) / C) on both.
    const double byEquation = 2 * std::sqrt(20 * 20 - 7.5 * 7.5) + 7.5 * (kPi + 2 * std::asin(7.5 / 20));
    CHECK(crossedBelt(Length::si(10), Length::si(5), Length::si(20)).si() == Approx(byEquation).epsilon(1e-12));
    CHECK(belt(10, 5, 20, true) == Approx(byEquation).epsilon(1e-12));
}

TEST_CASE("S82: belts of many sizes, put together from webs")
{
    for (double diameter : {2.0, 7.0, 10.0})
        for (double other : {1.0, 7.0, 12.0})
            for (double centres : {11.5, 20.0, 300.0}) {
                CAPTURE(diameter, other, centres);
                CHECK(
                    belt(diameter, other, centres, false) ==
                    Approx(openBelt(Length::si(diameter), Length::si(other), Length::si(centres)).si()).epsilon(1e-12));
                CHECK(belt(diameter, other, centres, true) ==
                      Approx(crossedBelt(Length::si(diameter), Length::si(other), Length::si(centres)).si())
                          .epsilon(1e-12));
            }
}
