// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/practice/lesson.h"

#include <algorithm>
#include <cmath>

#include "core/run/parts.h"

namespace taut::practice {

namespace {

constexpr int kTicksALine = 10;

Finding noStep(const std::string& step)
{
    return refuse("practice.no_step", step, {"There is no step \"%1\" on this press with this job and roll.", {step}},
                  "Name a step as stage.place.step, and its item.");
}

/// Outside, and rightly said so: what makes an entry of the inputs known is as it is, and not in the hands of whoever
/// measures it. What they set themselves is.
bool isAsItIs(const procedure::Step& step, Truth truth)
{
    return step.kind == procedure::StepKind::Reading && truth == Truth::Holds && !step.fills.empty();
}

}  // namespace

Result<run::Answered> readAnswer(const run::Basis& basis, const Answer& answer)
{
    const procedure::Step* step = basis.plan.find({answer.step});
    if (step == nullptr) return noStep(answer.step);
    return run::answerAgainst({run::targetOf(basis.targets, *step), &basis.sources.roll}, *step, answer.entered,
                              step->needs);
}

Lesson::Lesson(run::Basis basis, Scenario scenario, std::vector<Fault> faults, World world, bool keepsTrace)
    : m_basis(std::move(basis)),
      m_scenario(std::move(scenario)),
      m_faults(std::move(faults)),
      m_world(std::move(world)),
      m_trace(m_world, keepsTrace)
{
    m_trace.add(m_world);
}

Result<Lesson> Lesson::begin(run::Basis basis, Scenario scenario, bool keepsTrace)
{
    for (const std::string& part : scenario.parts) {
        const auto& steps = basis.plan.steps;
        if (std::any_of(steps.begin(), steps.end(), [&](const auto& step) { return isOf(step.id.value, part); }))
            continue;
        return refuse("practice.part", part,
                      {"Nothing of this procedure is called %1 on this press with this job and roll.", {part}},
                      "Name a stage, or a stage and a place of it: splice, threading.lift.");
    }
    std::vector<Fault> faults = faultsOf(scenario, *basis.inputs.press);
    auto world = World::build({basis.inputs, scenario.seed, faults});
    if (!world) return world.error();
    return Lesson(std::move(basis), std::move(scenario), std::move(faults), *std::move(world), keepsTrace);
}

void Lesson::advance(Time by)
{
    for (auto left = std::llround((by / World::kTick).si()); left > 0; --left) {
        m_world.advance(World::kTick);
        if (++m_ticks % kTicksALine == 0) m_trace.add(m_world);
    }
}

Result<Done> Lesson::perform(const Act& act)
{
    Result<Done> done = Done{};
    if (const auto* deed = std::get_if<Deed>(&act)) done = m_world.perform(*deed);
    if (const auto* said = std::get_if<Answer>(&act)) done = answer(*said);
    if (const auto* hint = std::get_if<Hint>(&act); hint != nullptr && m_basis.plan.find({hint->step}) == nullptr)
        done = noStep(hint->step);
    m_log.push_back({m_world.time(), act, done ? std::nullopt : std::optional<Finding>(done.error())});
    return done;
}

Result<Done> Lesson::answer(const Answer& said)
{
    const auto read = readAnswer(m_basis, said);
    if (!read) return read.error();
    const procedure::Step& step = *m_basis.plan.find({said.step});
    Verity verity = answerNow(m_world, step, {said.step, read->entered}, read->value);
    const bool contradicted = verity.truth == Truth::Contradicted;
    const bool outside = read->judgement.verdict == verdict::Verdict::Outside;
    m_said.push_back({said.step, contradicted, !contradicted && (!outside || isAsItIs(step, verity.truth))});
    if (contradicted) m_contradictions.push_back({m_world.time(), said.step, step.item, std::move(verity.seen)});
    return Done{};
}

Help Lesson::helpFor(std::string_view step) const
{
    for (const Logged& one : m_log)
        if (const auto* hint = std::get_if<Hint>(&one.act); hint != nullptr && hint->step == step) return {};
    return helpIn(m_scenario.mode);
}

std::vector<Outcome> Lesson::outcomes() const
{
    const std::vector<Item> items = itemsOf(m_basis.plan, m_scenario.parts);
    std::vector<Outcome> outcomes;
    std::vector<std::size_t> ranks;
    const auto outcomeOf = [&](const std::string& step) {
        return std::find_if(outcomes.begin(), outcomes.end(), [&](const Outcome& o) { return o.step == step; });
    };
    for (const Said& said : m_said) {
        const auto item = std::find_if(items.begin(), items.end(), [&](const Item& i) { return i.step == said.step; });
        if (item == items.end()) continue;
        auto outcome = outcomeOf(said.step);
        if (outcome == outcomes.end()) {
            ranks.push_back(item->rank);
            outcome = outcomes.insert(outcomes.end(), {said.step, Fate::Left, false, false});
        } else if (outcome->fate == Fate::Contradicted && showsAtOnce(m_scenario)) {
            outcome->hinted = true;  // the press itself was pointed out to them
        }
        outcome->fate = said.contradicted ? Fate::Contradicted : said.stands ? Fate::Done : Fate::Left;
    }
    const std::vector<bool> moved = movedOf(ranks);
    for (std::size_t i = 0; i < outcomes.size(); ++i) outcomes[i].outOfOrder = moved[i];
    for (const Logged& one : m_log) {
        const auto* hint = std::get_if<Hint>(&one.act);
        if (hint == nullptr || one.refused) continue;
        if (const auto outcome = outcomeOf(hint->step); outcome != outcomes.end())
            outcome->hinted = true;
        else
            outcomes.push_back({hint->step, Fate::Left, true, false});
    }
    return outcomes;
}

Score Lesson::score() const { return scoreOf(itemsOf(m_basis.plan, m_scenario.parts), outcomes()); }

Detection Lesson::detection() const
{
    std::vector<Suspect> named;
    for (const Logged& one : m_log)
        if (const auto* suspect = std::get_if<Suspect>(&one.act)) named.push_back(*suspect);
    return detectionOf(*m_basis.inputs.press, m_faults, named);
}

void play(Lesson& lesson, std::span<const Action> actions)
{
    for (const Action& action : actions) {
        lesson.advance(action.after);
        // What is refused stands in the log.
        if (action.act) (void)lesson.perform(*action.act);
    }
}

}  // namespace taut::practice
