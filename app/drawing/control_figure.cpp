// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drawing/control_figure.h"

#include <algorithm>
#include <cmath>

#include <QCoreApplication>
#include <QFontInfo>
#include <QFontMetricsF>
#include <QPainter>

#include "app/text/language.h"
#include "app/text/words.h"
#include "core/units/format.h"
#include "core/units/unit.h"

namespace taut::app {

namespace {

using report::ControlFigure;

/// The unit in which the largest of all is said, and a scale with room for all of them.
ChartAxis axisOf(const ControlFigure& figure, UnitSystem system, int wanted)
{
    std::vector<Quantity> all;
    for (const ControlFigure::Dot& dot : figure.dots) all.push_back(dot.y);
    for (const ControlFigure::Phase& phase : figure.phases)
        for (const auto& end : {phase.low, phase.high, phase.centre})
            if (end) all.push_back(*end);
    ChartAxis axis;
    if (all.empty()) return axis;
    const auto bySize = [](const Quantity& a, const Quantity& b) { return std::abs(a.si()) < std::abs(b.si()); };
    const Unit& unit = shownUnit(*std::max_element(all.begin(), all.end(), bySize), unitsFor(system));
    axis.unit = unit.symbol;
    axis.toSi = unit.toSi;
    double low = axis.of(all.front()), high = low;
    for (const Quantity& q : all) {
        low = std::min(low, axis.of(q));
        high = std::max(high, axis.of(q));
    }
    constexpr double kRoom = 0.06, kFlat = 0.05;
    const double spread = high > low ? (high - low) * kRoom : std::max(std::abs(low) * kFlat, 1e-6);
    axis.steps = roundSteps(low - spread, high + spread, wanted);
    for (double& v : axis.steps) v = std::round(v * 1e9) / 1e9;  // 0.30000000000000004 is 0.3
    axis.from = low - spread;
    axis.to = high + spread;
    std::erase_if(axis.steps, [&](double v) { return v < axis.from || v > axis.to; });
    return axis;
}

void paintPhase(QPainter& painter, const ControlFrame& f, const ControlFigure::Phase& phase, const Look& look)
{
    const double u = look.unit;
    const double half = f.dots > 1 ? f.plot.width() / static_cast<double>(f.dots - 1) / 2 : f.plot.width() / 2;
    const double left = std::max(f.plot.left(), f.x(phase.begin) - half);
    const double right = std::min(f.plot.right(), f.x(phase.end - 1) + half);
    const auto rule = [&](double value, double width, Qt::PenStyle style, const QColor& colour) {
        painter.setPen(QPen(colour, width * u, style, Qt::FlatCap));
        painter.drawLine(QPointF(left, f.y.at(value)), QPointF(right, f.y.at(value)));
    };
    if (phase.centre) rule(f.y.of(*phase.centre), 1.4, Qt::SolidLine, look.palette.ink);
    if (phase.centre && phase.sigma)
        for (const int zone : {-2, -1, 1, 2}) {
            const double value = f.y.of(*phase.centre) + zone * f.y.of(*phase.sigma);
            if (value > f.y.from && value < f.y.to) rule(value, 0.7, Qt::DotLine, look.palette.rule);
        }
    for (const auto& end : {phase.low, phase.high})
        if (end) rule(f.y.of(*end), 1.6, Qt::DashLine, look.palette.ink);
    if (phase.begin > 0) {
        painter.setPen(QPen(look.palette.ink, 1.2 * u, Qt::DashDotLine));
        painter.drawLine(QPointF(left, f.plot.top()), QPointF(left, f.plot.bottom()));
    }
}

void paintDot(QPainter& painter, QPointF at, const ControlFigure::Dot& dot, double side, const Look& look)
{
    const double u = look.unit;
    painter.setPen(QPen(look.palette.ink, 1.2 * u));
    if (dot.outside) {
        painter.setBrush(dot.signal ? look.palette.ink : look.palette.sheet);
        const double s = side * 1.3;
        painter.drawPolygon(QPolygonF({at - QPointF(0, s), at + QPointF(s, s), at + QPointF(-s, s)}));
    } else if (dot.signal) {
        painter.setBrush(look.palette.ink);
        const double s = side * 1.4;
        painter.drawPolygon(
            QPolygonF({at - QPointF(0, s), at + QPointF(s, 0), at + QPointF(0, s), at - QPointF(s, 0)}));
    } else {
        painter.setBrush(look.palette.sheet);
        painter.drawEllipse(at, side, side);
    }
}

/// The line through all dots; where they are closer than a device's fine lines, what lies between their extremes.
void paintLine(QPainter& painter, const ControlFrame& f, const ControlFigure& figure, const Look& look)
{
    painter.setPen(QPen(look.palette.soft, 0.9 * look.unit));
    for (const ControlFigure::Phase& phase : figure.phases) {
        QPolygonF line;
        for (std::size_t i = phase.begin; i < phase.end; ++i) line << f.at(i, figure.dots[i].y);
        painter.drawPolyline(line);
    }
}

/// Days below some of the dots, as many as stand beside each other.
void paintDays(QPainter& painter, const ControlFrame& f, const ControlFigure& figure, const Look& look)
{
    const QFontMetricsF metrics(look.font);
    const double width = metrics.horizontalAdvance(QStringLiteral("0000-00-00"));
    double free = f.plot.left() - width;
    painter.setPen(look.palette.ink);
    painter.setFont(look.font);
    for (std::size_t i = 0; i < figure.dots.size(); ++i) {
        if (figure.dots[i].day.empty()) continue;
        const double left =
            std::clamp(f.x(i) - width / 2, f.plot.left(), std::max(f.plot.left(), f.plot.right() - width));
        if (left < free || (i > 0 && figure.dots[i].day == figure.dots[i - 1].day)) continue;
        painter.drawLine(QPointF(f.x(i), f.plot.bottom()), QPointF(f.x(i), f.plot.bottom() + 4 * look.unit));
        painter.drawText(QRectF(left, f.plot.bottom() + 5 * look.unit, width, f.line),
                         Qt::AlignHCenter | Qt::TextDontClip, dataText(figure.dots[i].day));
        free = left + width * 1.6;
    }
}

/// A name that is longer than its room is set smaller rather than cut.
QFont fitting(QFont font, const QString& name, double room)
{
    const double wide = QFontMetricsF(font).horizontalAdvance(name);
    if (wide > room && room > 0)
        font.setPixelSize(std::max(1, static_cast<int>(QFontInfo(font).pixelSize() * room / wide)));
    return font;
}

void paintNames(QPainter& painter, const ControlFrame& f, const ControlFigure& figure, UnitSystem system,
                const Look& look)
{
    const QFont font = scaled(look.font, 0.92);
    const QFontMetricsF metrics(font);
    painter.setFont(font);
    painter.setPen(look.palette.ink);
    for (const ControlFigure::Phase& phase : figure.phases) {
        if (phase.name.empty()) continue;
        // A phase alone has the whole width, however few its readings.
        const bool alone = figure.phases.size() == 1;
        const double left = alone ? f.plot.left() : f.x(phase.begin);
        const double room = alone ? f.plot.width() : f.x(phase.end - 1) - left;
        const QString name = words(phase.name, system);
        if (!alone && metrics.horizontalAdvance(name) > room) continue;
        painter.setFont(fitting(font, name, room));
        painter.drawText(QRectF(left, f.plot.top() - f.line, std::max(room, 1.0), f.line),
                         Qt::AlignLeft | Qt::TextDontClip, name);
    }
}

}  // namespace

double ControlFrame::x(std::size_t dot) const
{
    if (dots < 2) return plot.center().x();
    return plot.left() + plot.width() * static_cast<double>(dot) / static_cast<double>(dots - 1);
}

std::optional<std::size_t> ControlFrame::dotAt(double at) const
{
    if (dots == 0) return std::nullopt;
    if (dots == 1) return 0;
    const double share = std::clamp((at - plot.left()) / plot.width(), 0.0, 1.0);
    return static_cast<std::size_t>(std::lround(share * static_cast<double>(dots - 1)));
}

ControlFrame controlFrame(const QRectF& box, const ControlFigure& figure, UnitSystem system, const Look& look)
{
    constexpr int kFewest = 2, kMost = 7;
    ControlFrame f;
    const QFontMetricsF metrics(look.font);
    const double u = look.unit;
    f.line = metrics.height();
    f.dots = figure.dots.size();
    // Above: what is measured, then the names of phases. Below: days.
    f.plot = box.adjusted(0, 2.3 * f.line, -6 * u, -(f.line + 8 * u));
    f.y = axisOf(figure, system, std::clamp(static_cast<int>(f.plot.height() / (1.9 * f.line)), kFewest, kMost));
    double widest = 0;
    for (const double v : f.y.steps) widest = std::max(widest, metrics.horizontalAdvance(numberText(v)));
    f.plot.setLeft(box.left() + widest + 10 * u);
    f.y.start = f.plot.bottom();
    f.y.end = f.plot.top();
    return f;
}

void paintControlFigure(QPainter& painter, const QRectF& box, const ControlFigure& figure, UnitSystem system,
                        const Look& look, std::optional<std::size_t> chosen)
{
    if (figure.dots.empty()) return;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const double u = look.unit;
    const ControlFrame f = controlFrame(box, figure, system, look);
    painter.setFont(look.font);
    for (const double v : f.y.steps) {
        painter.setPen(QPen(look.palette.ink, 1.0 * u));
        painter.drawLine(QPointF(f.plot.left() - 4 * u, f.y.at(v)), QPointF(f.plot.left(), f.y.at(v)));
        painter.drawText(QRectF(box.left(), f.y.at(v) - f.line / 2, f.plot.left() - box.left() - 6 * u, f.line),
                         Qt::AlignRight | Qt::AlignVCenter | Qt::TextDontClip, numberText(v));
    }
    painter.setPen(QPen(look.palette.ink, 1.4 * u));
    painter.drawLine(f.plot.bottomLeft(), f.plot.topLeft());
    painter.drawLine(f.plot.bottomLeft(), f.plot.bottomRight());
    QString name = words(figure.yName, system);
    if (!f.y.unit.empty() && f.y.unit != "1")
        name = QCoreApplication::translate("drawing", "%1 (%2)").arg(name, unitText(f.y.unit));
    painter.setFont(fitting(look.font, name, box.width()));
    painter.drawText(QRectF(box.left(), box.top(), box.width(), f.line), Qt::AlignLeft | Qt::TextDontClip, name);
    painter.setFont(look.font);
    if (figure.since && *figure.since < figure.dots.size()) {
        const double left = f.x(*figure.since);
        painter.fillRect(QRectF(left, f.plot.top(), f.plot.right() - left, f.plot.height()), look.palette.wash);
    }
    for (const ControlFigure::Phase& phase : figure.phases) paintPhase(painter, f, phase, look);
    paintLine(painter, f, figure, look);
    const double apart = f.dots > 1 ? f.plot.width() / static_cast<double>(f.dots - 1) : f.plot.width();
    const double side = std::clamp(apart / 3, 1.2 * u, 3.4 * u);
    for (std::size_t i = 0; i < figure.dots.size(); ++i)
        paintDot(painter, f.at(i, figure.dots[i].y), figure.dots[i], side, look);
    if (chosen && *chosen < figure.dots.size()) {
        painter.setPen(QPen(look.palette.accent, 2.4 * u));
        painter.setBrush(Qt::NoBrush);
        painter.drawEllipse(f.at(*chosen, figure.dots[*chosen].y), side + 5 * u, side + 5 * u);
    }
    paintNames(painter, f, figure, system, look);
    paintDays(painter, f, figure, look);
    painter.restore();
}

QSizeF controlFigureSize(const Look& look)
{
    const QFontMetricsF metrics(look.font);
    return {44 * metrics.averageCharWidth(), 13 * metrics.height()};
}

}  // namespace taut::app
