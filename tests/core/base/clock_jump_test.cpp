// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include "core/base/clock.h"

using namespace taut;

// FDA time-stamp guidance draft (2002), as reported: clocks right, changes to them detectable. The bounds are ours.
TEST_CASE("a clock that is set is told from time that passes and from one that is kept right")
{
    SteppedClock clock({1'764'052'863'120, 60});
    const ClockLook before = look(clock);
    clock.advance(8 * 3'600'000);
    CHECK_FALSE(clockSetBy(before, look(clock)));
    const struct {
        std::int64_t by;
        bool jumps;
    } rows[] = {{-2000, false}, {-2001, true}, {60'000, false}, {60'001, true}, {-3'600'000, true}, {500, false}};
    for (const auto& row : rows) {
        CAPTURE(row.by);
        const ClockLook then = look(clock);
        clock.set(row.by);
        clock.advance(10'000);
        const auto by = clockSetBy(then, look(clock));
        CHECK(by.has_value() == row.jumps);
        if (by) CHECK(*by == row.by);
    }
}

TEST_CASE("the steady clock of this machine only grows")
{
    const SystemClock clock;
    const std::int64_t first = clock.steadyMs();
    CHECK(first > 0);
    CHECK(clock.steadyMs() >= first);
}
