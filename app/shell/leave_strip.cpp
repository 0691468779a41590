// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shell/leave_strip.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPainter>

#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/theme.h"

namespace taut::app {

LeaveStrip::LeaveStrip(QWidget* parent) : QWidget(parent)
{
    m_text = wrapped({}, "strong", this);
    m_stay = worded(tr("Stay"), "main", this);
    m_stay->setObjectName(QStringLiteral("stay"));
    m_quit = worded(tr("&Quit"), "answer", this);
    m_quit->setObjectName(QStringLiteral("quit"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(16, 8, 8, 8);
    row->setSpacing(sizes().gap);
    row->addWidget(m_text, 1);
    row->addWidget(m_stay);
    row->addWidget(m_quit);
    connect(m_stay, &QPushButton::clicked, this, &LeaveStrip::stay);
    connect(m_quit, &QPushButton::clicked, this, &LeaveStrip::quit);
    hide();
}

void LeaveStrip::ask(const run::Run* run, const QStringList& unsealed)
{
    if (QWidget* focus = window()->focusWidget(); focus != nullptr && !isAncestorOf(focus)) m_before = focus;
    QStringList all;
    for (const QString& name : unsealed)
        all << tr("What was changed in %1 is sealed nowhere yet: it is lost when the program ends.").arg(name);
    if (run != nullptr)
        all << tr("Run %1 stays open in the logbook: it goes on from the start page, after somebody has signed in and "
                  "said that the press is safe.")
                   .arg(dataText(run->id()));
    m_text->setText(all.join(QLatin1Char('\n')));
    setAccessibleName(m_text->text());
    show();
    m_stay->setFocus();
}

void LeaveStrip::stay()
{
    // Before it goes, so that the focus falls to nothing that merely comes next.
    if (m_before && m_before->isVisible() && m_before->isEnabled()) m_before->setFocus();
    hide();
}

void LeaveStrip::keyPressEvent(QKeyEvent* event)
{
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (event->key() == Qt::Key_Escape)
        stay();
    else if (enter && !event->isAutoRepeat())
        (m_quit->hasFocus() ? m_quit : m_stay)->click();
    else if (!enter)
        return QWidget::keyPressEvent(event);
    event->accept();
}

void LeaveStrip::paintEvent(QPaintEvent*)
{
    const Look look = currentLook();
    QPainter painter(this);
    painter.fillRect(rect(), look.palette.wash);
    painter.fillRect(QRect(0, 0, 6, height()), look.palette.accent);
}

}  // namespace taut::app
