// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/inputs/find_constant.h"

#include <cmath>

#include <catch2/catch.hpp>

#include "core/base/file.h"
#include "core/inputs/inputs.h"

using namespace taut;
using namespace taut::inputs;

namespace {

Pull pull(double bar, double newton)
{
    return {Quantity(bar * 1e5, Kind::Pressure, "bar"), Quantity(newton, Kind::Force, "N")};
}
PullInstruments scale(double newton, double bar = 0)
{
    PullInstruments out{Quantity(newton, Kind::Force, "N"), {}};
    if (bar > 0) out.setting = Quantity(bar * 1e5, Kind::Pressure, "bar");
    return out;
}
std::string codeOf(const Result<Constant>& found) { return found ? "found" : found.error().code; }

}  // namespace

// NIST StRD: Statistical Reference Datasets, Linear Regression, Norris, certified values (slope 1.00211681802045,
// standard deviation 0.429796848199937E-03, intercept -0.262323073774029). Student's t for 34 degrees of freedom, two
// sided 95 %: 2.0322445 (any table of t; from memory). On a roll of 2 m the torque is the force.
TEST_CASE("torque per setting and its doubt are those of a certified straight line", "[constant]")
{
    const std::vector<std::pair<double, double>> norris = {
        {0.2, 0.1},     {337.4, 338.8}, {118.2, 118.1}, {884.6, 888.0}, {10.1, 9.2},    {226.5, 228.1},
        {666.3, 668.5}, {996.3, 998.5}, {448.6, 449.1}, {777.0, 778.9}, {558.2, 559.2}, {0.4, 0.3},
        {0.6, 0.1},     {775.5, 778.1}, {666.9, 668.8}, {338.0, 339.3}, {447.5, 448.9}, {11.6, 10.8},
        {556.0, 557.7}, {228.1, 228.3}, {995.8, 998.0}, {887.6, 888.8}, {120.2, 119.6}, {0.3, 0.3},
        {0.3, 0.6},     {556.8, 557.6}, {339.1, 339.3}, {887.2, 888.0}, {999.0, 998.5}, {779.0, 778.9},
        {11.1, 10.2},   {118.3, 117.6}, {229.2, 228.9}, {669.1, 668.4}, {448.9, 449.2}, {0.5, 0.2}};
    std::vector<Pull> pulls;
    for (const auto& [x, y] : norris) pulls.push_back({Quantity(x, Kind::Pressure, "Pa"), Quantity(y, Kind::Force)});
    const auto found = constantOf(Length::si(2), pulls, scale(0));
    REQUIRE(found);
    CHECK(found->torquePerSetting.si() == Approx(1.00211681802045).epsilon(1e-12));
    CHECK(found->zeroSetting.si() == Approx(0.262323073774029 / 1.00211681802045).epsilon(1e-10));
    CHECK(found->torqueUncertainty == Approx(2.0322445 * 0.429796848199937E-03 / 1.00211681802045).epsilon(1e-7));
    CHECK(found->byScatter);
    // Where the line is nought, by the scatter alone: t s / b sqrt(1/n + (x0 - mean)^2 / Sxx), with the certified s;
    // Sxx from (s / standard deviation of the slope)^2.
    const double sxx = std::pow(0.884796396144373 / 0.429796848199937E-03, 2);
    double mean = 0;
    for (const auto& [x, y] : norris) mean += x / 36;
    const double off = found->zeroSetting.si() - mean;
    CHECK(
        found->zeroUncertainty.si() ==
        Approx(2.0322445 * 0.884796396144373 / 1.00211681802045 * std::sqrt(1.0 / 36 + off * off / sxx)).epsilon(1e-7));
}

TEST_CASE("two pulls give the line between them, as well as scale and gauge can be read", "[constant]")
{
    // 12 N m/bar from 0.15 bar on, on a roll of 400 mm: F = 60 (s - 0.15) N with s in bar.
    const std::vector<Pull> pulls{pull(1, 51), pull(3, 171)};
    const auto found = constantOf(Length::si(0.4), pulls, scale(1));
    REQUIRE(found);
    CHECK(found->torquePerSetting.si() * 1e5 == Approx(12));
    CHECK(found->torquePerSetting.unit().str() == "N m/bar");
    CHECK(found->zeroSetting.si() / 1e5 == Approx(0.15));
    // Each of two readings is off by 1 N in 120 N: sqrt 2 of it.
    CHECK(found->torqueUncertainty == Approx(std::sqrt(2.0) / 120));
    CHECK_FALSE(found->byScatter);
    const auto gauge = constantOf(Length::si(0.4), pulls, scale(0, 0.1));
    REQUIRE(gauge);
    CHECK(gauge->torqueUncertainty == Approx(std::sqrt(2.0) * 0.1 / 2));
    // In psi the constant is per psi.
    const std::vector<Pull> us{{Quantity(1e5, Kind::Pressure, "psi"), Quantity(51, Kind::Force)},
                               {Quantity(3e5, Kind::Pressure, "psi"), Quantity(171, Kind::Force)}};
    CHECK(constantOf(Length::si(0.4), us, scale(1))->torquePerSetting.unit().str() == "N m/psi");
}

TEST_CASE("pulls that tell no constant are refused with the reason", "[constant]")
{
    const Length d = Length::si(0.4);
    const auto code = [&](std::vector<Pull> pulls) { return codeOf(constantOf(d, pulls, scale(1))); };
    CHECK(code({pull(1, 50)}) == "constant.too_few");
    CHECK(code({pull(1, 50), pull(1, 52)}) == "constant.no_spread");
    CHECK(code({pull(1, 50), pull(2, 0)}) == "constant.not_a_pull");
    CHECK(code({pull(1, 50), pull(3, 40)}) == "constant.no_torque");
    CHECK(code({pull(1, 50), pull(3, 50)}) == "constant.no_torque");
    CHECK(code({pull(1, 100), pull(2, 150)}) == "constant.pulls_unset");
    CHECK(code({pull(1, 50), pull(1.01, 51)}) == "constant.scatter");
    CHECK(code({pull(1, 50), {Quantity(0.5, Kind::Share, "%"), Quantity(90, Kind::Force)}}) ==
          "constant.settings_differ");
    CHECK(codeOf(constantOf(Length::si(0), std::vector{pull(1, 50), pull(3, 171)}, scale(1))) == "constant.not_a_pull");
    // Below nought by no more than reading explains: nought, and the line goes through it.
    const auto near = constantOf(d, std::vector{pull(1, 60.4), pull(3, 180)}, scale(2));
    REQUIRE(near);
    CHECK(near->zeroSetting.si() == 0);
    CHECK(near->torquePerSetting.si() * 1e5 == Approx((60.4 + 3 * 180) * 0.2 / 10));
}

TEST_CASE("what was found goes into the press's file and nothing else changes", "[constant]")
{
    const std::string text = *readFile(std::string(TAUTWEB_SOURCE_DIR) + "/resources/presses/north.toml");
    const auto found = constantOf(Length::si(0.4), std::vector{pull(1, 51), pull(2, 113), pull(3, 175)}, scale(1));
    REQUIRE(found);
    const auto edited = withConstant(text, "unwind", *found);
    REQUIRE(edited);
    Findings notes;
    const auto before = readPress(text, "n", notes), after = readPress(*edited, "n", notes);
    CHECK(notes.empty());
    const Zone& zone = *after->zone("unwind");
    CHECK(zone.torquePerSetting->si() == Approx(found->torquePerSetting.si()).epsilon(1e-3));
    CHECK(zone.zeroSetting->si() == Approx(found->zeroSetting.si()).epsilon(1e-2));
    CHECK(*zone.torqueUncertainty >= found->torqueUncertainty);
    CHECK(*zone.torqueUncertainty < found->torqueUncertainty + 0.001);
    CHECK(*after->zone("rewind")->torquePerSetting == *before->zone("rewind")->torquePerSetting);
    // Line by line: one is new, two are other, all others stay.
    std::size_t lines = 0;
    for (std::size_t at = 0; at < text.size(); at = text.find('\n', at) + 1) {
        const std::string line = text.substr(at, text.find('\n', at) - at);
        if (edited->find(line) == std::string::npos) ++lines;
    }
    CHECK(lines == 2);
    CHECK(withConstant(text, "attic", *found).error().code == "constant.no_zone");
}

TEST_CASE("a setting beyond where its control can be set is refused, whichever pull it is", "[constant]")
{
    PullInstruments to6 = scale(1);
    to6.least = Quantity(0.3e5, Kind::Pressure, "bar");
    to6.most = Quantity(6e5, Kind::Pressure, "bar");
    const Pull one = pull(1, 51), three = pull(3, 181), nine = pull(9, 500), low = pull(0.2, 10);
    const auto with = [&](const Pull& a, const Pull& b) {
        const Pull both[] = {a, b};
        return constantOf(Length::si(0.4), both, to6);
    };
    CHECK(codeOf(with(one, three)) == "found");
    CHECK(codeOf(with(one, pull(6, 400))) == "found");
    CHECK(codeOf(with(one, nine)) == "constant.beyond_control");
    CHECK(codeOf(with(low, three)) == "constant.beyond_control");
    const Pull alone[] = {nine};
    CHECK(codeOf(constantOf(Length::si(0.4), alone, to6)) == "constant.beyond_control");
    const Pull ampere[] = {{Quantity(1, Kind::Current, "A"), Quantity(50, Kind::Force, "N")},
                           {Quantity(3, Kind::Current, "A"), Quantity(150, Kind::Force, "N")}};
    CHECK(codeOf(constantOf(Length::si(0.4), ampere, to6)) == "constant.settings_differ");
    CHECK(codeOf(constantOf(Length::si(0.4), ampere, scale(1))) == "found");
}
