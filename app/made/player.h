// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/made/shop.h"
#include "core/run/decide.h"

namespace taut::app::made {

/// Plays a tale in memory from the first step to the end, by the commands and gates of a hand on a screen: what comes
/// out is a run like any other, and its verdicts are judged by nobody else. parent: the run that it goes on from.
/// A gate that stays shut is an error of the story and comes back as it is.
[[nodiscard]] Result<run::Run> play(const Tale& tale, const Shop& shop, const run::Run* parent);

}  // namespace taut::app::made
