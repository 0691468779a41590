// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/practice/scenario.h"
#include "core/practice/score.h"
#include "core/practice/trace.h"
#include "core/run/answer.h"

namespace taut::practice {

/// An answer read and judged as a run would: codes of run::answerTo, practice.no_step. A movement is taken to be stated
/// in full: its card asks all of it.
[[nodiscard]] Result<run::Answered> readAnswer(const run::Basis& basis, const Answer& answer);

/// An answer that the press contradicted.
struct Contradiction {
    double at = 0;  ///< s
    std::string step, item;
    Text text;
    friend bool operator==(const Contradiction&, const Contradiction&) = default;
};
/// What was done, when, and why not where it was refused.
struct Logged {
    double at = 0;
    Act act;
    std::optional<Finding> refused = {};
};

/// Somebody at the practice press with a procedure: their deeds and their answers, held against each other.
class Lesson {
public:
    /// Refuses what World::build refuses, and practice.part for a stage or place that the plan does not have.
    [[nodiscard]] static Result<Lesson> begin(run::Basis basis, Scenario scenario, bool keepsTrace = false);

    void advance(Time by);
    /// Does it, at once; what is refused is logged as well. Of an answer: codes of readAnswer.
    [[nodiscard]] Result<Done> perform(const Act& act);

    [[nodiscard]] const World& world() const { return m_world; }
    [[nodiscard]] const run::Basis& basis() const { return m_basis; }
    [[nodiscard]] const Scenario& scenario() const { return m_scenario; }
    [[nodiscard]] const std::vector<Fault>& faults() const { return m_faults; }
    [[nodiscard]] const std::vector<Logged>& log() const { return m_log; }
    [[nodiscard]] const Trace& trace() const { return m_trace; }
    /// All of them; whether the trainee is shown one at once is for the scenario to say (scenario().atOnce).
    [[nodiscard]] const std::vector<Contradiction>& contradictions() const { return m_contradictions; }
    /// What of this step is shown now: all of it once help was asked for.
    [[nodiscard]] Help helpFor(std::string_view step) const;
    [[nodiscard]] std::vector<Outcome> outcomes() const;
    [[nodiscard]] Score score() const;
    [[nodiscard]] Detection detection() const;

private:
    Lesson(run::Basis basis, Scenario scenario, std::vector<Fault> faults, World world, bool keepsTrace);
    [[nodiscard]] Result<Done> answer(const Answer& answer);
    struct Said {
        std::string step;
        bool contradicted = false, stands = false;
    };
    run::Basis m_basis;
    Scenario m_scenario;
    std::vector<Fault> m_faults;
    World m_world;
    Trace m_trace;
    std::int64_t m_ticks = 0;
    std::vector<Logged> m_log;
    std::vector<Said> m_said;
    std::vector<Contradiction> m_contradictions;
};
/// Does one thing after the other.
void play(Lesson& lesson, std::span<const Action> actions);

}  // namespace taut::practice
