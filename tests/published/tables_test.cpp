// SPDX-License-Identifier: GPL-3.0-or-later
// The tension tables that stand in the program, T2 and T3, as a press's targets show them, and the demo shop's figures
// against published ranges.
#include "core/targets/target.h"

#include "tests/core/targets/demo_inputs.h"
#include "tests/published/evidence.h"
#include "tests/published/us_units.h"

using namespace taut;
using namespace source;
using namespace evidence;

namespace {

/// A material that nothing but its family, caliper and grammage is known of: the table decides.
inputs::Inputs of(const std::string& family, double mil, double gramsPerSquareMetre)
{
    inputs::Inputs in = demo::inputs("south", "cold-brew", "R0043");
    inputs::Substrate s;
    s.id = in.substrate->id;
    s.family = family;
    s.caliper = Entry<Kind::Length>(mils(mil));
    s.grammage = Entry<Kind::Grammage>(gsm(gramsPerSquareMetre));
    in.substrate = std::make_shared<const inputs::Substrate>(s);
    return in;
}
const targets::Ready& perWidth(const targets::Targets& all)
{
    const targets::Target* target = all.find("tension.unwind.per_width");
    REQUIRE(target != nullptr);
    REQUIRE(target->ready() != nullptr);
    return *target->ready();
}
double pli(const Quantity& q) { return q.si() / perInch(1).si(); }

}  // namespace

TEST_CASE("S18a, S20: the program's table of films is the published one")
{
    const Page both = printed("tension", "S18a, S20", "lbf/in per mil");
    for (const auto& [family, value] : {std::pair("foil", 1.0), std::pair("pet", 0.75)}) {
        const targets::Targets all = targets::computeTargets(of(family, 1, 50));
        both.check("T2", std::string("target for ") + family + ", 1 mil", pli(std::get<Quantity>(perWidth(all).value)),
                   value, "lbf/in", share(1e-9));
    }
    // Where the two tables differ, the window is from one to the other.
    for (const char* family : {"pe", "bopp", "nylon"}) {
        const targets::Targets all = targets::computeTargets(of(family, 2, 50));
        printed("tension", "S20", "lbf/in per mil")
            .check("T2", std::string("least for ") + family + ", 2 mil", pli(*perWidth(all).window.low), 2 * 0.25,
                   "lbf/in", share(1e-9));
        printed("tension", "S18a", "lbf/in per mil")
            .check("T2", std::string("most for ") + family + ", 2 mil", pli(*perWidth(all).window.high), 2 * 0.30,
                   "lbf/in", share(1e-9));
    }
}

TEST_CASE("S18a: the program's table of papers is the published one")
{
    // lb a ream of 3000 ft2 (the ream is assumed, the table does not name it) against lbf/in.
    const Page page = printed("tension", "S18a", "papers, lbf/in by lb a ream");
    const double ream = kPound / (3000 * kFoot * kFoot) * 1000;
    for (const auto& [pounds, tension] : {std::pair(15.0, 0.50), std::pair(20.0, 0.75), std::pair(30.0, 1.0),
                                          std::pair(40.0, 1.5), std::pair(60.0, 2.0), std::pair(80.0, 2.5)}) {
        const targets::Targets all = targets::computeTargets(of("paper", 4, pounds * ream));
        page.check("–", "target for " + figure(pounds) + " lb paper", pli(std::get<Quantity>(perWidth(all).value)),
                   tension, "lbf/in", share(1e-9));
    }
}

TEST_CASE("S23: nearly every web runs at 0.1 to 10 lbf/in, and so do the demo shop's")
{
    // "What Is the Right Tension?" (2009): 95 % of webs.
    const Page page = printed("tension", "S23", "95 % of webs");
    for (const demo::Case& c : demo::cases()) {
        const targets::Targets all = targets::computeTargets(demo::inputs(c.press, c.job, c.roll));
        page.between("–", "unwind of " + c.press + ", job " + c.job, pli(std::get<Quantity>(perWidth(all).value)), 0.1,
                     10, "lbf/in");
    }
}

TEST_CASE("S81: the class of an inch and of a crawl changes where the published limits stand")
{
    // Printing machine control definitions: true inch up to 25 mm, limited inch up to 75 mm; slow crawl up to 1 m/min,
    // fast crawl up to 5 m/min, up to 10 m/min only with trip bars.
    const auto classOf = [](const char* id, double millimetres, double metresPerMinute, bool tripBars) {
        inputs::Inputs in = demo::inputs("north", "quince-jelly", "R0041");
        inputs::Press press = *in.press;
        press.inch.value = Quantity(millimetres / 1000, Kind::Length, "mm");
        press.crawl.value = Quantity(metresPerMinute / 60, Kind::Speed, "m/min");
        press.tripBars = tripBars;
        in.press = std::make_shared<const inputs::Press>(press);
        const targets::Targets all = targets::computeTargets(in);
        REQUIRE(all.find(id) != nullptr);
        REQUIRE(all.find(id)->ready() != nullptr);
        return std::get<std::string>(all.find(id)->ready()->value);
    };
    const Page page = printed("motion", "S81", "limits of powered movement");
    for (const auto& [millimetres, word] : {std::pair(25.0, "true_inch"), std::pair(25.1, "limited_inch"),
                                            std::pair(75.0, "limited_inch"), std::pair(75.1, "out_of_class")})
        page.says("–", "inch of " + figure(millimetres) + " mm", classOf("motion.inch_class", millimetres, 1, false),
                  word);
    for (const auto& [speed, word] : {std::pair(1.0, "slow_crawl"), std::pair(1.01, "fast_crawl"),
                                      std::pair(5.0, "fast_crawl"), std::pair(5.01, "out_of_class")})
        page.says("–", "crawl of " + figure(speed) + " m/min", classOf("motion.crawl_class", 25, speed, false), word);
    for (const auto& [speed, word] :
         {std::pair(1.01, "continuous_crawl"), std::pair(10.0, "continuous_crawl"), std::pair(10.01, "out_of_class")})
        page.says("–", "crawl of " + figure(speed) + " m/min, trip bars",
                  classOf("motion.crawl_class", 25, speed, true), word);
}

TEST_CASE("the demo shop's materials lie where published tables have them")
{
    const auto paper = demo::substrate("paper-label-80");
    const auto bopp = demo::substrate("bopp-50");
    const auto pet = demo::substrate("pet-36");
    const auto layer = [&paper](const char* name) -> const inputs::Layer& {
        for (const inputs::Layer& l : paper->layers)
            if (l.name == name) return l;
        FAIL("no layer " << name);
        return paper->layers.front();
    };
    const inputs::Layer& face = layer("paper face");
    const inputs::Layer& liner = layer("glassine liner");
    // S27, tension questions: moduli of common webs.
    const Page moduli = printed("material", "S27", "moduli");
    moduli.between("–", "modulus, pet-36", pet->modulus->si() / 1e9, 3.5, 5.5, "GPa");
    moduli.between("–", "modulus, paper-label-80, face", face.modulus->si() / 1e9, 3.5, 4.2, "GPa");
    moduli.between("–", "modulus, paper-label-80, liner", liner.modulus->si() / 1e9, 3.5, 4.2, "GPa");
    // S28, comparative film data, along the web.
    const Page films = printed("material", "S28", "comparative film data, along the web");
    films.check("–", "modulus, pet-36", pet->modulus->si() / 1e6, 4500, "N/mm2", share(1e-9));
    films.check("–", "modulus, bopp-50", bopp->modulus->si() / 1e6, 2500, "N/mm2", share(1e-9));
    films.check("–", "strength, pet-36", pet->strength->si() / pet->caliper->si() / 1e6, 200, "N/mm2", share(0.1));
    films.check("–", "strength, bopp-50", bopp->strength->si() / bopp->caliper->si() / 1e6, 150, "N/mm2", share(0.1));
    // S29, tensile strengths of films.
    const Page strengths = printed("material", "S29", "ultimate strengths");
    strengths.between("–", "strength, pet-36", pet->strength->si() / pet->caliper->si() / kPsi / 1000, 20, 40, "kpsi");
    strengths.between("–", "strength, bopp-50", bopp->strength->si() / bopp->caliper->si() / kPsi / 1000, 15, 40,
                      "kpsi");
    // S25, typical label material property ranges.
    const Page labels = printed("material", "S25", "label papers and liners");
    labels.between("–", "strength, paper-label-80, face", face.strength->si() / perInch(1).si(), 15, 35, "lbf/in");
    labels.between("–", "strength, paper-label-80, liner", liner.strength->si() / perInch(1).si(), 30, 51, "lbf/in");
    labels.between("–", "caliper, paper-label-80, face", face.caliper->si() / kInch, 0.0025, 0.006, "in");
    labels.between("–", "caliper, paper-label-80, liner", liner.caliper->si() / kInch, 0.0015, 0.007, "in");
    // S17, paper conversion: caliper varies by 5 to 7 % within a production run, S12 by 5 %.
    printed("material", "S12, S17", "variation of caliper")
        .between("–", "tolerance of caliper, paper-label-80", 100 * *paper->caliperTolerance, 5, 7, "%");
}
