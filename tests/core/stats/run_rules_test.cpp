// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/run_rules.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <set>

using namespace taut::stats;

namespace {

using Places = std::vector<std::size_t>;

/// Where one rule fires in values that are so many sigma out, counted from 1 as people do.
Places firedAt(Rule rule, const std::vector<double>& z)
{
    Places all;
    const Rule rules[] = {rule};
    for (const Signal& signal : signalsIn(z, 0, 1, rules))
        for (const std::size_t at : signal.fired) all.push_back(at + 1);
    std::sort(all.begin(), all.end());
    return all;
}
std::vector<Signal> signalsOf(Rule rule, const std::vector<double>& z)
{
    const Rule rules[] = {rule};
    return signalsIn(z, 0, 1, rules);
}

// Everything that one rule has in common with its mirror image.
std::vector<double> mirrored(std::vector<double> z)
{
    for (double& v : z) v = -v;
    return z;
}

}  // namespace

// The rules as Western Electric and Nelson have them (run_rules.h names both); the sequences are made up for them.

TEST_CASE("a point beyond three sigma fires, a point on the line does not")
{
    const std::vector<double> z = {0.2, -0.4, 3.0, 3.01, 0.1};
    CHECK(firedAt(Rule::BeyondThree, z) == Places{4});
    CHECK(firedAt(Rule::TwoOfThreeBeyondTwo, z) == Places{4});
    CHECK(firedAt(Rule::BeyondThree, mirrored(z)) == Places{4});
    const auto two = signalsOf(Rule::TwoOfThreeBeyondTwo, z);
    REQUIRE(two.size() == 1);
    CHECK(two[0].points == Places{2, 3});
    CHECK(two[0].side == 1);
}

TEST_CASE("runs on one side fire at eight and at nine")
{
    std::vector<double> z = {0.2, .1, .5, .3, .9, .4, .6, .2, .7};
    CHECK(firedAt(Rule::EightOneSide, z) == Places{8, 9});
    CHECK(firedAt(Rule::NineOneSide, z) == Places{9});
    CHECK(firedAt(Rule::NineOneSide, mirrored(z)) == Places{9});
    z.back() = -0.1;
    CHECK(firedAt(Rule::EightOneSide, z) == Places{8});
    CHECK(firedAt(Rule::NineOneSide, z).empty());
    z.back() = 0;  // on the centre is on neither side
    CHECK(firedAt(Rule::NineOneSide, z).empty());
}

TEST_CASE("six points that rise are a trend, and a tie breaks it")
{
    CHECK(firedAt(Rule::SixTrend, {-1.5, -.9, -.4, .1, .6, 1.2}) == Places{6});
    CHECK(firedAt(Rule::SixTrend, {1.5, .9, .4, -.1, -.6, -1.2}) == Places{6});
    CHECK(firedAt(Rule::SixTrend, {-1.5, -.9, -.4, .1, .6, .5}).empty());
    CHECK(firedAt(Rule::SixTrend, {-1.5, -.9, -.4, -.4, .6, 1.2}).empty());
}

TEST_CASE("fourteen points that alternate fire, thirteen do not, and a tie breaks them")
{
    std::vector<double> z;
    for (int i = 0; i < 7; ++i) z.insert(z.end(), {0.5, -0.5});
    CHECK(firedAt(Rule::FourteenAlternating, z) == Places{14});
    CHECK(firedAt(Rule::FourteenAlternating, mirrored(z)) == Places{14});
    std::vector<double> tied = z;
    tied[6] = tied[5];
    CHECK(firedAt(Rule::FourteenAlternating, tied).empty());
    z.pop_back();
    CHECK(firedAt(Rule::FourteenAlternating, z).empty());
}

TEST_CASE("two of three and four of five need not be neighbours, but are on one side")
{
    CHECK(firedAt(Rule::TwoOfThreeBeyondTwo, {0.1, 2.1, 0.3, 2.2, 0}) == Places{4});
    CHECK(firedAt(Rule::TwoOfThreeBeyondTwo, {0.1, 2.1, 0.3, -2.2, 0}).empty());
    CHECK(firedAt(Rule::TwoOfThreeBeyondTwo, {0.1, 2.1, 0.3, 0.4, 2.2}).empty());
    const std::vector<double> z = {1.2, 1.1, 0.2, 1.5, 1.3};
    CHECK(firedAt(Rule::FourOfFiveBeyondOne, z) == Places{5});
    CHECK(firedAt(Rule::FourOfFiveBeyondOne, {1.2, 1.1, 0.2, -1.5, 1.3}).empty());
    CHECK(firedAt(Rule::FourOfFiveBeyondOne, {1.2, 1.1, 0.2, 0.1, 1.5, 1.3}).empty());
    const auto signals = signalsOf(Rule::FourOfFiveBeyondOne, z);
    REQUIRE(signals.size() == 1);
    CHECK(signals[0].points == Places{0, 1, 3, 4});
}

TEST_CASE("fifteen within one sigma fire, and eight without on both sides")
{
    std::vector<double> z = {.3, -.6, .9, -.2, .1, -.9, .5, -.4, .8, -.7, .2, .6, -.3, -.1, .4};
    CHECK(firedAt(Rule::FifteenWithinOne, z) == Places{15});
    z[7] = 1;  // on the line is not beyond it
    CHECK(firedAt(Rule::FifteenWithinOne, z) == Places{15});
    z[7] = 1.01;
    CHECK(firedAt(Rule::FifteenWithinOne, z).empty());
    CHECK(firedAt(Rule::EightBeyondOne, {1.1, -1.2, 1.3, 1.4, -1.2, -1.7, 2.1, -1.4}) == Places{8});
    CHECK(firedAt(Rule::EightBeyondOne, {1.1, 1.2, 1.3, 1.4, 1.2, 1.7, 2.1, 1.4}).empty());
    CHECK(firedAt(Rule::EightBeyondOne, {1.1, -1.2, 1.3, 1.0, -1.2, -1.7, 2.1, -1.4}).empty());
}

TEST_CASE("what goes on is one signal, what comes again another")
{
    // Twelve above, one on the centre, nine above: two signals of nine on one side.
    std::vector<double> z(12, 0.4);
    z.push_back(0);
    z.insert(z.end(), 9, 0.4);
    const auto runs = signalsOf(Rule::NineOneSide, z);
    REQUIRE(runs.size() == 2);
    CHECK(runs[0].fired == Places{8, 9, 10, 11});
    CHECK(runs[0].points.size() == 12);
    CHECK(runs[1].fired == Places{21});
    CHECK(runs[1].points.front() == 13);
    // Up to a peak and down from it: they share the peak, and are two.
    const auto trends = signalsOf(Rule::SixTrend, {0, .1, .2, .3, .4, .5, .4, .3, .2, .1, 0});
    REQUIRE(trends.size() == 2);
    CHECK(trends[0].side == 1);
    CHECK(trends[1].side == -1);
    CHECK(trends[1].points.front() == 5);
    // Patterns that share but one point are one signal.
    const auto pairs = signalsOf(Rule::TwoOfThreeBeyondTwo, {2.1, 0, 2.2, 0, 2.3, 0, 0, 2.1, 2.2});
    REQUIRE(pairs.size() == 2);
    CHECK(pairs[0].fired == Places{2, 4});
    CHECK(pairs[0].points == Places{0, 2, 4});
    CHECK(pairs[1].points == Places{7, 8});
    // Two points that are out are two, neighbours or not.
    CHECK(signalsOf(Rule::BeyondThree, {3.5, 3.6, -3.7}).size() == 3);
}

TEST_CASE("signals come in the order in which they fired, with the indices of the whole")
{
    std::vector<double> z(9, 0.4);
    z.push_back(3.5);
    const auto all = signalsIn(z, 0, 1, kNelsonUsual, 100);
    REQUIRE(all.size() == 2);
    CHECK(all[0].rule == Rule::NineOneSide);
    CHECK(all[0].points.front() == 100);
    CHECK(all[0].fired == Places{108, 109});
    CHECK(all[1].rule == Rule::BeyondThree);
    CHECK(all[1].points == Places{109});
}

TEST_CASE("values that rounding alone sets apart lie on the centre")
{
    // Three times 0.1 is not 0.3 in binary: nine such are on no side of it.
    const std::vector<double> near(9, 0.1 + 0.2);
    CHECK(signalsIn(near, 0.3, 0.1, kNelsonAll).empty());
    // So is a point on the upper limit, reached by another sum: 0.7 + 3 x 0.1.
    const std::vector<double> limit{0.7 + 0.1 + 0.1 + 0.1};
    CHECK(signalsIn(limit, 0.7, 0.1, kNelsonAll).empty());
}

TEST_CASE("where sigma is nought only runs, trends and alternation can be told")
{
    CHECK(signalsIn(std::vector<double>(30, 5.0), 5, 0, kNelsonAll).empty());
    const auto shifted = signalsIn(std::vector<double>(9, 5.1), 5, 0, kNelsonAll);
    REQUIRE(shifted.size() == 1);
    CHECK(shifted[0].rule == Rule::NineOneSide);
}

TEST_CASE("the usual rules are Nelson's first four, and every rule has a word and a name of its own")
{
    CHECK(std::vector<Rule>(kNelsonUsual.begin(), kNelsonUsual.end()) ==
          std::vector<Rule>{Rule::BeyondThree, Rule::NineOneSide, Rule::SixTrend, Rule::FourteenAlternating});
    std::set<std::string_view> ids;
    std::set<std::string> names;
    for (int i = 0; i <= static_cast<int>(Rule::EightBeyondOne); ++i) {
        ids.insert(idOf(static_cast<Rule>(i)));
        names.insert(nameOf(static_cast<Rule>(i)).source.str());
    }
    CHECK(ids.size() == 9);
    CHECK(names.size() == 9);
    CHECK(ids.count("") + names.count("") == 0);
}
