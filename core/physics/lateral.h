// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/quantity.h"

// How a web moves sideways: it enters a roller square to the roller's axis (S61), so a span follows like a lag. Angles
// in radians and small; full traction, no slack edge, shear left out (it matters below about five widths of span).
// Outside its domain every function gives NaN.
namespace taut::physics {

/// Of the web as a beam under tension, with x = K L, K^2 = T / (E I): f of the static shift, f1 to f3 of the second
/// order lateral equation. Limits for x = 0: 2/3, 6, 4, 2. NaN for x < 0. From memory: Shelton and Reid 1971 (S64).
struct LateralFactors {
    double f;   ///< (x cosh x - sinh x) / (x (cosh x - 1)) = f2 / f1
    double f1;  ///< x^2 (cosh x - 1) / (x sinh x + 2 (1 - cosh x))
    double f2;  ///< x (x cosh x - sinh x) / (same)
    double f3;  ///< x (sinh x - x) / (same)
};
[[nodiscard]] LateralFactors lateralFactors(double x) noexcept;

/// G2: r = 1 - e^(-v t / L), the share of a sideways step that has come across a span. t >= 0, L > 0, v > 0. Source
/// S62.
[[nodiscard]] double lateralShare(Time time, Length span, Speed speed) noexcept;
/// G3: y = f(K L) theta L, how far a roller out of line by theta shifts the web; K^2 = T / (E I), I = t w^3 / 12.
/// T >= 0, E > 0, w > 0, t > 0, L > 0, |theta| <= 0.2. Source S63.
[[nodiscard]] Length misalignmentShift(Force tension, Pressure modulus, Length width, Length caliper, Length span,
                                       double angle) noexcept;
/// G4: step response of y'' + f2 (v/L) y' + f1 (v/L)^2 y = f1 (v/L)^2 y0, entry slope fixed; may overshoot 1. KL >= 0,
/// L > 0, v >= 0, t >= 0. From memory: Shelton and Reid 1971 (S64).
[[nodiscard]] double lateralStep(double stiffnessLength, Length span, Speed speed, Time time) noexcept;
/// G5: e = theta w / L, strain added at one edge and taken from the other at the entry of a steered span; an edge
/// hangs slack when it exceeds the running strain. |theta| <= 0.2, w > 0, L > 0. Bending moment 2 E I theta / L of G3's
/// beam. Given without sign.
[[nodiscard]] double steeringEdgeStrain(double angle, Length width, Length span) noexcept;
/// G5.limit: theta = e L / w, the steering angle at which one edge has lost all of the running strain e. e >= 0, w > 0,
/// L > 0. Follows from G5.
[[nodiscard]] double steeringSlackAngle(double strain, Length width, Length span) noexcept;

}  // namespace taut::physics
