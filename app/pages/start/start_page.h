// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>
#include <QTimer>
#include <QVBoxLayout>
#include <QWidget>

#include "app/pages/start/choice_panel.h"
#include "app/pages/start/target_list.h"
#include "app/pages/start/trial_panel.h"
#include "app/widgets/controls.h"

namespace taut::app {

/// Where a run begins: what is open or out of use first, then the four inputs and at once what follows from them.
/// Other values can be tried on it; while they are, nothing begins.
class StartPage : public QWidget {
    Q_OBJECT

public:
    explicit StartPage(Session* session, QWidget* parent = nullptr);
    /// Why a run cannot begin now; empty when it can.
    [[nodiscard]] QString whyNot() const;
    /// Whether what is shown is a trial and not the real roll.
    [[nodiscard]] bool onTrial() const { return m_stack->currentWidget() == m_trial; }

private:
    void refill();
    void showTop();
    void showTargets();
    void begin();
    void beginTrial();
    void endTrial();
    void askRoll(const QString& scanned);
    void useRoll(const std::string& toml);
    void addWithdrawal(const records::Withdrawal& withdrawal);
    void addOpenRun(const std::string& runId);
    Session* m_session;
    QVBoxLayout* m_top;
    QWidget* m_topBox;
    std::vector<QPushButton*> m_topActs;  // what is done from there
    ChoicePanel* m_choice;
    TargetList* m_targets;
    QPushButton* m_begin;
    QStackedWidget* m_stack;
    TrialPanel* m_trial;
    RollForm* m_rollForm;
    QLabel *m_whyNot, *m_head;
    QTimer m_soon{this};
    bool m_stops = false;
};

}  // namespace taut::app
