// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/quantity.h"

// Ink from anilox volume. Volumes per area are lengths (1 cm3/m2 = 1 um of film). Outside its domain every function
// gives NaN.
namespace taut::physics {

/// F7: h = V c, the wet film when the share c of the anilox volume reaches the web (about a quarter: half to the plate,
/// half of that to the web). V > 0, 0 <= c <= 1. Source S79.
[[nodiscard]] Length wetFilm(Length volumePerArea, double share) noexcept;
/// F8: m = A c V k rho: web area A, coverage c, anilox volume V, share k that reaches the web, ink density rho; what
/// pan, hoses and set-up hold comes on top. A >= 0, 0 <= c <= 1, V > 0, 0 <= k <= 1, rho > 0. Sources S79, S80: they
/// differ by a factor of two, so show a range.
[[nodiscard]] Mass inkMass(Area web, double coverage, Length volumePerArea, double share, Density ink) noexcept;

}  // namespace taut::physics
