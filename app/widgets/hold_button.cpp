// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/hold_button.h"

#include <algorithm>
#include <utility>

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>

#include "app/widgets/theme.h"

namespace taut::app {

namespace {

constexpr int kTickMs = 40, kHintMs = 3000;
// A screen that is far away repeats a held key as let go and pressed again, in two messages.
constexpr int kRepeatMs = 60;

}  // namespace

HoldButton::HoldButton(const QString& text, QWidget* parent) : WordButton(text, parent)
{
    withRole(this, "vital");
    setAutoDefault(false);
    setAccessibleName(text);
    setAccessibleDescription(tr("Hold for a moment, or press twice with assistive technology."));
    m_tick.setInterval(kTickMs);
    connect(&m_tick, &QTimer::timeout, this, &HoldButton::advance);
    m_hint.setInterval(kHintMs);
    m_hint.setSingleShot(true);
    connect(&m_hint, &QTimer::timeout, this, [this] { update(); });
    m_release.setInterval(kRepeatMs);
    m_release.setSingleShot(true);
    connect(&m_release, &QTimer::timeout, this, &HoldButton::letGo);
    connect(this, &QPushButton::clicked, this, [this] {
        // Only assistive technology gets here: finger and key are taken below.
        constexpr int kArmedMs = 5000;
        if (std::exchange(m_armed, !m_armed)) emit held();
        if (m_armed) QTimer::singleShot(kArmedMs, this, [this] { m_armed = false; });
    });
}

double HoldButton::progress() const
{
    return m_tick.isActive() ? std::min(1.0, static_cast<double>(m_since.elapsed()) / kHoldMs) : 0;
}

QString HoldButton::shownWords() const { return m_hint.isActive() ? tr("Hold until the bar is full") : text(); }

void HoldButton::begin()
{
    if (!isEnabled() || m_tick.isActive()) return;
    m_hint.stop();
    m_since.start();
    setDown(true);
    m_tick.start();
}

void HoldButton::cancel()
{
    m_tick.stop();
    m_release.stop();
    setDown(false);
    update();
}

/// Whoever tapped it sees how it is answered instead; a finger that slid off did not mean it.
void HoldButton::letGo()
{
    if (m_tick.isActive()) m_hint.start();
    cancel();
}

void HoldButton::advance()
{
    // By the clock and not by ticks: on a busy PC they come late, and the finger would have to wait for them.
    update();
    if (m_since.elapsed() < kHoldMs || m_release.isActive()) return;
    cancel();
    emit held();
}

void HoldButton::mousePressEvent(QMouseEvent* event)
{
    if (event->button() == Qt::LeftButton) begin();
}

void HoldButton::mouseReleaseEvent(QMouseEvent*) { letGo(); }

void HoldButton::mouseMoveEvent(QMouseEvent* event)
{
    if (!rect().contains(event->pos())) cancel();
}

void HoldButton::keyPressEvent(QKeyEvent* event)
{
    const int key = event->key();
    if (key != Qt::Key_Space && key != Qt::Key_Return && key != Qt::Key_Enter) {
        WordButton::keyPressEvent(event);
        return;
    }
    m_release.stop();
    if (!event->isAutoRepeat()) begin();
    event->accept();
}

void HoldButton::keyReleaseEvent(QKeyEvent* event)
{
    if (!event->isAutoRepeat() && m_tick.isActive()) m_release.start();
}

void HoldButton::focusOutEvent(QFocusEvent* event)
{
    cancel();
    m_armed = false;
    QPushButton::focusOutEvent(event);
}

void HoldButton::paintEvent(QPaintEvent* event)
{
    WordButton::paintEvent(event);
    if (!m_tick.isActive()) return;
    // A bar along the foot that fills while the button is held.
    const Look look = currentLook();
    QPainter painter(this);
    const double foot = 10;
    painter.fillRect(QRectF(6, height() - foot - 5, width() - 12, foot), look.palette.sheet);
    painter.fillRect(QRectF(6, height() - foot - 5, (width() - 12) * progress(), foot), look.palette.ink);
}

}  // namespace taut::app
