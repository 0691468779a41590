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

namespace {

/// The same quantity, shown with so many decimals more.
Quantity finely(const Quantity& q, int finer)
{
    Manner manner = mannerOf(q.unit());
    manner.finer = finer;
    return finer == 0 ? q : q.in(unitIn(manner));
}

/// Whether a value stands on an end that a rule set: where a control ends by itself it can be set to that end, and
/// nothing at all of a gap or a step is where it ends by itself.
bool standsOnLimit(const Quantity& value, const Window& window)
{
    if (value.si() == 0 && window.low->si() == 0) return false;
    const auto on = [&](const Quantity& end, Rule rule) { return value.si() == end.si() && rule != Rule::Press; };
    return window.low->si() < window.high->si() &&
           (on(*window.low, window.lowRule.value_or(window.rule)) || on(*window.high, window.rule));
}

}  // namespace

TargetValue aimOf(const Ready& ready, UnitSystem system)
{
    const auto* value = std::get_if<Quantity>(&ready.value);
    const auto& [low, high] = std::tie(ready.window.low, ready.window.high);
    if (value == nullptr || !Range{low, high}.contains(value->si())) return ready.value;

    const int finer = low && high ? finerFor(*low, *high, system) : 0;
    const Quantity fine = finely(*value, finer);
    if (low && high && standsOnLimit(*value, ready.window))
        return Quantity((low->si() + high->si()) / 2, value->kind(), fine.unit());
    const double shown = shownSi(fine, system, Rounding::Nearest);
    const double least = low ? shownSi(finely(*low, finer), system, Rounding::Up) : -kNone;
    const double most = high ? shownSi(finely(*high, finer), system, Rounding::Down) : kNone;
    if (least > most || (shown >= least && shown <= most)) return fine;
    return Quantity(shown < least ? least : most, value->kind(), fine.unit());
}

}  // namespace taut::targets
