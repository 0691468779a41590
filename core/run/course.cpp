// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/run/course.h"

#include <algorithm>
#include <set>

#include "core/run/parts.h"

namespace taut::run {

namespace {

using procedure::Step;
using procedure::StepKind;

bool isConfirmable(const Run& run, const Step& step)
{
    if (step.kind == StepKind::Motion || step.kind == StepKind::Hold) return false;
    const StepState state = run.stateOf(step.id);
    return state == StepState::Answered || state == StepState::Deviated;
}

/// What the steps of a stage end, the statements apart that end by themselves with every movement.
void addEnded(const procedure::Plan& plan, std::size_t stage, std::set<std::string>& ended)
{
    for (const Step& step : plan.steps) {
        if (plan.stageOf(step) != stage) continue;
        for (const std::string& condition : step.ends)
            if (condition != kStopHeld && condition != kLockedOut && !procedure::isMachineState(condition))
                ended.insert(condition);
    }
}

bool isBegun(const Run& run, const StepId& step) { return run.standing(step).n > 0; }

}  // namespace

Result<Repeated> repeatedBy(const Run& run, const RepeatStage& command)
{
    constexpr const char* kCauses[] = {"web_break", "wrong_roll", "other"};
    const procedure::Plan& plan = run.plan();
    const auto stage = std::find_if(plan.stages.begin(), plan.stages.end(),
                                    [&](const procedure::PlanStage& s) { return s.id == command.stage; });
    if (stage == plan.stages.end())
        return refuse("gate.no_stage", command.stage, "This run has no such stage.", "Choose a stage of this run.");
    if (std::find(std::begin(kCauses), std::end(kCauses), command.cause) == std::end(kCauses))
        return refuse("gate.no_cause", command.stage, "It was not said why the stage is done again.",
                      "Say web_break, wrong_roll or other.");
    const auto index = static_cast<std::size_t>(stage - plan.stages.begin());
    const bool begun = std::any_of(plan.steps.begin(), plan.steps.end(), [&](const Step& step) {
        return plan.stageOf(step) == index && isBegun(run, step.id);
    });
    if (!begun)
        return refuse("gate.stage_not_begun", command.stage, "This stage has not been begun yet.",
                      "Do it for the first time.");
    return Repeated{command.stage, command.cause, reopenedBy(run, index)};
}

std::vector<StepId> reopenedBy(const Run& run, std::size_t stage)
{
    const procedure::Plan& plan = run.plan();
    std::set<std::string> ended;
    addEnded(plan, stage, ended);
    std::set<std::size_t> resting;
    for (std::size_t later = stage + 1; later < plan.stages.size(); ++later) {
        const bool rests = std::any_of(plan.steps.begin(), plan.steps.end(), [&](const Step& step) {
            return plan.stageOf(step) == later && isBegun(run, step.id) &&
                   std::any_of(step.gives.begin(), step.gives.end(), [&](const auto& c) { return ended.contains(c); });
        });
        if (!rests) continue;
        resting.insert(later);
        addEnded(plan, later, ended);
    }
    std::vector<StepId> all;
    for (const Step& step : plan.steps) {
        const bool itself = plan.stageOf(step) == stage;
        const bool later = resting.contains(plan.stageOf(step)) && step.validFor == procedure::ValidFor::Run;
        if (itself || (later && isBegun(run, step.id))) all.push_back(step.id);
    }
    return all;
}

std::vector<StepId> toSayAgain(const Run& run, bool vital)
{
    const procedure::Plan& plan = run.plan();
    const std::size_t stage = run.stageInWork();
    const Step* last = nullptr;
    for (const Step& step : plan.steps)
        if (isConfirmable(run, step) && (last == nullptr || run.standing(step.id).n > run.standing(last->id).n))
            last = &step;
    const auto chosen = [&](const Step& step) {
        return isConfirmable(run, step) && (&step == last || (vital && step.vital && plan.stageOf(step) == stage));
    };
    // Nothing said about the machine lasts: what the coming steps of this stage need is asked with the rest.
    std::set<std::string> needed;
    for (const Step& step : plan.steps)
        if (step.kind != StepKind::Motion &&
            ((plan.stageOf(step) == stage && isOpen(run.stateOf(step.id))) || chosen(step)))
            for (const std::string& need : step.needs)
                if (procedure::isMachineState(need)) needed.insert(need);
    std::vector<StepId> all;
    for (const Step& step : plan.steps) {
        const bool giver = isConfirmable(run, step) && std::any_of(step.gives.begin(), step.gives.end(),
                                                                   [&](const auto& c) { return needed.contains(c); });
        if (chosen(step) || giver) all.push_back(step.id);
    }
    return all;
}

bool mustSayVitalAgain(const Run& run, std::int64_t nowMs, const people::PersonId& by)
{
    if (by.value != run.operatorId()) return true;
    // What stopped the run, and when anybody last did something before it.
    const Event* stop = nullptr;
    std::int64_t before = nowMs;
    bool givenBack = false;
    for (const Event& event : run.events()) {
        const Happening& what = event.happening();
        if (std::holds_alternative<Returned>(what)) givenBack = true;
        if (std::holds_alternative<Interrupted>(what)) stop = &event;
        if (std::holds_alternative<Resumed>(what)) {
            stop = nullptr;
            givenBack = false;
        }
        if (stop == nullptr) before = event.stamp().utcMs;
    }
    if (givenBack) return true;
    if (stop == nullptr) return false;
    const std::string& reason = std::get<Interrupted>(stop->happening()).reason;
    if (reason == "power") return true;
    // A break is noted when it begins. A program that ended under the run notes it only when it is started again: the
    // time away began with the event before.
    const bool notedAtOnce = reason == "break" || reason == "stop_by_other";
    const std::int64_t since = notedAtOnce ? stop->stamp().utcMs : before;
    // A clock that was set back tells no length at all: then it counts as long.
    return nowMs < since || nowMs - since > kLongAwayMs;
}

}  // namespace taut::run
