// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/run/decide.h"

#include <algorithm>

#include "core/inputs/words.h"
#include "core/run/answer.h"
#include "core/run/attachment.h"
#include "core/run/change.h"
#include "core/run/course.h"
#include "core/run/deviation.h"
#include "core/run/event_maker.h"
#include "core/run/parts.h"
#include "core/run/remedy.h"
#include "core/run/words.h"

namespace taut::run {

namespace {

using people::Act;
using procedure::Step;
using procedure::StepKind;

Finding noReason(std::string subject, Text why)
{
    return refuse("gate.no_reason", std::move(subject), std::move(why), "Say it in a few words.");
}

Finding roleGate(std::string subject, const char* role)
{
    return refuse("gate.role", std::move(subject), Text("The role %1 does not allow this.", {std::vector<Text>{role}}),
                  "Let somebody do it whose role allows it.");
}

/// What each command needs of the person who gives it; nothing = anybody signed in.
struct ActOf {
    std::optional<Act> operator()(const Withdraw&) const { return Act::WithdrawPress; }
    std::optional<Act> operator()(const Return&) const { return Act::ReturnPress; }
    std::optional<Act> operator()(const SignOff&) const { return Act::SignOff; }
    std::optional<Act> operator()(const Abandon&) const { return Act::Abandon; }
    // What stopped a run is noted by the program when it starts again, whoever sits at it.
    std::optional<Act> operator()(const Interrupt&) const { return std::nullopt; }
    template <class T>
    std::optional<Act> operator()(const T&) const
    {
        return Act::AnswerStep;
    }
};

template <class... Ts>
bool isOneOf(const Command& command)
{
    return (std::holds_alternative<Ts>(command) || ...);
}

/// What carries the run on: only the person in whose hands it is does that. What makes safer, what is only written
/// down, and what ends the run by its own rule is open to others.
bool carriesOn(const Command& command)
{
    return isOneOf<Answer, Correct, SkipStep, AcceptDeviation, GiveUpStop, ChangeRoll, MeasuredDiameter, RepeatStage,
                   SignOff>(command);
}

/// What may be done in which phase.
std::optional<Finding> phaseGate(const Run& run, const Command& command)
{
    switch (run.phase()) {
    case Phase::Running:
        if (isOneOf<Resume>(command))
            return refuse("gate.not_interrupted", run.id(), "This run is going on: there is nothing to resume.");
        if (isOneOf<Return>(command))
            return refuse("gate.not_withdrawn", run.id(), "This press is not withdrawn from use.");
        return std::nullopt;
    case Phase::Interrupted:
        if (isOneOf<Resume, Abandon, Withdraw, Note, Attach>(command)) return std::nullopt;
        return refuse("gate.interrupted", run.id(), "The run was interrupted and has not been taken up again.",
                      "Make the press safe, say so, and resume the run.");
    case Phase::Withdrawn:
        if (isOneOf<Return, Abandon, Note, Attach>(command)) return std::nullopt;
        return refuse("gate.withdrawn", run.id(), "The press is withdrawn from use.",
                      "A supervisor other than the person who withdrew it gives it back when it is put right.");
    case Phase::Completed:
    case Phase::Abandoned:
        return refuse("gate.ended", run.id(), "This run has ended.", "Begin a new run on this press.");
    }
    return std::nullopt;
}

/// One function a command: what happens, or why not. Phase and role are already looked at.
struct Deciding {
    const Run& run;
    const Stamp& stamp;
    const people::Actor& actor;

    using Outcome = Result<Happening>;
    [[nodiscard]] const Step* find(const StepId& id) const { return run.plan().find(id); }
    [[nodiscard]] static Finding noStep(const StepId& id)
    {
        return refuse("gate.no_step", id.value, "This run has no such step.", "Choose a step of this run's plan.");
    }

    template <class T>
    [[nodiscard]] static Outcome as(Result<T> happened)
    {
        if (!happened) return happened.error();
        return Happening(*std::move(happened));
    }

    Outcome operator()(const Answer& c) const
    {
        if (auto closed = closedBecause(run, c.step)) return *closed;
        return filling(*find(c.step), answerTo(run, *find(c.step), c.entered, c.stated));
    }
    Outcome operator()(const Correct& c) const
    {
        const Step* step = find(c.step);
        if (step == nullptr) return noStep(c.step);
        if (step->kind == StepKind::Motion || step->kind == StepKind::Hold)
            return refuse("gate.not_correctable", c.step.value,
                          "A movement or a held stop happened as it happened: it cannot be corrected.",
                          "Write a note beside it, or give up the stop and hold it anew.");
        const StepState state = run.stateOf(c.step);
        if (state != StepState::Answered && state != StepState::Deviated && state != StepState::Outside)
            return refuse("gate.not_answered", c.step.value, "There is no standing answer to correct.",
                          "Answer the step.");
        if (!saysSomething(c.reason)) return noReason(c.step.value, "A correction needs a reason.");
        auto answer = answerTo(run, *step, c.entered, {});
        if (!answer) return answer.error();
        answer->correction = true;
        answer->reason = trimmed(c.reason);
        return filling(*step, std::move(answer));
    }
    /// An answer that stands, with what it makes known of the inputs.
    [[nodiscard]] Outcome filling(const Step& step, Result<Answered> answer) const
    {
        if (!answer) return answer.error();
        if (answer->judgement.verdict == verdict::Verdict::Outside) return Happening(*std::move(answer));
        auto filled = filledBy(run, step, *answer);
        if (!filled) return filled.error();
        answer->filled = *std::move(filled);
        return Happening(*std::move(answer));
    }
    Outcome operator()(const SkipStep& c) const
    {
        const Step* step = find(c.step);
        if (step == nullptr) return noStep(c.step);
        if (!isOpen(run.stateOf(c.step)))
            return refuse("gate.answered", c.step.value, "This step is answered already.",
                          "To change what was written down, correct it and say why.");
        // What was read stays read: it is put right, or a supervisor signs for it.
        if (run.stateOf(c.step) == StepState::Outside)
            return refuse("gate.outside", c.step.value,
                          "This was answered, and came out outside: it cannot be passed by any more.",
                          "Put it right and answer again, or have a supervisor accept the value.");
        if (!step->waivable || step->kind == StepKind::Call || cannotOf(run.targets(), *step) != nullptr)
            return refuse("gate.not_waivable", c.step.value, "Nobody may pass this step by.",
                          "Do it and answer it. If it cannot be done, withdraw the press or abandon the run.");
        if (!saysSomething(c.reason)) return noReason(c.step.value, "A step that does not apply needs a reason.");
        NotApplicable skipped{c.step, trimmed(c.reason), {}, {}};
        if (step->vital && (!c.supervisor || !people::may(c.supervisor->role(), Act::WaiveVital)))
            return refuse("gate.supervisor", c.step.value, "A vital step is passed by only with a supervisor.",
                          "Ask a supervisor to look at it here and sign in beside you.");
        if (step->vital && c.supervisor->id() == actor.id())
            return refuse("gate.supervisor", c.step.value,
                          "The supervisor for a vital step must be somebody other than the person at the run.",
                          "Ask another supervisor to look at it here and sign in beside you.");
        if (c.supervisor) {
            skipped.approvedBy = c.supervisor->id().value;
            skipped.approvedByName = c.supervisor->name();
        }
        return Happening(std::move(skipped));
    }
    Outcome operator()(const AcceptDeviation& c) const
    {
        const Step* step = find(c.step);
        if (step == nullptr) return noStep(c.step);
        const StepStanding standing = run.standing(c.step);
        if (step->kind != StepKind::Reading || !step->waivable)
            return refuse("gate.not_deviable", c.step.value,
                          "Only the reading of a process value can be accepted outside its window.",
                          "Put it right and answer the step. If it cannot be done, withdraw the press or abandon the "
                          "run.");
        if (standing.state != StepState::Outside || !standing.answer || !standing.answer->value)
            return refuse("gate.not_outside", c.step.value, "There is no reading outside its window to accept.",
                          "Read the value first.");
        const Answered& reading = *standing.answer;
        if (!reading.window.low && !reading.window.high)
            return refuse("gate.not_deviable", c.step.value, "This reading has no window to deviate from.",
                          "Answer the step.");
        if (!c.supervisor || !people::may(c.supervisor->actor().role(), Act::AcceptDeviation))
            return refuse("gate.supervisor", c.step.value, "Only a supervisor accepts a value outside its window.",
                          "Ask a supervisor to look at it here and sign in beside you.");
        if (c.supervisor->actor().id().value == standing.by)
            return refuse("gate.own_deviation", c.step.value,
                          "Nobody accepts a value outside its window that they read themselves.",
                          "Ask another supervisor, or let somebody else read it again.");
        if (!saysSomething(c.reason)) return noReason(c.step.value, "A deviation needs a reason.");
        auto filled = filledBy(run, *step, reading);
        if (!filled) return filled.error();
        const people::Actor& supervisor = c.supervisor->actor();
        Deviated accepted{c.step,
                          *reading.value,
                          reading.entered,
                          reading.window,
                          trimmed(c.reason),
                          supervisor.id().value,
                          supervisor.name(),
                          *std::move(filled),
                          stamp.utcMs,
                          {}};
        const std::string text = deviationText(run.id(), deviationJson(accepted));
        accepted.signature = hex(c.supervisor->sign(kDeviationPurpose, bytesOf(text)));
        return Happening(std::move(accepted));
    }
    Outcome operator()(const Note& c) const
    {
        if (!c.step.value.empty() && find(c.step) == nullptr) return noStep(c.step);
        if (trimmed(c.text).empty()) return noReason(c.step.value, "The note is empty.");
        return Happening(Noted{c.step, trimmed(c.text)});
    }
    Outcome operator()(const Attach& c) const { return as(attachedBy(run, c)); }
    Outcome operator()(const SayHelped& c) const { return as(helpedBy(run, c)); }

    Outcome operator()(const HoldStop& c) const
    {
        if (auto why = whyNoName(c.holder, run.id())) return *why;
        if (trimmed(c.where).empty())
            return refuse("gate.no_place", run.id(), "It was not said where the stop is held.",
                          "Say which stop is held.");
        return Happening(StopHeld{trimmed(c.holder), trimmed(c.where)});
    }
    Outcome operator()(const GiveUpStop& c) const
    {
        const std::string holder = trimmed(c.holder);
        for (const HeldStop& held : run.heldStops())
            if (held.holder == holder) {
                if (!c.saidBy || c.saidBy->id() == actor.id()) return Happening(StopGivenUp{holder, {}, {}, {}});
                return Happening(StopGivenUp{holder, trimmed(c.reason), c.saidBy->id().value, c.saidBy->name()});
            }
        return refuse("gate.no_such_stop", run.id(), Text("Nobody of this name holds a stop: \"%1\".", {holder}),
                      "Give the name as it stands in the list of held stops.");
    }

    Outcome operator()(const ChangeRoll& c) const
    {
        Sources sources = run.sources();
        Findings notes;
        const auto roll = inputs::readRoll(c.rollToml, "roll", notes);
        if (!roll) return roll.error();
        sources.roll = sourceOf(roll->id, 0, c.rollToml);
        auto change = changedInputs(run, sources, c.presentDiameter, "roll");
        if (!change) return change.error();
        if (auto why = cannotWork(change->targets)) return *why;
        return Happening(*std::move(change));
    }
    Outcome operator()(const MeasuredDiameter& c) const
    {
        if (auto why = noDiameter(run, c.diameter)) return *why;
        // On the shaft, this is what is left of it: what was lifted and hung stays as it was.
        const Step* stripped = strippedBy(run);
        const bool mounted = stripped != nullptr || run.conditions().contains("roll_mounted");
        if (mounted)
            if (auto why = largerThanBefore(run, c.diameter)) return *why;
        if (stripped != nullptr)
            return (*this)(
                Correct{stripped->id, inputs::asWritten(asTyped(run, c.diameter)), std::string(kMeasuredAgain)});
        if (mounted) {
            auto left = strippedTo(run, asTyped(run, c.diameter));
            if (!left) return left.error();
            return Happening(*std::move(left));
        }
        // What was measured is kept whatever follows: where the roll then cannot be lifted, its own steps say so.
        auto change = changedInputs(run, run.sources(), c.diameter, "diameter");
        if (!change) return change.error();
        return Happening(*std::move(change));
    }

    Outcome operator()(const RepeatStage& c) const { return as(repeatedBy(run, c)); }
    Outcome operator()(const Interrupt& c) const
    {
        if (trimmed(c.reason).empty()) return noReason(run.id(), "An interruption needs its cause.");
        return Happening(Interrupted{trimmed(c.reason)});
    }
    Outcome operator()(const Resume& c) const
    {
        std::vector<Text> missing;
        std::vector<std::string> said;
        for (const char* word : kMakeSafe) {
            if (std::find(c.stated.begin(), c.stated.end(), word) != c.stated.end())
                said.emplace_back(word);
            else
                missing.push_back(makeSafeSaid(word));
        }
        if (!missing.empty())
            return refuse("gate.make_safe", run.id(), Text("Before the run goes on, not yet said: %1.", {missing}),
                          "Go to the press, make it safe, look at each of these, and say it.");
        const auto others = inOtherHands(run, actor.id());
        if (others && !c.takesOver) return *others;
        const bool vital = c.afterLong || mustSayVitalAgain(run, stamp.utcMs, actor.id());
        return Happening(Resumed{std::move(said), toSayAgain(run, vital), others ? run.operatorName() : std::string()});
    }
    Outcome operator()(const HandOver& c) const
    {
        if (!people::may(c.to.role(), Act::AnswerStep)) return roleGate(c.to.id().value, people::roleWord(c.to.role()));
        if (c.to.id().value == run.operatorId())
            return refuse("gate.same_person", c.to.id().value, "The run is in this person's hands already.",
                          "Hand it over to somebody else, or go on.");
        // Whoever comes would have to take the word of somebody who has gone for what hangs there.
        if (run.conditions().contains("roll_lifted"))
            return refuse("gate.roll_lifted", run.id(), "A roll is lifted and nothing holds it on the shaft yet.",
                          "Mount and hold it first, or let it down and repeat the stage. Then hand over.");
        return Happening(HandedOver{c.to.id(), c.to.name(), people::roleWord(c.to.role()), toSayAgain(run, true)});
    }

    Outcome operator()(const Withdraw& c) const
    {
        if (!saysSomething(c.reason)) return noReason(run.id(), "Withdrawing the press needs a sentence.");
        return Happening(Withdrawn{trimmed(c.reason)});
    }
    Outcome operator()(const Return& c) const
    {
        for (auto event = run.events().rbegin(); event != run.events().rend(); ++event) {
            if (!std::holds_alternative<Withdrawn>(event->happening())) continue;
            if (event->stamp().by == actor.id())
                return refuse("gate.own_return", run.id(), "Nobody gives back a press that they withdrew themselves.",
                              "Ask another supervisor to look at it and give it back.");
            break;
        }
        if (!saysSomething(c.done)) return noReason(run.id(), "It was not said what was put right.");
        return Happening(Returned{trimmed(c.done)});
    }
    Outcome operator()(const SignOff& c) const
    {
        const std::vector<StepId> open = run.openSteps();
        if (!open.empty())
            return refuse("gate.open_steps", open.front().value,
                          Text("%1 open before this run can be signed, first of all: %2",
                               {static_cast<std::int64_t>(open.size()), wordsOf(*find(open.front()))}),
                          "Answer what is open, or abandon the run with a reason.");
        if (!run.heldStops().empty())
            return refuse("gate.stop_held", run.id(),
                          Text("This run cannot be signed while a stop is held by %1.", {holdersOf(run)}),
                          "Ask each of them by name. Whoever holds a stop gives it up; then sign.");
        Completed completed{trimmed(c.remarks)};
        if (c.supervisor) {
            if (!people::may(c.supervisor->role(), Act::Qualify))
                return refuse("gate.supervisor", run.id(), "Only a supervisor countersigns a run.",
                              "Ask a supervisor to look at it here and sign in beside you.");
            if (c.supervisor->id() == actor.id())
                return refuse("gate.supervisor", run.id(), "Nobody countersigns a run that they sign themselves.",
                              "Ask another supervisor to look at it here and sign in beside you.");
            completed.supervisor = c.supervisor->id().value;
            completed.supervisorName = c.supervisor->name();
        }
        return Happening(std::move(completed));
    }
    Outcome operator()(const Abandon& c) const
    {
        if (!saysSomething(c.reason)) return noReason(run.id(), "Abandoning a run needs a reason.");
        Abandoned e{trimmed(c.reason), {}};
        for (const HeldStop& held : run.heldStops()) e.held.push_back({held.holder, held.where});
        return Happening(std::move(e));
    }
};

}  // namespace

std::optional<Finding> inOtherHands(const Run& run, const people::PersonId& who)
{
    if (who.value == run.operatorId()) return std::nullopt;
    return refuse("gate.other_hands", run.id(), Text("This run is in the hands of %1.", {run.operatorName()}),
                  Text("Take it over, and say its vital steps again; or let %1 go on with it.", {run.operatorName()}));
}

Result<Event> decide(const Run& run, const Command& command, const Stamp& stamp, const people::Actor& actor)
{
    if (auto closed = phaseGate(run, command)) return *closed;
    if (const auto act = std::visit(ActOf{}, command); act && !people::may(actor.role(), *act))
        return roleGate(run.id(), people::roleWord(actor.role()));
    if (carriesOn(command))
        if (auto others = inOtherHands(run, actor.id())) return *others;
    auto happening = std::visit(Deciding{run, stamp, actor}, command);
    if (!happening) return happening.error();
    return EventMaker::make(stampOf(actor, stamp, run.events().back().stamp().n + 1), *std::move(happening),
                            run.began().units);
}

Event clockJumped(const Run& run, std::int64_t byMs, const Stamp& stamp, const people::Actor& actor)
{
    return EventMaker::make(stampOf(actor, stamp, run.events().back().stamp().n + 1), ClockJumped{byMs},
                            run.began().units);
}

Stamp stampOf(const people::Actor& actor, const Stamp& stamp, std::uint64_t n)
{
    return {n, stamp.utcMs, stamp.offsetMinutes, actor.id(), actor.name(), people::roleWord(actor.role())};
}

}  // namespace taut::run
