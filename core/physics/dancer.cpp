// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/dancer.h"

#include "core/physics/domain.h"

namespace taut::physics {
namespace {

/// Force on the roller over the tension that makes it.
double pull(double wrap) noexcept { return 2 * std::sin(wrap / 2); }
bool wraps(double wrap) noexcept { return positive(wrap) && wrap < 2 * kPi; }

}  // namespace

Force dancerTension(double cylinders, Pressure pressure, Area piston, Length cylinderArm, Length rollerArm,
                    double wrap) noexcept
{
    if (!whole(cylinders) || !notNegative(pressure) || !positive(piston, cylinderArm, rollerArm) || !wraps(wrap))
        return undefined<Force>();
    return pressure * piston * cylinders * (cylinderArm / rollerArm) / pull(wrap);
}

Pressure dancerPressure(Force tension, double cylinders, Area piston, Length cylinderArm, Length rollerArm,
                        double wrap) noexcept
{
    if (!notNegative(tension) || !whole(cylinders) || !positive(piston, cylinderArm, rollerArm) || !wraps(wrap))
        return undefined<Pressure>();
    return rollerForce(tension, wrap) * (rollerArm / cylinderArm) / (piston * cylinders);
}

Mass dancerWeight(Force tension, Length weightArm, Length rollerArm, double wrap) noexcept
{
    if (!notNegative(tension) || !positive(weightArm, rollerArm) || !wraps(wrap)) return undefined<Mass>();
    return rollerForce(tension, wrap) * (rollerArm / weightArm) / kGravity;
}

Force rollerForce(Force tension, double wrap) noexcept
{
    if (!notNegative(tension, wrap) || wrap >= 2 * kPi) return undefined<Force>();
    return tension * pull(wrap);
}

double shareOfRange(Force tension, Force range) noexcept
{
    if (!notNegative(tension) || !positive(range)) return undefined<double>();
    return (tension / range).si();
}

}  // namespace taut::physics
