// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/targets/book.h"

namespace taut::targets {

/// Which of the lengths that a roll may have is counted on, and what decided it.
struct LengthChoice {
    enum class Way : std::uint8_t { Label, Diameters, Mass };
    Way way{};
    bool fullRoll = false;  ///< the label says so much more than the diameters that it is that of the roll when full
};

/// What the label says holds for a roll that nobody has opened; after that geometry wins, and without it the mass
/// (practice).
[[nodiscard]] LengthChoice chooseLength(const Book& book);

/// roll.length and its two rivals, roll.lengths_apart, roll.caliper, the outer wraps, roll.usable and roll.run_time.
void stateRollLength(Book& book);

/// What the label says of the length, known as well as labels are; missing where there is none.
[[nodiscard]] Term labelLength(const Book& book);

}  // namespace taut::targets
