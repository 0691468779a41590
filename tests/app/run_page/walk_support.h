// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <catch2/catch.hpp>
#include <functional>
#include <string>

#include "app/pages/run/run_view.h"
#include "core/people/person.h"
#include "core/run/decide.h"

namespace taut::app::walk {

/// People of the tests.
[[nodiscard]] people::Actor operatorOne();
[[nodiscard]] people::Actor supervisor();
[[nodiscard]] std::shared_ptr<const people::Signer> signingSupervisor();

/// A run of the demo shop, begun and not answered yet. A fixed clock, ten seconds between events.
struct Walk {
    run::Run run;
    std::uint64_t n = 1;

    /// press, job and roll as their files are named: "north", "quince-jelly", "R0041". language: in which the steps are
    /// read, "" = the procedure's own.
    [[nodiscard]] static Walk begin(const std::string& press, const std::string& job, const std::string& roll,
                                    bool webInPress = true, const std::string& language = {});
    /// Performs a command that the gates must accept (Catch's REQUIRE).
    void perform(const run::Command& command, const people::Actor& actor = operatorOne());
    /// Answers the step as it should be, giving up stops first where the press is to move.
    void answerWell(const procedure::Step& step);
    /// Answers well until the run's next step is of this kind (and, when named, has this id), or none is open.
    const procedure::Step* until(procedure::StepKind kind, const std::string& id = {});
    /// Until a step that satisfies this is next.
    const procedure::Step* untilStep(const std::function<bool(const procedure::Step&)>& wanted);
    [[nodiscard]] const procedure::Step* next() const;
};

/// A whole set-up of the north press, just begun.
[[nodiscard]] inline Walk north() { return Walk::begin("north", "quince-jelly", "R0041"); }

/// The run page of a walk as a screen of 1366 x 768 leaves it, with operatorOne() signed in.
struct Page {
    RunView view;
    explicit Page(const Walk& w, double scale = 1.0);
    /// Until what was put off for the end of an event has happened.
    static void settle();
    /// The words in sight on the step's card.
    [[nodiscard]] QString card() const;
    /// Fails where there is none, as called() does.
    template <class W>
    W* visible(const char* name)
    {
        for (W* w : view.findChildren<W*>(QString::fromLatin1(name)))
            if (w->isVisible()) return w;
        FAIL("nothing visible is called " << name);
        return nullptr;
    }
    /// By the name that assistive technology knows it by.
    template <class W>
    W* called(const char* name)
    {
        for (W* w : view.findChildren<W*>())
            if (w->isVisible() && w->accessibleName() == QString::fromLatin1(name)) return w;
        FAIL("nothing visible is called " << name);
        return nullptr;
    }
};

/// Two people, an operator first.
[[nodiscard]] std::vector<PersonChoice> crew();
/// Words that do not fit into what is painted: a label lower than its lines, or a button narrower than a word.
void nothingIsCut(QWidget& page);
/// What is to be done, and its caution, are read without scrolling.
void whatIsAskedIsSeen(QWidget& page);

/// A value in the unit of the press, with enough digits to stay inside its window.
[[nodiscard]] std::string typedAs(const Quantity& q, UnitSystem system);
/// The answer that a person who did everything right would give.
[[nodiscard]] run::Answer rightAnswer(const run::Run& run, const procedure::Step& step);

}  // namespace taut::app::walk
