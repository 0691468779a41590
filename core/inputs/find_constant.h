// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "core/base/result.h"
#include "core/units/quantity.h"

// What a brake, clutch or drive makes of its setting, found at the press: the web is clamped to a spring scale, and at
// each setting the force is read at which the roll just turns.
namespace taut::inputs {

/// One setting and what the scale read at it.
struct Pull {
    Quantity setting, force;
};
/// How well both can be read, expanded (k = 2).
struct PullInstruments {
    Quantity force;
    std::optional<Quantity> setting;                ///< empty = taken as exact
    std::optional<Quantity> least = {}, most = {};  ///< between which the control can be set; empty = not known
};
/// M = k (s - s0), by least squares of the torque F D / 2 on the setting.
struct Constant {
    Quantity torquePerSetting, zeroSetting;
    double torqueUncertainty = 0;  ///< expanded, as a share
    Quantity zeroUncertainty;      ///< expanded
    bool byScatter = false;        ///< the scatter of the pulls made it, not the instruments
};
/// Two pulls or more at settings that differ, of one kind. With three or more the scatter (Student's t, 95 %) counts
/// where it is larger than what the instruments explain. A zero below nought that reading alone explains is nought, and
/// the line goes through it. Codes: constant.too_few, .settings_differ (from each other or from the control),
/// .beyond_control, .not_a_pull, .no_spread, .no_torque (torque does not rise with the setting), .pulls_unset (torque
/// without a setting: drag, or a brake that does not let go), .scatter (known worse than by half).
[[nodiscard]] Result<Constant> constantOf(Length diameter, std::span<const Pull> pulls,
                                          const PullInstruments& instruments);
/// The press's text with the three keys of this zone set, and whence it is known where that is said, and the rest as it
/// was. constant.no_zone, toml_edit.*.
[[nodiscard]] Result<std::string> withConstant(std::string_view pressToml, std::string_view zone,
                                               const Constant& constant, std::string_view source = {});

}  // namespace taut::inputs
