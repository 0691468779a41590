// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/targets/setting.h"

namespace taut::targets {

/// tension.ZONE.schedule: diameter, torque and setting from the diameter now to the core, or from the core to the
/// finished roll with the zone's taper. Stops where something is missing.
void stateSchedule(Book& book, const inputs::Zone& zone, const SettingTerms& terms, const std::string& settingUnit);
/// Web tension at a diameter under a zone's taper (B6), T0 at d0.
[[nodiscard]] double tapered(const inputs::Zone& zone, double t0, double d0, double diameter, double largest);

}  // namespace taut::targets
