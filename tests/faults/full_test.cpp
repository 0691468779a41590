// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/plain.h"
#include "tests/core/base/tiny_disk.h"
#include "tests/core/logbook/run_fixture.h"

// A disk that really runs full under a writer at work: what the system says of it, not what a test double says.

using namespace taut;
using namespace taut::logbook;
using namespace taut::logbook::test;

namespace {

constexpr std::uint64_t kDisk = 4U << 20U;
constexpr std::uint64_t kLeft = 96U << 10U;

void isClear(const Finding& finding, const fs::path& file)
{
    INFO(sentence(finding));
    CHECK(finding.code == "logbook.disk_full");
    const std::string said = sentence(finding);
    CHECK(said.find("There is no room left to write in " + file.string()) != std::string::npos);
    CHECK(said.find("Nothing was recorded. Free some room on this disk, then do the last thing again.") !=
          std::string::npos);
}

}  // namespace

TEST_CASE("a disk that runs full under a run is told in a sentence, loses nothing, and the run goes on with room again")
{
    taut::test::TinyDisk disk(kDisk);
    if (!disk.mounted()) {
        WARN("a disk of its own needs the right to mount: not tried here");
        return;
    }
    Press shop;
    shop.writer.reset();
    const fs::path file = disk / "shop.logbook";
    fs::copy_file(shop.file(), file);
    SteppedClock clock{{1'764'052'900'000, 60}, 1000};
    CountedIds ids;
    const auto writer = Writer::open(file, clock, ids, {false, "the test", 0});
    REQUIRE(writer);
    const auto inka = (*writer)->signIn("p-2", "4821");
    REQUIRE(inka);
    const auto signer = (*writer)->unlock("p-2", people::test::kChosen.passphrase);
    REQUIRE(signer);
    auto open = OpenRun::begin(**writer, {shop.sources, {}, {}}, *inka);
    REQUIRE(open);

    disk.fill(kLeft);
    const run::Note note{{"set.lift.seen"}, std::string(3000, 'x')};
    std::size_t written = 0;
    std::optional<Finding> refused;
    while (!refused && written < 200) {
        const auto done = open->perform(note, *inka);
        if (done)
            ++written;
        else
            refused = done.error();
    }
    REQUIRE(refused);
    isClear(*refused, file);
    CHECK(written > 0);
    CHECK(open->run().events().size() == 1 + written);
    // Others can still read it, and find all that was told to be on disk.
    const auto reader = openReader(file);
    REQUIRE(reader);
    const auto stored = (*reader)->openRun(open->run().id());
    REQUIRE(stored);
    CHECK(stored->events().size() == 1 + written);
    // As long as there is no room every further try is refused in the same way.
    const auto again = open->perform(note, *inka);
    REQUIRE_FALSE(again);
    isClear(again.error(), file);

    disk.empty();
    CHECK(open->perform(note, *inka));
    must(*open, run::Abandon{"The roll is used up"}, *inka);
    // Ended, and the seal finds no room: it stays ended and open, and is sealed when there is room.
    disk.fill(0);
    const auto sealed = open->seal(*signer);
    REQUIRE_FALSE(sealed);
    isClear(sealed.error(), file);
    CHECK(OpenRun::openRuns(**writer).value() == std::vector<std::string>{open->run().id()});
    disk.empty();
    CHECK(open->seal(*signer));
    CHECK(OpenRun::openRuns(**writer)->empty());
    const auto verified = verify(file, {}, Depth::Deep);
    REQUIRE(verified);
    for (const Finding& finding : verified->findings) FAIL_CHECK(sentence(finding));
}

TEST_CASE("a new logbook on a full disk is refused in a sentence and leaves nothing that looks like one")
{
    taut::test::TinyDisk disk(kDisk);
    if (!disk.mounted()) {
        WARN("a disk of its own needs the right to mount: not tried here");
        return;
    }
    SteppedClock clock{{1'764'052'900'000, 60}, 1000};
    CountedIds ids;
    disk.fill(16U << 10U);
    const fs::path file = disk / "new.logbook";
    const auto refused = Writer::open(file, clock, ids, {false, "the test", 0});
    REQUIRE_FALSE(refused);
    isClear(refused.error(), file);
    disk.empty();
    const auto opened = Writer::open(file, clock, ids, {false, "the test", 0});
    if (!opened) FAIL(sentence(opened.error()));
}
