// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

#include "core/targets/target.h"

namespace taut::targets {

/// Where a window protects people, press, web or joint, or follows from a plate or a measured stop: there a shop's own
/// limits may only be narrower than what the rules have set.
[[nodiscard]] bool onlyNarrows(std::string_view id);

/// What can never hold of a press's own limits, its table [limits]: an id that no target of this press bears, one that
/// is not judged or whose window comes from elsewhere. Subjects are dotted keys.
[[nodiscard]] Findings checkLimits(const inputs::Press& press);

/// Lays a shop's own limits on a target. What is set or made (isAim) and lies outside them is aimed at inside; what of
/// them does not hold comes back, and what lies outside them though they hold. That is a stop for a weight.
[[nodiscard]] Findings layLimits(Target& target, const Range& limits);

}  // namespace taut::targets
