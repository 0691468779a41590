// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.h"
#include "core/practice/fault.h"
#include "core/procedure/plan.h"
#include "core/stats/agreement.h"

namespace taut::practice {

/// A step that counts in an attempt.
struct Item {
    std::string step;
    int weight = 1;  ///< 3 of a vital step, 2 of something measured, 1 of any other
    bool vital = false;
    std::size_t rank = 0;  ///< in which order it comes; alike within a place whose steps are done and then confirmed
    friend bool operator==(const Item&, const Item&) = default;
};
/// Every step of a plan, or of these stages and places of it ("splice", "threading.lift"; none = all).
[[nodiscard]] std::vector<Item> itemsOf(const procedure::Plan& plan, std::span<const std::string> parts = {});
/// Whether a step is of this stage or place.
[[nodiscard]] bool isOf(std::string_view step, std::string_view part);

/// What became of an item. Left: not answered, or not as it has to be. Contradicted: said, and the press was otherwise.
enum class Fate : std::uint8_t { Left, Done, Contradicted };
struct Outcome {
    std::string step;
    Fate fate = Fate::Left;
    bool hinted = false;      ///< help was asked for, or the contradiction was shown before it was put right
    bool outOfOrder = false;  ///< had to be moved for the order to be right
    friend bool operator==(const Outcome&, const Outcome&) = default;
};
/// Which of these, given in the order in which they were done, have to be moved for the order to be right: as few as
/// possible, the rest stands in rising rank.
[[nodiscard]] std::vector<bool> movedOf(std::span<const std::size_t> ranks);

/// What an attempt comes to. How long anything took is no part of it.
struct Score {
    double earned = 0, total = 0;
    std::vector<std::string> vitalMissed;  ///< steps; one of them is enough for "not yet", whatever was earned
    int hints = 0, orderErrors = 0;
    [[nodiscard]] double share() const { return total > 0 ? earned / total : 0; }
    [[nodiscard]] bool passed() const;
    friend bool operator==(const Score&, const Score&) = default;
};
inline constexpr double kPass = 0.9;
/// A hint halves an item, the wrong order takes half a point of it, nothing goes below nought. An item without an
/// outcome was left; an outcome of no item counts nothing.
[[nodiscard]] Score scoreOf(std::span<const Item> items, std::span<const Outcome> outcomes);
/// "passed" or "not_yet".
[[nodiscard]] const char* resultWord(const Score& score) noexcept;

/// What of that which was not right was named, and what was named in vain.
struct Detection {
    std::size_t hits = 0, misses = 0, falseAlarms = 0;
    std::size_t healthy = 0;  ///< what might have been wrong and was not
    Detection& operator+=(const Detection& other);
    /// Codes of stats::sensitivityOf.
    [[nodiscard]] Result<stats::Sensitivity> sensitivity() const;
    friend bool operator==(const Detection&, const Detection&) = default;
};
[[nodiscard]] Detection detectionOf(const inputs::Press& press, std::span<const Fault> faults,
                                    std::span<const Suspect> named);

/// One attempt at a test, as the rule of the row sees it.
struct Tried {
    bool passed = false;
    std::vector<Fault> faults;
};
inline constexpr std::size_t kInARow = 3;
/// How many of the last tries, oldest first, were passed in a row, each with other faults than the rest; a try with
/// nothing to find neither counts nor breaks the row. At kInARow somebody is ready to be observed at a press.
[[nodiscard]] std::size_t inARow(std::span<const Tried> tries);

}  // namespace taut::practice
