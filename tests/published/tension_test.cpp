// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/tension.h"

#include "tests/published/evidence.h"
#include "tests/published/outside.h"
#include "tests/published/us_units.h"

using namespace taut;
using namespace taut::physics;
using namespace source;
using namespace evidence;

TEST_CASE("S20: pounds per inch beside kilograms per centimetre")
{
    // Typical running tensions: the kg/cm column is printed to two digits, one of them to three.
    const Page page = printed("tension", "S20", "lbf/in beside kg/cm");
    const struct {
        double pli, kgPerCm;
    } rows[] = {{1.25, 0.22}, {3.0, 0.54}, {3.5, 0.625}, {5.5, 0.98}, {8.0, 1.43}};
    for (const auto& row : rows)
        page.check("T1", figure(row.pli) + " lbf/in over 1 cm",
                   totalTension(perInch(row.pli), Length::si(0.01)).si() / 9.80665, row.kgPerCm, "kgf", share(0.015));
}

TEST_CASE("S18a, S20: starting tension of films and foils from force per width and mil")
{
    // Both tables: polyester 0.75, aluminium foil 1.0, polystyrene 1.0, acetate 0.5 lbf/in per mil.
    const Page page = printed("tension", "S18a, S20", "lbf/in per mil");
    const struct {
        const char* material;
        double perMil, mils, pli;
    } rows[] = {{"polyester", 0.75, 2, 1.5},
                {"aluminium foil", 1.0, 1, 1.0},
                {"polystyrene", 1.0, 2, 2.0},
                {"acetate", 0.5, 3, 1.5}};
    for (const auto& row : rows)
        page.check("T2", std::string(row.material) + ", " + figure(row.mils) + " mil",
                   tensionFromStress(psi(row.perMil * 1000), mils(row.mils)).si() / perInch(1).si(), row.pli, "lbf/in",
                   share(1e-12));
}

TEST_CASE("S26, S27: a tenth to a quarter of the breaking strength")
{
    // "Tension guidelines": the upper end is a safety factor of 4. Liner of 30 lbf/in (S25): 3.0 to 7.5.
    const Page page = form("tension", "S26, S25", "strength rule; liner 30 lbf/in");
    const auto part = [](double of) { return tensionFromStrength(of, perInch(30)).si() / perInch(1).si(); };
    page.check("T4", "a tenth of 30 lbf/in", part(0.10), 3.0, "lbf/in", share(1e-12));
    page.check("T4", "a quarter of 30 lbf/in", part(0.25), 7.5, "lbf/in", share(1e-12));
    printed("tension", "S26", "strength rule")
        .check("T4", "safety factor of the upper end", 30 / part(0.25), 4, "", share(1e-12));
    printed("tension", "S27", "ten to one")
        .check("T4", "30 lbf/in over a tenth", 30 / part(0.10), 10, "", share(1e-12));
}

TEST_CASE("S26, S28, S18a: the strength rule lies far above the film table for polyester")
{
    // S28, comparative film data: 200 N/mm2. 50 um: 1.0 to 2.5 N/mm, while the table's 0.75 lbf/in/mil gives 0.259.
    const ForcePerWidth strength = tensionFromStress(Pressure::si(200e6), Length::si(50e-6));
    const Page page = form("tension", "S28, S26", "polyester 200 N/mm2; strength rule");
    page.check("T4", "polyester of 50 um, a tenth", tensionFromStrength(0.10, strength).si() / 1000, 1.0, "N/mm",
               share(1e-12));
    page.check("T4", "polyester of 50 um, a quarter", tensionFromStrength(0.25, strength).si() / 1000, 2.5, "N/mm",
               share(1e-12));
    form("tension", "S18a", "lbf/in per mil")
        .check("T2", "polyester of 50 um", tensionFromStress(psi(750), Length::si(50e-6)).si() / 1000, 0.259, "N/mm",
               within(0.0005));
}
