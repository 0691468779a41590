// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/targets/schedule.h"
#include "core/targets/setting.h"

// Whether a press can do what is computed for it: every setting, and what a loop asks of its brake or drive, now and
// over the whole way of the roll, against what can be set and shown. Private to this folder.
namespace taut::targets {

/// What can be set where a zone's setting is of this kind: the profile's range, and no more than its load cell shows or
/// a hundred percent of a brake.
[[nodiscard]] inputs::Setting settingRange(const inputs::Zone& zone, Kind kind);

/// What a setting would be for the middle of the tension window and for its ends.
struct SettingBand {
    Term middle, low, high;
    Rules rules;
    Term lowTension{}, highTension{};  ///< the ends of the tension window themselves
};
/// Gives a setting its window, holds that inside what can be set, and says so when nothing of it can, or the middle
/// cannot.
void bound(Book& book, const inputs::Zone& zone, Stated& setting, const SettingBand& band);
void bound(Book& book, const inputs::Zone& zone, const SettingTerms& terms, const SettingRelation& relation,
           Stated& setting);

/// The web tension nearest to the middle of its window that this control can be set to and its brake or drive can hold
/// at the diameter now; nullopt where the middle can be, or nothing of the window.
[[nodiscard]] std::optional<Force> heldTension(const Book& book, const inputs::Zone& zone, const SettingTerms& terms);

/// Says at what diameter a setting, or what a loop asks of its brake, will leave its range, and what to do. A loop
/// whose brake cannot hold the tension even now cannot be set.
void checkCourse(Book& book, const inputs::Zone& zone, const SettingTerms& terms, Stated& setting,
                 const SharedString& settingUnit);

}  // namespace taut::targets
