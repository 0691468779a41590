// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>
#include <filesystem>
#include <memory>
#include <optional>
#include <thread>

#include "core/logbook/database.h"
#include "core/logbook/mirror.h"

namespace taut::logbook {

/// The first thing wrong with a mirror that is read as a whole (Warn); nullopt: it is in order. The error: it could not
/// be read to its end now, which says nothing of the mirror.
[[nodiscard]] Result<std::optional<Finding>> wrongWith(const std::filesystem::path& mirror);

/// Inside this folder only: keeps a mirror up to date on a thread of its own, over connections of its own, which it
/// opens for each turn and closes again: a stick can be pulled out between them, and a folder of another machine that
/// does not answer holds up nobody. While the mirror is behind it tries again by itself. Each mirror is read as a whole
/// until it was once found in order; after that only its end is looked at.
class MirrorKeeper {
public:
    MirrorKeeper(std::filesystem::path logbook, std::filesystem::path folder);
    /// Gives what is under way a few seconds; then leaves it to itself.
    ~MirrorKeeper();
    MirrorKeeper(const MirrorKeeper&) = delete;
    MirrorKeeper& operator=(const MirrorKeeper&) = delete;

    /// After a transaction of the writer's connection: if it sealed something, the mirror is to follow.
    void tell(SQLite::Database& db, const Clock& clock);
    /// The mirror is to follow, whether something was sealed or not.
    void tryNow(Instant now);
    /// After waiting, up to so long, until all that was told of was tried.
    [[nodiscard]] MirrorState state(std::chrono::milliseconds most) const;

private:
    struct Shared;
    static void work(const std::shared_ptr<Shared>& shared);
    std::shared_ptr<Shared> m_shared;
    std::thread m_thread;
    std::int64_t m_told = -1;  ///< seals, when it was last told
};

}  // namespace taut::logbook
