// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shell/echo.h"

namespace taut::app {

Echo::Echo(Session* session, QObject* parent) : QObject(parent), m_session(session) { goLast(); }

void Echo::goLast()
{
    // Whatever asks for this in the middle of a signal was asked by this echo, which has said that one already: of a
    // signal under way Qt tells nobody who joined during it.
    disconnect(m_session, nullptr, this, nullptr);
    connect(m_session, &Session::opened, this, &Echo::opened);
    connect(m_session, &Session::openedToRead, this, &Echo::openedToRead);
    connect(m_session, &Session::busyChanged, this, &Echo::busyChanged);
    connect(m_session, &Session::actorChanged, this, &Echo::actorChanged);
    connect(m_session, &Session::runChanged, this, &Echo::runChanged);
    connect(m_session, &Session::sealed, this, &Echo::sealed);
    connect(m_session, &Session::mirrorChanged, this, &Echo::mirrorChanged);
    connect(m_session, &Session::copiesChanged, this, &Echo::copiesChanged);
    connect(m_session, &Session::refused, this, &Echo::refused);
}

}  // namespace taut::app
