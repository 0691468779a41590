// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/gearing.h"

#include "core/physics/domain.h"

namespace taut::physics {
namespace {
constexpr double kForgivenTooth = 1e-9;
}

Length repeatByPitch(double teeth, Length pitch) noexcept
{
    if (!whole(teeth) || !positive(pitch)) return undefined<Length>();
    return pitch * teeth;
}

Length repeatByDiametralPitch(double teeth, CountPerLength diametralPitch) noexcept
{
    if (!positive(diametralPitch)) return undefined<Length>();
    return repeatByPitch(teeth, Length::si(kPi / diametralPitch.si()));
}

Length repeatByModule(double teeth, Length module) noexcept { return repeatByPitch(teeth, module * kPi); }

double teethFor(Length repeat, Length pitch) noexcept
{
    if (!positive(repeat, pitch)) return undefined<double>();
    return std::fmax(1, std::ceil((repeat / pitch).si() - kForgivenTooth));
}

double teethForDiametralPitch(Length repeat, CountPerLength diametralPitch) noexcept
{
    if (!positive(diametralPitch)) return undefined<double>();
    return teethFor(repeat, Length::si(kPi / diametralPitch.si()));
}

double teethForModule(Length repeat, Length module) noexcept { return teethFor(repeat, module * kPi); }

Length repeatRelaxed(Length repeat, double strain) noexcept
{
    if (!positive(repeat) || !notNegative(strain)) return undefined<Length>();
    return repeat * (strain / (1 + strain));
}

double plateStretch(Length repeat, Length plate, Length base) noexcept
{
    if (!positive(repeat) || !notNegative(plate, base) || plate < base) return undefined<double>();
    const Length shorter = (plate - base) * (2 * kPi);
    return shorter < repeat ? 1 - (shorter / repeat).si() : undefined<double>();
}

double registerAngle(Length repeat, Length shift) noexcept
{
    if (!positive(repeat) || !finite(shift)) return undefined<double>();
    return 2 * kPi * (shift / repeat).si();
}

Length jobLength(double quantity, double across, double around, Length repeat, double waste) noexcept
{
    if (!notNegative(quantity, waste) || !whole(across) || !whole(around) || !positive(repeat) || waste >= 1)
        return undefined<Length>();
    return repeat * (quantity / (across * around) / (1 - waste));
}

Length webLength(Length labels, Length makeReady, double splices, Length perSplice, Length path) noexcept
{
    if (!notNegative(labels, makeReady, splices, perSplice, path)) return undefined<Length>();
    return labels + makeReady + perSplice * splices + path;
}

}  // namespace taut::physics
