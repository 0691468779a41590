// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/logbook/copy.h"

#include <sys/stat.h>

#include "tests/core/logbook/keep_fixture.h"

using namespace taut;
using namespace taut::logbook;
using namespace taut::logbook::test;

namespace {

using Names = std::vector<std::string>;

}  // namespace

TEST_CASE("a copy is whole, verified, dated, for its owner's eyes only, and made while the writer is at work")
{
    Keeping shop;
    shop.sealRun();
    OpenRun open = shop.begin();
    const Copied copied = shop.copied();
    CHECK(copied.end == shop.end());
    CHECK(warnings(copied.findings).empty());
    CHECK(has(copied.findings, "keep.same_disk"));
    CHECK(namesIn(shop.elsewhere.path) == Names{copied.file.filename().string()});
    const std::string name = copied.file.filename().string();
    CHECK(name.rfind("shop-2025", 0) == 0);
    CHECK(name.size() == std::string("shop-YYYYMMDD-HHMMSS.logbook").size());
    struct stat file {};
    REQUIRE(::stat(copied.file.c_str(), &file) == 0);
    CHECK((file.st_mode & 0777U) == 0600U);
    isInOrder(copied.file, shop.end());
    // The open run and what opens people's doors are in it.
    CHECK(sqlite(copied.file, "SELECT count(DISTINCT run_id) FROM open_events").out == "1");
    CHECK(sqlite(copied.file, "SELECT count(*) FROM secret_rows").out == "2");
    must(open, run::Note{{"set.lift.seen"}, "still at work"}, *shop.inka);
}

TEST_CASE("a copy made under a writer that hardly rests is one moment of it")
{
    Keeping shop;
    shop.sealMore(60);
    std::atomic<bool> stop = false;
    std::atomic<int> written = 0;
    std::thread writer([&] {
        const auto matteo = shop.writer->signIn("p-1", "4821");
        for (int i = 0; !stop && matteo; ++i) {
            if (shop.writer->keepDefinition("job", "busy", "n = " + std::to_string(i) + "\n", *matteo)) ++written;
            std::this_thread::sleep_for(std::chrono::milliseconds(20));
        }
    });
    std::vector<Copied> copies;
    for (int i = 0; i < 2; ++i) {
        // However the two threads are given time, something is written between the copies.
        const int before = written;
        for (int waited = 0; written == before && waited < 2000; ++waited)
            std::this_thread::sleep_for(std::chrono::milliseconds(5));
        REQUIRE(written > before);
        copies.push_back(shop.copied());
    }
    stop = true;
    writer.join();
    for (const Copied& copied : copies) isInOrder(copied.file, copied.end);
    CHECK(copies[1].end.count > copies[0].end.count);
}

TEST_CASE("the newest copies stay, older ones give way, and what is no copy is left alone")
{
    Keeping shop;
    const CopyPlan plan{3, 7 * kDayMs};
    put(shop.elsewhere / "shop-20200101-000000.logbook", "somebody's notes");
    put(shop.elsewhere / "shop-20200101-000000.txt", "notes");
    put(shop.elsewhere / "workshop-20200101-000000.logbook", "notes");
    Names made;
    for (int i = 0; i < 5; ++i) {
        shop.sealMore();
        const Copied copied = shop.copied(plan);
        made.push_back(copied.file.filename().string());
        CHECK(copied.removed.size() == (i < 3 ? 0U : 1U));
    }
    Names stay{"shop-20200101-000000.logbook",    "shop-20200101-000000.txt", made[2], made[3], made[4],
               "workshop-20200101-000000.logbook"};
    CHECK(namesIn(shop.elsewhere.path) == stay);

    // The others that would stay are damaged: the last good one before them is not given up.
    for (const std::size_t i : {3U, 4U})
        tamper(shop.elsewhere / made[i], "UPDATE seal_rows SET document = CAST('x' AS BLOB) WHERE seq = 2");
    const Copied copied = shop.copied(plan);
    CHECK(copied.removed.empty());
    CHECK(warnings(copied.findings) == Names{"copy.others_broken"});
    CHECK(fs::exists(shop.elsewhere / made[2]));
}

TEST_CASE("what another PC copies into the same folder under the same name is neither counted nor removed")
{
    Keeping one, other;
    other.asAnotherPc();
    const fs::path share = one.elsewhere.path;
    const CopyPlan plan{2, 7 * kDayMs};
    const Instant now{1'764'052'863'000, 60};
    const auto days = [&](std::int64_t n) { return Instant{now.utcMs + n * kDayMs, 60}; };
    const auto copied = copyTo(one.file(), share, now, plan);
    REQUIRE(copied);
    CHECK_FALSE(isCopyDue(one.file(), share, days(1), plan));
    CHECK(isCopyDue(other.file(), share, days(1), plan));
    CHECK(newestCopy(other.file(), share, days(1)).empty());
    std::vector<fs::path> others;
    for (int i = 1; i <= 4; ++i) {
        const auto theirs = copyTo(other.file(), share, days(i), plan);
        REQUIRE(theirs);
        others.push_back(theirs->file);
        CHECK(theirs->removed == (i < 3 ? std::vector<fs::path>{} : std::vector{others.at(others.size() - 3)}));
    }
    CHECK(fs::exists(copied->file));
    CHECK(newestCopy(one.file(), share, days(9)) == copied->file);
    CHECK(newestCopy(other.file(), share, days(9)) == others.back());
    // Nor is a mirror that somebody gave such a name.
    const MirrorState mirror = mirrorTo(one.file(), share, now);
    fs::rename(mirror.file, share / "shop-20251127-000000.logbook");
    CHECK(newestCopy(one.file(), share, days(9)) == copied->file);
}

TEST_CASE("a copy that claims a day to come makes nothing due and takes no room")
{
    Keeping shop;
    const CopyPlan plan{3, 7 * kDayMs};
    const Instant now{1'764'052'863'000, 60};
    const auto weeks = [&](std::int64_t n) { return Instant{now.utcMs + n * 7 * kDayMs, 60}; };
    const auto ahead = copyTo(shop.file(), shop.elsewhere.path, weeks(500), plan);  // the clock was wrong for once
    REQUIRE(ahead);
    for (int i = 0; i < 5; ++i) {
        REQUIRE(copyIfDue(shop.file(), shop.elsewhere.path, weeks(i), plan).value());
        // However often the program starts in that week.
        for (int start = 0; start < 3; ++start)
            CHECK_FALSE(copyIfDue(shop.file(), shop.elsewhere.path, Instant{weeks(i).utcMs + start * kDayMs, 60}, plan)
                            .value());
    }
    CHECK(namesIn(shop.elsewhere.path) == Names{"shop-20251209-064103.logbook", "shop-20251216-064103.logbook",
                                                "shop-20251223-064103.logbook", ahead->file.filename().string()});
}

TEST_CASE("a copy is due when there is none of the past, and after a week")
{
    Keeping shop;
    const Instant now{1'764'052'863'000, 60};
    const auto later = [&](std::int64_t ms) { return Instant{now.utcMs + ms, 60}; };
    const auto first = copyIfDue(shop.file(), shop.elsewhere.path, now);
    REQUIRE(first);
    REQUIRE(first->has_value());
    CHECK((*first)->file.filename() == "shop-20251125-064103.logbook");
    CHECK_FALSE(copyIfDue(shop.file(), shop.elsewhere.path, later(6 * kDayMs)).value());
    CHECK(copyIfDue(shop.file(), shop.elsewhere.path, later(7 * kDayMs)).value());
    CHECK(isCopyDue(shop.file(), shop.elsewhere.path, later(-1)));
    CHECK_FALSE(isCopyDue(shop.file(), shop.elsewhere.path, now));
    // Twice in one second: neither is written over.
    CHECK(copyTo(shop.file(), shop.elsewhere.path, now)->file.filename() == "shop-20251125-064104.logbook");
}

TEST_CASE("a logbook that is not in order is not copied, and the refusal names the first thing wrong")
{
    Keeping shop;
    shop.sealMore(3);
    shop.writer.reset();
    tamper(shop.file(), "UPDATE seal_rows SET document = CAST(document || ' ' AS BLOB) WHERE seq = 5");
    const auto refused = copyTo(shop.file(), shop.elsewhere.path, shop.clock.now());
    REQUIRE_FALSE(refused);
    CHECK(refused.error().code == "copy.not_in_order");
    CHECK(sentence(refused.error()).find("seal 5") != std::string::npos);
    CHECK(namesIn(shop.elsewhere.path).empty());
    const auto missing = copyTo(shop.file(), shop.elsewhere / "none", shop.clock.now());
    REQUIRE_FALSE(missing);
    CHECK(missing.error().code == "keep.folder_missing");
}

TEST_CASE("the mirror in the same folder is read as a whole at each copy")
{
    Keeping shop;
    shop.writer->keepMirror(shop.elsewhere.path);
    const fs::path mirror = shop.mirrored().file;
    CHECK(warnings(shop.copied().findings).empty());
    tamper(mirror, "UPDATE seal_rows SET document = CAST(document || ' ' AS BLOB) WHERE seq = 3");
    const Copied copied = shop.copied();
    CHECK(warnings(copied.findings) == Names{"chain.broken"});
    CHECK(copied.findings.back().subject == mirror.string() + ", seal 3");
}
