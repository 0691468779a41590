// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/practice/web.h"

// What web.cpp and web_stepper.cpp reckon alike; plain numbers in SI.
namespace taut::practice {

/// Of a span of this length that holds so much web at rest; 0 where it hangs.
[[nodiscard]] inline double strainOf(double length, double held) { return held < length ? length / held - 1 : 0; }

/// Outer radius of a roll with so much web.
[[nodiscard]] inline double radius(const WoundRoll& roll, const WebLine& line, double wound)
{
    const double core = roll.core.si();
    return std::sqrt(core * core + line.caliper.si() * std::max(0.0, wound) / std::numbers::pi);
}

/// Of core, shaft and web (V4): the web is a hollow cylinder on the core.
[[nodiscard]] inline double inertia(const WoundRoll& roll, const WebLine& line, double wound, double outer)
{
    const double mass = line.grammage.si() * line.width.si() * std::max(0.0, wound), core = roll.core.si();
    return roll.bare.si() + mass * (outer * outer + core * core) / 2;
}

/// How the surface of an eccentric roll is off its mean radius at this turn: the web leaves at a radius that goes up
/// and down once a turn.
[[nodiscard]] inline double offCentre(const WoundRoll& roll, double turn)
{
    return 1 + roll.eccentric * std::sin(turn);
}

/// So many steps of this length; the drives are engaged first.
void goOn(const WebLine& line, WebState& state, const Drives& drives, double step, std::int64_t times);

}  // namespace taut::practice
