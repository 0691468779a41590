// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include <QString>
#include <QStringList>
#include <QWidget>

#include "core/inputs/inputs.h"
#include "core/inputs/tag.h"
#include "core/people/person.h"
#include "core/run/command.h"
#include "core/run/run.h"

class QLineEdit;
class QPushButton;
class QVBoxLayout;

namespace taut::app {

/// Somebody who may be named or asked for a PIN.
struct PersonChoice {
    QString id, name;
    people::Role role{};
};
/// A command that needs a second person who has shown who they are; Session::performWith makes the Actor.
using WithSecond = std::function<run::Command(const people::Actor&)>;
/// A command that a second person signs; Session::performSigned opens their key.
using WithSigner = std::function<run::Command(std::shared_ptr<const people::Signer>)>;

/// Everything that one step's card shows; a value, made anew from the run whenever the run changed.
struct StepContent {
    procedure::Step step;
    run::StepStanding standing;
    std::optional<targets::Target> target;
    std::optional<Finding> closed;  ///< why it cannot be answered now (run::closedBecause)
    QString stage, place;
    QString roll;                    ///< the roll that this run is for
    std::size_t number = 1, of = 1;  ///< of the steps of its place
    std::string holdStop;            ///< the maintained stop within reach there
    std::vector<run::HeldStop> held;
    std::vector<PersonChoice> people;
    QString staleBecause;    ///< which input changed under the answer
    QString cutShort;        ///< "2 s of 60 s" when the answer that stands came before its time was over
    QStringList earlier;     ///< what stood there before it was corrected, the oldest first, and why it was not right
    QString marks;           ///< "Notes: 1 · Files: 2", "" when there is none
    bool elsewhere = false;  ///< something else is to be done first
    UnitSystem units{};
    std::shared_ptr<const inputs::Inputs> around;  ///< what a scanned tag is compared with
    std::optional<inputs::TagDate> today;          ///< for its dates
};

/// How one kind of step is answered. The body scrolls with the card, the foot stays at its lower edge and holds what
/// answers. Nothing is filled in or ticked beforehand.
class AnswerArea : public QWidget {
    Q_OBJECT

public:
    [[nodiscard]] QWidget* foot() const { return m_foot; }
    /// What Enter does when nothing else has the key.
    virtual void enter() {}
    /// Where digits typed anywhere on the page go; nullptr = nowhere.
    [[nodiscard]] virtual QLineEdit* field() const { return nullptr; }
    /// The first thing to touch.
    [[nodiscard]] virtual QWidget* first() const { return nullptr; }
    /// While a refusal stands beside it, what it said of itself gives its room to that.
    virtual void setRefused(bool) {}
    /// Whether the room of what it may say while somebody types is kept free.
    virtual void reserveHint(bool) {}
    /// Every line is needed: what cannot be told while a refusal stands gives its room.
    virtual void setTight(bool) {}
    /// A pad for a finger comes up or goes; nothing where there is none.
    virtual void openPad(bool) {}
    /// Puts one more button beside those that answer.
    virtual void addBeside(QPushButton* button);

signals:
    /// The step is answered, or a stop given up.
    void command(const taut::run::Command& command);
    void resized();                              ///< the foot needs another height
    void followed();                             ///< what stands in the foot follows what is typed
    void refused(const taut::Finding& finding);  ///< seen here, before asking: nothing entered is lost
    void padOpened(bool open);                   ///< somebody opened or closed the pad
    void mended();                               ///< what stands there now is good, as far as can be seen here

protected:
    explicit AnswerArea(QWidget* parent);
    /// Counts down how long it is to be watched; nothing is locked meanwhile.
    void addWait(QVBoxLayout* layout, double seconds);
    /// While a stop is held there is nothing else to say. Nothing of it has the focus: a key that was meant for the
    /// step before must not give up a stop.
    void addHolders(QVBoxLayout* layout, const StepContent& content);
    void answer(const StepContent& content, const QString& entered, std::vector<std::string> stated = {});

private:
    QWidget* m_foot;
};

/// The area for the step's kind.
[[nodiscard]] AnswerArea* makeAnswerArea(const StepContent& content, QWidget* parent);

}  // namespace taut::app
