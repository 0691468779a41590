// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <vector>

#include "core/run/run.h"

namespace taut::run {

// What the times of the answers tell whoever looks a run through. Nothing of it is stored and nothing is ever refused
// for it: it is read from the events, each of which says to the millisecond when it happened.

/// Nobody reads a card, looks where it sends them and says so in less (proposal, no source).
inline constexpr std::int64_t kLeastAnswerMs = 2000;
/// Nobody reads an instrument and types what it says in less (proposal, no source).
inline constexpr std::int64_t kLeastReadingMs = 3000;
/// One quick answer is a thing seen in passing; so many one after the other are a habit (proposal, no source).
inline constexpr std::size_t kQuickInARow = 3;

/// Of the time that a movement takes by its target: done in less, it was not done as the step says (proposal).
inline constexpr double kLeastOfMovement = 0.5;

/// Something in the times of a run that a supervisor should look at.
struct Haste {
    enum class What : std::uint8_t {
        Quick,     ///< answers one after the other, each given sooner than anybody can look
        CutShort,  ///< a step answered before the time was over for which it is to be watched, or which it takes
    };
    What what{};
    std::vector<StepId> steps;  ///< as they were answered; one when it was cut short
    std::uint64_t n = 0;        ///< the event of the last of them
    std::int64_t tookMs = 0;    ///< at most: from when the first of them could be answered
    std::int64_t leastMs = 0;   ///< what they take at least; of a movement what it takes
};
/// In the order of the events. An answer counts from when it could first be given: the event before it that was no
/// note. At a place where things are done first and confirmed then, what was confirmed in one go counts together. Not
/// looked at: corrections, what is only said again, what may be done before its stage, and what the PC's clock was set
/// under.
[[nodiscard]] std::vector<Haste> hasteOf(const Run& run);

}  // namespace taut::run
