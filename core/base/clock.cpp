// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/clock.h"

// NOLINTNEXTLINE(modernize-deprecated-headers): localtime_r and clock_gettime are POSIX's, which has them there alone
#include <time.h>

#include <array>
#include <cassert>
#include <chrono>
#include <cstdlib>

namespace taut {

namespace {

constexpr std::int64_t kMsPerDay = 86'400'000;

void appendPadded(std::string& out, std::int64_t n, std::size_t width)
{
    const std::string digits = std::to_string(n);
    if (digits.size() < width) out.append(width - digits.size(), '0');
    out += digits;
}

/// The fixed-width number at an index; -1 unless every character is a digit.
int digitsAt(std::string_view text, std::size_t at, std::size_t width)
{
    int n = 0;
    for (const char c : text.substr(at, width)) {
        if (c < '0' || c > '9') return -1;
        n = n * 10 + (c - '0');
    }
    return n;
}

}  // namespace

Instant SystemClock::now() const
{
    const auto sinceEpoch = std::chrono::system_clock::now().time_since_epoch();
    Instant instant{std::chrono::floor<std::chrono::milliseconds>(sinceEpoch).count(), 0};
    const auto seconds = static_cast<time_t>(std::chrono::floor<std::chrono::seconds>(sinceEpoch).count());
    tm local{};
    if (localtime_r(&seconds, &local) != nullptr) instant.offsetMinutes = static_cast<int>(local.tm_gmtoff / 60);
    return instant;
}

Instant SteppedClock::now() const
{
    const Instant present = m_now;
    m_now.utcMs += m_stepMs;
    m_steadyMs += m_stepMs;
    return present;
}

std::int64_t SystemClock::steadyMs() const
{
    timespec now{};
    if (clock_gettime(CLOCK_BOOTTIME, &now) != 0) return 0;
    return std::int64_t{now.tv_sec} * 1000 + now.tv_nsec / 1'000'000;
}

ClockLook look(const Clock& clock)
{
    const std::int64_t steady = clock.steadyMs();
    return {clock.now().utcMs, steady};
}

std::optional<std::int64_t> clockSetBy(const ClockLook& before, const ClockLook& now)
{
    constexpr std::int64_t kMostBack = 2000, kMostForward = 60'000;
    const std::int64_t by = (now.utcMs - before.utcMs) - (now.steadyMs - before.steadyMs);
    if (by >= -kMostBack && by <= kMostForward) return std::nullopt;
    return by;
}

std::string utcText(std::int64_t utcMs)
{
    std::int64_t day = utcMs / kMsPerDay;
    std::int64_t ms = utcMs % kMsPerDay;
    if (ms < 0) {
        ms += kMsPerDay;
        --day;
    }
    const std::chrono::year_month_day date{std::chrono::sys_days{std::chrono::days{day}}};
    assert(int{date.year()} >= 0 && int{date.year()} <= 9999);
    std::string text;
    appendPadded(text, int{date.year()}, 4);
    text += '-';
    appendPadded(text, unsigned{date.month()}, 2);
    text += '-';
    appendPadded(text, unsigned{date.day()}, 2);
    text += 'T';
    appendPadded(text, ms / 3'600'000, 2);
    text += ':';
    appendPadded(text, ms / 60'000 % 60, 2);
    text += ':';
    appendPadded(text, ms / 1000 % 60, 2);
    text += '.';
    appendPadded(text, ms % 1000, 3);
    text += 'Z';
    return text;
}

std::string offsetText(int minutes)
{
    const int size = std::abs(minutes);
    std::string text(1, minutes < 0 ? '-' : '+');
    appendPadded(text, size / 60, 2);
    text += ':';
    appendPadded(text, size % 60, 2);
    return text;
}

std::optional<int> readOffset(std::string_view text)
{
    const auto digit = [&](std::size_t i) { return text[i] >= '0' && text[i] <= '9' ? text[i] - '0' : -1; };
    if (text.size() != 6 || (text[0] != '+' && text[0] != '-') || text[3] != ':') return std::nullopt;
    const std::array d{digit(1), digit(2), digit(4), digit(5)};
    for (const int one : d)
        if (one < 0) return std::nullopt;
    // No clock is set further from UTC: what lies beyond would be written as another text than was read.
    constexpr int kMostHours = 24, kMostTens = 5;
    if (d[0] * 10 + d[1] > kMostHours || d[2] > kMostTens) return std::nullopt;
    const int minutes = (d[0] * 10 + d[1]) * 60 + d[2] * 10 + d[3];
    return text[0] == '-' ? -minutes : minutes;
}

Result<std::int64_t> readUtc(std::string_view text)
{
    const Finding wrong = refuse("clock.not_a_time", {}, {"\"%1\" is not a time in UTC.", {std::string(text)}},
                                 "Write it like 2026-11-25T06:41:03.120Z.");
    constexpr std::string_view kShape = "0000-00-00T00:00:00.000Z";
    if (text.size() != kShape.size()) return wrong;
    for (std::size_t i = 0; i < kShape.size(); ++i)
        if (kShape[i] != '0' && kShape[i] != text[i]) return wrong;
    const int year = digitsAt(text, 0, 4);
    const int month = digitsAt(text, 5, 2);
    const int day = digitsAt(text, 8, 2);
    const int hour = digitsAt(text, 11, 2);
    const int minute = digitsAt(text, 14, 2);
    const int second = digitsAt(text, 17, 2);
    const int ms = digitsAt(text, 20, 3);
    if (year < 0 || month < 0 || day < 0 || hour < 0 || minute < 0 || second < 0 || ms < 0) return wrong;
    if (hour > 23 || minute > 59 || second > 59) return wrong;
    const std::chrono::year_month_day date{std::chrono::year{year}, std::chrono::month{static_cast<unsigned>(month)},
                                           std::chrono::day{static_cast<unsigned>(day)}};
    if (!date.ok()) return wrong;
    const std::int64_t days = std::chrono::sys_days{date}.time_since_epoch().count();
    return days * kMsPerDay + ((hour * 60 + minute) * 60 + second) * std::int64_t{1000} + ms;
}

}  // namespace taut
