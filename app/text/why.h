// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "core/targets/target.h"

namespace taut::app {

/// A target's name, value and window on one line each way: for lists.
[[nodiscard]] QString targetName(const targets::Target& target, UnitSystem system);
/// "1.39 bar", "yes", "over the top"; "needs roll.core" or "cannot" where there is no value.
[[nodiscard]] QString targetValue(const targets::Target& target, UnitSystem system);
[[nodiscard]] QString targetWindow(const targets::Target& target, UnitSystem system);

/// Why a value is what it is, as paragraphs of rich text: the value, the formula, each input and where it came from,
/// the window and which rule made it, the source, and one sentence for somebody new.
[[nodiscard]] QString whyHtml(const targets::Target& target, UnitSystem system);

}  // namespace taut::app
