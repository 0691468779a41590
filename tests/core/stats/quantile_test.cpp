// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/quantile.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <limits>
#include <numbers>
#include <utility>

using namespace taut::stats;

namespace {

const double kShares[] = {1e-6, 0.001, 0.025, 0.05, 0.5, 0.9, 0.975, 0.999, 1 - 1e-6};

}  // namespace

TEST_CASE("quantiles are those of the closed forms where there are any")
{
    for (const double p : kShares) {
        CAPTURE(p);
        CHECK(chiSquareQuantile(p, 2) == Approx(-2 * std::log1p(-p)).epsilon(1e-9));
        CHECK(studentQuantile(p, 1) == Approx(std::tan(std::numbers::pi * (p - 0.5))).epsilon(1e-9).margin(1e-12));
        CHECK(studentQuantile(p, 2) == Approx((2 * p - 1) / std::sqrt(2 * p * (1 - p))).epsilon(1e-9).margin(1e-12));
        CHECK(fQuantile(p, 2, 2) == Approx(p / (1 - p)).epsilon(1e-8));
        CHECK(betaQuantile(p, 3, 1) == Approx(std::cbrt(p)).epsilon(1e-9));
        CHECK(betaQuantile(p, 1, 4) == Approx(1 - std::pow(1 - p, 0.25)).epsilon(1e-8));
        CHECK(0.5 * std::erfc(-normalQuantile(p) / std::numbers::sqrt2) == Approx(p).epsilon(1e-10));
    }
}

TEST_CASE("far out on either side a quantile keeps its digits")
{
    for (const double p : {1e-12, 1 - 1e-12}) {
        CAPTURE(p);
        CHECK(chiSquareQuantile(p, 2) == Approx(-2 * std::log1p(-p)).epsilon(1e-9));
        CHECK(fQuantile(p, 2, 2) == Approx(p / (1 - p)).epsilon(1e-9));
        CHECK(studentQuantile(p, 2) == Approx((2 * p - 1) / std::sqrt(2 * p * (1 - p))).epsilon(1e-9));
    }
}

TEST_CASE("quantiles of one distribution follow from those of another")
{
    for (const double p : {0.6, 0.9, 0.975, 0.999})
        for (const double freedom : {1.0, 3.0, 11.685, 19.0, 240.0}) {
            CAPTURE(p, freedom);
            const double t = studentQuantile(p, freedom);
            CHECK(fQuantile(2 * p - 1, 1, freedom) == Approx(t * t).epsilon(1e-7));
            const double f = fQuantile(p, freedom, 7);
            CHECK(betaQuantile(p, freedom / 2, 3.5) == Approx(freedom * f / (freedom * f + 7)).epsilon(1e-7));
            const double z = normalQuantile(p);
            CHECK(chiSquareQuantile(2 * p - 1, 1) == Approx(z * z).epsilon(1e-7));
        }
}

TEST_CASE("there is a quantile for every freedom that a shop's history can have, and it rises with its share")
{
    for (const double freedom : {0.5, 1.0, 2.5, 9.0, 19.0, 61.3, 500.0, 1e4, 1e6}) {
        double chi = 0;
        double t = -std::numeric_limits<double>::infinity();
        double f = 0;
        double beta = 0;
        for (const double p : kShares) {
            CAPTURE(freedom, p);
            CHECK(chiSquareQuantile(p, freedom) > std::exchange(chi, chiSquareQuantile(p, freedom)));
            CHECK(studentQuantile(p, freedom) > std::exchange(t, studentQuantile(p, freedom)));
            CHECK(fQuantile(p, freedom, 12) > std::exchange(f, fQuantile(p, freedom, 12)));
            CHECK(betaQuantile(p, freedom, 12) > std::exchange(beta, betaQuantile(p, freedom, 12)));
        }
    }
}

TEST_CASE("outside their ranges quantiles are not a number, and nothing ends the program")
{
    for (const double p : {0.0, 1.0, -0.1, 1.1, std::numeric_limits<double>::quiet_NaN()}) {
        CAPTURE(p);
        CHECK(std::isnan(normalQuantile(p)));
        CHECK(std::isnan(chiSquareQuantile(p, 3)));
        CHECK(std::isnan(studentQuantile(p, 3)));
        CHECK(std::isnan(fQuantile(p, 3, 4)));
        CHECK(std::isnan(betaQuantile(p, 3, 4)));
    }
    for (const double freedom :
         {0.0, -1.0, std::numeric_limits<double>::infinity(), std::numeric_limits<double>::quiet_NaN()}) {
        CAPTURE(freedom);
        CHECK(std::isnan(chiSquareQuantile(0.5, freedom)));
        CHECK(std::isnan(studentQuantile(0.5, freedom)));
        CHECK(std::isnan(fQuantile(0.5, freedom, 4)));
        CHECK(std::isnan(fQuantile(0.5, 4, freedom)));
        CHECK(std::isnan(betaQuantile(0.5, freedom, 4)));
        CHECK(std::isnan(betaQuantile(0.5, 4, freedom)));
    }
}

TEST_CASE("the two sides of a normal distribution make one, and the far one keeps its digits")
{
    CHECK(normalBelow(1.5) + normalAbove(1.5) == Approx(1).epsilon(1e-14));
    CHECK(normalAbove(9) == Approx(0.5 * std::erfc(9 / std::numbers::sqrt2)).epsilon(1e-10));
}
