// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shell/top_bar.h"

#include <algorithm>

#include <QEvent>
#include <QHBoxLayout>

#include "app/shell/sign_in_strip.h"

namespace taut::app {

TopBar::TopBar(QWidget* parent) : QWidget(parent)
{
    m_rows = new QBoxLayout(QBoxLayout::LeftToRight, this);
    m_rows->setContentsMargins(0, 0, 0, 0);
    m_rows->setSizeConstraint(QLayout::SetNoConstraint);
    m_doors = new QHBoxLayout;
    m_right = new QHBoxLayout;
    m_doors->addStretch(0);
    m_rows->addLayout(m_doors);
    m_rows->addLayout(m_right, 1);
}

void TopBar::addDoor(QWidget* door) { m_doors->insertWidget(m_doors->count() - 1, door); }

void TopBar::addWho(QWidget* said, SignInStrip* who)
{
    m_who = who;
    m_right->addWidget(said, 1);
    m_right->addStretch(0);
    m_right->addWidget(who);
}

QSize TopBar::minimumSizeHint() const
{
    const QSize left = m_doors->minimumSize(), right = m_right->minimumSize();
    const int less = m_who != nullptr ? m_who->saves() : 0;
    const bool two = m_rows->direction() == QBoxLayout::TopToBottom;
    return {std::max(left.width(), right.width() - less),
            two ? left.height() + m_rows->spacing() + right.height() : std::max(left.height(), right.height())};
}

/// Nothing is set that stands already: each change asks for the layout once more.
void TopBar::fit()
{
    if (m_who == nullptr) return;
    const int left = m_doors->minimumSize().width(), right = m_right->minimumSize().width();
    const int oneLine = left + m_rows->spacing() + right + (m_who->isNarrow() ? m_who->saves() : 0);
    const bool narrow = oneLine > width() && oneLine - m_who->saves() <= width();
    const bool two = oneLine > width() && !narrow;
    m_who->setNarrow(narrow);
    const auto direction = two ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight;
    if (m_rows->direction() == direction) return;
    m_rows->setDirection(direction);
    updateGeometry();
}

bool TopBar::event(QEvent* event)
{
    const bool done = QWidget::event(event);
    if (event->type() == QEvent::LayoutRequest) fit();
    return done;
}

void TopBar::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    fit();
}

}  // namespace taut::app
