// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <cmath>
#include <set>

#include "core/targets/target.h"
#include "core/targets/target_json.h"
#include "core/verdict/verdict.h"
#include "tests/core/targets/demo_inputs.h"
#include "tests/core/targets/stated.h"

using namespace taut;
using namespace demo::stated;
using targets::Ready;
using targets::Targets;

namespace {

double known(const Targets& t, const std::string& id)
{
    INFO(id);
    REQUIRE(ready(t, id).uncertainty);
    return ready(t, id).uncertainty->si();
}
inputs::Inputs withRows(inputs::Inputs in, const std::string& press, const std::string& rows)
{
    in.press = demo::pressOf(demo::text("presses/" + press + ".toml") + "\n[policy]\n" + rows);
    return in;
}

}  // namespace

TEST_CASE("every target explains itself: relation, inputs with provenance, window and its rule, source, a sentence")
{
    std::size_t explained = 0;
    for (const demo::Case& c : demo::cases()) {
        const auto in = demo::inputs(c.press, c.job, c.roll);
        const Targets all = targets::computeTargets(in);
        for (const targets::Target& target : all.all) {
            if (target.ready() == nullptr) continue;
            INFO(c.press << ' ' << c.job << ' ' << c.roll << ' ' << target.id);
            const Ready& r = *target.ready();
            CHECK_FALSE(r.because.formula.empty());
            CHECK_FALSE(r.because.symbols.empty());
            CHECK_FALSE(r.because.source.empty());
            CHECK_FALSE(r.because.given.empty());
            for (const targets::Given& g : r.because.given) {
                CHECK_FALSE(g.symbol.empty());
                CHECK_FALSE(g.name.empty());
                CHECK_FALSE(g.from.empty());
            }
            CHECK_FALSE(r.window.source.empty());
            if (r.window.low || r.window.high) CHECK(r.window.rule != targets::Rule::None);
            CHECK(r.advice.source.size() > 10);
            ++explained;
        }
        // The same words stand in what the targets verb prints.
        const Json json = targets::targetsJson(all, in.press->units);
        for (const Json& one : json["targets"].items()) {
            if (one["state"].text() != "ready") {
                INFO(one["id"].text());
                for (const char* key : {"source", "advice"}) CHECK_FALSE(one[key].text().empty());
                continue;
            }
            INFO(one["id"].text());
            for (const char* key : {"formula", "symbols", "source", "advice"}) CHECK_FALSE(one[key].text().empty());
            CHECK_FALSE(one["window"]["source"].text().empty());
            CHECK_FALSE(one["window"]["rule"].text().empty());
            for (const Json& given : one["because"].items())
                for (const char* key : {"symbol", "name", "from"}) CHECK_FALSE(given[key].text().empty());
        }
        CHECK(json["decision_rule"].text().find("ILAC-G8") != std::string::npos);
    }
    CHECK(explained > 700);
}

TEST_CASE("what is missing or cannot be says what it is for or what to do, and whose relation would give it")
{
    const auto in = demo::inputs("north", "quince-jelly", "R0041");
    auto job = *in.job;
    for (inputs::Deck& deck : job.decks) deck.inkDensity.reset();
    auto without = in;
    without.job = std::make_shared<const inputs::Job>(job);
    // The catalogue's source of F8: an ink maker's worked example, S80.
    const Targets all = targets::computeTargets(without);
    const targets::Target* ink = all.find("ink.1.mass");
    REQUIRE(ink != nullptr);
    const auto* needs = std::get_if<targets::Needs>(&ink->state);
    REQUIRE(needs != nullptr);
    CHECK(needs->source.find("S80") != std::string::npos);
    CHECK(needs->advice.source.size() > 10);
    const Targets heavy = targets::computeTargets(demo::inputs("north", "quince-jelly", "R0042"));
    const targets::Cannot& no = cannot(heavy, "lift.load");
    CHECK(no.advice == no.why.remedy);
    CHECK_FALSE(no.source.empty());
    // Also with nothing known at all.
    for (const targets::Target& target : targets::computeTargets(inputs::Inputs{}).all)
        if (const auto* open = std::get_if<targets::Needs>(&target.state)) {
            INFO(target.id);
            CHECK_FALSE(open->source.empty());
            CHECK(open->advice.source.size() > 10);
        }
}

TEST_CASE("how well an input is known goes through the formula")
{
    const auto in = demo::inputs("north", "quince-jelly", "R0041");
    const Targets t = targets::computeTargets(in);
    // L = pi (D^2 - d^2) / 4 t: five percent of caliper, and dL/dD = pi D / 2 t times 2 mm.
    const double length = si(t, "roll.length_by_diameter");
    const double byDiameter = 3.14159265358979 * 0.5 / (2 * 140e-6) * 0.002;
    CHECK(known(t, "roll.length_by_diameter") == Approx(std::hypot(0.05 * length, byDiameter)).epsilon(1e-5));
    // M = T D / 2: 0.5 mm of width in T and 2 mm of diameter in D.
    const double torque = si(t, "tension.unwind.torque");
    CHECK(known(t, "tension.unwind.torque") == Approx(torque * std::hypot(0.0005 / 0.33, 0.002 / 0.5)).epsilon(1e-5));
    // Until it is fitted a brake's torque is known to a quarter: so is the pressure above the one where it begins.
    const double above = si(t, "tension.unwind.setting") - 15000;
    CHECK(known(t, "tension.unwind.setting") == Approx(0.25 * above).epsilon(1e-3));
    // One source that works in two places counts once, with its sign: R4 and R5 undo each other in grammage and width.
    CHECK(known(t, "roll.web_mass") > 0.05 * si(t, "roll.web_mass"));
    CHECK(known(t, "roll.web_mass") < 0.08 * si(t, "roll.web_mass"));
    // It is shown, and moves no limit.
    CHECK(ready(t, "tension.unwind.setting").window.low->si() == Approx(111250));
    // A fitted brake is known better, a better caliper gives a better length.
    auto press = *in.press;
    press.zones.front().torqueUncertainty = 0.05;
    auto fitted = in;
    fitted.press = std::make_shared<const inputs::Press>(press);
    CHECK(known(targets::computeTargets(fitted), "tension.unwind.setting") < 0.06 * above);
}

TEST_CASE("a policy row that a shop sets moves the windows that rest on it and says so")
{
    const auto in = demo::inputs("north", "quince-jelly", "R0041");
    const Targets usual = targets::computeTargets(in);
    CHECK(ready(usual, "align.centre").window.rule == targets::Rule::Policy);
    const Targets own = targets::computeTargets(
        withRows(in, "north", "centre_guided = \"1 mm\"\nsplice_factor = 6\nguide_rest = \"10 %\"\nouter_wraps = 5\n"));
    const targets::Window& centre = ready(own, "align.centre").window;
    CHECK(centre.high->si() - centre.low->si() == Approx(0.002));
    CHECK(centre.rule == targets::Rule::Press);
    CHECK(ready(own, "splice.margin").window.low->si() == 6);
    CHECK(ready(own, "guide.web.rest").window.high->si() == Approx(0.0025));
    CHECK(si(own, "strip.diameter") == Approx(si(usual, "strip.diameter") - 2 * 2 * 140e-6));
    bool named = false;
    for (const targets::Given& g : ready(own, "strip.diameter").because.given)
        named = named || g.from == "press.policy.outer_wraps";
    CHECK(named);
}

TEST_CASE("strain caps a table's window as strength does, and says so")
{
    const auto in = demo::inputs("south", "seed-window", "R0049");
    const Targets t = targets::computeTargets(in);
    // 0.1 % of 4.5 GPa at 36 um; the table alone would reach 0.9 lbf/in per mil.
    CHECK(ready(t, "tension.unwind.per_width").window.high->si() == Approx(0.001 * 4.5e9 * 36e-6));
    CHECK(ready(t, "tension.unwind.per_width").advice.source.find("strain") != std::string::npos);
    CHECK(si(t, "tension.unwind.strain") < 0.001);
}

TEST_CASE("a lane's roll is as wide as the lane: its mass does not pull for two")
{
    const Targets t = targets::computeTargets(demo::inputs("south", "cold-brew", "R0048"));
    const Ready& stop = ready(t, "stop.rewind_1.tension");
    double inertia = 0;
    for (const targets::Given& g : stop.because.given)
        if (g.symbol == "J") inertia = std::get<Quantity>(g.value).si();
    // J = m (R^2 + r^2) / 2 of 22 in on a core of 4 in, 46 g/m2 at 50 um, six inches wide.
    const double outer = 11 * 0.0254, inner = 2 * 0.0254;
    const double mass = 0.046 / 50e-6 * 3.14159265358979 * (outer * outer - inner * inner) * 6 * 0.0254;
    CHECK(inertia == Approx(mass * (outer * outer + inner * inner) / 2).epsilon(1e-9));
}

TEST_CASE("the zones of the two demo presses are set in each of the five ways, each with a target of its own kind")
{
    const Targets north = targets::computeTargets(demo::inputs("north", "quince-jelly", "R0041"));
    const Targets south = targets::computeTargets(demo::inputs("south", "cold-brew", "R0048"));
    const struct {
        const Targets& t;
        const char *id, *unit;
        Kind kind;
    } ways[] = {{north, "tension.unwind.setting", "bar", Kind::Pressure},  // open loop, air
                {south, "tension.waste.setting", "%", Kind::Share},        // open loop, electric
                {south, "tension.unwind.setting", "psi", Kind::Pressure},  // dancer
                {south, "tension.rewind_1.setting", "lbf", Kind::Force},   // load cell in force
                {south, "tension.rewind_2.setting", "%", Kind::Share},     // load cell in percent of its range
                {north, "tension.print.setting", "%", Kind::Share}};       // draw
    std::set<std::string> sentences;
    for (const auto& way : ways) {
        INFO(way.id);
        const auto& q = std::get<Quantity>(ready(way.t, way.id).value);
        CHECK(q.unit() == way.unit);
        CHECK(q.kind() == way.kind);
        sentences.insert(ready(way.t, way.id).advice.source.str());
    }
    CHECK(sentences.size() == 6);
    CHECK(north.schedule("tension.unwind.schedule") != nullptr);
    CHECK(south.schedule("tension.unwind.schedule") == nullptr);  // a dancer's air does not follow the roll
}

TEST_CASE("a setting left alone gives what the brake law says, and leaves the window at the diameter that is named")
{
    const auto in = demo::inputs("north", "quince-jelly", "R0041");
    const Targets t = targets::computeTargets(in);
    // Torque stays: 14.85 N m on a core of 102.2 mm.
    CHECK(si(t, "tension.unwind.left_alone") == Approx(2 * 14.85 / 0.1022));
    CHECK(si(t, "tension.unwind.change_diameter") == Approx(2 * 14.85 / (0.22e3 * 0.33)));
    // A tenth of the liner, which carries alone, is 550 N/m; what print may be stretched by is less, and rules.
    CHECK(si(t, "tension.unwind.ceiling") == Approx(0.001 * 3.8e9 * 140e-6));
    // Clutch: torque of the finished roll times its slip behind an input 10 % over the empty core.
    const double full = 0.56, core = 0.0762 + 2 * 0.013, v = 1.5, t0 = 59.4;
    const double torque = t0 * (1 - 0.2 * (1 - core / full)) * full / 2;
    CHECK(si(t, "tension.rewind.slip_power") == Approx(torque * 2 * v * (1.1 / core - 1 / full)));
}

TEST_CASE("targets move with the diameter as physics does, without a seam, and stay finite")
{
    auto in = demo::inputs("north", "quince-jelly", "R0041");
    // As large as the unwind takes: a roll that measured more than its file would set nothing.
    inputs::Roll full = *in.roll;
    full.outerDiameter = Entry<Kind::Length>(Quantity(1, Kind::Length, "mm"));
    in.roll = std::make_shared<const inputs::Roll>(std::move(full));
    double before = 0, lengthBefore = 0, pressureBefore = 0;
    for (int i = 0; i <= 80; ++i) {
        const double d = 0.11 + 0.89 * i / 80;
        const Targets t = targets::computeTargets(in, Length::si(d));
        INFO("diameter " << d);
        for (const targets::Target& target : t.all)
            if (const Quantity* q = target.quantity()) CHECK(std::isfinite(q->si()));
        const double torque = si(t, "tension.unwind.torque"), length = si(t, "roll.length_by_diameter");
        CHECK(torque > before);
        CHECK(length > lengthBefore);
        if (const targets::Target* s = t.find("tension.unwind.setting"); s->quantity() != nullptr) {
            CHECK(s->quantity()->si() > pressureBefore);
            if (pressureBefore > 0) CHECK(s->quantity()->si() - pressureBefore < 0.035e5);  // no jump at a limit
            pressureBefore = s->quantity()->si();
        }
        before = torque;
        lengthBefore = length;
    }
}
