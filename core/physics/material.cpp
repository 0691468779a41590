// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/material.h"

#include "core/physics/domain.h"

namespace taut::physics {
namespace {
constexpr double kSheetsInReam = 500;
}

Grammage grammageOfReam(Mass ream, Area sheet) noexcept
{
    if (!positive(ream, sheet)) return undefined<Grammage>();
    return ream / (sheet * kSheetsInReam);
}

AreaPerMass yield(Density density, Length caliper) noexcept
{
    if (!positive(density, caliper)) return undefined<AreaPerMass>();
    return AreaPerMass::si(1 / (density * caliper).si());
}

Area webArea(Length width, Length length) noexcept
{
    if (!positive(width) || !notNegative(length)) return undefined<Area>();
    return width * length;
}

}  // namespace taut::physics
