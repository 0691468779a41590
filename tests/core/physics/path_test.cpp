// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/path.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <random>

#include "core/physics/domain.h"
#include "tests/core/physics/layouts.h"

using namespace taut;
using namespace taut::physics;

namespace {

Approx near(double v) { return Approx(v).epsilon(1e-12).margin(1e-13); }
double deg(double radians) { return radians * 180 / kPi; }

void checkRefused(const std::vector<RollerPlace>& rollers, std::string_view code, std::string_view subject,
                  const std::vector<std::string>& names)
{
    const auto path = webPath(rollers);
    REQUIRE_FALSE(path);
    const Finding& why = path.error();
    CHECK(why.code == code);
    CHECK(why.subject == subject);
    CHECK_FALSE(why.remedy.empty());
    for (const std::string& name : names) {
        CAPTURE(name);
        CHECK(std::find(why.text.args.begin(), why.text.args.end(), TextArg(name)) != why.text.args.end());
        CHECK(std::find(why.remedy.args.begin(), why.remedy.args.end(), TextArg(name)) != why.remedy.args.end());
    }
}

/// Every span must touch both its rollers squarely and run along their surface motion.
void checkTangents(const WebPath& path)
{
    for (std::size_t i = 0; i < path.spans.size(); ++i) {
        const PathSpan& s = path.spans[i];
        const double dx = s.x2.si() - s.x1.si();
        const double dy = s.y2.si() - s.y1.si();
        const double size = std::hypot(dx, dy);
        CHECK(s.length.si() - path.rollers[i].extra.si() == Approx(size).margin(1e-9));
        const auto touches = [&](const RollerPlace& r, double x, double y) {
            const double rx = x - r.x.si();
            const double ry = y - r.y.si();
            const double radius = r.diameter.si() / 2;
            CHECK(std::hypot(rx, ry) == Approx(radius).margin(1e-9));
            CHECK(std::abs(rx * dx + ry * dy) / (radius * size) < 1e-9);
            const double motion = (r.counterClockwise ? 1 : -1) * (rx * dy - ry * dx);
            CHECK(motion > 0);
        };
        touches(path.rollers[i], s.x1.si(), s.y1.si());
        touches(path.rollers[i + 1], s.x2.si(), s.y2.si());
        CHECK(s.crossed == (path.rollers[i].counterClockwise != path.rollers[i + 1].counterClockwise));
    }
}

/// Each arc begins where the span before it ends and carries the web to where the next one begins.
void checkArcs(const WebPath& path)
{
    REQUIRE(path.arcs.size() == path.rollers.size());
    for (std::size_t i = 1; i + 1 < path.rollers.size(); ++i) {
        const RollerPlace& r = path.rollers[i];
        const PathArc& arc = path.arcs[i];
        const double radius = r.diameter.si() / 2;
        const double end = arc.startAngle + (r.counterClockwise ? arc.wrap : -arc.wrap);
        CHECK(r.x.si() + radius * std::cos(arc.startAngle) == Approx(path.spans[i - 1].x2.si()).margin(1e-9));
        CHECK(r.y.si() + radius * std::sin(arc.startAngle) == Approx(path.spans[i - 1].y2.si()).margin(1e-9));
        CHECK(r.x.si() + radius * std::cos(end) == Approx(path.spans[i].x1.si()).margin(1e-9));
        CHECK(r.y.si() + radius * std::sin(end) == Approx(path.spans[i].y1.si()).margin(1e-9));
        CHECK(arc.length.si() == near(radius * arc.wrap));
    }
    CHECK(path.arcs.front().wrap == 0);
    CHECK(path.arcs.back().wrap == 0);
}

std::vector<RollerPlace> moved(std::vector<RollerPlace> rollers, double turn, double dx, double dy, bool mirror)
{
    for (RollerPlace& r : rollers) {
        const double x = mirror ? -r.x.si() : r.x.si();
        const double y = r.y.si();
        r.x = Length::si(x * std::cos(turn) - y * std::sin(turn) + dx);
        r.y = Length::si(x * std::sin(turn) + y * std::cos(turn) + dy);
        if (mirror) r.counterClockwise = !r.counterClockwise;
    }
    return rollers;
}

}  // namespace

TEST_CASE("a web over three equal rollers in a row has the lengths of the drawing board")
{
    // Over two tops and down the far side of the second.
    const std::vector<RollerPlace> rollers{roller("a", 0, 0, 100, "cw"), roller("b", 500, 0, 100, "cw"),
                                           roller("c", 500, -500, 100, "cw")};
    const auto path = webPath(rollers);
    REQUIRE(path);
    CHECK(path->spans[0].length.si() == near(0.5));
    CHECK(path->spans[1].length.si() == near(0.5));
    CHECK(deg(path->arcs[1].wrap) == near(90));
    CHECK(path->arcs[1].length.si() == near(0.1 * kPi / 4));
    CHECK(path->length().si() == near(1 + 0.1 * kPi / 4));
    CHECK(path->spans[0].y1.si() == near(0.05));
    CHECK(path->spans[1].x1.si() == near(0.55));
    CHECK(deg(path->arcs[1].startAngle) == near(90));
}

TEST_CASE("the same circles turning the other way are threaded on their other side")
{
    const auto under = webPath(std::vector<RollerPlace>{roller("a", 0, 0, 100, "ccw"), roller("b", 500, 0, 100, "ccw"),
                                                        roller("c", 500, 500, 100, "ccw")});
    REQUIRE(under);
    CHECK(under->spans[0].y1.si() == near(-0.05));
    CHECK(deg(under->arcs[1].wrap) == near(90));
    const auto leftwards = webPath(std::vector<RollerPlace>{
        roller("a", 0, 0, 100, "ccw"), roller("b", -500, 0, 100, "ccw"), roller("c", -500, -500, 100, "ccw")});
    REQUIRE(leftwards);
    CHECK(leftwards->spans[0].y1.si() == near(0.05));
    CHECK(deg(leftwards->arcs[1].wrap) == near(90));
}

TEST_CASE("rollers turning opposite ways are joined by the crossed tangent")
{
    const auto path = webPath(std::vector<RollerPlace>{roller("a", 0, 0, 100, "cw"), roller("b", 500, 0, 60, "ccw")});
    REQUIRE(path);
    CHECK(path->spans[0].crossed);
    CHECK(path->spans[0].length.si() == near(std::sqrt(0.25 - 0.08 * 0.08)));
    CHECK(path->spans[0].y1.si() > 0);
    CHECK(path->spans[0].y2.si() < 0);
    checkTangents(*path);
}

TEST_CASE("both example presses are threaded with plausible wraps at every roll size")
{
    for (double unwind : {102.2, 500.0, 1000.0})
        for (double rewind : {102.2, 600.0}) {
            CAPTURE(unwind, rewind);
            const auto path = webPath(leftToRight(unwind, rewind));
            REQUIRE(path);
            checkTangents(*path);
            checkArcs(*path);
            for (std::size_t i = 1; i + 1 < path->arcs.size(); ++i) {
                CAPTURE(path->arcs[i].roller, deg(path->arcs[i].wrap));
                CHECK(deg(path->arcs[i].wrap) > 5);
                CHECK(deg(path->arcs[i].wrap) < 180);
            }
        }
    for (double unwind : {4.0, 20.0, 40.0})
        for (double rewind : {4.0, 20.0})
            for (Lane lane : {Lane::First, Lane::Second, Lane::Waste}) {
                CAPTURE(unwind, rewind, static_cast<int>(lane));
                const auto path = webPath(rightToLeft(unwind, rewind, lane));
                REQUIRE(path);
                checkTangents(*path);
                checkArcs(*path);
                for (std::size_t i = 1; i + 1 < path->arcs.size(); ++i) {
                    CAPTURE(path->arcs[i].roller, deg(path->arcs[i].wrap));
                    CHECK(deg(path->arcs[i].wrap) > 5);
                    CHECK(deg(path->arcs[i].wrap) < 180);
                }
            }
}

TEST_CASE("the level spans of an example press have their drawn lengths")
{
    const auto path = webPath(leftToRight(500, 102.2));
    REQUIRE(path);
    CHECK(path->spanAfter("table entry")->length.si() == near(0.7));
    CHECK(path->spanAfter("guide entry")->length.si() == near(0.3));
    CHECK(deg(path->arc("table exit")->wrap) == near(90));
    CHECK(path->spanAfter("rewind") == nullptr);
    CHECK(path->arc("nowhere") == nullptr);
}

TEST_CASE("moving, turning or mirroring the whole press changes no length")
{
    for (const auto& layout : {leftToRight(500, 300), rightToLeft(20, 10, Lane::Second)}) {
        const auto path = webPath(layout);
        REQUIRE(path);
        for (bool mirror : {false, true})
            for (double turn : {0.0, 0.7, 2.5, -1.3}) {
                const auto other = webPath(moved(layout, turn, 12.5, -3.75, mirror));
                REQUIRE(other);
                CHECK(other->length().si() == Approx(path->length().si()).epsilon(1e-12));
                for (std::size_t i = 0; i < path->spans.size(); ++i)
                    CHECK(other->spans[i].length.si() == Approx(path->spans[i].length.si()).margin(1e-11));
                for (std::size_t i = 0; i < path->arcs.size(); ++i)
                    CHECK(other->arcs[i].wrap == Approx(path->arcs[i].wrap).margin(1e-10));
            }
    }
}

TEST_CASE("one roller moved by ten millimetres changes the length as its two spans do")
{
    // By geometry of its own: tangents sqrt(C^2 - q^2), wraps from the change of their directions.
    const auto before = leftToRight(500, 300);
    auto after = before;
    after[5].y = after[5].y + Length::si(0.010);
    const auto a = webPath(before);
    const auto b = webPath(after);
    REQUIRE(a);
    REQUIRE(b);
    const auto direction = [](const RollerPlace& p, const RollerPlace& q) {
        const double dx = q.x.si() - p.x.si();
        const double dy = q.y.si() - p.y.si();
        const double offset =
            (p.counterClockwise ? 1 : -1) * p.diameter.si() / 2 - (q.counterClockwise ? 1 : -1) * q.diameter.si() / 2;
        return std::atan2(dy, dx) + std::asin(offset / std::hypot(dx, dy));
    };
    const auto tangent = [](const RollerPlace& p, const RollerPlace& q) {
        const double c = std::hypot(q.x.si() - p.x.si(), q.y.si() - p.y.si());
        const double offset = p.counterClockwise == q.counterClockwise ? (p.diameter - q.diameter).si() / 2
                                                                       : (p.diameter + q.diameter).si() / 2;
        return std::sqrt(c * c - offset * offset);
    };
    const auto byHand = [&](const std::vector<RollerPlace>& r) {
        double sum = 0;
        for (std::size_t i = 3; i <= 6; ++i) sum += tangent(r[i], r[i + 1]);
        for (std::size_t i = 4; i <= 6; ++i) {
            const double turned = direction(r[i], r[i + 1]) - direction(r[i - 1], r[i]);
            sum += r[i].diameter.si() / 2 * std::abs(std::remainder(turned, 2 * kPi));
        }
        return sum;
    };
    const double change = b->length().si() - a->length().si();
    CHECK(std::abs(change) > 1e-3);
    CHECK(change == Approx(byHand(after) - byHand(before)).margin(1e-11));
}

TEST_CASE("the length between two rollers counts the web from leaving one to meeting the other")
{
    const auto path = webPath(leftToRight(500, 300));
    REQUIRE(path);
    const double direct = path->spanAfter("table entry")->length.si();
    CHECK(path->between("table entry", "table exit")->si() == near(direct));
    CHECK(path->between("table entry", "guide entry")->si() ==
          near(direct + path->arc("table exit")->length.si() + path->spanAfter("table exit")->length.si()));
    CHECK(path->between("unwind", "rewind")->si() == near(path->length().si()));
    const double parts = path->between("unwind", "infeed")->si() + path->arc("infeed")->length.si() +
                         path->between("infeed", "rewind")->si();
    CHECK(parts == near(path->length().si()));
    CHECK(path->between("infeed", "infeed")->si() == 0);
    CHECK_FALSE(path->between("infeed", "unwind"));
    CHECK_FALSE(path->between("infeed", "nowhere"));
    CHECK_FALSE(path->between("nowhere", "infeed"));
}

TEST_CASE("web outside the drawn plane lengthens its span and nothing else")
{
    auto layout = leftToRight(500, 300);
    const double plain = webPath(layout)->length().si();
    layout[5].extra = Length::si(0.9);
    const auto path = webPath(layout);
    REQUIRE(path);
    CHECK(path->length().si() == near(plain + 0.9));
    CHECK(path->spanAfter("turn up")->length.si() == near(webPath(leftToRight(500, 300))->spans[5].length.si() + 0.9));
    layout[5].extra = Length::si(-0.1);
    checkRefused(layout, "path.bad_extra", "turn up", {"turn up"});
}

TEST_CASE("a path that cannot be threaded is refused by the roller's name")
{
    auto layout = leftToRight(500, 300);
    SECTION("fewer than two rollers")
    {
        CHECK(webPath({}).error().code == "path.too_few");
        CHECK(webPath(std::vector<RollerPlace>{layout[0]}).error().code == "path.too_few");
    }
    SECTION("no diameter")
    {
        for (double diameter : {0.0, -80.0, std::nan("")}) {
            layout[3].diameter = Length::si(diameter);
            checkRefused(layout, "path.bad_diameter", "guide entry", {"guide entry"});
        }
    }
    SECTION("neighbours overlap")
    {
        layout[0].diameter = Length::si(1.5);
        checkRefused(layout, "path.rollers_touch", "unwind", {"unwind", "table entry"});
    }
    SECTION("rollers far apart on the web overlap")
    {
        layout[11].x = layout[6].x;
        layout[11].y = layout[6].y + Length::si(0.1);
        checkRefused(layout, "path.rollers_touch", "infeed", {"infeed", "outfeed"});
    }
    SECTION("the turn is wrong")
    {
        layout[6].counterClockwise = !layout[6].counterClockwise;
        checkRefused(layout, "path.wrap_too_large", "infeed", {"infeed"});
    }
    SECTION("a roll hangs under, too large for the web to reach the next roller's lower side")
    {
        layout[0].diameter = Length::si(1.0);
        layout[0].counterClockwise = true;
        checkRefused(layout, "path.wrap_too_large", "table entry", {"table entry"});
        layout[0].diameter = Length::si(0.5);
        CHECK(webPath(layout));
    }
    SECTION("no place")
    {
        layout[4].x = Length::si(std::nan(""));
        checkRefused(layout, "path.no_tangent", "guide entry", {"guide entry", "guide exit"});
    }
}

TEST_CASE("a web may go around a roller by up to three hundred degrees")
{
    // In along the top of b, and away towards c, which stands by that angle clockwise around b.
    const auto around = [](double degrees) {
        const double angle = -degrees * kPi / 180;
        return webPath(
            std::vector<RollerPlace>{roller("a", -3000, 0, 100, "cw"), roller("b", 0, 0, 100, "cw"),
                                     roller("c", 1000 * std::cos(angle), 1000 * std::sin(angle), 100, "cw")});
    };
    for (double degrees : {0.0, 90.0, 170.0, 240.0, 299.0}) {
        CAPTURE(degrees);
        const auto path = around(degrees);
        REQUIRE(path);
        CHECK(deg(path->arc("b")->wrap) == near(degrees));
    }
    const auto far = around(301);
    REQUIRE_FALSE(far);
    CHECK(far.error().code == "path.wrap_too_large");
    CHECK(far.error().subject == "b");
}

TEST_CASE("a span through a third roller names the span and the roller")
{
    const std::vector<RollerPlace> rollers{roller("a", 0, 0, 100, "cw"), roller("b", 1000, 0, 100, "cw"),
                                           roller("c", 1000, -300, 100, "cw"),
                                           roller("in the way", 500, 100, 160, "cw")};
    checkRefused(rollers, "path.hits_roller", "in the way", {"a", "b", "in the way"});
    auto clear = rollers;
    clear[3].y = Length::si(0.130 + 1e-6);
    CHECK(webPath(clear));
    clear[3].y = Length::si(0.130);
    CHECK(webPath(clear));
    clear[3].y = Length::si(0.130 - 5e-10);
    CHECK(webPath(clear));
    clear[3].y = Length::si(0.130 - 1e-6);
    CHECK_FALSE(webPath(clear));
    // The web out of the plane passes in front.
    clear[0].extra = Length::si(0.5);
    CHECK(webPath(clear));
}

TEST_CASE("nip rollers that just touch can be threaded, and a web that grazes a roller does not wrap it")
{
    const std::vector<RollerPlace> nip{roller("a", -500, 50, 100, "ccw"), roller("lower", 0, 0, 100, "cw"),
                                       roller("upper", 0, 100, 100, "ccw"), roller("b", 500, 50, 100, "cw")};
    const auto path = webPath(nip);
    REQUIRE(path);
    CHECK(path->spanAfter("lower")->length.si() == Approx(0).margin(1e-9));
    auto pressed = nip;
    pressed[2].y = Length::si(0.1 - 5e-10);
    CHECK(webPath(pressed));
    pressed[2].y = Length::si(0.1 - 5e-9);
    CHECK_FALSE(webPath(pressed));
    const std::vector<RollerPlace> level{roller("a", 0, 0, 100, "cw"), roller("graze", 400.1, 20, 60, "cw"),
                                         roller("b", 1000, 0, 100, "cw")};
    const auto grazing = webPath(level);
    REQUIRE(grazing);
    CHECK(grazing->arc("graze")->wrap == Approx(0).margin(1e-9));
}

TEST_CASE("random layouts obey the geometry of tangents")
{
    std::mt19937 random(41);
    std::uniform_real_distribution<double> place(0.0, 6.0);
    std::uniform_real_distribution<double> diameter(0.04, 0.4);
    std::bernoulli_distribution ccw(0.5);
    int threaded = 0;
    for (int n = 0; n < 3000; ++n) {
        std::vector<RollerPlace> rollers;
        for (int i = 0; i < 5; ++i)
            rollers.push_back({"r" + std::to_string(i), Length::si(place(random)), Length::si(place(random)),
                               Length::si(diameter(random)), ccw(random), Length{}});
        const auto path = webPath(rollers);
        if (!path) {
            const std::string& code = path.error().code;
            REQUIRE((code == "path.rollers_touch" || code == "path.wrap_too_large" || code == "path.hits_roller"));
            continue;
        }
        ++threaded;
        checkTangents(*path);
        checkArcs(*path);
        // Each centre lies one radius from the web, so the way between centres is at most the web's plus both radii.
        double centres = 0;
        double radii = 0;
        for (std::size_t i = 0; i + 1 < rollers.size(); ++i) {
            const RollerPlace& a = rollers[i];
            const RollerPlace& b = rollers[i + 1];
            centres += std::hypot(b.x.si() - a.x.si(), b.y.si() - a.y.si());
            radii += (a.diameter.si() + b.diameter.si()) / 2;
        }
        CHECK(path->length().si() >= centres - radii);
        CHECK(path->length().si() <= centres + radii * kPi * 2);
    }
    CHECK(threaded > 100);
}
