// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <memory>
#include <vector>

#include <QWidget>

#include "app/sessions/session.h"
#include "app/sessions/training_desk.h"
#include "app/widgets/ask_panel.h"

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace taut::app {

class RowList;
class StatementBox;

/// At which presses somebody may work alone, until when or why not; and where a supervisor says so. Of the practice
/// logbook nothing is taken but the SHA-256 of the training record, which nobody types.
class CompetenceCard : public QWidget {
    Q_OBJECT

public:
    using Given = std::function<void(const QStringList&, const QString&)>;
    explicit CompetenceCard(Session* session, QWidget* parent = nullptr);
    void showFor(const people::PersonRecord& person);
    /// Where whoever comes to it begins.
    [[nodiscard]] QWidget* first() const;

signals:
    /// A question that wants a passphrase, and what to do with it.
    void asks(const AskPanel::Question& question, const CompetenceCard::Given& given);

private:
    /// A press that stands in the logbook, and what the shop wants of whoever works it alone.
    struct Press {
        std::string id;
        QString name;
        bool asked = false;
        std::size_t wanted = 0;  ///< observed set-ups
        std::string safety;
    };
    void lookAtPresses();
    void fillPresses();
    void fillRuns();
    void settle();
    [[nodiscard]] const Press* press() const;
    [[nodiscard]] const logbook::CompetenceStanding* standing(const std::string& press) const;
    [[nodiscard]] QString standsText(const Press& press) const;
    [[nodiscard]] std::vector<std::string> ticked() const;
    /// Why whoever is signed in cannot say this of them: core's own answer, before anybody types.
    [[nodiscard]] std::optional<Finding> whyNot(bool granted) const;
    void askGrant();
    void askEnd();
    Session* m_session;
    TrainingDesk* m_desk;
    people::PersonRecord m_person;
    std::vector<logbook::CompetenceStanding> m_all;
    std::vector<Press> m_known;
    std::shared_ptr<const Training> m_training;
    std::vector<std::pair<std::string, StatementBox*>> m_runs;
    QLabel *m_title, *m_record, *m_runsHead, *m_whyNot;
    RowList* m_presses;
    QWidget* m_box;
    QVBoxLayout* m_runsColumn;
    QPushButton *m_grant, *m_end;
};

}  // namespace taut::app
