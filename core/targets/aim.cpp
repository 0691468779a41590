// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/targets/aim.h"

#include <limits>
#include <tuple>

#include "core/units/format.h"
#include "core/units/parse.h"

namespace taut::targets {

namespace {

constexpr double kNone = std::numeric_limits<double>::infinity();

/// What is read off a shown quantity, in SI.
double shownSi(const Quantity& q, UnitSystem system, Rounding rounding)
{
    const Shown shown = show(q, system, rounding);
    const auto number = parseNumber(shown.number);
    const Unit* unit = findUnit(q.kind(), shown.unit.empty() ? "1" : shown.unit);
    return number && unit != nullptr ? toSi(*number, *unit) : q.si();
}

}  // namespace

Magnitude shownLimit(const Quantity& limit, UnitSystem system, bool lower)
{
    return {shownSi(limit, system, lower ? Rounding::Up : Rounding::Down), limit.kind(), limit.unit()};
}

TargetValue aimOf(const Ready& ready, UnitSystem system)
{
    const auto* value = std::get_if<Quantity>(&ready.value);
    const auto& [low, high] = std::tie(ready.window.low, ready.window.high);
    if (value == nullptr || !Range{low, high}.contains(value->si())) return ready.value;

    if (low && high && low->si() < high->si() && (value->si() == low->si() || value->si() == high->si()))
        return Quantity((low->si() + high->si()) / 2, value->kind(), value->unit());
    const double shown = shownSi(*value, system, Rounding::Nearest);
    const double least = low ? shownSi(*low, system, Rounding::Up) : -kNone;
    const double most = high ? shownSi(*high, system, Rounding::Down) : kNone;
    if (least > most || (shown >= least && shown <= most)) return ready.value;
    return Quantity(shown < least ? least : most, value->kind(), value->unit());
}

}  // namespace taut::targets
