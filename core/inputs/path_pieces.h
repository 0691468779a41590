// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/inputs/path_of.h"

namespace taut::inputs {

/// What of a press can be drawn while somebody still writes it.
struct PathPieces {
    std::vector<NamedPath> paths;  ///< whole paths; of one that is not, its rollers and the stretches that a web joins
    Findings wrong;                ///< why not, a sentence for each path
    std::vector<std::string> at;   ///< the roller that each of them is about, "" where it names none
};
/// Every path for a roll of this diameter hung this way: pathOf where it can be computed, else as much of it as can.
[[nodiscard]] PathPieces pathPieces(const Press& press, std::optional<Length> rollDiameter, Feed feed);

}  // namespace taut::inputs
