// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <string_view>

#include "core/base/kind.h"

namespace taut {

/// Metric or US customary: how a press, or a person, speaks of quantities.
enum class UnitSystem : std::uint8_t { Metric, Us };

/// One unit that people may type. The first of a kind is the SI unit with which JSON is written.
struct Unit {
    std::string_view symbol;  ///< as written: "N m/bar"
    Kind kind;
    double toSi;        ///< exact where the definition is exact
    bool metric;        ///< offered to metric people
    bool us;            ///< offered to US people
    int leastDecimals;  ///< how a value is shown: at least so many decimals ...
    int mostDecimals;   ///< ... and at most so many, three significant digits wanted between; none from 1000 on
};

/// A number of this unit as SI, and back. Computed with more digits than a double has, so that "1.1 bar" is 110000 Pa
/// and "13 1/4 in" 0.33655 m, the doubles nearest to the decimal truth (all but always).
[[nodiscard]] double toSi(long double value, const Unit& unit) noexcept;
[[nodiscard]] double fromSi(double si, const Unit& unit) noexcept;
/// Every unit accepted, grouped by kind, SI first within a kind.
[[nodiscard]] std::span<const Unit> allUnits() noexcept;
/// The units of one kind, SI first.
[[nodiscard]] std::span<const Unit> unitsOf(Kind kind) noexcept;
/// The SI unit of a kind ("m", "Pa", "1").
[[nodiscard]] const Unit& siUnit(Kind kind) noexcept;
/// By kind and symbol; nullptr when there is none.
[[nodiscard]] const Unit* findUnit(Kind kind, std::string_view symbol) noexcept;
/// The unit in which a system's people would say this SI value of this kind (mm below 1 m, m above ...).
[[nodiscard]] const Unit& usualUnit(Kind kind, UnitSystem system, double si) noexcept;
/// "a length", "a pressure": for messages; English source, translatable as it stands.
[[nodiscard]] const char* kindName(Kind kind) noexcept;

}  // namespace taut
