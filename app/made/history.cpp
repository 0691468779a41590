// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/made/history.h"

#include <algorithm>
#include <condition_variable>
#include <exception>
#include <limits>
#include <map>
#include <mutex>
#include <queue>
#include <thread>

#include "app/made/after_runs.h"
#include "app/made/maker.h"
#include "core/logbook/fill.h"

namespace taut::app::made {

namespace {

namespace fs = std::filesystem;

using Runs = Result<std::vector<Sealable>>;

/// Shifts are told by several threads at once and taken by one, in their order.
class Crew {
public:
    Crew(const Story& story, const Maker& maker) : m_story(story), m_maker(maker)
    {
        const unsigned hands = std::max(1U, std::thread::hardware_concurrency());
        for (unsigned i = 0; i < hands; ++i) m_threads.emplace_back([this] { work(); });
    }
    ~Crew()
    {
        {
            const std::lock_guard lock(m_mutex);
            m_noMore = true;
        }
        m_changed.notify_all();
        for (std::thread& thread : m_threads) thread.join();
    }
    Crew(const Crew&) = delete;
    Crew& operator=(const Crew&) = delete;

    /// The runs of the next shift.
    Runs next()
    {
        std::unique_lock lock(m_mutex);
        m_changed.wait(lock, [this] { return m_done.contains(m_taken); });
        auto found = m_done.extract(m_taken++);
        lock.unlock();
        m_changed.notify_all();
        return std::move(found.mapped());
    }

private:
    void work()
    {
        while (true) {
            std::size_t slot = 0;
            std::vector<Family> families;
            {
                std::unique_lock lock(m_mutex);
                m_changed.wait(lock, [this] { return m_noMore || m_begun < m_taken + kAhead; });
                if (m_noMore || m_begun == m_story.shiftsWorked()) return;
                slot = m_begun++;
                // Runs are numbered in their order, whoever tells them.
                families = m_story.familiesIn(slot, m_numbers);
            }
            Runs made = [&]() -> Runs {
                try {
                    return told(families);
                } catch (const std::exception& error) {
                    // Out of a thread it would end the program.
                    return refuse("machine.failed", "history",
                                  {"The program failed inside; it says: %1.", {std::string(error.what())}},
                                  "Nothing half done was kept. Please report the command line and this sentence.");
                }
            }();
            {
                const std::lock_guard lock(m_mutex);
                m_done.emplace(slot, std::move(made));
            }
            m_changed.notify_all();
        }
    }
    [[nodiscard]] Runs told(const std::vector<Family>& families) const
    {
        std::vector<Sealable> all;
        for (const Family& family : families) {
            auto documents = m_maker.documents(family);
            if (!documents) return documents.error();
            std::move(documents->begin(), documents->end(), std::back_inserter(all));
        }
        return all;
    }

    static constexpr std::size_t kAhead = 64;  ///< shifts that may wait to be taken
    const Story& m_story;
    const Maker& m_maker;
    std::mutex m_mutex;
    std::condition_variable m_changed;
    RunNumbers m_numbers;
    std::map<std::size_t, Runs> m_done;
    std::size_t m_begun = 0, m_taken = 0;
    bool m_noMore = false;
    std::vector<std::thread> m_threads;
};

/// Something that is sealed at its time: a run, what is said of one, or another edition of a press.
struct Due {
    std::int64_t atMs = 0;
    std::uint64_t order = 0;  ///< of what is due at the same moment
    std::optional<Sealable> run;
    std::optional<Edition> edition;
    std::optional<Later> later;
    std::uint64_t number = 0;  ///< of the run that `later` is about
    std::string id, subject;
    const people::Signer* sealedBy = nullptr;
    Instant sealed;
    friend bool operator<(const Due& a, const Due& b)
    {
        return std::pair(b.atMs, b.order) < std::pair(a.atMs, a.order);
    }
};

/// Seals what is due, in the order of its times.
class Chronicle {
public:
    Chronicle(const Story& story, const Shop& shop, logbook::Fill& fill) : m_story(story), m_shop(shop), m_fill(fill)
    {
        for (const Edition& one : story.editions()) {
            Due due;
            due.atMs = one.from.utcMs;
            due.edition = one;
            put(std::move(due));
        }
    }

    void add(Sealable run)
    {
        Due due;
        due.atMs = run.at.utcMs;
        due.run = std::move(run);
        put(std::move(due));
    }

    /// Everything before this moment.
    Result<Done> upTo(std::int64_t ms)
    {
        while (!m_due.empty() && m_due.top().atMs < ms) {
            Due due = std::move(const_cast<Due&>(m_due.top()));  // it is taken off at once
            m_due.pop();
            if (auto done = due.run ? seal(*std::move(due.run)) : due.later ? say(due) : change(*due.edition); !done)
                return done;
        }
        return Done{};
    }

    [[nodiscard]] std::size_t runs() const { return m_runs; }
    [[nodiscard]] std::int64_t lastMs() const { return m_lastMs; }

private:
    void put(Due due)
    {
        due.order = m_order++;
        m_due.push(std::move(due));
    }

    Result<Done> seal(Sealable run)
    {
        for (const auto& [what, source] : *run.words)
            if (const auto kept = m_fill.define(what, source, *run.by, run.at); !kept) return kept.error();
        Due next;
        next.id = run.run;
        next.number = m_runs++;
        next.sealedBy = run.by;
        next.sealed = run.at;
        m_lastMs = run.at.utcMs;
        const auto link = std::visit(
            [&](auto&& document) { return m_fill.add(std::forward<decltype(document)>(document), *run.by, run.at); },
            std::move(run.document));
        if (!link) return link.error();
        next.subject = hex(*link);
        follow(std::move(next), nullptr);
        return Done{};
    }

    Result<Done> say(Due& due)
    {
        const people::Actor& by = due.later->by->actor();
        people::PersonRecord person;
        person.id = by.id();
        person.name = by.name();
        person.role = by.role();
        const seal::SealedRun run{due.id, due.subject, {}, {}, {}};
        const auto link =
            m_fill.add(seal::sequelOf(due.later->sequel, run, person, due.later->at), *due.later->by, due.later->at);
        if (!link) return link.error();
        m_lastMs = due.later->at.utcMs;
        const Later before = *std::move(due.later);
        follow(std::move(due), &before);
        return Done{};
    }

    void follow(Due due, const Later* before)
    {
        due.later = laterOf(m_story, m_shop, due.number, due.sealed, *due.sealedBy, before);
        if (!due.later) return;
        due.atMs = due.later->at.utcMs;
        put(std::move(due));
    }

    Result<Done> change(const Edition& edition)
    {
        const auto kept =
            m_fill.define("press", m_shop.press(edition.press, edition.edition), *m_shop.supervisor(0), edition.from);
        if (!kept) return kept.error();
        return Done{};
    }

    const Story& m_story;
    const Shop& m_shop;
    logbook::Fill& m_fill;
    std::priority_queue<Due> m_due;
    std::uint64_t m_order = 0;
    std::size_t m_runs = 0;
    std::int64_t m_lastMs = 0;
};

Result<Made> tellAll(const Story& story, const Shop& shop, logbook::Writer& writer,
                     const std::function<void(const Progress&)>& tell, const std::atomic<bool>* stop)
{
    const auto maker = story.wish().brief ? varied(shop, story) : playedOut(shop, story);
    if (!maker) return maker.error();
    auto fill = logbook::Fill::begin(writer);
    if (!fill) return fill.error();
    Chronicle chronicle(story, shop, **fill);
    Crew crew(story, **maker);
    for (std::size_t slot = 0; slot < story.shiftsWorked(); ++slot) {
        if (stop != nullptr && *stop)
            return refuse("history.stopped", "history",
                          "The making of the history was stopped; nothing of it was kept.");
        // What a run of this shift or a later one seals comes after the shift began.
        if (auto done = chronicle.upTo(story.beginOf(slot).utcMs); !done) return done.error();
        auto runs = crew.next();
        if (!runs) return runs.error();
        for (Sealable& run : *runs) chronicle.add(std::move(run));
        if (tell) tell({chronicle.runs(), story.wish().runs, dayText(story.dayOf(slot))});
    }
    if (auto done = chronicle.upTo(std::numeric_limits<std::int64_t>::max()); !done) return done.error();
    if (auto done = (*fill)->finish(); !done) return done.error();
    return Made{chronicle.runs(), (*fill)->added(), at(story.firstDay(), 0).utcMs, chronicle.lastMs()};
}

}  // namespace

Result<Made> makeHistory(const Wish& wish, const fs::path& resources, const fs::path& logbook,
                         const std::function<void(const Progress&)>& tell, const std::atomic<bool>* stop)
{
    const auto story = Story::of(wish);
    if (!story) return story.error();
    std::error_code error;
    if (fs::exists(logbook, error))
        return refuse("history.there", logbook.string(), {"%1 is there already.", {logbook.string()}},
                      "Name a file that is not there: a history is only ever made as a new one.");
    if (tell) tell({0, wish.runs, {}});
    Result<Made> made = [&]() -> Result<Made> {
        const SteppedClock clock(at(story->firstDay(), beginOfShift(0) - 60));
        CountedIds ids;
        auto writer = logbook::Writer::open(logbook, clock, ids, {false, "tautweb demo", 0});
        if (!writer) return writer.error();
        const auto shop = Shop::fill(**writer, resources, wish);
        if (!shop) return shop.error();
        return tellAll(*story, *shop, **writer, tell, stop);
    }();
    // Half a history helps nobody; the file was not there before.
    if (!made) fs::remove(logbook, error);
    return made;
}

}  // namespace taut::app::made
