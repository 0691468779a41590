// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>

#include "core/targets/target.h"
#include "core/targets/target_json.h"
#include "tests/core/targets/demo_inputs.h"
#include "tests/core/targets/stated.h"

// Windows and aims where a ceiling, a missing end of a zone or a long inch decides.
using namespace taut;
using namespace demo::stated;
using targets::Targets;

namespace {

Targets withModulus(const char* job, const char* roll, double pascal)
{
    inputs::Inputs in = demo::inputs("south", job, roll);
    inputs::Substrate s = *in.substrate;
    s.modulus = Entry<Kind::Pressure>(Quantity(pascal, Kind::Pressure, "GPa"));
    in.substrate = std::make_shared<const inputs::Substrate>(std::move(s));
    return targets::computeTargets(in);
}

}  // namespace

TEST_CASE("aim and window follow a falling ceiling without a jump")
{
    for (const auto& [job, roll] : {std::pair{"cold-brew", "R0048"}, std::pair{"seed-window", "R0049"}}) {
        double before = 0;
        for (double modulus = 7e9; modulus > 0.8e9; modulus *= 0.997) {
            const Targets t = withModulus(job, roll, modulus);
            const targets::Ready& perWidth = ready(t, "tension.unwind.per_width");
            const double aim = std::get<Quantity>(perWidth.value).si();
            INFO(job << " at " << modulus);
            CHECK(perWidth.window.low->si() <= 0.9 * perWidth.window.high->si());
            if (before > 0) CHECK(std::abs(aim / before - 1) < 0.005);
            before = aim;
        }
    }
}

TEST_CASE("what holds a starting range down says the range that is left")
{
    const Targets t = withModulus("cold-brew", "R0048", 1.7e9);
    for (const Finding& f : t.findings)
        if (f.code == "tension.held_down") {
            REQUIRE(f.text.args.size() == 3);
            const auto* left = std::get_if<std::vector<Text>>(&f.text.args[1]);
            REQUIRE(left != nullptr);
            const auto* low = std::get_if<Magnitude>(&left->front().args.at(0));
            REQUIRE(low != nullptr);
            CHECK(low->si == ready(t, "tension.unwind.per_width").window.low->si());
            return;
        }
    FAIL("nothing is said of it");
}

TEST_CASE("a zone whose end nobody named asks for it and borrows no tension")
{
    const Targets t =
        demo::withPress("south", "cold-brew", "R0048", [](inputs::Press& p) { demo::zone(p, "waste").to.clear(); });
    for (const char* of : {"per_width", "total", "setting"}) {
        const auto* needs = std::get_if<targets::Needs>(&t.find(std::string("tension.waste.") + of)->state);
        INFO(of);
        REQUIRE(needs != nullptr);
        CHECK(needs->keys.front() == "press.zone.waste.to");
    }
}

TEST_CASE("an inch longer than any class is said")
{
    const Targets t = demo::withPress("north", "quince-jelly", "R0041",
                                      [](inputs::Press& p) { p.inch.value = Quantity(0.08, Kind::Length, "mm"); });
    CHECK(noted(t, "motion.inch_out_of_class"));
    CHECK_FALSE(
        noted(demo::withPress("north", "quince-jelly", "R0041", [](inputs::Press&) {}), "motion.inch_out_of_class"));
}

TEST_CASE("what a roll merely never comes to is written as none and read back as such")
{
    const Targets t = targets::computeTargets(demo::inputs("north", "quince-jelly", "R0046"));
    const targets::Target* never = t.find("roll.caliper");
    REQUIRE(never != nullptr);
    REQUIRE(std::get<targets::Cannot>(never->state).never());
    const Json json = targets::targetsJson(t, UnitSystem::Metric);
    for (const Json& one : json["targets"].items())
        if (one["id"].text() == "roll.caliper") CHECK(one["state"].text() == "none");
    const Result<Targets> back = targets::targetsFrom(json);
    REQUIRE(back);
    CHECK(*back->find("roll.caliper") == *never);
}

TEST_CASE("a taper is not said to be followed by changes that are not listed")
{
    const Targets t = demo::withPress("north", "quince-jelly", "R0041", [](inputs::Press& p) {
        demo::zone(p, "rewind").taper = inputs::TaperShape::Hyperbolic;
        demo::zone(p, "rewind").taperFraction = 1;
    });
    const bool listed = t.schedule("tension.rewind.changes") != nullptr;
    for (const Finding& f : t.findings)
        if (f.code == "tension.rewind.taper_leaves")
            CHECK((f.text.source.find("changes listed") != std::string::npos) == listed);
    CHECK(noted(t, "tension.rewind.taper_leaves"));
    CHECK_FALSE(listed);  // constant torque: nothing is ever set again
}

TEST_CASE("a window too narrow for the usual places is said in words")
{
    inputs::Inputs in = demo::inputs("south", "cold-brew", "R0048");
    inputs::Job job = *in.job;
    inputs::TensionRange range;
    range.low = Entry<Kind::ForcePerWidth>(Quantity(0.4925 * 175.1268, Kind::ForcePerWidth, "lbf/in"));
    range.high = Entry<Kind::ForcePerWidth>(Quantity(0.4929 * 175.1268, Kind::ForcePerWidth, "lbf/in"));
    job.tension = range;
    in.job = std::make_shared<const inputs::Job>(std::move(job));
    const Targets t = targets::computeTargets(in);
    CHECK(std::count_if(t.findings.begin(), t.findings.end(), [](const Finding& f) {
              return f.code == "window.too_narrow" && f.subject == "tension.unwind.per_width";
          }) == 1);
    for (const demo::Case& c : demo::cases())
        CHECK_FALSE(noted(targets::computeTargets(demo::inputs(c.press, c.job, c.roll)), "window.too_narrow"));
}
