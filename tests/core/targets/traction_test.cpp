// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <cmath>

#include "core/inputs/path_of.h"
#include "core/targets/target.h"
#include "tests/core/targets/demo_inputs.h"
#include "tests/core/targets/stated.h"

using namespace taut;
using namespace demo::stated;
using targets::Targets;

namespace {

double givenOf(const Targets& t, const std::string& id, const std::string& symbol)
{
    for (const targets::Given& g : ready(t, id).because.given)
        if (g.symbol == symbol) return std::get<Quantity>(g.value).si();
    FAIL(id << " has no " << symbol);
    return 0;
}
/// The film under a web by hand: 0.643 R (6 eta 2 v / Tw)^(2/3).
double film(double radius, double speed, double perWidth)
{
    return 0.643 * radius * std::pow(6 * 1.81e-5 * 2 * speed / perWidth, 2.0 / 3);
}
inputs::Inputs changed(inputs::Inputs in, void (*change)(inputs::Press&))
{
    inputs::Press press = *in.press;
    change(press);
    in.press = std::make_shared<const inputs::Press>(std::move(press));
    return in;
}

}  // namespace

TEST_CASE("every roller that the web goes round says what it holds, with its wrap and its friction")
{
    for (const demo::Case& c : demo::cases()) {
        const auto in = demo::inputs(c.press, c.job, c.roll);
        const Targets t = targets::computeTargets(in);
        const targets::Target* length = t.find("thread.main.length");
        REQUIRE(length != nullptr);
        if (length->ready() == nullptr) continue;
        std::size_t said = 0;
        for (const inputs::Roller& roller : in.press->rollers) {
            INFO(c.press << ' ' << c.roll << ' ' << roller.id);
            const bool end = roller.kind == "unwind" || roller.kind == "rewind" || roller.kind == "waste_rewind";
            CHECK((t.find("traction." + roller.id + ".ratio") != nullptr) == !end);
            if (end) continue;
            CHECK(si(t, "traction." + roller.id + ".ratio") >= 1);
            CHECK(givenOf(t, "traction." + roller.id + ".ratio", "beta") > 0);
            CHECK(givenOf(t, "traction." + roller.id + ".ratio", "mu") ==
                  Approx(roller.friction.value_or(in.substrate->friction.value())));
            CHECK(si(t, "traction.least") <= si(t, "traction." + roller.id + ".ratio"));
            ++said;
        }
        CHECK(said >= 12);
    }
}

TEST_CASE("air takes grip from a roller at speed, by its own radius, roughness and tension")
{
    auto in = demo::inputs("north", "quince-jelly", "R0041");
    const Targets t = targets::computeTargets(in);
    // 80 mm at 90 m/min under 0.18 N/mm: 3.8 um of air over a roughness of 2 um (1.6 and 1.2).
    const double h = film(0.04, 1.5, 180);
    CHECK(givenOf(t, "traction.table entry.ratio", "h") == Approx(h).epsilon(1e-9));
    CHECK(givenOf(t, "traction.table entry.ratio", "s") == Approx(2e-6).epsilon(1e-9));
    const double beta = givenOf(t, "traction.table entry.ratio", "beta");
    CHECK(si(t, "traction.table entry.ratio") == Approx(std::exp(0.3 * (3 - h / 2e-6) / 2 * beta)).epsilon(1e-9));
    CHECK(ready(t, "traction.table entry.ratio").because.formula == "C1.air");
    // A nip squeezes it out; the wide smooth chill roller loses all of its grip and is the first to slip.
    CHECK(ready(t, "traction.infeed.ratio").because.formula == "C1");
    CHECK(si(t, "traction.after 2.ratio") == 1);
    CHECK(std::get<std::string>(ready(t, "traction.first_to_slip").value) == "after 2");
    CHECK(si(t, "traction.least") == 1);
    // A friction is known to a quarter, and so far the ratio.
    REQUIRE(ready(t, "traction.infeed.ratio").uncertainty);
    const double infeed = si(t, "traction.infeed.ratio");
    CHECK(ready(t, "traction.infeed.ratio").uncertainty->si() ==
          Approx(infeed * std::log(infeed) * 0.25).epsilon(1e-4));

    // At crawl air takes nothing, and the least wrap decides.
    inputs::Job slow = *in.job;
    slow.speed = Entry<Kind::Speed>(Speed::si(1.0 / 60), "m/min");
    in.job = std::make_shared<const inputs::Job>(slow);
    const Targets crawl = targets::computeTargets(in);
    CHECK(si(crawl, "traction.table entry.ratio") == Approx(std::exp(0.3 * beta)).epsilon(1e-12));
    CHECK(si(crawl, "traction.least") > 1);
}

TEST_CASE("a web that breathes loses nothing to air, and without a roughness nothing is claimed")
{
    const Targets porous = targets::computeTargets(demo::inputs("north", "parcel-tag", "R0045"));
    for (const targets::Target& target : porous.all)
        if (target.id.rfind("traction.", 0) == 0 && target.ready() != nullptr) {
            INFO(target.id);
            CHECK(target.ready()->because.formula != "C1.air");
        }
    CHECK(porous.find("traction.rewind.film") == nullptr);
    // No roller of the south press says its roughness: the grip is that at crawl, and says so.
    const Targets south = targets::computeTargets(demo::inputs("south", "cold-brew", "R0048"));
    CHECK(ready(south, "traction.steer.ratio").because.formula == "C1");
    REQUIRE(ready(south, "traction.steer.ratio").advice.args.size() == 1);
    CHECK(std::get<std::string>(ready(south, "traction.steer.ratio").advice.args[0]) ==
          "press.web.roller.steer.roughness");
    for (const char* id : {"traction.steer.ratio", "traction.least", "traction.first_to_slip"})
        CHECK(south.find(id)->name.source.find("at crawl only") != std::string::npos);
    CHECK(demo::noted(south, "traction.crawl_only"));
    CHECK(porous.find("traction.least")->name.source.find("crawl") == std::string::npos);
}

TEST_CASE("only a roller that is driven or heavy is said to slip first")
{
    const auto in = demo::inputs("south", "cold-brew", "R0048");
    const Targets t = targets::computeTargets(in);
    const std::string first = std::get<std::string>(ready(t, "traction.first_to_slip").value);
    CHECK(first != "waste idler");  // neither driven nor of known inertia
    for (const inputs::Roller& roller : in.press->rollers)
        if (roller.inertia) CHECK(si(t, "traction." + first + ".ratio") <= si(t, "traction." + roller.id + ".ratio"));
    const Targets free = targets::computeTargets(changed(in, [](inputs::Press& press) {
        for (inputs::Roller& roller : press.rollers) {
            roller.inertia.reset();
            if (roller.kind != "unwind" && roller.kind != "rewind" && roller.kind != "waste_rewind")
                roller.kind = "idler";
        }
    }));
    const targets::Target* word = free.find("traction.first_to_slip");
    REQUIRE(word != nullptr);
    REQUIRE(std::holds_alternative<targets::Needs>(word->state));
    CHECK(std::get<targets::Needs>(word->state).keys.front() == "press.web.roller.inertia");
    CHECK(free.find("traction.least")->ready() != nullptr);
}

TEST_CASE("air wound into a finished roll is that of its own radius and tension")
{
    const Targets north = targets::computeTargets(demo::inputs("north", "quince-jelly", "R0041"));
    CHECK(si(north, "traction.rewind.film") ==
          Approx(film(0.28, 1.5, si(north, "tension.rewind.finished") / 0.33)).epsilon(1e-9));
    const Targets south = targets::computeTargets(demo::inputs("south", "cold-brew", "R0048"));
    CHECK(si(south, "traction.rewind_1.film") ==
          Approx(film(11 * 0.0254, 350 * 0.3048 / 60, si(south, "tension.rewind_1.finished") / (6 * 0.0254)))
              .epsilon(1e-9));
    CHECK(south.find("traction.waste.film") == nullptr);  // a matrix is full of holes
}

TEST_CASE("the least grip is found among figures of one kind: at job speed where it is known, else all at crawl")
{
    // One roller of the south press says how rough it is: at speed it holds less than others at crawl, and only what is
    // known at speed is compared with it.
    const auto in = demo::inputs("south", "cold-brew", "R0048");
    const auto rough = changed(in, [](inputs::Press& press) {
        for (inputs::Roller& roller : press.rollers)
            if (roller.id == "after 1") roller.roughness = Entry<Kind::Length>(Length::si(4e-6), "um");
    });
    auto web = *in.substrate;
    web.roughness = Entry<Kind::Length>(Length::si(0.4e-6), "um");
    auto known = rough;
    known.substrate = std::make_shared<const inputs::Substrate>(web);
    const Targets t = targets::computeTargets(known);
    REQUIRE(ready(t, "traction.after 1.ratio").because.formula == "C1.air");
    CHECK(std::get<std::string>(ready(t, "traction.first_to_slip").value) == "after 1");
    CHECK(si(t, "traction.least") == si(t, "traction.after 1.ratio"));
    CHECK(t.find("traction.least")->name.source.find("crawl") == std::string::npos);
    CHECK(demo::noted(t, "traction.crawl_only"));  // the others are still only known at crawl
    // None says it: all at crawl, C1 each.
    const Targets none = targets::computeTargets(in);
    CHECK(ready(none, "traction.least").because.formula == "C1");
    double least = 1e9;
    for (const inputs::Roller& roller : in.press->rollers)
        if (none.find("traction." + roller.id + ".ratio") != nullptr)
            least = std::min(least, si(none, "traction." + roller.id + ".ratio"));
    CHECK(si(none, "traction.least") == Approx(least).epsilon(1e-12));
}
