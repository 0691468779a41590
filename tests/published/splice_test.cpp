// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/splice.h"

#include "tests/published/evidence.h"
#include "tests/published/outside.h"
#include "tests/published/us_units.h"

using namespace taut;
using namespace taut::physics;
using namespace source;
using namespace evidence;

TEST_CASE("S60: stresses on a joint at 25 degrees to the axis under 18 MPa")
{
    // Gere and Timoshenko, Mechanics of Materials, 3rd SI edition, scarf-joint problem (statement); answers by the
    // stress transformation.
    const Page page = form("splice", "S60", "scarf joint, problem as quoted");
    const double lean = radians(90 - 25);
    page.check("P5.normal", "18 MPa, joint at 25 degrees", spliceNormalStress(Pressure::si(18e6), lean).si() / 1e6,
               3.215, "MPa", share(0.001));
    page.check("P5.shear", "18 MPa, joint at 25 degrees", spliceShearStress(Pressure::si(18e6), lean).si() / 1e6, 6.894,
               "MPa", share(0.001));
    // Nothing is gained by leaning: over the longer joint both together are the whole pull again (S60, equilibrium).
    const double longer = 1 / std::cos(lean);
    page.check("P5.shear", "normal and shear together over the longer joint, under 18 MPa",
               std::hypot(spliceNormalStress(Pressure::si(18e6), lean).si(),
                          spliceShearStress(Pressure::si(18e6), lean).si()) *
                   longer / 1e6,
               18, "MPa", share(0.001));
    const double even = radians(90 - 50.19);
    page.check("P5.normal", "normal over shear at 50.19 degrees",
               spliceNormalStress(Pressure::si(1e6), even).si() / spliceShearStress(Pressure::si(1e6), even).si(), 1.2,
               "", share(0.001));
}

TEST_CASE("GSL: stresses on a joint from the rotated stress tensor")
{
    // A uniaxial stress of 1, its tensor turned by matrix multiplication.
    const Page page = referee("splice", "GSL", "blas, the stress tensor turned");
    for (const char* degrees : {"0", "15", "45"}) {
        const double lean = radians(std::stod(degrees));
        page.check("P5.normal", std::string("1 MPa, ") + degrees + " degrees from the cross cut",
                   spliceNormalStress(Pressure::si(1e6), lean).si() / 1e6,
                   outside::gsl(std::string("tensor_normal_") + degrees), "MPa", share(1e-12));
        page.check("P5.shear", std::string("1 MPa, ") + degrees + " degrees from the cross cut",
                   spliceShearStress(Pressure::si(1e6), lean).si() / 1e6,
                   outside::gsl(std::string("tensor_shear_") + degrees), "MPa", share(1e-12));
    }
}

TEST_CASE("S58: margins of a published film tape over 2 lbf/in")
{
    // National research council evaluation 14018-R, results: tensile 6.32 N/mm, lap shear 3.95 to its own backing and
    // 2.20 to polyethylene film. A building tape: the arithmetic is checked, not a splice tape.
    const Page page = form("splice", "S58", "table of results, over 2 lbf/in");
    const struct {
        const char* what;
        double newtonsPerMm, margin;
    } rows[] = {{"tensile 6.32 N/mm", 6.32, 18.04}, {"shear 3.95 N/mm", 3.95, 11.28}, {"shear 2.20 N/mm", 2.20, 6.28}};
    for (const auto& row : rows)
        page.check("P1", row.what, spliceMargin(ForcePerWidth::si(row.newtonsPerMm * 1000), perInch(2)), row.margin, "",
                   share(0.001));
}

TEST_CASE("S59, load from memory: what a holding test carries, over 2 lbf/in")
{
    // ASTM D3654/D3654M, usual load 1 kg on 25 x 25, 24 x 24, 12 x 12 mm or half an inch square (from memory).
    const Page page = fromMemory("splice", "S59", "load of 1 kg, over 2 lbf/in");
    for (const char* side : {"25 mm", "24 mm", "12 mm", "0.5 in"})
        page.check("P1", std::string("1 kg on a square of ") + side,
                   spliceMargin(ForcePerWidth::si(9.80665 / outside::units(side, "m")), perInch(2)),
                   outside::units(std::string("kg gravity / (") + side + ")", "lbf/in") / 2, "", share(1e-12));
}
