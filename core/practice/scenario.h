// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.h"
#include "core/practice/world.h"
#include "core/procedure/plan.h"

namespace taut::practice {

/// What a trainer sets somebody to: a press, a job and a roll by their ids, and what is not as it should be.
struct Scenario {
    std::string id, title, press, job, roll;
    std::uint64_t seed = 1;
    std::vector<Fault> faults;
};
/// Something done after so much time has gone on.
struct Action {
    Time after;
    Deed deed;
};

/// Scenario and actions are TOML files that people write (DEVELOPERS.md, "Lessons"). What is wrong stands in `notes`
/// with its place, as in the files of core/inputs; the Result fails only for a file that cannot be used at all.
[[nodiscard]] Result<Scenario> readScenario(std::string_view toml, std::string_view file, Findings& notes);
/// Of this press: what its controls can be set to is known only there.
[[nodiscard]] Result<std::vector<Action>> readActions(std::string_view toml, std::string_view file,
                                                      const inputs::Press& press, Findings& notes);

/// The step of a plan that guards against this: the first that sets its target or gives its condition; "" = none does.
[[nodiscard]] std::string preventedBy(const Cause& cause, const procedure::Plan& plan);

}  // namespace taut::practice
