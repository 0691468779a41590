// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/brake.h"

#include "core/physics/domain.h"

namespace taut::physics {

Torque rollTorque(Force tension, Length diameter) noexcept
{
    if (!notNegative(tension) || !positive(diameter)) return undefined<Torque>();
    return tension * diameter / 2;
}

Frequency rollFrequency(Speed speed, Length diameter) noexcept
{
    if (!notNegative(speed) || !positive(diameter)) return undefined<Frequency>();
    return speed / (diameter * kPi);
}

Power brakeHeat(Force tension, Speed speed) noexcept
{
    if (!notNegative(tension, speed)) return undefined<Power>();
    return tension * speed;
}

Power clutchHeat(Torque torque, Frequency input, Frequency output) noexcept
{
    if (!notNegative(torque, input, output) || input < output) return undefined<Power>();
    return torque * (input - output) * (2 * kPi);
}

double buildRatio(Length outer, Length core) noexcept
{
    if (!positive(outer, core) || outer < core) return undefined<double>();
    return (outer / core).si();
}

Torque caliperTorque(double calipers, double friction, Area piston, Length radius, Pressure pressure) noexcept
{
    if (!whole(calipers) || !notNegative(friction, pressure) || !positive(piston, radius)) return undefined<Torque>();
    return pressure * piston * radius * (2 * calipers * friction);
}

template <class Setting>
Setting brakeSetting(Force tension, Length diameter, TorquePer<Setting> k, Setting zero) noexcept
{
    if (!positive(k) || !notNegative(zero)) return undefined<Setting>();
    return zero + rollTorque(tension, diameter) / k;
}

template <class Setting>
Length brakeDiameter(Force tension, TorquePer<Setting> k, Setting zero, Setting setting) noexcept
{
    if (!positive(tension, k) || !notNegative(zero, setting) || setting < zero) return undefined<Length>();
    return k * (setting - zero) * 2 / tension;
}

template <class Setting>
Force brakeTension(Length diameter, TorquePer<Setting> k, Setting zero, Setting setting) noexcept
{
    if (!positive(diameter, k) || !notNegative(zero, setting) || setting < zero) return undefined<Force>();
    return k * (setting - zero) * 2 / diameter;
}

template Pressure brakeSetting<Pressure>(Force, Length, TorquePer<Pressure>, Pressure) noexcept;
template Current brakeSetting<Current>(Force, Length, TorquePer<Current>, Current) noexcept;
template Ratio brakeSetting<Ratio>(Force, Length, TorquePer<Ratio>, Ratio) noexcept;
template Length brakeDiameter<Pressure>(Force, TorquePer<Pressure>, Pressure, Pressure) noexcept;
template Length brakeDiameter<Current>(Force, TorquePer<Current>, Current, Current) noexcept;
template Length brakeDiameter<Ratio>(Force, TorquePer<Ratio>, Ratio, Ratio) noexcept;
template Force brakeTension<Pressure>(Length, TorquePer<Pressure>, Pressure, Pressure) noexcept;
template Force brakeTension<Current>(Length, TorquePer<Current>, Current, Current) noexcept;
template Force brakeTension<Ratio>(Length, TorquePer<Ratio>, Ratio, Ratio) noexcept;

}  // namespace taut::physics
