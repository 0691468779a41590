// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/lateral.h"

#include "core/physics/domain.h"

namespace taut::physics {
namespace {

constexpr double kSmallAngle = 0.2;
/// Below this the closed forms cancel and their power series are used.
constexpr double kSeriesUpTo = 2;

/// cosh x - 1, x cosh x - sinh x, sinh x - x and x sinh x + 2 (1 - cosh x), all times one common factor.
struct Parts {
    double a, b, c, d;
};
/// Divided by x^2, x^3, x^3 and x^4: finite at zero.
Parts partsBySeries(double x) noexcept
{
    Parts p{0, 0, 0, 0};
    double even = 0.5;  // x^(2k-2) / (2k)!
    for (int k = 1; k <= 16; ++k) {
        const double odd = even / (2 * k + 1);  // x^(2k-2) / (2k+1)!
        p.a += even;
        p.b += even - odd;
        p.c += odd;
        p.d += odd * k / (k + 1);
        even = odd * x * x / (2 * k + 2);
    }
    return p;
}
/// Divided by e^x, so that a long web does not overflow.
Parts partsInFull(double x) noexcept
{
    const double e = std::exp(-x);
    const double cosh = (1 + e * e) / 2;
    const double sinh = (1 - e * e) / 2;
    return {cosh - e, x * cosh - sinh, sinh - x * e, x * sinh + 2 * (e - cosh)};
}

}  // namespace

LateralFactors lateralFactors(double x) noexcept
{
    if (!notNegative(x)) return {undefined<double>(), undefined<double>(), undefined<double>(), undefined<double>()};
    if (x < kSeriesUpTo) {
        const Parts p = partsBySeries(x);
        return {p.b / p.a, p.a / p.d, p.b / p.d, p.c / p.d};
    }
    const Parts p = partsInFull(x);
    return {p.b / (x * p.a), x * x * p.a / p.d, x * p.b / p.d, x * p.c / p.d};
}

double lateralShare(Time time, Length span, Speed speed) noexcept
{
    if (!notNegative(time) || !positive(span, speed)) return undefined<double>();
    return -std::expm1(-(time * speed / span).si());
}

Length misalignmentShift(Force tension, Pressure modulus, Length width, Length caliper, Length span,
                         double angle) noexcept
{
    if (!notNegative(tension) || !positive(modulus, width, caliper, span) || !(std::abs(angle) <= kSmallAngle))
        return undefined<Length>();
    const auto inertia = caliper * width * width * width / 12;
    const double stiffnessLength = std::sqrt((tension * span * span / (modulus * inertia)).si());
    return span * (lateralFactors(stiffnessLength).f * angle);
}

double lateralStep(double stiffnessLength, Length span, Speed speed, Time time) noexcept
{
    if (!notNegative(stiffnessLength, speed, time) || !positive(span)) return undefined<double>();
    const LateralFactors k = lateralFactors(stiffnessLength);
    const double s = (speed * time / span).si();
    const double a = k.f2 / 2;
    const double split = a * a - k.f1;  // of the roots -a +- sqrt(split)
    const double turn = std::sqrt(std::abs(split)) * s;
    const double decay = std::exp(-a * s);
    if (turn < 1e-4) {  // the roots all but coincide: first terms of both forms
        const double q = split * s * s;
        return 1 - decay * (1 + q / 2 + a * s * (1 + q / 6));
    }
    const double root = turn / s;
    if (split < 0) return 1 - decay * (std::cos(turn) + a / root * std::sin(turn));
    const double slow = std::exp(-k.f1 / (a + root) * s);  // a - root without its cancellation
    const double fast = std::exp(-(a + root) * s);
    return 1 - ((slow + fast) + a / root * (slow - fast)) / 2;
}

double steeringEdgeStrain(double angle, Length width, Length span) noexcept
{
    if (!(std::abs(angle) <= kSmallAngle) || !positive(width, span)) return undefined<double>();
    return std::abs(angle) * (width / span).si();
}

double steeringSlackAngle(double strain, Length width, Length span) noexcept
{
    if (!notNegative(strain) || !positive(width, span)) return undefined<double>();
    return strain * (span / width).si();
}

}  // namespace taut::physics
