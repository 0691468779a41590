// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/logbook/copy_keeper.h"

#include <algorithm>
#include <condition_variable>
#include <functional>
#include <mutex>

#include "core/logbook/files.h"

namespace taut::logbook {

namespace {

namespace fs = std::filesystem;

constexpr std::chrono::seconds kLastWait{5};
/// A copy is read as a whole: one that failed is not tried again every minute.
constexpr std::int64_t kAgainMs = 10LL * 60 * 1000;

bool alike(const Finding& a, const Finding& b)
{
    return a.code == b.code && a.subject == b.subject && a.severity == b.severity;
}

}  // namespace

bool operator==(const CopyState& a, const CopyState& b)
{
    return a.newest == b.newest && a.newestMs == b.newestMs && a.seals == b.seals && a.working == b.working &&
           a.looked == b.looked && a.whyNot.has_value() == b.whyNot.has_value() &&
           (!a.whyNot || alike(*a.whyNot, *b.whyNot)) &&
           std::equal(a.findings.begin(), a.findings.end(), b.findings.begin(), b.findings.end(), alike);
}

/// What thread and owner both see; it lives as long as either.
struct CopyKeeper::Shared {
    fs::path logbook, folder;
    CopyPlan plan;
    std::mutex mutex;
    std::condition_variable changed;
    bool ending = false, ended = false;
    std::uint64_t asked = 0, done = 0;
    Instant now;
    CopyState state;
    std::optional<std::int64_t> failedMs;  // the thread's alone

    /// Under the lock.
    [[nodiscard]] bool rests() const { return ended || asked == done; }
    void makeOne(CopyState& made, Instant at)
    {
        auto copied = copyTo(logbook, folder, at, plan);
        failedMs = copied ? std::nullopt : std::optional(at.utcMs);
        if (!copied) {
            made.whyNot = copied.error();
            made.whyNot->severity = Severity::Warn;
            return;
        }
        made.whyNot.reset();
        made.newest = copied->file;
        made.seals = copied->end.count;
        made.findings = copied->findings;
    }
    /// One look, without the lock: it may take as long as the disk does.
    [[nodiscard]] CopyState look(CopyState told, Instant at, const std::function<void()>& begins)
    {
        std::error_code error;
        const bool there = fs::is_directory(folder, error);
        const bool wasMissing = told.whyNot && told.whyNot->code == "keep.folder_missing";
        const bool resting = failedMs && at.utcMs >= *failedMs && at.utcMs - *failedMs < kAgainMs;
        if (!isCopyDue(logbook, folder, at, plan)) {
            told.whyNot.reset();
        } else if (!resting || (there && wasMissing)) {
            if (there) begins();
            makeOne(told, at);
        }
        told.looked = true;
        if (!there) return told;
        // Somebody may have made one by hand, or taken the newest away.
        if (const fs::path newest = newestCopy(logbook, folder, at); newest != told.newest) {
            told.newest = newest;
            told.seals.reset();
            told.findings.clear();
        }
        // What was moved away as it was asked is not asked for again.
        std::erase_if(told.findings, [](const Finding& finding) {
            const fs::path subject(finding.subject);
            std::error_code unseen;
            return subject.is_absolute() && !fs::exists(subject, unseen) && !unseen;
        });
        told.newestMs = told.newest.empty() ? std::nullopt : dateIn(told.newest);
        return told;
    }
};

CopyKeeper::CopyKeeper(fs::path logbook, fs::path folder, const CopyPlan& plan) : m_shared(std::make_shared<Shared>())
{
    m_shared->logbook = std::move(logbook);
    m_shared->folder = std::move(folder);
    m_shared->plan = plan;
    m_thread = std::thread([shared = m_shared] { work(shared); });
}

CopyKeeper::~CopyKeeper()
{
    if (!m_thread.joinable()) return;
    std::unique_lock lock(m_shared->mutex);
    m_shared->ending = true;
    m_shared->changed.notify_all();
    const bool ended = m_shared->changed.wait_for(lock, kLastWait, [&] { return m_shared->ended; });
    lock.unlock();
    if (ended)
        m_thread.join();
    else
        m_thread.detach();
}

void CopyKeeper::leave()
{
    {
        const std::lock_guard lock(m_shared->mutex);
        m_shared->ending = true;
        m_shared->changed.notify_all();
    }
    if (m_thread.joinable()) m_thread.detach();
}

bool CopyKeeper::idle() const
{
    const std::lock_guard lock(m_shared->mutex);
    return m_shared->rests();
}

bool CopyKeeper::endIdle()
{
    const std::lock_guard lock(m_shared->mutex);
    if (!m_shared->rests()) return false;
    m_shared->ending = true;
    m_shared->changed.notify_all();
    return true;
}

void CopyKeeper::work(const std::shared_ptr<Shared>& shared)
{
    std::unique_lock lock(shared->mutex);
    for (;;) {
        shared->changed.wait(lock, [&] { return shared->ending || shared->asked != shared->done; });
        // One that is due and was not begun is made at the next start.
        if (shared->ending) break;
        const std::uint64_t asked = shared->asked;
        const Instant now = shared->now;
        CopyState state = shared->state;
        lock.unlock();
        const auto begins = [&] {
            const std::lock_guard telling(shared->mutex);
            shared->state.working = true;
        };
        try {
            state = shared->look(std::move(state), now, begins);
        } catch (const std::exception& error) {
            // Out of memory, most likely: a copy is no reason to end the program.
            shared->failedMs = now.utcMs;
            state.looked = true;
            state.whyNot = refuse("copy.failed", shared->folder.string(),
                                  {"No copy could be made; the system says: %1.", {std::string(error.what())}},
                                  "Start the program again; if it comes back, report it.");
            state.whyNot->severity = Severity::Warn;
        }
        lock.lock();
        state.working = false;
        shared->state = std::move(state);
        shared->done = asked;
        shared->changed.notify_all();
    }
    shared->ended = true;
    shared->changed.notify_all();
}

void CopyKeeper::lookNow(Instant now)
{
    const std::lock_guard lock(m_shared->mutex);
    m_shared->now = now;
    ++m_shared->asked;
    m_shared->changed.notify_all();
}

CopyState CopyKeeper::state() const
{
    const std::lock_guard lock(m_shared->mutex);
    return m_shared->state;
}

}  // namespace taut::logbook
