// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/verdict/slip.h"
#include "core/units/format.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <string>

#include "core/units/unit.h"
#include "core/verdict/verdict.h"

namespace taut::verdict {

namespace {

constexpr double kFar = 20;  // times the limit, round zero: no longer a poor one, another thing measured
constexpr double kPi = 3.14159265358979323846;

/// A unit typed and the one that was probably meant.
struct Mistaken {
    Kind kind;
    const char* typed;
    const char* meant;
};
constexpr Mistaken kUnits[] = {
    {Kind::Pressure, "bar", "psi"},
    {Kind::Pressure, "psi", "bar"},
    {Kind::Pressure, "kPa", "psi"},
    {Kind::Pressure, "kPa", "bar"},
    {Kind::Length, "in", "mm"},
    {Kind::Length, "mm", "in"},
    {Kind::Length, "cm", "mm"},
    {Kind::Length, "mm", "cm"},
    {Kind::Length, "cm", "in"},
    {Kind::Length, "in", "cm"},
    {Kind::Force, "N", "lbf"},
    {Kind::Force, "lbf", "N"},
    {Kind::Force, "kgf", "N"},
    {Kind::Force, "N", "kgf"},
    {Kind::ForcePerWidth, "N/mm", "N/cm"},
    {Kind::ForcePerWidth, "N/cm", "N/mm"},
    {Kind::ForcePerWidth, "lbf/in", "N/m"},
    {Kind::ForcePerWidth, "N/m", "lbf/in"},
    {Kind::Mass, "kg", "lb"},
    {Kind::Mass, "lb", "kg"},
};

bool fits(double si, const Quantity& like, const targets::Window& window)
{
    const Verdict v = judge(Quantity(si, like.kind()), 0, window).verdict;
    return v == Verdict::Inside;
}

Finding hint(Text text, Text remedy) { return {"window.slip", Severity::Note, "", std::move(text), std::move(remedy)}; }

}  // namespace

std::optional<Finding> likelySlip(const Quantity& typed, const targets::Window& window)
{
    if (!window.low || !window.high || window.low->kind() != typed.kind()) return std::nullopt;
    if (judge(typed, 0, window).verdict != Verdict::Outside) return std::nullopt;
    if (window.low->si() <= 0 && window.high->si() >= 0) {
        const double widest = std::max(-window.low->si(), window.high->si());
        if (widest <= 0 || std::fabs(typed.si()) < kFar * widest) return std::nullopt;
        return hint(Text("This is more than %1 times the limit.", {static_cast<std::int64_t>(kFar)}),
                    "Look at what was measured, at the unit and at the decimal point, and type the value again.");
    }

    const Unit* unit = findUnit(typed.kind(), mannerOf(typed.unit()).symbol);
    if (unit != nullptr) {
        const double number = fromSi(typed.si(), *unit);
        for (const Mistaken& m : kUnits) {
            if (m.kind != typed.kind() || m.typed != unit->symbol) continue;
            const Unit* meant = findUnit(m.kind, m.meant);
            if (meant == nullptr || !fits(toSi(number, *meant), typed, window)) continue;
            return hint(Text("The same number with \"%1\" as its unit would fit.", {std::string(m.meant)}),
                        Text("Look at which ring or unit was read, and type the value again."));
        }
    }
    if (typed.kind() == Kind::Length && fits(typed.si() / kPi, typed, window))
        return hint(Text("This may be the length round the roll: divided by 3.14 it would fit, a diameter of %1.",
                         {Magnitude{typed.si() / kPi, typed.kind(), std::string(unit == nullptr ? "" : unit->symbol)}}),
                    "Measure straight across and type the diameter.");
    constexpr struct {
        double factor;
        const char* text;
    } kPlaces[] = {{10, "Ten times as much would fit."},
                   {0.1, "A tenth of it would fit."},
                   {1000, "A thousand times as much would fit."},
                   {0.001, "A thousandth of it would fit."}};
    for (const auto& place : kPlaces)
        if (fits(typed.si() * place.factor, typed, window))
            return hint(place.text, "Check the decimal point, and type the value again.");
    return std::nullopt;
}

}  // namespace taut::verdict
