// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/logbook/mirror_keeper.h"

#include <algorithm>
#include <condition_variable>
#include <mutex>

#include "core/logbook/logbook.h"

namespace taut::logbook {

namespace {

constexpr std::chrono::seconds kAgain{60};
constexpr std::chrono::seconds kLastWait{5};

/// What keeps a file from being read now and says nothing of what is in it.
bool isOfTheMoment(const Finding& finding)
{
    for (const char* code : {"logbook.busy", "logbook.disk", "logbook.unreadable", "logbook.missing", "logbook.moved",
                             "logbook.failed", "logbook.disk_full"})
        if (finding.code == code) return true;
    return false;
}

}  // namespace

/// What thread and owner both see; it lives as long as either.
struct MirrorKeeper::Shared {
    std::filesystem::path logbook, folder;
    std::mutex mutex;
    std::condition_variable changed;
    bool ending = false, ended = false;
    bool left = false;  ///< nobody waits for it any more: the logbook may be another file by now
    std::uint64_t asked = 0, done = 0;
    Instant now;
    MirrorState state;
};

Result<std::optional<Finding>> wrongWith(const std::filesystem::path& mirror)
{
    const auto verified = verify(mirror, {}, Depth::Deep);
    const Findings findings = verified ? verified->findings : Findings{verified.error()};
    if (findings.empty()) return std::optional<Finding>();
    const auto found = std::find_if_not(findings.begin(), findings.end(), isOfTheMoment);
    Finding why = found != findings.end() ? *found : findings.front();
    why.severity = Severity::Warn;
    why.subject = mirror.string() + ", " + why.subject;
    if (found == findings.end()) return why;
    why.remedy = {"The mirror %1 cannot be restored from as it is. Move it away and keep it: another is begun then.",
                  {mirror.string()}};
    return std::optional(std::move(why));
}

MirrorKeeper::MirrorKeeper(std::filesystem::path logbook, std::filesystem::path folder)
    : m_shared(std::make_shared<Shared>())
{
    m_shared->logbook = std::move(logbook);
    m_shared->folder = std::move(folder);
    m_thread = std::thread([shared = m_shared] { work(shared); });
}

MirrorKeeper::~MirrorKeeper()
{
    std::unique_lock lock(m_shared->mutex);
    m_shared->ending = true;
    m_shared->changed.notify_all();
    const bool ended = m_shared->changed.wait_for(lock, kLastWait, [&] { return m_shared->ended; });
    m_shared->left = true;
    lock.unlock();
    if (ended)
        m_thread.join();
    else
        m_thread.detach();
}

void MirrorKeeper::work(const std::shared_ptr<Shared>& shared)
{
    std::filesystem::path inOrder, read;  // once found in order; last read as a whole, and what was wrong with it
    std::optional<Finding> wrong;
    std::unique_lock lock(shared->mutex);
    for (;;) {
        const auto called = [&] { return shared->ending || shared->asked != shared->done; };
        const bool behind = shared->done > 0 && !shared->state.holdsAll();
        if (behind)
            shared->changed.wait_for(lock, kAgain, called);
        else
            shared->changed.wait(lock, called);
        // What was told of before the end is still done.
        if (shared->left || (shared->ending && shared->asked == shared->done)) break;
        const std::uint64_t asked = shared->asked;
        const Instant now = shared->now;
        lock.unlock();
        MirrorState state;
        try {
            state = mirrorTo(shared->logbook, shared->folder, now, [&shared] {
                const std::lock_guard asking(shared->mutex);
                return shared->left;
            });
            // One that is broken is read again at each turn: somebody may have moved it away, and it is told until
            // then.
            if (state.holdsAll() && state.file != inOrder) {
                auto looked = wrongWith(state.file);
                wrong = looked ? *std::move(looked) : std::optional(looked.error());
                read = state.file;
                inOrder = wrong ? std::filesystem::path() : read;
            }
            if (wrong && state.file == read) state.findings.push_back(*wrong);
        } catch (const std::exception& error) {
            // Out of memory, most likely: a mirror is no reason to end the program.
            Finding failed =
                refuse("mirror.failed", shared->folder.string(),
                       {"The mirror could not be written; the system says: %1.", {std::string(error.what())}},
                       "Start the program again; if it comes back, report it.");
            failed.severity = Severity::Warn;
            state.behind = 1;
            state.findings.push_back(std::move(failed));
        }
        lock.lock();
        shared->state = std::move(state);
        shared->done = asked;
        shared->changed.notify_all();
    }
    shared->ended = true;
    shared->changed.notify_all();
}

void MirrorKeeper::tell(SQLite::Database& db, const Clock& clock)
{
    // What was written is on disk by now: whatever fails here is the mirror's matter alone.
    std::int64_t count = -1;
    try {
        count = numberOf(db, "SELECT coalesce(max(seq), 0) FROM seal_rows");
    } catch (const SQLite::Exception&) {
        count = -1;
    }
    if (count >= 0 && count == m_told) return;
    m_told = count;
    tryNow(clock.now());
}

void MirrorKeeper::tryNow(Instant now)
{
    const std::lock_guard lock(m_shared->mutex);
    m_shared->now = now;
    ++m_shared->asked;
    m_shared->changed.notify_all();
}

MirrorState MirrorKeeper::state(std::chrono::milliseconds most) const
{
    std::unique_lock lock(m_shared->mutex);
    m_shared->changed.wait_for(lock, most, [&] { return m_shared->asked == m_shared->done; });
    return m_shared->state;
}

}  // namespace taut::logbook
