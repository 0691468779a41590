// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>

#include <QString>

#include "core/base/clock.h"
#include "core/base/result.h"

namespace taut::app {

/// How far back a question of the history goes: so many days (0 = from the beginning), or from one day to another, as
/// they were typed.
struct Period {
    int days = 0;
    bool between = false;
    QString from = {}, to = {};  ///< "2026-11-25", the last one included; "" = open at that end
    friend bool operator==(const Period&, const Period&) = default;
};
/// Its two ends at this moment; day.unknown for a day that is none, period.backwards.
struct Ends {
    std::optional<std::int64_t> sinceMs, untilMs;
};
[[nodiscard]] Result<Ends> endsOf(const Period& period, const Instant& now);

}  // namespace taut::app
