// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <memory>
#include <optional>
#include <set>
#include <span>
#include <string>
#include <vector>

#include "core/run/event.h"

namespace taut::run {

/// Open: to be answered. Outside: answered, beyond a limit: read again or a deviation. Stale: an input changed under
/// the answer. Reconfirm: answered before an interruption or a hand-over, to be said again.
enum class StepState : std::uint8_t { Open, Outside, Stale, Reconfirm, Answered, Deviated, NotApplicable };
[[nodiscard]] const char* stateWord(StepState state) noexcept;
[[nodiscard]] constexpr bool isOpen(StepState s) noexcept
{
    return s == StepState::Open || s == StepState::Outside || s == StepState::Stale || s == StepState::Reconfirm;
}
/// Where a step stands: its state and the answer that stands, if any.
struct StepStanding {
    StepState state = StepState::Open;
    std::optional<Answered> answer;
    std::optional<Deviated> deviation;
    std::string skipReason;
    std::string by, byName;  ///< who answered
    std::int64_t at = 0;     ///< utcMs of it
    int offset = 0;
    std::uint64_t n = 0;  ///< event that made it so
};
struct HeldStop {
    std::string holder, where;
    bool before = false;  ///< held before an interruption: must be given up, covers no hands
};
enum class Phase : std::uint8_t { Running, Interrupted, Withdrawn, Completed, Abandoned };
/// What a stage looks like from far: for the taut line and the list of stages.
enum class StageState : std::uint8_t { NotBegun, InWork, Done, DoneWithDeviation, Blocked };

/// A run is the fold of its events. A value: after() gives a new one; nothing here ever computes a target or a plan.
class Run {
public:
    /// The first event must be Began (asserted); readers of stores check that before.
    [[nodiscard]] static Run fold(std::span<const Event> events);
    [[nodiscard]] Run after(const Event& event) const;

    [[nodiscard]] const Began& began() const { return *m_began; }
    [[nodiscard]] const std::string& id() const { return m_began->runId; }
    [[nodiscard]] const Sources& sources() const { return *m_sources; }
    [[nodiscard]] const std::vector<std::string>& facts() const { return *m_facts; }
    [[nodiscard]] const targets::Targets& targets() const { return *m_targets; }
    [[nodiscard]] const procedure::Plan& plan() const { return *m_plan; }
    [[nodiscard]] const std::vector<Event>& events() const { return m_events; }
    [[nodiscard]] Phase phase() const { return m_phase; }
    [[nodiscard]] const std::string& operatorId() const { return m_operator; }
    [[nodiscard]] const std::string& operatorName() const { return m_operatorName; }

    [[nodiscard]] StepStanding standing(const StepId& step) const;
    [[nodiscard]] std::vector<StepId> openSteps() const;  ///< in plan order
    [[nodiscard]] const std::set<std::string>& conditions() const { return m_conditions; }
    [[nodiscard]] const std::vector<HeldStop>& heldStops() const { return m_held; }
    [[nodiscard]] StageState stageState(std::size_t stage) const;
    /// The first open step whose gate is open, else the first open step; nullopt when none is open.
    [[nodiscard]] std::optional<StepId> next() const;
    [[nodiscard]] std::size_t deviations() const;

private:
    void apply(const Event& event);
    void settleConditions();
    std::shared_ptr<const Began> m_began;
    std::shared_ptr<const Sources> m_sources;
    std::shared_ptr<const std::vector<std::string>> m_facts;
    std::shared_ptr<const targets::Targets> m_targets;
    std::shared_ptr<const procedure::Plan> m_plan;
    std::vector<Event> m_events;
    std::map<StepId, StepStanding> m_standing;
    std::set<std::string> m_conditions;
    std::vector<HeldStop> m_held;
    Phase m_phase = Phase::Running;
    std::string m_operator, m_operatorName;
};

}  // namespace taut::run
