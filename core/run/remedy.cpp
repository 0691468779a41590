// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/run/remedy.h"

#include <algorithm>
#include <map>

#include "core/run/parts.h"

namespace taut::run {

namespace {

/// What the events say of each step, one after the other.
struct Course {
    std::map<StepId, bool> outside;  ///< whether it was read outside last
    std::vector<StepId> right;

    void forget(const StepId& step) { std::erase(right, step); }
    void operator()(const Answered& e)
    {
        const bool before = outside[e.step];
        const bool now = e.judgement.verdict == verdict::Verdict::Outside;
        outside[e.step] = now;
        if (now || e.correction) return forget(e.step);
        if (!before) return;
        forget(e.step);
        right.push_back(e.step);
    }
    void operator()(const Deviated& e) { outside[e.step] = false; }
    void operator()(const Helped& e) { forget(e.step); }
    template <class Other>
    void operator()(const Other&)
    {}
};

}  // namespace

std::vector<StepId> cameRight(const Run& run)
{
    Course course;
    for (const Event& event : run.events()) std::visit(course, event.happening());
    // What a change of plan took away can be asked of nobody.
    std::erase_if(course.right, [&](const StepId& step) { return run.plan().find(step) == nullptr; });
    return course.right;
}

bool cameRight(const Run& run, const StepId& step)
{
    const std::vector<StepId> all = cameRight(run);
    return std::find(all.begin(), all.end(), step) != all.end();
}

Result<Helped> helpedBy(const Run& run, const SayHelped& command)
{
    const std::string& id = command.step.value;
    const procedure::Step* step = run.plan().find(command.step);
    if (step == nullptr)
        return refuse("gate.no_step", id, "This run has no such step.", "Choose a step of this run's plan.");
    if (!cameRight(run, command.step))
        return refuse("gate.nothing_helped", id,
                      "This reading did not come out outside before, or it was said already what helped.",
                      "Write a note beside the step instead.");
    if (command.remedy == kNotKnown) return Helped{command.step, kNotKnown, trimmed(command.words)};
    if (command.remedy < 0 || static_cast<std::size_t>(command.remedy) > step->tries.size())
        return refuse("gate.no_remedy", id, "This step has no such remedy.",
                      "Choose one that stands at the step, or say it in words.");
    if (command.remedy == 0 && !saysSomething(command.words))
        return refuse("gate.no_reason", id, "It was not said what helped.", "Say it in a few words.");
    return Helped{command.step, command.remedy, trimmed(command.words)};
}

Text remedySaid(const Run& run, const Helped& helped)
{
    const procedure::Step* step = run.plan().find(helped.step);
    const auto index = static_cast<std::size_t>(helped.remedy);
    if (helped.remedy == kNotKnown)
        return helped.words.empty() ? Text("not known") : Text("not known: %1", {helped.words});
    if (helped.remedy > 0 && step != nullptr && index <= step->tries.size()) return step->tries[index - 1];
    return {"%1", {helped.words}};
}

}  // namespace taut::run
