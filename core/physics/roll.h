// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/quantity.h"

// The roll as a body of wraps. Everywhere D is the outer diameter of the roll and d the OUTER diameter of its core
// (inner diameter and two walls): the web starts there, though rolls are named by the inner diameter. t is the caliper
// as wound: air in, pressure out; a few percent off a free sheet's. Outside its domain every function gives NaN.
namespace taut::physics {

/// R1: L = pi (D^2 - d^2) / (4 t), concentric wraps. D > d > 0, 0 < t << d (enforced: t < d). Source S1.
[[nodiscard]] Length rollLength(Length outer, Length core, Length caliper) noexcept;
/// R1.caliper: t = pi (D^2 - d^2) / (4 L), the effective caliper of a roll of known length. Domain as R1. Source S1.
[[nodiscard]] Length rollCaliper(Length outer, Length core, Length length) noexcept;
/// R2: N = (D - d) / (2 t). Domain as R1. Source S1.
[[nodiscard]] double rollWraps(Length outer, Length core, Length caliper) noexcept;
/// R3: length of the Archimedean spiral r = a phi, a = t / (2 pi), from d / 2 to D / 2: the exact form that R1
/// approximates (relative difference of the order (t/d)^2). Domain as R1. Source S2.
[[nodiscard]] Length spiralLength(Length outer, Length core, Length caliper) noexcept;
/// R4: L = m / (w g), web alone, core and wrapper taken off. m >= 0, w > 0, g > 0. Sources S7, S8.
[[nodiscard]] Length lengthFromMass(Mass web, Length width, Grammage grammage) noexcept;
/// R5: m = (pi/4) (D^2 - d^2) w g / t, core and wrapper not included. Domain as R1, w > 0, g > 0. Source S7.
[[nodiscard]] Mass rollMass(Length outer, Length core, Length caliper, Length width, Grammage grammage) noexcept;
/// R6: D = sqrt(d^2 + 4 t L / pi), the inverse of R1. L >= 0, d > 0, 0 < t < d. Source S1.
[[nodiscard]] Length rollDiameter(Length core, Length caliper, Length length) noexcept;
/// R7.length: L = pi N (D - N t), the web in the N outermost wraps. N >= 0, t > 0, 2 N t < D. Exact difference of R1.
[[nodiscard]] Length strippedLength(Length outer, Length caliper, double wraps) noexcept;
/// R7.diameter: D' = D - 2 N t, what is left when they are off. Domain as R7.length.
[[nodiscard]] Length strippedDiameter(Length outer, Length caliper, double wraps) noexcept;
/// R8: tau = (L - Lr) / v, until only the reserve Lr is left. L >= Lr >= 0, v > 0. Definition.
[[nodiscard]] Time runTime(Length length, Length reserve, Speed speed) noexcept;

}  // namespace taut::physics
