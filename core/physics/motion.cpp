// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/motion.h"

#include "core/physics/domain.h"

namespace taut::physics {

namespace {
/// Rounding of s / i may ask for one press too many.
constexpr double kForgivenPress = 1e-9;
}  // namespace

Length stopDistance(Speed speed, Time reaction, Acceleration deceleration) noexcept
{
    if (!notNegative(speed, reaction) || !positive(deceleration)) return undefined<Length>();
    return speed * reaction + speed * speed / deceleration / 2;
}

Time stopTime(Speed speed, Time reaction, Acceleration deceleration) noexcept
{
    if (!notNegative(speed, reaction) || !positive(deceleration)) return undefined<Time>();
    return reaction + speed / deceleration;
}

double inches(Length path, Length travel) noexcept
{
    if (!notNegative(path) || !positive(travel)) return undefined<double>();
    return std::ceil((path / travel).si() - kForgivenPress);
}

Time crawlTime(Length path, Speed speed) noexcept
{
    if (!notNegative(path) || !positive(speed)) return undefined<Time>();
    return path / speed;
}

Inertia rollInertia(Mass mass, Length outerRadius, Length innerRadius) noexcept
{
    if (!notNegative(mass, innerRadius) || !positive(outerRadius) || outerRadius < innerRadius)
        return undefined<Inertia>();
    return mass * (outerRadius * outerRadius + innerRadius * innerRadius) / 2;
}

Inertia woundRollInertia(Mass web, Length outerRadius, Length coreRadius, Mass core, Length boreRadius) noexcept
{
    return rollInertia(web, outerRadius, coreRadius) + rollInertia(core, coreRadius, boreRadius);
}

Torque accelerationTorque(Inertia inertia, Acceleration acceleration, Length radius) noexcept
{
    if (!notNegative(inertia, acceleration) || !positive(radius)) return undefined<Torque>();
    return inertia * acceleration / radius;
}

Force unwindStopTension(Torque brake, Inertia inertia, Acceleration deceleration, Length radius) noexcept
{
    if (!notNegative(brake)) return undefined<Force>();
    return (brake - accelerationTorque(inertia, deceleration, radius)) / radius;
}

Torque unwindHoldTorque(Force tension, Inertia inertia, Acceleration deceleration, Length radius) noexcept
{
    if (!notNegative(tension)) return undefined<Torque>();
    return tension * radius + accelerationTorque(inertia, deceleration, radius);
}

Force rewindStopTension(Force running, Inertia inertia, Acceleration deceleration, Length radius) noexcept
{
    if (!notNegative(running)) return undefined<Force>();
    return running + accelerationTorque(inertia, deceleration, radius) / radius;
}

}  // namespace taut::physics
