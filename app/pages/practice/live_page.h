// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <string>

#include <QElapsedTimer>
#include <QWidget>

#include "app/sessions/practice_session.h"
#include "app/widgets/answer.h"

class QButtonGroup;
class QLabel;
class QPushButton;
class QStackedWidget;

namespace taut::app {

class FoundPanel;
class Gauges;
class HandPanel;
class PressPicture;
class StripCharts;
class WhatHappened;

/// A lesson that goes on: left the run as it is answered, right the press and everything one puts a hand to there.
/// Where there is room for one of them only, a button leads from each to the other.
class LivePage : public QWidget {
    Q_OBJECT

public:
    /// runPage: the page of the practice run; it is taken over.
    LivePage(PracticeSession* practice, QWidget* runPage, QWidget* parent = nullptr);
    /// A lesson began.
    void begin();
    /// Shows the run, where it is not in sight.
    void showRun();
    /// Which step of it is looked at; asked when help is wanted.
    using Shown = std::function<std::string()>;
    void setShown(Shown shown) { m_shown = std::move(shown); }

signals:
    /// A step of the procedure is to be shown.
    void stepWanted(const QString& step);
    /// The lesson is to end.
    void left();
    /// The same scenario is to begin once more.
    void again(bool sameSeed);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    QWidget* buildRight();
    QWidget* buildTime();
    QWidget* buildPlaces();
    void show();
    void showPace();
    void showHappened();
    void perform(const practice::Deed& deed);
    void choose(int tab);
    void lower(QWidget* page);
    [[nodiscard]] QWidget* chosenTab() const;
    void fit();
    void showContradicted(const practice::Contradiction& by);
    PracticeSession* m_practice;
    Shown m_shown;
    QWidget *m_left, *m_right;
    QStackedWidget *m_lower, *m_procedure;
    QButtonGroup *m_paces, *m_tabs;
    QLabel *m_clock, *m_behind;
    QPushButton *m_toPress, *m_toRun, *m_help;
    QWidget* m_otherwise;  // what the press says otherwise than an answer
    QLabel* m_otherwiseSaid;
    FoundPanel* m_found;
    PressPicture* m_picture;
    Gauges* m_gauges;
    QWidget* m_places;
    HandPanel* m_hands;
    StripCharts* m_charts;
    WhatHappened* m_happened;
    QElapsedTimer m_told;  // since gauges and charts were written last
    bool m_narrow = false, m_seesPress = true;
};

/// Takes from a step what is not shown with this help.
void veilStep(StepContent& content, const practice::Help& help);

}  // namespace taut::app
