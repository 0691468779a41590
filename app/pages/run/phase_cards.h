// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QWidget>

#include "app/widgets/answer.h"
#include "core/run/run.h"

class QLabel;
class QPushButton;

namespace taut::app {

class FindingStrip;
class ProseField;
class StatementBox;

/// A card in the step card's place. Enter presses the button that has the focus, once however long it is held.
class PhaseCard : public QWidget {
    Q_OBJECT

public:
    using QWidget::QWidget;

protected:
    void keyPressEvent(QKeyEvent* event) override;
};

/// After an interruption: before anything else the press is made safe, and that is said sentence by sentence.
class MakeSafeCard : public PhaseCard {
    Q_OBJECT

public:
    explicit MakeSafeCard(QWidget* parent = nullptr);
    /// Fills the card for whoever is at the screen.
    void show(const run::Run& run, const PersonChoice& actor);
    /// False when somebody else has come to the screen since it was shown: what was ticked is not theirs.
    [[nodiscard]] bool isFor(const PersonChoice& actor) const;
    /// While it is being written nothing can be touched.
    void setBusy(bool busy);
    /// Says why it was not taken.
    void refuse(const Finding& finding);
    /// Where whoever comes to the card begins.
    [[nodiscard]] QWidget* first() const;

signals:
    /// Resume, with the four sentences.
    void command(const taut::run::Command& command);

private:
    void settle();
    UnitSystem m_system{};
    bool m_takesOver = false;
    QString m_actor;
    QLabel *m_why, *m_whose, *m_writing;
    std::vector<StatementBox*> m_boxes;
    FindingStrip* m_finding;
    QPushButton* m_go;
};

/// The run is in the hands of somebody else than who sits here: whose, and what taking it over asks.
class OtherHandsCard : public PhaseCard {
    Q_OBJECT

public:
    explicit OtherHandsCard(QWidget* parent = nullptr);
    /// Fills the card for whoever is at the screen.
    void show(const run::Run& run, const PersonChoice& actor);
    /// While it is being written nothing can be touched.
    void setBusy(bool busy);
    /// Says why it was not taken.
    void refuse(const Finding& finding);
    /// Where whoever comes to the card begins.
    [[nodiscard]] QWidget* first() const;

signals:
    /// By whoever is signed in.
    void takeOver();

private:
    UnitSystem m_system{};
    QLabel *m_whose, *m_how, *m_writing;
    QPushButton* m_take;
    FindingStrip* m_finding;
};

/// The press is out of use: why, by whom, and what a supervisor says who gives it back.
class WithdrawnCard : public PhaseCard {
    Q_OBJECT

public:
    explicit WithdrawnCard(QWidget* parent = nullptr);
    /// Fills the card for whoever is at the screen.
    void show(const run::Run& run, const PersonChoice& actor);
    /// While it is being written nothing can be touched.
    void setBusy(bool busy);
    /// Says why it was not taken.
    void refuse(const Finding& finding);
    void forgetTyped();  ///< somebody else came to the screen
    /// Where whoever may give it back begins; the card itself for everybody else.
    [[nodiscard]] QWidget* first();

signals:
    /// With what was put right.
    void giveBack(const QString& done);

private:
    UnitSystem m_system{};
    QLabel *m_why, *m_how, *m_writing;
    ProseField* m_done;
    QPushButton* m_give;
    FindingStrip* m_finding;
};

}  // namespace taut::app
