// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include <QWidget>

#include "app/sessions/practice_session.h"

class QLabel;
class QPushButton;
class QStackedWidget;

namespace taut::app {

class AfterLesson;
class ChooseLesson;
class LivePage;
class ReportPane;
class ScenarioForm;
class TrainingPage;

/// The practice press: why it does not open, what may be practised, the lesson, and the sheet of its run. What belongs
/// to other pages is put in by whoever makes this one.
class PracticePage : public QWidget {
    Q_OBJECT

public:
    /// runPage, sheet: of the practice run; attempt: on which what a lesson came to is shown; taken over.
    PracticePage(Session* shop, PracticeSession* practice, QWidget* runPage, QWidget* sheet, ReportPane* attempt,
                 QWidget* parent = nullptr);
    /// Somebody came in by the door. False: a run is open at this PC, and the page says so and nothing else.
    bool enter();
    /// Where whoever comes to it begins.
    void focusFirst();
    void showSheet();
    /// The training record, behind a button beside the scenarios; taken over.
    void setTraining(TrainingPage* page);
    [[nodiscard]] ChooseLesson* chooser() const { return m_choose; }
    [[nodiscard]] LivePage* live() const { return m_live; }

signals:
    /// A step of the practice run is to be shown.
    void stepWanted(const QString& step);
    /// To the run that is open at this PC.
    void runWanted();

protected:
    void hideEvent(QHideEvent* event) override;

private:
    QWidget* buildClosed();
    void begin(const practice::Scenario& scenario, const QString& text);
    void ended(bool attempted);
    void lookAt(const practice::Attempt& attempt);
    void openTraining();
    void again(bool sameSeed);
    void refuse(const Finding& finding);
    void lookWho();
    Session* m_shop;
    PracticeSession* m_practice;
    QStackedWidget* m_stack;
    QWidget *m_closed, *m_sheetPage;
    QLabel* m_why;
    QPushButton* m_toRun;
    ChooseLesson* m_choose;
    LivePage* m_live;
    AfterLesson* m_after;
    ScenarioForm* m_build;
    TrainingPage* m_training = nullptr;
    bool m_fromRecord = false;  ///< that attempt was chosen in the training record
    std::string m_shownTo;      ///< the person's id who was shown what an attempt came to
};

}  // namespace taut::app
