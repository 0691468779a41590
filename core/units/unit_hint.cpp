// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/unit_hint.h"

#include <algorithm>
#include <array>
#include <vector>

#include "core/units/unit.h"

namespace taut {

namespace {

/// A unit that people write and we do not take: lower case, without spaces.
struct Foreign {
    std::string_view written;
    Kind kind;
    std::string_view ours;
    std::string_view equation;  ///< "" when it is only another spelling
};

/// In place of one of our units: pounds alone say nothing of the ream.
constexpr std::string_view kSheet = "60 lb 25x38 in";

constexpr auto kForeign = std::to_array<Foreign>({
    {"lb", Kind::Force, "lbf", ""},
    {"lbs", Kind::Force, "lbf", ""},
    {"pound", Kind::Force, "lbf", ""},
    {"pounds", Kind::Force, "lbf", ""},
    {"kg", Kind::Force, "kgf", ""},
    {"kp", Kind::Force, "kgf", "1 kp = 1 kgf"},
    {"dan", Kind::Force, "N", "1 daN = 10 N"},
    {"lbs", Kind::Mass, "lb", ""},
    {"pound", Kind::Mass, "lb", ""},
    {"pounds", Kind::Mass, "lb", ""},
    {"t", Kind::Mass, "kg", "1 t = 1000 kg"},
    {"kp/cm2", Kind::Pressure, "bar", "1 kp/cm2 = 0.980665 bar = 98066.5 Pa"},
    {"kg/cm2", Kind::Pressure, "bar", "1 kg/cm2 = 0.980665 bar = 98066.5 Pa"},
    {"kgf/cm2", Kind::Pressure, "bar", "1 kgf/cm2 = 0.980665 bar = 98066.5 Pa"},
    {"at", Kind::Pressure, "bar", "1 at = 0.980665 bar = 98066.5 Pa"},
    {"atm", Kind::Pressure, "bar", "1 atm = 1.01325 bar"},
    {"dan/cm2", Kind::Pressure, "bar", "1 daN/cm2 = 1 bar"},
    {"hpa", Kind::Pressure, "mbar", "1 hPa = 1 mbar"},
    {"n/m2", Kind::Pressure, "Pa", "1 N/m2 = 1 Pa"},
    {"n/mm2", Kind::Pressure, "MPa", "1 N/mm2 = 1 MPa"},
    {"kn/mm2", Kind::Pressure, "GPa", "1 kN/mm2 = 1 GPa"},
    {"lb/in2", Kind::Pressure, "psi", "1 lb/in2 = 1 psi"},
    {"lbf/in2", Kind::Pressure, "psi", "1 lbf/in2 = 1 psi"},
    {"ksi", Kind::Pressure, "kpsi", "1 ksi = 1 kpsi"},
    {"pli", Kind::ForcePerWidth, "lbf/in", "1 PLI = 1 lbf/in"},
    {"lb/in", Kind::ForcePerWidth, "lbf/in", ""},
    {"lbs/in", Kind::ForcePerWidth, "lbf/in", ""},
    {"kn/m", Kind::ForcePerWidth, "N/mm", "1 kN/m = 1 N/mm"},
    {"dyn/cm", Kind::ForcePerWidth, "mN/m", "1 dyn/cm = 1 mN/m"},
    {"dyne/cm", Kind::ForcePerWidth, "mN/m", "1 dyn/cm = 1 mN/m"},
    {"dan/cm", Kind::ForcePerWidth, "N/mm", "1 daN/cm = 1 N/mm"},
    {"kg/cm", Kind::ForcePerWidth, "N/cm", "1 kg/cm = 9.80665 N/cm"},
    {"kgf/cm", Kind::ForcePerWidth, "N/cm", "1 kgf/cm = 9.80665 N/cm"},
    {"inlb", Kind::Torque, "lbf in", ""},
    {"in-lb", Kind::Torque, "lbf in", ""},
    {"lbin", Kind::Torque, "lbf in", ""},
    {"lb-in", Kind::Torque, "lbf in", ""},
    {"in-lbf", Kind::Torque, "lbf in", ""},
    {"inlbf", Kind::Torque, "lbf in", ""},
    {"ftlb", Kind::Torque, "lbf ft", ""},
    {"ft-lb", Kind::Torque, "lbf ft", ""},
    {"lbft", Kind::Torque, "lbf ft", ""},
    {"lb-ft", Kind::Torque, "lbf ft", ""},
    {"ft-lbf", Kind::Torque, "lbf ft", ""},
    {"ftlbf", Kind::Torque, "lbf ft", ""},
    {"ncm", Kind::Torque, "N m", "1 N cm = 0.01 N m"},
    {"fpm", Kind::Speed, "ft/min", "1 fpm = 1 ft/min"},
    {"ft/m", Kind::Speed, "ft/min", ""},
    {"mpm", Kind::Speed, "m/min", "1 mpm = 1 m/min"},
    {"m/minute", Kind::Speed, "m/min", ""},
    {"mps", Kind::Speed, "m/s", ""},
    {"ips", Kind::Speed, "in/s", "1 ips = 1 in/s"},
    {"micron", Kind::Length, "um", ""},
    {"microns", Kind::Length, "um", ""},
    {"mic", Kind::Length, "um", ""},
    {"u", Kind::Length, "um", ""},
    {"thou", Kind::Length, "mil", "1 thou = 1 mil"},
    {"pt", Kind::Length, "mil", "1 pt = 1 mil"},
    {"point", Kind::Length, "mil", "1 point = 1 mil"},
    {"points", Kind::Length, "mil", "1 point = 1 mil"},
    {"ga", Kind::Length, "gauge", ""},
    {"inch", Kind::Length, "in", ""},
    {"inches", Kind::Length, "in", ""},
    {"foot", Kind::Length, "ft", ""},
    {"feet", Kind::Length, "ft", ""},
    {"yard", Kind::Length, "yd", ""},
    {"yards", Kind::Length, "yd", ""},
    {"metre", Kind::Length, "m", ""},
    {"metres", Kind::Length, "m", ""},
    {"meter", Kind::Length, "m", ""},
    {"meters", Kind::Length, "m", ""},
    {"km", Kind::Length, "m", "1 km = 1000 m"},
    {"dm", Kind::Length, "mm", "1 dm = 100 mm"},
    {"gsm", Kind::Grammage, "g/m2", "1 gsm = 1 g/m2"},
    {"g/qm", Kind::Grammage, "g/m2", ""},
    {"lb/ream", Kind::Grammage, kSheet, ""},
    {"#", Kind::Grammage, kSheet, ""},
    {"lb", Kind::Grammage, kSheet, ""},
    {"lbs", Kind::Grammage, kSheet, ""},
    {"lpi", Kind::CountPerLength, "lines/in", "1 lpi = 1 lines/in"},
    {"cpi", Kind::CountPerLength, "lines/in", "1 cpi = 1 lines/in"},
    {"l/cm", Kind::CountPerLength, "lines/cm", ""},
    {"lpcm", Kind::CountPerLength, "lines/cm", ""},
    {"dp", Kind::CountPerLength, "1/in", "10 DP = 10 1/in"},
    {"teeth/in", Kind::CountPerLength, "1/in", ""},
    {"cc/m2", Kind::VolumePerArea, "cm3/m2", ""},
    {"ml/m2", Kind::VolumePerArea, "cm3/m2", "1 ml/m2 = 1 cm3/m2"},
    {"sec", Kind::Time, "s", ""},
    {"second", Kind::Time, "s", ""},
    {"seconds", Kind::Time, "s", ""},
    {"minute", Kind::Time, "min", ""},
    {"minutes", Kind::Time, "min", ""},
    {"mins", Kind::Time, "min", ""},
    {"hr", Kind::Time, "h", ""},
    {"hrs", Kind::Time, "h", ""},
    {"hour", Kind::Time, "h", ""},
    {"hours", Kind::Time, "h", ""},
    {"day", Kind::Time, "d", ""},
    {"days", Kind::Time, "d", ""},
    {"week", Kind::Time, "d", "1 week = 7 d"},
    {"weeks", Kind::Time, "d", "1 week = 7 d"},
    {"month", Kind::Time, "d", ""},
    {"months", Kind::Time, "d", ""},
    {"hz", Kind::Frequency, "1/s", "1 Hz = 1 1/s"},
    {"1/min", Kind::Frequency, "rpm", "1 1/min = 1 rpm"},
    {"rev/min", Kind::Frequency, "rpm", ""},
    {"u/min", Kind::Frequency, "rpm", ""},
    {"degree", Kind::Angle, "deg", ""},
    {"degrees", Kind::Angle, "deg", ""},
    {"percent", Kind::Share, "%", ""},
    {"percent", Kind::TorquePerShare, "N m/%", ""},
    {"pct", Kind::Share, "%", ""},
    {"permille", Kind::Share, "%", "1 permille = 0.1 %"},
    {"kw", Kind::Power, "W", "1 kW = 1000 W"},
    {"hp", Kind::Power, "W", "1 hp = 745.7 W"},
    {"ma", Kind::Current, "A", "1000 mA = 1 A"},
    {"cp", Kind::Viscosity, "Pa s", "1 cP = 0.001 Pa s"},
    {"mpas", Kind::Viscosity, "Pa s", "1 mPa s = 0.001 Pa s"},
});

std::string bare(std::string_view text)
{
    std::string out;
    for (const char c : text) {
        if (c == ' ') continue;
        out += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    }
    while (!out.empty() && out.back() == '.') out.pop_back();  // "lb.", "in."
    return out;
}

/// One letter too many, too few, wrong, or two changed over.
bool oneSlip(std::string_view a, std::string_view b)
{
    if (a.size() > b.size()) std::swap(a, b);
    if (b.size() - a.size() > 1) return false;
    const auto at = static_cast<std::size_t>(std::mismatch(a.begin(), a.end(), b.begin()).first - a.begin());
    if (a.size() < b.size()) return a.substr(at) == b.substr(at + 1);
    if (at == a.size()) return true;
    if (a.substr(at + 1) == b.substr(at + 1)) return true;
    return at + 1 < a.size() && a[at] == b[at + 1] && a[at + 1] == b[at] && a.substr(at + 2) == b.substr(at + 2);
}

/// Short symbols lie too close to each other for a slip to tell which was meant.
bool nearMiss(const std::string& written, std::string_view symbol)
{
    const std::string ours = bare(symbol);
    return ours == written || (ours.size() >= 3 && written.size() >= 3 && oneSlip(written, ours));
}

}  // namespace

std::string unitList(Kind kind)
{
    std::string list;
    for (const Unit& unit : unitsOf(kind)) {
        if (!list.empty()) list += ", ";
        list += unit.symbol;
    }
    return list;
}

std::optional<Text> nearUnit(std::string_view written, Kind expected, Written as)
{
    const std::string name = bare(written);
    for (const Foreign& foreign : kForeign) {
        if (foreign.written != name || foreign.kind != expected) continue;
        if (foreign.ours == kSheet)
            return Text{"Name the sheet too, like %1, or write it in one of: %2.",
                        {std::string(kSheet), unitList(expected)}};
        if (foreign.equation.empty()) return Text{"Write %1.", {std::string(foreign.ours)}};
        return Text{"Write %1 (%2).", {std::string(foreign.ours), std::string(foreign.equation)}};
    }
    for (const Unit& unit : unitsOf(expected))
        if (bare(unit.symbol) == name && unit.symbol != written) return Text{"Write %1.", {std::string(unit.symbol)}};
    if (as == Written::OtherKind) return std::nullopt;
    for (const Unit& unit : unitsOf(expected))
        if (unit.symbol != written && nearMiss(name, unit.symbol))
            return Text{"If %1 is meant, write %1.", {std::string(unit.symbol)}};
    return std::nullopt;
}

}  // namespace taut
