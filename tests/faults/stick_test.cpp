// SPDX-License-Identifier: GPL-3.0-or-later
#include <fcntl.h>
#include <sys/mount.h>
#include <unistd.h>

#include <cerrno>
#include <cstdlib>
#include <functional>
#include <new>

#include "tests/core/base/tiny_disk.h"
#include "tests/core/logbook/keep_fixture.h"

// Folders for what is kept twice that are not what a disk of this PC is: sticks whose file system knows no second
// names, folders that can no longer be written in, and a program that is short of memory while it mirrors.

namespace {

std::atomic<bool> noSecondNames = false;
/// So many requests for memory fail, on every thread but that of the test.
std::atomic<int> noMemory = 0;
const std::thread::id kOfTheTest = std::this_thread::get_id();

struct Stick {
    Stick() { noSecondNames = true; }
    ~Stick() { noSecondNames = false; }
    Stick(const Stick&) = delete;
    Stick& operator=(const Stick&) = delete;
};

}  // namespace

/// The system's call, which a FAT file system answers so.
extern "C" int link(const char* from, const char* to) noexcept
{
    if (!noSecondNames) return ::linkat(AT_FDCWD, from, AT_FDCWD, to, 0);
    errno = EPERM;
    return -1;
}

void* operator new(std::size_t size)
{
    if (noMemory > 0 && std::this_thread::get_id() != kOfTheTest) {
        --noMemory;
        throw std::bad_alloc();
    }
    if (void* got = std::malloc(size > 0 ? size : 1)) return got;
    throw std::bad_alloc();
}
void* operator new(std::size_t size, const std::nothrow_t&) noexcept { return std::malloc(size > 0 ? size : 1); }
void operator delete(void* given) noexcept { std::free(given); }
void operator delete(void* given, std::size_t) noexcept { std::free(given); }

using namespace taut;
using namespace taut::logbook;
using namespace taut::logbook::test;

namespace {

constexpr Instant kNow{1'764'052'999'000, 60};
using Codes = std::vector<std::string>;

/// What makes mirroring into a folder impossible, and possible again.
struct Trouble {
    const char* name;
    const char* code;
    std::function<void()> begins, ends;
};

}  // namespace

TEST_CASE("on a stick that knows no second names nothing takes the name of what is there")
{
    const Stick stick;
    Keeping one, other;
    other.asAnotherPc();
    other.sealMore(2);
    const fs::path share = one.elsewhere.path;
    for (Keeping* shop : {&one, &other}) {
        for (int turn = 0; turn < 2; ++turn) {
            const MirrorState state = mirrorTo(shop->file(), share, kNow);
            CHECK(warnings(state.findings).empty());
            REQUIRE(state.holdsAll());
            isInOrder(state.file, shop->end());
        }
        const auto copied = copyTo(shop->file(), share, kNow);
        REQUIRE(copied);
        isInOrder(copied->file, shop->end());
    }
    CHECK(namesIn(share) == Codes{"shop-20251125-064319.logbook", "shop-20251125-064320.logbook",
                                  "shop-mirror-20251125-064319.logbook", "shop-mirror.logbook"});
    isInOrder(share / "shop-mirror.logbook", one.end());
    // What is restored there is kept beside it as a plain copy.
    const fs::path to = share / "back.logbook";
    REQUIRE(restoreFrom(share / "shop-20251125-064319.logbook", to, kNow));
    one.sealMore();
    const auto newer = copyTo(one.file(), share, Instant{kNow.utcMs + 60'000, 60});
    REQUIRE(newer);
    const seal::Anchor older = verify(to, {})->end;
    const auto restored = restoreFrom(newer->file, to, kNow);
    if (!restored) FAIL(sentence(restored.error()));
    isInOrder(restored->setAside, older);
    isInOrder(to, one.end());
}

TEST_CASE("on a stick that is pulled out between taking a name and giving it nothing stays under that name")
{
    const Stick stick;
    Keeping shop;
    const fs::path folder = shop.elsewhere.path;
    // An empty file is what a program leaves there that was killed in between: no copy, and no mirror.
    put(folder / "shop-mirror.logbook", "");
    put(folder / "shop-20251125-064319.logbook", "");
    const MirrorState state = mirrorTo(shop.file(), folder, kNow);
    CHECK(warnings(state.findings) == Codes{"logbook.not_a_logbook"});
    CHECK(state.holdsAll());
    CHECK(state.file == folder / "shop-mirror-20251125-064319.logbook");
    CHECK(warnings(mirrorTo(shop.file(), folder, kNow).findings).empty());
    CHECK(isCopyDue(shop.file(), folder, kNow));
    const auto copied = copyTo(shop.file(), folder, kNow);
    REQUIRE(copied);
    CHECK(copied->file == folder / "shop-20251125-064320.logbook");
}

TEST_CASE("a mirror that cannot be written costs no answer, is told until it can, and then catches up")
{
    taut::test::TinyDisk disk(6U << 20U);
    Keeping shop;
    const fs::path folder = disk.mounted() ? disk / "" : shop.elsewhere.path;
    const fs::path at = folder / "mirror", away = folder / "away";
    fs::create_directory(at);
    const auto remount = [&](unsigned long flags) {
        REQUIRE(::mount("tmpfs", folder.c_str(), "tmpfs", MS_REMOUNT | flags, nullptr) == 0);
    };
    std::vector<Trouble> all{{"a file in the folder's place", "mirror.folder_missing",
                              [&] {
                                  fs::rename(at, away);
                                  put(at, "in the way");
                              },
                              [&] {
                                  fs::remove(at);
                                  fs::rename(away, at);
                              }},
                             {"no memory", "mirror.failed", [] {}, [] {}}};
    if (disk.mounted())
        all.push_back(
            {"a folder that can only be read", "keep.read_only", [&] { remount(MS_RDONLY); }, [&] { remount(0); }});
    else
        WARN("mounting needs a right that is not to be had: a folder that can only be read is not tried here");
    OpenRun open = shop.begin();
    const auto answers = [&] { return std::stoi(sqlite(shop.file(), "SELECT count(*) FROM open_events").out); };
    shop.writer->keepMirror(at);
    REQUIRE(shop.mirrored().holdsAll());
    const fs::path mirror = shop.mirrored().file;
    for (const Trouble& one : all) {
        INFO(one.name);
        const seal::Anchor before = shop.end();
        one.begins();
        for (int turn = 0; turn < 3; ++turn) {
            const int stood = answers();
            if (one.code == std::string("mirror.failed")) noMemory = 1;
            REQUIRE(answerNext(open, *shop.inka));
            CHECK(answers() > stood);
            shop.sealMore();
            const MirrorState state = shop.mirrored();
            CHECK(noMemory == 0);
            CHECK(warnings(state.findings) == Codes{one.code});
            for (const Finding& finding : state.findings) CHECK_FALSE(finding.remedy.empty());
            CHECK_FALSE(state.holdsAll());
        }
        one.ends();
        isInOrder(mirror, before);
        shop.sealMore();
        const MirrorState well = shop.mirrored();
        CHECK(warnings(well.findings).empty());
        CHECK(well.holdsAll());
        CHECK(well.file == mirror);
        isInOrder(mirror, shop.end());
        isInOrder(shop.file(), shop.end());
    }
}
