// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "app/sessions/asker.h"

namespace taut::app {

class Narrowing;
class PickList;
class ReportPane;

/// Where the time of setting up goes and what is lost, over the runs that are chosen, as a sheet.
class TimePage : public QWidget {
    Q_OBJECT

public:
    explicit TimePage(Session* session, QWidget* parent = nullptr);
    /// Asks the logbook again.
    void refill();

protected:
    void showEvent(QShowEvent* event) override;

private:
    Session* m_session;
    Asker m_asker;
    Narrowing* m_narrow;
    PickList* m_group;
    ReportPane* m_paper;
};

}  // namespace taut::app
