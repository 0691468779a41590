// SPDX-License-Identifier: GPL-3.0-or-later
#include <chrono>
#include <csignal>
#include <cstdlib>
#include <iostream>
#include <random>
#include <thread>

#include "tests/core/logbook/run_fixture.h"

using namespace taut;
using namespace taut::logbook;
using namespace taut::logbook::test;

namespace {

int countFrom(const char* variable, int usual)
{
    const char* text = std::getenv(variable);
    return text != nullptr ? std::atoi(text) : usual;
}

/// What a writer was told is on disk: event n of its day's run, and how many seals there were.
struct Acknowledged {
    char run[40];
    std::uint64_t events;
    std::uint64_t seals;
};
static_assert(sizeof(Acknowledged) < 512, "a pipe takes this in one piece");

/// Walks runs for ever and says after each call what it was told. Never returns.
[[noreturn]] void writeUntilKilled(const fs::path& file, const run::Sources& sources, int pipe)
{
    SystemClock clock;
    RandomIds ids;
    const auto writer = Writer::open(file, clock, ids, {false, "to be killed", 0});
    if (!writer) ::_exit(2);
    const auto actor = (*writer)->signIn("p-2", "4821");
    if (!actor) ::_exit(3);
    const auto signer = (*writer)->unlock("p-2", people::test::kChosen.passphrase);
    if (!signer) ::_exit(3);
    const auto tell = [&](const run::Run& run) {
        Acknowledged told{};
        run.id().copy(told.run, sizeof told.run - 1);
        told.events = run.events().size();
        told.seals = (*writer)->reader().anchor()->count;
        if (::write(pipe, &told, sizeof told) != sizeof told) ::_exit(4);
    };
    std::optional<OpenRun> open;
    const auto left = OpenRun::openRuns(**writer);
    if (!left) ::_exit(5);
    for (const std::string& id : *left) {
        auto again = OpenRun::resume(**writer, id, *actor);
        if (!again) ::_exit(6);
        open = std::move(*again);
        tell(open->run());
    }
    for (;;) {
        if (!open) {
            auto begun = OpenRun::begin(**writer, {sources, {}, {}}, *actor);
            if (!begun) ::_exit(7);
            open = std::move(*begun);
        } else if (open->run().phase() == run::Phase::Interrupted) {
            if (!open->perform(resumed(), *actor)) ::_exit(8);
        } else if (open->run().phase() == run::Phase::Completed) {
            if (!open->seal(*signer)) ::_exit(9);
            tell(open->run());
            open.reset();
            continue;
        } else if (const auto next = open->run().next()) {
            const run::Answer answer{*next, run::mini::entryFor(open->run(), *open->run().plan().find(*next)), {}};
            if (!open->perform(answer, *actor)) ::_exit(10);
        } else if (!open->perform(run::SignOff{""}, *actor)) {
            ::_exit(11);
        }
        tell(open->run());
    }
}

}  // namespace

TEST_CASE("a writer killed at any moment loses nothing that was acknowledged")
{
    const int kills = countFrom("TAUTWEB_KILLS", 20);
    std::uint32_t seed = 0;
    for (const std::uint8_t byte : randomBytes(4)) seed = seed << 8U | byte;
    INFO("seed " << seed);
    std::mt19937 random(seed);
    std::uniform_int_distribution<int> microseconds(0, 400'000);
    Press shop;
    shop.writer.reset();
    std::uint64_t acknowledged = 0;
    int journals = 0;
    for (int kill = 1; kill <= kills; ++kill) {
        INFO("kill " << kill);
        std::array<int, 2> pipe{};
        REQUIRE(::pipe(pipe.data()) == 0);
        const pid_t child = ::fork();
        if (child == 0) writeUntilKilled(shop.file(), shop.sources, pipe[1]);
        ::close(pipe[1]);
        Acknowledged last{};
        // The first word says that it is at work; then it is killed in the middle of it.
        REQUIRE(::read(pipe[0], &last, sizeof last) == sizeof last);
        std::this_thread::sleep_for(std::chrono::microseconds(microseconds(random)));
        ::kill(child, SIGKILL);
        int status = 0;
        ::waitpid(child, &status, 0);
        REQUIRE(WIFSIGNALED(status));
        Acknowledged told{};
        ++acknowledged;
        while (::read(pipe[0], &told, sizeof told) == sizeof told) {
            last = told;
            ++acknowledged;
        }
        ::close(pipe[0]);
        if (fs::exists(shop.file().string() + "-journal")) ++journals;

        const auto verified = verify(shop.file(), {});
        REQUIRE(verified);
        for (const Finding& finding : verified->findings) FAIL_CHECK(finding.code << " " << finding.subject);
        CHECK(verified->end.count >= last.seals);
        CHECK(sqlite(shop.file(), "PRAGMA integrity_check").out == "ok");
        const auto reader = openReader(shop.file());
        REQUIRE(reader);
        const std::string id = last.run;
        const std::string stored =
            sqlite(shop.file(), "SELECT coalesce(max(n), 0) FROM open_events WHERE run_id = '" + id + "'").out;
        if (stored == "0") {
            const auto sealed = (*reader)->sealOfRun(id);
            REQUIRE(sealed);
            CHECK(seal::eventsOf(seal::read(sealed->document).value(), records::textsOf(**reader))->size() >=
                  last.events);
        } else {
            CHECK(std::stoull(stored) >= last.events);
        }
    }
    const auto end = verify(shop.file(), {});
    REQUIRE(end);
    std::cout << "kills " << kills << ", calls acknowledged " << acknowledged << ", lost 0, seals " << end->end.count
              << ", journals left behind and taken back " << journals << ", seed " << seed << "\n";
}
