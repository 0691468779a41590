// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>

#include "core/base/result.h"

namespace taut::people {

/// How often somebody was wrong at a person's door since they were last right. NIST SP 800-63B-4, 3.2.2 and 3.2.10
/// (from memory): growing waits, and after at most ten failures in a row nobody gets in until two people open it again.
struct Door {
    int failures = 0;
    std::int64_t waitUntilMs = 0;  ///< no try counts before it; 0 = none
    friend bool operator==(const Door&, const Door&) = default;
};
inline constexpr int kTriesBeforeWait = 5;
inline constexpr int kTriesBeforeShut = 10;

/// Why nobody is let in now, whatever they say: sign_in.wait (for how long), sign_in.shut. nullopt = try.
[[nodiscard]] std::optional<Finding> closedDoor(const Door& door, std::int64_t nowMs);
/// The fifth failure costs half a minute, each further one twice as much, the tenth shuts the door.
[[nodiscard]] Door afterFailure(const Door& door, std::int64_t nowMs);

}  // namespace taut::people
