// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/verdict/plausible.h"

#include "core/inputs/sane.h"
#include "core/targets/known_ids.h"
#include "core/verdict/slip.h"

namespace taut::verdict {

namespace {

using targets::Ready;
using targets::Window;

constexpr double kNearTarget = 0.2;  // a slip is told by where it would lead: within a fifth of the target

/// Whether something of this kind can be less than nothing: what is measured about a zero point, and what its target
/// itself says may be.
bool mayBeNegative(Kind kind, const Ready* ready, const Quantity* value)
{
    const bool signedTarget =
        value != nullptr && (value->si() < 0 || (ready->window.low && ready->window.low->si() < 0));
    switch (kind) {
    case Kind::Share:
    case Kind::Angle:
    case Kind::Torque:
    case Kind::Acceleration: return true;
    // A position or a difference about zero; of what has no target nobody knows which it is.
    case Kind::Length:
        return value == nullptr || signedTarget || value->si() == 0 ||
               (ready->window.low && ready->window.low->si() == 0);
    default: return signedTarget;
    }
}

/// What was probably meant: by the window, else by the target itself, else by where the control ends.
std::optional<Finding> slipOf(const Quantity& reading, const Ready& ready, const Quantity& value)
{
    if (auto hint = likelySlip(reading, ready.window)) return hint;
    const auto share = [&](double factor) { return Quantity(value.si() * factor, value.kind(), value.unit()); };
    if (value.si() > 0)
        if (auto hint = likelySlip(reading, Window{share(1 - kNearTarget), share(1 + kNearTarget), {}, {}}))
            return hint;
    return std::nullopt;
}

/// The remedy, with the probable slip before it where there is one.
Text remedyFor(const std::optional<Finding>& slip, Text otherwise)
{
    if (!slip) return otherwise;
    return {"%1 %2", {std::vector<Text>{slip->text}, std::vector<Text>{slip->remedy}}};
}

}  // namespace

std::optional<Finding> implausible(const Quantity& reading, const targets::Target* target)
{
    const Ready* ready = target == nullptr ? nullptr : target->ready();
    const Quantity* value = target == nullptr ? nullptr : target->quantity();
    if (value != nullptr && value->kind() != reading.kind()) ready = nullptr, value = nullptr;

    if (reading.si() < 0 && target != nullptr && value != nullptr && targets::hasNoSign(target->id))
        return refuse("reading.no_sign", {},
                      Text("%1 has a minus sign. %2: how much it is counts, whichever way, and that has no sign.",
                           {reading.magnitude(), std::vector<Text>{target->name}}),
                      "Type it without the minus sign.");

    if (reading.si() < 0 && !mayBeNegative(reading.kind(), ready, value))
        return refuse("reading.below_zero", {}, Text("%1 is less than nothing: this cannot be.", {reading.magnitude()}),
                      "Read it again, and type it without a minus sign.");

    if (reading.kind() == Kind::Time && reading.si() == 0 && value != nullptr && value->si() > 0)
        return refuse("reading.no_time", {}, Text("%1 is no time: nothing happens at once.", {reading.magnitude()}),
                      "Time it again, with its tenths.");

    if (value != nullptr && ready->most) {
        const double reach = ready->most->si() + (ready->instrument ? ready->instrument->si() : 0);
        if (reading.si() > reach)
            return refuse("reading.beyond_end", {},
                          Text("%1 is more than can be read here. %2: it goes to %3 at most.",
                               {reading.magnitude(), std::vector<Text>{target->name}, ready->most->magnitude()}),
                          remedyFor(slipOf(reading, *ready, *value),
                                    "Look at the unit and the decimal mark, and read it again. If it does show this, "
                                    "the press's profile is wrong: note it, and have it put right."));
    }
    const inputs::Sane sane = inputs::saneReading(reading.kind());
    if (reading.si() > sane.most)
        return refuse("reading.beyond_belief", {},
                      Text("%1 is more than anything on a press would show.", {reading.magnitude()}),
                      remedyFor(value == nullptr ? std::nullopt : slipOf(reading, *ready, *value),
                                "Look at the unit and the decimal mark, and read it again."));
    return std::nullopt;
}

}  // namespace taut::verdict
