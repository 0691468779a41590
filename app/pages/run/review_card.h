// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "app/widgets/answer.h"
#include "core/run/run.h"

class QLabel;
class QLineEdit;
class QPushButton;

namespace taut::app {

class Countersign;
class FindingStrip;
class HeldStops;
class SecretLine;
class WholeTable;

/// The whole run to look through before it is signed: every step with its state, what was answered, by whom and when;
/// the stops that are still held, each to be given up first; remarks; and the passphrase of the person who signs. An
/// ended run whose sealing was kept off is sealed here by whoever may sign.
class ReviewCard : public QWidget {
    Q_OBJECT

public:
    explicit ReviewCard(QWidget* parent = nullptr);
    /// Fills the card; only who may sign this run finds the button usable.
    void show(const run::Run& run, const PersonChoice& actor);
    /// Who could countersign where whoever signs may not sign alone.
    void setPeople(const std::vector<PersonChoice>& people, const PersonChoice& actor);
    /// While it is being sealed nothing can be touched.
    void setBusy(bool busy);
    void forgetTyped();  ///< somebody else came to the screen
    /// Says why it was not sealed; the passphrase is typed anew.
    void refuse(const Finding& finding);
    /// Where whoever comes to the card begins.
    [[nodiscard]] QWidget* first() const;

signals:
    /// A held stop is given up.
    void command(const taut::run::Command& command);
    /// SignOff with the remarks, and what it is signed with.
    void sign(const taut::run::Command& command, const QString& passphrase);
    /// The same with a supervisor beside whoever signs: what SignOff says, and who it is by id and PIN.
    void signBeside(const QString& remarks, const QString& personId, const QString& pin, const QString& passphrase);
    /// To be looked at on its own card.
    void stepChosen(const QString& stepId);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    int fill(const run::Run& run);
    [[nodiscard]] QWidget* wanted() const;
    void give();
    void sayButton();
    UnitSystem m_system{};
    QLabel *m_title, *m_summary, *m_remarksLabel, *m_passphraseLabel, *m_meaning, *m_writing;
    bool m_close = false;  // little room for the steps
    bool m_ended = false;  // done or abandoned, and not sealed yet
    WholeTable* m_table;
    QLineEdit* m_remarks;
    SecretLine* m_passphrase;
    QPushButton* m_sign;
    HeldStops* m_held;
    Countersign* m_beside;
    std::string m_run;
    FindingStrip* m_finding;
};

}  // namespace taut::app
