// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/quantity.h"

// Grip of the web on rollers and cores, and the air that takes it away. Angles in radians. Which roller slips first
// says something only where a roller's drag or inertia is known: a free idler has nothing to slip against. Outside its
// domain every function gives NaN.
namespace taut::physics {

/// C1: r = e^(mu beta), Euler-Eytelwein: the largest ratio of tensions across a wrap before it slips. mu >= 0,
/// beta >= 0. Sources S47, S49.
[[nodiscard]] double capstanRatio(double friction, double wrap) noexcept;
/// C2: r = e^(2 pi mu n), what n wraps on a core hold as a multiple of the tail's tension. mu >= 0, n >= 0. C1 with
/// beta = 2 pi n.
[[nodiscard]] double coreHold(double friction, double wraps) noexcept;
/// C4: h = 0.643 R (6 eta U / Tw)^(2/3), the air film under a web on a roller of radius R; U is the sum of the speeds
/// of web and roller. R > 0, eta > 0, U >= 0, Tw > 0; measured for Tw / (eta U) 1e5 to 1e6 (S54), thinner on narrow
/// webs (S55). Not for webs that breathe. Form S53; the constant from memory, Knox and Sweeney 1971.
[[nodiscard]] Length airFilm(Length radius, Viscosity viscosity, Speed speeds, ForcePerWidth perWidth) noexcept;
/// C5: mu_e = mu up to h = s, mu (3 - h/s) / 2 between, 0 from h = 3 s; s is the combined roughness
/// sqrt(Rq_web^2 + Rq_roller^2). mu >= 0, h >= 0, s > 0. Sources S55, S56; the straight line from memory, Ducotey and
/// Good 1999.
[[nodiscard]] double frictionOverAir(double friction, Length film, Length roughness) noexcept;
/// C1.air: r = e^(mu_e beta) with the friction that C5 leaves over the air film h: the largest ratio of tensions across
/// a roller at speed. beta >= 0, the rest as C5. Sources as C1 and C5.
[[nodiscard]] double capstanOverAir(double friction, double wrap, Length film, Length roughness) noexcept;

}  // namespace taut::physics
