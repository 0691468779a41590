// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/lateral.h"

#include "core/physics/guide.h"
#include "core/physics/span.h"
#include "tests/published/outside.h"
#include "tests/published/us_units.h"

using namespace taut;
using namespace taut::physics;
using namespace source;

TEST_CASE("S63: a roller out of line by 10 mil a foot shifts the web about 7 mil a foot of span")
{
    // "When Rollers Fight, Webs Lose". A short, stiff span: wide web, little tension.
    const double shift = misalignmentShift(poundsForce(10), psi(5e5), inches(20), mils(5), feet(1), 0.010 / 12).si();
    CHECK(shift / kInch * 1000 == Approx(7).margin(0.5));
}

TEST_CASE("S62: first-order lateral response of a half-metre span at 1 m/s")
{
    // Shelton and Reid, "Lateral Dynamics of an Idealized Moving Web", 1971, abstract: a simple lag L / v.
    CHECK(spanTime(Length::si(0.5), Speed::si(1)).si() == Approx(0.5));
    CHECK(lateralShare(Time::si(0.5), Length::si(0.5), Speed::si(1)) == Approx(0.6321).margin(5e-5));
}

TEST_CASE("GSL: the web as a beam under tension, integrated and shot to its end conditions")
{
    // y'''' = K^2 y'': square to the roller and free of moment there gives f; unit shifts and tilts of its ends give
    // f1, f2, f3. The boundary conditions are from memory: Shelton and Reid 1971. The table: f, f1, f2, f3.
    const struct {
        const char* name;
        double x, f, f1, f2, f3;
    } rows[] = {{"0", 0, 2.0 / 3, 6, 4, 2},
                {"0.5", 0.5, 0.669420, 6.024955, 4.033225, 1.991731},
                {"1", 1, 0.677394, 6.099294, 4.131623, 1.967670},
                {"2", 2, 0.705513, 6.389056, 4.507563, 1.881493},
                {"5", 5, 0.810946, 8.149065, 6.608451, 1.540614},
                {"10", 10, 0.900082, 12.49858, 11.24974, 1.248837}};
    for (const auto& row : rows) {
        CAPTURE(row.name);
        const LateralFactors k = lateralFactors(row.x);
        CHECK(k.f == Approx(outside::gsl(std::string("beam_f_") + row.name)).epsilon(1e-7));
        CHECK(k.f1 == Approx(outside::gsl(std::string("beam_f1_") + row.name)).epsilon(1e-7));
        CHECK(k.f2 == Approx(outside::gsl(std::string("beam_f2_") + row.name)).epsilon(1e-7));
        CHECK(k.f3 == Approx(outside::gsl(std::string("beam_f3_") + row.name)).epsilon(1e-7));
        CHECK(k.f == Approx(row.f).epsilon(1e-6));
        CHECK(k.f1 == Approx(row.f1).epsilon(1e-6));
        CHECK(k.f2 == Approx(row.f2).epsilon(1e-6));
        CHECK(k.f3 == Approx(row.f3).epsilon(1e-6));
    }
}

TEST_CASE("GSL: the shift of a web whose stiffness number is two")
{
    // Tension chosen so that K L = 2: T = 4 E I / L^2, I = t w^3 / 12.
    const double modulus = 2.5e9;
    const double inertia = 50e-6 * std::pow(0.33, 3) / 12;
    const double length = 1.5;
    const double shift = misalignmentShift(Force::si(4 * modulus * inertia / (length * length)), Pressure::si(modulus),
                                           Length::si(0.33), Length::si(50e-6), Length::si(length), 0.001)
                             .si();
    CHECK(shift == Approx(outside::gsl("beam_f_2") * 0.001 * length).epsilon(1e-7));
}

TEST_CASE("GSL: the second-order lateral step integrated for one time constant")
{
    for (const char* name : {"0", "0.5", "1", "2", "5", "10"}) {
        CAPTURE(name);
        const double step = lateralStep(std::stod(name), Length::si(0.5), Speed::si(1), Time::si(0.5));
        CHECK(step == Approx(outside::gsl(std::string("lateral_step_") + name)).epsilon(1e-6));
    }
    CHECK(lateralStep(0, Length::si(0.5), Speed::si(1), Time::si(0.5)) == Approx(0.789844).margin(1e-6));
}

TEST_CASE("a displacement guide's shift and twist, by trigonometry")
{
    // Geometry: 300 mm at 5 and 3 degrees, 200 mm at 5; twist of 5 degrees over half, one and two widths.
    CHECK(guideShift(Length::si(0.3), radians(5)).si() * 1000 == Approx(26.147).margin(0.001));
    CHECK(guideShift(Length::si(0.2), radians(5)).si() * 1000 == Approx(17.43).margin(0.005));
    CHECK(guideShift(Length::si(0.3), radians(3)).si() * 1000 == Approx(15.70).margin(0.005));
    const auto twist = [](double spanOverWidth) {
        return 100 * twistEdgeStrain(radians(5), Length::si(0.33), Length::si(0.33 * spanOverWidth));
    };
    CHECK(twist(0.5) == Approx(0.380).epsilon(0.01));
    CHECK(twist(1) == Approx(0.0951).epsilon(0.01));
    CHECK(twist(2) == Approx(0.0238).epsilon(0.01));
}

TEST_CASE("S66: steering wants a span of more than three widths")
{
    // "Steering Directions Made Simple". At a running strain of 0.05 % and three widths an edge goes slack at 1.5 mrad.
    CHECK(steeringEdgeStrain(0.0015, Length::si(0.33), Length::si(0.99)) == Approx(5e-4).epsilon(1e-9));
    CHECK(steeringEdgeStrain(0.0015, Length::si(0.33), Length::si(0.66)) > 5e-4);
}

TEST_CASE("S72: force to shift a carriage of 250 kg, factor 2")
{
    // Guide actuator notes: friction 0.01, 0.1 m/s2; factor at least 2.0 for two terms (49.5 N, 99 N by arithmetic).
    CHECK(shiftForce(Mass::si(250), 0.01, Acceleration::si(0.1), 1).si() == Approx(49.5).margin(0.05));
    CHECK(shiftForce(Mass::si(250), 0.01, Acceleration::si(0.1), 2).si() == Approx(99).margin(0.1));
}
