// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shell/top_bar.h"

#include <algorithm>

#include <QEvent>
#include <QHBoxLayout>

#include "app/shell/sign_in_strip.h"

namespace taut::app {

namespace {

constexpr int kTight = 1;  // pixels between two doors where there is little room

/// Between what is seen; a stretch has no gap.
int gapsIn(const QLayout& row)
{
    int seen = 0;
    for (int i = 0; i < row.count(); ++i) seen += row.itemAt(i)->isEmpty() ? 0 : 1;
    return std::max(0, seen - 1);
}

}  // namespace

TopBar::TopBar(QWidget* parent) : QWidget(parent)
{
    m_rows = new QBoxLayout(QBoxLayout::LeftToRight, this);
    m_rows->setContentsMargins(0, 0, 0, 0);
    m_rows->setSizeConstraint(QLayout::SetNoConstraint);
    m_doors = new QHBoxLayout;
    m_right = new QHBoxLayout;
    m_wide = std::max(m_rows->spacing(), kTight);
    for (QLayout* row : {m_doors, m_right}) row->setSpacing(m_wide);
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
    who->layout()->setSpacing(m_wide);
}

/// What can move closer: the doors, and what somebody signs in with.
std::vector<QLayout*> TopBar::spaced() const { return {m_doors, m_right, m_who->layout()}; }

QSize TopBar::minimumSizeHint() const
{
    const QSize left = m_doors->minimumSize(), right = m_right->minimumSize();
    const int less = m_who != nullptr && !m_who->isNarrow() ? m_who->saves() : 0;
    const bool two = m_rows->direction() == QBoxLayout::TopToBottom;
    return {std::max(left.width(), right.width() - less),
            two ? left.height() + m_rows->spacing() + right.height() : std::max(left.height(), right.height())};
}

/// First what stands there moves closer, then the name goes on two lines, then there are two rows. Nothing is set that
/// stands already: each change asks for the layout once more.
void TopBar::fit()
{
    if (m_who == nullptr) return;
    int gaps = 0;
    for (const QLayout* row : spaced()) gaps += gapsIn(*row);
    const int spacing = m_doors->spacing();
    const int tight = m_doors->minimumSize().width() + m_right->minimumSize().width() + m_rows->spacing() -
                      gaps * (spacing - kTight) + (m_who->isNarrow() ? m_who->saves() : 0);
    const int wide = tight + gaps * (m_wide - kTight);
    const bool closer = wide > width(), narrow = tight > width() && tight - m_who->saves() <= width();
    const bool two = tight > width() && !narrow;
    m_who->setNarrow(narrow);
    const int wanted = closer && !two ? kTight : m_wide;
    const auto direction = two ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight;
    if (m_rows->direction() == direction && spacing == wanted) return;
    for (QLayout* row : spaced()) row->setSpacing(wanted);
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
