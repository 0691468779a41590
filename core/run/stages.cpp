// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "core/run/decide.h"
#include "core/run/deviation.h"
#include "core/run/parts.h"
#include "core/run/run.h"

namespace taut::run {

namespace {

/// An open step that keeps its stage from closing and that time alone will not mend.
bool isBlocking(const Run& run, const procedure::Step& step, StepState state)
{
    return state == StepState::Outside || cannotOf(run.targets(), step) != nullptr;
}

}  // namespace

std::vector<StepId> Run::openSteps() const
{
    std::vector<StepId> open;
    for (const procedure::Step& step : plan().steps)
        if (isOpen(stateOf(step.id))) open.push_back(step.id);
    return open;
}

std::size_t Run::stageInWork() const
{
    std::optional<std::size_t> external;
    for (const procedure::Step& step : plan().steps) {
        if (!isOpen(stateOf(step.id))) continue;
        if (!step.external) return plan().stageOf(step);
        if (!external) external = plan().stageOf(step);
    }
    return external.value_or(plan().stages.empty() ? 0 : plan().stages.size() - 1);
}

StageState Run::stageState(std::size_t stage) const
{
    bool open = false, begun = false, deviated = false, blocked = false;
    for (const procedure::Step& step : plan().steps) {
        if (plan().stageOf(step) != stage) continue;
        const StepState state = stateOf(step.id);
        deviated = deviated || state == StepState::Deviated;
        begun = begun || (!step.external && m_standing.contains(step.id));
        if (!isOpen(state)) continue;
        open = true;
        blocked = blocked || isBlocking(*this, step, state);
    }
    if (!open) return deviated ? StageState::DoneWithDeviation : StageState::Done;
    const bool inWork = stage == stageInWork();
    if (blocked || (inWork && m_phase == Phase::Withdrawn)) return StageState::Blocked;
    return inWork || begun ? StageState::InWork : StageState::NotBegun;
}

std::optional<StepId> Run::next() const
{
    const std::size_t stage = stageInWork();
    std::optional<StepId> first;
    for (const procedure::Step& step : plan().steps) {
        if (plan().stageOf(step) > stage || !isOpen(stateOf(step.id))) continue;
        if (!closedBecause(*this, step.id)) return step.id;
        if (!first) first = step.id;
    }
    // What the first one needs may have been said already, and no longer hold: that is to be said again.
    const auto lapsed = first ? lapsedBefore(*this, *first) : std::nullopt;
    return lapsed && !closedBecause(*this, *lapsed) ? lapsed : first;
}

std::size_t Run::deviations() const { return countAccepted(*this).inForce; }

}  // namespace taut::run
