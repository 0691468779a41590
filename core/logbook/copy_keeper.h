// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <thread>

#include "core/logbook/copy.h"

namespace taut::logbook {

/// How the regular copies of a logbook in a folder stand, as far as is known.
struct CopyState {
    std::filesystem::path newest;          ///< the last there by name and workplace; "" = none yet
    std::optional<std::int64_t> newestMs;  ///< when, as its name says
    std::optional<std::uint64_t> seals;    ///< in it; nullopt: this keeper did not make it
    bool working = false;                  ///< one is being made
    bool looked = false;                   ///< the folder has been looked at
    std::optional<Finding> whyNot;         ///< why the one that is due could not be made (Warn)
    Findings findings;                     ///< what is to be said of the last one
    friend bool operator==(const CopyState& a, const CopyState& b);
};

/// Makes a copy whenever one is due, on a thread of its own over connections of its own: nothing waits for it, neither
/// the writer nor a window, and a folder that does not answer holds up nobody.
class CopyKeeper {
public:
    CopyKeeper(std::filesystem::path logbook, std::filesystem::path folder, const CopyPlan& plan = {});
    /// Gives what is under way a few seconds; then leaves it to itself. After leave() it waits for nothing.
    ~CopyKeeper();
    void leave();
    /// Whether no look is owed or under way; of one that was left, whether none is under way any more.
    [[nodiscard]] bool idle() const;
    /// False, and nothing is ended, when it is not idle: the logbook's file must not be replaced under a look.
    [[nodiscard]] bool endIdle();
    CopyKeeper(const CopyKeeper&) = delete;
    CopyKeeper& operator=(const CopyKeeper&) = delete;

    /// Looks whether one is due, and makes it then. After one that could not be made, a while is waited before the next
    /// is tried; a folder that is there again is noticed at once.
    void lookNow(Instant now);
    [[nodiscard]] CopyState state() const;

private:
    struct Shared;
    static void work(const std::shared_ptr<Shared>& shared);
    std::shared_ptr<Shared> m_shared;
    std::thread m_thread;
};

}  // namespace taut::logbook
