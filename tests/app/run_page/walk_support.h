// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <string>

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

    /// press, job and roll as their files are named: "north", "quince-jelly", "R0041".
    [[nodiscard]] static Walk begin(const std::string& press, const std::string& job, const std::string& roll,
                                    bool webInPress = true);
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

/// The answer that a person who did everything right would give.
[[nodiscard]] run::Answer rightAnswer(const run::Run& run, const procedure::Step& step);

}  // namespace taut::app::walk
