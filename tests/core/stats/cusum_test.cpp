// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/cusum.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <limits>

using namespace taut::stats;

namespace {

Cusum sums(const std::vector<double>& values, double centre = 0, double sigma = 1)
{
    auto of = cusumOf(values, centre, sigma);
    REQUIRE(of);
    return *std::move(of);
}
std::vector<double> level(std::size_t before, std::size_t moved, double by, std::size_t after = 0)
{
    const double about[] = {0.3, -0.4, 0.1, -0.2, 0.4, -0.2};  // together nought
    std::vector<double> values;
    for (std::size_t i = 0; i < before + moved + after; ++i)
        values.push_back(about[i % 6] + (i >= before && i < before + moved ? by : 0));
    return values;
}

}  // namespace

TEST_CASE("cumulative sums say why they cannot be made")
{
    const std::vector<double> values{1, 2, 3};
    CHECK(cusumOf(std::vector<double>{1, std::numeric_limits<double>::quiet_NaN()}, 0, 1).error().code ==
          "stats.not_finite");
    CHECK(cusumOf(values, std::numeric_limits<double>::infinity(), 1).error().code == "stats.not_finite");
    CHECK(cusumOf(values, 2, -1).error().code == "stats.spread");
    CHECK(cusumOf(values, 2, 0).error().code == "stats.spread");
    CHECK(cusumOf(values, 2, std::numeric_limits<double>::quiet_NaN()).error().code == "stats.spread");
    CHECK(cusumOf(values, 2, 1, {0, 5}).error().code == "stats.decision");
    CHECK(cusumOf(values, 2, 1, {0.5, 0}).error().code == "stats.decision");
    CHECK(cusumOf(values, 2, 1));
}

TEST_CASE("of nothing and of what stays there are sums and no move")
{
    CHECK(sums({}).moves.empty());
    CHECK(sums({}).up.empty());
    const Cusum calm = sums(level(60, 0, 0));
    CHECK(calm.up.size() == 60);
    CHECK(calm.moves.empty());
}

TEST_CASE("each sum takes the value less the centre and the slack, and is never below nought")
{
    const Cusum of = sums({11, 13, 9, 10, 7, 12}, 10, 2);
    CHECK(of.up == std::vector<double>{0, 2, 0, 0, 0, 1});
    CHECK(of.down == std::vector<double>{0, 0, 0, 0, 2, 0});
}

TEST_CASE("a sum on the decision has found nothing, one beyond it has")
{
    // Each value adds 2.5: two are on the decision of 5, three beyond it.
    CHECK(sums({3, 3}).moves.empty());
    const Cusum beyond = sums({0, 3, 3, 3});
    REQUIRE(beyond.moves.size() == 1);
    CHECK(beyond.moves[0].since == 1);
    CHECK(beyond.moves[0].found == 3);
}

TEST_CASE("a move is told with its side, its first point and that it stands")
{
    for (const int side : {1, -1}) {
        const Cusum of = sums(level(30, 20, 2.0 * side));
        REQUIRE(of.moves.size() == 1);
        CHECK(of.moves[0].side == side);
        CHECK(of.moves[0].since == 30);
        CHECK(of.moves[0].found > 30);
        CHECK(of.moves[0].found < 36);
        CHECK(of.moves[0].until == 49);
        CHECK(of.moves[0].stands);
    }
}

TEST_CASE("what came back has ended where it turned, however long it lasted")
{
    // Fifty points at three sigma make a sum of 125: at half a sigma a point it takes 250 points to fall to nought.
    const Cusum of = sums(level(30, 50, 3, 30));
    REQUIRE(of.moves.size() == 1);
    CHECK(of.moves[0].since == 30);
    CHECK(of.moves[0].until == 79);
    CHECK_FALSE(of.moves[0].stands);
    CHECK(of.up.back() < 1);
}

TEST_CASE("a second move is one of its own, also on the other side")
{
    std::vector<double> values = level(30, 20, 2, 30);
    const std::vector<double> again = level(0, 20, 2), down = level(0, 20, -2);
    values.insert(values.end(), again.begin(), again.end());
    values.insert(values.end(), down.begin(), down.end());
    const Cusum of = sums(values);
    REQUIRE(of.moves.size() == 3);
    CHECK(of.moves[0].since == 30);
    CHECK(of.moves[0].until == 49);
    CHECK(of.moves[1].since == 80);
    CHECK(of.moves[1].until == 99);
    CHECK(of.moves[2].since == 100);
    CHECK(of.moves[2].side == -1);
    CHECK(of.moves[2].stands);
    CHECK(std::is_sorted(of.moves.begin(), of.moves.end(), [](auto& a, auto& b) { return a.found < b.found; }));
}

TEST_CASE("unit and origin change no move")
{
    std::vector<double> values = level(30, 20, 2);
    for (double& v : values) v = 1e6 + 0.01 * v;
    const Cusum of = sums(values, 1e6, 0.01);
    REQUIRE(of.moves.size() == 1);
    CHECK(of.moves[0].since == 30);
    CHECK(of.up.back() == Approx(0.01 * sums(level(30, 20, 2)).up.back()).epsilon(1e-6));
}
