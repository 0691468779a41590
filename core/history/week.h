// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>

#include "core/history/names.h"
#include "core/report/report.h"

namespace taut::history {

/// From the Monday before the moment (that day included) at nought o'clock, where the clock stands so many minutes from
/// UTC.
[[nodiscard]] std::int64_t weekBegin(std::int64_t utcMs, int offsetMinutes) noexcept;

/// A week of a press on one page: runs, times, deviations, what had drifted when it ended, what nobody has reviewed.
/// `begin` is the first moment of it. `goOn` as in watchedOf; where it said no, the page says that it is not finished.
[[nodiscard]] Result<report::Report> weekReport(const records::Reader& reader, const std::string& press,
                                                std::int64_t begin, Names& names, int offsetMinutes,
                                                const std::function<bool()>& goOn = {});

}  // namespace taut::history
