// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/unit.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <charconv>
#include <cmath>
#include <functional>
#include <numbers>

namespace taut {

namespace {

// Exact by definition: the international yard and pound (1959), standard gravity (CGPM 1901), the bar.
constexpr double kInch = 0.0254;
constexpr double kFoot = 0.3048;
constexpr double kPound = 0.45359237;
constexpr double kGravity = 9.80665;
constexpr double kPoundForce = 4.4482216152605;  // kPound * kGravity, every digit
constexpr double kPsi = kPoundForce / (kInch * kInch);
constexpr double kBar = 1e5;
constexpr double kMinute = 60;
constexpr double kDegree = std::numbers::pi / 180;
/// A billion cubic microns on a square inch.
constexpr double kBcm = 1e-9 / (kInch * kInch);

constexpr auto kUnits = std::to_array<Unit>({
    // symbol, kind, SI, metric, us, least and most decimals
    {"1", Kind::Count, 1, true, true, 0, 2},
    {"1", Kind::Share, 1, false, false, 0, 4},
    {"%", Kind::Share, 0.01, true, true, 0, 4},
    {"rad", Kind::Angle, 1, false, false, 2, 4},
    {"deg", Kind::Angle, kDegree, true, true, 0, 3},
    {"mrad", Kind::Angle, 1e-3, true, true, 1, 2},
    {"m", Kind::Length, 1, true, false, 0, 3},
    {"mm", Kind::Length, 1e-3, true, false, 1, 2},
    {"cm", Kind::Length, 1e-2, true, false, 1, 2},
    {"um", Kind::Length, 1e-6, true, false, 0, 1},
    {"in", Kind::Length, kInch, false, true, 2, 3},
    {"ft", Kind::Length, kFoot, false, true, 1, 2},
    {"yd", Kind::Length, 0.9144, false, true, 1, 2},
    {"mil", Kind::Length, 2.54e-5, false, true, 1, 2},
    {"gauge", Kind::Length, 2.54e-7, false, true, 0, 1},
    {"m3/m2", Kind::VolumePerArea, 1, false, false, 0, 9},
    {"cm3/m2", Kind::VolumePerArea, 1e-6, true, false, 1, 2},
    {"BCM", Kind::VolumePerArea, kBcm, false, true, 1, 2},
    {"m2", Kind::Area, 1, true, false, 1, 3},
    {"cm2", Kind::Area, 1e-4, true, false, 1, 2},
    {"in2", Kind::Area, kInch* kInch, false, true, 1, 2},
    {"kg", Kind::Mass, 1, true, false, 0, 2},
    {"g", Kind::Mass, 1e-3, true, false, 0, 1},
    {"lb", Kind::Mass, kPound, false, true, 0, 2},
    {"oz", Kind::Mass, kPound / 16, false, true, 1, 2},
    {"kg/m2", Kind::Grammage, 1, false, false, 2, 4},
    {"g/m2", Kind::Grammage, 1e-3, true, false, 0, 1},
    {"lb/1000ft2", Kind::Grammage, kPound / (1000 * kFoot * kFoot), false, true, 1, 2},
    {"lb/3000ft2", Kind::Grammage, kPound / (3000 * kFoot * kFoot), false, true, 1, 2},
    {"kg/m3", Kind::Density, 1, true, false, 0, 1},
    {"g/cm3", Kind::Density, 1e3, true, true, 2, 3},
    {"m2/kg", Kind::AreaPerMass, 1, true, true, 1, 2},
    {"N", Kind::Force, 1, true, false, 0, 2},
    {"kN", Kind::Force, 1e3, true, false, 1, 3},
    {"lbf", Kind::Force, kPoundForce, false, true, 0, 2},
    {"kgf", Kind::Force, kGravity, true, false, 0, 2},
    {"N/m", Kind::ForcePerWidth, 1, true, false, 1, 1},
    {"N/mm", Kind::ForcePerWidth, 1e3, true, false, 2, 3},
    {"N/cm", Kind::ForcePerWidth, 1e2, true, false, 1, 3},
    {"mN/m", Kind::ForcePerWidth, 1e-3, true, true, 0, 1},
    {"lbf/in", Kind::ForcePerWidth, kPoundForce / kInch, false, true, 2, 3},
    {"Pa", Kind::Pressure, 1, true, false, 0, 0},
    {"kPa", Kind::Pressure, 1e3, true, false, 1, 2},
    {"MPa", Kind::Pressure, 1e6, true, false, 1, 3},
    {"GPa", Kind::Pressure, 1e9, true, false, 1, 2},
    {"bar", Kind::Pressure, kBar, true, false, 1, 2},
    {"mbar", Kind::Pressure, 100, true, false, 0, 1},
    {"psi", Kind::Pressure, kPsi, false, true, 1, 1},
    {"kpsi", Kind::Pressure, kPsi * 1000, false, true, 1, 2},
    {"N m", Kind::Torque, 1, true, false, 0, 2},
    {"lbf in", Kind::Torque, kPoundForce* kInch, false, true, 0, 2},
    {"lbf ft", Kind::Torque, kPoundForce* kFoot, false, true, 1, 2},
    {"N m/Pa", Kind::TorquePerPressure, 1, false, false, 4, 8},
    {"N m/bar", Kind::TorquePerPressure, 1e-5, true, false, 1, 2},
    {"N m/psi", Kind::TorquePerPressure, 1 / kPsi, false, true, 2, 3},
    {"N m/A", Kind::TorquePerCurrent, 1, true, true, 1, 3},
    {"N m/1", Kind::TorquePerShare, 1, false, false, 1, 2},
    {"N m/%", Kind::TorquePerShare, 100, true, true, 2, 3},
    {"m/s", Kind::Speed, 1, true, false, 1, 3},
    {"m/min", Kind::Speed, 1 / kMinute, true, false, 0, 2},
    {"mm/s", Kind::Speed, 1e-3, true, false, 0, 1},
    {"ft/min", Kind::Speed, kFoot / kMinute, false, true, 0, 1},
    {"in/s", Kind::Speed, kInch, false, true, 1, 2},
    {"m/s2", Kind::Acceleration, 1, true, true, 2, 3},
    {"s", Kind::Time, 1, true, true, 0, 2},
    {"ms", Kind::Time, 1e-3, true, true, 0, 1},
    {"min", Kind::Time, kMinute, true, true, 1, 2},
    {"h", Kind::Time, 60 * kMinute, true, true, 1, 2},
    {"d", Kind::Time, 24 * 60 * kMinute, true, true, 0, 2},
    {"1/s", Kind::Frequency, 1, true, true, 1, 3},
    {"rpm", Kind::Frequency, 1 / kMinute, true, true, 0, 1},
    {"kg m2", Kind::Inertia, 1, true, false, 2, 4},
    {"lb ft2", Kind::Inertia, kPound* kFoot* kFoot, false, true, 1, 3},
    {"1/m", Kind::CountPerLength, 1, true, false, 0, 1},
    {"1/in", Kind::CountPerLength, 1 / kInch, false, true, 0, 2},
    {"lines/cm", Kind::CountPerLength, 100, true, false, 0, 1},
    {"lines/in", Kind::CountPerLength, 1 / kInch, false, true, 0, 1},
    {"W", Kind::Power, 1, true, true, 0, 1},
    {"A", Kind::Current, 1, true, true, 2, 3},
    {"Pa s", Kind::Viscosity, 1, true, true, 3, 7},
});

constexpr bool sameKind(const Unit& unit, Kind kind) { return unit.kind == kind; }

/// Where the units of each kind begin, and one past the last.
constexpr std::array<std::size_t, kKindCount + 1> kBegins = [] {
    std::array<std::size_t, kKindCount + 1> begins{};
    for (std::size_t kind = 0, at = 0; kind < kKindCount; ++kind) {
        begins[kind] = at;
        while (at < kUnits.size() && sameKind(kUnits[at], static_cast<Kind>(kind))) ++at;
        begins[kind + 1] = at;
    }
    return begins;
}();
static_assert(kBegins.back() == kUnits.size(), "the table must be grouped in the order of Kind");

constexpr bool everyKindBeginsWithSi()
{
    for (std::size_t kind = 0; kind < kKindCount; ++kind)
        if (kBegins[kind] == kBegins[kind + 1] || kUnits[kBegins[kind]].toSi != 1) return false;
    return true;
}
static_assert(everyKindBeginsWithSi());

/// n when the unit is the n-th part of the SI unit, else 0: n is exact where 1/n is not.
double partOf(const Unit& unit) noexcept
{
    if (unit.toSi >= 1) return 0;
    const double n = std::round(1 / unit.toSi);
    return 1 / n == unit.toSi ? n : 0;
}

/// The decimal that the table means, beyond the last bit of a double: 0.0254 and not 0.02539999999999999938.
long double decimalFactor(const Unit& unit) noexcept
{
    std::array<char, 32> text{};
    const auto end = std::to_chars(text.data(), text.data() + text.size(), unit.toSi).ptr;
    long double factor = unit.toSi;
    std::from_chars(text.data(), end, factor);
    return factor;
}

/// How a unit is turned into SI, with more digits than a double has.
struct Exact {
    double part;         ///< see partOf
    long double factor;  ///< see decimalFactor
};

/// Worked out once for every unit of the table.
Exact exactOf(const Unit& unit) noexcept
{
    static const auto kExact = [] {
        std::array<Exact, kUnits.size()> all{};
        for (std::size_t i = 0; i < kUnits.size(); ++i) all[i] = {partOf(kUnits[i]), decimalFactor(kUnits[i])};
        return all;
    }();
    const Unit *const first = kUnits.data(), *const end = first + kUnits.size();
    const bool ofTable = !std::less<>()(&unit, first) && std::less<>()(&unit, end);
    return ofTable ? kExact[static_cast<std::size_t>(&unit - first)] : Exact{partOf(unit), decimalFactor(unit)};
}

}  // namespace

double toSi(long double value, const Unit& unit) noexcept
{
    const auto [n, factor] = exactOf(unit);
    return static_cast<double>(n != 0 ? value / n : value * factor);
}

double fromSi(double si, const Unit& unit) noexcept
{
    const auto [n, factor] = exactOf(unit);
    const long double exact = si;
    return static_cast<double>(n != 0 ? exact * n : exact / factor);
}

std::span<const Unit> allUnits() noexcept { return kUnits; }

std::span<const Unit> unitsOf(Kind kind) noexcept
{
    const auto k = static_cast<std::size_t>(kind);
    assert(k < kKindCount);
    return std::span<const Unit>(kUnits).subspan(kBegins[k], kBegins[k + 1] - kBegins[k]);
}

const Unit& siUnit(Kind kind) noexcept { return unitsOf(kind).front(); }

const Unit* findUnit(Kind kind, std::string_view symbol) noexcept
{
    const auto units = unitsOf(kind);
    const auto it = std::find_if(units.begin(), units.end(), [&](const Unit& u) { return u.symbol == symbol; });
    return it == units.end() ? nullptr : &*it;
}

}  // namespace taut
