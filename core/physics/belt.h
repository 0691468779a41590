// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/quantity.h"

// Straight lines that touch two circles, and closed belts around them. Outside its domain every function gives NaN.
namespace taut::physics {

/// V3.same: L = sqrt(C^2 - (R - r)^2), the tangent of two rollers that turn the same way; C between centres. R > 0,
/// r > 0, C > 0, C >= |R - r|. Source S82.
[[nodiscard]] Length openTangent(Length radius, Length otherRadius, Length centres) noexcept;
/// V3.crossed: L = sqrt(C^2 - (R + r)^2), turning opposite ways. R > 0, r > 0, C >= R + r. Source S82.
[[nodiscard]] Length crossedTangent(Length radius, Length otherRadius, Length centres) noexcept;
/// V3.open_belt: L = 2 sqrt(C^2 - (R - r)^2) + pi (R + r) + 2 (R - r) asin((R - r) / C), R = D/2, r = d/2. Domain as
/// V3.same. Sources S82, S83.
[[nodiscard]] Length openBelt(Length diameter, Length otherDiameter, Length centres) noexcept;
/// V3.crossed_belt: L = 2 sqrt(C^2 - (R + r)^2) + (R + r) (pi + 2 asin((R + r) / C)). Domain as V3.crossed. Source S82
/// (sign by geometry: a crossed belt wraps pi + 2 asin on both).
[[nodiscard]] Length crossedBelt(Length diameter, Length otherDiameter, Length centres) noexcept;

}  // namespace taut::physics
