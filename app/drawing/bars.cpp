// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include <QFontMetricsF>
#include <QPainter>

#include "app/drawing/control_figure.h"
#include "app/text/words.h"

namespace taut::app {

namespace {

constexpr double kNameShare = 0.36, kSaidShare = 0.26;

QFont rowFont(const report::Bars::Row& row, const Look& look)
{
    return row.strong ? scaled(look.font, 1, true) : look.font;
}

double rowHeight(const report::Bars::Row& row, double width, UnitSystem system, const Look& look)
{
    const QFontMetricsF metrics(rowFont(row, look));
    const auto tall = [&](const Text& text, double share) {
        return metrics
            .boundingRect(QRectF(0, 0, width * share - 6 * look.unit, 1e6), Qt::TextWordWrap, words(text, system))
            .height();
    };
    return std::max({metrics.height(), tall(row.name, kNameShare), tall(row.said, kSaidShare)}) + 5 * look.unit;
}

double mostOf(const report::Bars& bars)
{
    double most = 0;
    for (const report::Bars::Row& row : bars.rows) most = std::max({most, row.from, row.to, row.mark.value_or(0)});
    return most > 0 ? most : 1;
}

}  // namespace

double barsHeight(const report::Bars& bars, double width, UnitSystem system, const Look& look)
{
    double height = 0;
    for (const report::Bars::Row& row : bars.rows) height += rowHeight(row, width, system, look);
    return height;
}

void paintBars(QPainter& painter, const QRectF& box, const report::Bars& bars, UnitSystem system, const Look& look)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const double u = look.unit, most = mostOf(bars);
    const double name = box.width() * kNameShare, said = box.width() * kSaidShare;
    const double left = box.left() + name, room = box.width() - name - said;
    double y = box.top();
    for (const report::Bars::Row& row : bars.rows) {
        const double height = rowHeight(row, box.width(), system, look);
        painter.setFont(rowFont(row, look));
        painter.setPen(look.palette.ink);
        painter.drawText(QRectF(box.left(), y, name - 6 * u, height),
                         Qt::AlignLeft | Qt::AlignVCenter | Qt::TextWordWrap, words(row.name, system));
        painter.drawText(QRectF(left + room + 6 * u, y, said - 6 * u, height),
                         Qt::AlignLeft | Qt::AlignVCenter | Qt::TextWordWrap, words(row.said, system));
        const double from = left + room * row.from / most, to = left + room * row.to / most;
        const double thick = std::min(height - 5 * u, QFontMetricsF(look.font).height() * 0.7);
        const QRectF bar(from, y + (height - thick) / 2, std::max(to - from, 1.0 * u), thick);
        painter.setPen(QPen(look.palette.ink, 1.0 * u));
        painter.setBrush(row.mark ? look.palette.sheet : look.palette.wash);
        painter.drawRect(bar);
        if (row.mark) {
            const double x = left + room * *row.mark / most;
            painter.setPen(QPen(look.palette.ink, 3 * u, Qt::SolidLine, Qt::FlatCap));
            painter.drawLine(QPointF(x, bar.top()), QPointF(x, bar.bottom()));
        }
        y += height;
    }
    painter.setPen(QPen(look.palette.ink, 1.0 * u));
    painter.drawLine(QPointF(left, box.top()), QPointF(left, y));
    painter.restore();
}

}  // namespace taut::app
