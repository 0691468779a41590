// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/control_view.h"

#include <algorithm>
#include <utility>

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QtMath>

#include "app/drawing/control_figure.h"
#include "app/text/words.h"
#include "app/widgets/theme.h"

namespace taut::app {

namespace {

constexpr double kFrame = 3;  // pixels of the ring that shows the focus

}  // namespace

ControlView::ControlView(QWidget* parent) : QWidget(parent)
{
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setAccessibleName(tr("Chart of the readings"));
}

void ControlView::show(report::ControlFigure figure, UnitSystem system)
{
    m_figure = std::move(figure);
    m_system = system;
    m_chosen.reset();
    if (!m_figure.dots.empty()) m_chosen = m_figure.since.value_or(m_figure.dots.size() - 1);
    tellChosen({});
    update();
}

void ControlView::clear() { show({}, m_system); }

void ControlView::tellChosen(const QString& sentence)
{
    QStringList said;
    for (const Text& one : m_figure.summary) said << words(one, m_system);
    if (!sentence.isEmpty()) said << sentence;
    setAccessibleDescription(said.join(QLatin1Char(' ')));
}

void ControlView::choose(std::size_t dot)
{
    if (dot >= m_figure.dots.size()) return;
    m_chosen = dot;
    update();
    emit dotChosen(dot);
}

QSize ControlView::sizeHint() const
{
    const QSizeF size = controlFigureSize(currentLook());
    return {qCeil(size.width() * 1.3), qCeil(size.height() * 1.3)};
}

QSize ControlView::minimumSizeHint() const
{
    const QSizeF size = controlFigureSize(currentLook());
    return {qCeil(size.width() * 0.8), qCeil(size.height() * 0.8)};
}

void ControlView::paintEvent(QPaintEvent* /*event*/)
{
    QPainter painter(this);
    const Look look = currentLook();
    const QRectF box = QRectF(rect()).adjusted(kFrame, kFrame, -kFrame, -kFrame);
    paintControlFigure(painter, box, m_figure, m_system, look, m_chosen);
    if (!hasFocus()) return;
    painter.setPen(QPen(look.palette.accent, kFrame));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(QRectF(rect()).adjusted(kFrame / 2, kFrame / 2, -kFrame / 2, -kFrame / 2));
}

void ControlView::mousePressEvent(QMouseEvent* event)
{
    const QRectF box = QRectF(rect()).adjusted(kFrame, kFrame, -kFrame, -kFrame);
    const auto dot = controlFrame(box, m_figure, m_system, currentLook()).dotAt(event->position().x());
    if (!dot) return;
    const bool again = m_chosen == dot;
    choose(*dot);
    if (again) emit dotOpened(*dot);
}

void ControlView::keyPressEvent(QKeyEvent* event)
{
    if (!m_chosen) return QWidget::keyPressEvent(event);
    const std::size_t last = m_figure.dots.size() - 1;
    switch (event->key()) {
    case Qt::Key_Left: return choose(*m_chosen > 0 ? *m_chosen - 1 : 0);
    case Qt::Key_Right: return choose(std::min(*m_chosen + 1, last));
    case Qt::Key_Home: return choose(0);
    case Qt::Key_End: return choose(last);
    case Qt::Key_Return:
    case Qt::Key_Enter: emit dotOpened(*m_chosen); return;
    default: QWidget::keyPressEvent(event);
    }
}

void ControlView::focusInEvent(QFocusEvent* event)
{
    QWidget::focusInEvent(event);
    update();
}

void ControlView::focusOutEvent(QFocusEvent* event)
{
    QWidget::focusOutEvent(event);
    update();
}

}  // namespace taut::app
