// SPDX-License-Identifier: GPL-3.0-or-later
// The disk fails at its n-th call, for n = 1, 2, 3 ... until a whole walk needs no call that failed: as the makers of
// good stores test them.
#include <algorithm>
#include <cstdlib>
#include <iostream>
#include <set>

#include "core/base/chance.h"
#include "tests/core/logbook/run_fixture.h"
#include "tests/faults/bad_disk.h"
#include "tests/long_form.h"

using namespace taut;
using namespace taut::logbook;
using namespace taut::logbook::test;
using taut::faults::BadDisk;

namespace {

constexpr int kAnswers = 1;

/// What the program was told is on disk.
struct Told {
    std::string run;
    std::vector<std::string> events;
    bool sealed = false;
};

/// Number, kind and time of each event, as a live run, an open one on disk and a sealed document all say them.
std::string headOf(std::int64_t n, std::string_view what, std::string_view at)
{
    return std::to_string(n) + ' ' + std::string(what) + ' ' + std::string(at);
}
std::vector<std::string> headsOf(const Json& events)
{
    std::vector<std::string> heads;
    for (const Json& event : events.items())
        heads.push_back(headOf(event["n"].integer(), event["what"].text(), event["at"].text()));
    return heads;
}
std::vector<std::string> headsOf(const run::Run& run)
{
    Json events = Json::array();
    for (const run::Event& event : run.events()) {
        auto read = Json::parse(event.json());
        REQUIRE(read);
        events.add(std::move(*read));
    }
    return headsOf(events);
}

/// A short run from opening the logbook to its seal. A refusal is answered as the screen advises, by doing the last
/// thing again, as often as `again` says; then it is given up.
class ShortRun {
public:
    ShortRun(const fs::path& file, const run::Sources& sources, int again)
        : m_file(file),
          m_sources(sources),
          m_again(again)
    {}
    /// True when it came to its seal.
    bool go()
    {
        std::unique_ptr<Writer> writer;
        if (!keepTrying([&] { return take(Writer::open(m_file, m_clock, m_ids, {false, "the test", 0}), writer); }))
            return false;
        std::optional<people::Actor> inka;
        if (!keepTrying([&] { return take(writer->signIn("p-2", "4821"), inka); })) return false;
        std::optional<OpenRun> open;
        if (!keepTrying([&] { return take(OpenRun::begin(*writer, {m_sources, {}, {}}, *inka), open); })) return false;
        note(*open);
        for (int i = 0; i < kAnswers; ++i) {
            const auto next = open->run().next();
            REQUIRE(next);
            const run::Answer answer{*next, run::mini::entryFor(open->run(), *open->run().plan().find(*next)), {}};
            if (!perform(*open, answer, *inka)) return false;
        }
        if (!perform(*open, run::Abandon{"the disk makes noises"}, *inka)) return false;
        std::optional<people::Signer> signer;
        if (!keepTrying([&] { return take(writer->unlock("p-2", people::test::kChosen.passphrase), signer); }))
            return false;
        if (!keepTrying([&] { return static_cast<bool>(open->seal(*signer)); })) return false;
        told.sealed = true;
        return true;
    }
    Told told;

private:
    template <class From, class To>
    static bool take(Result<From> result, To& to)
    {
        if (!result) return false;
        to = std::move(*result);
        return true;
    }
    template <class F>
    bool keepTrying(const F& step)
    {
        for (int i = 0; i <= m_again; ++i)
            if (step()) return true;
        return false;
    }
    bool perform(OpenRun& open, const run::Command& command, const people::Actor& by)
    {
        if (!keepTrying([&] { return static_cast<bool>(open.perform(command, by)); })) return false;
        note(open);
        return true;
    }
    void note(const OpenRun& open)
    {
        told.run = open.run().id();
        told.events = headsOf(open.run());
    }
    fs::path m_file;
    run::Sources m_sources;
    int m_again;
    SteppedClock m_clock{{1'764'052'900'000, 60}, 1000};
    CountedIds m_ids;
};

/// The events of a run as the logbook has them, sealed or open.
std::vector<std::string> eventsKept(const records::Reader& reader, const std::string& run, bool sealed)
{
    if (!sealed) {
        const auto open = reader.openRun(run);
        REQUIRE(open);
        return headsOf(*open);
    }
    const auto seal = reader.sealOfRun(run);
    REQUIRE(seal);
    const auto document = seal::read(seal->document);
    REQUIRE(document);
    return headsOf(document->body["events"]);
}

/// What must be true of a logbook whatever its disk did: it opens, its chain holds, what was told is there, and its
/// run is either open or sealed.
void isWhole(const fs::path& file, const Told& told, std::uint64_t sealsBefore)
{
    SteppedClock clock{{1'764'053'900'000, 60}, 1000};
    CountedIds ids;
    const auto writer = Writer::open(file, clock, ids, {false, "after the fault", 0});
    if (!writer) FAIL(writer.error().code << ": " << writer.error().text.source);
    const auto verified = verify(file, {});
    REQUIRE(verified);
    CHECK(verified->findings.empty());
    const bool seals = verified->end.count > sealsBefore;
    if (told.sealed) CHECK(seals);
    const auto open = OpenRun::openRuns(**writer);
    REQUIRE(open);
    if (told.run.empty()) return;
    const bool isOpen = std::find(open->begin(), open->end(), told.run) != open->end();
    CHECK(isOpen != seals);
    const std::vector<std::string> kept = eventsKept((*writer)->reader(), told.run, !isOpen);
    REQUIRE(kept.size() >= told.events.size());
    CHECK(std::equal(told.events.begin(), told.events.end(), kept.begin()));
    // One more may have reached the disk in the moment in which the answer was lost.
    CHECK(kept.size() <= told.events.size() + 1);
}

constexpr std::uint64_t kStride = 3;
constexpr int kLeast = 200 / (static_cast<int>(kStride) + 1);

struct Count {
    int failed = 0, finished = 0;
};

/// In the short form every third or so, as the seed has it.
Count failAtEveryCall(BadDisk::Way way, std::uint64_t seed)
{
    Chance chance(seed);
    const auto step = [&] { return isLongForm() ? 1 : 1 + static_cast<std::int64_t>(chance.below(2 * kStride - 1)); };
    Press shop;
    const std::uint64_t seals = shop.writer->reader().anchor()->count;
    shop.writer.reset();
    const std::string whole = readFile(shop.file()).value();
    const fs::path file = shop.folder / "tried.logbook";
    BadDisk& disk = BadDisk::mounted();
    Count count;
    for (std::int64_t n = 1;; n += step()) {
        INFO("call " << n << ", seed " << seed);
        for (const char* tail : {"", "-journal", ".pen"}) fs::remove(file.string() + tail);
        REQUIRE(writeFile(file, whole));
        ShortRun walk(file, shop.sources, way == BadDisk::Way::Once ? 1 : 0);
        disk.arm(n, way, seed + static_cast<std::uint64_t>(n));
        const bool finished = walk.go();
        const bool struck = disk.struck();
        disk.mend();
        isWhole(file, walk.told, seals);
        if (!struck) {
            CHECK(finished);
            return count;
        }
        ++count.failed;
        count.finished += finished ? 1 : 0;
    }
}

}  // namespace

TEST_CASE("a call to the disk that fails once costs nothing that was told, and the last thing can be done again")
{
    const Count count = failAtEveryCall(BadDisk::Way::Once, 1);
    std::cout << "calls that failed once: " << count.failed << ", came to the seal all the same: " << count.finished
              << "\n";
    CHECK(count.failed >= kLeast);
    CHECK(count.finished == count.failed);
}

TEST_CASE("a disk that dies at any call costs nothing that was told, and leaves no half seal")
{
    const Count count = failAtEveryCall(BadDisk::Way::Gone, 1);
    std::cout << "calls at which the disk died: " << count.failed << "\n";
    CHECK(count.failed >= kLeast);
}

TEST_CASE("a power cut at any call, with unsynced writes lost in any part, costs nothing that was told")
{
    const char* text = std::getenv("TAUTWEB_CUTS");
    const int rounds = text != nullptr ? std::atoi(text) : 1;
    int cuts = 0;
    for (int i = 0; i < rounds; ++i)
        cuts += failAtEveryCall(BadDisk::Way::Power, 1000U * static_cast<std::uint64_t>(i + 1)).failed;
    std::cout << "power cuts: " << cuts << "\n";
    CHECK(cuts >= kLeast * rounds);
}
