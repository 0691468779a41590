// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>

#include "core/targets/ramp.h"
#include "core/targets/target.h"
#include "core/units/format.h"
#include "tests/core/targets/demo_inputs.h"
#include "tests/core/targets/stated.h"

// What is to be set again on the way of a roll, and what of it nobody can read.
using namespace taut;
using namespace demo::stated;
using targets::Targets;

namespace {

Quantity bar(double value) { return {value * 1e5, Kind::Pressure, "bar"}; }

}  // namespace

TEST_CASE("left alone between the changes listed, the tension keeps to the window that is shown")
{
    // By hand: torque is T0 ((1 - tau) D + tau d0) / 2 (hyperbolic taper), and left alone the tension is 2 M / D.
    const double d0 = 0.1022;
    for (const double fraction : {0.0, 0.2, 0.5, 0.8})
        for (const double gauge : {0.001, 0.1}) {
            INFO(fraction << ", gauge " << gauge);
            const Targets t = withPress("north", "quince-jelly", "R0041", [&](inputs::Press& p) {
                zone(p, "rewind").taperFraction = fraction;
                zone(p, "rewind").setting.uncertainty = bar(gauge);
            });
            const targets::Schedule* changes = t.schedule("tension.rewind.changes");
            REQUIRE(changes != nullptr);
            const targets::Window& window = ready(t, "tension.rewind.total").window;
            const auto wanted = [&](double d) { return 59.4 * (1 - fraction + fraction * d0 / d); };
            // Where the taper lies below the window, a tenth under the taper (policy tension_swing).
            const bool leaves = wanted(0.56) < 46.2;
            const auto least = [&](double d) { return wanted(d) < 46.2 ? 0.9 * wanted(d) : 46.2; };
            // About to leave it, half a swing above its end.
            const auto target = [&](double d) {
                return leaves && wanted(d) >= 46.2 ? std::max(wanted(d), 46.2 * 1.05) : wanted(d);
            };
            double torque = 59.4 * d0 / 2, before = d0;
            std::size_t reaches = 0;
            for (const auto& row : changes->rows) {
                const double d = row[0].si(), set = (row[1].si() - 1e4) * 9 / 1e5;
                CHECK(2 * torque / d >= least(d) * (1 - 1e-9));
                if (!leaves) CHECK(2 * torque / d >= window.low->si() * (1 - 1e-9));
                if (2 * torque / d <= least(d) * (1 + 1e-9)) ++reaches;
                CHECK(d > before);
                CHECK(set - torque >= gauge * 9 * (1 - 1e-9));
                // To what the taper wants, or one step of the gauge.
                CHECK(set == Approx(std::max(target(d) * d / 2, torque + gauge * 9)).epsilon(1e-9));
                CHECK(2 * set / d < window.high->si());
                torque = set;
                before = d;
            }
            // At the latest, and on to the finished roll.
            CHECK(reaches == changes->rows.size());
            CHECK(2 * torque / 0.56 > least(0.56) * (1 - 1e-9));
            CHECK(si(t, "tension.rewind.change_diameter") == Approx(changes->rows.front()[0].si()).epsilon(1e-9));
            CHECK_FALSE(noted(t, "tension.rewind.steps_too_fine"));
        }
}

TEST_CASE("a diameter that this roll never comes to is no diameter to watch for")
{
    const auto never = [](const Targets& t, const std::string& id) {
        INFO(id);
        CHECK(cannot(t, id).why.severity == Severity::Note);
    };
    const auto finished = [](double metres) {
        inputs::Inputs in = demo::inputs("north", "quince-jelly", "R0041");
        inputs::Job job = *in.job;
        job.rewindDiameter = Entry<Kind::Length>(Length::si(metres), "mm");
        in.job = std::make_shared<const inputs::Job>(std::move(job));
        return targets::computeTargets(in);
    };
    // 59.4 N on 102.2 mm come down to 46.2 N at 131.4 mm.
    CHECK(si(finished(0.56), "tension.rewind.change_diameter") == Approx(59.4 * 0.1022 / 46.2));
    never(finished(0.11), "tension.rewind.change_diameter");
    CHECK(si(finished(0.132), "tension.rewind.change_diameter") < 0.132);
    // All of the tension gone with the roll: the torque stays what it is.
    never(withPress("north", "quince-jelly", "R0041", [](inputs::Press& p) { zone(p, "rewind").taperFraction = 1; }),
          "tension.rewind.change_diameter");
    // The brake's least is reached at 60.6 mm, inside the core of 102.2 mm.
    never(targets::computeTargets(demo::inputs("north", "quince-jelly", "R0041")), "tension.unwind.floor_diameter");
    // Nearly empty: less web than three wraps, and a core before the tension is too high.
    const auto in = demo::inputs("north", "quince-jelly", "R0041");
    const Targets last = targets::computeTargets(in, Length::si(0.103));
    never(last, "tension.unwind.change_diameter");
    REQUIRE(std::holds_alternative<targets::Cannot>(last.find("strip.length")->state));
    CHECK(noted(last, "roll.nothing_usable"));
    // Smaller than its core: nothing follows from it.
    const Targets slip = targets::computeTargets(in, Length::si(0.09));
    for (const char* id :
         {"tension.unwind.setting", "tension.unwind.change_diameter", "strip.diameter", "roll.wraps"}) {
        INFO(id);
        CHECK(cannot(slip, id).why.code == "input.diameter_below_core");
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
        // One step of 0.1 bar is 23 N at the core, and the window is 26 N wide: it fits; one of 0.3 bar does not.
        CHECK(noted(t, "tension.unwind.steps_too_fine") == (u > 0.2));
    }
}

TEST_CASE("a change waits only until its step is inside the window, and every stretch outside is named")
{
    const auto north = [](const char* job, const char* roll) {
        inputs::Inputs in = demo::inputs("south", job, roll);
        in.press = demo::press("north");
        return targets::computeTargets(in);
    };
    // 24 N m a bar on the radius: T = 24 (p - 0.15) / D. From 0.577 to 0.477 bar it is above 32.92 N from 238.5 mm on.
    const Targets film = north("seed-window", "R0049");
    const targets::Schedule* unwind = film.schedule("tension.unwind.changes");
    REQUIRE(unwind != nullptr);
    bool found = false;
    for (const auto& row : unwind->rows)
        if (std::abs(row[1].si() - 0.4771e5) < 20) {
            CHECK(row[0].si() == Approx(0.2385).margin(0.0002));
            found = true;
        }
    CHECK(found);
    // Rewind, 0.31 to 0.41 bar: 18 x 0.3103 / 41.15.
    const targets::Schedule* rewind = film.schedule("tension.rewind.changes");
    REQUIRE(rewind != nullptr);
    CHECK(rewind->rows.front()[0].si() == Approx(18 * 0.31027 / 41.147).epsilon(1e-3));
    // One place has one name: where the tension first leaves its window, 2 x 9 x (0.31027 - 0.10) / 32.918.
    CHECK(si(film, "tension.rewind.change_diameter") == Approx(0.1150).margin(0.0001));
    const Finding& f = demo::finding(film, "tension.rewind.steps_too_fine");
    const auto& first = std::get<std::vector<Text>>(f.text.args.at(2)).front();
    CHECK(std::get<Magnitude>(first.args.at(0)).si == Approx(si(film, "tension.rewind.change_diameter")));
    CHECK(std::get<Magnitude>(first.args.at(1)).si == Approx(rewind->rows.front()[0].si()));
    CHECK(std::get<Magnitude>(first.args.at(2)).si == Approx(27.9).margin(0.1));
}

TEST_CASE("the last change goes to the end of what can be set, and what is left of the roll then is named")
{
    inputs::Inputs in = demo::inputs("south", "cold-brew", "R0048");
    in.press = demo::press("north");
    const Targets t = targets::computeTargets(in);
    const targets::Schedule* changes = t.schedule("tension.unwind.changes");
    REQUIRE(changes != nullptr);
    CHECK(changes->rows.back()[1].si() == Approx(0.30e5));
    // 24 x 0.15 / 26.27 N: from there on 0.30 bar is inside the window.
    const double low = ready(t, "tension.unwind.total").window.low->si();
    CHECK(changes->rows.back()[0].si() == Approx(24 * 0.15 / low).epsilon(1e-6));
    // Where the last change was waited for stands with the gauge; what comes of the end itself, 24 x 0.15 N m at the
    // core, does not: no gauge helps there. It is told of the range.
    const Finding& f = demo::finding(t, "tension.unwind.steps_too_fine");
    const auto& stretches = std::get<std::vector<Text>>(f.text.args.at(2));
    for (const Text& stretch : stretches)
        CHECK(std::get<Magnitude>(stretch.args.at(1)).si >= changes->rows.back()[0].si() * (1 - 1e-9));
    CHECK(std::get<Magnitude>(stretches.back().args.at(1)).si == Approx(changes->rows.back()[0].si()));
    const Finding& end = demo::finding(t, "tension.unwind.least_too_much");
    CHECK(std::get<Magnitude>(end.text.args.at(1)).si ==
          Approx(24 * 0.15 / ready(t, "tension.unwind.total").window.high->si()));
    CHECK(std::get<Magnitude>(end.text.args.at(4)).si == Approx(24 * 0.15 / 0.1016).epsilon(1e-4));
    // Nowhere between the changes listed it pulls as hard as it would at the core.
    double left = si(t, "tension.unwind.setting");
    for (const auto& row : changes->rows) {
        CHECK(24 * (left / 1e5 - 0.15) / row[0].si() < 38.7);
        left = row[1].si();
    }
}

TEST_CASE("in a narrow window the diameter to change at is where the tension leaves that window")
{
    inputs::Inputs in = demo::inputs("north", "quince-jelly", "R0041");
    inputs::Job job = *in.job;
    job.tension->low = Entry<Kind::ForcePerWidth>(ForcePerWidth::si(180), "N/mm");
    job.tension->high = Entry<Kind::ForcePerWidth>(ForcePerWidth::si(181), "N/mm");
    in.job = std::make_shared<const inputs::Job>(std::move(job));
    CHECK(si(targets::computeTargets(in), "tension.rewind.change_diameter") ==
          Approx(0.1022 * 180.5 / 180).epsilon(1e-6));
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
        // It can be set from none upward: what lies above the middle of the window is what it can use of it.
        const double above = tension.high->si() - si(t, "tension.print.per_width");
        const bool judged = si(t, "tension.print.draw_step") <= above;
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
