// SPDX-License-Identifier: GPL-3.0-or-later
#include <SQLiteCpp/SQLiteCpp.h>
#include <sys/mount.h>

#include <csignal>
#include <cstdlib>
#include <iostream>
#include <random>
#include <thread>

#include "tests/core/base/tiny_disk.h"
#include "tests/core/logbook/keep_fixture.h"
#include "tests/faults/bad_disk.h"

// What is kept twice must not be worth less than what is kept once: mirrors, copies and restores on disks that fail,
// run full or lose their power.

using namespace taut;
using namespace taut::logbook;
using namespace taut::logbook::test;
using taut::faults::BadDisk;

namespace {

constexpr Instant kNow{1'764'052'999'000, 60};
using Codes = std::vector<std::string>;

/// Some work of one call, done on a disk that fails at its n-th call, for n = 1, 2, .. until nothing fails any more.
/// `before` puts the files back, `after` looks at what is there once the disk works again. Gives how often it failed.
template <class Before, class Work, class After>
std::int64_t onEachFailure(BadDisk::Way way, const Before& before, const Work& work, const After& after)
{
    BadDisk& disk = BadDisk::mounted();
    for (std::int64_t n = 1;; ++n) {
        INFO("call " << n);
        before();
        disk.arm(n, way, static_cast<std::uint64_t>(n));
        const bool done = work();
        const bool struck = disk.struck();
        disk.mend();
        after(done);
        if (!struck) {
            CHECK(done);
            return n - 1;
        }
        if (n > 2000) FAIL("it never ended without a failure");
    }
}

const std::pair<const char*, BadDisk::Way> kWays[] = {
    {"once", BadDisk::Way::Once}, {"gone", BadDisk::Way::Gone}, {"power", BadDisk::Way::Power}};

}  // namespace

TEST_CASE("a mirror on a disk that fails at any call is whole afterwards, and catches up")
{
    Keeping shop;
    REQUIRE(mirrorTo(shop.file(), shop.elsewhere.path, kNow).holdsAll());
    const fs::path mirror = shop.elsewhere / "shop-mirror.logbook", kept = shop.folder / "kept";
    const seal::Anchor old = shop.end();
    fs::copy_file(mirror, kept);
    shop.sealMore(2);
    const seal::Anchor end = shop.end();
    shop.writer.reset();
    std::int64_t failed = 0;
    for (const auto& [name, way] : kWays) {
        INFO(name);
        failed += onEachFailure(
            way,
            [&] {
                for (const std::string& there : namesIn(shop.elsewhere.path)) fs::remove(shop.elsewhere / there);
                fs::copy_file(kept, mirror);
            },
            [&] {
                const MirrorState state = mirrorTo(shop.file(), shop.elsewhere.path, kNow);
                return state.holdsAll() && warnings(state.findings).empty();
            },
            [&](bool done) {
                const auto verified = verify(mirror, {{old.count, hex(old.link)}});
                REQUIRE(verified);
                for (const Finding& finding : verified->findings) FAIL_CHECK(sentence(finding));
                if (done) CHECK(verified->end == end);
                const MirrorState state = mirrorTo(shop.file(), shop.elsewhere.path, kNow);
                CHECK(state.holdsAll());
                CHECK(warnings(state.findings).empty());
                isInOrder(mirror, end);
                isInOrder(shop.file(), end);
            });
    }
    std::cout << "mirror: " << failed << " calls failed, every time whole and caught up\n";
    CHECK(failed >= 60);
}

TEST_CASE("a copy on a disk that fails at any call has its name only when it is in order")
{
    Keeping shop;
    const seal::Anchor end = shop.end();
    shop.writer.reset();
    std::int64_t failed = 0;
    for (const auto& [name, way] : kWays) {
        INFO(name);
        failed += onEachFailure(
            way,
            [&] {
                for (const std::string& there : namesIn(shop.elsewhere.path)) fs::remove(shop.elsewhere / there);
            },
            [&] { return static_cast<bool>(copyTo(shop.file(), shop.elsewhere.path, kNow)); },
            [&](bool done) {
                const Codes names = namesIn(shop.elsewhere.path);
                std::size_t copies = 0;
                for (const std::string& there : names) {
                    if (there.front() == '.') continue;
                    ++copies;
                    isInOrder(shop.elsewhere / there, end);
                }
                CHECK(copies == (done ? 1U : 0U));
                isInOrder(shop.file(), end);
            });
    }
    std::cout << "copy: " << failed << " calls failed, no copy that is not in order\n";
    CHECK(failed >= 60);
}

TEST_CASE("a restore on a disk that fails at any call leaves the old or gives the new, and the old is kept either way")
{
    Keeping shop;
    const fs::path copy = shop.copied().file;
    const seal::Anchor older = shop.end();
    shop.sealMore();
    const seal::Anchor newer = shop.end();
    shop.writer.reset();
    const fs::path kept = shop.elsewhere / "kept";
    fs::copy_file(shop.file(), kept);
    std::int64_t failed = 0;
    for (const auto& [name, way] : kWays) {
        INFO(name);
        failed += onEachFailure(
            way,
            [&] {
                for (const std::string& there : namesIn(shop.folder.path)) fs::remove(shop.folder / there);
                fs::copy_file(kept, shop.file());
            },
            [&] { return static_cast<bool>(restoreFrom(copy, shop.file(), kNow)); },
            [&](bool done) {
                isInOrder(shop.file(), done ? older : newer);
                std::size_t aside = 0;
                for (const std::string& there : namesIn(shop.folder.path)) {
                    if (there.find("-aside-") == std::string::npos || there.find("-journal") != std::string::npos)
                        continue;
                    ++aside;
                    isInOrder(shop.folder / there, newer);
                }
                if (done) CHECK(aside == 1);
                isInOrder(copy, older);
            });
    }
    std::cout << "restore: " << failed << " calls failed, old or new every time, the old kept\n";
    CHECK(failed >= 60);
}

TEST_CASE("a restore that fails at its last step leaves what lay there as it was, its journal too")
{
    // A file that something is mounted on keeps its name, whoever wants to give that to another.
    struct Pinned {
        fs::path file;
        explicit Pinned(fs::path at) : file(std::move(at))
        {
            mounted = ::mount(file.c_str(), file.c_str(), nullptr, MS_BIND, nullptr) == 0;
        }
        ~Pinned()
        {
            if (mounted) ::umount2(file.c_str(), MNT_DETACH);
        }
        bool mounted;
    };
    taut::test::TinyDisk disk(4U << 20U);
    if (!disk.mounted()) {
        WARN("mounting needs a right that is not to be had: not tried here");
        return;
    }
    Keeping shop;
    const fs::path copy = shop.copied().file;
    shop.sealMore();
    const seal::Anchor end = shop.end();
    shop.writer.reset();
    const fs::path to = disk / "shop.logbook", journal = to.string() + "-journal";
    fs::copy_file(shop.file(), to);
    {
        const Pinned pinned(to);
        REQUIRE(pinned.mounted);
        // Another program is in the middle of a write.
        SQLite::Database other(to.string(), SQLite::OPEN_READWRITE);
        other.exec("BEGIN IMMEDIATE; UPDATE secret_rows SET failures = failures + 1");
        REQUIRE(fs::exists(journal));
        const std::string half = readFile(journal).value(), before = readFile(to).value();
        const auto refused = restoreFrom(copy, to, kNow);
        REQUIRE_FALSE(refused);
        CHECK(refused.error().code == "file.unwritable");
        CHECK(sentence(refused.error()).find("Nothing was changed") != std::string::npos);
        CHECK(namesIn(disk / "") == Codes{"shop.logbook", "shop.logbook-journal", "shop.logbook.pen"});
        CHECK(readFile(journal).value() == half);
        CHECK(readFile(to).value() == before);
    }
    isInOrder(to, end);
    {
        // No second name is to be had, and there is no room for a second file.
        const Pinned pinned(to);
        disk.fill(fs::file_size(copy) + fs::file_size(to) / 2);
        const auto refused = restoreFrom(copy, to, kNow);
        REQUIRE_FALSE(refused);
        CHECK(refused.error().code == "file.unwritable");
        CHECK(namesIn(disk / "") == Codes{"ballast", "shop.logbook", "shop.logbook.pen"});
        disk.empty();
    }
    isInOrder(to, end);
    const auto restored = restoreFrom(copy, to, kNow);
    if (!restored) FAIL(sentence(restored.error()));
    isInOrder(restored->setAside, end);
}

TEST_CASE("a program killed while it copies leaves nothing under a copy's name that is not in order")
{
    const char* asked = std::getenv("TAUTWEB_KILLS");
    const int kills = asked != nullptr ? std::atoi(asked) : 20;
    Keeping shop;
    shop.sealMore(40);
    const seal::Anchor end = shop.end();
    shop.writer.reset();
    std::uint32_t seed = 0;
    for (const std::uint8_t byte : randomBytes(4)) seed = seed << 8U | byte;
    INFO("seed " << seed);
    std::mt19937 random(seed);
    std::uniform_int_distribution<int> microseconds(0, 120'000);
    std::size_t unfinished = 0, copies = 0;
    for (int kill = 0; kill < kills; ++kill) {
        for (const std::string& there : namesIn(shop.elsewhere.path)) fs::remove(shop.elsewhere / there);
        const pid_t child = ::fork();
        if (child == 0) {
            for (std::int64_t n = 0;; ++n)
                if (!copyTo(shop.file(), shop.elsewhere.path, Instant{kNow.utcMs + n * 1000, 60})) ::_exit(1);
        }
        std::this_thread::sleep_for(std::chrono::microseconds(microseconds(random)));
        ::kill(child, SIGKILL);
        int status = 0;
        ::waitpid(child, &status, 0);
        REQUIRE(WIFSIGNALED(status));
        for (const std::string& there : namesIn(shop.elsewhere.path)) {
            if (there.front() == '.') {
                ++unfinished;
                continue;
            }
            ++copies;
            isInOrder(shop.elsewhere / there, end);
        }
    }
    std::cout << "kills " << kills << " while copying: " << copies << " copies, all in order, " << unfinished
              << " unfinished under no copy's name, seed " << seed << "\n";
    // What they left behind is swept away a day later.
    (void)copyTo(shop.file(), shop.elsewhere.path, kNow);
    put(shop.elsewhere / ".shop-00.part", "x");
    const Instant later{SystemClock().now().utcMs + 2 * 24 * 3'600'000LL, 0};
    REQUIRE(copyTo(shop.file(), shop.elsewhere.path, later));
    for (const std::string& there : namesIn(shop.elsewhere.path)) CHECK(there.front() != '.');
}

TEST_CASE("a stick that runs full under mirror and copy holds up no seal, and both are made when there is room")
{
    taut::test::TinyDisk disk(3U << 20U);
    if (!disk.mounted()) {
        WARN("a disk of its own needs the right to mount: not tried here");
        return;
    }
    Keeping shop;
    const fs::path folder = disk / "";
    shop.writer->keepMirror(folder);
    REQUIRE(shop.mirrored().holdsAll());
    disk.fill(8U << 10U);
    shop.sealRun();
    const MirrorState full = shop.mirrored();
    CHECK(warnings(full.findings) == Codes{"logbook.disk_full"});
    CHECK_FALSE(full.holdsAll());
    const auto refused = copyTo(shop.file(), folder, kNow);
    REQUIRE_FALSE(refused);
    CHECK(refused.error().code == "logbook.disk_full");
    for (const std::string& there : namesIn(folder)) CHECK(there.find(".part") == std::string::npos);
    disk.empty();
    shop.sealMore();
    CHECK(shop.mirrored().holdsAll());
    isInOrder(shop.mirrored().file, shop.end());
    CHECK(copyTo(shop.file(), folder, kNow));
}

TEST_CASE("a medium that can only be read gives a logbook to read and restore, and takes no logbook, mirror or copy")
{
    taut::test::TinyDisk disk(3U << 20U);
    if (!disk.mounted()) {
        WARN("a disk of its own needs the right to mount: not tried here");
        return;
    }
    Keeping shop;
    const fs::path folder = disk / "";
    shop.sealRun();
    const auto copied = copyTo(shop.file(), folder, kNow);
    REQUIRE(copied);
    REQUIRE(::mount("tmpfs", folder.c_str(), "tmpfs", MS_REMOUNT | MS_RDONLY, nullptr) == 0);
    CHECK(mediumOf(folder) == Medium::ReadOnly);
    CHECK(openReader(copied->file));
    isInOrder(copied->file, shop.end());
    const auto refused = Writer::open(copied->file, shop.clock, shop.ids, {false, "somebody", 0});
    REQUIRE_FALSE(refused);
    CHECK(refused.error().code == "logbook.on_read_only");
    CHECK(copyTo(shop.file(), folder, kNow).error().code == "keep.read_only");
    CHECK(warnings(mirrorTo(shop.file(), folder, kNow).findings) == Codes{"keep.read_only"});
    CHECK(restoreFrom(shop.file(), copied->file, kNow).error().code == "logbook.on_read_only");
    const auto restored = restoreFrom(copied->file, shop.folder / "again.logbook", kNow);
    if (!restored) FAIL(sentence(restored.error()));
    isInOrder(shop.folder / "again.logbook", shop.end());
}
