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
    Maybe<Kind::Mass> coreMass, mass;
    Winding winding = Winding::Unknown;
    std::optional<int> splices;
    std::string condition;             ///< clean dusty nicked crushed; "" = not said
    bool opened = false;               ///< part used: what the tag says of length and mass no longer holds
    std::vector<std::string> fromTag;  ///< keys that its tag filled (fill.h): they stand in no file
    friend bool operator==(const Roll&, const Roll&) = default;
};

}  // namespace taut::inputs
