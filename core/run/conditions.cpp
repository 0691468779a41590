// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <limits>

#include "core/run/parts.h"
#include "core/run/run.h"

namespace taut::run {

namespace {

/// The items of one repeated step (one item when it is not repeated), as far as they give conditions.
struct Family {
    bool closed = true;     // every item answered, deviated or not applicable
    bool answered = false;  // and one of them not only waved through
    // The earliest of them: an item answered before a movement is not made young by its neighbour.
    std::uint64_t since = std::numeric_limits<std::uint64_t>::max();
    std::uint64_t said = std::numeric_limits<std::uint64_t>::max();
    const procedure::Step* step = nullptr;
};

std::map<std::string_view, Family> familiesOf(const procedure::Plan& plan, const std::map<StepId, StepStanding>& all)
{
    std::map<std::string_view, Family> families;
    for (const procedure::Step& step : plan.steps) {
        if (step.gives.empty()) continue;
        Family& family = families[baseOf(step.id)];
        family.step = &step;
        const auto found = all.find(step.id);
        const StepState state = found == all.end() ? StepState::Open : found->second.state;
        if (isOpen(state)) family.closed = false;
        if (state != StepState::Answered && state != StepState::Deviated) continue;
        family.answered = true;
        family.since = std::min(family.since, found->second.since);
        family.said = std::min(family.said, found->second.n);
    }
    return families;
}

}  // namespace

/// A statement about the machine is as old as the words; anything else as old as the deed.
bool Run::isEnded(const std::string& condition, std::uint64_t said, std::uint64_t since) const
{
    const auto found = m_endedAt.find(condition);
    const std::uint64_t ended = found == m_endedAt.end() ? 0 : found->second;
    if (!procedure::isMachineState(condition)) return since < ended;
    return said < ended || said <= m_statesEndedAt;
}

void Run::settleConditions()
{
    m_conditions.clear();
    for (const std::string& condition : m_carried)
        if (!m_endedAt.contains(condition)) m_conditions.insert(condition);
    for (const auto& [base, family] : familiesOf(plan(), m_standing)) {
        if (!family.closed || !family.answered) continue;
        for (const std::string& condition : family.step->gives)
            if (!isEnded(condition, family.said, family.since)) m_conditions.insert(condition);
    }
    const bool held = std::any_of(m_held.begin(), m_held.end(), [](const HeldStop& h) { return !h.before; });
    if (held)
        m_conditions.insert(kStopHeld);
    else
        m_conditions.erase(kStopHeld);
}

bool Run::hasLapsed(const procedure::Step& step) const
{
    const auto found = m_standing.find(step.id);
    if (found == m_standing.end()) return false;
    const StepStanding& s = found->second;
    if (s.state != StepState::Answered && s.state != StepState::Deviated) return false;
    return std::any_of(step.gives.begin(), step.gives.end(), [&](const std::string& condition) {
        return !m_conditions.contains(condition) && isEnded(condition, s.n, s.since);
    });
}

}  // namespace taut::run
