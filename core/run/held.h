// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <optional>
#include <string>

#include "core/base/finding.h"
#include "core/people/person.h"
#include "core/run/command.h"

namespace taut::run {

/// Refused because the stop is somebody else's: ask whose word it takes.
inline constexpr const char* kHoldersOwn = "gate.holders_own";

/// The enrolled person of this name, in service or not; nullopt = nobody.
using PersonNamed = std::function<std::optional<people::PersonRecord>(const std::string& name)>;

/// Why this stop is not given up so (gate.holders_own, gate.supervisor, gate.no_reason); nullopt = it may be.
/// A held stop is its holder's: of somebody enrolled it takes their own word, or that of a supervisor other than
/// whoever has the run, who has looked, with a reason (29 CFR 1910.147(e)(3), on devices whose owner is away, from
/// memory). Of a visitor, whom nothing can prove, whoever has the run says it.
[[nodiscard]] std::optional<Finding> whyNotGivenUp(const GiveUpStop& command, const people::Actor& atRun,
                                                   const PersonNamed& enrolled);

}  // namespace taut::run
