// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <limits>

#include "core/physics/regression.h"

using namespace taut::physics;

TEST_CASE("a fit says why it cannot be made")
{
    const std::vector<Pair> two = {{1, 1}, {2, 2}};
    CHECK(fitLine(two).error().code == "regression.too_few");
    const std::vector<Pair> upright = {{1, 1}, {1, 2}, {1, 3}};
    CHECK(fitLine(upright).error().code == "regression.no_spread");
    const std::vector<Pair> broken = {{1, 1}, {2, std::numeric_limits<double>::quiet_NaN()}, {3, 3}};
    CHECK(fitLine(broken).error().code == "regression.not_finite");
    const std::vector<Pair> three = {{1, 1}, {2, 2}, {3, 4}};
    CHECK(fitLine(three, 1).error().code == "regression.confidence");
    CHECK(fitPolynomial(three, 2).error().code == "regression.too_few");
}

TEST_CASE("readings that lie on a line give that line without scatter and mark nothing")
{
    std::vector<Pair> pairs;
    for (int i = 0; i < 6; ++i) pairs.push_back({1e6 + i * 0.1, 0.15 + 12 * (i * 0.1)});
    const auto fit = fitLine(pairs);
    REQUIRE(fit);
    CHECK(fit->coefficients[1].value == Approx(12).epsilon(1e-9));
    CHECK(fit->residualSd < 1e-9);
    CHECK(fit->outliers.empty());
    CHECK(fit->at(1e6 + 0.25) == Approx(3.15).epsilon(1e-6));
}

TEST_CASE("one wrong reading among many is marked, and the line is still that of all")
{
    std::vector<Pair> pairs;
    const double scatter[] = {0.01, -0.02, 0.015, -0.01, 0.02, -0.015, 0.005, -0.005, 0.01, -0.01};
    for (int i = 0; i < 10; ++i) pairs.push_back({0.5 * i, 0.2 + 3 * 0.5 * i + scatter[i]});
    pairs[6].y += 1;
    const auto fit = fitLine(pairs);
    REQUIRE(fit);
    REQUIRE(fit->outliers == std::vector<std::size_t>{6});
    CHECK(fit->residuals.size() == 10);
    double sum = 0;
    for (const double r : fit->residuals) sum += r;
    CHECK(sum == Approx(0).margin(1e-12));
}

TEST_CASE("leverages add up to the number of coefficients")
{
    const std::vector<Pair> pairs = {{0, 1}, {1, 1.9}, {2, 3.2}, {5, 6.1}, {11, 12.2}};
    for (const std::size_t degree : {1U, 2U, 3U}) {
        const auto fit = fitPolynomial(pairs, degree);
        REQUIRE(fit);
        double sum = 0;
        for (const double h : fit->leverages) sum += h;
        CHECK(sum == Approx(static_cast<double>(degree + 1)));
    }
}
