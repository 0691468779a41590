// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <map>

#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>
#include <QWidget>

#include "app/sessions/session.h"
#include "app/widgets/ask_panel.h"

namespace taut::app {

class CompetenceCard;
class DefinitionsPage;
class LogbookCard;
class OnceCard;
class PickList;
class RowList;
class ThisPcPage;

/// Who works here: everybody with their role and how their door stands, what a supervisor does about it, one's own
/// badge and secrets, the files that a run is begun from, and that the logbook is kept twice.
class SetupPage : public QWidget {
    Q_OBJECT

public:
    explicit SetupPage(Session* session, QWidget* parent = nullptr);
    /// Opens the card that finds what a setting of this press's zone does.
    void findConstant(const std::string& press, const std::string& zone);
    /// A press with another constant of this zone, to be looked at and sealed: as it was, and as it would be.
    void offerConstant(const std::string& before, const std::string& after, const std::string& zone);

    /// Opens what this PC keeps for itself; asked the first time, or looked at later.
    void showThisPc(bool firstTime);
    /// The same page, for whoever needs what it says; never null.
    [[nodiscard]] ThisPcPage* thisPc() const { return m_thisPc; }
    /// Which page of the help tells about what is shown here.
    [[nodiscard]] QString helpPage() const;

signals:
    /// After so many the screen locks.
    void idleChosen(int minutes);

protected:
    void showEvent(QShowEvent* event) override;

private:
    /// What a question is asked for, once it is answered: its values, and the secret.
    using Given = std::function<void(const QStringList&, const QString&)>;
    QWidget* buildPerson();
    QWidget* buildLeft();
    void refill();
    void showSelf();
    void settle();
    void ask(const AskPanel::Question& question, Given given);
    void enrol();
    void inviteAgain();
    void changeRole();
    void changeService();
    void makeBadge();
    void chooseAgain();
    void showLogbook();
    void showCompetence();
    void showDefinitions();
    /// To the person who is chosen, or to the logbook: whichever was looked at.
    void back();
    void say(const QString& sentence);
    [[nodiscard]] const people::PersonRecord* chosen() const;
    [[nodiscard]] bool supervises() const;
    Session* m_session;
    QStackedWidget* m_pages;
    DefinitionsPage* m_definitions;
    ThisPcPage* m_thisPc;
    RowList* m_list;
    QStackedWidget* m_right;
    QWidget* m_person;
    QLabel *m_name, *m_standing, *m_whyNot, *m_said;
    QPushButton *m_enrol, *m_invite, *m_role, *m_service, *m_badge, *m_anew, *m_alone, *m_shop, *m_twice, *m_pc;
    PickList* m_idle;
    AskPanel* m_ask;
    OnceCard* m_once;
    LogbookCard* m_logbook;
    CompetenceCard* m_competence;
    QWidget* m_home;
    Given m_given;
    std::map<std::string, std::size_t> m_fieldOf;  // which field a refusal is about, by its code
};

}  // namespace taut::app
