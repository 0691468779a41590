// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <cmath>

#include "core/targets/target.h"
#include "tests/core/targets/demo_inputs.h"
#include "tests/core/targets/stated.h"

// What a guide can do for this web, and what this roll takes of it.
using namespace taut;
using namespace demo::stated;
using targets::Targets;

namespace {

double given(const Targets& t, const std::string& id, const std::string& symbol)
{
    for (const targets::Given& g : ready(t, id).because.given)
        if (g.symbol == symbol) return std::get<Quantity>(g.value).si();
    FAIL(id << " has no " << symbol);
    return 0;
}
Targets offCentre(const char* press, const char* job, const char* roll, double metres)
{
    inputs::Inputs in = demo::inputs(press, job, roll);
    inputs::Roll wanders = *in.roll;
    wanders.offCentre = Entry<Kind::Length>(Length::si(metres), "mm");
    in.roll = std::make_shared<const inputs::Roll>(std::move(wanders));
    return targets::computeTargets(in);
}

}  // namespace

TEST_CASE("a steering guide reaches no further than to where an edge hangs slack, and that is said")
{
    const Targets t = targets::computeTargets(demo::inputs("south", "cold-brew", "R0048"));
    // theta = e L / w, long before the guide's own degree.
    const double slack = si(t, "tension.unwind.strain") * given(t, "guide.web.slack_angle", "L") / (12 * 0.0254);
    CHECK(si(t, "guide.web.slack_angle") == Approx(slack));
    CHECK(slack < 3.14159265358979 / 180);
    CHECK(given(t, "guide.web.reach", "theta") == Approx(slack));
    CHECK(si(t, "guide.web.reach") < 0.0019);  // not the 12 mm of a whole degree
    CHECK(noted(t, "guide.slack_first"));
    CHECK(ready(t, "guide.web.stroke_needed").window.high->si() == Approx(si(t, "guide.web.reach")));
    // A roll that wanders further than that is refused, though the stroke would have it.
    const Targets far = offCentre("south", "cold-brew", "R0048", 0.004);
    REQUIRE(std::holds_alternative<targets::Cannot>(far.find("guide.web.stroke_needed")->state));
    CHECK(std::get<targets::Cannot>(far.find("guide.web.stroke_needed")->state).why.code == "guide.stroke_too_short");
}

TEST_CASE("a displacement guide that ends before the web hangs slack keeps all of its angle")
{
    const Targets t = targets::computeTargets(demo::inputs("north", "quince-jelly", "R0041"));
    CHECK_FALSE(noted(t, "guide.slack_first"));
    CHECK(given(t, "guide.web.reach", "alpha") == Approx(5 * 3.14159265358979 / 180));
    // alpha = (L / w) sqrt(24 e): 6.9 degrees at 0.034 % over the span behind it, the shorter of the two.
    const double e = 0.18e3 / (3.8e9 * 140e-6), span = given(t, "guide.web.slack_angle", "L");
    CHECK(si(t, "guide.web.slack_angle") == Approx(span / 0.33 * std::sqrt(24 * e)));
    CHECK(si(t, "guide.web.slack_angle") == Approx(6.88 * 3.14159265358979 / 180).epsilon(0.01));
    // One that could twist further is held to it.
    const Targets wide = withPress("north", "quince-jelly", "R0041", [](inputs::Press& p) {
        p.guides.front().angleMost = Entry<Kind::Angle>(Quantity(0.4, Kind::Angle, "deg").as<Kind::Angle>(), "deg");
    });
    CHECK(noted(wide, "guide.slack_first"));
    CHECK(given(wide, "guide.web.reach", "alpha") == Approx(si(wide, "guide.web.slack_angle")));
}

TEST_CASE("a roll that takes more of the stroke than is meant for it is said")
{
    // A tenth of 25 mm.
    CHECK_FALSE(noted(offCentre("north", "quince-jelly", "R0041", 0.0024), "guide.stroke_used"));
    const Targets t = offCentre("north", "quince-jelly", "R0041", -0.01875);
    CHECK(si(t, "guide.web.stroke_used") == Approx(0.75));
    CHECK(noted(t, "guide.stroke_used"));
    CHECK_FALSE(stops(t.findings));
}

TEST_CASE("where a guide rests and what a roll takes of it go by how far it can shift this web")
{
    // South's guide turns its web slack long before the end of its stroke.
    const Targets t = offCentre("south", "cold-brew", "R0048", 0.0012);
    const double reach = si(t, "guide.web.reach");
    REQUIRE(reach < 0.0127);
    CHECK(ready(t, "guide.web.rest").window.high->si() == Approx(reach / 4));
    CHECK(ready(t, "guide.web.rest").window.low->si() == Approx(-reach / 4));
    CHECK(si(t, "guide.web.stroke_used") == Approx(0.0012 / reach));
    CHECK(noted(t, "guide.stroke_used"));
}

TEST_CASE("a displacement guide is held to the shorter of the spans before and behind it")
{
    // A roller behind the guide at 213.5 mm: G8 at 5 degrees gives 0.227 %, and slack at 3.34 degrees comes first.
    const Targets near = withPress("north", "quince-jelly", "R0041", [](inputs::Press& p) {
        for (inputs::Roller& r : p.rollers)
            if (r.id == "turn up") {
                r.x = Entry<Kind::Length>(Quantity(1.9, Kind::Length, "mm"));
                r.y = Entry<Kind::Length>(Quantity(0.78, Kind::Length, "mm"));
            }
    });
    CHECK(given(near, "guide.web.slack_angle", "L") == Approx(0.2135).epsilon(0.01));
    CHECK(si(near, "guide.web.edge_strain") == Approx(0.00227).epsilon(0.01));
    CHECK(si(near, "guide.web.slack_angle") == Approx(3.34 * 3.14159265358979 / 180).epsilon(0.01));
    CHECK(noted(near, "guide.slack_first"));
    CHECK(si(near, "guide.web.reach") == Approx(0.0175).epsilon(0.01));
}

TEST_CASE("a roll is placed no further out than the guide may spend on it, and no nearer than without a guide")
{
    const double north = si(targets::computeTargets(demo::inputs("north", "quince-jelly", "R0041")), "align.centre");
    const auto halfWindow = [](const Targets& t) {
        const targets::Window& w = ready(t, "align.centre").window;
        return (w.high->si() - w.low->si()) / 2;
    };
    CHECK(north == Approx(0.215));
    CHECK(halfWindow(targets::computeTargets(demo::inputs("north", "quince-jelly", "R0041"))) == Approx(0.0015));
    // 1.8 mm are all that South's guide can shift this film: half a millimetre, and the share follows.
    const Targets film = targets::computeTargets(demo::inputs("south", "cold-brew", "R0048"));
    CHECK(halfWindow(film) == Approx(0.0005));
    CHECK(ready(film, "guide.web.stroke_used").window.high->si() == Approx(0.0005 / si(film, "guide.web.reach")));
    // What may be spent is a tenth where that is more.
    const Targets part = withPress("north", "quince-jelly", "R0041", [](inputs::Press& p) {
        p.guides.front().stroke = Entry<Kind::Length>(Quantity(0.008, Kind::Length, "mm"));
    });
    CHECK(halfWindow(part) == Approx(0.0008));
    CHECK(ready(part, "guide.web.stroke_used").window.high->si() == Approx(0.1));
}

TEST_CASE("spans between rollers in fixed places want neither the roll nor a rewind")
{
    inputs::Inputs in = demo::inputs("north", "quince-jelly", "R0041");
    const Targets whole = targets::computeTargets(in);
    inputs::Roll bare = *in.roll;
    bare.outerDiameter.reset();
    inputs::Inputs noRoll = in;
    noRoll.roll = std::make_shared<const inputs::Roll>(std::move(bare));
    const Targets noDiameter = targets::computeTargets(noRoll);
    const Targets noWall =
        withPress("north", "quince-jelly", "R0041", [](inputs::Press& p) { p.rewinds.front().coreWall.reset(); });
    for (const char* id : {"guide.web.reach", "guide.web.edge_strain", "guide.web.slack_angle",
                           "guide.web.sensor_after", "guide.web.response_time"}) {
        CHECK(si(noDiameter, id) == Approx(si(whole, id)));
        CHECK(si(noWall, id) == Approx(si(whole, id)));
    }
}
