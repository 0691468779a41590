// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/quantity.h"

// Rewind taper: tension falls as the roll grows, by the fraction tau of the starting tension T0. d0 is the diameter at
// which winding starts (the core's outer diameter). tau = 1 hyperbolic is constant torque. Outside its domain NaN.
namespace taut::physics {

/// B6.hyperbolic: T = T0 (1 - tau (1 - d0 / D)). T0 >= 0, 0 <= tau <= 1, D >= d0 > 0. Source S34.
[[nodiscard]] Force hyperbolicTaper(Force start, double fraction, Length diameter, Length startDiameter) noexcept;
/// B6.linear: T = T0 (1 - tau (D - d0) / (Dm - d0)), Dm the finished diameter. T0 >= 0, 0 <= tau <= 1,
/// Dm >= D >= d0 > 0, Dm > d0. From memory: Lee, Kang, Kim, Shin 2009 (S35).
[[nodiscard]] Force linearTaper(Force start, double fraction, Length diameter, Length startDiameter,
                                Length finishedDiameter) noexcept;

}  // namespace taut::physics
