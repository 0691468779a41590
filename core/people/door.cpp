// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/people/door.h"

namespace taut::people {

namespace {

constexpr std::int64_t kFirstWaitMs = 30'000;
constexpr std::int64_t kLongestWaitMs = kFirstWaitMs << (kTriesBeforeShut - kTriesBeforeWait - 1);

}  // namespace

std::optional<Finding> closedDoor(const Door& door, std::int64_t nowMs)
{
    if (door.failures >= kTriesBeforeShut)
        return refuse("sign_in.shut", {}, "Ten wrong tries in a row: this person is not let in any more.",
                      "A supervisor gives them a new first-use code, and they choose a new PIN and passphrase.");
    const std::int64_t wait = door.waitUntilMs - nowMs;
    // A clock that was set back must not keep anybody out for longer than the longest wait.
    if (wait <= 0 || wait > kLongestWaitMs) return std::nullopt;
    return refuse("sign_in.wait", {},
                  Text("After several wrong tries nothing is looked at for another %1 seconds.", {(wait + 999) / 1000}),
                  "Wait, then try again.");
}

Door afterFailure(const Door& door, std::int64_t nowMs)
{
    Door after{door.failures + 1, 0};
    if (after.failures >= kTriesBeforeWait && after.failures < kTriesBeforeShut)
        after.waitUntilMs = nowMs + (kFirstWaitMs << (after.failures - kTriesBeforeWait));
    return after;
}

}  // namespace taut::people
