// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drawing/limit_bar.h"

#include <algorithm>
#include <cmath>
#include <tuple>

#include <QFontMetricsF>
#include <QPainter>

#include "app/drawing/marks.h"
#include "app/text/names.h"
#include "app/text/words.h"
#include "core/verdict/near.h"

namespace taut::app {

namespace {

constexpr double kTrack = 18;  // look.unit

MarkShape markOfVerdict(verdict::Verdict v)
{
    switch (v) {
    case verdict::Verdict::Inside: return MarkShape::Tick;
    case verdict::Verdict::Near: return MarkShape::HalfDiamond;
    case verdict::Verdict::Outside: return MarkShape::Octagon;
    case verdict::Verdict::Missing: return MarkShape::None;
    case verdict::Verdict::Recorded: return MarkShape::Dot;
    }
    return MarkShape::None;
}

double flagHeight(const Look& look) { return QFontMetricsF(scaled(look.font, 1.1, true)).height() + 8 * look.unit; }

void hatch(QPainter& painter, const QRectF& band, const Look& look)
{
    if (band.width() <= 0) return;
    painter.save();
    painter.setClipRect(band);
    painter.setPen(QPen(look.palette.ink, 1.2 * look.unit));
    const double step = 6 * look.unit;
    for (double x = band.left() - band.height(); x < band.right(); x += step)
        painter.drawLine(QPointF(x, band.bottom()), QPointF(x + band.height(), band.top()));
    painter.restore();
}

/// The reading: a pin through the track and a flag above it with mark, value and word.
void paintReading(QPainter& painter, const QRectF& box, const LimitBar& bar, const LimitBarScale& scale,
                  const Look& look)
{
    const double u = look.unit, x = scale.x(*bar.reading);
    const QFont font = scaled(look.font, 1.1, true);
    const QString text = bar.word.isEmpty() ? bar.readingText : bar.readingText + QStringLiteral("  ") + bar.word;
    const QFontMetricsF metrics(font);
    const double mark = metrics.height(), width = metrics.horizontalAdvance(text) + mark + 22 * u;
    QRectF flag(x - width / 2, box.top(), width, flagHeight(look));
    flag.moveLeft(std::clamp(flag.left(), box.left(), std::max(box.left(), box.right() - width)));
    painter.setPen(QPen(look.palette.ink, 3 * u, Qt::SolidLine, Qt::FlatCap));
    painter.drawLine(QPointF(x, flag.bottom()), QPointF(x, scale.track.bottom() + 4 * u));
    if (scale.beyond(*bar.reading)) {
        const double way = *bar.reading > scale.to ? 1 : -1;
        const QPointF tip(x + way * 9 * u, scale.track.center().y());
        painter.setPen(Qt::NoPen);
        painter.setBrush(look.palette.ink);
        painter.drawPolygon(QPolygonF{tip, tip + QPointF(-way * 11 * u, -8 * u), tip + QPointF(-way * 11 * u, 8 * u)});
    }
    painter.setPen(QPen(look.palette.ink, 1.5 * u));
    painter.setBrush(look.palette.sheet);
    painter.drawRect(flag);
    paintMark(painter, QRectF(flag.left() + 7 * u, flag.top() + 4 * u, mark, flag.height() - 8 * u),
              markOfVerdict(bar.judgement.verdict), look);
    painter.setFont(font);
    painter.setPen(look.palette.ink);
    painter.drawText(flag.adjusted(mark + 12 * u, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter, text);
}

/// Where the number under a mark of the track stands.
QRectF endLabel(const QRectF& box, double x, const QString& text, const LimitBarScale& scale, const Look& look)
{
    const QFontMetricsF metrics(look.font);
    const double width = metrics.horizontalAdvance(text) + 4 * look.unit;
    QRectF label(x - width / 2, scale.track.bottom() + 8 * look.unit, width, metrics.height());
    label.moveLeft(std::clamp(label.left(), box.left(), std::max(box.left(), box.right() - width)));
    return label;
}

void paintEnd(QPainter& painter, const QRectF& box, double x, const QString& text, const LimitBarScale& scale,
              const Look& look)
{
    const double u = look.unit;
    painter.setPen(QPen(look.palette.ink, 2.2 * u));
    painter.drawLine(QPointF(x, scale.track.top() - 3 * u), QPointF(x, scale.track.bottom() + 7 * u));
    painter.setFont(look.font);
    painter.drawText(endLabel(box, x, text, scale, look), Qt::AlignCenter, text);
}

}  // namespace

LimitBar limitBarOf(const targets::Window& window, double uncertaintySi, const std::optional<Quantity>& aim,
                    const std::optional<Quantity>& reading, UnitSystem system)
{
    LimitBar bar;
    bar.uncertainty = uncertaintySi;
    if (window.low) {
        bar.low = window.low->si();
        bar.lowText = quantityText(*window.low, system, Rounding::Up);
    }
    if (window.high) {
        bar.high = window.high->si();
        bar.highText = quantityText(*window.high, system, Rounding::Down);
    }
    if (window.low && window.high) std::tie(bar.lowText, bar.highText) = endTexts(*window.low, *window.high, system);
    if (aim) {
        bar.aim = aim->si();
        bar.aimText = quantityText(*aim, system);
    }
    if (reading) {
        bar.reading = reading->si();
        bar.readingText = reading->entered().empty() ? quantityText(*reading, system) : dataText(reading->entered());
        bar.judgement = verdict::judge(*reading, uncertaintySi, window);
        bar.word = verdictText(bar.judgement);
        if (const auto why = verdict::whyNear(*reading, uncertaintySi, window)) bar.why = words(*why, system);
    }
    return bar;
}

double LimitBarScale::x(double si) const
{
    const double share = std::clamp((si - from) / (to - from), 0.0, 1.0);
    return track.left() + share * track.width();
}

LimitBarScale limitBarScale(const LimitBar& bar, const QRectF& box, const Look& look)
{
    LimitBarScale scale;
    const double u = look.unit;
    scale.track = QRectF(box.left() + 14 * u, box.top() + flagHeight(look) + 10 * u, box.width() - 28 * u, kTrack * u);
    // The window takes the middle half; an open end is as far away as the aim or the reading asks for.
    double low = 0, high = 1;
    if (bar.low && bar.high) {
        low = *bar.low;
        high = *bar.high;
    } else if (bar.hasWindow()) {
        const double edge = bar.low ? *bar.low : *bar.high;
        double reach = std::max(std::abs(edge) * 0.5, 4 * bar.uncertainty);
        for (const auto& v : {bar.aim, bar.reading})
            if (v) reach = std::max(reach, std::min(std::abs(*v - edge) * 1.3, std::abs(edge) * 2));
        if (reach == 0) reach = 1;
        low = bar.low ? edge : edge - reach;
        high = bar.low ? edge + reach : edge;
    } else if (bar.reading || bar.aim) {
        // Apart from the aim by as much as may be, even where that is nought: on it stands only what is equal to it.
        const double centre = bar.aim ? *bar.aim : *bar.reading;
        double reach = std::max(std::abs(centre) * 0.5, std::abs(bar.reading.value_or(centre) - centre));
        if (reach == 0) reach = 1;
        low = centre - reach;
        high = centre + reach;
    }
    double span = high - low;
    if (span <= 0) span = std::max({std::abs(high) * 0.1, 4 * bar.uncertainty, 1e-12});
    scale.from = low - span * 0.5;
    scale.to = high + span * 0.5;
    return scale;
}

double limitBarHeight(const Look& look)
{
    const double u = look.unit;
    return flagHeight(look) + (10 + kTrack + 8 + 4) * u + QFontMetricsF(look.font).height();
}

void paintLimitBar(QPainter& painter, const QRectF& box, const LimitBar& bar, const Look& look)
{
    const LimitBarScale scale = limitBarScale(bar, box, look);
    const double u = look.unit;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(look.palette.rule, 1.5 * u));
    painter.drawLine(QPointF(scale.track.left(), scale.track.center().y()),
                     QPointF(scale.track.right(), scale.track.center().y()));
    if (bar.hasWindow()) {
        const double left = bar.low ? scale.x(*bar.low) : scale.track.left();
        const double right = bar.high ? scale.x(*bar.high) : scale.track.right();
        const QRectF window(left, scale.track.top(), right - left, scale.track.height());
        painter.fillRect(window, look.palette.wash);
        if (bar.uncertainty > 0) {
            if (bar.low) {
                const double to = std::min(right, scale.x(*bar.low + bar.uncertainty));
                hatch(painter, {left, window.top(), to - left, window.height()}, look);
            }
            if (bar.high) {
                const double from = std::max(left, scale.x(*bar.high - bar.uncertainty));
                hatch(painter, {from, window.top(), right - from, window.height()}, look);
            }
        }
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(look.palette.ink, 1.5 * u));
        painter.drawLine(window.topLeft(), window.topRight());
        painter.drawLine(window.bottomLeft(), window.bottomRight());
        if (bar.low) paintEnd(painter, box, left, bar.lowText, scale, look);
        if (bar.high) paintEnd(painter, box, right, bar.highText, scale, look);
    }
    if (bar.aim) {
        const double x = scale.x(*bar.aim), y = scale.track.bottom() + 1 * u;
        painter.setPen(Qt::NoPen);
        painter.setBrush(look.palette.accent);
        painter.drawPolygon(QPolygonF{{x, y - 7 * u}, {x - 6 * u, y + 4 * u}, {x + 6 * u, y + 4 * u}});
        const QRectF label = endLabel(box, x, bar.aimText, scale, look);
        const bool room = !(bar.low && label.intersects(endLabel(box, scale.x(*bar.low), bar.lowText, scale, look))) &&
                          !(bar.high && label.intersects(endLabel(box, scale.x(*bar.high), bar.highText, scale, look)));
        painter.setFont(look.font);
        painter.setPen(look.palette.accent);
        // Too close to a limit there is only the arrow: the step says the number anyway.
        if (room) painter.drawText(label, Qt::AlignCenter, bar.aimText);
    }
    if (bar.reading) paintReading(painter, box, bar, scale, look);
    painter.restore();
}

}  // namespace taut::app
