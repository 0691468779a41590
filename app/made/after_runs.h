// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "app/made/shop.h"
#include "core/seal/after.h"

namespace taut::app::made {

/// Something that is said of a sealed run, later.
struct Later {
    seal::Sequel sequel;
    Instant at;
    const people::Signer* by = nullptr;
    int turn = 0;  ///< how often something was said of this run before
};
/// What follows a run that was sealed then: most are accepted within days, some sent back, put right by whoever had it
/// and accepted, a few are void, and of the last two weeks nothing was looked at. nullopt: nothing (any more).
[[nodiscard]] std::optional<Later> laterOf(const Story& story, const Shop& shop, std::uint64_t run, Instant sealed,
                                           const people::Signer& sealedBy, const Later* before);

}  // namespace taut::app::made
