// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <cmath>

#include "core/targets/ramp.h"
#include "core/targets/target.h"
#include "core/units/format.h"
#include "tests/core/targets/demo_inputs.h"
#include "tests/core/targets/stated.h"

// What is to be set again on the way of a roll, and what of it nobody can read.
using namespace taut;
using demo::noted;
using demo::ready;
using demo::si;
using demo::withPress;
using demo::zone;
using targets::Targets;

namespace {

Quantity bar(double value) { return {value * 1e5, Kind::Pressure, "bar"}; }

}  // namespace

TEST_CASE("a list of changes goes on to the finished roll, also where the taper leaves the window")
{
    // Half of the tension goes with a hyperbolic taper: the torque still grows, and so does what is set.
    for (const double fraction : {0.2, 0.5, 0.8}) {
        INFO(fraction);
        const Targets t = withPress("north", "quince-jelly", "R0041", [&](inputs::Press& p) {
            zone(p, "rewind").taperFraction = fraction;
            zone(p, "rewind").setting.uncertainty = bar(0.001);
        });
        const targets::Schedule* changes = t.schedule("tension.rewind.changes");
        REQUIRE(changes != nullptr);
        // By hand: torque is T0 ((1 - tau) D + tau d0) / 2, and it grows from change to change as 59.4 N to 46.2 N.
        const double d0 = 0.1022, ratio = 0.18 / 0.14;
        const auto torque = [&](double d) { return 59.4 * ((1 - fraction) * d + fraction * d0) / 2; };
        double before = d0;
        for (const auto& row : changes->rows) {
            CHECK(torque(row[0].si()) / torque(before) == Approx(ratio).epsilon(1e-9));
            CHECK(row[1].si() == Approx(1e4 + torque(row[0].si()) / 9 * 1e5).epsilon(1e-9));
            before = row[0].si();
        }
        // Nothing is left to be set before the end.
        CHECK(torque(0.56) / torque(before) < ratio);
        CHECK_FALSE(changes->rows.empty());
        CHECK(si(t, "tension.rewind.change_diameter") == Approx(changes->rows.front()[0].si()).epsilon(1e-9));
    }
}

TEST_CASE("a taper that ends below the window is said, with what it leaves and where one would have to begin")
{
    const auto taper = [](double fraction) {
        return withPress("north", "quince-jelly", "R0041",
                         [&](inputs::Press& p) { zone(p, "rewind").taperFraction = fraction; });
    };
    CHECK_FALSE(noted(taper(0.2), "tension.rewind.taper_leaves"));
    for (const auto& [fraction, higher] : {std::pair{0.32, true}, std::pair{0.6, false}}) {
        const Targets t = taper(fraction);
        for (const Finding& f : t.findings) {
            if (f.code != "tension.rewind.taper_leaves") continue;
            CHECK(f.severity == Severity::Warn);  // the job says this window
            CHECK(std::get<Magnitude>(f.text.args.at(1)).si == Approx(si(t, "tension.rewind.finished")));
            CHECK(std::get<Magnitude>(f.text.args.at(2)).si == Approx(46.2));
            CHECK(f.remedy.args.size() == (higher ? 1U : 0U));
            if (higher)
                CHECK(std::get<Magnitude>(f.remedy.args[0]).si ==
                      Approx(46.2 * 59.4 / si(t, "tension.rewind.finished")));
        }
        CHECK(noted(t, "tension.rewind.taper_leaves"));
    }
    // A table's starting range is no promise: it is only noted.
    for (const Finding& f : targets::computeTargets(demo::inputs("south", "cold-brew", "R0048")).findings)
        if (f.code == "tension.rewind_1.taper_leaves") CHECK(f.severity == Severity::Note);
    CHECK(noted(targets::computeTargets(demo::inputs("south", "cold-brew", "R0048")), "tension.rewind_1.taper_leaves"));
}

TEST_CASE("no change is asked for that the gauge cannot show, and where the window would want one is said")
{
    const auto gauge = [](double u) {
        return withPress("north", "quince-jelly", "R0041",
                         [&](inputs::Press& p) { zone(p, "unwind").setting.uncertainty = bar(u); });
    };
    for (const double u : {0.001, 0.1, 0.3}) {
        INFO(u);
        const Targets t = gauge(u);
        double before = si(t, "tension.unwind.setting");
        const targets::Schedule* changes = t.schedule("tension.unwind.changes");
        REQUIRE(changes != nullptr);
        for (const auto& row : changes->rows) {
            CHECK(before - row[1].si() >= u * 1e5 * (1 - 1e-9));
            before = row[1].si();
        }
        CHECK(noted(t, "tension.unwind.steps_too_fine") == (u > 0.01));
    }
}

TEST_CASE("a gauge too coarse for its window is told with the targets, before anybody reads it")
{
    // 0.362 to 0.512 bar on a gauge known to 0.1 bar either way.
    const auto coarse = [](const Targets& t) {
        for (const Finding& f : t.findings)
            if (f.code == "window.too_coarse" && f.subject == "tension.rewind.setting") return true;
        return false;
    };
    const Targets t = targets::computeTargets(demo::inputs("north", "quince-jelly", "R0041"));
    CHECK(coarse(t));
    CHECK_FALSE(coarse(withPress("north", "quince-jelly", "R0041",
                                 [](inputs::Press& p) { zone(p, "rewind").setting.uncertainty = bar(0.05); })));
    // One that nobody judges says nothing.
    for (const Finding& f : t.findings)
        if (f.code == "window.too_coarse") CHECK(f.subject != "tension.print.setting");
}

TEST_CASE("whether a draw is judged and what it leaves open are one and the same band")
{
    for (const double u : {0.0001, 0.001, 0.0025, 0.004, 0.02}) {
        INFO(u);
        const Targets t = withPress("north", "quince-jelly", "R0041", [&](inputs::Press& p) {
            zone(p, "print").setting.uncertainty = Quantity(u / 100, Kind::Share, "%");
        });
        // Plus and minus u of E t.
        CHECK(si(t, "tension.print.draw_step") == Approx(2 * u / 100 * 3.8e9 * 140e-6));
        const targets::Window& tension = ready(t, "tension.print.per_width").window;
        const bool judged = si(t, "tension.print.draw_step") <= tension.high->si() - tension.low->si();
        CHECK(ready(t, "tension.print.setting").window.high.has_value() == judged);
    }
}

TEST_CASE("how well a target is known is said only where it can be shown")
{
    for (const demo::Case& c : demo::cases()) {
        const auto in = demo::inputs(c.press, c.job, c.roll);
        for (const targets::Target& target : targets::computeTargets(in).all) {
            if (target.ready() == nullptr || !target.ready()->uncertainty) continue;
            INFO(target.id);
            const std::string shown = format(*target.ready()->uncertainty, in.press->units);
            CHECK(shown.find_first_of("123456789") != std::string::npos);
        }
    }
    // The draw between two zones of one tension is none, whatever the modulus: that is no doubt of 1e-32.
    const Targets t = targets::computeTargets(demo::inputs("north", "quince-jelly", "R0041"));
    CHECK_FALSE(ready(t, "tension.print.setting").uncertainty);
}
