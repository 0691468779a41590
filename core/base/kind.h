// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <compare>
#include <cstddef>
#include <cstdint>

#include "core/base/shared_string.h"

namespace taut {

/// Exponents of the SI base units that press work needs.
struct Dimension {
    std::int8_t length{};
    std::int8_t mass{};
    std::int8_t time{};
    std::int8_t current{};
    friend constexpr bool operator==(const Dimension&, const Dimension&) = default;
};

/// What a quantity is a quantity of. Finer than a dimension: an angle is not a share, a cell volume of an
/// anilox roll is not a length, though the SI cannot tell them apart.
enum class Kind : std::uint8_t {
    Count,
    Share,
    Angle,
    Length,
    VolumePerArea,
    Area,
    Mass,
    Grammage,
    Density,
    AreaPerMass,
    Force,
    ForcePerWidth,
    Pressure,
    Torque,
    TorquePerPressure,
    TorquePerCurrent,
    TorquePerShare,
    Speed,
    Acceleration,
    Time,
    Frequency,
    Inertia,
    CountPerLength,
    Power,
    Current,
    Viscosity
};
inline constexpr std::size_t kKindCount = 26;

/// The dimension of a kind (SI base units).
[[nodiscard]] constexpr Dimension dimensionOf(Kind kind) noexcept
{
    constexpr std::array<Dimension, kKindCount> kTable{{{},
                                                        {},
                                                        {},
                                                        {1, 0, 0, 0},
                                                        {1, 0, 0, 0},
                                                        {2, 0, 0, 0},
                                                        {0, 1, 0, 0},
                                                        {-2, 1, 0, 0},
                                                        {-3, 1, 0, 0},
                                                        {2, -1, 0, 0},
                                                        {1, 1, -2, 0},
                                                        {0, 1, -2, 0},
                                                        {-1, 1, -2, 0},
                                                        {2, 1, -2, 0},
                                                        {3, 0, 0, 0},
                                                        {2, 1, -2, -1},
                                                        {2, 1, -2, 0},
                                                        {1, 0, -1, 0},
                                                        {1, 0, -2, 0},
                                                        {0, 0, 1, 0},
                                                        {0, 0, -1, 0},
                                                        {2, 1, 0, 0},
                                                        {-1, 0, 0, 0},
                                                        {2, 1, -3, 0},
                                                        {0, 0, 0, 1},
                                                        {-1, 1, -1, 0}}};
    return kTable[static_cast<std::size_t>(kind)];
}

/// All that base knows of a quantity: its SI value, what it is, and the unit in which this press speaks of it ("" =
/// any).
struct Magnitude {
    double si{};
    Kind kind{};
    SharedString unit;
    friend bool operator==(const Magnitude&, const Magnitude&) = default;
};

}  // namespace taut
