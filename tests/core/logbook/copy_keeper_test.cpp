// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/logbook/copy_keeper.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include "tests/core/logbook/keep_fixture.h"

using namespace taut;
using namespace taut::logbook;
using namespace taut::logbook::test;

namespace {

constexpr std::int64_t kMinuteMs = 60'000;
constexpr Instant kNow{1'764'052'863'000, 60};

Instant after(std::int64_t ms) { return {kNow.utcMs + ms, kNow.offsetMinutes}; }

template <class Holds>
void until(const Holds& holds)
{
    for (int i = 0; i < 6000 && !holds(); ++i) std::this_thread::sleep_for(std::chrono::milliseconds(5));
    REQUIRE(holds());
}

/// Has the keeper look and waits until it has.
CopyState looked(CopyKeeper& keeper, Instant at)
{
    keeper.lookNow(at);
    until([&] { return keeper.idle(); });
    return keeper.state();
}

}  // namespace

TEST_CASE("a copy is made by itself when one is due, once a week, and told with its date and seals")
{
    Keeping shop;
    CopyKeeper keeper(shop.file(), shop.elsewhere.path);
    CHECK_FALSE(keeper.state().looked);
    const CopyState first = looked(keeper, kNow);
    CHECK_FALSE(first.whyNot);
    CHECK(first.newest.filename() == "shop-20251125-064103.logbook");
    CHECK(first.newestMs == kNow.utcMs);
    CHECK(first.seals == shop.end().count);
    isInOrder(first.newest, shop.end());
    shop.sealMore();
    CHECK(looked(keeper, after(6 * kDayMs)) == first);
    CHECK(namesIn(shop.elsewhere.path).size() == 1);
    const CopyState second = looked(keeper, after(7 * kDayMs));
    CHECK(second.newest != first.newest);
    CHECK(second.seals == shop.end().count);
    CHECK(namesIn(shop.elsewhere.path).size() == 2);
}

TEST_CASE("a keeper that begins knows the copies that are there, and waits until the next is due")
{
    Keeping shop;
    REQUIRE(copyIfDue(shop.file(), shop.elsewhere.path, kNow));
    CopyKeeper keeper(shop.file(), shop.elsewhere.path);
    const CopyState state = looked(keeper, after(3 * kDayMs));
    CHECK(state.newestMs == kNow.utcMs);
    CHECK_FALSE(state.seals);
    CHECK(namesIn(shop.elsewhere.path).size() == 1);
    looked(keeper, after(8 * kDayMs));
    CHECK(namesIn(shop.elsewhere.path).size() == 2);
}

TEST_CASE("a copy that cannot be made is told with why and what to do, and is made when it can be")
{
    Keeping shop;
    const fs::path stick = shop.elsewhere / "stick";
    CopyKeeper keeper(shop.file(), stick);
    const CopyState gone = looked(keeper, kNow);
    REQUIRE(gone.whyNot);
    CHECK(gone.whyNot->code == "keep.folder_missing");
    CHECK(gone.whyNot->severity == Severity::Warn);
    CHECK(gone.newest.empty());
    // The stick is in again: noticed at the next look.
    fs::create_directory(stick);
    const CopyState there = looked(keeper, after(kMinuteMs));
    CHECK_FALSE(there.whyNot);
    CHECK(there.seals == shop.end().count);

    // A logbook that is not in order is not copied, and not read as a whole every minute for that.
    shop.writer.reset();
    tamper(shop.file(), "UPDATE seal_rows SET document = CAST(document || ' ' AS BLOB) WHERE seq = 2");
    const CopyState broken = looked(keeper, after(8 * kDayMs));
    REQUIRE(broken.whyNot);
    CHECK(broken.whyNot->code == "copy.not_in_order");
    CHECK(broken.newest == there.newest);
    CHECK(looked(keeper, after(8 * kDayMs + kMinuteMs)) == broken);
    CHECK(namesIn(stick).size() == 1);
}

TEST_CASE("a file that claims a day to come does not make a copy at every look")
{
    Keeping shop;
    put(shop.elsewhere / "shop-20991231-000000.logbook", "somebody's notes");
    CopyKeeper keeper(shop.file(), shop.elsewhere.path);
    const CopyState first = looked(keeper, kNow);
    CHECK(first.newestMs == kNow.utcMs);
    for (int i = 1; i <= 3; ++i) looked(keeper, after(i * kMinuteMs));
    CHECK(namesIn(shop.elsewhere.path).size() == 2);
}

TEST_CASE("nobody waits for a copy: the writer goes on while one is made, and a keeper is left at once")
{
    Keeping shop;
    shop.sealMore(60);
    auto keeper = std::make_unique<CopyKeeper>(shop.file(), shop.elsewhere.path);
    keeper->lookNow(kNow);
    shop.sealMore(5);
    const auto started = std::chrono::steady_clock::now();
    keeper->leave();
    keeper.reset();
    CHECK(std::chrono::steady_clock::now() - started < std::chrono::seconds(1));
    // What was under way ends by itself, or leaves nothing that bears the name of a copy.
    const auto unfinished = [&] {
        const auto names = namesIn(shop.elsewhere.path);
        return std::any_of(names.begin(), names.end(), [](const std::string& name) { return name.front() == '.'; });
    };
    for (int quiet = 0, i = 0; quiet < 20 && i < 4000; ++i) {
        std::this_thread::sleep_for(std::chrono::milliseconds(10));
        quiet = unfinished() ? 0 : quiet + 1;
    }
    CHECK_FALSE(unfinished());
    for (const std::string& name : namesIn(shop.elsewhere.path))
        isInOrder(shop.elsewhere / name, verify(shop.elsewhere / name, {})->end);
    CopyKeeper idle(shop.file(), shop.elsewhere.path);
    CHECK(idle.endIdle());
}

TEST_CASE("a keeper that was left says that it works until it has ended, whether it had begun or not")
{
    Keeping shop;
    const fs::path mirror = mirrorTo(shop.file(), shop.elsewhere.path, kNow).file;
    CopyKeeper keeper(shop.file(), shop.elsewhere.path);
    {
        // Another program keeps the mirror busy, which is read after the copy.
        SQLite::Database held(mirror.string(), SQLite::OPEN_READWRITE);
        held.exec("BEGIN EXCLUSIVE");
        keeper.lookNow(kNow);
        until([&] { return keeper.state().working; });
        keeper.leave();
        CHECK_FALSE(keeper.idle());
        CHECK_FALSE(keeper.endIdle());
    }
    until([&] { return keeper.idle(); });
    CHECK(keeper.endIdle());
    for (int i = 0; i < 20; ++i) {
        CopyKeeper other(shop.file(), shop.elsewhere.path);
        other.lookNow(kNow);
        other.leave();
        until([&] { return other.idle(); });
    }
}
