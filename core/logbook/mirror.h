// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <filesystem>
#include <functional>

#include "core/base/clock.h"
#include "core/base/finding.h"

namespace taut::logbook {

/// How a mirror stands: a logbook file in another folder that holds every seal and signature, and tables made from
/// them; no PIN material and no open run. It opens for reading only, and restoring makes a logbook of it again.
struct MirrorState {
    std::filesystem::path file;  ///< the one in use, "" = none could be begun
    std::uint64_t count{};       ///< seals in it
    std::uint64_t behind{};      ///< seals of the logbook that it lacks, as far as is known
    /// Note: what is to be said of the folder, or that another logbook's mirror lies there (mirror.not_ours), or one
    /// that this user may not read (mirror.closed), and this one's was begun beside it. Warn: it is behind, and why; or
    /// what lies there is of no use, was left alone (mirror.fork, .ahead, .not_ours, logbook.broken, .not_a_logbook)
    /// and another was begun beside it. mirror.folder_missing, mirror.source_broken, mirror.failed and what opening and
    /// writing a logbook refuses.
    Findings findings;
    [[nodiscard]] bool holdsAll() const noexcept { return !file.empty() && behind == 0; }
};

/// Appends to the mirror of `logbook` in `folder` what it lacks, and compares count and link of both ends. Several PCs
/// may mirror into one folder under one name: the newest file counts that says it is this logbook's and goes on where
/// this logbook does, and another is begun only when there is none. The folder must be there: one made in the place of
/// a stick that is not in would mirror nothing. The logbook is only read; its writer may be at work. `giveUp` is asked
/// before each stretch that is read of it: true ends the turn.
[[nodiscard]] MirrorState mirrorTo(const std::filesystem::path& logbook, const std::filesystem::path& folder,
                                   Instant now, const std::function<bool()>& giveUp = {});

/// The mirror of `logbook` that is in use in `folder`, else one that may be and cannot be looked at; "" = none.
[[nodiscard]] std::filesystem::path mirrorIn(const std::filesystem::path& folder, const std::filesystem::path& logbook);

}  // namespace taut::logbook
