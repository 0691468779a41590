// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/run/course.h"

#include <algorithm>

namespace taut::run {

namespace {

using procedure::Step;
using procedure::StepKind;

bool isConfirmable(const Run& run, const Step& step)
{
    if (step.kind == StepKind::Motion || step.kind == StepKind::Hold) return false;
    const StepState state = run.standing(step.id).state;
    return state == StepState::Answered || state == StepState::Deviated;
}

}  // namespace

std::vector<StepId> lastAnswered(const Run& run)
{
    const Step* last = nullptr;
    for (const Step& step : run.plan().steps)
        if (isConfirmable(run, step) && (last == nullptr || run.standing(step.id).n > run.standing(last->id).n))
            last = &step;
    if (last == nullptr) return {};
    return {last->id};
}

std::vector<StepId> vitalOfStage(const Run& run)
{
    const std::vector<StepId> last = lastAnswered(run);
    std::vector<StepId> all;
    for (const Step& step : run.plan().steps) {
        const bool vital = step.vital && run.plan().stageOf(step) == run.stageInWork() && isConfirmable(run, step);
        if (vital || (!last.empty() && step.id == last.front())) all.push_back(step.id);
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
    // A program that was killed notes it only when it is started again: the time away began with the event before.
    const std::int64_t since = reason == "killed" ? before : stop->stamp().utcMs;
    return nowMs - since > kLongAwayMs;
}

}  // namespace taut::run
