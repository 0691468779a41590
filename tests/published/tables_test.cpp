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
    // On a press that can be set to anything: what a table says is asked, not what one brake can hold of it.
    inputs::Press press = *in.press;
    for (inputs::Zone& zone : press.zones) {
        zone.setting = zone.actuatorRange = {};
        zone.torquePerSetting.reset();
    }
    in.press = std::make_shared<const inputs::Press>(std::move(press));
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

TEST_CASE("S18a, S20: films that other trades than labels run are in the table too")
{
    const Page both = printed("tension", "S18a, S20", "lbf/in per mil");
    for (const auto& [family, value] : {std::pair("polystyrene", 1.0), std::pair("acetate", 0.5)})
        both.check("T2", std::string("target for ") + family + ", 1 mil",
                   pli(std::get<Quantity>(perWidth(targets::computeTargets(of(family, 1, 50))).value)), value, "lbf/in",
                   share(1e-9));
    struct Row {
        const char *family, *lowIn, *highIn;
        double low, high;
    };
    for (const Row& row : {Row{"cellophane", "S20", "S18a", 0.5, 0.75}, Row{"vinyl", "S18a", "S20", 0.10, 0.15}}) {
        const targets::Targets all = targets::computeTargets(of(row.family, 2, 50));
        printed("tension", row.lowIn, "lbf/in per mil")
            .check("T2", std::string("least for ") + row.family + ", 2 mil", pli(*perWidth(all).window.low),
                   2 * row.low, "lbf/in", share(1e-9));
        printed("tension", row.highIn, "lbf/in per mil")
            .check("T2", std::string("most for ") + row.family + ", 2 mil", pli(*perWidth(all).window.high),
                   2 * row.high, "lbf/in", share(1e-9));
    }
}

TEST_CASE("S18a, S20: the program's tables of papers are the published ones")
{
    // lb a ream of 3000 ft2 (the ream is assumed, the table does not name it) against lbf/in. S20 begins at 75 g/m2.
    const Page page = printed("tension", "S18a", "papers, lbf/in by lb a ream");
    const double ream = kPound / (3000 * kFoot * kFoot) * 1000;
    const auto middle = [](double grams) {
        return pli(std::get<Quantity>(perWidth(targets::computeTargets(of("paper", 4, grams))).value));
    };
    for (const auto& [pounds, tension] :
         {std::pair(15.0, 0.50), std::pair(20.0, 0.75), std::pair(30.0, 1.0), std::pair(40.0, 1.5)})
        page.check("–", "target for " + figure(pounds) + " lb paper", middle(pounds * ream), tension, "lbf/in",
                   share(1e-9));
    // S18a ends at 80 lb, which is 130 g/m2.
    printed("tension", "S20", "book and text, lbf/in by g/m2")
        .check("–", "target for 150 g/m2 paper", middle(150), 3.5, "lbf/in", share(1e-9));
    // Where both have rows: the middle of a printed figure and the other table's straight line between two.
    const Page both = form("tension", "S18a, S20", "papers, one printed and one between two rows");
    const auto line = [](double x, double x0, double y0, double x1, double y1) {
        return y0 + (y1 - y0) * (x - x0) / (x1 - x0);
    };
    struct Row {
        double grams, s18a, s20;
    };
    for (const Row& row :
         {Row{75, line(75 / ream, 40, 1.5, 60, 2.0), 1.25}, Row{90, line(90 / ream, 40, 1.5, 60, 2.0), 1.5},
          Row{60 * ream, 2.0, line(60 * ream, 90, 1.5, 105, 2.0)}, Row{105, line(105 / ream, 60, 2.0, 80, 2.5), 2.0},
          Row{120, line(120 / ream, 60, 2.0, 80, 2.5), 3.0},
          Row{80 * ream, 2.5, line(80 * ream, 120, 3.0, 150, 3.5)}}) {
        both.check("–", "target for " + figure(row.grams, 4) + " g/m2 paper", middle(row.grams),
                   (row.s18a + row.s20) / 2, "lbf/in", share(1e-9));
        const targets::Window window = perWidth(targets::computeTargets(of("paper", 4, row.grams))).window;
        CHECK(pli(*window.low) <= std::min(row.s18a, row.s20) + 1e-9);
        CHECK(pli(*window.high) >= std::max(row.s18a, row.s20) - 1e-9);
    }
}

TEST_CASE("S18a, S20: the program's table of boards is the published ones, by thickness and not by grammage")
{
    struct Row {
        double points, s18a, s20;
    };
    for (const Row& row :
         {Row{8, 3, 3}, Row{12, 4, 4}, Row{15, 5, 4.5}, Row{20, 7, 5.5}, Row{25, 9, 6.5}, Row{30, 11, 8}}) {
        const targets::Targets all = targets::computeTargets(of("board", row.points, 250));
        const Page page = row.s18a == row.s20
                              ? printed("tension", "S18a, S20", "boards, lbf/in by points")
                              : form("tension", "S18a, S20", "boards, lbf/in by points; the middle of the two columns");
        page.check("–", "target for board of " + figure(row.points) + " points",
                   pli(std::get<Quantity>(perWidth(all).value)), (row.s18a + row.s20) / 2, "lbf/in", share(1e-9));
        const targets::Window window = perWidth(all).window;
        CHECK(pli(*window.low) <= row.s20);
        CHECK(pli(*window.high) >= row.s18a);
        // The columns are nearer to each other than our row table_spread: the ends are the row's.
        CHECK(window.rule == targets::Rule::Policy);
    }
}

TEST_CASE("S20: a laminate by its plies")
{
    // The sum of the plies and 0.1 lbf/in.
    inputs::Inputs in = of("bopp", 2, 50);
    inputs::Substrate web = *in.substrate;
    const auto ply = [](const char* name, const char* family, double mil) {
        inputs::Layer layer;
        layer.name = name;
        layer.family = family;
        layer.caliper = Entry<Kind::Length>(mils(mil));
        return layer;
    };
    const auto summed = [&](std::vector<inputs::Layer> layers) {
        web.layers = std::move(layers);
        in.substrate = std::make_shared<const inputs::Substrate>(web);
        const targets::Targets all = targets::computeTargets(in);
        const targets::Target* target = all.find("tension.plies");
        REQUIRE(target != nullptr);
        REQUIRE(target->quantity() != nullptr);
        return pli(*target->quantity());
    };
    const Page page = form("tension", "S20", "laminates: the sum of the plies and 0.1 lbf/in");
    page.check("–", "polyester of 1 mil on foil of 0.5 mil",
               summed({ply("face", "pet", 1), ply("adhesive", "", 0.5), ply("back", "foil", 0.5)}), 0.75 + 0.5 + 0.1,
               "lbf/in", share(1e-9));
    page.check("–", "board of 12 points and polystyrene of 1 mil",
               summed({ply("board", "board", 12), ply("film", "polystyrene", 1)}), 4 + 1 + 0.1, "lbf/in", share(1e-9));
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
