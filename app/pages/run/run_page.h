// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <string>

#include <QWidget>

#include "app/sessions/session.h"

namespace taut::app {

class RunView;

/// The page of the open run: what the session holds is shown, what is asked goes to the session, and nothing is shown
/// as done before the session says that it is on disk.
class RunPage : public QWidget {
    Q_OBJECT

public:
    explicit RunPage(Session* session, QWidget* parent = nullptr);
    /// What the page shows.
    [[nodiscard]] RunView* view() const { return m_view; }

signals:
    /// Of this run, as it stands.
    void sheetWanted(const QString& runId);
    /// What the setting of this press's zone does is to be found.
    void constantWanted(const QString& press, const QString& zone);

private:
    void showRun();
    void showPeople();
    Session* m_session;
    RunView* m_view;
    std::string m_shownRun;
};

}  // namespace taut::app
