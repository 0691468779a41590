// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/history/names.h"
#include "core/history/set_up_ratio.h"
#include "core/history/times.h"
#include "core/report/report.h"

namespace taut::history {

/// What the runs are called that are put together: "late shift (14 to 22)", "full set-up", else their id.
[[nodiscard]] Text groupSaid(Group group, const std::string& value);
/// "84 m, said by 12 of 15 runs": a median of few says little.
[[nodiscard]] Text webSaid(const stats::Quartiles& metres, std::size_t of);
/// "all presses", or the press, job and substrate to which a question was narrowed, and its days.
[[nodiscard]] Text chosenSaid(const records::CourseQuery& query, int offsetMinutes);

/// Where the time goes and what is lost: whole runs and stages by group, what is done beside the running press, what
/// the slowest tenth have in common, deviations, re-checks, causes, open steps, first-go rate, metres of web, and where
/// they are given, set-up ratios. `query` is what the times were asked by.
[[nodiscard]] report::Report timesReport(const Times& times, const records::CourseQuery& query, Group group,
                                         Names& names, int offsetMinutes, const std::vector<SetUpRatio>& ratios = {});

/// One kind of loss as bars, the largest first; nothing where there is none.
[[nodiscard]] std::optional<report::Bars> lossBars(const Times& times, Loss loss, const std::string& press,
                                                   Names& names, std::size_t most = 9);

}  // namespace taut::history
