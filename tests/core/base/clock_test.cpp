// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/clock.h"

#include <catch2/catch.hpp>

using namespace taut;

TEST_CASE("a moment is written as RFC 3339 says and read back")
{
    struct Row {
        std::int64_t ms;
        const char* text;
    };
    // Seconds from `date -u -d TEXT +%s` of GNU coreutils.
    for (const Row& row :
         {Row{0, "1970-01-01T00:00:00.000Z"}, Row{1'795'588'863'120, "2026-11-25T06:41:03.120Z"},
          Row{951'782'399'999, "2000-02-28T23:59:59.999Z"}, Row{951'782'400'000, "2000-02-29T00:00:00.000Z"},
          Row{-1, "1969-12-31T23:59:59.999Z"}, Row{253'402'300'799'999, "9999-12-31T23:59:59.999Z"}}) {
        INFO(row.text);
        CHECK(utcText(row.ms) == row.text);
        const auto read = readUtc(row.text);
        REQUIRE(read);
        CHECK(*read == row.ms);
    }
}

TEST_CASE("what is not a moment is refused")
{
    for (const char* text :
         {"", "2026-11-25", "2026-11-25T06:41:03Z", "2026-11-25T06:41:03.120", "2026-11-25 06:41:03.120Z",
          "2026-13-25T06:41:03.120Z", "2026-02-29T06:41:03.120Z", "2026-11-25T24:00:00.000Z",
          "2026-11-25T06:60:03.120Z", "2026-11-25T06:41:60.000Z", "2026-11-25T06:41:03.12xZ",
          "+026-11-25T06:41:03.120Z", "2026-00-10T06:41:03.120Z", "2026-11-25T06:41:03.120Z "}) {
        INFO(text);
        const auto read = readUtc(text);
        REQUIRE_FALSE(read);
        CHECK(read.error().code == "clock.not_a_time");
        CHECK_FALSE(read.error().remedy.empty());
    }
}

TEST_CASE("an offset is written with sign, hours and minutes")
{
    CHECK(offsetText(0) == "+00:00");
    CHECK(offsetText(60) == "+01:00");
    CHECK(offsetText(-210) == "-03:30");
    CHECK(offsetText(845) == "+14:05");
}

TEST_CASE("a stepped clock stands, steps and is advanced")
{
    SteppedClock still({1000, 60});
    CHECK(still.now() == Instant{1000, 60});
    CHECK(still.now() == Instant{1000, 60});
    still.advance(500);
    CHECK(still.now().utcMs == 1500);

    const SteppedClock stepping({0, 0}, 250);
    CHECK(stepping.now().utcMs == 0);
    CHECK(stepping.now().utcMs == 250);
    CHECK(stepping.now().utcMs == 500);
}

TEST_CASE("the machine's clock runs on and knows an offset of this earth")
{
    const SystemClock clock;
    const Instant first = clock.now();
    const Instant second = clock.now();
    CHECK(first.utcMs > 1'750'000'000'000);
    CHECK(second.utcMs >= first.utcMs);
    CHECK(first.offsetMinutes >= -12 * 60);
    CHECK(first.offsetMinutes <= 14 * 60);
}
