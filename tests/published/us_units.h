// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/physics/domain.h"
#include "core/units/quantity.h"

// Units of the sources, by their exact definitions (international yard and pound, 1959; standard gravity, 1901):
// units_test.cpp holds them against GNU units.
namespace source {

inline constexpr double kInch = 0.0254;
inline constexpr double kFoot = 12 * kInch;
inline constexpr double kPound = 0.45359237;
inline constexpr double kPoundForce = kPound * 9.80665;
inline constexpr double kPsi = kPoundForce / (kInch * kInch);

[[nodiscard]] constexpr taut::Length inches(double v) { return taut::Length::si(v * kInch); }
[[nodiscard]] constexpr taut::Length mils(double v) { return inches(v / 1000); }
[[nodiscard]] constexpr taut::Length feet(double v) { return taut::Length::si(v * kFoot); }
[[nodiscard]] constexpr taut::Mass pounds(double v) { return taut::Mass::si(v * kPound); }
[[nodiscard]] constexpr taut::Force poundsForce(double v) { return taut::Force::si(v * kPoundForce); }
[[nodiscard]] constexpr taut::ForcePerWidth perInch(double v)
{
    return taut::ForcePerWidth::si(v * kPoundForce / kInch);
}
[[nodiscard]] constexpr taut::Pressure psi(double v) { return taut::Pressure::si(v * kPsi); }
[[nodiscard]] constexpr taut::Speed feetPerMinute(double v) { return taut::Speed::si(v * kFoot / 60); }
[[nodiscard]] constexpr taut::Grammage gsm(double v) { return taut::Grammage::si(v / 1000); }
[[nodiscard]] constexpr double toFeet(taut::Length v) { return v.si() / kFoot; }
[[nodiscard]] constexpr double toPounds(taut::Mass v) { return v.si() / kPound; }
[[nodiscard]] constexpr double toPoundFeet(taut::Torque v) { return v.si() / (kPoundForce * kFoot); }
[[nodiscard]] constexpr double radians(double degrees) { return degrees * taut::physics::kPi / 180; }

}  // namespace source
