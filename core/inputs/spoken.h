// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/base/text.h"
#include "core/inputs/inputs.h"

// What people call the parts of a press that its file knows by an id.
namespace taut::inputs {

/// The zone's name; its id where it has none.
[[nodiscard]] inline const std::string& spokenName(const Zone& zone) { return zone.name.empty() ? zone.id : zone.name; }

/// The frame on that side, from whose inner face distances across the press are measured.
[[nodiscard]] inline Text spokenName(Side measuredFrom)
{
    return measuredFrom == Side::Operator ? Text("operator-side frame") : Text("drive-side frame");
}

/// Which side of the web lies outside on the roll.
[[nodiscard]] inline Text spokenName(Winding winding)
{
    switch (winding) {
    case Winding::FaceOut: return Text("face out");
    case Winding::FaceIn: return Text("face in");
    case Winding::Unknown: break;
    }
    return Text("winding not known");
}

/// A rewind goes by the zone that ends at it; else by its roller, else by its id.
[[nodiscard]] inline const std::string& spokenName(const Press& press, const Rewind& rewind)
{
    if (!rewind.roller.empty())
        for (const Zone& zone : press.zones)
            if (zone.to == rewind.roller && !zone.name.empty() && zone.name != zone.id) return zone.name;
    return rewind.roller.empty() ? rewind.id : rewind.roller;
}

/// A repeated item as it is named in a step: what the press's file calls it stays as it is, words of ours are said in
/// the language of whoever reads them.
[[nodiscard]] inline TextArg spokenName(const Press& press, std::string_view repetition, const Item& item)
{
    const auto own = [](Text words) { return TextArg(std::vector<Text>{std::move(words)}); };
    const bool only = press.guides.size() == 1;
    if (repetition == "station") return own({"station %1", {item.id}});
    if (repetition == "guide") return only ? own("guide") : own({"guide %1", {item.id}});
    if (repetition == "clamp") {
        if (item.id == "roll_side") return own("clamp on the roll's side");
        if (item.id == "press_side") return own("clamp on the press's side");
        return own({"clamp %1", {item.id}});
    }
    if (repetition == "sensor") {
        const std::size_t dash = item.id.rfind('-');
        const bool operatorSide = item.id.substr(dash + 1) == "operator";
        if (only)
            return operatorSide ? own("operator-side sensor of the guide") : own("drive-side sensor of the guide");
        const std::string guide = item.id.substr(0, dash);
        return operatorSide ? own({"operator-side sensor of guide %1", {guide}})
                            : own({"drive-side sensor of guide %1", {guide}});
    }
    return item.name;
}

}  // namespace taut::inputs
