// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>
#include <QWidget>

#include "app/sessions/asker.h"
#include "core/history/checks.h"
#include "core/history/refit.h"
#include "core/history/waiting.h"

namespace taut::app {

class AskPanel;
class RecordActs;
class ReportPane;
class RowList;

/// What waits for a supervisor: presses out of use, checks that are overdue, runs to be reviewed, runs sent back,
/// constants that drift, people at a shut door. A run is opened as its sheet; those that were opened can be accepted
/// together.
class WaitingPage : public QWidget {
    Q_OBJECT

public:
    explicit WaitingPage(Session* session, QWidget* parent = nullptr);
    void refill();

signals:
    /// To the shop: a press to be given back, people to be let in again.
    void shopWanted();
    /// A profile with another constant, to be looked at and sealed: the press before and after, and the zone.
    void editionWanted(const std::string& before, const std::string& after, const std::string& zone);

protected:
    void showEvent(QShowEvent* event) override;

private:
    void add(const QString& id, const QString& text, const QString& value, const QString& more, bool done);
    void addRuns(const QString& head, const std::vector<records::RunRow>& runs);
    void addChecks();
    void addConstants();
    /// What takes a look at many runs: checks and constants.
    void askRecord();
    void openCurrent();
    void openRun(const std::string& run);
    void lookedThrough(bool through);
    void askAccept();
    void settle();
    /// Those listed that were opened as they stand.
    [[nodiscard]] std::vector<std::string> acceptable() const;
    /// A constant that the runs measured otherwise, with the text of the press that states it.
    struct Constant {
        history::Refit refit;
        run::Source press;
        UnitSystem units{};
    };
    Session* m_session;
    Asker m_asker;
    RowList* m_list;
    QStackedWidget* m_right;
    ReportPane* m_paper;
    RecordActs* m_acts;
    AskPanel* m_ask;
    QLabel* m_said;
    QPushButton *m_accept, *m_shop, *m_take, *m_through;
    history::Waiting m_waiting;
    history::Opened m_opened;
    std::vector<Constant> m_constants;
    std::vector<history::CheckStanding> m_checks;  ///< all of them, overdue or not
};

}  // namespace taut::app
