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
Doubt propagated(const std::vector<Term>& parts, const std::vector<double>& si, const Value& value)
{
    Doubt out;
    const double here = value(si);
    for (std::size_t i = 0; i < parts.size(); ++i) {
        if (parts[i].doubt.empty()) continue;
        const double step = si[i] != 0 ? std::abs(si[i]) * 1e-6 : 1e-9;
        std::vector<double> up = si, down = si;
        up[i] += step;
        down[i] -= step;
        // At the edge of a formula's domain one side alone has to do.
        const double above = value(up), below = value(down);
        double slope = (above - below) / (2 * step);
        if (!std::isfinite(slope)) slope = std::isfinite(above) ? (above - here) / step : (here - below) / step;
        if (!std::isfinite(slope)) continue;
        for (const auto& [source, part] : parts[i].doubt) out[source] += slope * part;
    }
    return out;
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
    for (const Term& part : parts) {
        assert(part.known() || part.cannot || !part.missing.empty());
        if (part.cannot && !out.cannot) out.cannot = part.cannot;
        if (!part.known()) addOnce(out.missing, part.missing);
    }
    return out;
}

Term combine(const std::vector<Term>& parts, std::string from, double (*value)(const std::vector<double>&), Kind kind)
{
    Term out = lack(parts);
    if (out.cannot || !out.missing.empty()) return out;
    std::vector<double> si;
    for (const Term& part : parts) si.push_back(part.value->si());
    out = known(Quantity(value(si), kind, parts.front().value->kind() == kind ? parts.front().value->unit() : ""),
                std::move(from));
    out.doubt = propagated(parts, si, value);
    return out;
}

Term evaluated(const std::string& formulaId, const Arguments& arguments, std::string from)
{
    std::vector<Term> parts;
    for (const auto& [symbol, part] : arguments) parts.push_back(part);
    Term out = lack(parts);
    if (out.cannot || !out.missing.empty()) return out;
    const physics::Formula* formula = physics::findFormula(formulaId);
    assert(formula != nullptr);
    std::vector<physics::Named> named;
    for (const auto& [symbol, part] : arguments) named.push_back({symbol, *part.value});
    Result<Quantity> result = physics::evaluate(*formula, named);
    if (!result) return impossible(result.error());
    out = known(*result, std::move(from));

    // In the order in which the catalogue wants them.
    std::vector<Term> ordered;
    std::vector<double> si;
    for (const physics::Argument& wanted : formula->arguments)
        for (const auto& [symbol, part] : arguments)
            if (symbol == wanted.symbol) {
                ordered.push_back(part);
                si.push_back(part.value->si());
            }
    out.doubt = propagated(ordered, si, [formula](const std::vector<double>& v) { return formula->value(v); });
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
