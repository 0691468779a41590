// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cmath>
#include <limits>

#include "core/units/quantity.h"

// How the formulas say where they hold. Lengths, forces and the like are Measures; a count, a share or an angle is a
// plain double. Outside its domain every formula gives NaN: who calls decides what to say about it.
namespace taut::physics {

inline constexpr double kPi = 3.14159265358979323846;
/// Standard gravity, m/s2 (definition, 3rd CGPM 1901).
inline constexpr Acceleration kGravity = Acceleration::si(9.80665);

[[nodiscard]] constexpr double siOf(double value) noexcept { return value; }
template <int L, int M, int T, int I>
[[nodiscard]] constexpr double siOf(Measure<L, M, T, I> m) noexcept
{
    return m.si();
}
/// All finite and above zero.
template <class... M>
[[nodiscard]] bool positive(M... m) noexcept
{
    return (... && (siOf(m) > 0 && std::isfinite(siOf(m))));
}
/// All finite and not below zero.
template <class... M>
[[nodiscard]] bool notNegative(M... m) noexcept
{
    return (... && (siOf(m) >= 0 && std::isfinite(siOf(m))));
}
template <class... M>
[[nodiscard]] bool finite(M... m) noexcept
{
    return (... && std::isfinite(siOf(m)));
}
/// All from 0 to 1, both included.
template <class... S>
[[nodiscard]] bool shares(S... s) noexcept
{
    return (... && (s >= 0 && s <= 1));
}
/// 1, 2, 3 ...
[[nodiscard]] inline bool whole(double n) noexcept { return std::isfinite(n) && n >= 1 && n == std::floor(n); }

/// What a formula gives outside its domain.
template <class M>
[[nodiscard]] constexpr M undefined() noexcept
{
    return M::si(std::numeric_limits<double>::quiet_NaN());
}
template <>
[[nodiscard]] constexpr double undefined<double>() noexcept
{
    return std::numeric_limits<double>::quiet_NaN();
}

}  // namespace taut::physics
