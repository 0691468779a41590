// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include <QButtonGroup>
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QWidget>

#include "app/seams/resources.h"
#include "app/sessions/session.h"
#include "app/widgets/roll_form.h"

class QBoxLayout;
class QGridLayout;

namespace taut::app {

/// Press, job, substrate, roll, kind of run, and whether a web is in the press: what a run begins from. Nothing that
/// only somebody at the press can know is chosen beforehand.
class ChoicePanel : public QWidget {
    Q_OBJECT

public:
    explicit ChoicePanel(Session* session, QWidget* parent = nullptr);
    /// Fills the lists from the logbook and the rolls at hand; keeps what was chosen.
    void refill();
    /// What somebody saw at the press is true of the run that they began, and of no other.
    void forgetLook();
    /// What was chosen, as far as targets need it; nullopt while a list is empty.
    [[nodiscard]] std::optional<run::Sources> sources() const;
    /// Kind of run, web or empty, and the diameter that was typed.
    [[nodiscard]] run::BasisQuestion question() const;
    /// The run that is continued; "" = none.
    [[nodiscard]] std::string parentRun() const;
    /// What is still to be said before a run can begin; nullopt when all is.
    [[nodiscard]] std::optional<QString> missing() const;
    /// The chosen press; "" = none.
    [[nodiscard]] std::string pressId() const;
    /// The rolls of the list, those of another material than the job's behind.
    [[nodiscard]] std::vector<RollAtHand> rollsAtHand() const;
    /// Puts a roll into the list, where it is not there, and chooses it.
    void use(const InputFile& roll);
    /// What tries other values than the chosen ones; whoever owns the page says when it can.
    [[nodiscard]] QPushButton* tryButton() const { return m_try; }
    /// What is chosen first.
    [[nodiscard]] QWidget* first() const { return m_press; }

signals:
    /// Anything of it.
    void changed();
    /// A roll is to be scanned, or typed.
    void rollWanted();
    /// A file that was named cannot be used.
    void troubled(const taut::Finding& finding);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    enum class Room : std::uint8_t { Half, Whole };  ///< of the panel's width
    void addCell(const QString& name, QWidget* field, Room room);
    QComboBox* addList(const QString& name, Room room);
    void arrange();
    void fillRuns();
    void followJob();
    void openRollFile();
    [[nodiscard]] const run::Source& spoken(const run::Source& procedure) const;
    [[nodiscard]] const run::Source* chosen(const std::vector<logbook::Definition>& all, const QComboBox* box) const;
    Session* m_session;
    QComboBox *m_press, *m_job, *m_substrate, *m_roll, *m_kind, *m_parent;
    QLineEdit* m_diameter;
    QPushButton* m_try;
    QButtonGroup* m_web;
    struct Cell {
        QWidget* widget;
        Room room;
    };
    QGridLayout* m_grid;
    QBoxLayout* m_others;  // what else may be run: another roll, other values
    std::vector<Cell> m_cells;
    int m_columns = 0;
    QWidget* m_parentCell;
    std::vector<logbook::Definition> m_presses, m_jobs, m_substrates, m_procedures;
    std::vector<InputFile> m_rolls;
    mutable run::Source m_spoken;     // the procedure's words in the language of the window
    mutable std::string m_spokenFor;  // which procedure and language
};

}  // namespace taut::app
