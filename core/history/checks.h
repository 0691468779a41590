// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "core/inputs/press.h"
#include "core/records/records.h"
#include "core/report/report.h"

// What a press profile wants looked after at intervals, and when the record says that it last was.
namespace taut::history {

/// So many of a press's newest signed runs are looked through for its checks.
inline constexpr std::size_t kMostLookedThrough = 300;

/// One check of one press.
struct CheckStanding {
    std::string press, pressName;
    inputs::Check check;
    bool asked = true;       ///< a procedure of this store has its step
    std::string run;         ///< the latest signed run in which every item of its step was answered well; "" = none
    std::int64_t doneMs{};   ///< when the last item was, in that run
    bool allLooked = false;  ///< there are no older runs than those that were looked through

    /// When it is due; nullopt where it was never done, as far as was looked.
    [[nodiscard]] std::optional<std::int64_t> dueMs() const;
    [[nodiscard]] bool overdue(std::int64_t nowMs) const;
};
/// The checks of all presses by their newest profiles, press by press in the order of the profile. Answered well is a
/// reading inside its window, near its end or recorded, and anything else that was answered and stops nothing: not what
/// a supervisor accepted outside, did not apply or was corrected into something else. Void runs do not count. `goOn` is
/// asked between two runs; false ends it with those presses that were done. Refuses as the reader does, with
/// document.broken too.
[[nodiscard]] Result<std::vector<CheckStanding>>
checksOf(const records::Reader& reader, const std::function<bool()>& goOn = {}, std::size_t most = kMostLookedThrough);
/// Those that are overdue: never done first, then the longest overdue.
[[nodiscard]] std::vector<CheckStanding> overdueOf(std::vector<CheckStanding> checks, std::int64_t nowMs);
/// All of them as a sheet, overdue ones first.
[[nodiscard]] report::Report checksReport(const std::vector<CheckStanding>& checks, std::int64_t nowMs,
                                          int offsetMinutes);

}  // namespace taut::history
