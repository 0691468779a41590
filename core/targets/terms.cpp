// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cassert>
#include <cmath>

#include "core/physics/formula.h"
#include "core/targets/book.h"

namespace taut::targets {

namespace {

void addOnce(std::vector<std::string>& keys, const std::vector<std::string>& more)
{
    for (const std::string& key : more)
        if (std::find(keys.begin(), keys.end(), key) == keys.end()) keys.push_back(key);
}

/// What each source of doubt does to a value, first order: the slope in each argument times that argument's part.
template <class Value>
Doubt propagated(const std::vector<const Term*>& parts, std::vector<double> si, double here, const Value& value)
{
    Doubt out;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        if (parts[i]->doubt.empty()) continue;
        const double at = si[i], step = at != 0 ? std::abs(at) * 1e-6 : 1e-9;
        si[i] = at + step;
        const double above = value(si);
        si[i] = at - step;
        const double below = value(si);
        si[i] = at;
        // At the edge of a formula's domain one side alone has to do.
        double slope = (above - below) / (2 * step);
        if (!std::isfinite(slope)) slope = std::isfinite(above) ? (above - here) / step : (here - below) / step;
        if (!std::isfinite(slope)) continue;
        for (const auto& [source, part] : parts[i]->doubt) out[source] += slope * part;
    }
    return out;
}

void addLack(Term& out, const Term& part)
{
    assert(part.known() || part.cannot || !part.missing.empty());
    if (part.cannot && !out.cannot) out.cannot = part.cannot;
    if (!part.known()) addOnce(out.missing, part.missing);
}

}  // namespace

Term known(Quantity value, std::string from) { return Term{std::move(from), std::move(value), {}, {}}; }
Term missing(std::string key) { return Term{key, std::nullopt, {key}, {}}; }
Term impossible(Finding why) { return Term{{}, std::nullopt, {}, std::move(why)}; }
Term term(const std::optional<Quantity>& quantity, std::string key)
{
    return quantity ? known(*quantity, std::move(key)) : missing(std::move(key));
}
Term number(const std::optional<double>& value, std::string key, Kind kind)
{
    return value ? known(Quantity(*value, kind), std::move(key)) : missing(std::move(key));
}
Term number(const std::optional<int>& value, std::string key)
{
    return value ? known(Quantity(*value, Kind::Count), std::move(key)) : missing(std::move(key));
}
Term called(Term term, Text name)
{
    term.name = std::move(name);
    return term;
}

Term lack(const std::vector<Term>& parts)
{
    Term out;
    for (const Term& part : parts) addLack(out, part);
    return out;
}

Term combine(const std::vector<Term>& parts, std::string from, double (*value)(const std::vector<double>&), Kind kind)
{
    Term out = lack(parts);
    if (out.cannot || !out.missing.empty()) return out;
    std::vector<const Term*> each;
    std::vector<double> si;
    for (const Term& part : parts) {
        each.push_back(&part);
        si.push_back(part.value->si());
    }
    const double here = value(si);
    out = known(Quantity(here, kind, parts.front().value->kind() == kind ? parts.front().value->unit() : ""),
                std::move(from));
    out.doubt = propagated(each, std::move(si), here, value);
    return out;
}

Term evaluated(const std::string& formulaId, const Arguments& arguments, std::string from)
{
    Term out;
    for (const auto& [symbol, part] : arguments) addLack(out, part);
    if (out.cannot || !out.missing.empty()) return out;
    const physics::Formula* formula = physics::findFormula(formulaId);
    assert(formula != nullptr);
    std::vector<physics::Named> named;
    named.reserve(arguments.size());
    for (const auto& [symbol, part] : arguments) named.push_back({symbol, *part.value});
    Result<Quantity> result = physics::evaluate(*formula, named);
    if (!result) return impossible(result.error());
    const double here = result->si();
    out = known(std::move(*result), std::move(from));
    if (std::all_of(arguments.begin(), arguments.end(), [](const auto& a) { return a.second.doubt.empty(); }))
        return out;

    // In the order in which the catalogue wants them.
    std::vector<const Term*> ordered;
    std::vector<double> si;
    for (const physics::Argument& wanted : formula->arguments)
        for (const auto& [symbol, part] : arguments)
            if (symbol == wanted.symbol) {
                ordered.push_back(&part);
                si.push_back(part.value->si());
            }
    out.doubt =
        propagated(ordered, std::move(si), here, [formula](const std::vector<double>& v) { return formula->value(v); });
    return out;
}

Term doubted(Term term, double expanded, const std::string& source)
{
    if (term.known() && expanded > 0) term.doubt[source] += expanded;
    return term;
}

double expandedOf(const Doubt& doubt)
{
    double sum = 0;
    for (const auto& [source, part] : doubt) sum += part * part;
    return std::sqrt(sum);
}

Given given(std::string symbol, Text name, TargetValue value, std::string from)
{
    return Given{std::move(symbol), std::move(name), std::move(value), std::move(from)};
}

}  // namespace taut::targets
