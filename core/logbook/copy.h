// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <filesystem>
#include <optional>
#include <vector>

#include "core/base/clock.h"
#include "core/base/result.h"
#include "core/seal/chain.h"

namespace taut::logbook {

/// A whole logbook as it stood at one moment, open runs and what opens people's doors included:
/// FOLDER/NAME-DATE.logbook (UTC), for this user's eyes only. It was read again and found in order before it got its
/// name.
struct Copied {
    std::filesystem::path file;
    seal::Anchor end;
    std::vector<std::filesystem::path> removed;  ///< older copies that gave way
    /// Note: what is to be said of the folder. Warn: no older copy was removed (copy.others_broken), or the mirror in
    /// the same folder is not in order (the first thing wrong with it).
    Findings findings;
};
struct CopyPlan {
    std::size_t keep = 8;               ///< copies kept in the folder
    std::int64_t everyMs = 7 * kDayMs;  ///< when the next is due
};

/// Makes one, while the writer may be at work. The newest `keep` of this logbook stay; of older ones none is removed as
/// long as no other copy that stays is in order. What another PC keeps in the folder under the same name is neither
/// counted nor removed, nor is a copy that claims to be of a day to come. keep.folder_missing, copy.not_in_order (the
/// logbook itself is not; the first thing wrong stands in the text), keep.read_only, file.unwritable,
/// logbook.disk_full; else as opening a logbook.
[[nodiscard]] Result<Copied> copyTo(const std::filesystem::path& logbook, const std::filesystem::path& folder,
                                    Instant now, const CopyPlan& plan = {});
/// The newest copy of this logbook there that is of no day to come; "" = none. A name alone makes none: the file must
/// say that it is of this logbook.
[[nodiscard]] std::filesystem::path newestCopy(const std::filesystem::path& logbook,
                                               const std::filesystem::path& folder, Instant now);
/// When there is none, or when it is old enough.
[[nodiscard]] bool isCopyDue(const std::filesystem::path& logbook, const std::filesystem::path& folder, Instant now,
                             const CopyPlan& plan = {});
/// nullopt: none is due.
[[nodiscard]] Result<std::optional<Copied>> copyIfDue(const std::filesystem::path& logbook,
                                                      const std::filesystem::path& folder, Instant now,
                                                      const CopyPlan& plan = {});

struct RestorePlan {
    std::vector<seal::PartialAnchor> anchors;  ///< of printed sheets: what is restored must hold them
    std::filesystem::path peopleFrom;          ///< a copy, for a mirror: what opens people's doors; "" = see there
};
/// What came of it.
struct Restored {
    std::filesystem::path file;
    seal::Anchor end;
    std::filesystem::path setAside;          ///< what lay there before; "" = nothing did
    std::optional<seal::Anchor> asideEnd;    ///< nullopt: it cannot be read
    std::int64_t people = 0, withDoors = 0;  ///< in service and with a key; those of them who can sign in
    /// Warn, of what was set aside: restore.newer_aside (it holds seals that are not in what was restored),
    /// restore.other_aside (its seals are others), restore.other_logbook (it is of another PC's logbook),
    /// restore.open_aside (it holds more of a run that was open), restore.aside_unreadable. Warn: restore.no_doors (a
    /// mirror holds no PIN material, and none was found elsewhere). Note: restore.some_doors.
    Findings findings;
};
/// Makes a logbook under the name `to` of a copy or a mirror. The copy is verified before and after, and what lies at
/// `to` is kept beside it under a dated name: there is no moment without a file of that name, and none is written
/// over. A mirror holds no PIN material: it is taken from `peopleFrom`, else from what is set aside, for everybody
/// whose key is still the same. restore.same_file, restore.other_kind (a practice logbook in the place of the shop's,
/// or the reverse), restore.not_in_order (names the first thing wrong), logbook.pen_held, what asHomeOfLogbook refuses,
/// file.unwritable, logbook.disk_full.
[[nodiscard]] Result<Restored> restoreFrom(const std::filesystem::path& copy, const std::filesystem::path& to,
                                           Instant now, const RestorePlan& plan = {});

}  // namespace taut::logbook
