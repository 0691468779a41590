// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/history/period.h"

#include "core/records/listed.h"

namespace taut::app {

namespace {}  // namespace

Result<Ends> endsOf(const Period& period, const Instant& now)
{
    Ends ends;
    if (!period.between) {
        if (period.days > 0) ends.sinceMs = now.utcMs - period.days * kDayMs;
        return ends;
    }
    if (!period.from.isEmpty()) {
        const auto day = records::dayBegins(period.from.toStdString(), now.offsetMinutes);
        if (!day) return day.error();
        ends.sinceMs = *day;
    }
    if (!period.to.isEmpty()) {
        const auto day = records::dayBegins(period.to.toStdString(), now.offsetMinutes);
        if (!day) return day.error();
        ends.untilMs = *day + kDayMs;
    }
    if (ends.sinceMs && ends.untilMs && *ends.sinceMs >= *ends.untilMs)
        return refuse("period.backwards", "period", "The last day is before the first.",
                      "Write the earlier day first.");
    return ends;
}

}  // namespace taut::app
