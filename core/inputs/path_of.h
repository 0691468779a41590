// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>
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
/// wraps), their turn follows from `winds`: from how the finished roll is to be wound, else the first named. Missing
/// coordinates or turns: press.web.needs names the key as its subject. What a target, the drawing and the practice
/// press read: there is no second geometry.
[[nodiscard]] Result<std::vector<NamedPath>> pathsOf(const Press& press, std::optional<Length> rollDiameter, Feed feed,
                                                     std::optional<Winding> finished = {});
/// One of them, so that what is missing on a lane does not take the others down. The finding's subject is the dotted
/// key that is missing (code press.web.needs) or the roller that cannot be passed (codes path.*).
[[nodiscard]] Result<NamedPath> pathOf(const Press& press, std::string_view name, std::optional<Length> rollDiameter,
                                       Feed feed, std::optional<Winding> finished = {});
/// Over or under: how a rewind must wind so that the finished roll has its face where it is wanted, from the turns of
/// unwind and rewind (what lies outside on a roll that turns one way lies inside on one that turns the other way).
/// nullopt where the press's print side, the rewind's place or the wish is not known, and where turn bars may bring the
/// face to the other side.
[[nodiscard]] std::optional<Feed> windFor(const Press& press, const Rewind& rewind, std::optional<Winding> finished);
/// What is said where a rewind of this name cannot wind the finished roll so. Code input.finished_winding.
[[nodiscard]] Finding cannotWindFinished(const std::string& rewind, Winding wanted);
/// The stretch of the main path from one roller to a later one, drawn by itself: what is missing or impossible
/// elsewhere on the path does not take it down. Both, and all between, stand in fixed places: no unwind, no rewind.
[[nodiscard]] Result<physics::WebPath> fixedStretch(const Press& press, std::string_view from, std::string_view to);
/// The roller before or behind one on the main path, "" where there is none.
[[nodiscard]] std::string neighbourOf(const Press& press, std::string_view roller, bool before);
/// "main" first, then the others in the order of the file; empty without rollers.
[[nodiscard]] std::vector<std::string> pathNames(const Press& press);
/// The core that this rewind takes by its grips: the usual one among them, else the middle; its outside with two walls.
/// Needs the rewind's grips and core_wall.
[[nodiscard]] Result<Length> rewindCoreOutside(const Rewind& rewind);
/// How a roll turns whose web comes from or goes to a roller that lies so far along x: over means over the top.
[[nodiscard]] bool turnsCounterClockwise(Feed feed, bool webRunsRight) noexcept;

}  // namespace taut::inputs
