// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/history/history_desk.h"

#include <QPushButton>
#include <QVBoxLayout>

#include "app/pages/history/drift_page.h"
#include "app/pages/history/time_page.h"
#include "app/pages/history/waiting_page.h"
#include "app/pages/history/week_page.h"
#include "app/widgets/controls.h"
#include "app/widgets/room.h"
#include "app/widgets/theme.h"

namespace taut::app {

HistoryDesk::HistoryDesk(Session* session, QWidget* parent) : QWidget(parent)
{
    m_tabs = new QButtonGroup(this);
    m_tabs->setExclusive(true);
    m_stack = new QStackedWidget(this);
    auto* row = new FlowRow;
    row->setSpacing(6);
    m_row = row;
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addLayout(row);
    column->addWidget(m_stack, 1);

    m_runs = new HistoryPage(session, m_stack);
    auto* drift = new DriftPage(session, m_stack);
    add(tr("Runs"), "deskRuns", m_runs);
    m_waiting = new WaitingPage(session, m_stack);
    add(tr("Waiting"), "deskWaiting", m_waiting);
    add(tr("Drift"), "deskDrift", drift);
    add(tr("Time and losses"), "deskTime", new TimePage(session, m_stack));
    add(tr("Week"), "deskWeek", new WeekPage(session, m_stack));
    m_tabs->button(0)->setChecked(true);
    // Also where a window that was made anew checks it.
    connect(m_tabs, &QButtonGroup::idToggled, this, [this](int page, bool checked) {
        if (checked) m_stack->setCurrentIndex(page);
    });
    connect(drift, &DriftPage::runWanted, this, [this](const QString& run) {
        runs()->showRun(run);
        m_runs->focusList();
    });
}

void HistoryDesk::add(const QString& name, const char* object, QWidget* page)
{
    auto* button = worded(name, "quiet", this);
    button->setObjectName(QString::fromLatin1(object));
    button->setCheckable(true);
    button->setMinimumHeight(sizes().control);
    m_tabs->addButton(button, m_stack->count());
    m_row->addWidget(button);
    m_stack->addWidget(page);
}

QString HistoryDesk::helpPage() const
{
    return m_stack->currentWidget() == m_runs ? QStringLiteral("history") : QStringLiteral("desk");
}

HistoryPage* HistoryDesk::runs()
{
    m_tabs->button(m_stack->indexOf(m_runs))->setChecked(true);
    m_stack->setCurrentWidget(m_runs);
    return m_runs;
}

}  // namespace taut::app
