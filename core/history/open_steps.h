// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>

#include "core/history/times.h"

namespace taut::history {

/// As many documents of runs that were given up are looked into; there are few such runs.
inline constexpr std::size_t kMostLookedInto = 200;

/// Adds, of the runs that were given up, the steps that stood open then, as incidents kLeftOpen: those that had been
/// passed over, were outside or had to be done anew, and the one that was next. Nobody had come to those behind it. Of
/// the newest `most` such runs; Times::lookedInto says how many that were. `goOn` as in timesOf. Refuses as the reader
/// does, with document.broken too.
[[nodiscard]] Result<Done> addOpenSteps(const records::Reader& reader, Times& times,
                                        const std::function<bool()>& goOn = {}, std::size_t most = kMostLookedInto);

}  // namespace taut::history
