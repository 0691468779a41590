// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/run/decide.h"

// A press small enough to hold in one's head: three stages, one repeated step of each sort, a held stop, a movement, a
// reading with and without a window. Tests of gates and folds stand on it; nothing here is read from a file.
namespace taut::run::small {

using procedure::Plan;
using procedure::Step;
using procedure::StepKind;

/// Somebody signed in: "ana" operator, "ben" operator, "sue" and "sol" supervisors, "tom" trainer, "pip" trainee.
[[nodiscard]] const people::Actor& person(const std::string& id);
/// The same person with their key open.
[[nodiscard]] std::shared_ptr<const people::Signer> signer(const std::string& id);
[[nodiscard]] const std::vector<std::string>& everybody();

[[nodiscard]] Plan plan();
/// unwind: the setting's window in bar; cannot: the lift cannot carry this roll.
[[nodiscard]] targets::Targets targets(double low = 1.1, double high = 1.7, bool cannot = false);
[[nodiscard]] Basis basis(Plan plan = small::plan(), targets::Targets targets = small::targets());
/// The step of that id in a plan, to be changed.
[[nodiscard]] Step& at(Plan& plan, const std::string& id);

/// All that the one motion step wants to hear.
[[nodiscard]] const std::vector<std::string>& allStates();
/// The right entry for each step of plan(), in the order of the plan.
struct GoodEntry {
    std::string step, entered;
};
[[nodiscard]] const std::vector<GoodEntry>& goodEntries();

/// A run under way, with a clock that moves a second with every command.
class Walk {
public:
    explicit Walk(Basis basis = small::basis(), Beginning beginning = {"run-1", "pc-1", false, {}, nullptr});

    /// nullopt when it was done, else why not; a refusal leaves the run as it was.
    /// by: "" = the person in whose hands the run is.
    std::optional<Finding> tryTo(const Command& command, const std::string& by = {});
    /// Fails the test when it is refused.
    void must(const Command& command, const std::string& by = {});
    /// "" when it was done, else the code.
    [[nodiscard]] std::string codeOf(const Command& command, const std::string& by = {});
    /// Answers with the entry of goodEntries(); holds and gives up the stop where needed.
    void answer(const std::string& step, const std::string& by = {});
    /// Answers everything before this step, or everything when there is no such step.
    void upTo(const std::string& step, const std::string& by = {});
    void wait(std::int64_t ms) { m_stamp.utcMs += ms; }

    [[nodiscard]] const Run& run() const { return *m_run; }
    [[nodiscard]] StepState state(const std::string& step) const { return m_run->standing({step}).state; }
    [[nodiscard]] bool has(const std::string& condition) const { return m_run->conditions().contains(condition); }
    [[nodiscard]] std::string closed(const std::string& step) const;
    /// A run of the same events, given straight to the fold.
    [[nodiscard]] Run refolded() const { return Run::fold(m_run->events()); }

private:
    Stamp m_stamp;
    std::optional<Run> m_run;
};

/// Everything that can be asked of a run, as one text: two runs that differ anywhere differ here.
[[nodiscard]] std::string pictureOf(const Run& run);

}  // namespace taut::run::small
