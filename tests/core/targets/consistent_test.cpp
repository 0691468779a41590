// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include "core/inputs/policy.h"
#include "core/targets/target.h"
#include "core/units/plain.h"
#include "tests/core/targets/demo_inputs.h"
#include "tests/core/targets/stated.h"

using namespace taut;
using namespace demo::stated;
using targets::Targets;

namespace {

double givenOf(const targets::Ready& r, const std::string& symbol)
{
    for (const targets::Given& g : r.because.given)
        if (g.symbol == symbol) return std::get<Quantity>(g.value).si();
    FAIL("no " << symbol);
    return 0;
}

}  // namespace

// A quarter of the cells: public rule, S79. A half: worked example of an ink maker, S80. Both in
// tests/published/README.
TEST_CASE("wet ink and ink to have ready go by one share of the anilox volume, and both say which and why")
{
    const auto in = demo::inputs("north", "quince-jelly", "R0041");
    const Targets t = targets::computeTargets(in);
    for (const char* station : {"1", "2"}) {
        const targets::Ready &film = ready(t, std::string("ink.") + station + ".film"),
                             &mass = ready(t, std::string("ink.") + station + ".mass");
        CHECK(givenOf(film, "c") == Approx(0.375));
        CHECK(givenOf(mass, "k") == givenOf(film, "c"));
        for (const targets::Ready* r : {&film, &mass}) {
            CHECK(plain(r->advice).find("S79") != std::string::npos);
            CHECK(plain(r->advice).find("S80") != std::string::npos);
            CHECK(plain(r->advice).find("middle") != std::string::npos);
        }
        // The range is the doubt: a third of the middle.
        REQUIRE(film.uncertainty);
        CHECK(film.uncertainty->si() == Approx(std::get<Quantity>(film.value).si() / 3).epsilon(1e-5));
    }
    // A shop that has learnt its own share says so, for both.
    auto press = *in.press;
    press.policy.emplace_back("anilox_share_least", Quantity(0.4, Kind::Share, "%"));
    press.policy.emplace_back("anilox_share_most", Quantity(0.4, Kind::Share, "%"));
    auto own = in;
    own.press = std::make_shared<const inputs::Press>(press);
    const Targets learnt = targets::computeTargets(own);
    CHECK(si(learnt, "ink.1.film") == Approx(si(t, "ink.1.film") * 0.4 / 0.375));
    CHECK(si(learnt, "ink.1.mass") == Approx(si(t, "ink.1.mass") * 0.4 / 0.375));
}

// B3.clutch by hand: P = M 2 pi (ni - no), the input 10 % over the empty core.
TEST_CASE(
    "the clutch of the waste rewind is held against the heat that its profile allows, when the waste roll is full")
{
    const auto in = demo::inputs("south", "cold-brew", "R0048");
    const Targets t = targets::computeTargets(in);
    const targets::Ready& heat = ready(t, "tension.waste.slip_power");
    REQUIRE(heat.window.high);
    CHECK(heat.window.high->si() == Approx(250));
    const double inch = 0.0254, core = (2.96 + 1) * inch, full = 20 * inch, v = in.job->speed->si();
    const double torque = si(t, "tension.waste.total") * full / 2;
    CHECK(si(t, "tension.waste.slip_power") == Approx(torque * 2 * v * (1.1 / core - 1 / full)));
    // Without the drive's speed it says what is missing.
    auto press = *in.press;
    for (inputs::Zone& zone : press.zones) zone.overspeed.reset();
    auto silent = in;
    silent.press = std::make_shared<const inputs::Press>(press);
    const Targets less = targets::computeTargets(silent);
    const auto* needs = std::get_if<targets::Needs>(&less.find("tension.waste.slip_power")->state);
    REQUIRE(needs != nullptr);
    CHECK(needs->keys == std::vector<std::string>{"press.zone.waste.overspeed"});
}

TEST_CASE("the set point of a load cell in force is computed from the tension, not stated")
{
    const Targets t = targets::computeTargets(demo::inputs("south", "cold-brew", "R0048"));
    const targets::Ready& setting = ready(t, "tension.rewind_1.setting");
    CHECK(setting.because.formula == "rule");
    CHECK(setting.because.symbols == "F = T");
    CHECK(givenOf(setting, "T") == Approx(si(t, "tension.rewind_1.setting")));
}
