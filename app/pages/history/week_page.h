// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "app/sessions/asker.h"

namespace taut::app {

class PickList;
class ReportPane;
class RowList;

/// A week of a press on one page, to be printed and hung up; this week first.
class WeekPage : public QWidget {
    Q_OBJECT

public:
    explicit WeekPage(Session* session, QWidget* parent = nullptr);

protected:
    void showEvent(QShowEvent* event) override;

private:
    void fill();
    void askWeek();
    Session* m_session;
    Asker m_asker;
    PickList* m_press;
    RowList* m_weeks;
    ReportPane* m_paper;
    bool m_filling = false;
};

}  // namespace taut::app
