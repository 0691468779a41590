// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>
#include <QTimer>
#include <QVBoxLayout>
#include <QWidget>

#include "app/pages/start/choice_panel.h"
#include "app/pages/start/return_panel.h"
#include "app/pages/start/target_list.h"
#include "app/pages/start/trial_panel.h"
#include "app/widgets/controls.h"

namespace taut::app {

/// Where a run begins: what is open or out of use first, then the four inputs and at once what follows from them.
/// Other values can be tried on it; while they are, nothing begins. What was set when the job ran here last is a look
/// away.
class StartPage : public QWidget {
    Q_OBJECT

public:
    explicit StartPage(Session* session, QWidget* parent = nullptr);
    /// Why a run cannot begin now; empty when it can.
    [[nodiscard]] QString whyNot() const;
    /// Whether what is shown is a trial and not the real roll.
    [[nodiscard]] bool onTrial() const { return m_stack->currentWidget() == m_trial; }

signals:
    /// Somebody who is new here wants to be shown round.
    void tourWanted();
    /// The code of a printed sheet came from the scanner.
    void sheetScanned(const QString& code);
    /// A sealed run is to be looked at.
    void runWanted(const QString& run);

private:
    void refill();
    void showTop();
    void addSentBack(const history::SentBack& back);
    void showTargets();
    void begin();
    void beginTrial();
    void endTrial();
    void askRoll(const QString& scanned);
    void useRoll(const std::string& toml);
    /// Whether this job ran here before, and on from there.
    void showEarlier();
    void openEarlier();
    void closeEarlier();
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
    ReturnPanel* m_return;
    QPushButton* m_earlier;                       // leads there
    std::optional<records::RunRow> m_earlierRun;  // the one that it tells of
    QLabel *m_whyNot, *m_head;
    QPushButton* m_tour;  // offered until somebody has looked round, or begun a run
    QTimer m_soon{this};
    bool m_stops = false;
};

}  // namespace taut::app
