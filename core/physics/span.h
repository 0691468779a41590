// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/quantity.h"

// Web strain and tension in free spans. K = E w t is the web's stiffness, a force. Elastic web, no slip, constant span
// length; heat, moisture and creep are left out. A negative tension says that the web is slack and that the model no
// longer holds. Outside its domain every function gives NaN.
namespace taut::physics {

/// D1: e = T / (E w t). T >= 0, E > 0, w > 0, t > 0. Source S41.
[[nodiscard]] double strain(Force tension, Pressure modulus, Length width, Length caliper) noexcept;
/// D2: e2 = (1 + e1) v2 / v1 - 1, conservation of mass, exact. The core uses this one; D2.first_order differs from it
/// by under 1 % at running strains. e1 > -1, v1 > 0, v2 > 0. Source S44.
[[nodiscard]] double strainAfterDraw(double strainBefore, Speed before, Speed after) noexcept;
/// D2.first_order: T2 = (K (v2 - v1) + v1 T1) / v2, where the span equation comes to rest. K > 0, v1 > 0, v2 > 0,
/// T1 >= 0. Source S43.
[[nodiscard]] Force tensionAfterDraw(Force stiffness, Speed before, Speed after, Force tensionBefore) noexcept;
/// D2.draw: draw = (e2 - e1) / (1 + e1), the speed difference over the first speed that takes strain e1 to e2: D2
/// solved for v2 / v1 - 1. e1 > -1, e2 > -1. Source S44.
[[nodiscard]] double drawForStrain(double strainBefore, double strainAfter) noexcept;
/// D3: dTw = E t dv / v, what a small speed error does to tension per width. E > 0, t > 0, v > 0, dv any sign. Follows
/// from D2.
[[nodiscard]] ForcePerWidth drawError(Pressure modulus, Length caliper, Speed speed, Speed error) noexcept;
/// D5: tau = L / v, the time constant of a span. L >= 0, v > 0. Source S45.
[[nodiscard]] Time spanTime(Length span, Speed speed) noexcept;
/// D6: T2(t) = Tss + (T0 - Tss) e^(-v2 t / L), Tss from D2.first_order: the span equation of S43 solved for constant
/// speeds. K > 0, L > 0, v1 > 0, v2 > 0, T1 >= 0, T0 >= 0, t >= 0.
[[nodiscard]] Force spanTension(Force stiffness, Length span, Speed before, Speed after, Force tensionBefore,
                                Force tensionAtStart, Time time) noexcept;
/// D7: r = P(n, v t / L), the share of a step that has come through n equal spans: the regularised lower incomplete
/// gamma function. n whole up to 1000, v > 0, L > 0, t >= 0. n equal lags of D5.
[[nodiscard]] double cascadeShare(double spans, Speed speed, Length span, Time time) noexcept;

}  // namespace taut::physics
