// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <utility>

#include "core/units/quantity.h"
#include "core/units/unit.h"

namespace taut {

/// Which way a shown number is rounded: a lower limit up, an upper limit down, so that no limit is ever loosened.
enum class Rounding : std::uint8_t { Nearest, Up, Down };

/// A quantity as number text and unit symbol, kept apart so that a screen may set them in two sizes.
struct Shown {
    std::string number;  ///< C locale, decimal point
    std::string unit;    ///< "" for a count
    [[nodiscard]] std::string text() const { return unit.empty() ? number : number + ' ' + unit; }
};
/// How a quantity's unit is to be said, as `Quantity::unit` carries it: a symbol, and behind it, where need be, "!" for
/// a unit that is a fact (a panel or gauge is read in it, whatever units people use) and "+1" for one decimal more.
struct Manner {
    std::string_view symbol;  ///< stands in the text that was read
    bool fixed = false;
    int finer = 0;  ///< decimals beyond the usual
};
[[nodiscard]] Manner mannerOf(std::string_view unit);
Manner mannerOf(std::string&& unit) = delete;  ///< the text has to outlive what is read from it
[[nodiscard]] std::string unitIn(const Manner& manner);
/// The unit of a panel or gauge: fixed where people of this system would not use it.
[[nodiscard]] std::string panelUnit(Kind kind, std::string_view symbol, UnitSystem system);

/// The unit in which show() says a quantity.
[[nodiscard]] const Unit& shownUnit(const Quantity& q, UnitSystem system);
/// In the quantity's own unit when that is fixed or belongs to the system, else in the system's usual one. Rounded
/// once, ties to even (ISO 80000-1 annex B rule A), to the unit's decimals (see Unit). Trailing zeros stay, except for
/// lengths in mm, cm, um and m, tensions in N/mm, shares and counts. Before that the conversion's noise is taken off
/// (14 digits count), so that a limit of 20 psi rounded up is 20.0 psi and not 20.1 psi.
[[nodiscard]] Shown show(const Quantity& q, UnitSystem system, Rounding rounding = Rounding::Nearest);
/// With how many more decimals than usual both ends of a window have to be shown, so that rounded inward they do not
/// pass one another; three at most.
[[nodiscard]] int finerFor(const Quantity& low, const Quantity& high, UnitSystem system);
/// Whether show() says nothing but noughts of it.
[[nodiscard]] bool showsNothing(const Quantity& q, UnitSystem system);
/// Both ends of a window, rounded inward. Where they would then pass one another ("0.44 to 0.43 bar"), with as many
/// more decimals as keep them apart, up to three.
[[nodiscard]] std::pair<Shown, Shown> showRange(const Quantity& low, const Quantity& high, UnitSystem system);
/// show(...).text()
[[nodiscard]] std::string format(const Quantity& q, UnitSystem system, Rounding rounding = Rounding::Nearest);
/// The decimal number nearest to value at so many decimals, rounded in decimal arithmetic on the shortest text of the
/// double; decimals below zero round to tens, hundreds. Up and Down are towards plus and minus infinity. Never "-0".
[[nodiscard]] std::string roundedDecimal(double value, int decimals, Rounding rounding);

}  // namespace taut
