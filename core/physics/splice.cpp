// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/splice.h"

#include "core/physics/domain.h"

namespace taut::physics {
namespace {
bool isLean(double angle) noexcept { return notNegative(angle) && angle < kPi / 2; }
}  // namespace

double spliceMargin(ForcePerWidth strength, ForcePerWidth perWidth) noexcept
{
    if (!notNegative(strength) || !positive(perWidth)) return undefined<double>();
    return (strength / perWidth).si();
}

Pressure spliceNormalStress(Pressure stress, double angle) noexcept
{
    if (!notNegative(stress) || !isLean(angle)) return undefined<Pressure>();
    return stress * (std::cos(angle) * std::cos(angle));
}

Pressure spliceShearStress(Pressure stress, double angle) noexcept
{
    if (!notNegative(stress) || !isLean(angle)) return undefined<Pressure>();
    return stress * (std::sin(angle) * std::cos(angle));
}

}  // namespace taut::physics
