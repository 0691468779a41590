// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/quantity.h"

// Splices. No published splice safety factor was found: what margin is enough is policy. Load over area does not
// predict a bond's strength, and twice the overlap is not twice the strength (S57): use data at the same overlap.
// A cut that leans has no margin of its own: what its bond is spared square to the cut it bears along it (P5.shear).
// Outside its domain every function gives NaN.
namespace taut::physics {

/// P1: r = S / Tw, the margin of a strength per width over a tension per width. S >= 0, Tw > 0. Definition.
[[nodiscard]] double spliceMargin(ForcePerWidth strength, ForcePerWidth perWidth) noexcept;
/// P5.normal: s cos^2 alpha, the normal stress on a cut that leans alpha radians from the straight cross cut.
/// 0 <= alpha < pi/2. Source S60.
[[nodiscard]] Pressure spliceNormalStress(Pressure stress, double angle) noexcept;
/// P5.shear: s sin alpha cos alpha. Domain as P5.normal. Source S60.
[[nodiscard]] Pressure spliceShearStress(Pressure stress, double angle) noexcept;

}  // namespace taut::physics
