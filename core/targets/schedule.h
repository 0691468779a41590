// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/targets/setting.h"

namespace taut::targets {

/// tension.ZONE.schedule: diameter, torque, setting and tension from the diameter now to the core, or from the core to
/// the finished roll with the zone's taper; and tension.ZONE.changes: where an open loop is to be set again at the
/// latest, and to what. A loop that follows by itself has no setting in its schedule, and one only where its tension
/// tapers. Stops where something is missing.
void stateSchedule(Book& book, const inputs::Zone& zone, const SettingTerms& terms, const std::string& settingUnit);

}  // namespace taut::targets
