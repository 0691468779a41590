// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QButtonGroup>
#include <QStackedWidget>
#include <QWidget>

#include "app/pages/history/history_page.h"

namespace taut::app {

class WaitingPage;

/// The history: its runs, what waits for somebody, what drifts, where the time goes, and a week on one page.
class HistoryDesk : public QWidget {
    Q_OBJECT

public:
    explicit HistoryDesk(Session* session, QWidget* parent = nullptr);
    /// The runs, brought to the front.
    [[nodiscard]] HistoryPage* runs();
    /// What waits for somebody; what it wants of the shop is for whoever owns the window.
    [[nodiscard]] WaitingPage* waiting() const { return m_waiting; }

    /// The help of the page in front.
    [[nodiscard]] QString helpPage() const;

private:
    void add(const QString& name, const char* object, QWidget* page);
    QButtonGroup* m_tabs;
    QStackedWidget* m_stack;
    QLayout* m_row;
    HistoryPage* m_runs;
    WaitingPage* m_waiting;
};

}  // namespace taut::app
