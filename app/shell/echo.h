// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>

#include "app/sessions/session.h"

namespace taut::app {

/// What a session says, said again behind everybody who heard it from the session itself. A window acts on what its
/// pages show, so it has to hear of a thing after they have; and a page may be made at any time.
class Echo : public QObject {
    Q_OBJECT

public:
    explicit Echo(Session* session, QObject* parent = nullptr);
    /// Behind everybody who listens to the session now. What is being said at this moment is still said to the end.
    void goLast();

signals:
    void opened();
    void openedToRead();
    void busyChanged(bool busy);
    void actorChanged();
    void runChanged();
    void sealed(quint64 seq);
    void mirrorChanged();
    void copiesChanged();
    void refused(const taut::Finding& finding);

private:
    Session* m_session;
};

}  // namespace taut::app
