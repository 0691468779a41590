// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/belt.h"

#include "core/physics/domain.h"

namespace taut::physics {
namespace {

/// The straight piece when the radii differ (or add up) by `offset` across it: sqrt(C^2 - q^2) by its factors.
Length straight(Length centres, Length offset) noexcept
{
    return Length::si(std::sqrt(((centres - offset) * (centres + offset)).si()));
}

}  // namespace

Length openTangent(Length radius, Length otherRadius, Length centres) noexcept
{
    if (!positive(radius, otherRadius, centres)) return undefined<Length>();
    const Length offset = Length::si(std::abs((radius - otherRadius).si()));
    return centres >= offset ? straight(centres, offset) : undefined<Length>();
}

Length crossedTangent(Length radius, Length otherRadius, Length centres) noexcept
{
    if (!positive(radius, otherRadius, centres)) return undefined<Length>();
    const Length offset = radius + otherRadius;
    return centres >= offset ? straight(centres, offset) : undefined<Length>();
}

Length openBelt(Length diameter, Length otherDiameter, Length centres) noexcept
{
    const Length tangent = openTangent(diameter / 2, otherDiameter / 2, centres);
    if (!finite(tangent)) return tangent;
    const Length sum = (diameter + otherDiameter) / 2;
    const Length difference = (diameter - otherDiameter) / 2;
    return 2 * tangent + sum * kPi + difference * (2 * std::asin((difference / centres).si()));
}

Length crossedBelt(Length diameter, Length otherDiameter, Length centres) noexcept
{
    const Length tangent = crossedTangent(diameter / 2, otherDiameter / 2, centres);
    if (!finite(tangent)) return tangent;
    const Length sum = (diameter + otherDiameter) / 2;
    return 2 * tangent + sum * (kPi + 2 * std::asin((sum / centres).si()));
}

}  // namespace taut::physics
