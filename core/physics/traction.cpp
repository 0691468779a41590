// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/traction.h"

#include <algorithm>

#include "core/physics/domain.h"

namespace taut::physics {
namespace {
/// H''(infinity) of H''' = (H - 1) / H^3 leaving the uniform film.
constexpr double kFilmConstant = 0.643;
}  // namespace

double capstanRatio(double friction, double wrap) noexcept
{
    if (!notNegative(friction, wrap)) return undefined<double>();
    return std::exp(friction * wrap);
}

double coreHold(double friction, double wraps) noexcept { return capstanRatio(friction, 2 * kPi * wraps); }

Length airFilm(Length radius, Viscosity viscosity, Speed speeds, ForcePerWidth perWidth) noexcept
{
    if (!positive(radius, viscosity, perWidth) || !notNegative(speeds)) return undefined<Length>();
    const double flow = (viscosity * speeds * 6 / perWidth).si();
    return radius * (kFilmConstant * std::cbrt(flow * flow));
}

double frictionOverAir(double friction, Length film, Length roughness) noexcept
{
    if (!notNegative(friction, film) || !positive(roughness)) return undefined<double>();
    return friction * std::clamp((3 - (film / roughness).si()) / 2, 0.0, 1.0);
}

double capstanOverAir(double friction, double wrap, Length film, Length roughness) noexcept
{
    return capstanRatio(frictionOverAir(friction, film, roughness), wrap);
}

}  // namespace taut::physics
