// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "core/run/decide.h"
#include "core/run/parts.h"
#include "core/run/words.h"

namespace taut::run {

namespace {

using procedure::Plan;
using procedure::Step;
using procedure::StepKind;

bool gives(const Step& step, const std::string& condition)
{
    return std::find(step.gives.begin(), step.gives.end(), condition) != step.gives.end();
}

/// An answered statement whose effect has ended since may be made anew. A movement, a stop and a call are made anew by
/// doing the stage again.
bool canBeSaidAgain(const Run& run, const Step& step)
{
    if (step.kind == StepKind::Motion || step.kind == StepKind::Hold || step.kind == StepKind::Call) return false;
    return run.hasLapsed(step);
}

/// Of the steps that gave this condition and may say it anew, the one said longest ago: of a repeated step that item no
/// longer counts. nullptr when there is none.
const Step* lapsedGiver(const Run& run, const std::string& condition)
{
    const Step* again = nullptr;
    for (const Step& step : run.plan().steps)
        if (gives(step, condition) && canBeSaidAgain(run, step) &&
            (again == nullptr || run.standing(step.id).n < run.standing(again->id).n))
            again = &step;
    return again;
}

/// Whether this step asks for a condition before it may be answered. A movement asks statements about the machine anew
/// in its own card; a confirmation asks nothing that only the doing needed; a held stop has its own gate.
bool asksFor(const Step& step, StepState state, const std::string& need)
{
    const bool statement = procedure::isMachineState(need);
    if (step.kind == StepKind::Motion && statement) return false;
    if (state == StepState::Reconfirm && !statement) return false;
    return !(step.hands && need == kStopHeld);
}

std::optional<Finding> phaseGate(const Run& run, const std::string& step)
{
    switch (run.phase()) {
    case Phase::Running: return std::nullopt;
    case Phase::Interrupted:
        return refuse("gate.interrupted", step, "The run was interrupted and has not been taken up again.",
                      "Make the press safe, say so, and resume the run.");
    case Phase::Withdrawn:
        return refuse("gate.withdrawn", step, "The press is withdrawn from use.",
                      "A supervisor other than the person who withdrew it gives it back when it is put right.");
    case Phase::Completed:
    case Phase::Abandoned: return refuse("gate.ended", step, "This run has ended.", "Begin a new run on this press.");
    }
    return std::nullopt;
}

std::optional<Finding> answeredGate(const Run& run, const Step& step)
{
    const StepState state = run.stateOf(step.id);
    if (state != StepState::Answered && state != StepState::Deviated) return std::nullopt;
    if (canBeSaidAgain(run, step)) return std::nullopt;
    return refuse("gate.answered", step.id.value, "This step is answered already.",
                  "To change what was written down, correct it and say why.");
}

/// First things first: stages and places in order, steps of a read_do place one after the other.
std::optional<Finding> orderGate(const Run& run, const Step& step)
{
    if (step.external) return std::nullopt;
    const Plan& plan = run.plan();
    for (const Step& other : plan.steps) {
        if (&other == &step) return std::nullopt;
        if (other.external || !isOpen(run.stateOf(other.id))) continue;
        if (other.place == step.place && (plan.places[step.place].doConfirm || step.kind == StepKind::Call)) continue;
        const bool here = other.place == step.place;
        return refuse(here ? "gate.order" : "gate.earlier_open", step.id.value,
                      Text("Something that comes first is still open: %1", {wordsOf(other)}),
                      here ? "At this place the steps are done one after the other: do that one first."
                           : "Go back to it, do it, and answer it.");
    }
    return std::nullopt;
}

/// A stage is called done when nothing of it is open, and nothing external that was to be done before it.
std::optional<Finding> callGate(const Run& run, const Step& step)
{
    if (step.kind != StepKind::Call) return std::nullopt;
    const Plan& plan = run.plan();
    std::int64_t open = 0;
    const Step* first = nullptr;
    for (const Step& other : plan.steps) {
        if (&other == &step || !isOpen(run.stateOf(other.id))) continue;
        const bool ofStage = plan.stageOf(other) == plan.stageOf(step);
        if (!ofStage && !(other.external && plan.stageOf(other) < plan.stageOf(step))) continue;
        if (first == nullptr) first = &other;
        ++open;
    }
    if (open == 0) return std::nullopt;
    return refuse("gate.stage_open", step.id.value,
                  Text("%1 open before this stage is done, first of all: %2", {open, wordsOf(*first)}),
                  "Answer what is open, then call the stage done.");
}

/// How a condition that is needed can be had: by the step that gives it.
Text wayTo(const Run& run, const std::string& condition)
{
    const Step* past = nullptr;
    for (const Step& step : run.plan().steps) {
        if (!gives(step, condition)) continue;
        const StepState state = run.stateOf(step.id);
        if (isOpen(state) || state == StepState::NotApplicable)
            return Text("This step gives it, do it first: %1", {wordsOf(step)});
        past = &step;
    }
    if (const Step* again = lapsedGiver(run, condition))
        return Text("What was said no longer holds. Say it again: %1", {wordsOf(*again)});
    if (past != nullptr)
        return Text("It was so and has ended since. Do this stage again, with its cause: %1",
                    {std::vector<Text>{run.plan().stages[run.plan().stageOf(*past)].title}});
    return Text("No step of this kind of run gives it. Abandon this run and begin a full set-up.");
}

std::optional<Finding> needsGate(const Run& run, const Step& step)
{
    const StepState state = run.stateOf(step.id);
    for (const std::string& need : step.needs)
        if (asksFor(step, state, need) && !run.conditions().contains(need))
            return refuse("gate.needs", step.id.value, conditionMissing(need), wayTo(run, need));
    return std::nullopt;
}

std::optional<Finding> stopGate(const Run& run, const Step& step)
{
    const std::set<std::string>& conditions = run.conditions();
    // A step that says that everybody is out and every stop is given up cannot be said while somebody holds one.
    const bool givesUp = std::find(step.ends.begin(), step.ends.end(), kStopHeld) != step.ends.end();
    if (givesUp && !run.heldStops().empty())
        return refuse("gate.stop_held", step.id.value, Text("A stop is still held by %1.", {holdersOf(run)}),
                      "Ask each of them by name. Everybody out; then each gives up their own stop.");
    if (step.kind == StepKind::Motion && !run.heldStops().empty())
        return refuse("gate.stop_held", step.id.value,
                      Text("The press must not move: a stop is held by %1.", {holdersOf(run)}),
                      "Ask each of them by name. Everybody out; then each gives up their own stop.");
    if (!step.hands || step.kind == StepKind::Hold || conditions.contains(kStopHeld) || conditions.contains(kLockedOut))
        return std::nullopt;
    const std::string& stop = run.plan().places[step.place].holdStop;
    return refuse("gate.stop_not_held", step.id.value, "Hands go into the press here, and no stop is held.",
                  stop.empty() ? Text("No maintained stop is named for this place: lock the isolator by your site's "
                                      "procedure and say so before any hand goes in.")
                               : Text("Hold this stop, each person their own, and say who holds it: %1", {stop}));
}

std::optional<Finding> targetGate(const Run& run, const Step& step)
{
    const Finding* why = cannotOf(run.targets(), step);
    if (why == nullptr) return std::nullopt;
    return refuse("gate.target_cannot", step.id.value, why->text, why->remedy);
}

}  // namespace

std::optional<Finding> closedBecause(const Run& run, const StepId& id)
{
    const Step* step = run.plan().find(id);
    if (step == nullptr)
        return refuse("gate.no_step", id.value, "This run has no such step.", "Choose a step of this run's plan.");
    if (auto closed = phaseGate(run, id.value)) return closed;
    for (const auto gate : {answeredGate, orderGate, callGate, needsGate, stopGate, targetGate})
        if (auto closed = gate(run, *step)) return closed;
    return std::nullopt;
}

std::optional<StepId> lapsedBefore(const Run& run, const StepId& id)
{
    const Step* step = run.plan().find(id);
    if (step == nullptr) return std::nullopt;
    const StepState state = run.stateOf(id);
    for (const std::string& need : step->needs) {
        if (!asksFor(*step, state, need) || run.conditions().contains(need)) continue;
        if (const Step* again = lapsedGiver(run, need)) return again->id;
    }
    return std::nullopt;
}

}  // namespace taut::run
