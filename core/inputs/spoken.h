// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/base/text.h"
#include "core/inputs/press.h"

// What people call the parts of a press that its file knows by an id.
namespace taut::inputs {

/// The zone's name; its id where it has none.
[[nodiscard]] inline const std::string& spokenName(const Zone& zone) { return zone.name.empty() ? zone.id : zone.name; }

/// The frame on that side, from whose inner face distances across the press are measured.
[[nodiscard]] inline Text spokenName(Side measuredFrom)
{
    return measuredFrom == Side::Operator ? Text("operator-side frame") : Text("drive-side frame");
}

/// A rewind goes by the zone that ends at it; else by its roller, else by its id.
[[nodiscard]] inline const std::string& spokenName(const Press& press, const Rewind& rewind)
{
    if (!rewind.roller.empty())
        for (const Zone& zone : press.zones)
            if (zone.to == rewind.roller && !zone.name.empty() && zone.name != zone.id) return zone.name;
    return rewind.roller.empty() ? rewind.id : rewind.roller;
}

}  // namespace taut::inputs
