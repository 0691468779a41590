// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <cmath>

#include "core/targets/aim.h"
#include "core/targets/ramp.h"
#include "core/targets/target.h"
#include "core/units/plain.h"
#include "tests/core/targets/demo_inputs.h"
#include "tests/core/targets/stated.h"

// What a press cannot be set to is said before anybody starts: now, and at the diameter where it will be so.
using namespace taut;
using namespace demo::stated;
using targets::Targets;

namespace {

double argument(const Finding& f, std::size_t i) { return std::get<Magnitude>(f.text.args.at(i)).si; }
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
    const Finding& no = cannot(t, "tension.unwind.setting").why;
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
    CHECK(cannot(never, "tension.unwind.setting").why.code == "tension.unwind.out_of_range");
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
        const Finding& no = cannot(t, "tension.unwind.setting").why;
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
    CHECK(argument(finding(low, "tension.unwind.least_too_much"), 1) == Approx(2 * 12 * 0.45 / 72.6));
    CHECK(si(low, "tension.unwind.floor_diameter") == Approx(2 * 12 * 0.45 / 59.4));
    for (const auto& row : low.schedule("tension.unwind.changes")->rows) CHECK(row[1].si() >= 0.6e5);
}

TEST_CASE("a brake that can be set lower than where it begins never leaves its range, and that is what is said")
{
    const Targets t = withPress("north", "quince-jelly", "R0041",
                                [](inputs::Press& p) { zone(p, "unwind").setting.least = bar(0.1); });
    const Finding& never = cannot(t, "tension.unwind.floor_diameter").why;
    CHECK(never.severity == Severity::Note);
    CHECK(never.text.source.find("never leaves its range") != std::string::npos);
    CHECK_FALSE(noted(t, "tension.unwind.leaves_range"));
}

TEST_CASE("each kind of control is helped in its own way")
{
    const Targets dancer = withPress("south", "cold-brew", "R0048", [](inputs::Press& p) {
        zone(p, "unwind").setting.most = Quantity(20000, Kind::Pressure, "psi");
    });
    CHECK(cannot(dancer, "tension.unwind.setting").why.remedy.source.find("dancer") != std::string::npos);
    const Targets brake = withPress("north", "quince-jelly", "R0041",
                                    [](inputs::Press& p) { zone(p, "unwind").setting.most = bar(0.5); });
    CHECK(cannot(brake, "tension.unwind.setting").why.remedy.source.find("a roll of at most %1 across") !=
          std::string::npos);
    const Targets clutch = withPress("north", "quince-jelly", "R0041",
                                     [](inputs::Press& p) { zone(p, "rewind").setting.least = bar(0.6); });
    // The shaft takes 75 to 78 mm and no larger core.
    CHECK(cannot(clutch, "tension.rewind.setting").why.remedy.source == "Take part of the clutch out of use.");
    const Targets wide = withPress("north", "quince-jelly", "R0041", [](inputs::Press& p) {
        zone(p, "rewind").setting.least = bar(0.6);
        p.rewinds.front().mandrel.gripsMost = Entry<Kind::Length>(Quantity(0.153, Kind::Length, "mm"));
    });
    CHECK(cannot(wide, "tension.rewind.setting").why.remedy.source.find("larger core") != std::string::npos);
}

TEST_CASE("a draw that nothing comes before says so, and one listed before its neighbour finds it by where it begins")
{
    const Targets first =
        withPress("north", "quince-jelly", "R0041", [](inputs::Press& p) { p.zones.erase(p.zones.begin()); });
    CHECK(cannot(first, "tension.print.setting").why.code == "tension.print.draw_first");
    const Targets swapped =
        withPress("north", "quince-jelly", "R0041", [](inputs::Press& p) { std::swap(p.zones[0], p.zones[1]); });
    REQUIRE(swapped.find("tension.print.setting") != nullptr);
    CHECK(swapped.find("tension.print.setting")->ready() != nullptr);
}

TEST_CASE("a brake that cannot be turned down far enough says where the roll has to come off, and what it gives after")
{
    const auto k = [](double newtonMetres) {
        return withPress("north", "quince-jelly", "R0041", [&](inputs::Press& p) {
            zone(p, "unwind").torquePerSetting = Quantity(newtonMetres / 1e5, Kind::TorquePerPressure, "N m/bar");
        });
    };
    // 100 N m/bar at the least, 0.15 bar above where it begins, are 15 N m: 72.6 N at 413.2 mm, 293.5 N at the core.
    const Targets t = k(100);
    const Finding& too = finding(t, "tension.unwind.least_too_much");
    CHECK(too.severity == Severity::Stop);
    CHECK(argument(too, 1) == Approx(2 * 15 / 72.6));
    CHECK(argument(too, 4) == Approx(2 * 15 / 0.1022));
    CHECK(std::get<Magnitude>(too.remedy.args.at(0)).si == Approx(2 * 15 / 72.6));
    CHECK_FALSE(noted(t, "tension.unwind.leaves_range"));
    CHECK(cannot(t, "tension.unwind.change_diameter").why.severity != Severity::Note);
    // What is listed can be set, and the tension beside it is what it gives.
    const targets::Schedule* schedule = t.schedule("tension.unwind.schedule");
    REQUIRE(schedule != nullptr);
    for (const auto& row : schedule->rows) {
        CHECK(row[2].si() >= 0.3e5 * (1 - 1e-9));
        CHECK(row[3].si() == Approx(2 * row[1].si() / row[0].si()));
    }
    CHECK(schedule->rows.back()[3].si() == Approx(2 * 15 / 0.1022));
    // One that only just leaves the window is a warning.
    CHECK(finding(k(32), "tension.unwind.least_too_much").severity == Severity::Warn);
}

TEST_CASE("what cannot be set on the way of a finished roll is not listed, nor a roll that the rewind does not wind")
{
    const Targets weak = withPress("north", "quince-jelly", "R0041", [](inputs::Press& p) {
        zone(p, "rewind").torquePerSetting = Quantity(2 / 1e5, Kind::TorquePerPressure, "N m/bar");
    });
    for (const auto& row : weak.schedule("tension.rewind.schedule")->rows) CHECK(row[2].si() <= 6e5 * (1 + 1e-9));
    inputs::Inputs in = demo::inputs("north", "quince-jelly", "R0041");
    const auto wound = [&](double metres) {
        inputs::Job job = *in.job;
        job.rewindDiameter = Entry<Kind::Length>(Quantity(metres, Kind::Length, "mm"));
        inputs::Inputs other = in;
        other.job = std::make_shared<const inputs::Job>(std::move(job));
        return targets::computeTargets(other);
    };
    const Targets far = wound(0.9), most = wound(0.6);
    CHECK(noted(far, "input.finished_roll_too_large"));
    for (const char* id : {"tension.rewind.finished", "tension.rewind.slip_power", "stop.rewind.tension"})
        CHECK(si(far, id) == Approx(si(most, id)));
    CHECK(far.schedule("tension.rewind.schedule")->rows.back()[0].si() == Approx(0.6));
    // A finished roll that is all core: said in words of the crew, wherever it would be reckoned with.
    const Targets none = wound(0.1);
    for (const char* id : {"tension.rewind.finished", "traction.rewind.film", "stop.rewind.tension"})
        CHECK(cannot(none, id).why.code == "tension.rewind.finished_below_core");
    CHECK(sentence(finding(none, "input.finished_roll_below_core")).find("102.2 mm outside") != std::string::npos);
}

TEST_CASE("less than can be shown beyond the end of a control is not spoken of")
{
    // The core would want 0.3 bar less a hair.
    const auto least = [](double value) {
        return withPress("north", "quince-jelly", "R0041",
                         [&](inputs::Press& p) { zone(p, "unwind").setting.least = bar(value); });
    };
    const double core = 0.15 + 59.4 * 0.1022 / (2 * 12);
    CHECK_FALSE(noted(least(core + 0.0001), "tension.unwind.leaves_range"));
    CHECK(noted(least(core + 0.03), "tension.unwind.leaves_range"));
}

TEST_CASE("a brake that runs too hot is told the speed that helps, and a lower tension only where one does")
{
    const auto most = [](double watts) {
        return withPress("north", "quince-jelly", "R0041", [&](inputs::Press& p) {
            zone(p, "unwind").slipPowerMost = Entry<Kind::Power>(Quantity(watts, Kind::Power, "W"));
        });
    };
    // 59.4 N at 1.5 m/s are 89.1 W; at the bottom of the window 69.3 W.
    const Targets sixty = most(60), eighty = most(80);
    const Finding& hot = finding(sixty, "tension.unwind.too_hot");
    CHECK(hot.remedy.source.find("or lower in") == std::string::npos);
    CHECK(std::get<Magnitude>(hot.remedy.args.at(0)).si == Approx(60 / 59.4));
    CHECK(std::get<Magnitude>(hot.remedy.args.at(0)).unit == "m/min");
    CHECK(finding(eighty, "tension.unwind.too_hot").remedy.source.find("or lower in") != std::string::npos);
}

TEST_CASE("a draw that begins above what is wanted is set where it begins, and that is said")
{
    const Targets t = withPress("north", "quince-jelly", "R0041",
                                [](inputs::Press& p) { zone(p, "print").setting.least = percent(0.05); });
    CHECK(si(t, "tension.print.setting") == Approx(0.0005));
    CHECK(noted(t, "tension.print.edge_of_range"));
    CHECK_FALSE(
        noted(withPress("north", "quince-jelly", "R0041", [](inputs::Press&) {}), "tension.print.edge_of_range"));
}

TEST_CASE("a draw that is moved to the end of its range is aimed at there, not in the middle of what is left")
{
    // Known finely enough to be judged.
    const auto printing = [](std::optional<double> least) {
        return withPress("north", "quince-jelly", "R0041", [&](inputs::Press& p) {
            zone(p, "print").setting.uncertainty = percent(0.0001);
            if (least) zone(p, "print").setting.least = Quantity(*least, Kind::Share, "%");
        });
    };
    const Targets free = printing({});
    const targets::Ready& wanted = ready(free, "tension.print.setting");
    REQUIRE(wanted.window.high);
    const double least = (si(free, "tension.print.setting") + wanted.window.high->si()) / 2;
    const Targets held = printing(least);
    const targets::Ready& moved = ready(held, "tension.print.setting");
    REQUIRE(moved.window.low);
    CHECK(moved.window.low->si() == Approx(least));
    CHECK(std::get<Quantity>(moved.value).si() == Approx(least));
    const Quantity aim = std::get<Quantity>(targets::aimOf(moved, UnitSystem::Metric));
    CHECK(aim.si() - least < (moved.window.high->si() - least) / 4);
}
