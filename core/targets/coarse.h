// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/targets/target.h"

namespace taut::targets {

/// window.too_coarse: with this uncertainty (SI, k = 2) nothing can be inside a window: its ends are less than twice
/// that apart, in decimal to 12 significant digits. The subject is left to the caller. nullopt when something can be
/// inside, and for a window that is open at one end.
[[nodiscard]] std::optional<Finding> tooCoarse(double uncertaintySi, const Window& window);

}  // namespace taut::targets
