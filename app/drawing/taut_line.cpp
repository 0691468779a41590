// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drawing/taut_line.h"

#include <algorithm>
#include <cmath>

#include <QFontMetricsF>
#include <QPainter>
#include <QPainterPath>

namespace taut::app {

namespace {

constexpr double kWebRoom = 46;     // in look.unit: from the top to the words
constexpr double kLowWebRoom = 42;  // the same above one line of words
constexpr double kTop = 16;         // room for a knot above the web
constexpr double kSag = 24;
constexpr double kRoller = 8;
constexpr double kMarker = 4;  // under the shown span

struct SpanGeometry {
    QPointF from, to;  // tops of the two rollers
    double unit = 1;
};

/// A web that hangs: a catenary between the two rollers, `depth` low in the middle.
QPainterPath hanging(const SpanGeometry& g, double depth)
{
    constexpr double kShape = 1.5;
    constexpr int kPieces = 48;
    QPainterPath path(g.from);
    for (int i = 1; i <= kPieces; ++i) {
        const double t = static_cast<double>(i) / kPieces;
        const double drop = (std::cosh(kShape) - std::cosh(kShape * (2 * t - 1))) / (std::cosh(kShape) - 1);
        path.lineTo(g.from + (g.to - g.from) * t + QPointF(0, depth * drop));
    }
    return path;
}

void paintPulled(QPainter& painter, const SpanGeometry& g, const Look& look)
{
    const double u = g.unit, depth = 5 * u;
    painter.setPen(QPen(look.palette.accent, 3 * u, Qt::SolidLine, Qt::RoundCap));
    painter.drawPath(hanging(g, depth));
    // Chevrons before the roller that pulls.
    QPen pen(look.palette.accent, 2.4 * u, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin);
    painter.setPen(pen);
    for (int i = 0; i < 3; ++i) {
        const QPointF tip = g.to + QPointF(-(20.0 + 11.0 * i) * u, -9 * u);
        painter.drawPolyline(QPolygonF{tip + QPointF(-6 * u, -5 * u), tip, tip + QPointF(-6 * u, 5 * u)});
    }
}

void paintParted(QPainter& painter, const SpanGeometry& g, const Look& look)
{
    const double u = g.unit, w = g.to.x() - g.from.x();
    painter.setPen(QPen(look.palette.ink, 3 * u, Qt::SolidLine, Qt::RoundCap));
    for (const bool left : {true, false}) {
        const double way = left ? 1 : -1;
        const QPointF start = left ? g.from : g.to, end = start + QPointF(way * w * 0.30, kSag * 0.72 * u);
        QPainterPath path(start);
        path.cubicTo(start + QPointF(way * w * 0.16, 0), end + QPointF(0, -kSag * u * 0.7), end);
        painter.drawPath(path);
        // The torn edge.
        painter.drawLine(end, end + QPointF(-4 * u, 5 * u));
        painter.drawLine(end, end + QPointF(0.5 * u, 6.5 * u));
        painter.drawLine(end, end + QPointF(5 * u, 4 * u));
    }
}

void paintKnot(QPainter& painter, const QPointF& c, double u, const Look& look)
{
    painter.setPen(QPen(look.palette.ground, 9 * u));
    painter.drawLine(c - QPointF(3 * u, 0), c + QPointF(3 * u, 0));
    painter.setPen(QPen(look.palette.ink, 4 * u, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    QPainterPath path(c - QPointF(16 * u, 0));
    path.cubicTo(c + QPointF(14 * u, 0), c + QPointF(15 * u, -13 * u), c + QPointF(0, -13 * u));
    path.cubicTo(c + QPointF(-15 * u, -13 * u), c + QPointF(-14 * u, 0), c + QPointF(16 * u, 0));
    painter.drawPath(path);
    painter.drawLine(c + QPointF(-2 * u, 1 * u), c + QPointF(-9 * u, 11 * u));
    painter.drawLine(c + QPointF(2 * u, 1 * u), c + QPointF(9 * u, 11 * u));
}

void paintWeb(QPainter& painter, const SpanGeometry& g, const TautSpan& span, const Look& look)
{
    const double u = g.unit;
    painter.setBrush(Qt::NoBrush);
    switch (span.state) {
    case run::StageState::NotBegun:
        painter.setPen(QPen(look.palette.rule, 1.6 * u, Qt::SolidLine, Qt::RoundCap));
        painter.drawPath(hanging(g, kSag * u));
        break;
    case run::StageState::InWork: paintPulled(painter, g, look); break;
    case run::StageState::Done:
    case run::StageState::DoneWithDeviation:
        painter.setPen(QPen(look.palette.ink, 5 * u, Qt::SolidLine, Qt::FlatCap));
        // The knot is tied when the web is straight.
        if (span.sag > 0)
            painter.drawPath(hanging(g, span.sag * kSag * u));
        else
            painter.drawLine(g.from, g.to);
        if (span.sag <= 0 && span.state == run::StageState::DoneWithDeviation)
            paintKnot(painter, (g.from + g.to) / 2, u, look);
        break;
    case run::StageState::Blocked: paintParted(painter, g, look); break;
    }
}

void paintTautRoller(QPainter& painter, const QPointF& top, bool pulls, const Look& look)
{
    const double r = kRoller * look.unit;
    const QPointF c = top + QPointF(0, r);
    painter.setPen(QPen(pulls ? look.palette.accent : look.palette.rule, 1.8 * look.unit));
    painter.setBrush(pulls ? look.palette.accent : look.palette.sheet);
    painter.drawEllipse(c, r, r);
    painter.setBrush(pulls ? look.palette.onAccent : look.palette.rule);
    painter.setPen(Qt::NoPen);
    painter.drawEllipse(c, 2 * look.unit, 2 * look.unit);
}

/// The largest size at which every name takes two lines at most and no word is wider than its cell.
double fittingSize(const std::vector<QRectF>& cells, const std::vector<TautSpan>& spans, const Look& look)
{
    for (const double size : {1.0, 0.92, 0.84, 0.76, 0.68}) {
        const QFontMetricsF metrics(scaled(look.font, size, true));
        bool fits = true;
        for (std::size_t i = 0; i < spans.size(); ++i) {
            const double room = cells[i].width() - 12 * look.unit;
            const QRectF used = metrics.boundingRect(QRectF(0, 0, room, 10000), Qt::TextWordWrap, spans[i].name);
            fits = fits && used.height() < 2.5 * metrics.height() && used.width() <= room;
        }
        if (fits) return size;
    }
    return 0.6;
}

QRectF nameBox(const QRectF& cell, const Look& look)
{
    const double gap = 6 * look.unit;
    return cell.adjusted(gap, kWebRoom * look.unit, -gap, 0);
}

void paintWords(QPainter& painter, const QRectF& box, const TautSpan& span, double size, const Look& look)
{
    painter.setFont(scaled(look.font, size, span.shown));
    painter.setPen(look.palette.ink);
    QRectF used;
    painter.drawText(box, Qt::TextWordWrap | Qt::AlignHCenter | Qt::AlignTop, span.name, &used);
    painter.setFont(scaled(look.font, 0.86 * size));
    painter.setPen(look.palette.soft);
    painter.drawText(QRectF(box.left(), used.bottom(), box.width(), box.bottom() - used.bottom()),
                     Qt::TextWordWrap | Qt::AlignHCenter | Qt::AlignTop, span.stateWord);
}

/// Name and state beside each other, under the span as far as the line's ends allow.
void paintOneLine(QPainter& painter, const QRectF& box, const QRectF& cell, const TautSpan& span, const Look& look)
{
    const QFont name = scaled(look.font, 1, true), state = scaled(look.font, 0.86);
    const double gap = 12 * look.unit, nameWide = QFontMetricsF(name).horizontalAdvance(span.name);
    const double wide = nameWide + gap + QFontMetricsF(state).horizontalAdvance(span.stateWord);
    const double left = std::max(box.left(), std::min(cell.center().x() - wide / 2, box.right() - wide));
    const double base = box.top() + kLowWebRoom * look.unit + QFontMetricsF(name).ascent();
    painter.setFont(name);
    painter.setPen(look.palette.ink);
    painter.drawText(QPointF(left, base), span.name);
    painter.setFont(state);
    painter.setPen(look.palette.soft);
    painter.drawText(QPointF(left + nameWide + gap, base), span.stateWord);
}

}  // namespace

std::vector<QRectF> tautLineCells(const QRectF& box, std::size_t count)
{
    std::vector<QRectF> cells;
    const double width = box.width() / static_cast<double>(std::max<std::size_t>(count, 1));
    for (std::size_t i = 0; i < count; ++i)
        cells.emplace_back(box.left() + width * static_cast<double>(i), box.top(), width, box.height());
    return cells;
}

double tautLineHeight(double width, const std::vector<TautSpan>& spans, const Look& look, TautWords words)
{
    if (words == TautWords::ShownOnly)
        return kLowWebRoom * look.unit + QFontMetricsF(scaled(look.font, 1, true)).height() + kMarker * look.unit;
    const std::vector<QRectF> cells = tautLineCells({0, 0, width, 10000}, spans.size());
    const double size = fittingSize(cells, spans, look);
    const QFontMetricsF name(scaled(look.font, size, true)), state(scaled(look.font, 0.86 * size));
    double most = name.height();
    for (std::size_t i = 0; i < spans.size(); ++i) {
        const QRectF box = nameBox(cells[i], look);
        const double names = name.boundingRect(box, Qt::TextWordWrap | Qt::AlignHCenter, spans[i].name).height();
        const double states = state.boundingRect(box, Qt::TextWordWrap | Qt::AlignHCenter, spans[i].stateWord).height();
        most = std::max(most, names + states);
    }
    return kWebRoom * look.unit + most + 2 * kMarker * look.unit;
}

void paintTautLine(QPainter& painter, const QRectF& box, const std::vector<TautSpan>& spans, const Look& look,
                   TautWords words)
{
    if (spans.empty()) return;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const double u = look.unit, r = kRoller * u, y = box.top() + kTop * u;
    const std::vector<QRectF> cells = tautLineCells(box, spans.size());
    const auto rollerX = [&](std::size_t i) {
        const double x = i < cells.size() ? cells[i].left() : cells.back().right();
        return std::clamp(x, box.left() + r + 2 * u, box.right() - r - 2 * u);
    };
    for (std::size_t i = 0; i < spans.size(); ++i) {
        const SpanGeometry g{{rollerX(i), y}, {rollerX(i + 1), y}, u};
        paintWeb(painter, g, spans[i], look);
    }
    for (std::size_t i = 0; i <= spans.size(); ++i) {
        const bool pulls = i > 0 && spans[i - 1].state == run::StageState::InWork;
        paintTautRoller(painter, {rollerX(i), y}, pulls, look);
    }
    const double size = words == TautWords::All ? fittingSize(cells, spans, look) : 1;
    for (std::size_t i = 0; i < spans.size(); ++i) {
        if (words == TautWords::All)
            paintWords(painter, nameBox(cells[i], look), spans[i], size, look);
        else if (spans[i].shown)
            paintOneLine(painter, box, cells[i], spans[i], look);
        if (spans[i].shown) {
            painter.setPen(Qt::NoPen);
            painter.setBrush(look.palette.accent);
            painter.drawRect(
                QRectF(cells[i].left() + 10 * u, box.bottom() - kMarker * u, cells[i].width() - 20 * u, kMarker * u));
        }
    }
    painter.restore();
}

}  // namespace taut::app
