// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <span>
#include <string_view>
#include <vector>

#include "core/base/text.h"

// Run rules: patterns that a process in control seldom makes. Western Electric, Statistical Quality Control Handbook,
// 1956; L. S. Nelson, The Shewhart control chart: tests for special causes, J. Quality Technology 16 (1984) 237. Both
// are known here from others who tell them. "Beyond" is strict: a point on a line is not beyond it, and two equal
// values break a trend (ISO 7870-2, from memory).
namespace taut::stats {

/// What a pattern is; a "side" is above or below the centre, sigma the chart's.
enum class Rule : std::uint8_t {
    BeyondThree,          ///< one point more than 3 sigma from the centre (both, the first)
    EightOneSide,         ///< Western Electric, the fourth
    NineOneSide,          ///< Nelson 2
    SixTrend,             ///< Nelson 3: each higher than the one before, or each lower
    FourteenAlternating,  ///< Nelson 4: up and down in turn
    TwoOfThreeBeyondTwo,  ///< Western Electric, the second; Nelson 5: more than 2 sigma out on one side
    FourOfFiveBeyondOne,  ///< Western Electric, the third; Nelson 6: more than 1 sigma out on one side
    FifteenWithinOne,     ///< Nelson 7: none more than 1 sigma out
    EightBeyondOne        ///< Nelson 8: all more than 1 sigma out, on both sides
};

/// The usual choice: Nelson 1 to 4. A false signal begins at fewer than one point of a hundred (Nelson, Interpreting
/// Shewhart X-bar control charts, J. Quality Technology 17 (1985) 114, as others quote it; so simulation finds).
inline constexpr std::array kNelsonUsual{Rule::BeyondThree, Rule::NineOneSide, Rule::SixTrend,
                                         Rule::FourteenAlternating};
/// Nelson 1 to 6: warns earlier, and falsely at one to two points of a hundred (the same).
inline constexpr std::array kNelsonEarly{
    Rule::BeyondThree,         Rule::NineOneSide,         Rule::SixTrend,
    Rule::FourteenAlternating, Rule::TwoOfThreeBeyondTwo, Rule::FourOfFiveBeyondOne};
/// All eight; the last two ask whether the chart mixes or averages several processes.
inline constexpr std::array kNelsonAll{Rule::BeyondThree,         Rule::NineOneSide,         Rule::SixTrend,
                                       Rule::FourteenAlternating, Rule::TwoOfThreeBeyondTwo, Rule::FourOfFiveBeyondOne,
                                       Rule::FifteenWithinOne,    Rule::EightBeyondOne};
/// The four of Western Electric.
inline constexpr std::array kWesternElectric{Rule::BeyondThree, Rule::TwoOfThreeBeyondTwo, Rule::FourOfFiveBeyondOne,
                                             Rule::EightOneSide};

/// A stable word for files ("nine_one_side").
[[nodiscard]] std::string_view idOf(Rule rule) noexcept;
/// What the pattern is, in words for people.
[[nodiscard]] Text nameOf(Rule rule);

/// One pattern, however long it went on: places where the rule holds are one signal as long as they share points. A
/// point that is out by itself is a signal of its own.
struct Signal {
    Rule rule{};
    int side = 0;                     ///< +1 above or rising, -1 below or falling, 0 where the rule has no side
    std::vector<std::size_t> fired;   ///< where the rule held, each the last point of a pattern
    std::vector<std::size_t> points;  ///< all points that make the patterns, in order
};

/// What the rules find in a series: by the first place where they fired, then by rule. Where sigma is 0 nothing is so
/// many sigma out, and only runs on one side, trends and alternation are looked for. `first` is added to every index.
[[nodiscard]] std::vector<Signal> signalsIn(std::span<const double> values, double centre, double sigma,
                                            std::span<const Rule> rules, std::size_t first = 0);

}  // namespace taut::stats
