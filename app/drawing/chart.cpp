// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drawing/chart.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <tuple>

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>
#include <QPainterPath>

#include "app/text/words.h"
#include "core/units/unit.h"

namespace taut::app {

namespace {

/// All numbers of an axis in one unit: that of its largest value.
struct AxisUnit {
    std::string symbol;
    double toSi = 1;
    [[nodiscard]] double of(const Quantity& q) const { return q.si() / toSi; }
};

AxisUnit axisUnit(const std::vector<Quantity>& values, UnitSystem system)
{
    const Quantity* largest = nullptr;
    for (const Quantity& q : values)
        if (!largest || std::abs(q.si()) > std::abs(largest->si())) largest = &q;
    if (!largest) return {};
    const Unit* unit = largest->unit().empty() ? nullptr : findUnit(largest->kind(), largest->unit());
    if (!unit || !(system == UnitSystem::Metric ? unit->metric : unit->us))
        unit = &usualUnit(largest->kind(), system, largest->si());
    return {std::string(unit->symbol), unit->toSi};
}

QString axisTitle(const Text& name, const AxisUnit& unit, UnitSystem system)
{
    const QString words_ = words(name, system);
    if (unit.symbol.empty() || unit.symbol == "1") return words_;
    return QCoreApplication::translate("drawing", "%1 (%2)").arg(words_, unitText(unit.symbol));
}

QPen linePen(std::size_t index, const Look& look)
{
    QPen pen(look.palette.ink, 2.2 * look.unit, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin);
    if (index % 4 == 1) pen.setDashPattern({5, 2.5});
    if (index % 4 == 2) pen.setDashPattern({1.4, 2});
    if (index % 4 == 3) pen.setDashPattern({6, 2, 1.4, 2});
    return pen;
}

struct ChartFrame {
    AxisUnit xUnit, yUnit;
    AxisScale x, y;
    QRectF plot;
    double line = 0;
};

ChartFrame frameOf(const QRectF& box, const report::Chart& chart, UnitSystem system, const Look& look)
{
    std::vector<Quantity> xs, ys = chart.limits;
    for (const auto& l : chart.lines)
        for (const auto& [x, y] : l.points) {
            xs.push_back(x);
            ys.push_back(y);
        }
    if (chart.now) {
        xs.push_back(chart.now->first);
        ys.push_back(chart.now->second);
    }
    ChartFrame f;
    f.xUnit = axisUnit(xs, system);
    f.yUnit = axisUnit(ys, system);
    const auto spread = [](const std::vector<Quantity>& values, const AxisUnit& unit, bool fromZero) {
        double low = fromZero ? 0 : 1e300, high = fromZero ? 0 : -1e300;
        for (const Quantity& q : values) {
            low = std::min(low, unit.of(q));
            high = std::max(high, unit.of(q));
        }
        if (low > high) low = 0, high = 1;
        if (low == high) high = low + (low == 0 ? 1 : std::abs(low) * 0.1);
        const std::vector<double> steps = roundSteps(low, high);
        return std::pair(std::min(low, steps.front()), std::max(high, steps.back()));
    };
    std::tie(f.x.from, f.x.to) = spread(xs, f.xUnit, false);
    std::tie(f.y.from, f.y.to) = spread(ys, f.yUnit, true);
    const QFontMetricsF metrics(scaled(look.font, 0.86));
    f.line = metrics.height();
    double left = 0;
    for (const double v : roundSteps(f.y.from, f.y.to)) left = std::max(left, metrics.horizontalAdvance(numberText(v)));
    double right = 0;
    for (const auto& l : chart.lines) right = std::max(right, metrics.horizontalAdvance(words(l.name, system)));
    const double u = look.unit;
    f.plot = box.adjusted(left + 12 * u, f.line * 1.3 + 2 * u, -(right + 12 * u), -(2.2 * f.line + 8 * u));
    f.x.start = f.plot.left();
    f.x.end = f.plot.right();
    f.y.start = f.plot.bottom();
    f.y.end = f.plot.top();
    return f;
}

void paintAxes(QPainter& painter, const QRectF& box, const report::Chart& chart, const ChartFrame& f, UnitSystem system,
               const Look& look)
{
    const double u = look.unit;
    QColor faint = look.palette.rule;
    painter.setFont(scaled(look.font, 0.86));
    for (const double v : roundSteps(f.y.from, f.y.to)) {
        const double y = f.y.at(v);
        painter.setPen(QPen(faint, 0.6 * u));
        painter.drawLine(QPointF(f.plot.left(), y), QPointF(f.plot.right(), y));
        painter.setPen(look.palette.ink);
        painter.drawText(QRectF(box.left(), y - f.line / 2, f.plot.left() - box.left() - 6 * u, f.line),
                         Qt::AlignRight | Qt::AlignVCenter, numberText(v));
    }
    for (const double v : roundSteps(f.x.from, f.x.to)) {
        const double x = f.x.at(v);
        painter.setPen(QPen(look.palette.ink, 1.2 * u));
        painter.drawLine(QPointF(x, f.plot.bottom()), QPointF(x, f.plot.bottom() + 4 * u));
        painter.drawText(QRectF(x - 60 * u, f.plot.bottom() + 5 * u, 120 * u, f.line), Qt::AlignHCenter, numberText(v));
    }
    painter.setPen(QPen(look.palette.ink, 1.4 * u));
    painter.drawLine(f.plot.bottomLeft(), f.plot.bottomRight());
    painter.drawLine(f.plot.bottomLeft(), f.plot.topLeft());
    painter.drawText(QRectF(f.plot.left(), f.plot.bottom() + 6 * u + f.line, f.plot.width(), f.line), Qt::AlignHCenter,
                     axisTitle(chart.xName, f.xUnit, system));
    painter.drawText(QRectF(box.left(), box.top(), box.width(), f.line), Qt::AlignLeft,
                     axisTitle(chart.yName, f.yUnit, system));
}

}  // namespace

std::vector<double> roundSteps(double from, double to)
{
    const double raw = (to - from) / 5, power = std::pow(10, std::floor(std::log10(raw)));
    double step = power;
    for (const double f : {1.0, 2.0, 2.5, 5.0, 10.0})
        if (power * f >= raw * 0.999) {
            step = power * f;
            break;
        }
    std::vector<double> steps;
    const double first = std::floor(from / step + 1e-9);
    for (double i = first; i * step <= to + step * (1 - 1e-9); ++i) {
        steps.push_back(i * step == 0 ? 0 : i * step);
        if (i * step >= to - step * 1e-9) break;
    }
    return steps;
}

void paintChart(QPainter& painter, const QRectF& box, const report::Chart& chart, UnitSystem system, const Look& look)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const double u = look.unit;
    const ChartFrame f = frameOf(box, chart, system, look);
    paintAxes(painter, box, chart, f, system, look);
    for (const Quantity& limit : chart.limits) {
        const double y = f.y.at(f.yUnit.of(limit));
        painter.setPen(QPen(look.palette.outside, 1.6 * u, Qt::DashDotLine));
        painter.drawLine(QPointF(f.plot.left(), y), QPointF(f.plot.right(), y));
    }
    double lastLabel = -1e9;
    for (std::size_t i = 0; i < chart.lines.size(); ++i) {
        QPolygonF points;
        for (const auto& [x, y] : chart.lines[i].points)
            points << QPointF(f.x.at(f.xUnit.of(x)), f.y.at(f.yUnit.of(y)));
        if (points.isEmpty()) continue;
        painter.setPen(linePen(i, look));
        painter.drawPolyline(points);
        const QPointF* end = &points.front();
        for (const QPointF& p : points)
            if (p.x() > end->x()) end = &p;
        // Labels stand at the right ends and give way downwards to each other.
        double y = end->y() - f.line / 2;
        if (std::abs(y - lastLabel) < f.line) y = lastLabel + f.line;
        lastLabel = y;
        painter.setPen(look.palette.ink);
        painter.drawText(QPointF(end->x() + 6 * u, y + f.line * 0.78), words(chart.lines[i].name, system));
    }
    if (chart.now) {
        const QPointF at(f.x.at(f.xUnit.of(chart.now->first)), f.y.at(f.yUnit.of(chart.now->second)));
        painter.setPen(QPen(look.palette.accent, 2.6 * u));
        painter.drawLine(at - QPointF(7 * u, 0), at + QPointF(7 * u, 0));
        painter.drawLine(at - QPointF(0, 7 * u), at + QPointF(0, 7 * u));
        painter.setFont(scaled(look.font, 0.9, true));
        painter.setPen(look.palette.accent);
        const QString now = QCoreApplication::translate("drawing", "now");
        const double width = QFontMetricsF(painter.font()).horizontalAdvance(now);
        // At the right edge of the drawing the word stands on the other side of the cross.
        const bool right = at.x() + 9 * u + width <= box.right();
        painter.drawText(at + QPointF(right ? 9 * u : -9 * u - width, -6 * u), now);
    }
    painter.restore();
}

}  // namespace taut::app
