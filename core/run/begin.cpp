// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "core/run/change.h"
#include "core/run/decide.h"
#include "core/run/event_maker.h"

namespace taut::run {

namespace {

using procedure::ValidFor;

/// How long a standing condition of the parent holds: the longest of the steps that gave it there, else what the
/// parent itself took over.
std::optional<ValidFor> validityOf(const Run& parent, const std::string& condition)
{
    std::optional<ValidFor> found;
    for (const procedure::Step& step : parent.plan().steps) {
        const StepState state = parent.stateOf(step.id);
        const bool gave = std::find(step.gives.begin(), step.gives.end(), condition) != step.gives.end() &&
                          (state == StepState::Answered || state == StepState::Deviated);
        // Given twice, it stands for as long as the shorter-lived answer: the later one was needed for a reason.
        if (gave && (!found || step.validFor < *found)) found = step.validFor;
    }
    if (found) return found;
    for (const Carried& carried : parent.began().carried)
        if (carried.condition == condition) return carried.validFor;
    return std::nullopt;
}

/// True when the run was going on when it ended: an interrupted run, or one on a withdrawn press, leaves nothing behind
/// that could be relied on.
bool endedRunning(const Run& parent)
{
    Phase phase = Phase::Running;
    for (const Event& event : parent.events()) {
        const Happening& what = event.happening();
        if (std::holds_alternative<Interrupted>(what) || std::holds_alternative<Returned>(what))
            phase = Phase::Interrupted;
        if (std::holds_alternative<Withdrawn>(what)) phase = Phase::Withdrawn;
        if (std::holds_alternative<Resumed>(what)) phase = Phase::Running;
    }
    return phase == Phase::Running;
}

/// What a child run takes over, by the procedure's valid_for alone. A full set-up starts from nothing. A next roll
/// keeps what holds for longer than a roll; a re-web and a restart, on the same roll, keep what holds for the roll as
/// well.
std::vector<Carried> carriedBy(const Run& parent, const std::string& kind)
{
    std::vector<Carried> all;
    if (kind == "full" || !endedRunning(parent)) return all;
    for (const std::string& condition : parent.conditions()) {
        if (procedure::isMachineState(condition)) continue;
        const auto valid = validityOf(parent, condition);
        if (!valid || *valid == ValidFor::Run) continue;
        if (*valid == ValidFor::Roll && kind == "next_roll") continue;
        all.push_back({condition, *valid});
    }
    return all;
}

/// What this run does not ask because it was answered before, for other figures than it would be now.
std::optional<Finding> answeredForOthers(const Run& parent, const Basis& basis)
{
    const std::vector<targets::TargetId> differing = targets::changed(parent.targets(), basis.targets);
    for (const targets::TargetId& id : basis.restsOn) {
        if (std::find(differing.begin(), differing.end(), id) == differing.end()) continue;
        const targets::Target* target = basis.targets.find(id);
        const Text name = target != nullptr ? target->name : Text("%1", {id});
        return refuse("gate.parent_differs", parent.id(),
                      Text("The run that this one continues has answered this for other figures, and it would not be "
                           "asked again: %1.",
                           {std::vector<Text>{name}}),
                      "Begin a full set-up, which asks it.");
    }
    return std::nullopt;
}

}  // namespace

Result<Event> begin(const Basis& basis, const Beginning& beginning, const Stamp& stamp, const people::Actor& actor)
{
    if (!people::may(actor.role(), people::Act::AnswerStep))
        return refuse(
            "gate.role", beginning.runId,
            Text("The role %1 does not allow a run to be begun.", {std::vector<Text>{people::roleWord(actor.role())}}),
            "Let somebody begin it whose role allows it.");
    if (auto why = cannotWork(basis.targets)) return *why;
    Began began;
    began.runId = beginning.runId;
    began.workplace = beginning.workplace;
    began.practice = beginning.practice;
    began.kind = beginning.question.kind;
    began.webInPress = beginning.question.webInPress;
    began.presentDiameter = beginning.question.presentDiameter;
    began.sources = basis.sources;
    began.facts = basis.facts;
    began.targets = basis.targets;
    began.plan = basis.plan;
    began.units = basis.inputs.press ? basis.inputs.press->units : UnitSystem::Metric;
    if (const Run* parent = beginning.parent) {
        if (parent->phase() != Phase::Completed && parent->phase() != Phase::Abandoned)
            return refuse("gate.parent_open", parent->id(), "The run that this one continues has not ended.",
                          "Sign it off or abandon it first.");
        if (parent->sources().press.id != basis.sources.press.id)
            return refuse("gate.parent_press", parent->id(), "The run that this one continues was on another press.",
                          "Begin a full set-up on this press.");
        if (beginning.question.kind != "full" && parent->sources().job.id != basis.sources.job.id)
            return refuse("gate.parent_job", parent->id(),
                          Text("The run that this one continues was for job %1.", {parent->sources().job.id}),
                          "Begin a full set-up for this job.");
        if (auto why = answeredForOthers(*parent, basis)) return *why;
        began.parent = parent->id();
        began.carried = carriedBy(*parent, began.kind);
    }
    const UnitSystem units = began.units;
    return EventMaker::make(stampOf(actor, stamp, 1), std::move(began), units);
}

}  // namespace taut::run
