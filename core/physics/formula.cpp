// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/formula.h"

#include <algorithm>
#include <cmath>

#include "core/physics/catalogue.h"
#include "core/units/unit.h"

namespace taut::physics {
namespace {

std::vector<Formula> everyFormula()
{
    std::vector<Formula> all;
    for (auto family : {catalogue::rollFormulas, catalogue::tensionFormulas, catalogue::spanFormulas,
                        catalogue::guideFormulas, catalogue::printFormulas, catalogue::motionFormulas})
        for (Formula& formula : family()) all.push_back(std::move(formula));
    std::sort(all.begin(), all.end(), [](const Formula& a, const Formula& b) { return a.id < b.id; });
    return all;
}

const Named* findNamed(std::span<const Named> given, std::string_view symbol)
{
    const auto at = std::find_if(given.begin(), given.end(), [symbol](const Named& n) { return n.symbol == symbol; });
    return at == given.end() ? nullptr : &*at;
}

bool isNumber(Kind kind) { return kind == Kind::Count || kind == Kind::Share; }
/// The SI cannot tell a plain number from a share, and people write either ("0.85", "85 %").
bool standsFor(Kind given, Kind wanted) { return given == wanted || (isNumber(given) && isNumber(wanted)); }

/// Which of their several kinds the arguments of this call have; 0 when none has several or it was not given.
std::size_t alternative(const Formula& formula, std::span<const Named> given)
{
    for (const Argument& argument : formula.arguments) {
        if (argument.kinds.size() < 2) continue;
        const Named* named = findNamed(given, argument.symbol);
        if (named == nullptr) return 0;
        for (std::size_t i = 0; i < argument.kinds.size(); ++i)
            if (standsFor(named->value.kind(), argument.kinds[i])) return i;
        return 0;
    }
    return 0;
}

/// "D, d, t"
std::string symbolsOf(const Formula& formula)
{
    std::string all;
    for (const Argument& argument : formula.arguments) {
        if (!all.empty()) all += ", ";
        all += argument.symbol;
    }
    return all;
}

Finding refusal(const Formula& formula, const char* code, Text text, Text remedy)
{
    return refuse(code, std::string(formula.id), std::move(text), std::move(remedy));
}

}  // namespace

std::span<const Formula> formulas()
{
    static const std::vector<Formula> all = everyFormula();
    return all;
}

const Formula* findFormula(std::string_view id)
{
    const std::span<const Formula> all = formulas();
    const auto at =
        std::lower_bound(all.begin(), all.end(), id, [](const Formula& f, std::string_view v) { return f.id < v; });
    return at != all.end() && at->id == id ? &*at : nullptr;
}

Kind resultKind(const Formula& formula, std::span<const Named> given)
{
    return formula.results.size() == 1 ? formula.results.front() : formula.results[alternative(formula, given)];
}

Result<Quantity> evaluate(const Formula& formula, std::span<const Named> given)
{
    const std::string id(formula.id);
    for (const Named& named : given) {
        const bool known = std::any_of(formula.arguments.begin(), formula.arguments.end(),
                                       [&named](const Argument& a) { return a.symbol == named.symbol; });
        if (!known)
            return refusal(formula, "formula.unknown_argument", {"Formula %1 has no argument %2.", {id, named.symbol}},
                           {"Its arguments are: %1. Capitals count.", {symbolsOf(formula)}});
        if (findNamed(given, named.symbol) != &named)
            return refusal(formula, "formula.repeated_argument",
                           {"%2 is given twice for formula %1.", {id, named.symbol}},
                           {"Give every argument once: %1.", {symbolsOf(formula)}});
    }
    const std::size_t kind = alternative(formula, given);
    std::vector<double> si;
    for (const Argument& argument : formula.arguments) {
        const std::string symbol(argument.symbol);
        const std::string name(argument.name);
        const Named* named = findNamed(given, argument.symbol);
        if (named == nullptr)
            return refusal(formula, "formula.missing_argument", {"Formula %1 needs %2 (%3).", {id, symbol, name}},
                           {"Its arguments are: %1. Give every one of them.", {symbolsOf(formula)}});
        const Kind wanted = argument.kinds[argument.kinds.size() == 1 ? 0 : kind];
        if (!standsFor(named->value.kind(), wanted))
            return refusal(formula, "formula.wrong_kind",
                           {"%2 (%3) of formula %1 cannot be %4.", {id, symbol, name, named->value.magnitude()}},
                           isNumber(wanted) ? Text{"Give %1 as a plain number.", {symbol}}
                                            : Text{"Give %1 in %2 or another unit of the same kind.",
                                                   {symbol, std::string(siUnit(wanted).symbol)}});
        si.push_back(named->value.si());
    }
    const double value = formula.value(si);
    if (!std::isfinite(value))
        return refusal(
            formula, "formula.outside_domain",
            {"Formula %1 has no answer for these values. It holds for: %2.", {id, std::string(formula.valid)}},
            {"Check the values against this rule, and their units."});
    return Quantity(value, resultKind(formula, given));
}

}  // namespace taut::physics
