// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/inputs/press.h"

namespace taut::inputs {

/// The roll that lies there.
struct Roll {
    std::string id, tag, substrate;
    Maybe<Kind::Length> width, outerDiameter, core, coreWall, length, offCentre;
    Maybe<Kind::Length> strippedDiameter;  ///< what was left when the outer wraps had come off at the press
    Maybe<Kind::Mass> coreMass, mass;
    Winding winding = Winding::Unknown;
    std::optional<int> splices;
    std::string condition;             ///< clean dusty nicked crushed cold; "" = not said
    bool opened = false;               ///< part used: what the tag says of length and mass no longer holds
    std::vector<std::string> fromTag;  ///< keys that its tag filled (fill.h): they stand in no file
    friend bool operator==(const Roll&, const Roll&) = default;
};

/// The roll as it runs: stripped of its outer wraps where that was measured, else as it was measured under way, else as
/// its file says. What was lifted and what is counted as web on the roll is the whole of it.
[[nodiscard]] inline std::optional<Length> diameterAsItRuns(const Roll& roll, std::optional<Length> measured)
{
    if (roll.strippedDiameter) return roll.strippedDiameter->measure();
    if (measured || !roll.outerDiameter) return measured;
    return roll.outerDiameter->measure();
}

}  // namespace taut::inputs
