// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/records.h"

namespace taut::records {

// A job that comes back to its press: what was set the last time, beside what is computed now.

/// The run whose settings count then: the newest of this press, job and substrate that was completed and signed, and is
/// neither void nor sent back; nullopt when there is none among the newest 200 completed runs of the job.
[[nodiscard]] Result<std::optional<RunRow>> lastRunLike(const Reader& reader, std::string_view press,
                                                        std::string_view job, std::string_view substrate);

/// One value that was set or read then, as it was last corrected.
struct SetThen {
    targets::TargetId target;
    Text name;
    Quantity then;                 ///< in the unit in which it is said now
    std::optional<Quantity> now;   ///< as it is aimed at; nullopt = not known this time
    std::optional<Quantity> more;  ///< how much more it is now: below nought, how much less
    verdict::Judgement today;      ///< how then's value would stand in today's window
    bool accepted = false;         ///< it was outside its window and accepted by a supervisor
    std::string byName;
    std::int64_t atMs{};
};
/// What somebody wrote down.
struct SaidThen {
    Text about;           ///< what the step says; empty of what was written at the hand-over
    Text said;            ///< as somebody wrote it, or the remedy that helped
    bool helped = false;  ///< it brought a reading right that was outside
    std::string byName;
    std::int64_t atMs{};
};
struct JobReturn {
    std::vector<SetThen> settings;  ///< what is set first, then what was read; each as the procedure asks it
    std::vector<SaidThen> said;  ///< what was left at the hand-over, then what was noted at steps and what helped there
};
/// What was set in that run. A run that went on from another (the next roll, a re-web) asks only a part: what it did
/// not ask is taken from the run before, up to the full set-up. What was measured of the roll (`roll.`, `strip.`) is
/// left out, since that roll is gone. Refuses as Reader::sealOfRun and seal::eventsOf do.
[[nodiscard]] Result<JobReturn> whatWasSet(const Reader& reader, std::string_view runId, const targets::Targets& now,
                                           UnitSystem units);

}  // namespace taut::records
