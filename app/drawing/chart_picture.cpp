// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drawing/chart_picture.h"

#include <algorithm>

#include <QBuffer>
#include <QPainter>

#include "app/drawing/chart.h"
#include "app/text/words.h"

namespace taut::app {

namespace {

constexpr int kWidth = 1600, kMargin = 40, kGap = 50, kTitle = 44, kCell = 500, kCaption = 36;
constexpr int kTypeSide = 22;  // pixels
constexpr double kUnit = 1.7;  // pixels of a fine line's unit

QFont fontOf(int pixels, bool bold)
{
    QFont font = appFont(12, bold);
    font.setPixelSize(pixels);
    return font;
}

int rowsOf(const ChartPicture& picture) { return (static_cast<int>(picture.charts.size()) + 1) / 2; }

int headOf(const ChartPicture& picture) { return kMargin + kTitle + (picture.mark.isEmpty() ? 0 : kTitle) + kGap / 2; }

}  // namespace

QSize pictureSize(const ChartPicture& picture)
{
    return {kWidth, headOf(picture) + std::max(1, rowsOf(picture)) * (kCell + kGap)};
}

QImage paintPicture(const ChartPicture& picture)
{
    QImage image(pictureSize(picture), QImage::Format_RGB32);
    image.fill(Qt::white);
    const Look look{paperPalette(), fontOf(kTypeSide, false), kUnit};
    QPainter painter(&image);
    painter.setPen(Qt::black);
    const QRectF line(kMargin, kMargin, kWidth - 2 * kMargin, kTitle);
    painter.setFont(fontOf(28, true));
    painter.drawText(line, Qt::AlignLeft | Qt::AlignTop, picture.title);
    if (!picture.mark.isEmpty()) {
        const QRectF below = line.translated(0, kTitle);
        painter.fillRect(below.adjusted(-8, -2, 8, 0), Qt::black);
        painter.setPen(Qt::white);
        painter.setFont(fontOf(24, true));
        painter.drawText(below, Qt::AlignLeft | Qt::AlignVCenter, picture.mark);
        painter.setPen(Qt::black);
    }
    const double width = (kWidth - 2 * kMargin - kGap) / 2.0;
    for (std::size_t i = 0; i < picture.charts.size(); ++i) {
        const int row = static_cast<int>(i) / 2, column = static_cast<int>(i) % 2;
        const QRectF cell(kMargin + column * (width + kGap), headOf(picture) + row * (kCell + kGap), width, kCell);
        painter.setFont(fontOf(kTypeSide, true));
        painter.drawText(cell, Qt::AlignLeft | Qt::AlignTop, words(picture.charts[i].caption, picture.units));
        paintChart(painter, cell.adjusted(0, kCaption, 0, 0), picture.charts[i], picture.units, look);
    }
    return image;
}

QByteArray pngOf(const ChartPicture& picture)
{
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    paintPicture(picture).save(&buffer, "PNG");
    return bytes;
}

}  // namespace taut::app
