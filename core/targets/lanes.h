// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/inputs/inputs.h"

namespace taut::targets {

/// Why a product rewind winds nothing of this job: it has fewer lanes than the rewinds listed before it take. A note.
[[nodiscard]] std::optional<Finding> noLane(const inputs::Press& press, const inputs::Job& job,
                                            const inputs::Rewind& rewind);

/// A rewind without a lane, and all that carries no web with it: its zone, its own path, the rollers on that.
struct LeftOff {
    Finding why;
    std::string rewind, zone, path;
    std::vector<std::string> rollers;
    /// Whether a target speaks of something that is left off.
    [[nodiscard]] bool speaksOf(std::string_view id) const;
};
[[nodiscard]] std::vector<LeftOff> leftOff(const inputs::Press& press, const inputs::Job& job);

}  // namespace taut::targets
