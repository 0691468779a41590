// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/quantile.h"

#include <cmath>
#include <limits>

#include <gsl/gsl_cdf.h>
#include <gsl/gsl_errno.h>

namespace taut::stats {
namespace {

// By default the library ends the program where a series does not converge. Set before main, with this file.
[[maybe_unused]] gsl_error_handler_t* const kOnError = gsl_set_error_handler_off();

constexpr double kNone = std::numeric_limits<double>::quiet_NaN();

bool share(double p) noexcept { return p > 0 && p < 1; }
bool positive(double x) noexcept { return x > 0 && std::isfinite(x); }

// Where a function that falls from 0 to `most` comes down to a value. The library's own inverses give up, or stop
// early, in places that a shop can reach (chi-square of a million degrees): its distributions are halved down to the
// last place instead.
template <class Falls>
double cross(const Falls& falls, double value, double most) noexcept
{
    double low = 0;
    double high = std::fmin(1, most);
    while (high < most && falls(high) > value) {
        low = high;
        high *= 2;
        if (!std::isfinite(high)) return kNone;
    }
    for (double middle = low + (high - low) / 2; middle > low && middle < high; middle = low + (high - low) / 2)
        (falls(middle) > value ? low : high) = middle;
    return high;
}
// The smaller tail is asked: the other has no digits left where it is nearly 1.
template <class Below, class Above>
double solve(double p, double most, const Below& below, const Above& above) noexcept
{
    if (p > 0.5) return cross(above, 1 - p, most);
    return cross([&below](double x) { return -below(x); }, -p, most);
}
constexpr double kEndless = std::numeric_limits<double>::infinity();

}  // namespace

double normalQuantile(double p) noexcept { return share(p) ? gsl_cdf_ugaussian_Pinv(p) : kNone; }

double normalBelow(double z) noexcept { return gsl_cdf_ugaussian_P(z); }

double normalAbove(double z) noexcept { return gsl_cdf_ugaussian_Q(z); }

double chiSquareQuantile(double p, double freedom) noexcept
{
    if (!share(p) || !positive(freedom)) return kNone;
    return solve(
        p, kEndless, [freedom](double x) { return gsl_cdf_chisq_P(x, freedom); },
        [freedom](double x) { return gsl_cdf_chisq_Q(x, freedom); });
}

double studentQuantile(double p, double freedom) noexcept
{
    if (!share(p) || !positive(freedom)) return kNone;
    if (p == 0.5) return 0;
    const double t = cross([freedom](double x) { return gsl_cdf_tdist_Q(x, freedom); }, p < 0.5 ? p : 1 - p, kEndless);
    return p < 0.5 ? -t : t;
}

double fQuantile(double p, double above, double below) noexcept
{
    if (!share(p) || !positive(above) || !positive(below)) return kNone;
    return solve(
        p, kEndless, [=](double x) { return gsl_cdf_fdist_P(x, above, below); },
        [=](double x) { return gsl_cdf_fdist_Q(x, above, below); });
}

double betaQuantile(double p, double a, double b) noexcept
{
    if (!share(p) || !positive(a) || !positive(b)) return kNone;
    return solve(
        p, 1, [=](double x) { return gsl_cdf_beta_P(x, a, b); }, [=](double x) { return gsl_cdf_beta_Q(x, a, b); });
}

}  // namespace taut::stats
