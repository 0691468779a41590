// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "app/verbs/verbs.h"

namespace taut::app::verbs {

/// Options of `tautweb demo` that do not go together with --history, or not without it: option.not_together,
/// option.missing.
[[nodiscard]] std::optional<Finding> historyMisused(const Options& options);
/// tautweb demo --history: writes a logbook of some years of a made-up shop.
[[nodiscard]] Exit makeHistory(const Options& options, const Console& console);

}  // namespace taut::app::verbs
