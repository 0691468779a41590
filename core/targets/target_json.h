// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/json.h"
#include "core/targets/target.h"

namespace taut::targets {

/// The one serialiser of target sets: `targets --json`, events and sealed documents all carry this shape (formats §5).
/// {"targets":[...],"schedules":[...],"findings":[...]}; text in the press's own unit system.
[[nodiscard]] Json targetsJson(const Targets& targets, UnitSystem system);
/// Reads it back to an equal value (code targets.broken when it is not that shape).
[[nodiscard]] Result<Targets> targetsFrom(const Json& json);
[[nodiscard]] Json windowJson(const Window& window);
[[nodiscard]] Window windowFrom(const Json& json, Kind kind, const SharedString& unit);

}  // namespace taut::targets
