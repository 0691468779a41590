// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/targets/target.h"

namespace taut::targets {

/// A limit as these units show it, rounded inward: up for a lower one, down for an upper one.
[[nodiscard]] Magnitude shownLimit(const Quantity& limit, UnitSystem system, bool lower);

/// The value as it is shown and aimed at. One that stands on a limit (the least diameter for the automatic stop) is no
/// aim, since no gauge can tell which side of it a setting is on: aimed at is the middle of its window. That is not so
/// where a control ends by itself, nor of a gap or a step that is best not there at all. A value beside a window that
/// is shown with more decimals than usual is shown with as many; its unit says so (units/format.h). Limits are shown
/// rounded inward, so that a value beside one would be shown outside its own window ("119.4 mm, 119.5 to 129.4 mm"):
/// such a value is moved to the limit as these units show it. Any other value, and one outside its window, is the
/// target's own. Nothing is judged or computed by it.
[[nodiscard]] TargetValue aimOf(const Ready& ready, UnitSystem system);

}  // namespace taut::targets
