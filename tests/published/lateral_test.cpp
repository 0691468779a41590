// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/lateral.h"

#include "core/physics/guide.h"
#include "core/physics/span.h"
#include "tests/published/evidence.h"
#include "tests/published/outside.h"
#include "tests/published/us_units.h"

using namespace taut;
using namespace taut::physics;
using namespace source;
using namespace evidence;

TEST_CASE("S63: a roller out of line by 10 mil a foot shifts the web about 7 mil a foot of span")
{
    // "When Rollers Fight, Webs Lose". A short, stiff span: wide web, little tension.
    const double shift = misalignmentShift(poundsForce(10), psi(5e5), inches(20), mils(5), feet(1), 0.010 / 12).si();
    printed("lateral", "S63", "rule")
        .check("G3", "10 mil per ft out of line, span of 1 ft", shift / kInch * 1000, 7, "mil", within(0.5));
}

TEST_CASE("S62: first-order lateral response of a half-metre span at 1 m/s")
{
    // Shelton and Reid, "Lateral Dynamics of an Idealized Moving Web", 1971, abstract: a simple lag L / v.
    const Page page = form("lateral", "S62", "abstract, a lag of L / v");
    page.check("D5", "span of 0.5 m at 1 m/s", spanTime(Length::si(0.5), Speed::si(1)).si(), 0.5, "s", share(1e-12));
    page.check("G2", "span of 0.5 m at 1 m/s, after 0.5 s",
               lateralShare(Time::si(0.5), Length::si(0.5), Speed::si(1)) * 100, 63.21, "%", within(0.005));
}

TEST_CASE("GSL: the web as a beam under tension, integrated and shot to its end conditions")
{
    // y'''' = K^2 y'': square to the roller and free of moment there gives f; unit shifts and tilts of its ends give
    // f1, f2, f3. The boundary conditions are from memory: Shelton and Reid 1971.
    const Page page = referee("lateral", "GSL", "odeiv2 rk8pd, shooting; end conditions from memory, S64");
    for (const char* name : {"0", "0.5", "1", "2", "5", "10"}) {
        const LateralFactors k = lateralFactors(std::stod(name));
        const std::string at = std::string(" at K L = ") + name;
        const auto gsl = [name](const char* which) { return outside::gsl(std::string("beam_") + which + "_" + name); };
        page.check("G3", "f" + at, k.f, gsl("f"), "", share(1e-7));
        page.check("G4", "f1" + at, k.f1, gsl("f1"), "", share(1e-7));
        page.check("G4", "f2" + at, k.f2, gsl("f2"), "", share(1e-7));
        page.check("G4", "f3" + at, k.f3, gsl("f3"), "", share(1e-7));
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
    referee("lateral", "GSL", "odeiv2 rk8pd, shooting")
        .check("G3", "1 mrad, span of 1.5 m, K L = 2", shift * 1000, outside::gsl("beam_f_2") * 0.001 * length * 1000,
               "mm", share(1e-7));
}

TEST_CASE("GSL: the second-order lateral step integrated for one time constant")
{
    const Page page = referee("lateral", "GSL", "odeiv2 rk8pd; equation from memory, S64");
    for (const char* name : {"0", "0.5", "1", "2", "5", "10"})
        page.check("G4", std::string("step after L / v at K L = ") + name,
                   lateralStep(std::stod(name), Length::si(0.5), Speed::si(1), Time::si(0.5)),
                   outside::gsl(std::string("lateral_step_") + name), "", share(1e-6));
}

TEST_CASE("GSL: the length of the edge of a twisted web")
{
    // The edge of a web twisted by alpha over L is a line with a constant slope of alpha w / (2 L): its length by
    // quadrature.
    const Page page = referee("guide", "GSL", "quadrature qags of the edge's length");
    for (const char* name : {"0.5", "1", "2"})
        page.check("G8", std::string("5 degrees over ") + name + " widths",
                   100 * twistEdgeStrain(radians(5), Length::si(0.33), Length::si(0.33 * std::stod(name))),
                   100 * outside::gsl(std::string("twist_") + name), "%", share(1e-9));
}

TEST_CASE("GSL: the mean strain of a twisted web is what it has to lose before its middle hangs slack")
{
    // The tension stays: what the lines off the middle are longer by, in the mean over the width, the middle is shorter
    // by. It hangs slack when that is the strain the web runs at. Lengths by quadrature, the mean by quadrature.
    const Page page = referee("guide", "GSL", "quadrature qags of the lines' lengths and over the width");
    for (const char* name : {"0.5", "1", "2"})
        page.check("G8.limit", std::string("the twist that takes that mean strain over ") + name + " widths",
                   twistSlackAngle(outside::gsl(std::string("twist_mean_") + name), Length::si(0.33),
                                   Length::si(0.33 * std::stod(name))) /
                       radians(1),
                   5, "degrees", share(1e-3));
}

TEST_CASE("the share of a guide's stroke that an error takes, by definition")
{
    definition("guide", "error over stroke")
        .check("G11", "2 mm of 25 mm", strokeShare(Length::si(0.002), Length::si(0.025)) * 100, 8, "%", share(1e-12));
}

TEST_CASE("a displacement guide's shift and the place of its sensor, by definition")
{
    const Page page = definition("guide", "trigonometry");
    const auto shift = [](double mm, double degrees) {
        return guideShift(Length::si(mm / 1000), radians(degrees)).si() * 1000;
    };
    page.check("G7", "300 mm, 5 degrees", shift(300, 5), 26.147, "mm", within(0.001));
    page.check("G7", "200 mm, 5 degrees", shift(200, 5), 17.43, "mm", within(0.005));
    page.check("G7", "300 mm, 3 degrees", shift(300, 3), 15.70, "mm", within(0.005));
    const Page sensor = definition("guide", "straight line between two readings");
    sensor.check("G10", "3.2 V between 1.2 and 6.2 V, window of 10 mm",
                 edgeInWindow(3.2, 1.2, 6.2, Length::si(0.01)).si() * 1000, 4, "mm", share(1e-12));
    const auto edge = [](double side) { return edgePlace(Length::si(0.25), Length::si(0.33), side).si() * 1000; };
    sensor.check("G10.edge", "centreline at 250 mm, web of 330 mm, far edge", edge(1), 415, "mm", share(1e-12));
    sensor.check("G10.edge", "centreline at 250 mm, web of 330 mm, near edge", edge(-1), 85, "mm", share(1e-12));
}

TEST_CASE("GSL: an edge between two readings of its sensor")
{
    referee("guide", "GSL", "interp, linear")
        .check("G10", "3.3 V between 1.2 and 6.2 V, window of 10 mm",
               edgeInWindow(3.3, 1.2, 6.2, Length::si(0.01)).si() * 1000, outside::gsl("sensor"), "mm", share(1e-12));
}

TEST_CASE("GNU units: the shift of a displacement guide")
{
    referee("guide", "units", "L sin(angle)")
        .check("G7", "12 in, 4 degrees", guideShift(inches(12), radians(4)).si() / kInch,
               outside::units("12 in * sin(4 degree)", "in"), "in", share(1e-12));
}

TEST_CASE("S66: steering wants a span of more than three widths")
{
    // "Steering Directions Made Simple". At a running strain of 0.05 % and three widths an edge goes slack at 1.5 mrad.
    form("lateral", "S66", "more than three widths")
        .check("G5", "1.5 mrad over three widths", steeringEdgeStrain(0.0015, Length::si(0.33), Length::si(0.99)) * 100,
               0.05, "%", share(1e-9));
    CHECK(steeringEdgeStrain(0.0015, Length::si(0.33), Length::si(0.66)) > 5e-4);
}

TEST_CASE("GSL: the strain of a steered web's edge at its entry")
{
    // Bending of the beam there: (w / 2) y'' with y'' = theta / L times the referee's, K L close to 0, L = 3 w.
    referee("lateral", "GSL", "odeiv2 rk8pd, shooting")
        .check("G5", "1 mrad over three widths", steeringEdgeStrain(0.001, Length::si(0.33), Length::si(0.99)) * 100,
               outside::gsl("beam_entry_0") * 0.001 / 6 * 100, "%", share(1e-7));
    referee("lateral", "GSL", "odeiv2 rk8pd, shooting")
        .check("G5.limit", "the angle that gives that strain, in mrad",
               1000 * steeringSlackAngle(outside::gsl("beam_entry_0") * 0.001 / 6, Length::si(0.33), Length::si(0.99)),
               1, "mrad", share(1e-7));
}

TEST_CASE("S72: force to shift a carriage of 250 kg, factor 2")
{
    // Guide actuator notes: friction 0.01, 0.1 m/s2; factor at least 2.0 for two terms.
    const Page page = form("guide", "S72", "factor of at least 2.0");
    const auto force = [](double factor) {
        return shiftForce(Mass::si(250), 0.01, Acceleration::si(0.1), factor).si();
    };
    page.check("G12", "250 kg, friction 0.01, 0.1 m/s2, factor 1", force(1),
               outside::units("250 kg (0.01 gravity + 0.1 m/s^2)", "N"), "N", share(1e-12));
    page.check("G12", "250 kg, friction 0.01, 0.1 m/s2, factor 2", force(2), 99, "N", within(0.1));
}
