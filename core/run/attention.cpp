// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/run/attention.h"

#include <array>

namespace taut::run {

namespace {

enum Attention : std::size_t { Beyond, Undone, Near, Rest, Count };

Attention attentionOf(const StepStanding& standing)
{
    switch (standing.state) {
    case StepState::Outside:
    case StepState::Deviated: return Beyond;
    case StepState::Open:
    case StepState::Stale:
    case StepState::Reconfirm:
    case StepState::NotApplicable: return Undone;
    case StepState::Answered: break;
    }
    return standing.answer && standing.answer->judgement.verdict == verdict::Verdict::Near ? Near : Rest;
}

}  // namespace

std::vector<const procedure::Step*> byAttention(const Run& run)
{
    std::array<std::vector<const procedure::Step*>, Count> classes;
    for (const procedure::Step& step : run.plan().steps) classes[attentionOf(run.standing(step.id))].push_back(&step);
    std::vector<const procedure::Step*> all;
    for (const auto& one : classes) all.insert(all.end(), one.begin(), one.end());
    return all;
}

}  // namespace taut::run
