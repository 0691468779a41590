// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/formula.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>
#include <unordered_map>

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
    assert(std::all_of(all.begin(), all.end(), [](const Formula& f) { return f.arguments.size() <= kMostArguments; }));
    std::sort(all.begin(), all.end(), [](const Formula& a, const Formula& b) { return a.id < b.id; });
    return all;
}

const NamedRef* findNamed(std::span<const NamedRef> given, std::string_view symbol)
{
    const auto at =
        std::find_if(given.begin(), given.end(), [symbol](const NamedRef& n) { return n.symbol == symbol; });
    return at == given.end() ? nullptr : &*at;
}

bool isNumber(Kind kind) { return kind == Kind::Count || kind == Kind::Share; }
/// The SI cannot tell a plain number from a share, and people write either ("0.85", "85 %").
bool standsFor(Kind given, Kind wanted) { return given == wanted || (isNumber(given) && isNumber(wanted)); }

/// Which of their several kinds the arguments of this call have; 0 when none has several or it was not given.
std::size_t alternative(const Formula& formula, std::span<const NamedRef> given)
{
    for (const Argument& argument : formula.arguments) {
        if (argument.kinds.size() < 2) continue;
        const NamedRef* named = findNamed(given, argument.symbol);
        if (named == nullptr) return 0;
        for (std::size_t i = 0; i < argument.kinds.size(); ++i)
            if (standsFor(named->value->kind(), argument.kinds[i])) return i;
        return 0;
    }
    return 0;
}

std::vector<NamedRef> refs(std::span<const Named> given)
{
    std::vector<NamedRef> all;
    all.reserve(given.size());
    for (const Named& named : given) all.push_back({named.symbol, &named.value});
    return all;
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
    static const auto byId = [] {
        std::unordered_map<std::string_view, const Formula*> all;
        for (const Formula& formula : formulas()) all.emplace(formula.id, &formula);
        return all;
    }();
    const auto at = byId.find(id);
    return at == byId.end() ? nullptr : at->second;
}

Kind resultKind(const Formula& formula, std::span<const Named> given)
{
    return formula.results.size() == 1 ? formula.results.front() : formula.results[alternative(formula, refs(given))];
}

Result<Quantity> evaluate(const Formula& formula, std::span<const Named> given)
{
    return evaluate(formula, refs(given));
}

Result<Quantity> evaluate(const Formula& formula, std::span<const NamedRef> given)
{
    const auto id = [&formula] { return std::string(formula.id); };
    // As the catalogue orders them, which is how core gives them, nothing is unknown and nothing there twice.
    const bool inOrder =
        std::equal(given.begin(), given.end(), formula.arguments.begin(), formula.arguments.end(),
                   [](const NamedRef& named, const Argument& wanted) { return named.symbol == wanted.symbol; });
    for (const NamedRef& named : inOrder ? std::span<const NamedRef>() : given) {
        const bool known = std::any_of(formula.arguments.begin(), formula.arguments.end(),
                                       [&named](const Argument& a) { return a.symbol == named.symbol; });
        if (!known)
            return refusal(formula, "formula.unknown_argument",
                           {"Formula %1 has no argument %2.", {id(), std::string(named.symbol)}},
                           {"Its arguments are: %1. Capitals count.", {symbolsOf(formula)}});
        if (findNamed(given, named.symbol) != &named)
            return refusal(formula, "formula.repeated_argument",
                           {"%2 is given twice for formula %1.", {id(), std::string(named.symbol)}},
                           {"Give every argument once: %1.", {symbolsOf(formula)}});
    }
    const std::size_t kind = alternative(formula, given);
    std::array<double, kMostArguments> si{};
    std::size_t count = 0;
    for (const Argument& argument : formula.arguments) {
        const auto symbol = [&argument] { return std::string(argument.symbol); };
        const NamedRef* named = inOrder ? &given[count] : findNamed(given, argument.symbol);
        if (named == nullptr)
            return refusal(formula, "formula.missing_argument",
                           {"Formula %1 needs %2 (%3).", {id(), symbol(), std::string(argument.name)}},
                           {"Its arguments are: %1. Give every one of them.", {symbolsOf(formula)}});
        const Kind wanted = argument.kinds[argument.kinds.size() == 1 ? 0 : kind];
        if (!standsFor(named->value->kind(), wanted))
            return refusal(formula, "formula.wrong_kind",
                           {"%2 (%3) of formula %1 cannot be %4.",
                            {id(), symbol(), std::string(argument.name), named->value->magnitude()}},
                           isNumber(wanted) ? Text{"Give %1 as a plain number.", {symbol()}}
                                            : Text{"Give %1 in %2 or another unit of the same kind.",
                                                   {symbol(), std::string(siUnit(wanted).symbol)}});
        si[count++] = named->value->si();
    }
    const double value = formula.value(std::span(si).first(count));
    if (!std::isfinite(value))
        return refusal(
            formula, "formula.outside_domain",
            {"Formula %1 has no answer for these values. It holds for: %2.", {id(), std::string(formula.valid)}},
            {"Check the values against this rule, and their units."});
    return Quantity(value, formula.results.size() == 1 ? formula.results.front() : formula.results[kind]);
}

}  // namespace taut::physics
