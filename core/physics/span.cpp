// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/span.h"

#include "core/physics/domain.h"

namespace taut::physics {
namespace {

constexpr int kMostSpans = 1000;

/// e^-x x^k / k!, by logarithms so that neither factor overflows.
double poisson(int k, double x) noexcept
{
    double logFactorial = 0;
    for (int i = 2; i <= k; ++i) logFactorial += std::log(i);
    return std::exp(k * std::log(x) - x - logFactorial);
}

/// P(n, x) for whole n: summed from its largest term away from the side where it would cancel.
double lowerGammaShare(int n, double x) noexcept
{
    if (x == 0) return 0;
    double sum = 0;
    if (x < n + 1) {
        double term = poisson(n, x);
        for (int k = n + 1; term > sum * 1e-17; ++k) {
            sum += term;
            term *= x / k;
        }
        return sum;
    }
    double term = poisson(n - 1, x);
    for (int k = n - 1; k >= 0; --k) {
        sum += term;
        term *= k / x;
    }
    return 1 - sum;
}

}  // namespace

double strain(Force tension, Pressure modulus, Length width, Length caliper) noexcept
{
    if (!notNegative(tension) || !positive(modulus, width, caliper)) return undefined<double>();
    return (tension / (modulus * width * caliper)).si();
}

double strainAfterDraw(double strainBefore, Speed before, Speed after) noexcept
{
    if (!positive(1 + strainBefore, before, after)) return undefined<double>();
    return strainBefore + (1 + strainBefore) * ((after - before) / before).si();
}

Force tensionAfterDraw(Force stiffness, Speed before, Speed after, Force tensionBefore) noexcept
{
    if (!positive(stiffness, before, after) || !notNegative(tensionBefore)) return undefined<Force>();
    return (stiffness * (after - before) + before * tensionBefore) / after;
}

double drawForStrain(double strainBefore, double strainAfter) noexcept
{
    if (!positive(1 + strainBefore, 1 + strainAfter)) return undefined<double>();
    return (strainAfter - strainBefore) / (1 + strainBefore);
}

ForcePerWidth drawError(Pressure modulus, Length caliper, Speed speed, Speed error) noexcept
{
    if (!positive(modulus, caliper, speed) || !finite(error)) return undefined<ForcePerWidth>();
    return modulus * caliper * (error / speed);
}

Time spanTime(Length span, Speed speed) noexcept
{
    if (!notNegative(span) || !positive(speed)) return undefined<Time>();
    return span / speed;
}

Force spanTension(Force stiffness, Length span, Speed before, Speed after, Force tensionBefore, Force tensionAtStart,
                  Time time) noexcept
{
    if (!positive(span) || !notNegative(tensionAtStart, time)) return undefined<Force>();
    const Force rest = tensionAfterDraw(stiffness, before, after, tensionBefore);
    return rest + (tensionAtStart - rest) * std::exp(-(time / spanTime(span, after)).si());
}

double cascadeShare(double spans, Speed speed, Length span, Time time) noexcept
{
    if (!whole(spans) || spans > kMostSpans || !positive(speed, span) || !notNegative(time)) return undefined<double>();
    return lowerGammaShare(static_cast<int>(spans), (time / spanTime(span, speed)).si());
}

}  // namespace taut::physics
