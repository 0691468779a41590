// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/quantity.h"

// Running tension. Tw is a tension per width, T the total across the web. Outside its domain every function gives NaN.
namespace taut::physics {

/// T1: T = Tw w. Tw >= 0, w > 0. Sources S18, S19.
[[nodiscard]] Force totalTension(ForcePerWidth perWidth, Length width) noexcept;
/// T2: Tw = s t, from a stress as the public tables give it (force per width and thickness). s >= 0, t > 0. Sources
/// S18a, S20: starting values, not limits.
[[nodiscard]] ForcePerWidth tensionFromStress(Pressure stress, Length caliper) noexcept;
/// T4: Tw = c S, a share of the breaking strength per width; c 0.10 to 0.25 in the sources. 0 < c <= 1, S > 0. Sources
/// S26, S27. A ceiling that caps a window; never a window by itself.
[[nodiscard]] ForcePerWidth tensionFromStrength(double share, ForcePerWidth strength) noexcept;

}  // namespace taut::physics
