// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <cmath>

#include "core/targets/ramp.h"
#include "core/targets/target.h"
#include "core/units/plain.h"
#include "tests/core/targets/demo_inputs.h"
#include "tests/core/targets/stated.h"

// What a press cannot be set to is said before anybody starts: now, and at the diameter where it will be so.
using namespace taut;
using demo::noted;
using demo::ready;
using demo::si;
using demo::withPress;
using demo::zone;
using targets::Targets;

namespace {

const Finding& finding(const Targets& t, const std::string& code)
{
    for (const Finding& f : t.findings)
        if (f.code == code) return f;
    FAIL("no finding " << code);
    return t.findings.front();
}
double argument(const Finding& f, std::size_t i) { return std::get<Magnitude>(f.text.args.at(i)).si; }
const Finding& why(const Targets& t, const std::string& id)
{
    const targets::Target* target = t.find(id);
    REQUIRE(target != nullptr);
    const auto* no = std::get_if<targets::Cannot>(&target->state);
    INFO(id);
    REQUIRE(no != nullptr);
    return no->why;
}
Quantity bar(double value) { return {value * 1e5, Kind::Pressure, "bar"}; }
Quantity percent(double value) { return {value / 100, Kind::Share, "%"}; }

}  // namespace

TEST_CASE("the demo shop's brakes and drives can do what is asked of them over the whole roll")
{
    for (const demo::Case& c : demo::cases())
        for (const Finding& f : targets::computeTargets(demo::inputs(c.press, c.job, c.roll)).findings) {
            INFO(c.press << ' ' << c.roll << ": " << sentence(f));
            CHECK(f.code.find("range") == std::string::npos);
        }
}

TEST_CASE("a dancer whose brake would need more than all of it cannot be set")
{
    // 6.5 lbf on 20 in is 7.34 N m: at 0.05 N m a percent 147 % above the 2 % at which it begins.
    const Targets t = withPress("south", "cold-brew", "R0048", [](inputs::Press& p) {
        zone(p, "unwind").torquePerSetting = Quantity(0.05 * 100, zone(p, "unwind").torquePerSetting->kind(), "N m/%");
    });
    const Finding& no = why(t, "tension.unwind.setting");
    CHECK(no.code == "tension.unwind.out_of_range");
    CHECK(argument(no, 1) == Approx(si(t, "tension.unwind.torque") / 5 + 0.02));
    CHECK(argument(no, 1) > 1.4);
    CHECK(argument(no, 2) == 1);
    CHECK(stops(t.findings));
    // A brake that reaches a part of the window is said and not refused.
    const Targets part = withPress("south", "cold-brew", "R0048",
                                   [](inputs::Press& p) { zone(p, "unwind").actuatorRange.most = percent(15.0); });
    CHECK(finding(part, "tension.unwind.edge_of_range").severity == Severity::Warn);
    CHECK_FALSE(stops(part.findings));
}

TEST_CASE("what a loop asks of its brake is followed to the core, and the diameter is named where it leaves its range")
{
    const Targets t = withPress("south", "cold-brew", "R0048",
                                [](inputs::Press& p) { zone(p, "unwind").actuatorRange.least = percent(5); });
    const Finding& f = finding(t, "tension.unwind.leaves_range");
    CHECK(f.severity == Severity::Warn);
    // T D / 2 = k (5 % - 2 %), and at the core of 4 in what is left.
    const double tension = si(t, "tension.unwind.total");
    CHECK(argument(f, 1) == Approx(2 * 55 * 0.03 / tension));
    CHECK(argument(f, 2) == Approx(0.05));
    CHECK(argument(f, 3) == Approx(0.02 + tension * 4 * 0.0254 / 2 / 55));
    CHECK(argument(f, 4) == Approx(4 * 0.0254));
    CHECK_FALSE(f.remedy.empty());
    // Even at the full roll it would have to drive its brake below where that begins.
    const Targets never = withPress("south", "cold-brew", "R0048",
                                    [](inputs::Press& p) { zone(p, "unwind").actuatorRange.least = percent(30); });
    CHECK(why(never, "tension.unwind.setting").code == "tension.unwind.out_of_range");
}

TEST_CASE("no more can be set than a load cell shows")
{
    const auto cell = [](const char* setIn, double newton) {
        return withPress("north", "quince-jelly", "R0041", [&](inputs::Press& p) {
            inputs::Zone& z = zone(p, "unwind");
            z.control = inputs::Control::LoadCell;
            z.setting = {};
            z.loadCell = inputs::LoadCell{"turn up", Entry<Kind::Force>(Force::si(newton), "N"), setIn};
        });
    };
    // 59.4 N of 20 N are 297 %.
    for (const char* setIn : {"%", "N"}) {
        INFO(setIn);
        const Targets t = cell(setIn, 20);
        const Finding& no = why(t, "tension.unwind.setting");
        CHECK(no.code == "tension.unwind.out_of_range");
        CHECK(no.remedy.source.find("load cell") != std::string::npos);
        CHECK(no.remedy.source.find("brake") == std::string::npos);
        // A part of the window, and the window ends where the cell does.
        const Targets part = cell(setIn, 55);
        CHECK(noted(part, "tension.unwind.edge_of_range"));
        const targets::Window& window = ready(part, "tension.unwind.setting").window;
        CHECK(window.high->si() == Approx(std::string(setIn) == "%" ? 1.0 : 55.0));
        CHECK(window.rule == targets::Rule::Press);
        CHECK(window.lowRule == targets::Rule::Job);
        CHECK_FALSE(noted(cell(setIn, 100), "tension.unwind.edge_of_range"));
    }
}

TEST_CASE("a clutch that ends before the roll is wound says at what diameter")
{
    const Targets t = withPress("north", "quince-jelly", "R0041",
                                [](inputs::Press& p) { zone(p, "rewind").setting.most = bar(1.2); });
    const Finding& f = finding(t, "tension.rewind.leaves_range");
    // 9 N m/bar above 0.1 bar; T D / 2 with a hyperbolic taper of a fifth from 102.2 mm: 59.4 (0.8 D + 0.2 d) / 2.
    const double d = (2 * 9 * 1.1 / 59.4 - 0.2 * 0.1022) / 0.8;
    CHECK(argument(f, 1) == Approx(d));
    CHECK(argument(f, 3) == Approx(1e4 + 59.4 * (0.8 * 0.56 + 0.2 * 0.1022) / 2 / 9 * 1e5));
    CHECK(argument(f, 4) == Approx(0.56));
    // Nothing beyond it is on the list of what to set.
    const targets::Schedule* changes = t.schedule("tension.rewind.changes");
    REQUIRE(changes != nullptr);
    for (const auto& row : changes->rows) CHECK(row[1].si() <= 1.2e5);
    // An unwinding roll comes to the least.
    const Targets low = withPress("north", "quince-jelly", "R0041",
                                  [](inputs::Press& p) { zone(p, "unwind").setting.least = bar(0.6); });
    CHECK(argument(finding(low, "tension.unwind.leaves_range"), 1) == Approx(2 * 12 * 0.45 / 59.4));
    CHECK(si(low, "tension.unwind.floor_diameter") == Approx(2 * 12 * 0.45 / 59.4));
    for (const auto& row : low.schedule("tension.unwind.changes")->rows) CHECK(row[1].si() >= 0.6e5);
}

TEST_CASE("a brake that can be set lower than where it begins never leaves its range, and that is what is said")
{
    const Targets t = withPress("north", "quince-jelly", "R0041",
                                [](inputs::Press& p) { zone(p, "unwind").setting.least = bar(0.1); });
    const Finding& never = why(t, "tension.unwind.floor_diameter");
    CHECK(never.severity == Severity::Note);
    CHECK(never.text.source.find("never leaves its range") != std::string::npos);
    CHECK_FALSE(noted(t, "tension.unwind.leaves_range"));
}

TEST_CASE("each kind of control is helped in its own way")
{
    const Targets dancer = withPress("south", "cold-brew", "R0048", [](inputs::Press& p) {
        zone(p, "unwind").setting.most = Quantity(20000, Kind::Pressure, "psi");
    });
    CHECK(why(dancer, "tension.unwind.setting").remedy.source.find("dancer") != std::string::npos);
    const Targets brake = withPress("north", "quince-jelly", "R0041",
                                    [](inputs::Press& p) { zone(p, "unwind").setting.most = bar(0.5); });
    CHECK(why(brake, "tension.unwind.setting").remedy.source.find("smaller roll") != std::string::npos);
    const Targets clutch = withPress("north", "quince-jelly", "R0041",
                                     [](inputs::Press& p) { zone(p, "rewind").setting.least = bar(0.6); });
    CHECK(why(clutch, "tension.rewind.setting").remedy.source.find("larger core") != std::string::npos);
}

TEST_CASE("a draw that nothing comes before says so, and one listed before its neighbour finds it by where it begins")
{
    const Targets first =
        withPress("north", "quince-jelly", "R0041", [](inputs::Press& p) { p.zones.erase(p.zones.begin()); });
    CHECK(why(first, "tension.print.setting").code == "tension.print.draw_first");
    const Targets swapped =
        withPress("north", "quince-jelly", "R0041", [](inputs::Press& p) { std::swap(p.zones[0], p.zones[1]); });
    REQUIRE(swapped.find("tension.print.setting") != nullptr);
    CHECK(swapped.find("tension.print.setting")->ready() != nullptr);
}
