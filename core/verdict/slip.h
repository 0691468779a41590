// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/targets/target.h"

namespace taut::verdict {

/// What somebody probably meant, when a reading outside its window would be inside after one of the usual slips: the
/// other ring of a gauge (bar for psi), inches for millimetres, the way round for the diameter, a decimal place. Code
/// window.slip, severity Note, subject empty. It is a hint for the screen and changes nothing: the reading stays
/// outside until it is read again. In a window round zero half of all slips would seem to fit: there only a reading of
/// more than twenty times its limit is told. nullopt for a reading that fits and for a window open at one end.
[[nodiscard]] std::optional<Finding> likelySlip(const Quantity& typed, const targets::Window& window);

}  // namespace taut::verdict
