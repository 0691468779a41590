// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>

#include <QWidget>

#include "app/sessions/practice_session.h"
#include "app/sessions/training_desk.h"
#include "core/report/report.h"

class QLabel;
class QPushButton;
class QStackedWidget;

namespace taut::app {

class AskPanel;
class RowList;

/// The training record: who practised, what became of each attempt, as paper; and what a trainer signs who looked at
/// one. Whoever may observe sees everybody, others themselves.
class TrainingPage : public QWidget {
    Q_OBJECT

public:
    /// paper: shows what reportMade gives; taken over.
    TrainingPage(Session* shop, PracticeSession* practice, QWidget* paper, QWidget* parent = nullptr);
    /// Reads again what there is.
    void refresh();
    /// Where whoever comes to it begins.
    [[nodiscard]] QWidget* first() const;

signals:
    void reportMade(const taut::report::Report& report, const QString& file);
    void nothingToShow(const QString& why);
    /// This attempt is to be looked at: what it came to, and the press as it was.
    void attemptWanted(const taut::practice::Attempt& attempt);
    void left();

private:
    QWidget* buildLeft();
    [[nodiscard]] bool seesEverybody() const;
    void show(const std::shared_ptr<const Training>& training);
    void fillPeople();
    void fillAttempts();
    void settle();
    [[nodiscard]] const practice::KeptAttempt* chosen() const;
    /// Why whoever is signed in may not sign for this attempt: core's own answer, before anybody types.
    [[nodiscard]] std::optional<Finding> whyNot(const practice::KeptAttempt& kept) const;
    void ask();
    void give(const QStringList& values, const QString& secret);
    void personChanged();
    void busyChanged();
    void back();
    Session* m_shop;
    PracticeSession* m_practice;
    TrainingDesk* m_desk;
    std::shared_ptr<const Training> m_training;
    RowList *m_people, *m_attempts;
    QLabel* m_whyNot;
    QPushButton *m_sign, *m_see, *m_leave;
    QStackedWidget* m_right;
    QWidget* m_paper;
    AskPanel* m_ask;
    people::PersonId m_asked;   // who began to answer
    std::uint64_t m_about = 0;  // the attempt's seal
};

}  // namespace taut::app
