// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/kind.h"

namespace taut::inputs {

/// What can be believed of a value, in SI: beyond it a slip of the unit or of the decimal mark is likelier than the
/// value. Wide on purpose: a press of another size must pass. The bounds are a policy of ours, no source.
struct Sane {
    double least{}, most{};
    bool zero = false;  ///< nought is a value too
};

namespace sane {
inline constexpr Sane kPressWidth{0.005, 5};
inline constexpr Sane kAcross{0, 5, true};  ///< a distance across the press
inline constexpr Sane kCoordinate{-200, 200, true};
inline constexpr Sane kRollDiameter{0.01, 3};
inline constexpr Sane kRollerDiameter{0.005, 3};
inline constexpr Sane kCore{0.01, 0.6};
inline constexpr Sane kCoreWall{0.0005, 0.1};
inline constexpr Sane kCaliper{5e-6, 3e-3};
inline constexpr Sane kRoughness{1e-8, 1e-3};
inline constexpr Sane kPathLength{0.05, 1000};
inline constexpr Sane kWebLength{5, 200e3};   ///< so that "1,360 m", 1.36 m, is asked about
inline constexpr Sane kSmallLength{1e-4, 5};  ///< a part, a stroke, a window, a register range
inline constexpr Sane kOffCentre{0, 0.5, true};
inline constexpr Sane kMass{1e-3, 10e3};
inline constexpr Sane kGrammage{3e-3, 3};
inline constexpr Sane kModulus{1e6, 500e9};
inline constexpr Sane kStrength{10, 500e3};  ///< per width
inline constexpr Sane kTension{1, 20e3};     ///< per width
inline constexpr Sane kAir{0, 16e5, true};   ///< compressed air of a press
inline constexpr Sane kForce{0.1, 50e3};
inline constexpr Sane kPower{1, 100e3};
inline constexpr Sane kSpeed{1e-4, 2000.0 / 60};
inline constexpr Sane kStopTime{0.05, 600};
inline constexpr Sane kCheckEvery{3600, 10 * 366 * 86400.0};  ///< from an hour to ten years
inline constexpr Sane kAngle{1e-3, 6.2831853072};
inline constexpr Sane kGuideAngle{1e-3, 0.8};
inline constexpr Sane kInertia{1e-7, 1e4};
inline constexpr Sane kInkDensity{500, 5000};
inline constexpr Sane kScreen{500, 2e5};
inline constexpr Sane kVolume{1e-8, 2e-4};
inline constexpr Sane kPitch{5e-4, 0.1};
inline constexpr Sane kPlate{1e-5, 0.02};
inline constexpr Sane kFriction{0.01, 3};
inline constexpr Sane kCoreFriction{0.01, 1};  ///< web on web and on a core: rubber is not wound on
inline constexpr Sane kShare{0, 1, true};
inline constexpr Sane kEfficiency{0.05, 1};
inline constexpr Sane kRatio{0.01, 100};
inline constexpr Sane kCoreWraps{0, 200, true};  ///< wound round a core by hand
inline constexpr Sane kAny{-1e12, 1e12, true};
/// A roll or a web may be larger than the press takes and still be measured; so much larger it was misread.
inline constexpr double kOverLargest = 2;
}  // namespace sane

/// What can be believed of a control's setting, by what is set.
[[nodiscard]] constexpr Sane saneSetting(Kind kind) noexcept
{
    switch (kind) {
    case Kind::Pressure: return sane::kAir;
    case Kind::Current: return {0, 100, true};
    case Kind::Share: return {-1, 2, true};
    case Kind::Force: return {0, 50e3, true};
    case Kind::Mass: return {0, 500, true};
    case Kind::TorquePerPressure: return {1e-7, 0.1};  // 0.01 N m/bar to 10 kN m/bar
    case Kind::TorquePerCurrent: return {1e-3, 10e3};
    case Kind::TorquePerShare: return {1e-2, 1e6};  // 1e-4 N m/% to 10 kN m/%
    default: return sane::kAny;
    }
}

/// What can be believed of something read at a press, by its kind: the widest of what its files may say.
[[nodiscard]] constexpr Sane saneReading(Kind kind) noexcept
{
    switch (kind) {
    case Kind::Count: return {0, 1e6, true};
    case Kind::Share: return {-1, 100, true};
    case Kind::Angle: return {-sane::kAngle.most, sane::kAngle.most, true};
    case Kind::Length: return {-sane::kWebLength.most, sane::kWebLength.most, true};
    case Kind::Mass: return {0, sane::kMass.most, true};
    case Kind::Force: return {0, sane::kForce.most, true};
    case Kind::ForcePerWidth: return {0, sane::kTension.most, true};
    case Kind::Pressure: return sane::kAir;
    case Kind::Speed: return {0, sane::kSpeed.most, true};
    case Kind::Time: return {0, 7 * 24 * 3600.0, true};
    case Kind::Power: return {0, sane::kPower.most, true};
    case Kind::Current: return {0, 100, true};
    default: return sane::kAny;
    }
}

}  // namespace taut::inputs
