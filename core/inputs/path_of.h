// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/inputs/press.h"
#include "core/physics/path.h"

namespace taut::inputs {

/// The paths of a press: "main" first, then each further path from the roller where it leaves the first.
struct NamedPath {
    std::string name;
    physics::WebPath path;
};
/// Computes every path for a roll of this diameter hung this way; rewind rollers are as large as their core (three
/// wraps), their turn follows from `winds`. Missing coordinates or turns: press.web.needs names the key. What a target,
/// the drawing and the practice press read: there is no second geometry.
[[nodiscard]] Result<std::vector<NamedPath>> pathsOf(const Press& press, std::optional<Length> rollDiameter, Feed feed);

}  // namespace taut::inputs
