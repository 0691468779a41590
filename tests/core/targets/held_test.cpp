// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>

#include "core/targets/target.h"
#include "core/units/range.h"
#include "tests/core/targets/demo_inputs.h"
#include "tests/core/targets/stated.h"

// What is aimed at can be set, and what is advised changes something.
using namespace taut;
using namespace demo::stated;
using targets::Targets;

namespace {

using Changing = void (*)(inputs::Press&, inputs::Substrate&, inputs::Job&);
Targets with(const char* press, const char* job, const char* roll, Changing change)
{
    inputs::Inputs in = demo::inputs(press, job, roll);
    inputs::Press p = *in.press;
    inputs::Substrate s = *in.substrate;
    inputs::Job j = *in.job;
    change(p, s, j);
    in.press = std::make_shared<const inputs::Press>(std::move(p));
    in.substrate = std::make_shared<const inputs::Substrate>(std::move(s));
    in.job = std::make_shared<const inputs::Job>(std::move(j));
    return targets::computeTargets(in);
}
bool isInside(const Targets& t, const std::string& id)
{
    const targets::Window& window = ready(t, id).window;
    return Range{window.low, window.high}.contains(si(t, id));
}

}  // namespace

TEST_CASE("where the middle of a window cannot be set, value, torque and schedule are of the nearest that can")
{
    // North's clutch begins at 0.3 bar: 9 N m/bar above 0.1 bar on a core of 102.2 mm are 2 * 9 * 0.2 / 0.1022 N.
    const Targets film = with("north", "parcel-tag", "R0050",
                              [](inputs::Press&, inputs::Substrate& s, inputs::Job&) { s.family = "nylon"; });
    REQUIRE(noted(film, "tension.rewind.edge_of_range"));
    CHECK(si(film, "tension.rewind.setting") == Approx(0.3e5).epsilon(1e-9));
    CHECK(isInside(film, "tension.rewind.setting"));
    const double tension = 2 * 9 * 0.2 / 0.1022;
    CHECK(si(film, "tension.rewind.total") == Approx(tension));
    CHECK(isInside(film, "tension.rewind.total"));
    CHECK(si(film, "tension.rewind.torque") == Approx(9 * 0.2));
    const targets::Schedule* schedule = film.schedule("tension.rewind.schedule");
    REQUIRE(schedule != nullptr);
    CHECK(schedule->rows.front()[2].si() == Approx(0.3e5).epsilon(1e-9));
    CHECK(schedule->rows.front()[3].si() == Approx(tension));
    CHECK_FALSE(noted(film, "tension.rewind.leaves_range"));

    // A dancer whose air begins at 13 psi, and a load cell that ends at 3 lbf.
    const Targets dancer = with("south", "cold-brew", "R0048", [](inputs::Press& p, inputs::Substrate&, inputs::Job&) {
        zone(p, "unwind").setting.least = Quantity(13 * 6894.757293168361, Kind::Pressure, "psi");
    });
    CHECK(si(dancer, "tension.unwind.setting") == Approx(13 * 6894.757293168361).epsilon(1e-9));
    CHECK(isInside(dancer, "tension.unwind.setting"));
    CHECK(isInside(dancer, "tension.unwind.total"));
    CHECK(si(dancer, "tension.unwind.torque") ==
          Approx(si(dancer, "tension.unwind.total") * si(dancer, "roll.diameter") / 2));
    const Targets cell = with("south", "cold-brew", "R0048", [](inputs::Press& p, inputs::Substrate&, inputs::Job&) {
        zone(p, "rewind_1").loadCell->range = Entry<Kind::Force>(Force::si(3 * 4.4482216152605), "lbf");
    });
    CHECK(si(cell, "tension.rewind_1.setting") == Approx(3 * 4.4482216152605).epsilon(1e-9));
    CHECK(isInside(cell, "tension.rewind_1.setting"));
    CHECK(noted(cell, "tension.rewind_1.edge_of_range"));
    // What the loop's own brake cannot hold is not aimed at either: 2 * 55 * (0.15 - 0.02) / D.
    const Targets brake = with("south", "cold-brew", "R0048", [](inputs::Press& p, inputs::Substrate&, inputs::Job&) {
        zone(p, "unwind").actuatorRange.most = Quantity(0.15, Kind::Share, "%");
    });
    CHECK(si(brake, "tension.unwind.total") == Approx(2 * 55 * 0.13 / si(brake, "roll.diameter")));
    CHECK(noted(brake, "tension.unwind.edge_of_range"));
}

TEST_CASE("nothing is advised that changes nothing")
{
    // All of the window lies beyond the load cell, below the brake: where in it the press runs is no help.
    const Targets cell = with("north", "quince-jelly", "R0041", [](inputs::Press& p, inputs::Substrate&, inputs::Job&) {
        inputs::Zone& z = zone(p, "unwind");
        z.control = inputs::Control::LoadCell;
        z.setting = {};
        z.loadCell = inputs::LoadCell{"turn up", Entry<Kind::Force>(Force::si(20), "N"), "N"};
    });
    CHECK_FALSE(contains(finding(cell, "tension.unwind.out_of_range").remedy, "window"));
    const Targets drive = with("south", "cold-brew", "R0048", [](inputs::Press& p, inputs::Substrate&, inputs::Job&) {
        zone(p, "unwind").actuatorRange.least = Quantity(0.3, Kind::Share, "%");
    });
    CHECK_FALSE(contains(finding(drive, "tension.unwind.out_of_range").remedy, "window"));
    // The full roll's setting lies below where the brake begins: its core has nothing to do with that.
    const Targets strong =
        with("north", "quince-jelly", "R0041", [](inputs::Press& p, inputs::Substrate&, inputs::Job&) {
            zone(p, "unwind").torquePerSetting = Quantity(500 / 1e5, Kind::TorquePerPressure, "N m/bar");
        });
    const Finding& why = finding(strong, "tension.unwind.out_of_range");
    CHECK_FALSE(contains(why.remedy, "core"));
    // 2 * 500 * 0.15 / 72.6 N is 2.07 m, which no unwind takes: part of the brake out of use is all that is left.
    CHECK_FALSE(contains(why.remedy, "roll"));
    const Targets less = with("north", "quince-jelly", "R0041", [](inputs::Press& p, inputs::Substrate&, inputs::Job&) {
        zone(p, "unwind").torquePerSetting = Quantity(200 / 1e5, Kind::TorquePerPressure, "N m/bar");
    });
    const Finding& larger = finding(less, "tension.unwind.out_of_range");
    CHECK(contains(larger.remedy, "a roll of at least %1 across"));
    CHECK(std::get<Magnitude>(larger.remedy.args.at(0)).si == Approx(2 * 200 * 0.15 / 72.6));
}

TEST_CASE("lanes go to the rewinds in turn, and a rewind without one winds nothing")
{
    const auto lanes = [](Changing change) { return with("south", "cold-brew", "R0048", change); };
    const Targets two = lanes([](inputs::Press&, inputs::Substrate&, inputs::Job& j) { j.across = 2; });
    const Targets three = lanes([](inputs::Press&, inputs::Substrate&, inputs::Job& j) { j.across = 3; });
    const double all = 2 * si(two, "tension.rewind_1.total");
    CHECK(si(two, "tension.rewind_2.total") == Approx(all / 2));
    CHECK(si(three, "tension.rewind_1.total") == Approx(all * 2 / 3));
    CHECK(si(three, "tension.rewind_2.total") == Approx(all / 3));
    CHECK(noted(three, "tension.lanes_uneven"));
    CHECK_FALSE(noted(two, "tension.lanes_uneven"));
    const Targets one = lanes([](inputs::Press&, inputs::Substrate&, inputs::Job& j) { j.across = 1; });
    CHECK(si(one, "tension.rewind_1.total") == Approx(all));
    REQUIRE(std::holds_alternative<targets::Cannot>(one.find("tension.rewind_2.setting")->state));
    CHECK(noted(one, "tension.rewind_2.no_lane"));
    // A rewind that winds nothing pulls at no joint: the splice is held against the other one.
    for (const char* id : {"splice.margin", "splice.transient_margin"}) CHECK(si(one, id) > 1);
    CHECK(si(one, "splice.transient_margin") <= si(one, "splice.margin") * (1 + 1e-9));
    CHECK_FALSE(stops(one.findings));
}

TEST_CASE("a lift that would rise at less than its pressure can be set to is said")
{
    const auto bore = [](Changing change) { return with("north", "quince-jelly", "R0041", change); };
    const Targets wide = bore([](inputs::Press& p, inputs::Substrate&, inputs::Job&) {
        p.unwind->lift->bore = Entry<Kind::Length>(Length::si(0.2), "mm");
    });
    CHECK(finding(wide, "lift.rises_at_once").severity == Severity::Warn);
    CHECK(contains(ready(wide, "lift.pressure").advice, "as soon as air is on"));
    CHECK(contains(finding(wide, "lift.rises_at_once").remedy, "press profile"));
    // A light roll on a lift that the heaviest would tell is no fault of the profile.
    inputs::Inputs in = demo::inputs("north", "quince-jelly", "R0041");
    const Targets light = targets::computeTargets(in, Length::si(0.15));
    CHECK_FALSE(contains(finding(light, "lift.rises_at_once").remedy, "press profile"));
    CHECK_FALSE(noted(bore([](inputs::Press&, inputs::Substrate&, inputs::Job&) {}), "lift.rises_at_once"));
}

TEST_CASE("the ends of a window in a finding are those that the table shows")
{
    const Targets t = targets::computeTargets(demo::inputs("north", "quince-jelly", "R0041"));
    const auto coarse = std::find_if(t.findings.begin(), t.findings.end(), [](const Finding& f) {
        return f.code == "window.too_coarse" && f.subject == "tension.rewind.setting";
    });
    REQUIRE(coarse != t.findings.end());
    const auto& said = std::get<std::vector<Text>>(coarse->text.args.at(1)).front();
    // 0.362 to 0.512 bar, rounded inward.
    CHECK(std::get<Magnitude>(said.args.at(1)).si == Approx(0.37e5));
    CHECK(std::get<Magnitude>(said.args.at(2)).si == Approx(0.51e5));
    const Targets south = targets::computeTargets(demo::inputs("south", "cold-brew", "R0048"));
    const targets::Window& window = ready(south, "tension.rewind_1.total").window;
    CHECK(std::get<Magnitude>(finding(south, "tension.rewind_1.taper_leaves").text.args.at(2)).si >= window.low->si());
}

// T3 at 70 g/m2 as S18a and S20 have it, T2 for polyester; tests/published/tables_test.cpp holds both to their pages.
TEST_CASE("an end that a policy row makes of a table is the row's and not the table's")
{
    const Targets t = targets::computeTargets(demo::inputs("north", "parcel-tag", "R0050"));
    const targets::Ready& tension = ready(t, "tension.unwind.per_width");
    CHECK(tension.window.lowRule.value_or(tension.window.rule) == targets::Rule::Policy);
    const auto low = std::find_if(tension.because.given.begin(), tension.because.given.end(),
                                  [](const targets::Given& g) { return g.symbol == "low"; });
    REQUIRE(low != tension.because.given.end());
    CHECK(low->from.starts_with("policy:table_spread"));
    // Where the tables themselves are further apart than the row, they are what is said: 0.25 to 0.30 for nylon.
    const Targets nylon = with("south", "seed-window", "R0049",
                               [](inputs::Press&, inputs::Substrate& s, inputs::Job&) { s.family = "nylon"; });
    CHECK(ready(nylon, "tension.unwind.per_width").window.rule == targets::Rule::Table);
}

TEST_CASE("a roller that air may carry the web clear of is told with the findings")
{
    const Targets t = targets::computeTargets(demo::inputs("north", "quince-jelly", "R0041"));
    CHECK(si(t, "traction.after 2.ratio") == Approx(1));
    CHECK(std::get<std::string>(finding(t, "traction.lost").text.args.at(0)).find("after 2") != std::string::npos);
    const Targets slow = with("north", "quince-jelly", "R0041", [](inputs::Press&, inputs::Substrate&, inputs::Job& j) {
        j.speed = Entry<Kind::Speed>(Speed::si(0.1), "m/min");
    });
    CHECK_FALSE(noted(slow, "traction.lost"));
    CHECK(std::get<std::string>(t.find("traction.air_film")->name.args.at(0)) == "impression 1");
}
