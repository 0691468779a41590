// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <filesystem>

#include "core/base/clock.h"
#include "core/base/finding.h"

namespace taut::logbook {

/// How a mirror stands: a logbook file in another folder that holds every seal and signature, and tables made from
/// them; no PIN material and no open run. It opens for reading only, and restoring makes a logbook of it again.
struct MirrorState {
    std::filesystem::path file;  ///< the one in use, "" = none could be begun
    std::uint64_t count{};       ///< seals in it
    std::uint64_t behind{};      ///< seals of the logbook that it lacks, as far as is known
    /// Note: what lies there already and was left alone, or what is to be said of the folder. Warn: it is behind, and
    /// why; or one that was in use was left alone (mirror.fork, .ahead, .not_ours, .broken) and another begun beside
    /// it. mirror.folder_missing, mirror.source_broken and what opening and writing a logbook refuses.
    Findings findings;
    [[nodiscard]] bool holdsAll() const noexcept { return !file.empty() && behind == 0; }
};

/// Appends to the mirror of `logbook` in `folder` what it lacks, beginning one when there is none, and compares count
/// and link of both ends. The folder must be there: one made in the place of a stick that is not in would mirror
/// nothing. The logbook is only read; its writer may be at work.
[[nodiscard]] MirrorState mirrorTo(const std::filesystem::path& logbook, const std::filesystem::path& folder,
                                   Instant now);

/// The mirror of `logbook` that is in use in `folder`, "" when there is none.
[[nodiscard]] std::filesystem::path mirrorIn(const std::filesystem::path& folder, const std::filesystem::path& logbook);

}  // namespace taut::logbook
