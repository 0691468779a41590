// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <string>

#include <QImage>
#include <QPainter>

#include "app/drawing/elevation.h"
#include "core/base/file.h"
#include "core/inputs/inputs.h"

using namespace taut;
using namespace taut::app;

namespace {

const Look kPaper{paperPalette(), appFont(12), 1.0};

inputs::Press pressOf(const char* name)
{
    const auto file =
        std::filesystem::path(TAUTWEB_SOURCE_DIR) / "resources" / "presses" / (std::string(name) + ".toml");
    const auto text = readFile(file);
    REQUIRE(text);
    Findings notes;
    const auto press = inputs::readPress(*text, name, notes);
    REQUIRE(press);
    return *press;
}

ElevationView viewOf(const inputs::Press& press, inputs::Feed feed = inputs::Feed::Over)
{
    ElevationView view = elevationOf(press, Length::si(0.5), feed);
    REQUIRE_FALSE(view.paths.empty());
    view.threaded = {{"", ""}};
    view.sidePathsThreaded = true;
    return view;
}

QImage painted(const ElevationView& view, QSize size)
{
    QImage image(size, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    paintElevation(painter, image.rect(), view, kPaper);
    return image;
}

int differing(const QImage& a, const QImage& b)
{
    int count = 0;
    for (int y = 0; y < a.height(); ++y)
        for (int x = 0; x < a.width(); ++x)
            if (std::abs(qGray(a.pixel(x, y)) - qGray(b.pixel(x, y))) > 60) ++count;
    return count;
}

}  // namespace

TEST_CASE("a roller moved by ten millimetres moves the painted web by ten millimetres")
{
    inputs::Press press = pressOf("north");
    const ElevationView before = viewOf(press);
    auto roller = std::find_if(press.rollers.begin(), press.rollers.end(),
                               [](const inputs::Roller& r) { return r.id == "guide entry"; });
    REQUIRE(roller != press.rollers.end());
    REQUIRE(roller->y);
    roller->y = Entry<Kind::Length>(Length::si(roller->y->si() + 0.010));
    const ElevationView after = viewOf(press);

    const ElevationScale scale{1000, QPointF(0, 0)};  // a point for a millimetre
    const auto top = [&](const ElevationView& view) {
        const QPolygonF line = webLine(view.paths.front().path, scale);
        const auto* place = view.paths.front().path.spanAfter("guide entry");
        REQUIRE(place);
        double y = 1e9;
        for (const QPointF& p : line)
            if (std::abs(p.x() - place->x1.si() * 1000) < 1.0) y = std::min(y, p.y());
        return y;
    };
    CHECK(top(before) - top(after) == Approx(10.0).margin(0.05));
    CHECK(differing(painted(before, {1400, 500}), painted(after, {1400, 500})) > 20);
}

TEST_CASE("the painted web is as long as the path that the targets read")
{
    for (const char* name : {"north", "south"}) {
        const ElevationView view =
            viewOf(pressOf(name), name == std::string("south") ? inputs::Feed::Under : inputs::Feed::Over);
        const physics::WebPath& path = view.paths.front().path;
        const QPolygonF line = webLine(path, {1.0, QPointF(0, 0)});
        double length = 0;
        for (qsizetype i = 1; i < line.size(); ++i) {
            const QPointF d = line[i] - line[i - 1];
            length += std::hypot(d.x(), d.y());
        }
        double extra = 0;
        for (const physics::RollerPlace& r : path.rollers) extra += r.extra.si();
        CAPTURE(name);
        // Arcs are drawn as chords of at most 0.1 rad.
        CHECK(length == Approx(path.length().si() - extra).epsilon(0.001));
    }
}

TEST_CASE("the drawing keeps to its rectangle and to one scale, whichever way the web runs")
{
    for (const char* name : {"north", "south"}) {
        const ElevationView view =
            viewOf(pressOf(name), name == std::string("south") ? inputs::Feed::Under : inputs::Feed::Over);
        for (const QRectF box : {QRectF(0, 0, 340, 160), QRectF(20, 30, 900, 300), QRectF(0, 0, 300, 600)}) {
            const ElevationScale scale = elevationScale(view, box, kPaper);
            for (const inputs::NamedPath& named : view.paths)
                for (const QPointF& p : webLine(named.path, scale)) CHECK(box.contains(p));
        }
        const auto& rollers = view.paths.front().path.rollers;
        const bool right = rollers.back().x > rollers.front().x;
        CHECK(elevationInWords(view).contains(right ? QStringLiteral("right") : QStringLiteral("left")));
    }
}

TEST_CASE("what is not threaded is dashed")
{
    ElevationView view = viewOf(pressOf("north"));
    const QImage threaded = painted(view, {900, 300});
    view.threaded.clear();
    const QImage dashed = painted(view, {900, 300});
    view.threaded = {{view.spliceAfter, ""}};
    const QImage half = painted(view, {900, 300});
    const auto ink = [](const QImage& image) {
        int count = 0;
        for (int y = 0; y < image.height(); ++y)
            for (int x = 0; x < image.width(); ++x) count += qGray(image.pixel(x, y)) < 100;
        return count;
    };
    CHECK(ink(threaded) > ink(half));
    CHECK(ink(half) > ink(dashed));
}

TEST_CASE("the place where one stands is marked, at a roller, the lift, the table and the whole press")
{
    ElevationView view = viewOf(pressOf("north"));
    const QImage nowhere = painted(view, {900, 300});
    for (const char* at : {"outfeed", "lift", "splice_table", "press"}) {
        view.lit = at;
        CAPTURE(at);
        CHECK(differing(nowhere, painted(view, {900, 300})) > 100);
    }
}

TEST_CASE("the control to touch is named where one stands, also at the panel that the profile does not place")
{
    ElevationView view = viewOf(pressOf("north"));
    CHECK(standInWords(view).isEmpty());
    view.touch = QStringLiteral("LIFT +");
    view.lit = "lift";
    CHECK(standInWords(view) == QStringLiteral("here: LIFT +"));
    view.touch.clear();
    CHECK(standInWords(view) == QStringLiteral("here"));

    view.lit = "panel";
    CHECK(standInWords(view) == QStringLiteral("At the control panel"));
    const QImage unnamed = painted(view, {900, 300});
    view.touch = QStringLiteral("BRAKE");
    CHECK(standInWords(view) == QStringLiteral("At the control panel: BRAKE"));
    CHECK(differing(unnamed, painted(view, {900, 300})) > 100);

    view.lit = "disconnect";
    view.touch = QStringLiteral("Q1");
    CHECK(standInWords(view) == QStringLiteral("At the main disconnect: Q1"));
}

TEST_CASE("the web of the zone that is set is drawn heavier, there and nowhere else")
{
    for (const char* name : {"north", "south"}) {
        const inputs::Press press = pressOf(name);
        ElevationView view = viewOf(press, name == std::string("south") ? inputs::Feed::Under : inputs::Feed::Over);
        view.lit = "panel";
        const QSize size(900, 300);
        const QImage without = painted(view, size);
        const ElevationScale scale = elevationScale(view, QRectF(QPointF(0, 0), size), kPaper);
        double lowest = 0;
        for (const inputs::NamedPath& named : view.paths)
            for (const QPointF& p : webLine(named.path, scale)) lowest = std::max(lowest, p.y());
        for (const inputs::Zone& zone : press.zones) {
            CAPTURE(name, zone.id);
            view.zone = {zone.from, zone.to};
            view.zoneName = QString::fromStdString(zone.name);
            CHECK(standInWords(view).endsWith(view.zoneName));
            const QImage with = painted(view, size);
            // Above the flag, what differs lies between the ends of the zone.
            const auto* from = std::find_if(press.rollers.data(), press.rollers.data() + press.rollers.size(),
                                            [&](const inputs::Roller& r) { return r.id == zone.from; });
            const auto* to = std::find_if(press.rollers.data(), press.rollers.data() + press.rollers.size(),
                                          [&](const inputs::Roller& r) { return r.id == zone.to; });
            REQUIRE(from->x);
            REQUIRE(to->x);
            int inside = 0, outside = 0;
            const double one = scale.at(from->x->si(), 0).x(), two = scale.at(to->x->si(), 0).x();
            const double slack = 0.5 * scale.perMetre;  // the largest roll stands round its middle
            for (int y = 0; y < static_cast<int>(lowest); ++y)
                for (int x = 0; x < size.width(); ++x)
                    if (without.pixel(x, y) != with.pixel(x, y))
                        ++(x > std::min(one, two) - slack && x < std::max(one, two) + slack ? inside : outside);
            CHECK(inside > 50);
            CHECK(outside == 0);
        }
    }
}

TEST_CASE("a profile without rollers says so instead of a drawing")
{
    inputs::Press press = pressOf("north");
    press.rollers.clear();
    const ElevationView view = elevationOf(press, std::nullopt, inputs::Feed::Over);
    CHECK(view.paths.empty());
    CHECK(elevationInWords(view).contains(QStringLiteral("no roller")));
    CHECK(differing(painted(view, {300, 100}), QImage(painted({}, {300, 100}))) == 0);
}
