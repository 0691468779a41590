// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/base/clock.h"

namespace taut::app::made {

/// Days since 1970-01-01 where the made shop stands.
using Day = std::int32_t;
inline constexpr std::int64_t kMinuteMs = 60'000;
inline constexpr std::int64_t kDayMs = kMinuteMs * 60 * 24;

/// "2026-11-27"; nullopt when it is no day.
[[nodiscard]] std::optional<Day> dayFrom(const std::string& text);
[[nodiscard]] std::string dayText(Day day);
/// The day so many years before, or the last one of that month.
[[nodiscard]] Day yearsBefore(Day day, int years);
/// Minutes after midnight of a day, where the shop stands: an hour before UTC, two in summer (from the last Sunday of
/// March to that of October, common practice, no source).
[[nodiscard]] Instant at(Day day, double minutes);
/// Monday to Friday, but for New Year's Day, the first of May, two weeks in August, and from Christmas Eve on.
[[nodiscard]] bool isWorked(Day day);

/// When a shift begins, in minutes after midnight; they last eight hours. 0 early, 1 late, 2 night: the night of a
/// Friday, and that before a day that is not worked, is not worked either.
inline constexpr int kShifts = 3, kNight = 2;
inline constexpr double kShiftMinutes = 8 * 60;
[[nodiscard]] constexpr double beginOfShift(int shift) { return 6 * 60 + shift * kShiftMinutes; }

}  // namespace taut::app::made
