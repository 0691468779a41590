// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "app/sessions/session.h"

namespace taut::app {

class AskPanel;

/// Where a person chooses what only they know: the first supervisor of a new logbook, or whoever comes with a first-use
/// code.
class ChoosePage : public QWidget {
    Q_OBJECT

public:
    explicit ChoosePage(Session* session, QWidget* parent = nullptr);
    /// Of a logbook that knows nobody.
    void askFirst();
    /// Of somebody who was enrolled and has chosen nothing yet.
    void askFor(const people::PersonRecord& person);
    /// To the first field.
    void focusFirst();
    /// Away with what was asked, and with every secret that was typed.
    void forget();

signals:
    void left();  ///< without having chosen

private:
    void give(const QStringList& values);
    Session* m_session;
    AskPanel* m_ask;
    QString m_person;  // "" = the first of all
};

}  // namespace taut::app
