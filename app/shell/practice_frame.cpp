// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shell/practice_frame.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPaintEvent>
#include <QPainter>
#include <QVBoxLayout>

#include "app/widgets/controls.h"
#include "app/widgets/theme.h"

namespace taut::app {

namespace {

constexpr int kWide = 12;

}  // namespace

PracticeFrame::PracticeFrame(QWidget* parent) : QWidget(parent)
{
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSizeConstraint(QLayout::SetNoConstraint);
}

void PracticeFrame::setHatched(bool hatched)
{
    if (hatched == m_hatched) return;
    m_hatched = hatched;
    const int wide = hatched ? kWide : 0;
    layout()->setContentsMargins(wide, wide, wide, wide);
    update();
}

void PracticeFrame::paintEvent(QPaintEvent* event)
{
    const QRegion frame = QRegion(rect()) - QRegion(rect().adjusted(kWide, kWide, -kWide, -kWide));
    // Whatever moves in the middle is painted often, and the frame is not.
    if (!m_hatched || !event->region().intersects(frame)) return;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Palette p = currentLook().palette;
    painter.setClipRegion(frame);
    painter.fillRect(rect(), p.sheet);
    painter.setPen(QPen(p.accent, 5, Qt::SolidLine, Qt::FlatCap));
    constexpr int kApart = 16;
    for (int x = -height(); x < width(); x += kApart) painter.drawLine(QPointF(x, height()), QPointF(x + height(), 0));
    painter.setClipping(false);
    painter.setPen(QPen(p.accent, 2));
    painter.drawRect(QRectF(rect()).adjusted(kWide - 1, kWide - 1, 1 - kWide, 1 - kWide));
}

PracticeBand::PracticeBand(QWidget* parent) : QWidget(parent)
{
    m_word = new QLabel(tr("PRACTICE"), this);
    m_word->setObjectName(QStringLiteral("practiceWord"));
    m_told = wrapped(tr("Nothing here moves or stops a machine. In an emergency use the press."), "", this);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(12, 4, 12, 4);
    row->setSpacing(16);
    row->addWidget(m_word);
    row->addWidget(m_told, 1);
    dress();
}

void PracticeBand::dress()
{
    const Look look = currentLook(1.22, true);
    const QString sheet = QStringLiteral("color: %1; background: transparent;").arg(look.palette.onAccent.name());
    m_word->setStyleSheet(sheet + QStringLiteral(" font-size: %1pt; font-weight: bold; letter-spacing: 4px;")
                                      .arg(look.font.pointSizeF(), 0, 'f', 1));
    m_told->setStyleSheet(sheet + QStringLiteral(" font-weight: bold;"));
}

void PracticeBand::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.fillRect(rect(), currentLook().palette.accent);
}

void PracticeBand::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    // Its words have sheets of their own: what is chosen for the screen reaches them by this.
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::StyleChange) dress();
}

}  // namespace taut::app
