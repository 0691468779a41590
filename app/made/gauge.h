// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

#include "app/made/story.h"
#include "core/base/chance.h"
#include "core/targets/target.h"
#include "core/units/unit.h"

namespace taut::app::made {

/// How a gauge is read in a story: how far around its target, and with how many digits somebody types it.
struct Reading {
    double si = 0;
    std::string entered;  ///< "1.35 bar"
};

/// A gauge at a target: all of a reading that is the same whoever reads it.
class Gauge {
public:
    /// nullopt: nothing is read there.
    [[nodiscard]] static std::optional<Gauge> at(const targets::Target& target, UnitSystem units);
    /// What is read in this tale, inside the window (near its ends at times), or wanted outside. nullopt: no reading of
    /// it can be outside. As far as the story has to do with it: the setting of the unwind's brake goes up with
    /// `brake`, what is read at splice and guide is further off by `wander`, and a web that broke costs more of it.
    /// `there`: what there is to be read, where something else has made it already (tensionMade), as near as a reading
    /// inside comes to it.
    [[nodiscard]] std::optional<Reading> read(const Tale& tale, bool outside, Chance& chance,
                                              std::optional<double> there = {}) const;

private:
    Gauge() = default;
    [[nodiscard]] double within(const Tale& tale, Chance& chance) const;
    [[nodiscard]] double beyond(Chance& chance) const;

    double m_aim = 0;
    std::optional<double> m_low, m_high;
    const Unit* m_unit = nullptr;
    int m_decimals = 0;
    bool m_counted = false, m_wanders = false, m_isBrake = false, m_isWeb = false;
};
/// The tension that the unwind's brake makes at the setting that was read, worn as it is in this tale; nullopt where
/// no such relation holds.
[[nodiscard]] std::optional<double> tensionMade(const targets::Targets& targets, double setting, const Tale& tale);
/// How often a reading of this target is outside at first, in this tale.
[[nodiscard]] double outsideShare(const std::string& target, const Tale& tale);

}  // namespace taut::app::made
