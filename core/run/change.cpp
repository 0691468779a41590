// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/run/change.h"

#include <algorithm>
#include <cmath>

#include "core/base/json.h"
#include "core/inputs/fill.h"
#include "core/run/decide.h"
#include "core/run/parts.h"
#include "core/units/parse.h"
#include "core/units/unit.h"
#include "core/verdict/plausible.h"

namespace taut::run {

namespace {

using procedure::StepKind;

constexpr std::string_view kOuterDiameter = "roll.outer_diameter", kStrippedDiameter = "roll.stripped_diameter";

/// "width" of "roll.width"; the measured diameter is the same input, whichever way it becomes known.
std::string_view inputOf(const procedure::Step& step)
{
    if (step.kind == StepKind::Scan) return "tag";
    const std::string_view key = step.fills.front();
    return key == kOuterDiameter || key == kStrippedDiameter ? "diameter" : key.substr(key.find('.') + 1);
}

void fillAll(inputs::Roll& roll, const procedure::Step& step, const Answered& answer)
{
    if (step.kind == StepKind::Scan) {
        const auto tag = inputs::readRollTag(answer.entered);
        if (!tag) return;  // its number was typed: that says nothing else
        for (const std::string& key : step.fills) (void)inputs::fillFromTag(roll, key, *tag, answer.entered);
        return;
    }
    const inputs::Learnt learnt = answer.value ? inputs::Learnt(*answer.value) : inputs::Learnt(answer.entered);
    for (const std::string& key : step.fills) (void)inputs::fill(roll, key, learnt);
}

/// Another diameter of the whole roll: what was left of it when it was stripped is not known any more.
bool isMeasuredAnew(const procedure::Step& step, const inputs::Roll& before, const inputs::Roll& roll,
                    std::optional<Length> presentBefore, std::optional<Length> present)
{
    return step.fills.front() == kOuterDiameter &&
           (present != presentBefore || !(roll.outerDiameter == before.outerDiameter));
}

}  // namespace

Result<InputsChanged> changedInputs(const Run& run, const Sources& sources, std::optional<Length> presentDiameter,
                                    std::string_view what, const StepId* by)
{
    auto basis = basisFor(sources, {run.began().kind, run.began().webInPress, presentDiameter});
    if (!basis) return basis.error();
    InputsChanged e{
        std::move(basis->sources), std::move(basis->facts), std::move(basis->targets), std::move(basis->plan), {},
        std::string(what),         presentDiameter};
    // Only what was answered can go stale; what is open is simply open.
    for (StepId& id : staleSteps(e.plan, run.targets(), e.targets, what))
        if (run.stateOf(id) != StepState::Open && (by == nullptr || id != *by)) e.stale.push_back(std::move(id));
    return e;
}

std::optional<Finding> cannotWork(const targets::Targets& targets)
{
    for (const Finding& finding : targets.findings)
        if (finding.severity == Severity::Stop)
            return refuse("gate.cannot_work", finding.subject, finding.text, finding.remedy);
    return std::nullopt;
}

const procedure::Step* strippedBy(const Run& run)
{
    const std::vector<procedure::Step>& steps = run.plan().steps;
    const auto found = std::find_if(steps.begin(), steps.end(), [&](const procedure::Step& step) {
        const StepState state = run.stateOf(step.id);
        return std::find(step.fills.begin(), step.fills.end(), kStrippedDiameter) != step.fills.end() &&
               (state == StepState::Answered || state == StepState::Deviated);
    });
    return found == steps.end() ? nullptr : &*found;
}

std::optional<Finding> noDiameter(const Run& run, Length across)
{
    constexpr const char* kMeasure = "Measure straight across the roll and type it with its unit.";
    if (!(across.si() > 0))
        return refuse("gate.no_diameter", run.id(), "A roll's diameter is larger than nothing.", kMeasure);
    const Quantity measured = asTyped(run, across);
    Findings notes;
    const auto roll = inputs::readRoll(run.sources().roll.text, run.sources().roll.id, notes);
    if (roll && roll->core && across.si() <= roll->core->si())
        return refuse("gate.no_diameter", run.id(),
                      Text("%1 is no more than this roll's core of %2.",
                           {measured.magnitude(), roll->core->quantity().magnitude()}),
                      kMeasure);
    auto why = verdict::implausible(measured, run.targets().find("roll.diameter"));
    if (why) why->subject = run.id();
    return why;
}

std::optional<Finding> largerThanBefore(const Run& run, Length left)
{
    const targets::Target* target = run.targets().find("strip.diameter");
    const targets::Ready* ready = target == nullptr ? nullptr : target->ready();
    const std::optional<Quantity> most = ready == nullptr ? std::nullopt : ready->window.high;
    if (!most || left.si() <= most->si()) return std::nullopt;
    return refuse("gate.no_diameter", run.id(),
                  Text("%1 is more than this roll was before, %2 at most: a roll only gets smaller.",
                       {Magnitude{left.si(), Kind::Length, most->unit()}, most->magnitude()}),
                  "Measure straight across the roll, not round it. If it is right, correct what was measured first.");
}

Quantity asTyped(const Run& run, Length length)
{
    const char* unit = run.began().units == UnitSystem::Us ? "in" : "mm";
    const double value = std::round(length.si() / findUnit(Kind::Length, unit)->toSi * 1e9) / 1e9;
    const auto typed = parseQuantity(shortest(value) + ' ' + unit, Kind::Length);
    return typed ? *typed : Quantity(length, Kind::Length, unit);
}

Result<InputsChanged> strippedTo(const Run& run, const Quantity& left)
{
    Sources sources = run.sources();
    Findings notes;
    auto roll = inputs::readRoll(sources.roll.text, sources.roll.id, notes);
    if (!roll) return roll.error();
    if (inputs::fill(*roll, kStrippedDiameter, left))
        sources.roll = sourceOf(sources.roll.id, sources.roll.edition, inputs::writeRoll(*roll));
    return changedInputs(run, sources, run.presentDiameter(), "diameter");
}

Result<std::shared_ptr<const InputsChanged>> filledBy(const Run& run, const procedure::Step& step,
                                                      const Answered& answer)
{
    using Filled = std::shared_ptr<const InputsChanged>;
    if (step.fills.empty()) return Filled();
    Sources sources = run.sources();
    Findings notes;
    const auto before = inputs::readRoll(sources.roll.text, sources.roll.id, notes);
    if (!before) return before.error();
    inputs::Roll roll = *before;
    std::optional<Length> present = run.presentDiameter();
    if (present && answer.value && step.fills.front() == kOuterDiameter)
        present = answer.value->as<Kind::Length>();
    else
        fillAll(roll, step, answer);
    if (isMeasuredAnew(step, *before, roll, run.presentDiameter(), present)) roll.strippedDiameter.reset();
    if (roll == *before && present == run.presentDiameter()) return Filled();
    if (!(roll == *before)) sources.roll = sourceOf(sources.roll.id, sources.roll.edition, inputs::writeRoll(roll));
    auto change = changedInputs(run, sources, present, inputOf(step), &step.id);
    if (!change) {
        Finding why = change.error();
        why.subject = step.id.value;
        return why;
    }
    return Filled(std::make_shared<const InputsChanged>(*std::move(change)));
}

}  // namespace taut::run
