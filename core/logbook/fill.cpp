// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/logbook/fill.h"

#include <condition_variable>
#include <deque>
#include <map>
#include <mutex>
#include <optional>
#include <thread>
#include <variant>

#include "core/logbook/index.h"
#include "core/logbook/writer_impl.h"

namespace taut::logbook {

namespace {

struct Ready {
    seal::Seal seal;
    std::variant<seal::Document, RunAnswers> says;
    std::vector<seal::SealSignature> signatures;
};
constexpr std::size_t kBatch = 256;      ///< handed over to the disk's thread together
constexpr std::size_t kMostBatches = 8;  ///< that wait for it
/// Of the engine's own memory, in kB: links are spread over a table's whole index, and each page of it that has to be
/// fetched again costs more than the row.
constexpr int kCacheKb = 512 * 1024;

/// What stands aside while a logbook is filled: indexes, which are packed when they are made of rows that are all
/// there, and guards against what can only come from elsewhere. Keys stay, and guards against changes.
class Aside {
public:
    explicit Aside(SQLite::Database& db) : m_db(db)
    {
        SQLite::Statement all(db, "SELECT type, name, sql FROM sqlite_schema WHERE (type = 'index' AND sql IS NOT NULL "
                                  "AND tbl_name IN ('run_rows', 'reading_rows')) OR (type = 'trigger' AND name IN "
                                  "('seal_rows_append', 'signature_rows_append')) ORDER BY rowid");
        std::vector<std::string> drops;
        while (all.executeStep()) {
            drops.push_back("DROP " + all.getColumn(0).getString() + ' ' + all.getColumn(1).getString());
            m_made.push_back(all.getColumn(2).getString());
        }
        all.reset();
        for (const std::string& drop : drops) db.exec(drop);
    }
    void putBack()
    {
        for (const std::string& one : std::exchange(m_made, {})) m_db.exec(one);
    }

private:
    SQLite::Database& m_db;
    std::vector<std::string> m_made;  ///< how each is made
};

}  // namespace

struct Fill::Impl {
    Writer::Impl& writer;
    std::unique_lock<std::mutex> pen;  ///< the writer's own: whoever else wants to write waits
    std::optional<SQLite::Transaction> transaction;
    std::optional<Aside> aside;
    std::map<std::pair<std::string, std::string>, int> editions;  ///< what and id: the newest
    std::map<std::pair<std::string, std::string>, int> known;     ///< what and hash: the edition
    std::uint64_t seq = 0, before = 0;
    seal::Link last{};
    std::int64_t cacheBefore = 0;
    std::vector<Ready> batch;

    std::mutex mutex;  ///< over what both threads look at
    std::condition_variable changed;
    std::deque<std::vector<Ready>> waiting;
    std::optional<Finding> failed;
    bool noMore = false;
    std::thread thread;  ///< last: it works with all the others

    explicit Impl(Writer::Impl& w) : writer(w), pen(w.mutex) {}
    ~Impl()
    {
        stop();
        aside.reset();
        transaction.reset();
        (void)guarded(writer.file, [this]() -> Result<Done> {
            writer.db->exec("PRAGMA cache_size = " + std::to_string(cacheBefore));
            return Done{};
        });
    }

    void stop()
    {
        {
            const std::lock_guard lock(mutex);
            noMore = true;
        }
        changed.notify_all();
        if (thread.joinable()) thread.join();
    }

    /// Takes batches until there are no more; after a failure it throws the rest away.
    void work()
    {
        Index index(*writer.db, Standing::Never);
        while (true) {
            std::vector<Ready> now;
            bool lost = false;
            {
                std::unique_lock lock(mutex);
                changed.wait(lock, [this] { return noMore || !waiting.empty(); });
                if (waiting.empty()) break;
                now = std::move(waiting.front());
                waiting.pop_front();
                lost = failed.has_value();
            }
            changed.notify_all();
            if (lost) continue;
            keep(guarded(writer.file, [&]() -> Result<Done> {
                for (const Ready& one : now) put(index, one);
                return Done{};
            }));
        }
        keep(guarded(writer.file, [&]() -> Result<Done> {
            index.settle();
            return Done{};
        }));
    }
    static void put(Index& index, const Ready& one)
    {
        if (const auto* document = std::get_if<seal::Document>(&one.says))
            index.put(one.seal, document, one.signatures);
        else
            index.put(one.seal, std::get<RunAnswers>(one.says), one.signatures);
    }
    void keep(const Result<Done>& done)
    {
        const std::lock_guard lock(mutex);
        if (!done && !failed) failed = done.error();
    }
    /// Seals what is ready but for its number, its place in the chain and its signature; "" = it carries none.
    Result<seal::Link> seal(Ready ready, const char* meaning, const people::Signer& by)
    {
        ready.seal.seq = ++seq;
        ready.seal.previous = last;
        last = ready.seal.link = seal::linkAfter(last, ready.seal.document);
        if (*meaning != '\0') ready.signatures.push_back(seal::signSeal(ready.seal, meaning, by));
        batch.push_back(std::move(ready));
        if (batch.size() >= kBatch)
            if (auto lost = handOver()) return *std::move(lost);
        return last;
    }

    /// nullopt: so far all is well.
    std::optional<Finding> handOver()
    {
        std::unique_lock lock(mutex);
        changed.wait(lock, [this] { return failed || waiting.size() < kMostBatches; });
        if (failed) return failed;
        waiting.push_back(std::exchange(batch, {}));
        lock.unlock();
        changed.notify_all();
        return std::nullopt;
    }
};

LaidOut laidOut(const seal::Document& run, const seal::TextBySha& texts)
{
    const Json& body = run.body;
    return {seal::write(run), answersOf(body, seal::CourseReader(texts).of(body),
                                        jobWords(texts("job", body["inputs"]["job"]["sha256"].text())))};
}

Fill::Fill(std::unique_ptr<Impl> impl) : m_impl(std::move(impl)) {}

Fill::~Fill() = default;

Result<std::unique_ptr<Fill>> Fill::begin(Writer& writer)
{
    auto impl = std::make_unique<Impl>(writer.impl());
    auto begun = guarded(writer.file(), [&]() -> Result<Done> {
        SQLite::Database& db = *impl->writer.db;
        impl->cacheBefore = numberOf(db, "PRAGMA cache_size");
        db.exec("PRAGMA cache_size = -" + std::to_string(kCacheKb));
        impl->transaction.emplace(db, SQLite::TransactionBehavior::IMMEDIATE);
        if (numberOf(db, "SELECT count(*) FROM (SELECT 1 FROM run_rows LIMIT 1)") > 0)
            return refuse("fill.not_empty", writer.file().string(),
                          {"%1 has runs in it already, and only an empty logbook is filled.", {writer.file().string()}},
                          "Name a file that is not there yet.");
        SQLite::Statement newest(db, "SELECT seq, link FROM seal_rows ORDER BY seq DESC LIMIT 1");
        if (newest.executeStep()) {
            impl->seq = impl->before = asUint(newest.getColumn(0).getInt64());
            impl->last = blobDigest(newest.getColumn(1));
        }
        SQLite::Statement kept(db, "SELECT what, id, edition, sha256 FROM definition_rows ORDER BY edition");
        while (kept.executeStep()) {
            const std::string what = kept.getColumn(0).getString(), id = kept.getColumn(1).getString();
            impl->editions[{what, id}] = kept.getColumn(2).getInt();
            impl->known[{what, kept.getColumn(3).getString()}] = kept.getColumn(2).getInt();
        }
        newest.reset();
        kept.reset();
        impl->aside.emplace(db);
        return Done{};
    });
    if (!begun) return begun.error();
    impl->thread = std::thread([raw = impl.get()] { raw->work(); });
    return std::unique_ptr<Fill>(new Fill(std::move(impl)));
}

Result<seal::Link> Fill::add(seal::Document document, const people::Signer& by, Instant at)
{
    const people::Actor& actor = by.actor();
    seal::Document sealed = seal::sealedBy(std::move(document), actor.id().value, actor.name(), at);
    seal::Head head = seal::headOf(sealed);
    const char* meaning = seal::meaningOf(sealed);
    Ready ready{{0,
                 sealed.kind,
                 std::move(head.id),
                 std::move(head.subject),
                 head.sealedAtMs,
                 std::move(head.person),
                 seal::write(sealed),
                 {},
                 {}},
                std::move(sealed),
                {}};
    return m_impl->seal(std::move(ready), meaning, by);
}

Result<seal::Link> Fill::add(LaidOut run, const people::Signer& by, Instant at)
{
    const people::Actor& actor = by.actor();
    const char* meaning = seal::meaningOfRun(run.answers.state);
    Ready ready{{0,
                 seal::Kind::Run,
                 run.answers.run,
                 {},
                 at.utcMs,
                 actor.id().value,
                 seal::sealedBy(std::move(run.document), actor.id().value, actor.name(), at),
                 {},
                 {}},
                std::move(run.answers),
                {}};
    return m_impl->seal(std::move(ready), meaning, by);
}

Result<int> Fill::define(std::string_view what, const run::Source& source, const people::Signer& by, Instant at)
{
    const std::string kind(what);
    int& edition = m_impl->known[{kind, source.sha256}];
    if (edition == 0) {
        edition = ++m_impl->editions[{kind, source.id}];
        run::Source next = source;
        next.edition = edition;
        const auto sealed = add(seal::definitionOf(kind, next), by, at);
        if (!sealed) return sealed.error();
    }
    return edition;
}

std::uint64_t Fill::added() const { return m_impl->seq - m_impl->before; }

Result<Done> Fill::finish()
{
    if (auto failed = m_impl->handOver()) return *std::move(failed);
    m_impl->stop();
    if (m_impl->failed) return *m_impl->failed;
    return guarded(m_impl->writer.file, [this]() -> Result<Done> {
        m_impl->aside->putBack();
        allWordsSearched(*m_impl->writer.db);
        m_impl->transaction->commit();
        m_impl->transaction.reset();
        Writer::Impl& writer = m_impl->writer;
        if (writer.keeper != nullptr) writer.keeper->tell(*writer.db, *writer.clock);
        return Done{};
    });
}

}  // namespace taut::logbook
