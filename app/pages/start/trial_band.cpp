// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/start/trial_band.h"

#include <QPainter>

#include "app/widgets/theme.h"

namespace taut::app {

TrialBand::TrialBand(QWidget* parent) : QWidget(parent) { setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Minimum); }

int TrialBand::edge() const { return millimetres(2.5); }

void TrialBand::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Palette& p = currentLook().palette;
    const double thick = edge(), step = 2.4 * thick;
    painter.setPen(Qt::NoPen);
    painter.setBrush(p.ink);
    for (double x = -height() - step; x < width() + step; x += step)
        painter.drawPolygon(QPolygonF({QPointF(x, height()), QPointF(x + height(), 0),
                                       QPointF(x + height() + step / 2, 0), QPointF(x + step / 2, height())}));
    const QRectF inside = QRectF(rect()).adjusted(thick, thick, -thick, -thick);
    painter.setBrush(p.wash);
    painter.setPen(QPen(p.ink, 2));
    painter.drawRect(inside);
}

}  // namespace taut::app
