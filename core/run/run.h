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
    std::string by, byName;  ///< who answered, or said that it does not apply
    std::int64_t at = 0;     ///< utcMs of it
    int offset = 0;
    std::uint64_t n = 0;      ///< event that made it so
    std::uint64_t since = 0;  ///< event at which what it gives and ends took effect: n, unless it was only said again
};
struct HeldStop {
    std::string holder, where;
    bool before = false;  ///< held before an interruption: must be given up or held anew, covers no hands
    friend bool operator==(const HeldStop&, const HeldStop&) = default;
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
    [[nodiscard]] StepState stateOf(const StepId& step) const noexcept;  ///< standing().state, without the copy
    [[nodiscard]] std::vector<StepId> openSteps() const;                 ///< in plan order
    /// The conditions that stand now. A step's answer ends what it `ends` and gives what it `gives`; of a repeated step
    /// all items must be closed and one answered. What ended stays ended until it is given anew: an answer that is
    /// opened again takes back what it gave, never what it ended. Statements about the machine's state end with every
    /// movement, interruption, hand-over and resumption. `stop_held` stands while somebody holds a stop that counts.
    [[nodiscard]] const std::set<std::string>& conditions() const { return m_conditions; }
    /// True when this step was answered, and something that its answer gave has ended since and stands no longer: it
    /// may be said again.
    [[nodiscard]] bool hasLapsed(const procedure::Step& step) const;
    [[nodiscard]] const std::vector<HeldStop>& heldStops() const { return m_held; }
    /// The stage of the first open step that has to be done now (not external); when only external ones are open, of
    /// the first of these; the last stage when none is open.
    [[nodiscard]] std::size_t stageInWork() const;
    [[nodiscard]] StageState stageState(std::size_t stage) const;
    /// The first open step up to the stage in work whose gate is open (an external one of an earlier stage is among
    /// them: it keeps calls closed); else the answered step that must be said again before the first open one can be
    /// answered; else the first open one. nullopt when none is open.
    [[nodiscard]] std::optional<StepId> next() const;
    [[nodiscard]] std::size_t deviations() const;
    [[nodiscard]] const std::optional<Length>& presentDiameter() const { return m_presentDiameter; }

private:
    friend struct Applied;  // run.cpp: one function per happening
    void apply(const Event& event);
    void settleConditions();
    [[nodiscard]] bool isEnded(const std::string& condition, std::uint64_t said, std::uint64_t since) const;
    std::shared_ptr<const Began> m_began;
    std::shared_ptr<const Sources> m_sources;
    std::shared_ptr<const std::vector<std::string>> m_facts;
    std::shared_ptr<const targets::Targets> m_targets;
    std::shared_ptr<const procedure::Plan> m_plan;
    std::vector<Event> m_events;
    std::map<StepId, StepStanding> m_standing;
    std::set<std::string> m_conditions;
    std::set<std::string> m_carried;
    std::map<std::string, std::uint64_t> m_endedAt;  // by condition: the last event that ended it
    std::uint64_t m_statesEndedAt = 0;               // the last event that ended every statement of the machine's state
    std::vector<HeldStop> m_held;
    Phase m_phase = Phase::Running;
    std::string m_operator, m_operatorName;
    std::optional<Length> m_presentDiameter;
};

}  // namespace taut::run
