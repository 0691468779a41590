// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drawing/chart_labels.h"

#include <algorithm>

#include <QFontMetricsF>
#include <QPainter>

namespace taut::app {

namespace {

/// Whether any of a line lies in a rectangle (Liang and Barsky's clipping).
bool crosses(const QLineF& line, const QRectF& rect)
{
    double from = 0, to = 1;
    const double dx = line.dx(), dy = line.dy();
    const double p[] = {-dx, dx, -dy, dy};
    const double q[] = {line.x1() - rect.left(), rect.right() - line.x1(), line.y1() - rect.top(),
                        rect.bottom() - line.y1()};
    for (int i = 0; i < 4; ++i) {
        if (p[i] == 0) {
            if (q[i] < 0) return false;
            continue;
        }
        const double t = q[i] / p[i];
        if (p[i] < 0)
            from = std::max(from, t);
        else
            to = std::min(to, t);
    }
    return from <= to;
}

}  // namespace

ChartLabels::ChartLabels(QRectF bounds, Look look) : m_bounds(bounds), m_look(std::move(look)) {}

void ChartLabels::avoid(const QLineF& line) { m_lines.push_back(line); }

void ChartLabels::avoidGrid(const QLineF& line) { m_grid.push_back(line); }

void ChartLabels::avoid(const QRectF& rect) { m_rects.push_back(rect); }

QSizeF ChartLabels::sizeOf(const QString& text, bool strong) const
{
    const QFontMetricsF metrics(scaled(m_look.font, 1.0, strong));
    return {metrics.horizontalAdvance(text) + m_look.unit, metrics.height()};
}

void ChartLabels::place(const QString& text, bool strong, const std::vector<QRectF>& candidates)
{
    constexpr int kOverGrid = 1, kOverLine = 4, kOverWords = 40, kOutside = 120;
    int best = -1, least = 0;
    for (int i = 0; i < static_cast<int>(candidates.size()); ++i) {
        const QRectF& rect = candidates[static_cast<std::size_t>(i)];
        int cost = m_bounds.contains(rect) ? 0 : kOutside;
        for (const QRectF& other : m_rects)
            if (other.intersects(rect)) cost += kOverWords;
        for (const QLineF& line : m_lines)
            if (crosses(line, rect)) cost += kOverLine;
        const QRectF letters = rect.adjusted(0, rect.height() * 0.2, 0, -rect.height() * 0.2);
        for (const QLineF& line : m_grid)
            if (crosses(line, letters)) cost += kOverGrid;
        if (best < 0 || cost < least) {
            best = i;
            least = cost;
        }
        if (least == 0) break;
    }
    // Rather no word than two that cover each other: the sentences of the chart say it too.
    if (best < 0 || least >= kOverWords) return;
    const QRectF rect = candidates[static_cast<std::size_t>(best)];
    m_placed.push_back({text, rect, strong, least > 0});
    m_rects.push_back(rect);
}

void ChartLabels::addBeside(const QString& text, QPointF point, double away, bool strong)
{
    const QSizeF size = sizeOf(text, strong);
    std::vector<QRectF> candidates;
    const double middle = point.y() - size.height() / 2;
    for (const double far : {1.0, 2.0, 3.5}) {
        const double gap = away * far;
        const double left = point.x() - size.width() - gap, right = point.x() + gap;
        const double above = point.y() - size.height() - gap, below = point.y() + gap;
        for (const QPointF at :
             {QPointF(right, above), QPointF(left, above), QPointF(right, below), QPointF(left, below),
              QPointF(right, middle), QPointF(left, middle), QPointF(point.x() - size.width() / 2, above),
              QPointF(point.x() - size.width() / 2, below)})
            candidates.emplace_back(at, size);
    }
    place(text, strong, candidates);
}

void ChartLabels::addAlong(const QString& text, const std::vector<QPointF>& line)
{
    const QSizeF size = sizeOf(text, false);
    std::vector<QRectF> candidates;
    for (const double far : {2.0, 6.0, 12.0})
        for (const QPointF& point : line) {
            const double gap = far * m_look.unit;
            for (const double x : {point.x() - size.width() / 2, point.x(), point.x() - size.width()}) {
                candidates.emplace_back(QPointF(x, point.y() - size.height() - gap), size);
                candidates.emplace_back(QPointF(x, point.y() + gap), size);
            }
        }
    place(text, false, candidates);
}

void ChartLabels::paint(QPainter& painter) const
{
    // Words that could find no free room are still to be read.
    for (const Placed& label : m_placed)
        if (label.crowded) painter.fillRect(label.rect, m_look.palette.ground);
    for (const Placed& label : m_placed) {
        painter.setFont(scaled(m_look.font, 1.0, label.strong));
        painter.setPen(m_look.palette.ink);
        painter.drawText(label.rect, Qt::AlignCenter | Qt::TextDontClip, label.text);
    }
}

std::vector<QRectF> ChartLabels::places() const
{
    std::vector<QRectF> all;
    for (const Placed& label : m_placed) all.push_back(label.rect);
    return all;
}

}  // namespace taut::app
