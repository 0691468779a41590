// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/quantity.h"

// Air cylinders and the roll lift. Pressures are gauge pressures. Outside its domain every function gives NaN.
namespace taut::physics {

/// N1: F = p (pi/4) D^2 eta, the push of one cylinder of bore D. p >= 0, D > 0, 0 < eta <= 1. Sources S38, S74.
[[nodiscard]] Force cylinderForce(Pressure pressure, Length bore, double efficiency) noexcept;
/// N2: p = m g i / (n (pi/4) D^2 eta), the pressure that balances what n pistons carry; i is the load's travel over the
/// piston's. m counts everything raised: roll, core, adapter, carriage. Balance is not capacity: the lift's rating is.
/// m >= 0, n whole, D > 0, 0 < eta <= 1, i > 0. Sources S74, S75.
[[nodiscard]] Pressure liftPressure(Mass mass, double pistons, Length bore, double efficiency, double ratio) noexcept;

}  // namespace taut::physics
