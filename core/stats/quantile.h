// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Quantiles of the usual distributions, from those of the GNU Scientific Library; this file is the only door to it in
// core. Their error is that of the library's distributions: relative 1e-9 at most up to a million degrees of freedom
// and out to a millionth at either side, as the tests find. Outside the ranges named each gives NaN.
namespace taut::stats {

/// Two ends, of a confidence interval for the most part.
struct Interval {
    double low = 0;
    double high = 0;
};

/// The z below which the share p of a standard normal distribution lies; 0 < p < 1.
[[nodiscard]] double normalQuantile(double p) noexcept;
/// The share of a standard normal distribution below z.
[[nodiscard]] double normalBelow(double z) noexcept;
/// Its share above z, to full precision far out.
[[nodiscard]] double normalAbove(double z) noexcept;
/// Chi-square; freedom > 0, need not be whole.
[[nodiscard]] double chiSquareQuantile(double p, double freedom) noexcept;
/// Student's t; freedom > 0.
[[nodiscard]] double studentQuantile(double p, double freedom) noexcept;
/// Fisher's F, the ratio of two variances; both freedoms > 0.
[[nodiscard]] double fQuantile(double p, double above, double below) noexcept;
/// Beta on 0..1; a, b > 0.
[[nodiscard]] double betaQuantile(double p, double a, double b) noexcept;

}  // namespace taut::stats
