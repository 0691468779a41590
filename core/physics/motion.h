// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/quantity.h"

// Stopping, slow travel, and what a turning roll does to tension. Outside its domain every function gives NaN.
namespace taut::physics {

/// V1.distance: s = v tr + v^2 / (2 a), web that still passes after a stop; not for placing guards. v >= 0, tr >= 0,
/// a > 0. Definition.
[[nodiscard]] Length stopDistance(Speed speed, Time reaction, Acceleration deceleration) noexcept;
/// V1.time: t = tr + v / a. Domain as V1.distance. Definition.
[[nodiscard]] Time stopTime(Speed speed, Time reaction, Acceleration deceleration) noexcept;
/// V2.inches: N = s / i, presses of the hold-to-run button at i of travel each, rounded up: part of a press is one more
/// press; a press that only arithmetic asks for is forgiven (1e-9). s >= 0, i > 0. Definition.
[[nodiscard]] double inches(Length path, Length travel) noexcept;
/// V2.crawl: t = s / v. s >= 0, v > 0. Definition.
[[nodiscard]] Time crawlTime(Length path, Speed speed) noexcept;
/// V4: J = m (R^2 + r^2) / 2, a hollow cylinder about its axis. m >= 0, R >= r >= 0, R > 0. Source S84.
[[nodiscard]] Inertia rollInertia(Mass mass, Length outerRadius, Length innerRadius) noexcept;
/// V4.roll: J = (m (R^2 + r^2) + mc (r^2 + b^2)) / 2, web of mass m wound to R on a core of mass mc between its bore b
/// and its outside r: two hollow cylinders, V4 of each. m >= 0, mc >= 0, R >= r >= b >= 0, r > 0. Source S84.
[[nodiscard]] Inertia woundRollInertia(Mass web, Length outerRadius, Length coreRadius, Mass core,
                                       Length boreRadius) noexcept;
/// V5: M = J a / R, torque that changes the surface speed of a roll of radius R at rate a. J >= 0, a >= 0, R > 0.
/// Source S24.
[[nodiscard]] Torque accelerationTorque(Inertia inertia, Acceleration acceleration, Length radius) noexcept;
/// V6: T = (M - J a / R) / R, tension left at the unwind while the press slows at a and the brake holds M; zero or
/// less: the web is slack and the roll overruns. M >= 0, J >= 0, a >= 0, R > 0. Follows from B1 and V5.
[[nodiscard]] Force unwindStopTension(Torque brake, Inertia inertia, Acceleration deceleration, Length radius) noexcept;
/// V6.hold: M = T R + J a / R, the brake torque that keeps T at the unwind while the press slows at a. T >= 0, J >= 0,
/// a >= 0, R > 0. V6 solved for its torque.
[[nodiscard]] Torque unwindHoldTorque(Force tension, Inertia inertia, Acceleration deceleration,
                                      Length radius) noexcept;
/// V7: T = T0 + J a / R^2, tension at the rewind while the press slows at a and the clutch torque stays. T0 >= 0,
/// J >= 0, a >= 0, R > 0. Follows from B1 and V5.
[[nodiscard]] Force rewindStopTension(Force running, Inertia inertia, Acceleration deceleration,
                                      Length radius) noexcept;

}  // namespace taut::physics
