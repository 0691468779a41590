// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/quantity.h"

// Unwind brake and rewind clutch: torque, heat, and the setting the operator turns. Outside its domain every function
// gives NaN.
namespace taut::physics {

/// B1: M = T D / 2. T >= 0, D > 0. Sources S24, S30.
[[nodiscard]] Torque rollTorque(Force tension, Length diameter) noexcept;
/// B2: n = v / (pi D), turns per time. v >= 0, D > 0. Source S21.
[[nodiscard]] Frequency rollFrequency(Speed speed, Length diameter) noexcept;
/// B3: P = T v, the heat in a BRAKE, the same from full roll to core. A slip clutch: B3.clutch. T >= 0, v >= 0. Sources
/// S21, S24.
[[nodiscard]] Power brakeHeat(Force tension, Speed speed) noexcept;
/// B3.clutch: P = 2 pi M (ni - no), the heat in a slip clutch: its torque times the slip between input and roll.
/// M >= 0, ni >= no >= 0. Definition: torque times angular speed.
[[nodiscard]] Power clutchHeat(Torque torque, Frequency input, Frequency output) noexcept;
/// B4: r = D / d, by how much tension grows from full roll to core at constant torque. D >= d > 0. Follows from B1.
[[nodiscard]] double buildRatio(Length outer, Length core) noexcept;
/// B5.torque: M = 2 n mu A r p of n friction calipers with piston area A at radius r; p over the pressure where torque
/// begins. n whole, mu >= 0, A > 0, r > 0, p >= 0. Source S32.
[[nodiscard]] Torque caliperTorque(double calipers, double friction, Area piston, Length radius,
                                   Pressure pressure) noexcept;

/// Torque per unit of what is set: per pressure, per current, or per share of full scale (Setting is then a Ratio).
template <class Setting>
using TorquePer = decltype(Torque{} / Setting{});

/// B5: p = p0 + T D / (2 k), the setting that gives tension T at diameter D; k torque per setting, p0 where torque
/// begins. T >= 0, D > 0, k > 0, p0 >= 0. Setting: Pressure, Current, or Ratio. Sources S32, S33.
template <class Setting>
[[nodiscard]] Setting brakeSetting(Force tension, Length diameter, TorquePer<Setting> k, Setting zero) noexcept;
/// B5.diameter: D = 2 k (p - p0) / T, the diameter at which setting p gives tension T: below it a brake that cannot go
/// under p pulls too hard. T > 0, k > 0, p >= p0 >= 0. Sources S32, S33.
template <class Setting>
[[nodiscard]] Length brakeDiameter(Force tension, TorquePer<Setting> k, Setting zero, Setting setting) noexcept;
/// B5.tension: T = 2 k (p - p0) / D, what a setting left alone gives at diameter D. D > 0, k > 0, p >= p0 >= 0. Sources
/// S32, S33.
template <class Setting>
[[nodiscard]] Force brakeTension(Length diameter, TorquePer<Setting> k, Setting zero, Setting setting) noexcept;

}  // namespace taut::physics
