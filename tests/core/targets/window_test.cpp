// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <cmath>

#include "core/targets/target.h"
#include "core/units/plain.h"
#include "tests/core/targets/demo_inputs.h"
#include "tests/core/targets/stated.h"

// Whose word a window of tension is: each end by the rule that gave it, every cut said.
using namespace taut;
using namespace demo::stated;
using targets::Rule;
using targets::Targets;
using targets::Window;

namespace {

using PerWidth = Entry<Kind::ForcePerWidth>;
PerWidth perWidth(double newtonPerMetre) { return PerWidth(ForcePerWidth::si(newtonPerMetre), "N/mm"); }

inputs::Inputs jobAt(double low, double high)
{
    inputs::Inputs in = demo::inputs("north", "quince-jelly", "R0041");
    inputs::Job job = *in.job;
    job.tension = inputs::TensionRange{perWidth(low), perWidth(high), "last good run"};
    in.job = std::make_shared<const inputs::Job>(std::move(job));
    return in;
}
template <class Change>
inputs::Inputs withWeb(inputs::Inputs in, Change change)
{
    inputs::Substrate web = *in.substrate;
    change(web);
    in.substrate = std::make_shared<const inputs::Substrate>(std::move(web));
    return in;
}
const Window& windowOf(const Targets& t, const char* id = "tension.unwind.per_width") { return ready(t, id).window; }
std::size_t count(const Targets& t, const std::string& code)
{
    return static_cast<std::size_t>(
        std::count_if(t.findings.begin(), t.findings.end(), [&](const Finding& f) { return f.code == code; }));
}

}  // namespace

TEST_CASE("a job's tension inside the maker's is the window, and nothing is said of it")
{
    const Targets t = targets::computeTargets(jobAt(130, 220));
    CHECK(windowOf(t).rule == Rule::Job);
    CHECK_FALSE(windowOf(t).lowRule);
    for (const Finding& f : t.findings) CHECK(f.code.rfind("tension.job", 0) != 0);
}

TEST_CASE("a job's tension beyond the maker's is held down to it, by the maker's rule, and said once")
{
    const Targets t = targets::computeTargets(jobAt(140, 300));
    const Window& window = windowOf(t);
    CHECK(window.low->si() == Approx(140));
    CHECK(window.high->si() == Approx(230));
    CHECK(window.rule == Rule::Maker);
    CHECK(window.lowRule == Rule::Job);
    const std::string source = plain(window.source);
    CHECK(source.find("last good run") != std::string::npos);
    CHECK(source.find("maker's data sheet") != std::string::npos);
    CHECK(count(t, "tension.job_beyond_maker") == 1);
    // What is inherited from it says the same of its ends.
    for (const char* id : {"tension.unwind.total", "tension.unwind.setting"}) {
        CHECK(windowOf(t, id).rule == Rule::Maker);
        CHECK(windowOf(t, id).lowRule == Rule::Job);
    }
    // Below the maker's least is the shop's to choose, and said.
    const Targets below = targets::computeTargets(jobAt(100, 200));
    CHECK(windowOf(below).low->si() == Approx(100));
    CHECK(count(below, "tension.job_below_maker") == 1);
    CHECK_FALSE(stops(below.findings));
}

TEST_CASE("a job whose tension lies wholly above the maker's contradicts it: no window is invented between them")
{
    // 2 to 6 N/mm, ten times too much.
    const Targets t = targets::computeTargets(jobAt(2000, 6000));
    for (const char* id : {"tension.unwind.per_width", "tension.unwind.total", "tension.unwind.setting"}) {
        INFO(id);
        REQUIRE(std::holds_alternative<targets::Cannot>(t.find(id)->state));
        CHECK(std::get<targets::Cannot>(t.find(id)->state).why.code == "tension.job_above_maker");
    }
    CHECK(stops(t.findings));
    CHECK(count(t, "tension.job_above_maker") == 1);
    // Nor against what the material bears, where no maker says anything.
    const auto in = withWeb(jobAt(2000, 6000), [](inputs::Substrate& web) { web.tension.reset(); });
    const Targets bare = targets::computeTargets(in);
    REQUIRE(std::holds_alternative<targets::Cannot>(bare.find("tension.unwind.per_width")->state));
    CHECK(std::get<targets::Cannot>(bare.find("tension.unwind.per_width")->state).why.code == "tension.above_ceiling");
    CHECK(count(bare, "tension.job_beyond_start") == 1);
}

TEST_CASE("where strain rules, the window says so at each end, and so does the ceiling")
{
    // 0.3 GPa: 0.1 % of 50 um is 15 N/m, far below the table's 86 to 103.
    const auto weak = [](double modulus) {
        return targets::computeTargets(withWeb(demo::inputs("south", "cold-brew", "R0048"), [&](inputs::Substrate& w) {
            w.modulus = Entry<Kind::Pressure>(Pressure::si(modulus), "GPa");
        }));
    };
    const Targets t = weak(0.3e9);
    CHECK(windowOf(t).high->si() == Approx(0.001 * 0.3e9 * 50e-6));
    // The table's own range of 0.25 to 0.30, and no jump where the ceiling comes down to it.
    CHECK(windowOf(t).low->si() == Approx(0.25 / 0.30 * 0.001 * 0.3e9 * 50e-6));
    CHECK(windowOf(t).rule == Rule::Policy);
    CHECK_FALSE(windowOf(t).lowRule);
    CHECK(count(t, "tension.held_down") == 1);
    CHECK(si(t, "tension.unwind.ceiling") == Approx(0.001 * 0.3e9 * 50e-6));
    CHECK(t.find("tension.unwind.ceiling")->name.source.find("strain") != std::string::npos);
    CHECK(si(t, "tension.unwind.strain") < 0.001);
    // Reached in part: the lower end gives way by as much.
    const Targets part = weak(1.9e9);
    CHECK(windowOf(part).rule == Rule::Policy);
    CHECK_FALSE(windowOf(part).lowRule);
    CHECK(windowOf(part).low->si() == Approx(95 * 0.25 / 0.30));
    CHECK(windowOf(part).high->si() == Approx(95));
    // Strength where it is less than strain allows.
    const Targets strong = targets::computeTargets(
        withWeb(demo::inputs("south", "cold-brew", "R0048"), [](inputs::Substrate& w) { w.strength = perWidth(900); }));
    CHECK(windowOf(strong).high->si() == Approx(90));
    CHECK(strong.find("tension.unwind.ceiling")->name.source.find("strength") != std::string::npos);
}

TEST_CASE("what a maker allows is held down by strain too, and that is a warning")
{
    const Targets t =
        targets::computeTargets(withWeb(demo::inputs("south", "cold-brew", "R0048"), [](inputs::Substrate& web) {
            web.tension = inputs::TensionRange{perWidth(60), perWidth(200), "maker's data sheet"};
        }));
    CHECK(windowOf(t).high->si() == Approx(0.001 * 2.5e9 * 50e-6));
    CHECK(windowOf(t).rule == Rule::Policy);
    CHECK(windowOf(t).lowRule == Rule::Maker);
    REQUIRE(count(t, "tension.held_down") == 1);
    for (const Finding& f : t.findings)
        if (f.code == "tension.held_down") CHECK(f.severity == Severity::Warn);
}

TEST_CASE("a laminate that names its plies shows what their tables add up to beside its window")
{
    const Targets t = targets::computeTargets(demo::inputs("north", "quince-jelly", "R0041"));
    double sum = 0;
    for (const targets::Given& g : ready(t, "tension.plies").because.given) sum += std::get<Quantity>(g.value).si();
    CHECK(ready(t, "tension.plies").because.given.size() == 3);  // face, liner, and what a laminate adds
    CHECK(si(t, "tension.plies") == Approx(sum));
    CHECK_FALSE(windowOf(t, "tension.plies").high);
    CHECK(windowOf(t).rule == Rule::Job);  // it makes no window and moves none
    // A single film has none.
    CHECK(targets::computeTargets(demo::inputs("south", "cold-brew", "R0048")).find("tension.plies") == nullptr);
}
