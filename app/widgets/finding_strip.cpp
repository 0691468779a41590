// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/finding_strip.h"

#include <algorithm>

#include <QEvent>
#include <QHBoxLayout>
#include <QPainter>
#include <QStyle>

#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/theme.h"

namespace taut::app {

namespace {

constexpr int kReservedLines = 3;  // what is wrong and what to do, one of them on two lines
constexpr int kAbove = 5, kEdge = 16, kRight = 8, kRowEdge = 12;

}  // namespace

FindingStrip::FindingStrip(QWidget* parent, const QString& close) : QWidget(parent)
{
    m_head = wrapped({}, "strong", this);
    m_text = wrapped({}, "", this);
    m_close = worded(close.isEmpty() ? tr("&Understood") : close, "quiet", this);
    auto* words = new QVBoxLayout;
    words->setSpacing(2);
    words->addWidget(m_head);
    words->addWidget(m_text);
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(kEdge, kAbove, kRight, kAbove);
    layout->addLayout(words, 1);
    layout->addWidget(m_close, 0, Qt::AlignVCenter);
    connect(m_close, &QPushButton::clicked, this, [this] {
        // Before it goes: the focus of something hidden falls to whatever comes next, and that may withdraw a press.
        if (m_before && m_before->isVisible() && m_before->isEnabled()) m_before->setFocus();
        emit understood();
        clear();
        emit gone();
    });
    hide();
}

void FindingStrip::say(const Finding& finding, UnitSystem system)
{
    if (QWidget* focus = window()->focusWidget(); focus != nullptr && !isAncestorOf(focus)) m_before = focus;
    const QString what = words(finding.text, system), all = words(finding, system);
    m_text->setText(words(finding.remedy, system));
    setAccessibleName(all);
    show();
    const bool whole = !m_inRow || fitsRow(all);
    set(m_inRow, whole && m_inRow ? all : what);
    m_head->setToolTip(whole ? QString() : all);
    // A long one stays in its room: one sentence after the other, in small type.
    if (m_reserved && wantedHeight(width()) > minimumHeight()) set(true, all);
}

void FindingStrip::set(bool small, const QString& head)
{
    withRole(m_head, small ? "small" : "strong");
    m_head->style()->unpolish(m_head);
    m_head->style()->polish(m_head);
    m_head->setText(head);
    m_text->setVisible(!small && !m_text->text().isEmpty());
}

void FindingStrip::clear() { hide(); }

void FindingStrip::reserve(bool reserved)
{
    if (reserved == m_reserved) return;
    m_reserved = reserved;
    QSizePolicy policy = sizePolicy();
    policy.setRetainSizeWhenHidden(reserved);
    setSizePolicy(policy);
    keepRoom();
}

void FindingStrip::keepRoom()
{
    ensurePolished();
    if (m_inRow) return setFixedHeight(sizes().control);
    setMinimumHeight(m_reserved ? kReservedLines * fontMetrics().lineSpacing() + 2 * kAbove + 2 : 0);
}

int FindingStrip::wantedHeight(int width) const
{
    const int kept = m_reserved ? minimumHeight() : 0;
    if (isHidden()) return kept;
    layout()->activate();  // words that were just set count
    return std::max(kept, heightForWidth(width));
}

void FindingStrip::standInRow()
{
    m_inRow = true;
    m_close->hide();
    m_text->hide();
    withRole(m_head, "small");
    layout()->setContentsMargins(kRowEdge, 0, 0, 0);
    QSizePolicy policy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    policy.setRetainSizeWhenHidden(true);
    setSizePolicy(policy);
    keepRoom();
}

bool FindingStrip::fitsRow(const QString& words) const
{
    m_head->ensurePolished();
    const QRect room(0, 0, width() - kRowEdge, 10000);
    if (room.width() < height()) return false;
    const QRect said = m_head->fontMetrics().boundingRect(room, Qt::TextWordWrap, words);
    return said.height() <= height() && said.width() <= room.width();
}

void FindingStrip::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) keepRoom();
}

void FindingStrip::paintEvent(QPaintEvent*)
{
    const Look look = currentLook();
    QPainter painter(this);
    painter.fillRect(rect(), look.palette.wash);
    painter.fillRect(QRect(0, 0, 6, height()), look.palette.outside);
}

}  // namespace taut::app
