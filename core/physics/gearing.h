// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/quantity.h"

// Print repeat from the gear, plate stretch, register, and the web a job takes. Outside its domain every function
// gives NaN.
namespace taut::physics {

/// F1.circular: R = Z p, circular pitch p. Z whole, p > 0. Sources S76, S77.
[[nodiscard]] Length repeatByPitch(double teeth, Length pitch) noexcept;
/// F1.diametral: R = Z pi / P, P teeth per length of pitch diameter. Z whole, P > 0. Source S76.
[[nodiscard]] Length repeatByDiametralPitch(double teeth, CountPerLength diametralPitch) noexcept;
/// F1.module: R = Z pi m. Z whole, m > 0. Source S76.
[[nodiscard]] Length repeatByModule(double teeth, Length module) noexcept;
/// F2: Z = R / p rounded up to whole teeth (1e-9 of a tooth is forgiven). R > 0, p > 0. Source S76.
[[nodiscard]] double teethFor(Length repeat, Length pitch) noexcept;
/// F2.diametral: Z = R P / pi rounded up. R > 0, P > 0. Source S76.
[[nodiscard]] double teethForDiametralPitch(Length repeat, CountPerLength diametralPitch) noexcept;
/// F2.module: Z = R / (pi m) rounded up. R > 0, m > 0. Source S76.
[[nodiscard]] double teethForModule(Length repeat, Length module) noexcept;
/// D1.repeat: dR = R e / (1 + e), by what a repeat printed under strain e is shorter when the web is let go. R > 0,
/// e >= 0. Definition of strain.
[[nodiscard]] Length repeatRelaxed(Length repeat, double strain) noexcept;
/// F3: r = 1 - K / R, K = 2 pi (tp - tb): film length over printed length of a plate of thickness tp on a base tb that
/// does not stretch. R > K, tp >= tb >= 0. Source S78; the base from memory, plate makers' charts.
[[nodiscard]] double plateStretch(Length repeat, Length plate, Length base) noexcept;
/// F4: phi = 2 pi s / R, the turn of the plate cylinder that moves print by s along the web, radians. R > 0, s any
/// sign. Definition.
[[nodiscard]] double registerAngle(Length repeat, Length shift) noexcept;
/// F5: L = Q R / (across around (1 - waste)). Q >= 0, across and around whole, R > 0, 0 <= waste < 1. Definition.
[[nodiscard]] Length jobLength(double quantity, double across, double around, Length repeat, double waste) noexcept;
/// F5.total: L = Lj + Lm + n Ls + Lp, the labels' web and what make-ready, n splices and the filled path take. None
/// negative. Definition.
[[nodiscard]] Length webLength(Length labels, Length makeReady, double splices, Length perSplice, Length path) noexcept;

}  // namespace taut::physics
