// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cassert>
#include <cmath>

#include "core/verdict/verdict.h"

namespace taut::verdict {

namespace {

/// -1, 0, 1 as a is below, at or above b, in decimal to 12 significant digits of the largest number that took part:
/// two numbers that differ by no more than half a unit of the twelfth digit are one number. `scale` is that largest
/// number, so that a sum near zero is not compared more finely than what it was added up from.
int compare(double a, double b, double scale)
{
    if (a == b) return 0;
    const double half = scale > 0 ? 0.5 * std::pow(10.0, std::floor(std::log10(scale)) - 11) : 0.0;
    if (std::fabs(a - b) <= half) return 0;
    return a < b ? -1 : 1;
}

double scaleOf(double reading, double limit, double uncertainty)
{
    return std::max({std::fabs(reading), std::fabs(limit), std::fabs(uncertainty)});
}

/// What one limit says. side: +1 for an upper limit, -1 for a lower one.
Judgement against(double reading, double limit, double uncertainty, double side)
{
    const double scale = scaleOf(reading, limit, uncertainty);
    // Measured towards the outside, both limits are upper ones.
    const double y = side * reading;
    const double edge = side * limit;
    if (compare(y, edge, scale) > 0) return {Verdict::Outside, compare(y, edge + uncertainty, scale) <= 0};
    if (compare(y, edge - uncertainty, scale) > 0) return {Verdict::Near, false};
    return {Verdict::Inside, false};
}

}  // namespace

const char* verdictWord(Verdict verdict) noexcept
{
    switch (verdict) {
    case Verdict::Inside: return "inside";
    case Verdict::Near: return "near";
    case Verdict::Outside: return "outside";
    case Verdict::Missing: return "missing";
    case Verdict::Recorded: return "recorded";
    }
    return "";
}

std::optional<Verdict> verdictFrom(std::string_view word) noexcept
{
    for (const Verdict v : {Verdict::Inside, Verdict::Near, Verdict::Outside, Verdict::Missing, Verdict::Recorded})
        if (word == verdictWord(v)) return v;
    return std::nullopt;
}

Judgement judge(const Quantity& reading, double uncertaintySi, const targets::Window& window)
{
    assert(!(uncertaintySi < 0));
    assert(!window.low || window.low->kind() == reading.kind());
    assert(!window.high || window.high->kind() == reading.kind());
    if (!std::isfinite(reading.si())) return {Verdict::Missing, false};
    if (!window.low && !window.high) return {Verdict::Recorded, false};

    // The worse of the two limits decides. Outside one of them it cannot be outside the other.
    Judgement worst{Verdict::Inside, false};
    const auto take = [&](const Judgement& j) {
        if (j.verdict > worst.verdict) worst = j;
    };
    // Of edges that touch nobody doubts that they do not lie over one another; and of what must not be there at all,
    // that none was seen is all that can be seen.
    const bool touches = window.low && window.low->si() == 0 && reading.kind() == Kind::Length && reading.si() >= 0;
    const bool none = (!window.low || touches) && window.high && window.high->si() == 0 && reading.si() == 0;
    if (window.low && !touches) take(against(reading.si(), window.low->si(), uncertaintySi, -1));
    if (window.high && !none) take(against(reading.si(), window.high->si(), uncertaintySi, +1));
    // Short of an alarm nothing is proved.
    if (window.rule == targets::Rule::Alarm && worst.verdict != Verdict::Outside) return {Verdict::Recorded, false};
    return worst;
}

}  // namespace taut::verdict
