// SPDX-License-Identifier: GPL-3.0-or-later
#include <sys/resource.h>

#include <csignal>
#include <cstdlib>
#include <iostream>
#include <random>

#include "tests/core/logbook/run_fixture.h"

using namespace taut;
using namespace taut::logbook;
using namespace taut::logbook::test;

namespace {

std::vector<std::string> documentsOf(const records::Reader& reader, std::uint64_t count)
{
    std::vector<std::string> all;
    for (std::uint64_t seq = 1; seq <= count; ++seq) {
        const auto seal = reader.seal(seq);
        all.push_back(seal ? seal->document : std::string("unreadable"));
    }
    return all;
}

}  // namespace

TEST_CASE("a changed byte anywhere never crashes and never passes as a sealed byte")
{
    const char* text = std::getenv("TAUTWEB_FLIPS");
    const int flips = text != nullptr ? std::atoi(text) : 150;
    Press shop;
    const people::Actor inka = shop.actor("p-2");
    OpenRun open = shop.begin();
    answerAll(open, inka);
    must(open, run::SignOff{""}, inka);
    REQUIRE(open.seal(*shop.signer("p-2")));
    const seal::Anchor anchor = shop.writer->reader().anchor().value();
    const std::vector<std::string> documents = documentsOf(shop.writer->reader(), anchor.count);
    shop.writer.reset();
    const std::string whole = readFile(shop.file()).value();
    const fs::path copy = shop.folder / "copy.logbook";
    std::mt19937 random(20'251'125);
    std::uniform_int_distribution<std::size_t> position(0, whole.size() - 1);
    std::uniform_int_distribution<int> bit(0, 7);
    int refused = 0;
    int found = 0;
    int harmless = 0;
    for (int i = 0; i < flips; ++i) {
        const std::size_t at = position(random);
        INFO("byte " << at);
        std::string bytes = whole;
        bytes[at] =
            static_cast<char>(static_cast<unsigned char>(bytes[at]) ^ (1U << static_cast<unsigned>(bit(random))));
        REQUIRE(writeFile(copy, bytes));
        const auto verified = verify(copy, {{anchor.count, hex(anchor.link)}});
        if (!verified) {
            ++refused;
            continue;
        }
        if (!verified->findings.empty()) {
            ++found;
            continue;
        }
        ++harmless;
        const auto reader = openReader(copy);
        REQUIRE(reader);
        CHECK(documentsOf(**reader, anchor.count) == documents);
    }
    std::cout << "bytes changed " << flips << ": refused at once " << refused << ", found by verify " << found
              << ", not in anything sealed " << harmless << "\n";
    CHECK(found > 0);
}

TEST_CASE("a disk without room is told in a sentence and nothing is half written")
{
    Press shop;
    OpenRun begun = shop.begin();
    const std::string id = begun.run().id();
    shop.writer.reset();
    // In a child, whose largest file is limited: the engine meets the same failing write as on a full disk.
    const pid_t child = ::fork();
    if (child == 0) {
        ::signal(SIGXFSZ, SIG_IGN);
        SystemClock clock;
        RandomIds ids;
        const auto writer = Writer::open(shop.file(), clock, ids, {false, "x", 0});
        if (!writer) ::_exit(2);
        const auto inka = (*writer)->signIn("p-2", "4821");
        auto open = OpenRun::resume(**writer, id, *inka);
        if (!open || !open->perform(resumed(), *inka)) ::_exit(3);
        rlimit limit{};
        ::getrlimit(RLIMIT_FSIZE, &limit);
        const rlim_t before = limit.rlim_cur;
        limit.rlim_cur = fs::file_size(shop.file()) + 20'000;
        ::setrlimit(RLIMIT_FSIZE, &limit);
        std::size_t written = open->run().events().size();
        const std::string note(3000, 'x');
        std::string code;
        for (int i = 0; i < 100 && code.empty(); ++i) {
            const auto done = open->perform(run::Note{{"set.lift.seen"}, note}, *inka);
            if (done)
                ++written;
            else
                code = done.error().code;
        }
        if (code != "logbook.disk" && code != "logbook.disk_full") ::_exit(4);
        if (open->run().events().size() != written) ::_exit(5);
        limit.rlim_cur = before;
        ::setrlimit(RLIMIT_FSIZE, &limit);
        // With room again it goes on where it was.
        if (!open->perform(run::Note{{"set.lift.seen"}, note}, *inka)) ::_exit(6);
        const auto stored = OpenRun::resume(**writer, id, *inka);
        if (!stored || stored->run().events().size() != written + 2) ::_exit(7);
        ::_exit(0);
    }
    int status = 0;
    ::waitpid(child, &status, 0);
    REQUIRE(WIFEXITED(status));
    CHECK(WEXITSTATUS(status) == 0);
    CHECK(verify(shop.file(), {})->findings.empty());
}
