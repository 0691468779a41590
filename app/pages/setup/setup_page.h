// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>

#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>
#include <QWidget>

#include "app/sessions/session.h"
#include "app/widgets/ask_panel.h"

namespace taut::app {

class OnceCard;
class PickList;
class RowList;

/// Who works here: everybody with their role and how their door stands, what a supervisor does about it, one's own
/// badge, and the files that a run is begun from.
class SetupPage : public QWidget {
    Q_OBJECT

public:
    explicit SetupPage(Session* session, QWidget* parent = nullptr);
    /// After how many minutes without a touch the PC locks itself.
    [[nodiscard]] int idleMinutes() const;

signals:
    void idleChosen(int minutes);

protected:
    void showEvent(QShowEvent* event) override;

private:
    /// What a question is asked for, once it is answered: its values, and the secret.
    using Given = std::function<void(const QStringList&, const QString&)>;
    QWidget* buildPerson();
    QWidget* buildLeft();
    void refill();
    void settle();
    void ask(const AskPanel::Question& question, Given given);
    void enrol();
    void inviteAgain();
    void changeRole();
    void changeService();
    void makeBadge();
    void takeIn();
    void backToPerson();
    [[nodiscard]] const people::PersonRecord* chosen() const;
    [[nodiscard]] bool supervises() const;
    Session* m_session;
    RowList* m_list;
    QStackedWidget* m_right;
    QWidget* m_person;
    QLabel *m_name, *m_standing, *m_whyNot;
    QPushButton *m_enrol, *m_invite, *m_role, *m_service, *m_badge, *m_take;
    PickList* m_idle;
    AskPanel* m_ask;
    OnceCard* m_once;
    Given m_given;
};

}  // namespace taut::app
