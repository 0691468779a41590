// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <cmath>

#include "core/targets/target.h"
#include "tests/core/targets/demo_inputs.h"
#include "tests/core/targets/stated.h"

// What a press cannot carry or wind is said, whatever else its profile tells.
using namespace taut;
using namespace demo::stated;
using targets::Targets;

TEST_CASE("a roll heavier than the unwind takes stops, whatever its lift is rated for and whether there is one")
{
    // 1360 m of 330 mm and 155 g/m2 are 69.6 kg, and a core of 0.9 kg.
    const Entry<Kind::Mass> twenty{Mass::si(20), "kg"}, hundred{Mass::si(100), "kg"};
    for (const bool lift : {true, false}) {
        INFO(lift);
        const auto at = [&](const Entry<Kind::Mass>& most) {
            return withPress("north", "quince-jelly", "R0041", [&](inputs::Press& p) {
                p.unwind->largestMass = most;
                if (lift)
                    p.unwind->lift->rated = Entry<Kind::Mass>(Mass::si(350), "kg");
                else
                    p.unwind->lift.reset();
            });
        };
        const Targets t = at(twenty);
        const Finding& f = finding(t, "unwind.too_heavy");
        CHECK(f.severity == Severity::Stop);
        CHECK_FALSE(f.remedy.empty());
        CHECK(std::get<Magnitude>(f.text.args.at(0)).si == Approx(70.5).margin(0.5));
        CHECK(std::get<Magnitude>(f.text.args.at(1)).si == 20);
        CHECK_FALSE(noted(at(hundred), "unwind.too_heavy"));
        if (!lift) continue;
        CHECK(cannot(t, "lift.load").why.code == "unwind.too_heavy");
        CHECK(cannot(t, "lift.pressure").why.code == "unwind.too_heavy");
        // Roll and carriage, and no more than the weaker of the two allows.
        CHECK(ready(at(hundred), "lift.load").window.high->si() == Approx(100 + 25));
    }
    // A weighed roll counts as weighed.
    inputs::Inputs in = demo::inputs("north", "quince-jelly", "R0041");
    inputs::Roll roll = *in.roll;
    roll.mass = Entry<Kind::Mass>(Mass::si(600), "kg");
    in.roll = std::make_shared<const inputs::Roll>(roll);
    CHECK(finding(targets::computeTargets(in), "unwind.too_heavy").severity == Severity::Stop);
}

TEST_CASE("a roll that only with its adapter is too much for the lift says what hangs there, and what the lift carries")
{
    const auto hung = [](double weighs, double rated, bool adapter) {
        inputs::Inputs in = demo::inputs("north", "quince-jelly", "R0041");
        inputs::Roll roll = *in.roll;
        roll.mass = Entry<Kind::Mass>(Mass::si(weighs), "kg");
        // On this core the unwind needs its adapter of 3.5 kg.
        if (adapter) roll.core = Entry<Kind::Length>(Length::si(0.1524), "mm");
        in.roll = std::make_shared<const inputs::Roll>(std::move(roll));
        inputs::Press press = *in.press;
        press.unwind->lift->rated = Entry<Kind::Mass>(Mass::si(rated), "kg");
        in.press = std::make_shared<const inputs::Press>(std::move(press));
        return targets::computeTargets(in);
    };
    for (const bool adapter : {true, false}) {
        INFO(adapter);
        const double hangs = adapter ? 98.5 : 95;
        const Targets t = hung(95, hangs - 1, adapter);
        const Finding& f = finding(t, "lift.too_heavy");
        CHECK(f.severity == Severity::Stop);
        CHECK(contains(f.text, "adapter") == adapter);
        CHECK(contains(f.text, "this lift carries %2"));
        CHECK(std::get<Magnitude>(f.text.args.at(0)).si == Approx(hangs));
        CHECK(std::get<Magnitude>(f.text.args.at(1)).si == Approx(hangs - 1));
        CHECK(cannot(t, "lift.load").why == f);
        CHECK(cannot(t, "lift.pressure").why == f);
        CHECK_FALSE(noted(hung(95, hangs + 1, adapter), "lift.too_heavy"));
    }
}

TEST_CASE("a rewind without a lane carries no web: nothing is stated of it, and it is not the first to slip")
{
    const auto lanes = [](int across) {
        inputs::Inputs in = demo::inputs("south", "cold-brew", "R0048");
        inputs::Job job = *in.job;
        job.across = across;
        in.job = std::make_shared<const inputs::Job>(std::move(job));
        return targets::computeTargets(in);
    };
    const Targets one = lanes(1), two = lanes(2);
    for (const char* id :
         {"tension.rewind_2.per_width", "tension.rewind_2.total", "tension.rewind_2.setting", "tension.rewind_2.zero",
          "tension.rewind_2.swing", "tension.rewind_2.ramp_swing", "tension.rewind_2.ceiling", "thread.rewind_2.wraps",
          "thread.rewind_2.winding", "thread.lane 2.length", "traction.cell 2.ratio", "stop.rewind_2.tension"}) {
        INFO(id);
        const targets::Cannot& no = cannot(one, id);
        CHECK(no.never());
        CHECK(no.why.code == "tension.rewind_2.no_lane");
        CHECK(two.find(id)->ready() != nullptr);
    }
    CHECK(std::get<std::string>(ready(one, "traction.first_to_slip").value) != "cell 2");
    CHECK(si(one, "traction.least") > si(two, "traction.cell 2.ratio"));
    CHECK(ready(one, "thread.rewind_1.wraps").window.low->si() == 3);
    CHECK(si(one, "splice.margin") > 1);
    CHECK(si(one, "splice.transient_margin") > 1);
}

TEST_CASE("the finished roll's winding decides which way the rewind turns, its path, and what the crew is told")
{
    const auto wound = [](inputs::Winding winding, std::vector<inputs::Feed> winds) {
        inputs::Inputs in = demo::inputs("north", "quince-jelly", "R0041");
        inputs::Job job = *in.job;
        job.winding = winding;
        in.job = std::make_shared<const inputs::Job>(std::move(job));
        inputs::Press press = *in.press;
        press.rewinds.front().winds = std::move(winds);
        in.press = std::make_shared<const inputs::Press>(std::move(press));
        return targets::computeTargets(in);
    };
    using inputs::Feed;
    using inputs::Winding;
    const auto word = [](const Targets& t) { return std::get<std::string>(ready(t, "thread.rewind.winding").value); };
    const Targets out = wound(Winding::FaceOut, {Feed::Over, Feed::Under}),
                  in = wound(Winding::FaceIn, {Feed::Over, Feed::Under});
    CHECK(word(out) == "over");
    CHECK(word(in) == "under");
    // By tangents reckoned by hand: 1.3812 rad over and 1.2244 rad under at the roller before it.
    const auto wrap = [](const Targets& t) {
        for (const targets::Given& g : ready(t, "traction.rewind idler.ratio").because.given)
            if (g.symbol == "beta") return std::get<Quantity>(g.value).si();
        return 0.0;
    };
    CHECK(wrap(out) == Approx(1.3812).epsilon(1e-4));
    CHECK(wrap(in) == Approx(1.2244).epsilon(1e-4));
    CHECK_FALSE(noted(out, "thread.winds_other_way"));
    CHECK_FALSE(finding(in, "thread.winds_other_way").remedy.empty());
    CHECK(ready(in, "thread.rewind.wraps").advice != ready(out, "thread.rewind.wraps").advice);
    // One way only: either the usual one, or it cannot.
    const Targets under = wound(Winding::FaceIn, {Feed::Under});
    CHECK(word(under) == "under");
    CHECK_FALSE(noted(under, "thread.winds_other_way"));
    const Targets over = wound(Winding::FaceIn, {Feed::Over});
    CHECK(cannot(over, "thread.rewind.winding").why.severity == Severity::Warn);
    CHECK(noted(over, "input.finished_winding"));
    CHECK(si(over, "traction.rewind idler.ratio") == Approx(si(out, "traction.rewind idler.ratio")));
    const Targets unknown = wound(Winding::Unknown, {Feed::Over, Feed::Under});
    const auto* needs = std::get_if<targets::Needs>(&unknown.find("thread.rewind.winding")->state);
    REQUIRE(needs != nullptr);
    CHECK(needs->keys == std::vector<std::string>{"job.winding"});
}

TEST_CASE("a printing zone under a load cell stretches the print as one under a draw")
{
    const Targets drawn = targets::computeTargets(demo::inputs("north", "quince-jelly", "R0041"));
    const Targets cell = withPress("north", "quince-jelly", "R0041", [](inputs::Press& p) {
        inputs::Zone& print = zone(p, "print");
        print.control = inputs::Control::LoadCell;
        print.loadCell = inputs::LoadCell{"after 1", Entry<Kind::Force>(Force::si(300), "N"), "N"};
    });
    CHECK(si(cell, "register.printed_repeat") == Approx(si(drawn, "register.printed_repeat")));
    // 10 x 304.8 mm x e / (1 + e)
    const double e = si(cell, "tension.print.strain");
    CHECK(si(cell, "register.printed_repeat") == Approx(-3.048 * e / (1 + e)));
}

TEST_CASE("a rewind driven by a draw is reckoned with the tension it runs at, and lacks nothing that nobody can enter")
{
    const Targets t = withPress("north", "quince-jelly", "R0041",
                                [](inputs::Press& p) { zone(p, "rewind").control = inputs::Control::Draw; });
    for (const targets::Target& target : t.all) {
        const auto* needs = std::get_if<targets::Needs>(&target.state);
        if (needs == nullptr) continue;
        INFO(target.id);
        for (const std::string& key : needs->keys) CHECK(key.rfind("target:", 0) != 0);
    }
    // No taper: the whole of the tension, and what the roll's inertia adds.
    CHECK(si(t, "stop.rewind.tension") > si(t, "tension.rewind.total"));
    CHECK(si(t, "splice.transient_margin") > 1);
    CHECK(si(t, "traction.rewind.film") > 0);
}

TEST_CASE("a roll whose diameter nobody knows takes from the path only what lies before the first roller")
{
    inputs::Inputs in = demo::inputs("north", "quince-jelly", "R0041");
    const Targets whole = targets::computeTargets(in);
    inputs::Roll roll = *in.roll;
    roll.outerDiameter.reset();
    in.roll = std::make_shared<const inputs::Roll>(roll);
    const Targets t = targets::computeTargets(in);
    for (const char* id : {"thread.pull", "thread.inches", "thread.crawl_time", "traction.infeed.ratio"}) {
        INFO(id);
        CHECK(si(t, id) == Approx(si(whole, id)).epsilon(1e-12));
    }
    for (const targets::Target& target : whole.all) {
        INFO(target.id);
        CHECK(t.find(target.id) != nullptr);
    }
    for (const char* id : {"thread.main.length", "traction.table entry.ratio"}) {
        INFO(id);
        const auto* needs = std::get_if<targets::Needs>(&t.find(id)->state);
        REQUIRE(needs != nullptr);
        CHECK(needs->keys == std::vector<std::string>{"roll.outer_diameter"});
    }
}
