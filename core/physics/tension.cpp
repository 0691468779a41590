// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/tension.h"

#include "core/physics/domain.h"

namespace taut::physics {

Force totalTension(ForcePerWidth perWidth, Length width) noexcept
{
    if (!notNegative(perWidth) || !positive(width)) return undefined<Force>();
    return perWidth * width;
}

ForcePerWidth tensionFromStress(Pressure stress, Length caliper) noexcept
{
    if (!notNegative(stress) || !positive(caliper)) return undefined<ForcePerWidth>();
    return stress * caliper;
}

ForcePerWidth tensionFromStrength(double share, ForcePerWidth strength) noexcept
{
    if (!positive(share, strength) || share > 1) return undefined<ForcePerWidth>();
    return strength * share;
}

}  // namespace taut::physics
