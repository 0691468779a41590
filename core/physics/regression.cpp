// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/regression.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <set>

namespace taut::physics {
namespace {

using Row = std::vector<long double>;

// x is carried to -1..1 first: powers of a far-off x would drown each other.
struct Scale {
    long double middle = 0;
    long double half = 1;
    [[nodiscard]] long double operator()(double x) const { return (x - middle) / half; }
};

struct Basis {
    std::vector<Row> at;      // [k][i]: polynomial k at pair i
    Row squares;              // [k]: sum over the pairs of its square
    std::vector<Row> powers;  // [k][j]: its coefficient of x^j, in x as given
};

// (a + b x) p, in powers of x.
Row timesLine(const Row& p, long double a, long double b)
{
    Row product(p.size() + 1, 0);
    for (std::size_t j = 0; j < p.size(); ++j) {
        product[j] += a * p[j];
        product[j + 1] += b * p[j];
    }
    return product;
}

Basis basisOver(std::span<const Pair> pairs, std::size_t degree, const Scale& scale)
{
    const std::size_t n = pairs.size();
    Basis basis{{Row(n, 1)}, {static_cast<long double>(n)}, {Row{1}}};
    for (std::size_t k = 0; k < degree; ++k) {
        const Row& now = basis.at[k];
        long double mean = 0;
        for (std::size_t i = 0; i < n; ++i) mean += scale(pairs[i].x) * now[i] * now[i];
        mean /= basis.squares[k];
        const long double back = k == 0 ? 0 : basis.squares[k] / basis.squares[k - 1];
        Row next(n);
        long double square = 0;
        for (std::size_t i = 0; i < n; ++i) {
            next[i] = (scale(pairs[i].x) - mean) * now[i] - (k == 0 ? 0 : back * basis.at[k - 1][i]);
            square += next[i] * next[i];
        }
        Row powers = timesLine(basis.powers[k], -scale.middle / scale.half - mean, 1 / scale.half);
        if (k > 0)
            for (std::size_t j = 0; j < basis.powers[k - 1].size(); ++j) powers[j] -= back * basis.powers[k - 1][j];
        basis.at.push_back(std::move(next));
        basis.squares.push_back(square);
        basis.powers.push_back(std::move(powers));
    }
    return basis;
}

// Shares of the basis in y; what they leave over goes to `left`. The second round takes up what rounding left in the
// first.
Row project(const Basis& basis, Row& left)
{
    Row shares(basis.at.size(), 0);
    for (int round = 0; round < 2; ++round)
        for (std::size_t k = 0; k < basis.at.size(); ++k) {
            long double share = 0;
            for (std::size_t i = 0; i < left.size(); ++i) share += left[i] * basis.at[k][i];
            share /= basis.squares[k];
            shares[k] += share;
            for (std::size_t i = 0; i < left.size(); ++i) left[i] -= share * basis.at[k][i];
        }
    return shares;
}

void markOutliers(Fit& fit, long double squares, bool exact)
{
    const std::size_t n = fit.residuals.size();
    fit.studentized.assign(n, 0);
    if (fit.freedom < 2 || exact) return;
    const double limit = studentFactor(1 - 0.05 / static_cast<double>(n), fit.freedom - 1);
    for (std::size_t i = 0; i < n; ++i) {
        const long double free = 1 - static_cast<long double>(fit.leverages[i]);
        if (free <= 1e-12L) continue;  // this pair alone holds the curve: it cannot be compared with the others
        const long double own = static_cast<long double>(fit.residuals[i]) * fit.residuals[i] / free;
        const long double others = std::max(squares - own, 0.0L) / (fit.freedom - 1);
        const double value =
            others > 0 ? static_cast<double>(std::sqrt(own / others)) : std::numeric_limits<double>::infinity();
        fit.studentized[i] = std::copysign(value, fit.residuals[i]);
        if (value > limit) fit.outliers.push_back(i);
    }
}

Result<Done> usable(std::span<const Pair> pairs, std::size_t degree, double confidence)
{
    const std::string wanted = std::to_string(degree + 2);
    if (!(confidence > 0 && confidence < 1))
        return refuse("regression.confidence", "fit", {"A confidence lies between 0 and 1."}, {"0.95 is usual."});
    std::set<double> places;
    for (const Pair& pair : pairs) {
        if (!std::isfinite(pair.x) || !std::isfinite(pair.y))
            return refuse("regression.not_finite", "fit", {"One of the readings is not a number."},
                          {"Leave it out or read it again."});
        places.insert(pair.x);
    }
    if (pairs.size() < degree + 2)
        return refuse("regression.too_few", "fit",
                      {"%1 readings are too few for this curve.", {std::to_string(pairs.size())}},
                      {"Take at least %1.", {wanted}});
    if (places.size() < degree + 1)
        return refuse("regression.no_spread", "fit", {"The readings were taken at too few different settings."},
                      {"Read at %1 settings or more, well apart.", {std::to_string(degree + 1)}});
    return Done{};
}

}  // namespace

double Fit::at(double x) const noexcept
{
    double y = 0;
    for (std::size_t j = coefficients.size(); j-- > 0;) y = y * x + coefficients[j].value;
    return y;
}

double studentFactor(double confidence, int freedom) noexcept
{
    if (!(confidence > 0 && confidence < 1) || freedom < 1) return std::numeric_limits<double>::quiet_NaN();
    return -stats::studentQuantile((1 - confidence) / 2, freedom);
}

Result<Fit> fitPolynomial(std::span<const Pair> pairs, std::size_t degree, double confidence)
{
    if (const auto can = usable(pairs, degree, confidence); !can) return can.error();
    const std::size_t n = pairs.size();
    const auto [least, most] =
        std::minmax_element(pairs.begin(), pairs.end(), [](const Pair& a, const Pair& b) { return a.x < b.x; });
    const long double low = least->x;
    const long double high = most->x;
    const Scale scale{(low + high) / 2, high > low ? (high - low) / 2 : 1};
    const Basis basis = basisOver(pairs, degree, scale);

    Row left(n);
    long double mean = 0;
    for (std::size_t i = 0; i < n; ++i) mean += pairs[i].y;
    mean /= static_cast<long double>(n);
    long double spread = 0;
    for (std::size_t i = 0; i < n; ++i) {
        left[i] = pairs[i].y;
        spread += (pairs[i].y - mean) * (pairs[i].y - mean);
    }
    const Row shares = project(basis, left);
    long double squares = 0;
    for (const long double r : left) squares += r * r;

    Fit fit;
    fit.freedom = static_cast<int>(n - degree - 1);
    const long double variance = squares / fit.freedom;
    fit.residualSd = static_cast<double>(std::sqrt(variance));
    fit.rSquared = spread > 0 ? static_cast<double>(1 - squares / spread) : 1;
    const double factor = studentFactor(confidence, fit.freedom);
    for (std::size_t j = 0; j <= degree; ++j) {
        long double value = 0;
        long double own = 0;
        for (std::size_t k = j; k <= degree; ++k) {
            value += shares[k] * basis.powers[k][j];
            own += basis.powers[k][j] * basis.powers[k][j] / basis.squares[k];
        }
        const auto b = static_cast<double>(value);
        const auto error = static_cast<double>(std::sqrt(own * variance));
        fit.coefficients.push_back({b, error, {b - factor * error, b + factor * error}});
    }
    for (std::size_t i = 0; i < n; ++i) {
        long double leverage = 0;
        for (std::size_t k = 0; k <= degree; ++k) leverage += basis.at[k][i] * basis.at[k][i] / basis.squares[k];
        fit.leverages.push_back(static_cast<double>(leverage));
        fit.residuals.push_back(static_cast<double>(left[i]));
    }
    // Residuals that are no more than the rounding of y have nothing to tell.
    const long double rounding = std::numeric_limits<double>::epsilon() * static_cast<long double>(n);
    const long double size = spread + mean * mean * static_cast<long double>(n);
    markOutliers(fit, squares, squares <= rounding * rounding * size);
    return fit;
}

Result<Fit> fitLine(std::span<const Pair> pairs, double confidence) { return fitPolynomial(pairs, 1, confidence); }

}  // namespace taut::physics
