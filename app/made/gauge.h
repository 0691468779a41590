// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

#include "app/made/chance.h"
#include "app/made/story.h"
#include "core/targets/target.h"

namespace taut::app::made {

/// How a gauge is read in a story: how far around its target, and with how many digits somebody types it.
struct Reading {
    double si = 0;
    std::string entered;  ///< "1.35 bar"
};

/// What is read for this target in this tale, inside its window (near its ends at times), or wanted outside. nullopt:
/// no reading of it can be outside. As far as the story has to do with it: the setting of the unwind's brake goes up
/// with `brake`, what is read at splice and guide is further off by `wander`, and a web that broke costs more of it.
/// `there`: what there is to be read, where something else has made it already (tensionMade), as near as a reading
/// inside comes to it.
[[nodiscard]] std::optional<Reading> readingOf(const targets::Target& target, const Tale& tale, UnitSystem units,
                                               bool outside, Chance& chance, std::optional<double> there = {});
/// The tension that the unwind's brake makes at the setting that was read, worn as it is in this tale; nullopt where
/// no such relation holds.
[[nodiscard]] std::optional<double> tensionMade(const targets::Targets& targets, double setting, const Tale& tale);
/// How often a reading of this target is outside at first, in this tale.
[[nodiscard]] double outsideShare(const std::string& target, const Tale& tale);

}  // namespace taut::app::made
