// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/targets/coarse.h"

#include <algorithm>
#include <cmath>

namespace taut::targets {

std::optional<Finding> tooCoarse(double uncertaintySi, const Window& window)
{
    if (!window.low || !window.high) return std::nullopt;
    const double low = window.low->si() + uncertaintySi, high = window.high->si() - uncertaintySi;
    // Half a unit of the twelfth digit of the largest number that took part.
    const double scale =
        std::max({std::fabs(window.low->si()), std::fabs(window.high->si()), std::fabs(uncertaintySi)});
    const double noise = scale > 0 ? 0.5 * std::pow(10.0, std::floor(std::log10(scale)) - 11) : 0.0;
    if (low <= high + noise) return std::nullopt;
    const Magnitude u{uncertaintySi, window.low->kind(), window.low->unit()};
    return Finding{"window.too_coarse", Severity::Warn, "",
                   Text("This gauge reads to %1 either way: too coarse for the window from %2 to %3, in which nothing "
                        "can be sure to be inside.",
                        {u, window.low->magnitude(), window.high->magnitude()}),
                   Text("Read it on a finer instrument, or one whose range fits this value better.")};
}

}  // namespace taut::targets
