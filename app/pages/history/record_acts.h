// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include <QLabel>
#include <QPushButton>
#include <QWidget>

#include "app/sessions/session.h"
#include "app/widgets/ask_panel.h"

namespace taut::app {

/// What may still be said of a sealed run: a supervisor accepts it or sends it back, somebody corrects it, a supervisor
/// makes it void. Each is a further seal; the run itself never changes.
class RecordActs : public QWidget {
    Q_OBJECT

public:
    explicit RecordActs(Session* session, QWidget* parent = nullptr);
    /// "" = none.
    void showRun(const QString& runId);
    /// What a question is asked in, to be shown in the place of the sheet.
    [[nodiscard]] QWidget* panel() const { return m_frame; }

signals:
    /// Its panel wants the place of the sheet, or gives it back.
    void asking(bool asks);

private:
    /// A step that a correction may be about, and what stands there.
    struct Answered {
        QString step, say, stands;
    };
    void settle();
    void look();
    /// Whether whoever is signed in may say this of the run as it stands: core's own answer, before anybody types.
    [[nodiscard]] std::optional<Finding> whyNot(const seal::Sequel& sequel) const;
    void personChanged();
    void ask(const AskPanel::Question& question, std::function<void(const QStringList&, const QString&)> given);
    void askReview();
    void askCorrection();
    void askVoid();
    void back();
    /// Away with what was asked and typed.
    void drop();
    Session* m_session;
    QWidget* m_frame;
    AskPanel* m_ask;
    QLabel* m_whyNot;
    QPushButton *m_review, *m_correct, *m_void;
    std::function<void(const QStringList&, const QString&)> m_given;
    people::PersonId m_asked;   // who began to answer
    QWidget* m_from = nullptr;  // the button that was pressed
    QString m_run;
    std::optional<seal::SealedRun> m_sealed;
    std::vector<Answered> m_steps;
    UnitSystem m_units{};
};

}  // namespace taut::app
