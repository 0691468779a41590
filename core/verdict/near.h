// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/verdict/verdict.h"

namespace taut::verdict {

/// Why a reading within its limits is only near, to be said behind that word: its uncertainty (SI) reaches over the
/// limit, or is more than half of the window, so that not even its middle could be inside. nullopt for any other
/// verdict.
[[nodiscard]] std::optional<Text> whyNear(const Quantity& reading, double uncertaintySi, const targets::Window& window);

}  // namespace taut::verdict
