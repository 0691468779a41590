// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drawing/marks.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include <QPainter>
#include <QPainterPath>

namespace taut::app {

MarkShape markOf(report::Mark mark)
{
    switch (mark) {
    case report::Mark::None: return MarkShape::None;
    case report::Mark::Inside: return MarkShape::Tick;
    case report::Mark::Near: return MarkShape::HalfDiamond;
    case report::Mark::Outside: return MarkShape::Octagon;
    case report::Mark::Open: return MarkShape::DashedBox;
    case report::Mark::Deviation: return MarkShape::Knot;
    case report::Mark::NotApplicable: return MarkShape::DashBox;
    case report::Mark::Recorded: return MarkShape::Dot;
    }
    return MarkShape::None;
}

MarkShape markOf(const run::StepStanding& standing)
{
    switch (standing.state) {
    case run::StepState::Open: return MarkShape::DashedBox;
    case run::StepState::Outside: return MarkShape::Octagon;
    case run::StepState::Stale:
    case run::StepState::Reconfirm: return MarkShape::TurnArrow;
    case run::StepState::Deviated: return MarkShape::Knot;
    case run::StepState::NotApplicable: return MarkShape::DashBox;
    case run::StepState::Answered: break;
    }
    if (!standing.answer || !standing.answer->value) return MarkShape::Tick;
    switch (standing.answer->judgement.verdict) {
    case verdict::Verdict::Inside: return MarkShape::Tick;
    case verdict::Verdict::Near: return MarkShape::HalfDiamond;
    case verdict::Verdict::Outside: return MarkShape::Octagon;
    case verdict::Verdict::Missing: return MarkShape::DashedBox;
    case verdict::Verdict::Recorded: return MarkShape::Dot;
    }
    return MarkShape::None;
}

void paintMark(QPainter& painter, const QRectF& box, MarkShape shape, const Look& look)
{
    if (shape == MarkShape::None) return;
    const double side = std::min(box.width(), box.height()), half = side / 2;
    const QPointF c = box.center();
    const auto at = [&](double x, double y) { return c + QPointF(x * half, y * half); };
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const double width = std::max(look.unit * 1.4, side * 0.085);
    const auto pen = [&](const QColor& colour, Qt::PenStyle style = Qt::SolidLine) {
        QPen p(colour, width, style, Qt::RoundCap, Qt::RoundJoin);
        if (style == Qt::CustomDashLine) p.setDashPattern({2.0, 2.2});
        return p;
    };
    painter.setBrush(Qt::NoBrush);
    switch (shape) {
    case MarkShape::None: break;
    case MarkShape::Tick:
        painter.setPen(pen(look.palette.inside));
        painter.drawEllipse(c, half * 0.88, half * 0.88);
        painter.drawPolyline(QPolygonF{at(-0.42, 0.02), at(-0.1, 0.36), at(0.46, -0.36)});
        break;
    case MarkShape::HalfDiamond: {
        painter.setPen(pen(look.palette.near));
        const QPolygonF diamond{at(0, -0.92), at(0.92, 0), at(0, 0.92), at(-0.92, 0)};
        painter.drawPolygon(diamond);
        painter.setBrush(look.palette.near);
        painter.drawPolygon(QPolygonF{at(0, -0.92), at(0, 0.92), at(-0.92, 0)});
        break;
    }
    case MarkShape::Octagon: {
        QPolygonF octagon;
        for (int i = 0; i < 8; ++i) {
            const double a = (i + 0.5) * std::numbers::pi / 4;
            octagon << at(0.94 * std::cos(a), 0.94 * std::sin(a));
        }
        painter.setPen(pen(look.palette.outside));
        painter.drawPolygon(octagon);
        painter.drawLine(at(-0.38, -0.38), at(0.38, 0.38));
        painter.drawLine(at(-0.38, 0.38), at(0.38, -0.38));
        break;
    }
    case MarkShape::DashedBox:
        painter.setPen(pen(look.palette.rule, Qt::CustomDashLine));
        painter.drawRect(QRectF(at(-0.78, -0.78), at(0.78, 0.78)));
        break;
    case MarkShape::Knot: {
        painter.setPen(pen(look.palette.ink));
        QPainterPath path(at(-0.95, 0.4));
        path.cubicTo(at(0.75, 0.4), at(0.75, -0.85), at(0, -0.85));
        path.cubicTo(at(-0.75, -0.85), at(-0.75, 0.4), at(0.95, 0.4));
        painter.drawPath(path);
        break;
    }
    case MarkShape::DashBox:
        painter.setPen(pen(look.palette.rule));
        painter.drawRect(QRectF(at(-0.78, -0.78), at(0.78, 0.78)));
        painter.drawLine(at(-0.4, 0), at(0.4, 0));
        break;
    case MarkShape::Dot:
        painter.setPen(pen(look.palette.ink));
        painter.drawEllipse(c, half * 0.88, half * 0.88);
        painter.setBrush(look.palette.ink);
        painter.drawEllipse(c, half * 0.28, half * 0.28);
        break;
    case MarkShape::TurnArrow: {
        painter.setPen(pen(look.palette.near));
        painter.drawArc(QRectF(at(-0.78, -0.78), at(0.78, 0.78)), 60 * 16, 285 * 16);
        painter.setBrush(look.palette.near);
        painter.drawPolygon(QPolygonF{at(0.12, -1.0), at(0.72, -0.72), at(0.18, -0.36)});
        break;
    }
    }
    painter.restore();
}

}  // namespace taut::app
