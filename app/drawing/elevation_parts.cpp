// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drawing/elevation_parts.h"

#include <algorithm>
#include <cmath>

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>

#include "app/text/names.h"

namespace taut::app {

Bounds boundsOf(const ElevationView& view)
{
    Bounds b{1e9, -1e9, 1e9, -1e9};
    for (const inputs::NamedPath& named : view.paths)
        for (const physics::RollerPlace& r : named.path.rollers) {
            const double radius = r.diameter.si() / 2;
            b.left = std::min(b.left, r.x.si() - radius);
            b.right = std::max(b.right, r.x.si() + radius);
            b.bottom = std::min(b.bottom, r.y.si() - radius);
            b.top = std::max(b.top, r.y.si() + radius);
        }
    return b.left > b.right ? Bounds{} : b;
}

QString drawnWord(const char* english) { return QCoreApplication::translate("drawing", english); }

const physics::RollerPlace* rollerOf(const ElevationView& view, const std::string& id)
{
    for (const inputs::NamedPath& named : view.paths)
        for (const physics::RollerPlace& r : named.path.rollers)
            if (r.id == id) return &r;
    return nullptr;
}

namespace {

QPointF onRoller(const physics::RollerPlace& r, double angle, const ElevationScale& scale)
{
    return scale.at(r.x.si() + r.diameter.si() / 2 * std::cos(angle), r.y.si() + r.diameter.si() / 2 * std::sin(angle));
}

}  // namespace

std::size_t indexOn(const physics::WebPath& path, const std::string& id, std::size_t whenEmpty)
{
    if (id.empty()) return whenEmpty;
    for (std::size_t i = 0; i < path.rollers.size(); ++i)
        if (path.rollers[i].id == id) return i;
    return whenEmpty;
}

QPolygonF arcPoints(const physics::WebPath& path, std::size_t i, const ElevationScale& scale)
{
    const physics::PathArc& arc = path.arcs[i];
    const physics::RollerPlace& roller = path.rollers[i];
    const int pieces = std::max(1, static_cast<int>(std::ceil(arc.wrap / 0.1)));
    QPolygonF points;
    for (int k = 0; k <= pieces; ++k) {
        const double turned = arc.wrap * k / pieces;
        points << onRoller(roller, arc.startAngle + (roller.counterClockwise ? turned : -turned), scale);
    }
    return points;
}

std::optional<QRectF> litBox(const ElevationView& view, const ElevationScale& scale, const Look& look)
{
    const double pad = 6 * look.unit;
    const auto around = [&](const physics::RollerPlace& r) {
        const double radius = std::max(r.diameter.si() / 2 * scale.perMetre, 9 * look.unit) + pad;
        const QPointF c = scale.at(r.x, r.y);
        return QRectF(c.x() - radius, c.y() - radius, 2 * radius, 2 * radius);
    };
    if (const physics::RollerPlace* roller = rollerOf(view, view.lit)) return around(*roller);
    if (view.lit == "lift")
        for (const auto& [id, kind] : view.kinds)
            if (kind == "unwind")
                if (const physics::RollerPlace* roller = rollerOf(view, id)) return around(*roller);
    if (view.lit == "splice_table" && !view.spliceAfter.empty() && !view.paths.empty())
        if (const physics::PathSpan* span = view.paths.front().path.spanAfter(view.spliceAfter))
            return QRectF(scale.at(span->x1, span->y1), scale.at(span->x2, span->y2))
                .normalized()
                .adjusted(-pad, -2 * pad, pad, 2 * pad);
    if (view.lit == "press") {
        const Bounds b = boundsOf(view);
        return QRectF(scale.at(b.left, b.top), scale.at(b.right, b.bottom)).normalized();
    }
    return std::nullopt;
}

QFont fittedFont(const QFont& font, const QString& text, double width)
{
    // Letters come in whole pixels, so what the share says may still be too wide.
    constexpr double kSmallest = 0.5, kStep = 0.05;
    QFont fitting = font;
    for (double share = 1; share > kSmallest; share -= kStep) {
        fitting = scaled(font, share, font.bold());
        if (QFontMetricsF(fitting).horizontalAdvance(text) <= width) break;
    }
    return fitting;
}

namespace {

/// The web between the two ends of the zone, on the first path that has its end.
QPolygonF zoneLine(const ElevationView& view, const ElevationScale& scale)
{
    if (!view.zone) return {};
    for (const inputs::NamedPath& named : view.paths) {
        const physics::WebPath& path = named.path;
        const std::size_t end = indexOn(path, view.zone->second, path.rollers.size());
        if (end == path.rollers.size()) continue;
        QPolygonF line;
        for (std::size_t i = indexOn(path, view.zone->first, 0); i < end; ++i) {
            line << scale.at(path.spans[i].x1, path.spans[i].y1) << scale.at(path.spans[i].x2, path.spans[i].y2);
            if (i + 1 < end && path.arcs[i + 1].wrap > 0) line << arcPoints(path, i + 1, scale);
        }
        return line;
    }
    return {};
}

}  // namespace

void paintZone(QPainter& painter, const ElevationView& view, const ElevationScale& scale, const Look& look)
{
    const QPolygonF line = zoneLine(view, scale);
    if (line.isEmpty()) return;
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(look.palette.accent, 5 * look.unit, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin));
    painter.drawPolyline(line);
}

void paintStand(QPainter& painter, const QRectF& box, const ElevationView& view, const ElevationScale& scale,
                const Look& look)
{
    const QString word = standInWords(view);
    if (word.isEmpty() || view.paths.empty()) return;
    const double u = look.unit;
    const std::optional<QRectF> lit = litBox(view, scale, look);
    // Whoever stands at the panel is not in the drawing; what they set is.
    const QRectF marked = lit ? *lit : zoneLine(view, scale).boundingRect();
    const double lowest = scale.at(0, boundsOf(view).bottom).y();
    const double y = (lit ? marked.bottom() : lowest) + 3 * u;
    if (marked.width() > 0) {
        painter.setPen(QPen(look.palette.accent, 3 * u, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
        painter.setBrush(Qt::NoBrush);
        painter.drawPolyline(QPolygonF{
            {marked.left(), y - 7 * u}, {marked.left(), y}, {marked.right(), y}, {marked.right(), y - 7 * u}});
    }
    const QFont font = fittedFont(scaled(look.font, 0.95, true), word, box.width() - 12 * u);
    const QFontMetricsF metrics(font);
    const double width = metrics.horizontalAdvance(word) + 12 * u;
    const double middle = marked.width() > 0 ? marked.center().x() : box.center().x();
    QRectF label(middle - width / 2, y + 2 * u, width, metrics.height());
    label.moveLeft(std::clamp(label.left(), box.left(), std::max(box.left(), box.right() - width)));
    painter.setPen(Qt::NoPen);
    painter.setBrush(look.palette.accent);
    painter.drawRect(label);
    painter.setFont(font);
    painter.setPen(look.palette.onAccent);
    painter.drawText(label, Qt::AlignCenter, word);
}

QString standInWords(const ElevationView& view)
{
    if (view.lit.empty()) return {};
    const bool outside = view.lit == "panel" || view.lit == "disconnect";
    QString said = outside ? whereText(view.lit, false) : drawnWord(QT_TRANSLATE_NOOP("drawing", "here"));
    if (!view.touch.isEmpty()) said = drawnWord(QT_TRANSLATE_NOOP("drawing", "%1: %2")).arg(said, view.touch);
    if (view.zone && !view.zoneName.isEmpty())
        said = drawnWord(QT_TRANSLATE_NOOP("drawing", "%1 \u2192 %2")).arg(said, view.zoneName);
    return said;
}

}  // namespace taut::app
