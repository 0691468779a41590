// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/quantity.h"

// Web guides and their sensors. Angles in radians. Outside its domain every function gives NaN.
namespace taut::physics {

/// G7: y = L sin alpha, what a displacement guide of span L shifts at angle alpha. L > 0, |alpha| < pi/2. Geometry;
/// use S67.
[[nodiscard]] Length guideShift(Length span, double angle) noexcept;
/// G8: e = sqrt(1 + (alpha w / 2 L)^2) - 1, edge against centre when the span into or out of a displacement guide is
/// twisted by alpha. |alpha| <= 0.5, w > 0, L > 0. Geometry.
[[nodiscard]] double twistEdgeStrain(double angle, Length width, Length span) noexcept;
/// G8.limit: alpha = (L / w) sqrt(24 e), the twist at which the centre of a web that runs at the strain e hangs slack.
/// The tension, and so the mean strain over the width, stays what it was: the mean of what the edges' way is longer by,
/// (alpha y / L)^2 / 2 over y, is a third of G8. Small twists. e >= 0, w > 0, L > 0. Follows from G8.
[[nodiscard]] double twistSlackAngle(double strain, Length width, Length span) noexcept;
/// G11: r = y / s, the share of a guide's stroke to one side that an error of y takes. y >= 0, s > 0. Definition.
[[nodiscard]] double strokeShare(Length needed, Length stroke) noexcept;
/// G10: x = W (V - V0) / (V1 - V0), where the edge stands in a sensor window W: V0 read with the web in view, V1 out
/// of view, in any one unit. V0 != V1, W > 0. Two-point calibration; one half is the middle.
[[nodiscard]] Length edgeInWindow(double reading, double blocked, double clear, Length window) noexcept;
/// G10.edge: x = c + side w / 2, the place of an edge from the frame face: centreline c, width w, side -1 the nearer
/// edge, +1 the farther. c >= 0, w > 0. Definition.
[[nodiscard]] Length edgePlace(Length centreline, Length width, double side) noexcept;
/// G12: F = c (mu m g + m a), force to shift a carriage of mass m; c at least 2.0 for this two-term estimate (S72).
/// m > 0, mu >= 0, a >= 0, c >= 1. Source S72.
[[nodiscard]] Force shiftForce(Mass mass, double friction, Acceleration acceleration, double factor) noexcept;

}  // namespace taut::physics
