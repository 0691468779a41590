// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include <QPainter>

#include "app/drawing/chart.h"
#include "app/drawing/control_figure.h"
#include "app/drawing/elevation.h"
#include "app/print/qr.h"
#include "app/print/sections.h"
#include "app/text/words.h"

namespace taut::app::print {

namespace {

constexpr double kChartHeight = 36;      // mm
constexpr double kControlHeight = 62;    // mm
constexpr double kElevationHeight = 54;  // mm at most
constexpr double kElevationLeast = 45;   // mm however short room is: lower, nobody can follow the web through it
constexpr double kTightShare = 0.6;      // of its height that a drawing keeps when room is short

double roomFor(const Type& type, double millimetres)
{
    return type.mm(millimetres) * (1 - type.tightness() * (1 - kTightShare));
}

}  // namespace

std::vector<Strip> strips(Type& type, const report::Elevation& elevation, double width)
{
    const ElevationView view = elevationOf(elevation);
    const Look look = type.look(kSmall);
    const double room = std::max(roomFor(type, kElevationHeight), type.mm(kElevationLeast));
    const double height = std::min(elevationHeight(view, width, look), room);
    Strip strip;
    strip.height = height;
    strip.draw = [=](QPainter& painter, QPointF at) {
        paintElevation(painter, QRectF(at, QSizeF(width, height)), view, look);
    };
    return {std::move(strip)};
}

std::vector<Strip> strips(Type& type, const report::Chart& chart, double width)
{
    const Look look = type.look(kSmall);
    const UnitSystem system = type.system();
    const double height = roomFor(type, kChartHeight), drawn = std::min(width, type.mm(120));
    Strip strip;
    strip.name = words(chart.caption, system);
    const SetText caption = type.set(strip.name, type.font(kFact, true), width);
    if (caption.width > width + 1) type.tooLarge(strip.name);
    strip.height = caption.height + height;
    strip.draw = [=](QPainter& painter, QPointF at) {
        caption.draw(painter, at);
        paintChart(painter, QRectF(at + QPointF(0, caption.height), QSizeF(drawn, height)), chart, system, look);
    };
    return {std::move(strip)};
}

std::vector<Strip> strips(Type& type, const report::ControlFigure& figure, double width)
{
    const Look look = type.look(kSmall);
    const UnitSystem system = type.system();
    const double height = type.mm(kControlHeight);
    Strip strip;
    strip.name = words(figure.caption, system);
    const SetText caption = type.set(strip.name, type.font(kFact, true), width);
    if (caption.width > width + 1) type.tooLarge(strip.name);
    strip.height = caption.height + height;
    strip.draw = [=](QPainter& painter, QPointF at) {
        caption.draw(painter, at);
        paintControlFigure(painter, QRectF(at + QPointF(0, caption.height), QSizeF(width, height)), figure, system,
                           look);
    };
    return {std::move(strip)};
}

std::vector<Strip> strips(Type& type, const report::Bars& bars, double width)
{
    const Look look = type.look(kFact);
    const UnitSystem system = type.system();
    std::vector<Strip> all;
    if (!bars.caption.empty()) {
        Strip strip;
        strip.name = words(bars.caption, system);
        const SetText caption = type.set(strip.name, type.font(kFact, true), width);
        strip.height = caption.height + type.mm(1);
        strip.withNext = true;
        strip.draw = [=](QPainter& painter, QPointF at) { caption.draw(painter, at); };
        all.push_back(std::move(strip));
    }
    Strip strip;
    strip.name = words(bars.caption, system);
    strip.height = barsHeight(bars, width, system, look);
    const double height = strip.height;
    strip.draw = [=](QPainter& painter, QPointF at) {
        paintBars(painter, QRectF(at, QSizeF(width, height)), bars, system, look);
    };
    all.push_back(std::move(strip));
    return all;
}

std::vector<Strip> strips(Type& type, const report::QrText& qr, double width)
{
    const QrModules modules = qrModules(qr.content);
    Strip strip;
    strip.name = words(qr.caption, type.system());
    if (modules.side == 0) {
        type.tooLarge(strip.name);
        return {std::move(strip)};
    }
    const SetText caption = type.set(strip.name, type.font(kSmall), width, Qt::AlignRight);
    // Modules of whole device pixels, a quiet zone of four, at the right edge.
    constexpr double kQuiet = 4;
    const double side = std::min(width, type.mm(30));
    const double module = std::max(1.0, std::floor(side / (static_cast<double>(modules.side) + 2 * kQuiet)));
    const double whole = module * (static_cast<double>(modules.side) + 2 * kQuiet);
    const double left = width - whole;
    strip.height = whole + caption.height;
    strip.draw = [=](QPainter& painter, QPointF at) {
        const QPointF origin(std::floor(at.x() + left) + kQuiet * module, std::floor(at.y()) + kQuiet * module);
        painter.setRenderHint(QPainter::Antialiasing, false);
        for (std::size_t y = 0; y < modules.side; ++y)
            for (std::size_t x = 0; x < modules.side; ++x)
                if (modules.at(x, y))
                    painter.fillRect(QRectF(origin.x() + static_cast<double>(x) * module,
                                            origin.y() + static_cast<double>(y) * module, module, module),
                                     Qt::black);
        painter.setRenderHint(QPainter::Antialiasing, true);
        caption.draw(painter, at + QPointF(0, whole));
    };
    return {std::move(strip)};
}

}  // namespace taut::app::print
