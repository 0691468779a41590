// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include <QFontMetricsF>
#include <QPainter>
#include <QPainterPath>

#include "app/drawing/elevation_parts.h"
#include "app/drawing/live_press.h"

namespace taut::app {

namespace {

using Span = LivePress::Span;

/// A span on the paper, as it hangs.
struct Drawn {
    QPointF from, to, low;  ///< `low` pulls the curve down
    [[nodiscard]] QPointF at(double share) const
    {
        const double rest = 1 - share;
        return rest * rest * from + 2 * rest * share * low + share * share * to;
    }
    [[nodiscard]] QPointF along(double share) const
    {
        const QPointF way = 2 * (1 - share) * (low - from) + 2 * share * (to - low);
        const double length = std::hypot(way.x(), way.y());
        return length > 0 ? way / length : QPointF(1, 0);
    }
    [[nodiscard]] QPainterPath path() const
    {
        QPainterPath path(from);
        path.quadTo(low, to);
        return path;
    }
};

class LivePainter {
public:
    LivePainter(QPainter& painter, const QRectF& box, const LivePress& press, const Look& look)
        : m_painter(painter),
          m_box(box),
          m_press(press),
          m_look(look),
          m_scale(elevationScale(press.extent, box, look)),
          m_path(press.view.paths.front().path),
          m_small(scaled(look.font, 0.82)),
          m_u(look.unit)
    {
        sayOnce();
    }

    void paint()
    {
        rollers();
        for (std::size_t s = 0; s < m_press.spans.size() && s < m_path.spans.size(); ++s) web(s);
        nips();
        clamps();
        for (const LivePress::Dryer& dryer : m_press.dryers) this->dryer(dryer);
        for (const LivePress::Guard& guard : m_press.guards) this->guard(guard);
        joint();
        for (const auto& [id, number] : m_press.view.stations)
            if (const auto* roller = rollerOf(m_press.view, id))
                paintStationNumber(m_painter, *roller, number, m_scale, m_look);
        words();
    }

private:
    /// Of spans that hang one after the other the longest says so.
    void sayOnce()
    {
        const std::size_t spans = std::min(m_press.spans.size(), m_path.spans.size());
        m_saysSlack.assign(m_press.spans.size(), m_press.spans.size());
        for (std::size_t s = 0; s < spans; ++s) {
            if (m_press.spans[s].state != Span::State::Slack) continue;
            std::size_t end = s, longest = s;
            for (; end < spans && m_press.spans[end].state == Span::State::Slack; ++end)
                if (m_path.spans[end].length > m_path.spans[longest].length) longest = end;
            m_saysSlack[longest] = longest;
            s = end;
        }
    }
    void pen(const QColor& colour, double width, Qt::PenStyle style = Qt::SolidLine)
    {
        m_painter.setPen(QPen(colour, width * m_u, style, Qt::RoundCap, Qt::RoundJoin));
        m_painter.setBrush(Qt::NoBrush);
    }
    [[nodiscard]] QPointF centre(const physics::RollerPlace& roller) const { return m_scale.at(roller.x, roller.y); }
    [[nodiscard]] double radius(const physics::RollerPlace& roller) const
    {
        return std::max(roller.diameter.si() / 2 * m_scale.perMetre, 2.4 * m_u);
    }
    void label(const QPointF& at, const QString& text)
    {
        const QFontMetricsF metrics(m_small);
        QRectF room(at.x() - metrics.horizontalAdvance(text) / 2 - 3 * m_u, at.y(),
                    metrics.horizontalAdvance(text) + 6 * m_u, metrics.height());
        room.moveLeft(std::clamp(room.left(), m_box.left(), std::max(m_box.left(), m_box.right() - room.width())));
        room.moveTop(std::clamp(room.top(), m_box.top(), std::max(m_box.top(), m_box.bottom() - room.height())));
        m_labels.emplace_back(room, text);
    }
    /// Below a span, or at its right where it stands upright: its words never lie on it.
    void beside(const Drawn& d, const QString& text)
    {
        const QPointF way = d.to - d.from;
        const bool steep = std::abs(way.y()) > std::abs(way.x());
        const double half = QFontMetricsF(m_small).horizontalAdvance(text) / 2, line = QFontMetricsF(m_small).height();
        label(d.at(0.5) + (steep ? QPointF(half + 7 * m_u, -line / 2) : QPointF(0, 4 * m_u)), text);
    }
    /// Last of all, so that nothing crosses them; one that has no room moves down.
    void words()
    {
        std::vector<QRectF> taken;
        m_painter.setFont(m_small);
        for (auto& [room, text] : m_labels) {
            for (const QRectF& other : taken)
                if (room.intersects(other)) room.moveTop(other.bottom());
            taken.push_back(room);
            m_painter.fillRect(room, m_look.palette.ground);
            m_painter.setPen(m_look.palette.ink);
            m_painter.drawText(room, Qt::AlignCenter | Qt::TextDontClip, text);
        }
    }

    void rollers()
    {
        for (std::size_t i = 0; i < m_path.rollers.size(); ++i) {
            const physics::RollerPlace& roller = m_path.rollers[i];
            const bool first = i == 0, last = i + 1 == m_path.rollers.size();
            if (first && !m_press.hung) {
                waiting(roller);
            } else if (first || last) {
                const double turned = first ? m_press.unwindTurned : m_press.rewindTurned;
                paintRoll(m_painter, centre(roller), std::max(radius(roller), 6 * m_u), m_look,
                          roller.counterClockwise ? turned : -turned);
            } else {
                paintElevationRoller(m_painter, m_press.view, roller, m_scale, m_look);
            }
        }
    }
    /// The roll is not hung: the shaft stands empty, and the roll below it as far as it was raised.
    void waiting(const physics::RollerPlace& shaft)
    {
        const QPointF up = centre(shaft);
        pen(m_look.palette.ink, 1.6);
        m_painter.drawEllipse(up, 4 * m_u, 4 * m_u);
        const double size = m_press.rollRadius * m_scale.perMetre;
        const double floor = m_scale.at(0, boundsOf(m_press.extent).bottom).y() - size;
        const QPointF down(up.x(), std::max(up.y(), floor));
        const QPointF at = m_press.onLift ? down + (up - down) * m_press.lifted : down;
        paintRoll(m_painter, at, size, m_look);
        const QString said = m_press.onLift ? drawnWord(QT_TRANSLATE_NOOP("drawing", "on the lift"))
                                            : drawnWord(QT_TRANSLATE_NOOP("drawing", "not hung yet"));
        const double half = QFontMetricsF(m_small).horizontalAdvance(said) / 2;
        label(at + QPointF(size + half + 6 * m_u, size * 0.4), said);
    }

    [[nodiscard]] Drawn drawn(std::size_t s) const
    {
        const physics::PathSpan& span = m_path.spans[s];
        Drawn d{m_scale.at(span.x1, span.y1), m_scale.at(span.x2, span.y2), {}};
        const QPointF way = d.to - d.from;
        const double length = std::max(std::hypot(way.x(), way.y()), 1e-6);
        // Across the span, downwards; what stands upright hangs out to the side.
        QPointF across(-way.y() / length, way.x() / length);
        if (across.y() < 0) across = -across;
        d.low = (d.from + d.to) / 2 + across * (2 * m_press.spans[s].hangs * m_scale.perMetre);
        return d;
    }
    void web(std::size_t s)
    {
        const Span& span = m_press.spans[s];
        const Drawn d = drawn(s);
        if (span.state == Span::State::None) {
            pen(m_look.palette.rule, 1.4, Qt::DashLine);
            m_painter.drawLine(d.from, d.to);
            return;
        }
        pen(m_look.palette.accent, 2.4);
        if (span.state == Span::State::Broken) {
            torn(d);
            return;
        }
        m_painter.drawPath(d.path());
        if (s + 1 < m_path.arcs.size() && m_path.arcs[s + 1].wrap > 0)
            m_painter.drawPolyline(arcPoints(m_path, s + 1, m_scale));
        pen(m_look.palette.ink, 1.5);
        for (const double share : span.marks) {
            const QPointF at = d.at(share), way = d.along(share), across(-way.y(), way.x());
            m_painter.drawLine(at - across * (4 * m_u), at + across * (4 * m_u));
        }
        if (s == m_saysSlack[s]) beside(d, drawnWord(QT_TRANSLATE_NOOP("drawing", "slack")));
    }
    /// Two ends that hang from their rollers, a gap, and the torn edges.
    void torn(const Drawn& d)
    {
        const double drop = std::min(14 * m_u, 0.3 * std::hypot(d.to.x() - d.from.x(), d.to.y() - d.from.y()));
        for (const bool near : {true, false}) {
            const QPointF root = near ? d.from : d.to, other = near ? d.to : d.from;
            const QPointF end = root + (other - root) * 0.3 + QPointF(0, drop);
            QPainterPath hanging(root);
            hanging.quadTo(root + (other - root) * 0.28, end);
            m_painter.drawPath(hanging);
            m_painter.drawPolyline(QPolygonF{end + QPointF(-4 * m_u, 0), end + QPointF(-1.5 * m_u, 4 * m_u),
                                             end + QPointF(1.5 * m_u, 0), end + QPointF(4 * m_u, 4 * m_u)});
        }
        label((d.from + d.to) / 2 + QPointF(0, drop + 5 * m_u), drawnWord(QT_TRANSLATE_NOOP("drawing", "parted")));
    }

    /// The roller that presses: down on the driven one, or lifted off it.
    void nips()
    {
        for (const auto& [id, closed] : m_press.nips) {
            const auto* roller = rollerOf(m_press.view, id);
            if (roller == nullptr) continue;
            const double r = radius(*roller), own = std::max(0.6 * r, 4 * m_u);
            const QPointF at = centre(*roller) - QPointF(0, r + own + (closed ? 1.5 * m_u : 9 * m_u));
            m_painter.setPen(QPen(m_look.palette.ink, 1.4 * m_u));
            m_painter.setBrush(closed ? m_look.palette.ink : m_look.palette.sheet);
            m_painter.drawEllipse(at, own, own);
        }
    }
    void clamps()
    {
        if (!m_press.table || *m_press.table >= m_path.spans.size()) return;
        const physics::PathSpan& span = m_path.spans[*m_press.table];
        const QPointF from = m_scale.at(span.x1, span.y1), to = m_scale.at(span.x2, span.y2);
        pen(m_look.palette.ink, 1.4);
        const QPointF below(0, 7 * m_u);
        m_painter.drawLine(from + (to - from) * 0.15 + below, from + (to - from) * 0.85 + below);
        for (const double share : {0.25, 0.75}) {
            const QPointF at = from + (to - from) * share;
            const double lifted = m_press.clamped ? 1.5 * m_u : 8 * m_u;
            m_painter.fillRect(QRectF(at.x() - 4 * m_u, at.y() - lifted - 5 * m_u, 8 * m_u, 5 * m_u),
                               m_look.palette.ink);
        }
    }
    /// A hood over the web; open, it lets out what dries.
    void dryer(const LivePress::Dryer& dryer)
    {
        const auto* roller = rollerOf(m_press.view, dryer.roller);
        if (roller == nullptr) return;
        const QPointF c = centre(*roller) + QPointF(radius(*roller) + 16 * m_u, -radius(*roller) - 4 * m_u);
        const QRectF hood(c.x() - 11 * m_u, c.y() - 14 * m_u, 22 * m_u, 9 * m_u);
        pen(m_look.palette.ink, 1.4);
        m_painter.setBrush(m_look.palette.sheet);
        m_painter.drawRect(hood);
        if (dryer.open) {
            for (const double x : {-7.0, 0.0, 7.0})
                m_painter.drawLine(QPointF(c.x() + x * m_u, hood.bottom() + 2 * m_u),
                                   QPointF(c.x() + x * m_u, hood.bottom() + 8 * m_u));
        } else {
            m_painter.fillRect(QRectF(hood.left(), hood.bottom() - 2.5 * m_u, hood.width(), 2.5 * m_u),
                               m_look.palette.ink);
        }
        if (dryer.rag) {
            m_painter.setBrush(m_look.palette.ink);
            m_painter.drawPolygon(QPolygonF{{hood.left() + 3 * m_u, hood.top()},
                                            {hood.left() + 9 * m_u, hood.top() - 6 * m_u},
                                            {hood.right() - 3 * m_u, hood.top()}});
        }
    }
    /// A cover over the roller, or swung up beside it.
    void guard(const LivePress::Guard& guard)
    {
        const auto* roller = rollerOf(m_press.view, guard.by);
        if (roller == nullptr) return;
        const double r = radius(*roller) + 5 * m_u;
        const QPointF c = centre(*roller);
        pen(m_look.palette.ink, 2);
        const QRectF round(c.x() - r, c.y() - r, 2 * r, 2 * r);
        if (!guard.open) {
            m_painter.drawArc(round, 200 * 16, 140 * 16);
            return;
        }
        m_painter.drawArc(round.translated(-1.1 * r, 0.9 * r), 215 * 16, 110 * 16);
        label(c + QPointF(-1.1 * r, 1.95 * r), drawnWord(QT_TRANSLATE_NOOP("drawing", "open")));
    }
    void joint()
    {
        if (!m_press.joint || m_press.joint->first >= m_path.spans.size()) return;
        const Drawn d = drawn(m_press.joint->first);
        const QPointF at = d.at(std::clamp(m_press.joint->second, 0.0, 1.0));
        m_painter.setPen(QPen(m_look.palette.ink, 1.2 * m_u));
        m_painter.setBrush(m_look.palette.sheet);
        m_painter.drawRect(QRectF(at.x() - 6 * m_u, at.y() - 3 * m_u, 12 * m_u, 6 * m_u));
    }

    QPainter& m_painter;
    QRectF m_box;
    const LivePress& m_press;
    const Look& m_look;
    ElevationScale m_scale;
    const physics::WebPath& m_path;
    QFont m_small;
    double m_u;
    std::vector<std::pair<QRectF, QString>> m_labels;
    std::vector<std::size_t> m_saysSlack;  // the span itself, where its word stands
};

}  // namespace

void paintLivePress(QPainter& painter, const QRectF& box, const LivePress& press, const Look& look)
{
    if (press.view.paths.empty()) return;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    LivePainter(painter, box, press, look).paint();
    painter.restore();
}

}  // namespace taut::app
