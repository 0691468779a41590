// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "core/run/decide.h"

namespace taut::run {

std::vector<StepId> staleSteps(const procedure::Plan& plan, const targets::Targets& before,
                               const targets::Targets& after, std::string_view input)
{
    const std::vector<targets::TargetId> differing = targets::changed(before, after);
    std::vector<StepId> stale;
    for (const procedure::Step& step : plan.steps) {
        const bool byTarget =
            !step.target.empty() && std::find(differing.begin(), differing.end(), step.target) != differing.end();
        const bool byUse = std::find(step.uses.begin(), step.uses.end(), input) != step.uses.end();
        if (byTarget || byUse) stale.push_back(step.id);
    }
    return stale;
}

}  // namespace taut::run
