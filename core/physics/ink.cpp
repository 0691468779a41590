// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/ink.h"

#include "core/physics/domain.h"

namespace taut::physics {

Length wetFilm(Length volumePerArea, double share) noexcept
{
    if (!positive(volumePerArea) || !shares(share)) return undefined<Length>();
    return volumePerArea * share;
}

Mass inkMass(Area web, double coverage, Length volumePerArea, double share, Density ink) noexcept
{
    if (!notNegative(web) || !shares(coverage) || !positive(ink)) return undefined<Mass>();
    return web * wetFilm(volumePerArea, share) * ink * coverage;
}

}  // namespace taut::physics
