// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>

#include <QString>

#include "core/units/unit.h"

namespace taut::app {

/// A language that every text of the program is there in: its id ("en", "es") and what it calls itself.
struct Language {
    const char* id;
    const char* name;
};
/// English first.
[[nodiscard]] std::span<const Language> languages();
/// The id of the language in which texts are said now.
[[nodiscard]] QString language();
/// From now on texts, decimal signs and dates are those of this language; one that is not in the list changes nothing.
/// What stands on a screen already was said before: whoever calls this makes it anew.
void setLanguage(const QString& id);
/// The language of this PC, if it is one of the list, else English.
[[nodiscard]] QString usualLanguage();

/// The units in which somebody wants to read: those of each press, or always the same.
enum class UnitsWish : std::uint8_t { AsPress, Metric, Us };
void setUnitsWish(UnitsWish wish);
[[nodiscard]] UnitsWish unitsWish();
/// The units in which whoever is at the screen reads what a press of these says.
[[nodiscard]] UnitSystem unitsFor(UnitSystem ofPress);

/// While one of these lives everything is said in the press's own units: a sheet is for everybody who takes it up.
class InPressUnits {
public:
    InPressUnits();
    ~InPressUnits();
    InPressUnits(const InPressUnits&) = delete;
    InPressUnits& operator=(const InPressUnits&) = delete;
};

}  // namespace taut::app
