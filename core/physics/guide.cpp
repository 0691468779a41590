// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/guide.h"

#include "core/physics/domain.h"

namespace taut::physics {
namespace {
constexpr double kMostTwist = 0.5;
}

Length guideShift(Length span, double angle) noexcept
{
    if (!positive(span) || !(std::abs(angle) < kPi / 2)) return undefined<Length>();
    return span * std::sin(angle);
}

double twistEdgeStrain(double angle, Length width, Length span) noexcept
{
    if (!(std::abs(angle) <= kMostTwist) || !positive(width, span)) return undefined<double>();
    const double slope = angle * (width / span).si() / 2;
    return slope * slope / (std::hypot(1.0, slope) + 1);  // sqrt(1 + x^2) - 1 without its cancellation
}

double twistSlackAngle(double strain, Length width, Length span) noexcept
{
    if (!notNegative(strain) || !positive(width, span)) return undefined<double>();
    return (span / width).si() * std::sqrt(24 * strain);
}

double strokeShare(Length needed, Length stroke) noexcept
{
    if (!notNegative(needed) || !positive(stroke)) return undefined<double>();
    return (needed / stroke).si();
}

Length edgeInWindow(double reading, double blocked, double clear, Length window) noexcept
{
    if (!finite(reading, blocked, clear) || blocked == clear || !positive(window)) return undefined<Length>();
    return window * ((reading - blocked) / (clear - blocked));
}

Length edgePlace(Length centreline, Length width, double side) noexcept
{
    if (!notNegative(centreline) || !positive(width) || (side != 1 && side != -1)) return undefined<Length>();
    return centreline + width * (side / 2);
}

Force shiftForce(Mass mass, double friction, Acceleration acceleration, double factor) noexcept
{
    if (!positive(mass) || !notNegative(friction, acceleration) || !(finite(factor) && factor >= 1))
        return undefined<Force>();
    return mass * (kGravity * friction + acceleration) * factor;
}

}  // namespace taut::physics
