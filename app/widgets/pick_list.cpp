// SPDX-License-Identifier: GPL-3.0-or-later
#include <QPainter>
#include <QStylePainter>
#include <QWheelEvent>

#include "app/widgets/controls.h"
#include "app/widgets/theme.h"

namespace taut::app {

PickList::PickList(QWidget* parent) : QComboBox(parent)
{
    setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    setMinimumContentsLength(8);
    connect(this, &QComboBox::currentTextChanged, this, &QWidget::setToolTip);
}

void PickList::wheelEvent(QWheelEvent* event) { event->ignore(); }

void PickList::paintEvent(QPaintEvent*)
{
    QStylePainter painter(this);
    QStyleOptionComboBox option;
    initStyleOption(&option);
    if (currentIndex() < 0 && !placeholderText().isEmpty()) {
        option.palette.setBrush(QPalette::ButtonText, option.palette.placeholderText());
        option.currentText = placeholderText();
    }
    painter.drawComplexControl(QStyle::CC_ComboBox, option);
    // What does not fit gives way in the middle, as it does in the list: beginning and end tell rows apart.
    const int room = style()->subControlRect(QStyle::CC_ComboBox, &option, QStyle::SC_ComboBoxEditField, this).width();
    option.currentText = fontMetrics().elidedText(option.currentText, Qt::ElideMiddle, room - 4);
    painter.drawControl(QStyle::CE_ComboBoxLabel, option);
    // The style sheet has no arrow of its own.
    constexpr double kHalf = 7, kFromEdge = 22;
    painter.setRenderHint(QPainter::Antialiasing);
    const QColor ink = isEnabled() ? currentLook().palette.ink : currentLook().palette.soft;
    painter.setPen(QPen(ink, 2.5, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    const QPointF tip(width() - kFromEdge, height() / 2.0 + kHalf / 2);
    painter.drawPolyline(QPolygonF{tip + QPointF(-kHalf, -kHalf), tip, tip + QPointF(kHalf, -kHalf)});
}

}  // namespace taut::app
