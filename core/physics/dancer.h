// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/quantity.h"

// Dancers and load cells: tension against the force on a roller that the web wraps. A dancer shows accumulated speed
// error and does not prove tension: friction, inertia and the roller's own weight shift it (S39). Angles in radians.
// Outside its domain every function gives NaN.
namespace taut::physics {

/// B7: T = n p A (a / b) / (2 sin(theta / 2)): n cylinders of area A at arm a, the roller at arm b, wrap theta.
/// n whole, p >= 0, A > 0, a > 0, b > 0, 0 < theta < 2 pi. Source S38.
[[nodiscard]] Force dancerTension(double cylinders, Pressure pressure, Area piston, Length cylinderArm,
                                  Length rollerArm, double wrap) noexcept;
/// B7.setting: p = 2 T sin(theta / 2) b / (n A a), its inverse. T >= 0, else as B7. Source S38.
[[nodiscard]] Pressure dancerPressure(Force tension, double cylinders, Area piston, Length cylinderArm,
                                      Length rollerArm, double wrap) noexcept;
/// B7.weight: m = 2 T sin(theta / 2) b / (a g), the mass to hang at arm a when a weight loads the dancer; the
/// dancer's own weight is not in it. T >= 0, a > 0, b > 0, 0 < theta < 2 pi. The lever of S38.
[[nodiscard]] Mass dancerWeight(Force tension, Length weightArm, Length rollerArm, double wrap) noexcept;
/// B8: F = 2 T sin(beta / 2), the web's resultant on a roller that it wraps by beta; the roller's weight comes on top.
/// T >= 0, 0 <= beta < 2 pi. Source S31b.
[[nodiscard]] Force rollerForce(Force tension, double wrap) noexcept;
/// B8.setting: r = T / range, the set point in percent of the range. T >= 0, range > 0. Definition.
[[nodiscard]] double shareOfRange(Force tension, Force range) noexcept;

}  // namespace taut::physics
