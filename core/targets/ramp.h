// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "core/targets/target.h"

namespace taut::targets {

/// One zone against the diameter of its roll: what the schedule's rows, its changes and a drawn curve are made from.
struct Ramp {
    inputs::Zone zone;
    bool unwinding = false;           ///< the roll shrinks; else it grows
    bool byHand = false;              ///< nobody but the operator follows the diameter (open loop)
    double total = 0;                 ///< web tension at the start, N
    double start = 0, end = 0;        ///< diameters, m
    std::optional<double> low, high;  ///< window of the web tension, N
    double swing = 0;                 ///< share of it by which a tension may swing (policy tension_swing)
    SharedString lengthUnit, forceUnit, torqueUnit, settingUnit;
    [[nodiscard]] double least() const { return unwinding ? end : start; }
    [[nodiscard]] double most() const { return unwinding ? start : end; }
};
struct RampPoint {
    Quantity diameter, tension, torque;
    Quantity leftAlone;               ///< tension when the torque stays what it was at the start: B1 solved for T
    std::optional<Quantity> setting;  ///< of an open loop (B5)
};
/// Web tension under the zone's taper (B6), N; without one, what it was at the start.
[[nodiscard]] std::optional<double> taperedTension(const Ramp& ramp, double diameter);
/// Tension by the zone's taper (B6), torque (B1) and setting (B5) at a diameter between the ends, m; nullopt when a
/// formula refuses. Where the setting would lie beyond what the control can be set to, that end of it and what it
/// gives.
[[nodiscard]] std::optional<RampPoint> pointAt(const Ramp& ramp, double diameter);

/// The least that the web tension may fall to at a diameter: where its window begins. Where the taper itself leads
/// below that, what is wanted is no longer inside, and the tension may lie as far under the taper as it may swing.
[[nodiscard]] std::optional<Force> lowestTension(const Ramp& ramp, Length diameter);

/// Where an open loop has to be set again, and to what torque: where the tension, left alone since the last time,
/// reaches an end of its window. It is set to what the taper wants there, but by no smaller step than the gauge can
/// show (the setting's uncertainty), save the last one to the end of what can be set; where so large a step would lead
/// out of the window on its other side, it waits until it no longer does. Empty without a window.
struct Changes {
    struct One {
        double diameter = 0;  ///< m
        double torque = 0;    ///< N m
    };
    /// Where the tension is outside its window all the same, and what it comes to there.
    struct Outside {
        double from = 0, to = 0;  ///< m
        double tension = 0;       ///< N, the farthest out
        bool byEnd = false;       ///< however fine the gauge: what would be wanted lies beyond what can be set
    };
    std::vector<One> all;
    std::vector<Outside> outside;
};
[[nodiscard]] Changes changesOf(const Ramp& ramp);
/// The diameter at which the tension leaves its window when the torque stays what it is at the start; nullopt when the
/// roll is done before, or no window is known.
[[nodiscard]] std::optional<Length> leavesAt(const Ramp& ramp);

/// What the zone's actuator has to be set to for the ramp's tension at a diameter (B5), whoever sets it: the operator
/// or the loop. SI; nullopt where the profile does not say its torque.
[[nodiscard]] std::optional<double> actuatorAt(const Ramp& ramp, double diameter);

/// Where a figure crosses an end of what can be set or shown, on the way from start to end.
struct Crossing {
    double diameter = 0;
    bool below = false;  ///< it crosses the least, else the most
};
using FigureAt = std::function<std::optional<double>(double diameter)>;
[[nodiscard]] std::vector<Crossing> crossings(const Ramp& ramp, const inputs::Setting& range, const FigureAt& figure);
/// The same of the operator's own setting.
[[nodiscard]] std::vector<Crossing> rangeCrossings(const Ramp& ramp);

/// The ramp behind tension.ZONE.schedule of a target set, as that set was computed; nullopt when it has none.
[[nodiscard]] std::optional<Ramp> rampOf(const inputs::Press& press, const Targets& targets, const std::string& zoneId);

}  // namespace taut::targets
