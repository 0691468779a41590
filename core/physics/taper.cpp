// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/taper.h"

#include "core/physics/domain.h"

namespace taut::physics {

Force hyperbolicTaper(Force start, double fraction, Length diameter, Length startDiameter) noexcept
{
    if (!notNegative(start) || !shares(fraction) || !positive(diameter, startDiameter) || diameter < startDiameter)
        return undefined<Force>();
    return start * (1 - fraction * ((diameter - startDiameter) / diameter).si());
}

Force linearTaper(Force start, double fraction, Length diameter, Length startDiameter, Length finishedDiameter) noexcept
{
    if (!notNegative(start) || !shares(fraction) || !positive(diameter, startDiameter, finishedDiameter) ||
        diameter < startDiameter || diameter > finishedDiameter || finishedDiameter <= startDiameter)
        return undefined<Force>();
    return start * (1 - fraction * ((diameter - startDiameter) / (finishedDiameter - startDiameter)).si());
}

}  // namespace taut::physics
