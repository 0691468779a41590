// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/lift.h"

#include "core/physics/domain.h"

namespace taut::physics {
namespace {
Area pistonArea(Length bore) noexcept { return bore * bore * (kPi / 4); }
bool isEfficiency(double eta) noexcept { return eta > 0 && eta <= 1; }
}  // namespace

Force cylinderForce(Pressure pressure, Length bore, double efficiency) noexcept
{
    if (!notNegative(pressure) || !positive(bore) || !isEfficiency(efficiency)) return undefined<Force>();
    return pressure * pistonArea(bore) * efficiency;
}

Pressure liftPressure(Mass mass, double pistons, Length bore, double efficiency, double ratio) noexcept
{
    if (!notNegative(mass) || !whole(pistons) || !positive(bore, ratio) || !isEfficiency(efficiency))
        return undefined<Pressure>();
    return mass * kGravity * ratio / (pistonArea(bore) * (pistons * efficiency));
}

}  // namespace taut::physics
