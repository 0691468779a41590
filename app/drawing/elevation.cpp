// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drawing/elevation.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>
#include <QPainterPath>

#include "app/drawing/elevation_parts.h"

namespace taut::app {

namespace {

struct Margins {
    double side, top, bottom;
};
/// Above: station numbers. Below: the names of the rolls, the bracket with its word, one line of caption.
Margins marginsOf(const ElevationView& view, const Look& look)
{
    const double line = QFontMetricsF(scaled(look.font, 0.86)).height();
    const double below = view.nobodyThere ? line + 6 * look.unit : 3 * line + 16 * look.unit;
    return {10 * look.unit, line + 12 * look.unit, below};
}

std::string kindOf(const ElevationView& view, const std::string& id)
{
    const auto found = view.kinds.find(id);
    return found == view.kinds.end() ? std::string() : found->second;
}

bool isRoll(const std::string& kind) { return kind == "unwind" || kind == "rewind" || kind == "waste_rewind"; }

bool spanThreaded(const ElevationView& view, const physics::WebPath& path, std::size_t span, bool side)
{
    if (side) return view.sidePathsThreaded;
    return std::any_of(view.threaded.begin(), view.threaded.end(), [&](const Stretch& s) {
        return indexOn(path, s.first, 0) <= span && span + 1 <= indexOn(path, s.second, path.rollers.size() - 1);
    });
}

void paintPath(QPainter& painter, const ElevationView& view, std::size_t which, const ElevationScale& scale,
               const Look& look)
{
    const physics::WebPath& path = view.paths[which].path;
    QPen solid(look.palette.accent, 2.2 * look.unit, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin);
    QPen dashed(look.palette.rule, 1.6 * look.unit, Qt::CustomDashLine, Qt::FlatCap, Qt::RoundJoin);
    dashed.setDashPattern({4, 3.2});
    painter.setBrush(Qt::NoBrush);
    // One polyline for each run of the same kind, so that dashes do not start anew at each roller.
    QPolygonF run;
    bool runSolid = false;
    const auto flush = [&] {
        if (run.size() > 1) {
            painter.setPen(runSolid ? solid : dashed);
            painter.drawPolyline(run);
        }
        run.clear();
    };
    for (std::size_t i = 0; i < path.spans.size(); ++i) {
        const bool isSolid = spanThreaded(view, path, i, which > 0);
        if (run.isEmpty() || isSolid != runSolid) {
            const QPointF last = run.isEmpty() ? QPointF() : run.last();
            const bool joins = !run.isEmpty();
            flush();
            if (joins) run << last;
            runSolid = isSolid;
        }
        const physics::PathSpan& span = path.spans[i];
        run << scale.at(span.x1, span.y1) << scale.at(span.x2, span.y2);
        if (i + 1 < path.arcs.size() && path.arcs[i + 1].wrap > 0) run << arcPoints(path, i + 1, scale);
    }
    flush();
}

}  // namespace

void paintRoll(QPainter& painter, const QPointF& c, double radius, const Look& look, double turned)
{
    const double u = look.unit;
    painter.setPen(QPen(look.palette.ink, 1.6 * u));
    painter.setBrush(look.palette.sheet);
    painter.drawEllipse(c, radius, radius);
    // A spiral says "wound material" in any print.
    const double core = std::min(radius * 0.3, radius - 2 * u), turns = std::clamp((radius - core) / (5 * u), 1.0, 7.0);
    QPolygonF spiral;
    const int pieces = static_cast<int>(turns * 40);
    for (int k = 0; k <= pieces; ++k) {
        const double t = static_cast<double>(k) / pieces, a = turned + t * turns * 2 * std::numbers::pi;
        const double r = core + (radius - core) * t;
        spiral << c + QPointF(r * std::cos(a), -r * std::sin(a));
    }
    painter.setPen(QPen(look.palette.rule, 1.0 * u));
    painter.setBrush(Qt::NoBrush);
    painter.drawPolyline(spiral);
    painter.setPen(QPen(look.palette.ink, 1.6 * u));
    painter.setBrush(look.palette.ground);
    painter.drawEllipse(c, core * 0.8, core * 0.8);
}

void paintElevationRoller(QPainter& painter, const ElevationView& view, const physics::RollerPlace& roller,
                          const ElevationScale& scale, const Look& look)
{
    const double u = look.unit;
    const std::string kind = kindOf(view, roller.id);
    const QPointF c = scale.at(roller.x, roller.y);
    const double radius = std::max(roller.diameter.si() / 2 * scale.perMetre, 2.4 * u);
    if (isRoll(kind)) {
        paintRoll(painter, c, std::max(radius, 6 * u), look);
    } else {
        painter.setPen(QPen(look.palette.ink, 1.4 * u));
        painter.setBrush(look.palette.sheet);
        painter.drawEllipse(c, radius, radius);
        if (kind == "nip" || kind == "print" || kind == "die") {  // driven: a filled centre
            painter.setBrush(look.palette.ink);
            painter.drawEllipse(c, radius * 0.35, radius * 0.35);
        }
    }
}

void paintStationNumber(QPainter& painter, const physics::RollerPlace& roller, int number, const ElevationScale& scale,
                        const Look& look)
{
    const double u = look.unit;
    const QFont font = scaled(look.font, 0.86, true);
    const double line = QFontMetricsF(font).height();
    const QPointF c = scale.at(roller.x, roller.y);
    const double top = c.y() - std::max(roller.diameter.si() / 2 * scale.perMetre, 2.4 * u) - line - 5 * u;
    painter.setFont(font);
    painter.setPen(look.palette.ink);
    painter.drawText(QRectF(c.x() - 30 * u, top, 60 * u, line), Qt::AlignCenter, QString::number(number));
}

namespace {

bool runsRight(const ElevationView& view)
{
    if (view.paths.empty() || view.paths.front().path.rollers.size() < 2) return true;
    const auto& rollers = view.paths.front().path.rollers;
    return rollers.back().x >= rollers.front().x;
}

}  // namespace

ElevationView elevationOf(const report::Elevation& elevation)
{
    ElevationView view;
    view.paths = elevation.paths;
    int number = 0;
    for (const auto& [id, kind] : elevation.kinds) {
        view.kinds[id] = kind;
        if (kind == "print") view.stations[id] = ++number;
    }
    view.lit = elevation.lit;
    view.nobodyThere = elevation.lit.empty();
    view.threaded = {{"", ""}};
    view.sidePathsThreaded = true;
    return view;
}

ElevationView elevationOf(const inputs::Press& press, std::optional<Length> rollDiameter, inputs::Feed feed,
                          std::optional<inputs::Winding> finished)
{
    ElevationView view;
    const auto paths = inputs::pathsOf(press, rollDiameter, feed, finished);
    if (paths) view.paths = *paths;
    for (const inputs::Roller& roller : press.rollers) {
        view.kinds[roller.id] = roller.kind;
        if (roller.station) view.stations[roller.id] = *roller.station;
    }
    view.spliceAfter = press.spliceTable.after;
    return view;
}

ElevationScale elevationScale(const ElevationView& view, const QRectF& box, const Look& look)
{
    const Bounds b = boundsOf(view);
    const Margins m = marginsOf(view, look);
    const double width = std::max(box.width() - 2 * m.side, 1.0);
    const double height = std::max(box.height() - m.top - m.bottom, 1.0);
    ElevationScale scale;
    scale.perMetre = std::min(width / b.width(), height / b.height());
    const double left = box.left() + m.side + (width - b.width() * scale.perMetre) / 2;
    const double top = box.top() + m.top + (height - b.height() * scale.perMetre) / 2;
    scale.origin = QPointF(left - b.left * scale.perMetre, top + b.top * scale.perMetre);
    return scale;
}

QPolygonF webLine(const physics::WebPath& path, const ElevationScale& scale)
{
    QPolygonF line;
    for (std::size_t i = 0; i < path.spans.size(); ++i) {
        line << scale.at(path.spans[i].x1, path.spans[i].y1) << scale.at(path.spans[i].x2, path.spans[i].y2);
        if (i + 1 < path.arcs.size() && path.arcs[i + 1].wrap > 0) line << arcPoints(path, i + 1, scale);
    }
    return line;
}

double elevationHeight(const ElevationView& view, double width, const Look& look)
{
    const Bounds b = boundsOf(view);
    const Margins m = marginsOf(view, look);
    return (width - 2 * m.side) / b.width() * b.height() + m.top + m.bottom;
}

void paintElevation(QPainter& painter, const QRectF& box, const ElevationView& view, const Look& look)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const double u = look.unit;
    const QFont small = scaled(look.font, 0.86);
    const double line = QFontMetricsF(small).height();
    const ElevationScale scale = elevationScale(view, box, look);
    const std::optional<QRectF> lit = view.paths.empty() ? std::nullopt : litBox(view, scale, look);
    if (lit && view.lit != "press") painter.fillRect(*lit, look.palette.wash);
    for (const inputs::NamedPath& named : view.paths)
        for (const physics::RollerPlace& roller : named.path.rollers)
            paintElevationRoller(painter, view, roller, scale, look);
    for (std::size_t i = view.paths.size(); i > 0; --i) paintPath(painter, view, i - 1, scale, look);
    paintZone(painter, view, scale, look);
    for (const auto& [id, number] : view.stations)
        if (const physics::RollerPlace* roller = rollerOf(view, id))
            paintStationNumber(painter, *roller, number, scale, look);
    paintStand(painter, box, view, scale, look);
    // In a narrow drawing the caption is set smaller rather than cut.
    const QString caption = elevationInWords(view);
    painter.setFont(fittedFont(small, caption, box.width() - 4 * u));
    painter.setPen(look.palette.soft);
    painter.drawText(QRectF(box.left(), box.bottom() - line - 2 * u, box.width(), line), Qt::AlignCenter, caption);
    painter.restore();
}

QString elevationInWords(const ElevationView& view)
{
    if (view.paths.empty())
        return drawnWord(QT_TRANSLATE_NOOP("drawing", "The profile has no roller positions to draw."));
    return runsRight(view)
               ? drawnWord(QT_TRANSLATE_NOOP("drawing", "From the operator's side, the web runs right \u2192"))
               : drawnWord(QT_TRANSLATE_NOOP("drawing", "From the operator's side, \u2190 the web runs left"));
}

}  // namespace taut::app
