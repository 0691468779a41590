// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/quantity.h"

// Grammage, yield and area of web. Outside its domain every function gives NaN.
namespace taut::physics {

/// W1: g = W / (500 A), grammage from the mass W of a ream of 500 sheets of basic size A. W > 0, A > 0. Sources S9,
/// S10. The factor printed in S10 for 1000 ft2 is a misprint.
[[nodiscard]] Grammage grammageOfReam(Mass ream, Area sheet) noexcept;
/// W3: Y = 1 / (rho t), area that a unit of mass covers. rho > 0, t > 0. Sources S13, S16.
[[nodiscard]] AreaPerMass yield(Density density, Length caliper) noexcept;
/// W4: A = w L. w > 0, L >= 0. Source S13.
[[nodiscard]] Area webArea(Length width, Length length) noexcept;

}  // namespace taut::physics
