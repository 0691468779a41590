// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/verdict/near.h"

namespace taut::verdict {

std::optional<Text> whyNear(const Quantity& reading, double uncertaintySi, const targets::Window& window)
{
    if (judge(reading, uncertaintySi, window).verdict != Verdict::Near) return std::nullopt;
    const Magnitude u{uncertaintySi, reading.kind(), reading.unit()};
    if (tooCoarse(uncertaintySi, window))
        return Text("it can be read to %1 either way, more than half of the window", {u});
    return Text("it can be read to %1 either way, and the limit is closer than that", {u});
}

}  // namespace taut::verdict
