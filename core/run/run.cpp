// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/run/run.h"

#include <algorithm>
#include <cassert>

#include "core/run/parts.h"

namespace taut::run {

using procedure::Step;
using procedure::StepKind;

const char* stateWord(StepState state) noexcept
{
    switch (state) {
    case StepState::Open: return "open";
    case StepState::Outside: return "outside";
    case StepState::Stale: return "stale";
    case StepState::Reconfirm: return "reconfirm";
    case StepState::Answered: return "answered";
    case StepState::Deviated: return "deviated";
    case StepState::NotApplicable: return "not_applicable";
    }
    return "";
}

/// What each happening does to a run. Nothing here judges, plans or computes a target.
struct Applied {
    Run& run;
    const Event& event;

    [[nodiscard]] std::uint64_t n() const { return event.stamp().n; }
    [[nodiscard]] const Step* stepOf(const StepId& id) const { return run.plan().find(id); }
    /// A part of this event's happening, kept alive by the event.
    template <class T>
    [[nodiscard]] std::shared_ptr<const T> share(const T& part) const
    {
        return {event.shared(), &part};
    }

    void said(StepStanding& s) const
    {
        s.by = event.stamp().by.value;
        s.byName = event.stamp().byName;
        s.at = event.stamp().utcMs;
        s.offset = event.stamp().offsetMinutes;
        s.n = n();
    }
    void endBy(const Step& step) const
    {
        for (const std::string& condition : step.ends)
            if (std::find(step.gives.begin(), step.gives.end(), condition) == step.gives.end())
                run.m_endedAt[condition] = n();
    }
    void endStates() const { run.m_statesEndedAt = n(); }
    void hold(const std::string& holder, const std::string& where) const
    {
        for (HeldStop& held : run.m_held) {
            if (held.holder != holder || held.where != where) continue;
            held.before = false;
            return;
        }
        run.m_held.push_back({holder, where, false});
    }
    /// Nothing said about the machine and no held stop counts any longer.
    void releaseTrust() const
    {
        endStates();
        for (HeldStop& held : run.m_held) held.before = true;
    }
    /// A held stop is never confirmed from memory: where hands work is to be done, or done again after the stop was
    /// given up, the step that asked for it opens again and the stop is held anew; where none is, it only has to be
    /// given up before anything moves.
    void reopenHolds() const
    {
        const procedure::Plan& plan = run.plan();
        const Step* hold = nullptr;
        for (const Step& step : plan.steps) {
            if (hold != nullptr && plan.stageOf(*hold) != plan.stageOf(step)) hold = nullptr;
            if (step.kind == StepKind::Hold) hold = &step;
            if (hold == nullptr || !step.hands || !isOpen(run.stateOf(step.id))) continue;
            // Looked up, never made: a step that has a standing has begun its stage.
            const auto found = run.m_standing.find(hold->id);
            if (found == run.m_standing.end()) continue;
            StepStanding& s = found->second;
            if (s.state == StepState::Answered && !heldNow(trimmed(s.answer->entered))) s.state = StepState::Reconfirm;
        }
    }
    [[nodiscard]] bool heldNow(const std::string& holder) const
    {
        return std::any_of(run.m_held.begin(), run.m_held.end(),
                           [&](const HeldStop& held) { return held.holder == holder && !held.before; });
    }
    /// Open again, the old answer kept in sight.
    void reopen(const StepId& id, StepState as) const
    {
        const auto found = run.m_standing.find(id);
        if (found == run.m_standing.end()) return;
        if (found->second.state != StepState::Open) found->second.state = as;
    }
    void forgetCarried(const Step& step) const
    {
        for (const std::string& condition : step.gives) run.m_carried.erase(condition);
    }
    void reconfirm(const std::vector<StepId>& steps) const
    {
        for (const StepId& id : steps) reopen(id, StepState::Reconfirm);
    }

    void operator()(const Began& e) const
    {
        run.m_began = share(e);
        run.m_sources = share(e.sources);
        run.m_facts = share(e.facts);
        run.m_targets = share(e.targets);
        run.m_plan = share(e.plan);
        run.m_presentDiameter = e.presentDiameter;
        for (const Carried& carried : e.carried) run.m_carried.insert(carried.condition);
        run.m_operator = event.stamp().by.value;
        run.m_operatorName = event.stamp().byName;
    }
    void operator()(const Answered& e) const
    {
        // What it makes known stands before it: the answer itself is never stale by it.
        if (e.filled) (*this)(*e.filled);
        StepStanding& s = run.m_standing[e.step];
        // Saying the same thing again, or correcting how it was written down, is not doing it again.
        const bool sameAct = s.since > 0 && (e.correction || s.state == StepState::Reconfirm);
        s.answer = e;
        s.deviation.reset();
        s.skipReason.clear();
        said(s);
        if (!sameAct) s.since = n();
        s.state = e.judgement.verdict == verdict::Verdict::Outside ? StepState::Outside : StepState::Answered;
        const Step* step = stepOf(e.step);
        if (step == nullptr || s.state == StepState::Outside) return;
        if (!sameAct) endBy(*step);
        if (step->kind == StepKind::Hold) hold(trimmed(e.entered), placeOfStop(run.plan(), *step));
        if (step->kind == StepKind::Motion) endStates();
    }
    void operator()(const NotApplicable& e) const
    {
        StepStanding& s = run.m_standing[e.step];
        said(s);
        s.since = n();
        s.state = StepState::NotApplicable;
        s.skipReason = e.reason;
    }
    void operator()(const Deviated& e) const
    {
        if (e.filled) (*this)(*e.filled);
        StepStanding& s = run.m_standing[e.step];
        s.state = StepState::Deviated;
        s.deviation = e;
        s.n = n();  // who read it, and when, stays
        s.since = n();
        if (const Step* step = stepOf(e.step)) endBy(*step);
    }
    void operator()(const InputsChanged& e) const
    {
        run.m_sources = share(e.sources);
        run.m_facts = share(e.facts);
        run.m_targets = share(e.targets);
        run.m_plan = share(e.plan);
        run.m_presentDiameter = e.presentDiameter;
        for (const StepId& id : e.stale) {
            reopen(id, StepState::Stale);
            if (const Step* step = stepOf(id)) forgetCarried(*step);
        }
        reopenHolds();
    }
    void operator()(const StopHeld& e) const { hold(e.holder, e.where); }
    void operator()(const StopGivenUp& e) const
    {
        std::erase_if(run.m_held, [&](const HeldStop& held) { return held.holder == e.holder; });
    }
    void operator()(const Interrupted&) const
    {
        run.m_phase = Phase::Interrupted;
        releaseTrust();
    }
    void operator()(const Resumed& e) const
    {
        run.m_phase = Phase::Running;
        run.m_operator = event.stamp().by.value;
        run.m_operatorName = event.stamp().byName;
        endStates();
        reconfirm(e.reconfirm);
        reopenHolds();
    }
    void operator()(const HandedOver& e) const
    {
        run.m_operator = e.to.value;
        run.m_operatorName = e.toName;
        releaseTrust();
        reconfirm(e.reconfirm);
        reopenHolds();
    }
    void operator()(const Repeated& e) const
    {
        for (const StepId& id : e.reopened) {
            reopen(id, StepState::Open);
            if (const Step* step = stepOf(id)) forgetCarried(*step);
        }
    }
    void operator()(const Noted&) const {}
    void operator()(const Attached&) const {}
    void operator()(const Helped&) const {}
    void operator()(const ClockJumped&) const {}
    void operator()(const Withdrawn&) const
    {
        run.m_phase = Phase::Withdrawn;
        releaseTrust();
    }
    void operator()(const Returned&) const { run.m_phase = Phase::Interrupted; }
    void operator()(const Completed&) const { run.m_phase = Phase::Completed; }
    void operator()(const Abandoned&) const { run.m_phase = Phase::Abandoned; }
};

Run Run::fold(std::span<const Event> events)
{
    assert(!events.empty() && std::holds_alternative<Began>(events.front().happening()));
    Run run;
    for (const Event& event : events) run.apply(event);
    run.settleConditions();
    return run;
}

Run Run::after(const Event& event) const
{
    Run next = *this;
    next.apply(event);
    next.settleConditions();
    return next;
}

void Run::apply(const Event& event)
{
    std::visit(Applied{*this, event}, event.happening());
    m_events.push_back(event);
}

StepStanding Run::standing(const StepId& step) const
{
    const auto found = m_standing.find(step);
    return found == m_standing.end() ? StepStanding{} : found->second;
}

StepState Run::stateOf(const StepId& step) const noexcept
{
    const auto found = m_standing.find(step);
    return found == m_standing.end() ? StepState::Open : found->second.state;
}

}  // namespace taut::run
