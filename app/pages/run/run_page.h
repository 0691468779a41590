// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <optional>

#include <QStackedWidget>
#include <QWidget>

#include "app/pages/run/run_acts.h"
#include "app/pages/run/run_shown.h"
#include "app/sessions/session.h"

class QLabel;
class QPushButton;

namespace taut::app {

class ElevationWidget;
class MakeSafeCard;
class ReviewCard;
class RollForm;
class StepCard;
class StepList;
class TautLineWidget;
class WhyPanel;

/// A run, one step at a time: the taut line above, the steps of this place to the left, one step large in the middle,
/// the press and the reasons to the right. It asks the session and shows what came of it.
class RunPage : public QWidget {
    Q_OBJECT

public:
    explicit RunPage(Session* session, QWidget* parent = nullptr);
    /// The step that is shown; "" while there is none.
    [[nodiscard]] QString shownStep() const { return QString::fromStdString(m_step.value); }

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void build();
    void wire();
    void showRun();
    void showStep(const procedure::StepId& id);
    void showRefusal(const Finding& finding);
    void startAct(RunAct act);
    void giveAct(const QStringList& values, const QString& person, const QString& pin);
    void settleActs();
    [[nodiscard]] std::vector<PersonChoice> people() const;
    [[nodiscard]] const procedure::Step* step() const;
    Session* m_session;
    QLabel* m_head;
    TautLineWidget* m_line;
    StepList* m_list;
    QStackedWidget* m_middle;
    StepCard* m_card;
    AskPanel* m_ask;
    RollForm* m_roll;
    MakeSafeCard* m_safe;
    ReviewCard* m_review;
    ElevationWidget* m_press;
    WhyPanel* m_why;
    std::map<RunAct, QPushButton*> m_acts;
    RunAct m_act{};
    procedure::StepId m_step;
    std::uint64_t m_events = 0;
    std::optional<RunFiles> m_files;
};

}  // namespace taut::app
