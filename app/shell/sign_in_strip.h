// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QWidget>

#include "app/sessions/session.h"

namespace taut::app {

/// Who sits here: choose a name, type the PIN; or who is signed in, and a way to lock.
class SignInStrip : public QWidget {
    Q_OBJECT

public:
    explicit SignInStrip(Session* session, QWidget* parent = nullptr);
    /// Whoever comes types at once.
    void focusPin();

    /// Whether name and role stand on a line each, and how much narrower that makes it.
    void setNarrow(bool narrow);
    [[nodiscard]] bool isNarrow() const { return m_narrow; }
    [[nodiscard]] int saves() const;

signals:
    void chosen(const QString& personId);    ///< who is about to sign in
    void firstUse(const QString& personId);  ///< somebody who has chosen no PIN yet

private:
    void settle();
    void refill();
    void signIn();
    void nameThem();
    Session* m_session;
    QComboBox* m_person;
    QLineEdit* m_pin;
    QPushButton *m_in, *m_choose, *m_lock;
    QLabel* m_who;
    bool m_narrow = false;
};

}  // namespace taut::app
