// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drawing/chart.h"

#include <algorithm>
#include <cmath>

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>

#include "app/drawing/chart_labels.h"
#include "app/text/language.h"
#include "app/text/words.h"
#include "core/units/format.h"
#include "core/units/unit.h"

namespace taut::app {

namespace {

using report::Chart;

constexpr double kSpotSide = 5;  // half of a mark, in units

/// The unit of an axis is that of its largest value.
void chooseUnit(ChartAxis& axis, const std::vector<Quantity>& values, UnitSystem system)
{
    const Quantity* largest = nullptr;
    for (const Quantity& q : values)
        if (!largest || std::abs(q.si()) > std::abs(largest->si())) largest = &q;
    if (!largest) return;
    const Unit& unit = shownUnit(*largest, unitsFor(system));
    axis.unit = unit.symbol;
    axis.toSi = unit.toSi;
}

void spread(ChartAxis& axis, const std::vector<Quantity>& values, bool fromZero, int wanted)
{
    double low = fromZero ? 0 : 1e300, high = fromZero ? 0 : -1e300;
    for (const Quantity& q : values) {
        low = std::min(low, axis.of(q));
        high = std::max(high, axis.of(q));
    }
    if (low > high) low = 0, high = 1;
    if (low == high) high = low + (low == 0 ? 1 : std::abs(low) * 0.1);
    axis.steps = roundSteps(low, high, wanted);
    axis.from = std::min(low, axis.steps.front());
    axis.to = std::max(high, axis.steps.back());
}

double widest(const ChartAxis& axis, const QFontMetricsF& metrics)
{
    double width = 0;
    for (const double v : axis.steps) width = std::max(width, metrics.horizontalAdvance(numberText(v)));
    return width;
}

QString axisTitle(const Text& name, const ChartAxis& axis, UnitSystem system)
{
    QString said = words(name, system);
    if (axis.unit.empty() || axis.unit == "1") return said;
    return QCoreApplication::translate("drawing", "%1 (%2)").arg(said, unitText(axis.unit));
}

QPen linePen(std::size_t index, const Look& look)
{
    QPen pen(look.palette.ink, 2.2 * look.unit, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin);
    if (index % 4 == 1) pen.setDashPattern({5, 2.5});
    if (index % 4 == 2) pen.setDashPattern({1.4, 2});
    if (index % 4 == 3) pen.setDashPattern({6, 2, 1.4, 2});
    return pen;
}

void paintAxes(QPainter& painter, const QRectF& box, const Chart& chart, const ChartFrame& f, UnitSystem system,
               const Look& look)
{
    const double u = look.unit;
    painter.setFont(look.font);
    for (const double v : f.y.steps) {
        const double y = f.y.at(v);
        painter.setPen(QPen(look.palette.rule, 0.5 * u));
        painter.drawLine(QPointF(f.plot.left(), y), QPointF(f.plot.right(), y));
        painter.setPen(look.palette.ink);
        painter.drawText(QRectF(box.left(), y - f.line / 2, f.plot.left() - box.left() - 6 * u, f.line),
                         Qt::AlignRight | Qt::AlignVCenter | Qt::TextDontClip, numberText(v));
    }
    const QFontMetricsF metrics(look.font);
    for (const double v : f.x.steps) {
        const double x = f.x.at(v), width = metrics.horizontalAdvance(numberText(v));
        painter.setPen(QPen(look.palette.ink, 1.2 * u));
        painter.drawLine(QPointF(x, f.plot.bottom()), QPointF(x, f.plot.bottom() + 4 * u));
        const double left = std::min(x - width / 2, box.right() - width);
        painter.drawText(QRectF(left, f.plot.bottom() + 5 * u, width, f.line), Qt::AlignLeft | Qt::TextDontClip,
                         numberText(v));
    }
    painter.setPen(QPen(look.palette.ink, 1.4 * u));
    painter.drawLine(f.plot.bottomLeft(), f.plot.bottomRight());
    painter.drawLine(f.plot.bottomLeft(), f.plot.topLeft());
    painter.drawText(QRectF(f.plot.left(), f.plot.bottom() + 5 * u + f.line, f.plot.width(), f.line),
                     Qt::AlignHCenter | Qt::TextDontClip, axisTitle(chart.xName, f.x, system));
    painter.drawText(QRectF(box.left(), box.top(), box.width(), f.line), Qt::AlignLeft | Qt::TextDontClip,
                     axisTitle(chart.yName, f.y, system));
}

void paintBand(QPainter& painter, const Chart::Band& band, const ChartFrame& f, const Look& look)
{
    const double low = f.y.at(band.low), high = f.y.at(band.high);
    painter.fillRect(QRectF(f.plot.left(), high, f.plot.width(), low - high), look.palette.wash);
    painter.setPen(QPen(look.palette.ink, 0.9 * look.unit, Qt::DotLine));
    for (const double y : {low, high}) painter.drawLine(QPointF(f.plot.left(), y), QPointF(f.plot.right(), y));
}

void paintSpot(QPainter& painter, Chart::What what, QPointF at, const Look& look)
{
    const double u = look.unit, side = kSpotSide * u;
    switch (what) {
    case Chart::What::Now:
        painter.setPen(QPen(look.palette.accent, 2.6 * u));
        painter.drawLine(at - QPointF(1.4 * side, 0), at + QPointF(1.4 * side, 0));
        painter.drawLine(at - QPointF(0, 1.4 * side), at + QPointF(0, 1.4 * side));
        return;
    case Chart::What::Change:
        painter.setPen(QPen(look.palette.ink, 1.3 * u));
        painter.setBrush(look.palette.ground);
        painter.drawPolygon(
            QPolygonF({at - QPointF(0, side), at + QPointF(side, 0), at + QPointF(0, side), at - QPointF(side, 0)}));
        break;
    case Chart::What::Leaves:
        painter.setPen(QPen(look.palette.ink, 1.3 * u));
        painter.setBrush(look.palette.ink);
        painter.drawPolygon(QPolygonF({at + QPointF(0, side), at + QPointF(side, -side), at + QPointF(-side, -side)}));
        break;
    }
    painter.setBrush(Qt::NoBrush);
}

/// The names of lines, limits, window and spots; of each kind of spot only the first is named.
void paintNames(QPainter& painter, const Chart& chart, const ChartFrame& f, UnitSystem system, const Look& look)
{
    const double u = look.unit;
    ChartLabels labels(f.plot.adjusted(u, 0, -u, -u), look);
    for (const double v : f.y.steps) labels.avoidGrid(QLineF(f.plot.left(), f.y.at(v), f.plot.right(), f.y.at(v)));
    std::vector<std::vector<QPointF>> lines;
    for (const Chart::Line& line : chart.lines) {
        lines.emplace_back();
        for (const auto& [x, y] : line.points) lines.back().emplace_back(f.x.at(x), f.y.at(y));
        for (std::size_t i = 1; i < lines.back().size(); ++i)
            labels.avoid(QLineF(lines.back()[i - 1], lines.back()[i]));
    }
    const auto across = [&](const Quantity& at) {
        return QLineF(f.plot.left(), f.y.at(at), f.plot.right(), f.y.at(at));
    };
    for (const Chart::Level& level : chart.levels) labels.avoid(across(level.at));
    if (chart.band)
        for (const Quantity& edge : {chart.band->low, chart.band->high}) labels.avoid(across(edge));
    for (const Chart::Spot& spot : chart.spots) {
        const QPointF at(f.x.at(spot.x), f.y.at(spot.y));
        const double side = kSpotSide * u;
        labels.avoid(QRectF(at - QPointF(side, side), at + QPointF(side, side)));
    }
    for (std::size_t i = 0; i < lines.size(); ++i)
        if (!chart.lines[i].name.empty()) {
            std::vector<QPointF> some;
            for (std::size_t k = 0; k < lines[i].size(); k += 3)
                some.push_back(lines[i][(k + lines[i].size() / 3) % lines[i].size()]);
            labels.addAlong(words(chart.lines[i].name, system), some);
        }
    std::vector<Chart::What> named;
    for (const Chart::Spot& spot : chart.spots) {
        if (std::find(named.begin(), named.end(), spot.what) != named.end()) continue;
        named.push_back(spot.what);
        labels.addBeside(words(spot.name, system), {f.x.at(spot.x), f.y.at(spot.y)}, (kSpotSide + 1.5) * u,
                         spot.what == Chart::What::Now);
    }
    const auto along = [&](double y) {
        std::vector<QPointF> points;
        for (const double share : {0.02, 0.5, 0.98, 0.25, 0.75})
            points.emplace_back(f.plot.left() + share * f.plot.width(), y);
        return points;
    };
    for (const Chart::Level& level : chart.levels) labels.addAlong(words(level.name, system), along(f.y.at(level.at)));
    if (chart.band) labels.addAlong(words(chart.band->name, system), along(f.y.at(chart.band->low)));
    labels.paint(painter);
}

}  // namespace

std::vector<double> roundSteps(double from, double to, int wanted)
{
    const double raw = (to - from) / wanted, power = std::pow(10, std::floor(std::log10(raw)));
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

ChartFrame chartFrame(const QRectF& box, const Chart& chart, UnitSystem system, const Look& look)
{
    constexpr int kFewest = 2, kMost = 6;
    std::vector<Quantity> xs, ys;
    const auto add = [&](const Quantity& x, const Quantity& y) {
        xs.push_back(x);
        ys.push_back(y);
    };
    for (const Chart::Line& line : chart.lines)
        for (const auto& [x, y] : line.points) add(x, y);
    for (const Chart::Spot& spot : chart.spots) add(spot.x, spot.y);
    for (const Chart::Level& level : chart.levels) ys.push_back(level.at);
    if (chart.band) ys.push_back(chart.band->high);
    ChartFrame f;
    chooseUnit(f.x, xs, system);
    chooseUnit(f.y, ys, system);
    const QFontMetricsF metrics(look.font);
    const double u = look.unit;
    f.line = metrics.height();
    f.plot = box.adjusted(0, f.line * 1.5, 0, -(2 * f.line + 6 * u));
    const int down = std::clamp(static_cast<int>(f.plot.height() / (1.7 * f.line)), kFewest, kMost);
    spread(f.y, ys, true, down);
    f.plot.setLeft(box.left() + widest(f.y, metrics) + 10 * u);
    // First as many steps as there may be, then as many as their figures leave room for.
    spread(f.x, xs, false, kMost);
    const double figure = widest(f.x, metrics);
    f.plot.setRight(box.right() - figure / 2);
    const int beside = std::clamp(static_cast<int>(f.plot.width() / (1.5 * figure)), kFewest, kMost);
    if (beside < kMost) spread(f.x, xs, false, beside);
    f.x.start = f.plot.left();
    f.x.end = f.plot.right();
    f.y.start = f.plot.bottom();
    f.y.end = f.plot.top();
    return f;
}

void paintChart(QPainter& painter, const QRectF& box, const Chart& chart, UnitSystem system, const Look& look)
{
    if (chart.lines.empty()) return;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const double u = look.unit;
    const ChartFrame f = chartFrame(box, chart, system, look);
    if (chart.band) paintBand(painter, *chart.band, f, look);
    paintAxes(painter, box, chart, f, system, look);
    for (const Chart::Level& level : chart.levels) {
        painter.setPen(QPen(look.palette.ink, 1.6 * u, Qt::DashDotLine));
        painter.drawLine(QPointF(f.plot.left(), f.y.at(level.at)), QPointF(f.plot.right(), f.y.at(level.at)));
    }
    for (std::size_t i = 0; i < chart.lines.size(); ++i) {
        QPolygonF points;
        for (const auto& [x, y] : chart.lines[i].points) points << QPointF(f.x.at(x), f.y.at(y));
        painter.setPen(linePen(i, look));
        painter.drawPolyline(points);
    }
    for (const Chart::Spot& spot : chart.spots) paintSpot(painter, spot.what, {f.x.at(spot.x), f.y.at(spot.y)}, look);
    paintNames(painter, chart, f, system, look);
    painter.restore();
}

QSizeF chartSize(const Look& look)
{
    const QFontMetricsF metrics(look.font);
    return {30 * metrics.averageCharWidth(), 11 * metrics.height()};
}

QString chartInWords(const Chart& chart, UnitSystem system)
{
    QStringList all;
    for (const Text& sentence : chart.summary) all << words(sentence, system);
    return all.join(QLatin1Char(' '));
}

}  // namespace taut::app
