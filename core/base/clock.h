// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "core/base/result.h"

namespace taut {

/// A moment: milliseconds since 1970-01-01 UTC and the local offset in minutes that held there.
struct Instant {
    std::int64_t utcMs{};
    int offsetMinutes{};
    friend bool operator==(const Instant&, const Instant&) = default;
};

inline constexpr std::int64_t kDayMs = 86'400'000;

/// The only way to the wall clock; tests and the practice press bring their own.
class Clock {
public:
    virtual ~Clock() = default;
    [[nodiscard]] virtual Instant now() const = 0;
    /// Milliseconds that nobody sets and that go on while the machine sleeps; where they begin means nothing.
    [[nodiscard]] virtual std::int64_t steadyMs() const = 0;
};

/// A look at both, so that a later one tells whether the wall clock was set between them.
struct ClockLook {
    std::int64_t utcMs{}, steadyMs{};
};
[[nodiscard]] ClockLook look(const Clock& clock);
/// By how many milliseconds the wall clock was set between two looks; nullopt when it was not: up to 2 s back and 60 s
/// forward are a clock being kept right. FDA time-stamp guidance draft (2002), as reported.
[[nodiscard]] std::optional<std::int64_t> clockSetBy(const ClockLook& before, const ClockLook& now);

/// The machine's clock.
class SystemClock final : public Clock {
public:
    [[nodiscard]] Instant now() const override;
    [[nodiscard]] std::int64_t steadyMs() const override;
};

/// A clock that stands until told; each now() may step it forward by a fixed amount.
class SteppedClock final : public Clock {
public:
    explicit SteppedClock(Instant start, std::int64_t stepMs = 0) : m_now(start), m_stepMs(stepMs) {}
    [[nodiscard]] Instant now() const override;
    [[nodiscard]] std::int64_t steadyMs() const override { return m_steadyMs; }
    /// Time passes.
    void advance(std::int64_t ms)
    {
        m_now.utcMs += ms;
        m_steadyMs += ms;
    }
    /// Somebody sets it, while no time passes.
    void set(std::int64_t byMs) { m_now.utcMs += byMs; }

private:
    mutable Instant m_now;
    mutable std::int64_t m_steadyMs = 0;
    std::int64_t m_stepMs;
};

/// "2026-11-25T06:41:03.120Z" (RFC 3339, UTC, milliseconds).
[[nodiscard]] std::string utcText(std::int64_t utcMs);
/// "+01:00"
[[nodiscard]] std::string offsetText(int minutes);
/// Reads what offsetText writes; nullopt when it is not that shape.
[[nodiscard]] std::optional<int> readOffset(std::string_view text);
/// Reads what utcText writes.
[[nodiscard]] Result<std::int64_t> readUtc(std::string_view text);

}  // namespace taut
