// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/history/times.h"
#include "core/inputs/job.h"

namespace taut::history {

/// Setting up against running, of one job.
struct SetUpRatio {
    std::string job;
    stats::Quartiles setUp;                ///< of its finished full set-ups, in seconds
    std::optional<double> runningSeconds;  ///< as planned: its length over its speed; empty = the job does not say
    /// Set-up time over processing time (ISO 22400-2, from memory), with the processing time as planned: no record
    /// says how long a job really ran.
    [[nodiscard]] std::optional<double> ratio() const;
};
/// How long a job runs at its speed for all the web that it needs, running waste included; nullopt where it does not
/// say enough.
[[nodiscard]] std::optional<double> runningSecondsOf(const inputs::Job& job);
/// Of every job with a finished full set-up among these runs, by its newest edition; the largest ratio first, those
/// without one last. Refuses as the reader does.
[[nodiscard]] Result<std::vector<SetUpRatio>> setUpRatiosOf(const records::Reader& reader, const Times& times);

}  // namespace taut::history
