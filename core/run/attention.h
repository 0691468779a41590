// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/run/run.h"

namespace taut::run {

/// The steps of a run as whoever looks it through should meet them: what is outside or was accepted so, what is open or
/// was passed by, what is near a limit, the rest; within each in the order of the plan. Pointers into run.plan().
[[nodiscard]] std::vector<const procedure::Step*> byAttention(const Run& run);

}  // namespace taut::run
