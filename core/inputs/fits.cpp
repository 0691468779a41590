// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/inputs/fits.h"

#include <cmath>

namespace taut::inputs {

std::optional<Feed> feedFor(const Press& press, const Roll& roll)
{
    if (!press.printFeed || !press.printWinding || roll.winding == Winding::Unknown) return std::nullopt;
    if (roll.winding == *press.printWinding) return press.printFeed;
    return *press.printFeed == Feed::Over ? Feed::Under : Feed::Over;
}

const Adapter* adapterFor(const Unwind& unwind, Length core)
{
    for (const Adapter& adapter : unwind.adapters)
        if (std::abs(adapter.core.si() - core.si()) <= kAdapterPlay.si()) return &adapter;
    return nullptr;
}

CoreFit fitOf(const Press& press, const Roll& roll)
{
    if (!press.unwind || !roll.core) return CoreFit::Unknown;
    const Mandrel& mandrel = press.unwind->mandrel;
    if (!mandrel.gripsLeast || !mandrel.gripsMost) return CoreFit::Unknown;
    const Length core = roll.core->measure();
    if (core < mandrel.gripsLeast->measure()) return CoreFit::TooSmall;
    if (core <= mandrel.gripsMost->measure()) return CoreFit::Held;
    return adapterFor(*press.unwind, core) != nullptr ? CoreFit::Adapter : CoreFit::NoAdapter;
}

bool seesEdge(const Guide& guide, const Substrate& substrate)
{
    const bool light = guide.sensor == "infrared" || guide.sensor == "visible";
    return !(light && substrate.clear);
}

}  // namespace taut::inputs
