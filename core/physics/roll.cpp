// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/roll.h"

#include "core/physics/domain.h"

namespace taut::physics {
namespace {

bool isRoll(Length outer, Length core) noexcept { return positive(outer, core) && outer > core; }
bool isCaliper(Length caliper, Length core) noexcept { return positive(caliper) && caliper < core; }
/// (pi/4) (D^2 - d^2), with the difference taken before the square so that a thin ring keeps its digits.
Area ring(Length outer, Length core) noexcept { return (outer - core) * (outer + core) * (kPi / 4); }

/// Arc length of r = phi from 0 to phi, in units of a.
double spiralTo(double phi) noexcept { return (phi * std::hypot(1.0, phi) + std::asinh(phi)) / 2; }

}  // namespace

Length rollLength(Length outer, Length core, Length caliper) noexcept
{
    if (!isRoll(outer, core) || !isCaliper(caliper, core)) return undefined<Length>();
    return ring(outer, core) / caliper;
}

Length rollCaliper(Length outer, Length core, Length length) noexcept
{
    if (!isRoll(outer, core) || !positive(length)) return undefined<Length>();
    const Length caliper = ring(outer, core) / length;
    return isCaliper(caliper, core) ? caliper : undefined<Length>();
}

double rollWraps(Length outer, Length core, Length caliper) noexcept
{
    if (!isRoll(outer, core) || !isCaliper(caliper, core)) return undefined<double>();
    return (outer - core).si() / (2 * caliper.si());
}

Length spiralLength(Length outer, Length core, Length caliper) noexcept
{
    if (!isRoll(outer, core) || !isCaliper(caliper, core)) return undefined<Length>();
    const Length a = caliper / (2 * kPi);
    return a * (spiralTo((outer / 2 / a).si()) - spiralTo((core / 2 / a).si()));
}

Length lengthFromMass(Mass web, Length width, Grammage grammage) noexcept
{
    if (!notNegative(web) || !positive(width, grammage)) return undefined<Length>();
    return web / (width * grammage);
}

Mass rollMass(Length outer, Length core, Length caliper, Length width, Grammage grammage) noexcept
{
    if (!positive(width, grammage)) return undefined<Mass>();
    return rollLength(outer, core, caliper) * width * grammage;
}

Length rollDiameter(Length core, Length caliper, Length length) noexcept
{
    if (!positive(core) || !isCaliper(caliper, core) || !notNegative(length)) return undefined<Length>();
    return Length::si(std::sqrt((core * core + caliper * length * (4 / kPi)).si()));
}

Length strippedLength(Length outer, Length caliper, double wraps) noexcept
{
    const Length left = strippedDiameter(outer, caliper, wraps);
    if (!finite(left)) return left;
    return (outer + left) / 2 * kPi * wraps;
}

Length strippedDiameter(Length outer, Length caliper, double wraps) noexcept
{
    if (!positive(outer, caliper) || !notNegative(wraps)) return undefined<Length>();
    const Length left = outer - caliper * (2 * wraps);
    return positive(left) ? left : undefined<Length>();
}

Time runTime(Length length, Length reserve, Speed speed) noexcept
{
    if (!notNegative(length, reserve) || reserve > length || !positive(speed)) return undefined<Time>();
    return (length - reserve) / speed;
}

}  // namespace taut::physics
