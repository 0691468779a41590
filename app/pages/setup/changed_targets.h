// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include <QLabel>
#include <QLineEdit>
#include <QWidget>

#include "app/sessions/session.h"
#include "app/widgets/controls.h"

namespace taut::app {

class WholeTable;

/// Which targets another text of a press, job or substrate would change, before and after, for a press, a job and a
/// roll that are chosen.
class ChangedTargets : public QWidget {
    Q_OBJECT

public:
    explicit ChangedTargets(Session* session, QWidget* parent = nullptr);
    /// what: press, job or substrate. Nothing is compared with an empty text.
    void show(const std::string& what, const std::string& before, const std::string& after);

private:
    void refill();
    void compare();
    Session* m_session;
    std::string m_what, m_before, m_after;
    PickList *m_press, *m_job;
    QLineEdit* m_diameter;
    QLabel *m_pressLabel, *m_jobLabel, *m_said;
    WholeTable* m_table;
};

}  // namespace taut::app
