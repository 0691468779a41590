// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/made/calendar.h"

#include <algorithm>
#include <charconv>
#include <chrono>
#include <cmath>

namespace taut::app::made {

namespace {

using namespace std::chrono;

sys_days daysOf(Day day) { return sys_days(days(day)); }

std::optional<unsigned> numberIn(std::string_view text)
{
    unsigned value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc{} || end != text.data() + text.size()) return std::nullopt;
    return value;
}

bool isSummer(Day day)
{
    const year_month_day date(daysOf(day));
    const sys_days from(date.year() / March / Sunday[last]), until(date.year() / October / Sunday[last]);
    return daysOf(day) >= from && daysOf(day) < until;
}

}  // namespace

std::optional<Day> dayFrom(const std::string& text)
{
    constexpr std::size_t kLength = 10, kMonth = 5, kDay = 8;
    if (text.size() != kLength || text[kMonth - 1] != '-' || text[kDay - 1] != '-') return std::nullopt;
    const auto y = numberIn(text.substr(0, 4)), m = numberIn(text.substr(kMonth, 2)), d = numberIn(text.substr(kDay));
    if (!y || !m || !d) return std::nullopt;
    const year_month_day date(year(static_cast<int>(*y)), month(*m), day(*d));
    if (!date.ok()) return std::nullopt;
    return static_cast<Day>(sys_days(date).time_since_epoch().count());
}

std::string dayText(Day day) { return utcText(std::int64_t{day} * kDayMs).substr(0, 10); }

Day yearsBefore(Day day, int years)
{
    year_month_day date(daysOf(day));
    date -= std::chrono::years(years);
    if (!date.ok()) date = year_month_day(date.year() / date.month() / last);
    return static_cast<Day>(sys_days(date).time_since_epoch().count());
}

Instant at(Day day, double minutes)
{
    const int offset = isSummer(day) ? 120 : 60;
    return {std::int64_t{day} * kDayMs + static_cast<std::int64_t>(std::llround(minutes * kMinuteMs)) -
                offset * kMinuteMs,
            offset};
}

bool isWorked(Day day)
{
    const weekday weekday(daysOf(day));
    if (weekday == Saturday || weekday == Sunday) return false;
    const year_month_day date(daysOf(day));
    const unsigned m = static_cast<unsigned>(date.month()), d = static_cast<unsigned>(date.day());
    const bool newYear = m == 1 && d == 1, may = m == 5 && d == 1, summer = m == 8 && d <= 14,
               christmas = m == 12 && d >= 24;
    return !newYear && !may && !summer && !christmas;
}

}  // namespace taut::app::made
