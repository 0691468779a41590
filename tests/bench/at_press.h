// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/base/chance.h"
#include "core/logbook/open_run.h"

// Somebody at the north press of a made store, for programs that measure; they end with 4 where what is asked for is
// not there.
namespace taut::bench {

/// A run that can be begun on the north press by this procedure, with the newest editions.
[[nodiscard]] logbook::OpenRun::Beginning beginningBy(const logbook::Writer& writer, const std::string& procedure);

/// What whoever has the run does next: answers the next step, gives up their stop where it stands in its way, or signs
/// off.
[[nodiscard]] run::Command nextDeed(const run::Run& run, Chance& chance);

}  // namespace taut::bench
