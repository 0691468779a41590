// SPDX-License-Identifier: GPL-3.0-or-later
// How long it takes until an operator's answer is on disk, until a run is sealed, and until a logbook is verified, each
// beside what the disk, the hashing and the parsing alone would take: the same bytes through the engine's C interface,
// libsodium and the JSON library, without any code of ours. Usage: seal_bench STORE [BATCHES]; STORE is a made store
// (history_bench), it is read; what is written goes into copies beside it, which are removed. Exit 1 when a limit is
// not kept.
#include <sodium.h>
#include <sqlite3.h>
#include <sys/statfs.h>

#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <filesystem>
#include <functional>
#include <limits>

#include <nlohmann/json.hpp>

#include "core/units/plain.h"
#include "tests/bench/at_press.h"
#include "tests/bench/overheard.h"
#include "tests/bench/stopwatch.h"
#include "tests/bench/told.h"
#include "tests/bench/twin.h"

using namespace taut;

namespace {

namespace fs = std::filesystem;

constexpr double kMostEvent = 1.2, kMostSeal = 1.5, kMostVerify = 1.5, kMostDeep = 1.5;
constexpr int kRunsABatch = 5;

template <class T>
T must(Result<T> result)
{
    if (result) return *std::move(result);
    std::fprintf(stderr, "%s\n", sentence(result.error()).c_str());
    std::exit(4);
}

[[noreturn]] void end(const char* why)
{
    std::fprintf(stderr, "%s\n", why);
    std::exit(4);
}

double timeOf(const std::function<void()>& work)
{
    const auto start = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count();
}

double middle(std::vector<double> times)
{
    const auto at = times.begin() + static_cast<std::ptrdiff_t>(times.size() / 2);
    std::nth_element(times.begin(), at, times.end());
    return *at;
}

/// Copies of a store, gone when this ends.
class Copies {
public:
    explicit Copies(const fs::path& store)
    {
        for (const char* name : {".ours", ".told", ".twin"}) {
            m_files.push_back(store.string() + name);
            fs::copy_file(store, m_files.back(), fs::copy_options::overwrite_existing);
        }
    }
    ~Copies()
    {
        std::error_code ignored;
        for (const std::string& file : m_files)
            for (const char* end : {"", ".pen", "-journal"}) fs::remove(file + end, ignored);
    }
    Copies(const Copies&) = delete;
    Copies& operator=(const Copies&) = delete;
    [[nodiscard]] const std::string& ours() const { return m_files[0]; }
    [[nodiscard]] const std::string& told() const { return m_files[1]; }
    [[nodiscard]] const std::string& twin() const { return m_files[2]; }

private:
    std::vector<std::string> m_files;
};

/// A writer by a clock that stands until told, with somebody who has shown who they are: the key's passphrase has cost
/// what it costs.
class Desk {
public:
    Desk(const std::string& file, std::int64_t nowMs, bool isHeard) : m_clock({nowMs, 60})
    {
        const auto open = [&] { m_writer = must(logbook::Writer::open(file, m_clock, m_ids, {false, "seal_bench"})); };
        isHeard ? bench::makeHeard(open) : open();
        m_by.emplace(must(m_writer->unlock("p-2", "copper kettle by the window")));
    }
    void begin(const std::string& procedure)
    {
        m_open.emplace(
            must(logbook::OpenRun::begin(*m_writer, bench::beginningBy(*m_writer, procedure), m_by->actor())));
    }
    void pass(std::int64_t ms) { m_clock.advance(ms); }
    void perform(const run::Command& deed) { (void)must(m_open->perform(deed, m_by->actor())); }
    [[nodiscard]] seal::Seal seal() { return must(m_open->seal(*m_by)); }
    [[nodiscard]] const run::Run& run() const { return m_open->run(); }
    [[nodiscard]] const logbook::Writer& writer() const { return *m_writer; }

private:
    SteppedClock m_clock;
    CountedIds m_ids;
    std::unique_ptr<logbook::Writer> m_writer;
    std::optional<people::Signer> m_by;
    std::optional<logbook::OpenRun> m_open;
};

/// SHA-256 over the link before and the document, and a signature of it: what sealing costs besides the disk.
class ByHand {
public:
    ByHand() { crypto_sign_keypair(m_public, m_secret); }
    seal::Link hashAndSign(const seal::Link& previous, const std::string& document)
    {
        seal::Link link{};
        crypto_hash_sha256_state state;
        crypto_hash_sha256_init(&state);
        crypto_hash_sha256_update(&state, previous.data(), previous.size());
        crypto_hash_sha256_update(&state, reinterpret_cast<const unsigned char*>(document.data()), document.size());
        crypto_hash_sha256_final(&state, link.data());
        std::string text(seal::kSealPurpose);
        text += '\0';
        text.append(reinterpret_cast<const char*>(link.data()), link.size());
        crypto_sign_detached(m_signature, nullptr, reinterpret_cast<const unsigned char*>(text.data()), text.size(),
                             m_secret);
        return link;
    }

private:
    unsigned char m_public[crypto_sign_PUBLICKEYBYTES]{}, m_secret[crypto_sign_SECRETKEYBYTES]{},
        m_signature[crypto_sign_BYTES]{};
};

struct Times {
    std::vector<double> ours, floor;
};

/// The same runs by the program, once unheard and timed and once heard, and by the twin: in turns, so that none has a
/// quieter machine than the others.
class Writing {
public:
    Writing(const Copies& copies, std::int64_t nowMs, std::string procedure)
        : m_procedure(std::move(procedure)),
          m_ours(copies.ours(), nowMs, false),
          m_heard(copies.told(), nowMs, true),
          m_twin(copies.twin())
    {}

    void oneRun(Times& events, Times& seals)
    {
        m_ours.begin(m_procedure);
        follow(bench::heardChanges([&] { m_heard.begin(m_procedure); }));
        while (m_ours.run().phase() == run::Phase::Running) oneDeed(events);
        steps = m_ours.run().plan().steps.size();
        pass(30'000);
        seal::Seal own;
        seals.ours.push_back(timeOf([&] { own = m_ours.seal(); }));
        seal::Seal told;
        m_twin.prepare(bench::heardChanges([&] { told = m_heard.seal(); }));
        seal::Link link{};
        seals.floor.push_back(timeOf([&] {
            link = m_hand.hashAndSign(told.previous, told.document);
            m_twin.commit();
        }));
        if (link != own.link || link != told.link) end("the two did not seal the same");
        bytes = own.document.size();
    }
    [[nodiscard]] std::string settings() const { return m_twin.settings(); }
    std::size_t steps = 0, bytes = 0;

private:
    void pass(std::int64_t ms)
    {
        m_ours.pass(ms);
        m_heard.pass(ms);
    }
    void follow(const std::vector<std::string>& changes)
    {
        m_twin.prepare(changes);
        m_twin.commit();
    }
    void oneDeed(Times& events)
    {
        pass(25'000);
        const run::Command deed = bench::nextDeed(m_ours.run(), m_chance);
        events.ours.push_back(timeOf([&] { m_ours.perform(deed); }));
        std::vector<std::string> event = bench::heardChanges([&] { m_heard.perform(deed); }), others;
        // The bare commit is that of the event alone; what else the program kept up is not the floor's to pay.
        for (auto it = event.begin(); it != event.end();)
            if (it->starts_with("INSERT INTO open_events"))
                ++it;
            else {
                others.push_back(std::move(*it));
                it = event.erase(it);
            }
        m_twin.prepare(event);
        events.floor.push_back(timeOf([&] { m_twin.commit(); }));
        if (!others.empty()) follow(others);
    }

    std::string m_procedure;
    Desk m_ours, m_heard;
    bench::Twin m_twin;
    ByHand m_hand;
    Chance m_chance{1};
};

/// The median of each batch; of those the quietest.
bool written(const fs::path& store, long long runs, bool isBrief, int batches)
{
    const Copies copies(store);
    constexpr std::int64_t kDayMs = 86'400'000;
    const std::int64_t last = bench::Plain(store).number("SELECT max(sealed_at) FROM seal_rows");
    Writing writing(copies, last + kDayMs, isBrief ? "short_start" : "cold_start");
    double event = std::numeric_limits<double>::infinity(), bareCommit = event, sealed = event, byHand = event;
    for (int batch = 0; batch < batches; ++batch) {
        Times events, seals;
        for (int i = 0; i < kRunsABatch; ++i) writing.oneRun(events, seals);
        event = std::min(event, middle(events.ours));
        bareCommit = std::min(bareCommit, middle(events.floor));
        sealed = std::min(sealed, middle(seals.ours));
        byHand = std::min(byHand, middle(seals.floor));
    }
    bench::hand("note\twhat is written: " + writing.settings());
    std::printf("%s\n", writing.settings().c_str());
    bench::tellGrowth(isBrief ? "event on disk (short runs)" : "event on disk", runs, event, bareCommit);
    bench::tellGrowth(isBrief ? "seal a run (short runs)" : "seal a run", runs, sealed, byHand);
    if (isBrief) {
        std::printf("%lld short runs: event %.3f ms, bare commit %.3f ms; seal %.3f ms, by hand %.3f ms\n", runs, event,
                    bareCommit, sealed, byHand);
        return true;
    }
    const bool prompt = bench::tell({"event on disk / bare commit of it", event, bareCommit, kMostEvent});
    const std::string what = "seal a run of " + std::to_string(writing.steps) + " steps, " +
                             std::to_string(writing.bytes / 1000) + " kB / by hand";
    return bench::tell({what, sealed, byHand, kMostSeal}) && prompt;
}

/// Every seal of a file, through the engine's C interface.
class Seals {
public:
    using Look = std::function<void(std::string_view previous, std::string_view document, std::string_view link)>;
    explicit Seals(const fs::path& file)
    {
        if (sqlite3_open_v2(file.c_str(), &m_db, SQLITE_OPEN_READONLY, nullptr) != SQLITE_OK) end(sqlite3_errmsg(m_db));
    }
    ~Seals() { sqlite3_close(m_db); }
    Seals(const Seals&) = delete;
    Seals& operator=(const Seals&) = delete;
    void each(const char* sql, const Look& look) const
    {
        sqlite3_stmt* rows = nullptr;
        if (sqlite3_prepare_v2(m_db, sql, -1, &rows, nullptr) != SQLITE_OK) end(sqlite3_errmsg(m_db));
        const auto blob = [&](int i) {
            const void* bytes = sqlite3_column_blob(rows, i);
            return std::string_view(static_cast<const char*>(bytes),
                                    static_cast<std::size_t>(sqlite3_column_bytes(rows, i)));
        };
        while (sqlite3_step(rows) == SQLITE_ROW) look(blob(0), blob(1), blob(2));
        sqlite3_finalize(rows);
    }

private:
    sqlite3* m_db = nullptr;
};

const unsigned char* bytesIn(std::string_view text) { return reinterpret_cast<const unsigned char*>(text.data()); }

/// Every link hashed, every signature checked.
void hashAndCheck(const Seals& seals)
{
    seals.each("SELECT previous_link, document, link FROM seal_rows ORDER BY seq",
               [](std::string_view previous, std::string_view document, std::string_view link) {
                   unsigned char made[crypto_hash_sha256_BYTES];
                   crypto_hash_sha256_state state;
                   crypto_hash_sha256_init(&state);
                   crypto_hash_sha256_update(&state, bytesIn(previous), previous.size());
                   crypto_hash_sha256_update(&state, bytesIn(document), document.size());
                   crypto_hash_sha256_final(&state, made);
                   if (std::memcmp(made, link.data(), sizeof made) != 0) end("a link does not hold");
               });
    seals.each("SELECT g.key, g.signature, s.link FROM signature_rows AS g JOIN seal_rows AS s ON s.seq = g.seq",
               [](std::string_view key, std::string_view signature, std::string_view link) {
                   std::string text(seal::kSealPurpose);
                   text += '\0';
                   text += link;
                   if (crypto_sign_verify_detached(bytesIn(signature), bytesIn(text), text.size(), bytesIn(key)) != 0)
                       end("a signature does not hold");
               });
}

void parse(const Seals& seals)
{
    std::size_t members = 0;
    seals.each("SELECT previous_link, document, link FROM seal_rows ORDER BY seq",
               [&](std::string_view, std::string_view document, std::string_view) {
                   members += nlohmann::json::parse(document).size();
               });
    if (members == 0) end("there is nothing to parse");
}

void inOrder(const fs::path& store, logbook::Depth depth)
{
    const auto found = must(logbook::verify(store, {}, depth));
    if (!found.findings.empty()) end(sentence(found.findings.front()).c_str());
}

bool verified(const fs::path& store, long long runs, bool isBrief)
{
    constexpr int kRounds = 3;
    const Seals seals(store);
    double walk = std::numeric_limits<double>::infinity(), hash = walk, deep = walk, parsing = walk;
    for (int i = 0; i < kRounds; ++i) {
        hash = std::min(hash, timeOf([&] { hashAndCheck(seals); }));
        walk = std::min(walk, timeOf([&] { inOrder(store, logbook::Depth::Seals); }));
        parsing = std::min(parsing, timeOf([&] { parse(seals); }));
        deep = std::min(deep, timeOf([&] { inOrder(store, logbook::Depth::Deep); }));
    }
    bench::tellGrowth(isBrief ? "verify (short runs)" : "verify", runs, walk, hash);
    bench::tellGrowth(isBrief ? "verify --deep (short runs)" : "verify --deep", runs, deep, parsing);
    if (isBrief) {
        std::printf("%lld short runs: verify %.0f ms, hashing %.0f ms; deep %.0f ms, parsing %.0f ms\n", runs, walk,
                    hash, deep, parsing);
        return true;
    }
    const std::string of = std::to_string(runs) + " full runs";
    const bool quick = bench::tell({"verify " + of + " / SHA-256, Ed25519", walk, hash, kMostVerify});
    return bench::tell({"verify --deep " + of + " / parsing", deep, parsing, kMostDeep}) && quick;
}

}  // namespace

int main(int argc, char** argv)
{
    if (argc < 2 || sodium_init() < 0) {
        std::fprintf(stderr, "seal_bench STORE [BATCHES]\n");
        return 2;
    }
    constexpr int kBatches = 5;
    const fs::path store = argv[1];
    const int batches = argc > 2 ? std::atoi(argv[2]) : kBatches;
    const long long runs = bench::Plain(store).number("SELECT count(*) FROM run_rows WHERE seq IS NOT NULL");
    const bool isBrief =
        bench::Plain(store).number("SELECT count(*) FROM definition_rows WHERE what = 'procedure' AND id = "
                                   "'short_start'") > 0;
    const bool prompt = batches <= 0 || written(store, runs, isBrief, batches);
    return verified(store, runs, isBrief) && prompt ? 0 : 1;
}
