// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/targets/ramp.h"
#include "core/targets/setting.h"

namespace taut::targets {

/// A zone's way from the diameter now to its last, whoever follows it; nullopt where something is missing or there is
/// no way to go.
[[nodiscard]] std::optional<Ramp> courseOf(const Book& book, const inputs::Zone& zone, const SettingTerms& terms,
                                           const SharedString& settingUnit);

/// tension.ZONE.schedule: diameter, torque, setting and tension from the diameter now to the core, or from the core to
/// the finished roll with the zone's taper; and tension.ZONE.changes: where an open loop is to be set again at the
/// latest, and to what. A loop that follows by itself has no setting in its schedule, and one only where its tension
/// tapers. Stops where something is missing.
void stateSchedule(Book& book, const inputs::Zone& zone, const SettingTerms& terms, const SharedString& settingUnit);

}  // namespace taut::targets
