// SPDX-License-Identifier: GPL-3.0-or-later
#include <cassert>
#include <cmath>

#include "core/units/unit.h"

namespace taut {

namespace {

constexpr double kFoot = 0.3048;

const char* timeSymbol(double size)
{
    if (size < 60) return "s";
    return size < 3600 ? "min" : "h";
}

const char* metricSymbol(Kind kind, double size)
{
    switch (kind) {
    case Kind::Count: return "1";
    case Kind::Share: return "%";
    case Kind::Angle: return "deg";
    case Kind::Length:
        if (size >= 1) return "m";
        return size == 0 || size >= 5e-4 ? "mm" : "um";
    case Kind::VolumePerArea: return "cm3/m2";
    case Kind::Area: return size < 0.1 ? "cm2" : "m2";
    case Kind::Mass: return size < 1 && size != 0 ? "g" : "kg";
    case Kind::Grammage: return "g/m2";
    case Kind::Density: return "kg/m3";
    case Kind::AreaPerMass: return "m2/kg";
    case Kind::Force: return size < 1e4 ? "N" : "kN";
    case Kind::ForcePerWidth: return "N/mm";
    case Kind::Pressure:  // air in bar, strength in MPa, modulus in GPa
        if (size < 2e6) return "bar";
        return size < 1e9 ? "MPa" : "GPa";
    case Kind::Torque: return "N m";
    case Kind::TorquePerPressure: return "N m/bar";
    case Kind::TorquePerCurrent: return "N m/A";
    case Kind::TorquePerShare: return "N m/%";
    case Kind::Speed: return "m/min";
    case Kind::Acceleration: return "m/s2";
    case Kind::Time: return timeSymbol(size);
    case Kind::Frequency: return "rpm";
    case Kind::Inertia: return "kg m2";
    case Kind::CountPerLength: return "lines/cm";
    case Kind::Power: return "W";
    case Kind::Current: return "A";
    case Kind::Viscosity: return "Pa s";
    }
    return "";
}

/// nullptr where US people use what metric people use.
const char* usSymbol(Kind kind, double size)
{
    switch (kind) {
    case Kind::Length:
        if (size >= 100 * kFoot / 12) return "ft";
        return size == 0 || size >= 0.02 * kFoot / 12 ? "in" : "mil";
    case Kind::VolumePerArea: return "BCM";
    case Kind::Area: return "in2";
    case Kind::Mass: return "lb";
    case Kind::Grammage: return "lb/3000ft2";
    case Kind::Density: return "g/cm3";
    case Kind::Force: return "lbf";
    case Kind::ForcePerWidth: return "lbf/in";
    case Kind::Pressure: return size < 6.9e7 ? "psi" : "kpsi";
    case Kind::Torque: return size < 13.6 ? "lbf in" : "lbf ft";
    case Kind::TorquePerPressure: return "N m/psi";
    case Kind::Speed: return "ft/min";
    case Kind::Inertia: return "lb ft2";
    case Kind::CountPerLength: return "lines/in";
    default: return nullptr;
    }
}

}  // namespace

const Unit& usualUnit(Kind kind, UnitSystem system, double si) noexcept
{
    const double size = std::fabs(si);
    const char* symbol = system == UnitSystem::Us ? usSymbol(kind, size) : nullptr;
    const Unit* unit = findUnit(kind, symbol != nullptr ? symbol : metricSymbol(kind, size));
    assert(unit != nullptr);
    return *unit;
}

const char* kindName(Kind kind) noexcept
{
    switch (kind) {
    case Kind::Count: return "a count";
    case Kind::Share: return "a share";
    case Kind::Angle: return "an angle";
    case Kind::Length: return "a length";
    case Kind::VolumePerArea: return "a volume per area";
    case Kind::Area: return "an area";
    case Kind::Mass: return "a mass";
    case Kind::Grammage: return "a mass per area";
    case Kind::Density: return "a density";
    case Kind::AreaPerMass: return "an area per mass";
    case Kind::Force: return "a force";
    case Kind::ForcePerWidth: return "a force per width";
    case Kind::Pressure: return "a pressure";
    case Kind::Torque: return "a torque";
    case Kind::TorquePerPressure: return "a torque per pressure";
    case Kind::TorquePerCurrent: return "a torque per current";
    case Kind::TorquePerShare: return "a torque per share";
    case Kind::Speed: return "a speed";
    case Kind::Acceleration: return "an acceleration";
    case Kind::Time: return "a time";
    case Kind::Frequency: return "a number of turns per time";
    case Kind::Inertia: return "a moment of inertia";
    case Kind::CountPerLength: return "a count per length";
    case Kind::Power: return "a power";
    case Kind::Current: return "a current";
    case Kind::Viscosity: return "a viscosity";
    }
    return "";
}

}  // namespace taut
