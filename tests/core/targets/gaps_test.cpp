// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>

#include "core/inputs/policy.h"
#include "core/targets/target.h"
#include "core/units/plain.h"
#include "tests/core/targets/demo_inputs.h"
#include "tests/core/targets/stated.h"

using namespace taut;
using namespace demo::stated;
using targets::Ready;
using targets::Targets;

namespace {

std::string word(const Targets& t, const std::string& id) { return std::get<std::string>(ready(t, id).value); }
template <class Change>
inputs::Inputs withPress(inputs::Inputs in, Change change)
{
    inputs::Press press = *in.press;
    change(press);
    in.press = std::make_shared<const inputs::Press>(std::move(press));
    return in;
}
Entry<Kind::Length> metres(double si) { return Entry<Kind::Length>(Length::si(si), "mm"); }
inputs::Inputs withoutWall(inputs::Inputs in)
{
    inputs::Roll roll = *in.roll;
    roll.coreWall.reset();
    in.roll = std::make_shared<const inputs::Roll>(roll);
    return withPress(in, [](inputs::Press& p) { p.unwind->coreWall.reset(); });
}

}  // namespace

TEST_CASE("a core whose wall nobody knows is reckoned with a band, and the automatic stop with the thickest wall")
{
    const auto in = demo::inputs("north", "quince-jelly", "R0041");
    const Targets known = targets::computeTargets(in), t = targets::computeTargets(withoutWall(in));
    CHECK_FALSE(noted(known, "roll.core_wall_unknown"));
    CHECK(noted(t, "roll.core_wall_unknown"));
    constexpr double kPi = 3.14159265358979323846;
    const auto length = [](double core) { return kPi * (0.5 * 0.5 - core * core) / (4 * 140e-6); };
    const double thin = 0.0762 + 2 * 0.003, thick = 0.0762 + 2 * 0.015;
    CHECK(si(t, "roll.length_by_diameter") == Approx(length((thin + thick) / 2)).epsilon(1e-12));
    // How well the length is known takes in both ends of the band.
    const double without = ready(known, "roll.length_by_diameter").uncertainty->si();
    const double half = kPi / (2 * 140e-6) * (thin + thick) / 2 * (thick - thin) / 2;
    CHECK(ready(t, "roll.length_by_diameter").uncertainty->si() == Approx(std::hypot(without, half)).epsilon(0.01));
    // Whatever the wall is, the stop is not late: the web of the reserve still lies on the thickest core.
    const auto stop = [](double core) { return std::sqrt(core * core + 4 * 140e-6 * 60 / kPi); };
    CHECK(si(t, "stop.diameter") == Approx(stop(thick)).epsilon(1e-12));
    for (const double wall : {0.003, 0.009, 0.015}) CHECK(si(t, "stop.diameter") >= stop(0.0762 + 2 * wall) - 1e-12);
    CHECK(ready(t, "stop.diameter").advice.source.find("not known") != std::string::npos);
    CHECK(ready(known, "stop.diameter").advice.source.find("not known") == std::string::npos);
    // The brake left alone pulls hardest on the thinnest, and its schedule goes on to there.
    CHECK(si(t, "tension.unwind.left_alone") == Approx(2 * 14.85 / thin));
    CHECK(t.schedule("tension.unwind.schedule")->rows.back()[0].si() == Approx(thin));
    // A shop that knows its cores better says so.
    const Targets own = targets::computeTargets(withPress(withoutWall(in), [](inputs::Press& p) {
        p.policy.emplace_back("core_wall_most", Quantity(0.010, Kind::Length, "mm"));
    }));
    CHECK(si(own, "stop.diameter") == Approx(stop(0.0762 + 2 * 0.010)).epsilon(1e-12));
}

TEST_CASE("whether a roll is enough is said as surely as its length is known")
{
    const auto in = demo::inputs("north", "quince-jelly", "R0041");
    const Targets whole = targets::computeTargets(in);
    const double need = si(whole, "job.web"), lost = 60 + si(whole, "strip.length");
    const auto withLength = [&](double metresOnRoll) {
        inputs::Inputs out = in;
        inputs::Roll roll = *in.roll;
        roll.tag.clear();
        roll.length = Entry<Kind::Length>(Length::si(metresOnRoll), "m");
        out.roll = std::make_shared<const inputs::Roll>(roll);
        return targets::computeTargets(out);
    };
    // A label's length is known to two percent.
    for (const auto& [share, answer] :
         {std::pair{1.03, "enough"}, std::pair{1.01, "probably"}, std::pair{0.999, "no"}}) {
        const Targets t = withLength(need * share + lost);
        INFO(share);
        CHECK(word(t, "job.enough") == answer);
        CHECK(std::get<bool>(ready(t, "job.covered").value) == (share >= 1));
    }
    CHECK(withLength(need * 1.01 + lost).find("job.covered")->ready()->advice !=
          withLength(need * 1.03 + lost).find("job.covered")->ready()->advice);
    // What is short is told by its figure, and it is another no where it grew by more than a label is known to.
    const Targets shortRoll = withLength(need - 100 + lost);
    CHECK(plain(ready(shortRoll, "job.covered").advice).rfind("100 m short: have the next roll stand by", 0) == 0);
    const auto comesAgain = [&](const Targets& later) {
        const std::vector<targets::TargetId> ids = targets::changed(shortRoll, later);
        return std::find(ids.begin(), ids.end(), "job.covered") != ids.end();
    };
    CHECK_FALSE(comesAgain(withLength(need - 110 + lost)));
    CHECK(comesAgain(withLength(need - 200 + lost)));
    CHECK_FALSE(comesAgain(withLength(need - 50 + lost)));
    CHECK(comesAgain(withLength(need * 1.03 + lost)));
}

TEST_CASE("the waste rewind's schedule ends where that rewind is full, not at the job's finished roll")
{
    const Targets t = targets::computeTargets(demo::inputs("south", "cold-brew", "R0048"));
    const targets::Schedule* schedule = t.schedule("tension.waste.schedule");
    REQUIRE(schedule != nullptr);
    CHECK(schedule->rows.back()[0].si() == Approx(20 * 0.0254));
    for (const targets::Given& g : ready(t, "tension.waste.left_alone").because.given)
        if (g.symbol == "D") CHECK(std::get<Quantity>(g.value).si() == Approx(20 * 0.0254));
}

TEST_CASE("a guide's sensor belongs in the first third of the span behind it")
{
    const auto in = demo::inputs("north", "quince-jelly", "R0041");
    const Targets t = targets::computeTargets(in);
    CHECK(si(t, "guide.web.sensor_after") == Approx(0.090));
    const targets::Window& window = ready(t, "guide.web.sensor_after").window;
    CHECK(window.high->si() > 0.090);
    CHECK_FALSE(noted(t, "guide.sensor_far"));
    const double span = 3 * window.high->si();
    const Targets far = targets::computeTargets(
        withPress(in, [&](inputs::Press& p) { p.guides.front().sensorAfter = metres(span * 0.34); }));
    CHECK(noted(far, "guide.sensor_far"));
    const Targets silent =
        targets::computeTargets(withPress(in, [](inputs::Press& p) { p.guides.front().sensorAfter.reset(); }));
    REQUIRE(std::holds_alternative<targets::Needs>(silent.find("guide.web.sensor_after")->state));
    // The sensor of an unwind that shifts goes by its stand.
    const Targets shift =
        targets::computeTargets(withPress(in, [](inputs::Press& p) { p.guides.front().kind = "unwind_shift"; }));
    CHECK(shift.find("guide.web.sensor_after") == nullptr);
}

TEST_CASE("a steering guide's reach is what the web bends by in the span before it")
{
    const Targets t = targets::computeTargets(demo::inputs("south", "cold-brew", "R0048"));
    CHECK(ready(t, "guide.web.reach").because.formula == "G3");
    double span = 0, angle = 0;
    for (const targets::Given& g : ready(t, "guide.web.reach").because.given) {
        if (g.symbol == "L") span = std::get<Quantity>(g.value).si();
        if (g.symbol == "theta") angle = std::get<Quantity>(g.value).si();
    }
    // Between a stiff beam and a string: two thirds of the angle times the span, and all of it.
    CHECK(si(t, "guide.web.reach") >= 2.0 / 3 * angle * span);
    CHECK(si(t, "guide.web.reach") < angle * span);
    CHECK(angle == Approx(si(t, "guide.web.slack_angle")));  // before its own end of one degree
    CHECK(span > 0.5);
}

TEST_CASE("a policy row that limits a reading gives that reading its window, the press's own where it has one")
{
    const std::vector<std::pair<const char*, const char*>> rows{
        {"air_drop_most", "air.drop"},
        {"tension_ramp", "tension.unwind.ramp_swing"},
        {"printed_repeat", "register.printed_repeat"},
        {"register_centre", "register.1.centre"},
        {"dancer_swing", "tension.unwind.arm_swing"},
        {"film_treatment", "roll.treatment"},
    };
    const auto north = demo::inputs("north", "quince-jelly", "R0041");
    const auto south = demo::inputs("south", "cold-brew", "R0048");
    for (const auto& [row, id] : rows) {
        INFO(row);
        const auto& in = targets::computeTargets(north).find(id) != nullptr ? north : south;
        const targets::Window usual = ready(targets::computeTargets(in), id).window;
        CHECK(usual.rule == targets::Rule::Policy);
        const inputs::PolicyRow* of = inputs::findPolicy(row);
        REQUIRE(of != nullptr);
        const std::string name = row;
        const Targets moved = targets::computeTargets(withPress(
            in, [&](inputs::Press& p) { p.policy.emplace_back(name, Quantity(of->si * 1.1, of->kind, "")); }));
        const targets::Window& own = ready(moved, id).window;
        CHECK(own.rule == targets::Rule::Press);
        const auto& before = usual.high ? usual.high : usual.low;
        const auto& after = usual.high ? own.high : own.low;
        REQUIRE(before);
        REQUIRE(after);
        // One that is laid about a value grows from there.
        const Quantity* about = moved.find(id)->quantity();
        const double from = name == "printed_repeat" ? about->si() : 0;
        CHECK(after->si() - from == Approx((before->si() - from) * 1.1));
    }
    // How well a friction is known shows in what a core's wraps hold.
    const double hold = si(targets::computeTargets(north), "thread.rewind.core_hold");
    REQUIRE(ready(targets::computeTargets(north), "thread.rewind.core_hold").uncertainty);
    CHECK(ready(targets::computeTargets(north), "thread.rewind.core_hold").uncertainty->si() ==
          Approx(0.25 * hold * std::log(hold)).epsilon(1e-4));
}

TEST_CASE("ten printed repeats may lie off what the tension makes of the gear's by a share of all ten")
{
    const Targets t = targets::computeTargets(demo::inputs("north", "quince-jelly", "R0041"));
    // Let go, the web is shorter by its strain: 0.18 N/mm on 140 um of 3.8 GPa.
    const double strain = 180 / (3.8e9 * 140e-6), share = 10 * 0.3048 * 0.0005;
    CHECK(si(t, "register.printed_repeat") == Approx(-10 * 0.3048 * strain / (1 + strain)));
    CHECK(ready(t, "register.printed_repeat").window.high->si() == Approx(si(t, "register.printed_repeat") + share));
    CHECK(ready(t, "register.printed_repeat").window.low->si() == Approx(si(t, "register.printed_repeat") - share));
    // Nobody said how far this paper stretches: shorter by anything up to what print may be made under.
    const Targets stiff = targets::computeTargets(demo::inputs("north", "parcel-tag", "R0050"));
    const targets::Window& open = ready(stiff, "register.printed_repeat").window;
    CHECK(open.high->si() == Approx(10 * si(stiff, "job.repeat") * 0.0005));
    CHECK(open.low->si() == Approx(-10 * si(stiff, "job.repeat") * 0.0015));
    CHECK(ready(t, "register.1.centre").window.high->si() == Approx(0.006 * 0.1));
    // What is left each way is read where it stands: as much off the middle is as far out, and nothing is left beyond
    // the whole way from one end to the other.
    CHECK(ready(t, "register.1.along").window.low->si() == Approx(0.006 * 0.9));
    CHECK(ready(t, "register.1.along").window.high->si() == Approx(0.006 * 1.1));
    CHECK(ready(t, "register.1.along").most->si() == Approx(0.012));
    CHECK(si(targets::computeTargets(demo::inputs("south", "cold-brew", "R0048")), "roll.treatment") == Approx(0.038));
    CHECK(targets::computeTargets(demo::inputs("north", "parcel-tag", "R0045")).find("roll.treatment") == nullptr);
}

TEST_CASE("every policy row is read: a shop that moves one moves a target")
{
    std::vector<inputs::Inputs> shops;
    for (const demo::Case& c : demo::cases()) shops.push_back(demo::inputs(c.press, c.job, c.roll));
    const auto north = demo::inputs("north", "quince-jelly", "R0041");
    shops.push_back(withoutWall(north));
    shops.push_back(withPress(north, [](inputs::Press& p) {
        p.guides.clear();
        p.limits.clear();
        p.unwind->mandrel.airLeast.reset();
        p.unwind->mandrel.airMost.reset();
        p.stations.front().undercut = metres(0.00208);
    }));
    for (const char* family : {"pe", "paper_label", "film_label"}) {
        inputs::Inputs in = north;
        inputs::Substrate web = *in.substrate;
        inputs::Job job = *in.job;
        web.family = family;
        web.tension.reset();
        web.caliperTolerance.reset();
        job.tension.reset();
        in.substrate = std::make_shared<const inputs::Substrate>(web);
        in.job = std::make_shared<const inputs::Job>(job);
        shops.push_back(in);
    }
    inputs::Inputs weighed = north;
    inputs::Roll roll = *weighed.roll;
    roll.mass = Entry<Kind::Mass>(Mass::si(70), "kg");
    weighed.roll = std::make_shared<const inputs::Roll>(roll);
    shops.push_back(weighed);

    std::vector<Targets> usual;
    for (const inputs::Inputs& in : shops) usual.push_back(targets::computeTargets(in));
    for (const inputs::PolicyRow& row : inputs::policyRows()) {
        if (row.people) continue;  // tests/core/logbook/competence_test.cpp asks what those do
        INFO(row.name);
        bool moved = false;
        for (std::size_t i = 0; i < shops.size() && !moved; ++i) {
            const double other = row.si == 0 ? row.most / 2 : row.si * 1.05;
            const Targets own = targets::computeTargets(withPress(shops[i], [&](inputs::Press& p) {
                p.policy.emplace_back(std::string(row.name), Quantity(other, row.kind, std::string(row.unit)));
            }));
            // Values, windows and how well they are known; not that the row's name is said.
            for (const targets::Target& before : usual[i].all) {
                const targets::Target* after = own.find(before.id);
                if (after == nullptr || after->ready() == nullptr || before.ready() == nullptr) continue;
                const Ready &b = *before.ready(), &a = *after->ready();
                moved = moved || a.value != b.value || a.window.low != b.window.low || a.window.high != b.window.high ||
                        a.uncertainty != b.uncertainty;
            }
        }
        CHECK(moved);
    }
}

// Mechanics: a joint that leans bears the pull partly in shear (S60), and the web behind it is as strong as before.
TEST_CASE("a leaning cut is credited with no strength")
{
    const inputs::Inputs in = demo::inputs("north", "quince-jelly", "R0041");
    const auto leaning = withPress(in, [](inputs::Press& press) {
        press.spliceTable.angle = Entry<Kind::Angle>(Quantity(0.785, Kind::Angle, "deg").as<Kind::Angle>(), "deg");
    });
    const Targets straight = targets::computeTargets(in), leans = targets::computeTargets(leaning);
    for (const char* id : {"splice.margin", "splice.transient_margin"}) CHECK(si(leans, id) == si(straight, id));
}
