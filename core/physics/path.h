// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/base/result.h"
#include "core/units/quantity.h"

namespace taut::physics {

/// A roller in the plane of the web path: x to the right, y up, as seen from the operator's side.
struct RollerPlace {
    std::string id;
    Length x, y, diameter;
    bool counterClockwise{};  ///< how it turns in forward running, seen from the operator's side
    Length extra;             ///< web that leaves the drawn plane after this roller (turn bars)
};
/// A straight piece of web between two rollers, with its end points on their surfaces.
struct PathSpan {
    std::string from, to;
    Length length;  ///< tangent plus the roller's `extra`
    Length x1, y1, x2, y2;
    bool crossed{};  ///< the two rollers turn in opposite directions
};
/// The web on a roller.
struct PathArc {
    std::string roller;
    double wrap{};  ///< radians
    Length length;
    double startAngle{};  ///< where the web meets it, radians from +x, counter-clockwise
};
/// The whole path from the first roller's tangent point to the last's. One value: targets, drawing and practice read
/// it.
struct WebPath {
    std::vector<RollerPlace> rollers;
    std::vector<PathSpan> spans;          ///< one fewer than rollers
    std::vector<PathArc> arcs;            ///< one for each roller; first and last have no wrap
    [[nodiscard]] Length length() const;  ///< all spans and arcs
    /// From where the web leaves `from` to where it meets `to`; nullopt when one is not on the path.
    [[nodiscard]] std::optional<Length> between(std::string_view from, std::string_view to) const;
    [[nodiscard]] const PathArc* arc(std::string_view roller) const;
    [[nodiscard]] const PathSpan* spanAfter(std::string_view roller) const;
};
/// Tangents and arcs from coordinates and turn directions (V3). Refuses by name: path.too_few, path.rollers_touch (two
/// rollers overlap), path.no_tangent (two that no straight web joins), path.wrap_too_large (over 300 degrees: the turn
/// is probably wrong), path.hits_roller (a span runs through a third roller), path.bad_diameter. The subject is the
/// roller.
[[nodiscard]] Result<WebPath> webPath(std::span<const RollerPlace> rollers);

}  // namespace taut::physics
