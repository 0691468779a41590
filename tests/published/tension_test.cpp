// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/tension.h"

#include "tests/published/outside.h"
#include "tests/published/us_units.h"

using namespace taut;
using namespace taut::physics;
using namespace source;

TEST_CASE("S20: pounds per inch beside kilograms per centimetre")
{
    // Typical running tensions: the kg/cm column is printed to two digits.
    const struct {
        double pli, kgPerCm;
    } rows[] = {{3.0, 0.54}, {5.5, 0.98}, {8.0, 1.43}};
    for (const auto& row : rows)
        CHECK(totalTension(perInch(row.pli), Length::si(0.01)).si() / 9.80665 == Approx(row.kgPerCm).epsilon(0.015));
}

TEST_CASE("S18a, S20: starting tension of films and foils from force per width and mil")
{
    // Both tables: polyester 0.75, aluminium foil 1.0, polystyrene 1.0, acetate 0.5 lbf/in per mil.
    const struct {
        const char* material;
        double perMil, mils, pli;
    } rows[] = {{"polyester", 0.75, 2, 1.5}, {"aluminium foil", 1.0, 1, 1.0}, {"acetate", 0.5, 3, 1.5}};
    for (const auto& row : rows) {
        CAPTURE(row.material);
        const Pressure stress = psi(row.perMil * 1000);
        CHECK(tensionFromStress(stress, mils(row.mils)).si() == Approx(perInch(row.pli).si()).epsilon(1e-12));
    }
}

TEST_CASE("S26: a tenth to a quarter of the breaking strength")
{
    // "Tension guidelines": the upper end is a safety factor of 4. Liner of 30 lbf/in (S25): 3.0 to 7.5.
    CHECK(tensionFromStrength(0.10, perInch(30)).si() == Approx(perInch(3.0).si()).epsilon(1e-12));
    CHECK(tensionFromStrength(0.25, perInch(30)).si() == Approx(perInch(7.5).si()).epsilon(1e-12));
    CHECK(tensionFromStrength(0.25, perInch(30)).si() * 4 == Approx(perInch(30).si()).epsilon(1e-12));
}

TEST_CASE("S26, S28, S18a: the strength rule lies far above the film table for polyester")
{
    // S28, comparative film data: 200 N/mm2. 50 um: 1.0 to 2.5 N/mm, while the table's 0.75 lbf/in/mil gives 0.259.
    const ForcePerWidth strength = tensionFromStress(Pressure::si(200e6), Length::si(50e-6));
    CHECK(tensionFromStrength(0.10, strength).si() / 1000 == Approx(1.0).epsilon(1e-12));
    CHECK(tensionFromStrength(0.25, strength).si() / 1000 == Approx(2.5).epsilon(1e-12));
    CHECK(tensionFromStress(psi(750), Length::si(50e-6)).si() / 1000 == Approx(0.259).margin(0.0005));
}
