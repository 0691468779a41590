// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <cmath>
#include <functional>
#include <numbers>

#include "core/inputs/path_of.h"
#include "tests/core/inputs/demo.h"

using namespace taut;
using namespace taut::inputs;

namespace {

double degrees(double radians) { return radians * 180 / std::numbers::pi; }

physics::WebPath pathFor(const Press& press, const std::string& name, double diameter, Feed feed)
{
    Result<NamedPath> path = pathOf(press, name, Length::si(diameter), feed);
    if (!path) FAIL(sentence(path.error()));
    return path->path;
}

Roller& rollerOf(Press& press, const std::string& id)
{
    for (Roller& r : press.rollers)
        if (r.id == id) return r;
    throw std::runtime_error(id);
}

}  // namespace

TEST_CASE("both demo presses can be threaded at every diameter and feed that they allow")
{
    struct Row {
        std::string press;
        std::vector<std::string> paths;
    };
    for (const Row& row : {Row{"north", {"main"}}, Row{"south", {"main", "lane 2", "waste"}}}) {
        const Press press = demoPress(row.press);
        CHECK(pathNames(press) == row.paths);
        for (const Feed feed : {Feed::Over, Feed::Under}) {
            for (double d = 0.1022; d <= press.unwind->largestDiameter->si(); d += 0.05) {
                CAPTURE(row.press, d, feed == Feed::Over);
                const auto paths = pathsOf(press, Length::si(d), feed);
                if (!paths) FAIL(sentence(paths.error()));
                REQUIRE(paths->size() == row.paths.size());
                for (const NamedPath& p : *paths)
                    for (const physics::PathArc& arc : p.path.arcs) CHECK(degrees(arc.wrap) < 175);
            }
        }
    }
}

// The expected figures were worked out from the coordinates with a separate program (tangent lines by their normal
// form, wraps from the difference of the spans' directions), not with this one.
TEST_CASE("lengths and wraps follow from the coordinates, left to right and right to left")
{
    const physics::WebPath north = pathFor(demoPress("north"), "main", 0.5, Feed::Over);
    CHECK(north.length().si() == Approx(7.7183).margin(1e-4));
    CHECK(degrees(north.arc("table entry")->wrap) == Approx(55.0).margin(0.1));
    CHECK(degrees(north.arc("turn up")->wrap) == Approx(126.4).margin(0.1));
    CHECK(degrees(north.arc("impression 2")->wrap) == Approx(84.5).margin(0.1));
    CHECK(north.spanAfter("table entry")->length.si() == Approx(0.700).margin(1e-6));
    CHECK(north.spanAfter("guide entry")->length.si() == Approx(0.300).margin(1e-6));

    const Press press = demoPress("south");
    const physics::WebPath south = pathFor(press, "main", 0.5, Feed::Under);
    CHECK(south.length().si() == Approx(10.2717).margin(1e-4));
    CHECK(degrees(south.arc("dancer")->wrap) == Approx(170.6).margin(0.1));
    CHECK(degrees(south.arc("cell 1")->wrap) == Approx(74.6).margin(0.1));
    CHECK(pathFor(press, "lane 2", 0.5, Feed::Under).length().si() == Approx(1.5005).margin(1e-4));
    CHECK(degrees(pathFor(press, "lane 2", 0.5, Feed::Under).arc("cell 2")->wrap) == Approx(60.6).margin(0.1));
    CHECK(pathFor(press, "waste", 0.5, Feed::Under).length().si() == Approx(1.3445).margin(1e-4));
}

TEST_CASE("fed over, the web leaves the top of the roll whichever way it runs")
{
    for (const char* name : {"north", "south"}) {
        const Press press = demoPress(name);
        const bool right = std::string(name) == "north";
        const double centre = press.roller("unwind")->y->si();
        const physics::WebPath over = pathFor(press, "main", 0.5, Feed::Over);
        const physics::WebPath under = pathFor(press, "main", 0.5, Feed::Under);
        CAPTURE(name);
        CHECK(over.spans.front().y1.si() > centre);
        CHECK(under.spans.front().y1.si() < centre);
        // Over the top to the right is clockwise, to the left counter-clockwise, as seen from the operator's side.
        CHECK(over.rollers.front().counterClockwise == !right);
        CHECK(under.rollers.front().counterClockwise == right);
    }
}

TEST_CASE("the feed changes the first span and the wrap of the first roller, and nothing after")
{
    for (const char* name : {"north", "south"}) {
        CAPTURE(name);
        const Press press = demoPress(name);
        const physics::WebPath over = pathFor(press, "main", 0.6, Feed::Over);
        const physics::WebPath under = pathFor(press, "main", 0.6, Feed::Under);
        REQUIRE(over.spans.size() == under.spans.size());
        CHECK(std::abs(over.spans[0].length.si() - under.spans[0].length.si()) > 1e-3);
        CHECK(std::abs(over.arcs[1].wrap - under.arcs[1].wrap) > 1e-3);
        for (std::size_t i = 1; i < over.spans.size(); ++i) {
            CHECK(over.spans[i].length.si() == under.spans[i].length.si());
            CHECK(over.spans[i].x1.si() == under.spans[i].x1.si());
        }
        for (std::size_t i = 2; i < over.arcs.size(); ++i) CHECK(over.arcs[i].wrap == under.arcs[i].wrap);
    }
}

TEST_CASE("moving one roller by 10 mm changes the main path and the drawn line together")
{
    for (const char* name : {"north", "south"}) {
        const Press before = demoPress(name);
        const physics::WebPath was = pathFor(before, "main", 0.5, *before.printFeed);
        for (const Roller& roller : before.rollers) {
            if (!roller.path.empty()) continue;
            CAPTURE(name, roller.id);
            Press moved = before;
            Roller& r = rollerOf(moved, roller.id);
            r.y = Entry<Kind::Length>(Length::si(r.y->si() + 0.010), "mm");
            const physics::WebPath is = pathFor(moved, "main", 0.5, *before.printFeed);
            CHECK(std::abs(is.length().si() - was.length().si()) > 1e-5);
            double drawn = 0;
            for (const physics::PathSpan& s : is.spans)
                drawn += std::hypot(s.x2.si() - s.x1.si(), s.y2.si() - s.y1.si());
            for (const physics::PathArc& a : is.arcs) drawn += a.length.si();
            CHECK(drawn == Approx(is.length().si()).epsilon(1e-12));
        }
    }
}

TEST_CASE("the rewind is as large as its core and turns as it winds")
{
    Press press = demoPress("north");
    const physics::WebPath over = pathFor(press, "main", 0.5, Feed::Over);
    CHECK(over.rollers.back().diameter.si() == Approx(0.0762 + 2 * 0.013));
    CHECK_FALSE(over.rollers.back().counterClockwise);
    press.rewinds[0].winds = {Feed::Under};
    CHECK(pathFor(press, "main", 0.5, Feed::Over).rollers.back().counterClockwise);
    const Press south = demoPress("south");
    const physics::WebPath lane = pathFor(south, "lane 2", 0.5, Feed::Under);
    CHECK(lane.rollers.front().id == "slitter");
    CHECK(lane.rollers.back().counterClockwise);
    CHECK(lane.rollers.back().diameter.si() == Approx(4 * 0.0254));
}

TEST_CASE("what a path misses is named by its key, and only for the path that misses it")
{
    struct Row {
        std::string what, path, key;
        std::function<void(Press&)> cut;
    };
    const std::vector<Row> rows{
        {"no rollers", "main", "press.web.roller", [](Press& p) { p.rollers.clear(); }},
        {"place", "main", "press.web.roller.die.at", [](Press& p) { rollerOf(p, "die").y.reset(); }},
        {"diameter", "main", "press.web.roller.dancer.diameter",
         [](Press& p) { rollerOf(p, "dancer").diameter.reset(); }},
        {"turn", "main", "press.web.roller.infeed.turn",
         [](Press& p) { rollerOf(p, "infeed").counterClockwise.reset(); }},
        {"grips", "main", "press.rewind.rewind_1.grips", [](Press& p) { p.rewinds[0].mandrel.gripsMost.reset(); }},
        {"wall", "lane 2", "press.rewind.rewind_2.core_wall", [](Press& p) { p.rewinds[1].coreWall.reset(); }},
        {"winds", "waste", "press.rewind.waste.winds", [](Press& p) { p.rewinds[2].winds.clear(); }},
        {"leaves", "lane 2", "press.web.roller.cell 2.leaves", [](Press& p) { rollerOf(p, "cell 2").leaves.clear(); }},
    };
    for (const Row& row : rows) {
        CAPTURE(row.what);
        Press press = demoPress("south");
        row.cut(press);
        const auto path = pathOf(press, row.path, Length::si(0.5), Feed::Under);
        REQUIRE_FALSE(path);
        CHECK(path.error().code == "press.web.needs");
        CHECK(path.error().subject == row.key);
        CHECK_FALSE(path.error().remedy.empty());
        CHECK_FALSE(pathsOf(press, Length::si(0.5), Feed::Under));
        for (const std::string& other : pathNames(press))
            if (other != row.path && row.path != "main") CHECK(pathOf(press, other, Length::si(0.5), Feed::Under));
    }
    const auto noRoll = pathOf(demoPress("south"), "main", std::nullopt, Feed::Under);
    REQUIRE_FALSE(noRoll);
    CHECK(noRoll.error().subject == "roll.outer_diameter");
    CHECK(pathOf(demoPress("south"), "waste", std::nullopt, Feed::Under));
}

TEST_CASE("a web that goes straight up is fed over as the whole press runs")
{
    Press press = demoPress("north");
    Roller& unwind = rollerOf(press, "unwind");
    unwind.x = rollerOf(press, "table entry").x;
    unwind.y = Entry<Kind::Length>(Length::si(-0.6), "mm");
    CHECK_FALSE(pathFor(press, "main", 0.3, Feed::Over).rollers.front().counterClockwise);
}
