// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <span>
#include <vector>

#include "core/base/result.h"
#include "core/stats/quantile.h"

// Least squares, for learning what a press's brake, lift or dancer really does from what was read at it. The numbers
// are plain: whoever asks keeps one unit for all x and one for all y, and gives them back their kinds.
namespace taut::physics {

struct Pair {
    double x = 0;
    double y = 0;
};

using stats::Interval;

/// One coefficient of a fit; the interval covers the true one with the confidence that was asked for, if the scatter is
/// normal and the same everywhere.
struct Coefficient {
    double value = 0;
    double standardError = 0;
    Interval interval;
};

/// y = b0 + b1 x + ... as the pairs have it.
struct Fit {
    std::vector<Coefficient> coefficients;  ///< b0, b1, ... in powers of x as given
    double residualSd = 0;                  ///< standard deviation of the scatter about the curve, in y
    double rSquared = 0;                    ///< share of the spread of y that the curve explains
    int freedom = 0;                        ///< pairs less coefficients
    std::vector<double> residuals;          ///< read less fitted, in the order of the pairs
    std::vector<double> leverages;          ///< how much each pair pulls the curve to itself, 0 to 1
    /// Each residual over its own standard error when that pair is left out (externally studentized); 0 where it cannot
    /// be said, because too few pairs would be left.
    std::vector<double> studentized;
    /// Indices of pairs that do not belong to the others: the largest studentized residual of so many would pass the
    /// limit by chance once in twenty fits (Bonferroni). Marks for a person to look at; nothing is left out.
    std::vector<std::size_t> outliers;

    [[nodiscard]] double at(double x) const noexcept;
};

/// Fits a polynomial, degree 1 for a straight line; at least one pair more than coefficients, at least degree + 1
/// different x. Works in polynomials that are orthogonal over the pairs themselves (Forsythe, J. SIAM 5 (1957) 74, from
/// memory), so that a far-off origin costs no digits. confidence: 0 < c < 1. Codes: regression.not_finite, .too_few,
/// .no_spread, .confidence.
[[nodiscard]] Result<Fit> fitPolynomial(std::span<const Pair> pairs, std::size_t degree, double confidence = 0.95);
/// Degree 1.
[[nodiscard]] Result<Fit> fitLine(std::span<const Pair> pairs, double confidence = 0.95);
/// The factor between a standard error and half the interval: Student's t, two-sided. NaN outside 0 < c < 1, freedom
/// >= 1.
[[nodiscard]] double studentFactor(double confidence, int freedom) noexcept;

}  // namespace taut::physics
