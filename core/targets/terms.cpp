// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>
#include <span>

#include "core/targets/term.h"

namespace taut::targets {

namespace {

void addOnce(std::vector<std::string>& keys, const std::vector<std::string>& more)
{
    for (const std::string& key : more)
        if (std::find(keys.begin(), keys.end(), key) == keys.end()) keys.push_back(key);
}

/// What each source of doubt does to a value, first order: the slope in each argument times that argument's part. `si`
/// are the arguments, which `value` evaluates as they stand there.
template <class Value>
Doubt propagated(std::span<const Term* const> parts, std::span<double> si, double here, const Value& value)
{
    Doubt out;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        if (parts[i]->doubt.empty()) continue;
        const double at = si[i], step = at != 0 ? std::abs(at) * 1e-6 : 1e-9;
        si[i] = at + step;
        const double above = value();
        si[i] = at - step;
        const double below = value();
        si[i] = at;
        // At the edge of a formula's domain one side alone has to do.
        double slope = (above - below) / (2 * step);
        if (!std::isfinite(slope)) slope = std::isfinite(above) ? (above - here) / step : (here - below) / step;
        if (!std::isfinite(slope)) continue;
        for (const Doubt::Part& part : parts[i]->doubt) out.of(part.source) += slope * part.value;
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

double& Doubt::of(const SharedString& source)
{
    constexpr std::size_t kUsual = 4;
    if (!m_parts) {
        m_parts = std::make_shared<std::vector<Part>>();
        m_parts->reserve(kUsual);
    } else if (m_parts.use_count() > 1) {
        m_parts = std::make_shared<std::vector<Part>>(*m_parts);
    }
    auto at = m_parts->begin();
    while (at != m_parts->end() && at->source.view() < source.view()) ++at;
    if (at == m_parts->end() || at->source != source) at = m_parts->insert(at, Part{source, 0});
    return at->value;
}

Term known(Quantity value, SharedString from) { return Term{std::move(from), std::move(value), {}, {}}; }
Term missing(const SharedString& key) { return Term{key, std::nullopt, {key.str()}, {}}; }
Term impossible(Finding why) { return Term{{}, std::nullopt, {}, std::make_shared<const Finding>(std::move(why))}; }
Term term(const std::optional<Quantity>& quantity, SharedString key)
{
    return quantity ? known(*quantity, std::move(key)) : missing(key);
}
Term number(const std::optional<double>& value, SharedString key, Kind kind)
{
    return value ? known(Quantity(*value, kind), std::move(key)) : missing(key);
}
Term number(const std::optional<int>& value, SharedString key)
{
    return value ? known(Quantity(*value, Kind::Count), std::move(key)) : missing(key);
}
Term called(Term term, Text name)
{
    term.name = std::move(name);
    return term;
}

Term lack(ListOf<Term> parts)
{
    Term out;
    for (const Term& part : parts) addLack(out, part);
    return out;
}

Term combine(ListOf<Term> parts, SharedString from, double (*value)(const std::vector<double>&), Kind kind)
{
    Term out = lack(parts);
    if (out.cannot || !out.missing.empty()) return out;
    std::vector<const Term*> each;
    std::vector<double> si;
    each.reserve(parts.size());
    si.reserve(parts.size());
    for (const Term& part : parts) {
        each.push_back(&part);
        si.push_back(part.value->si());
    }
    const double here = value(si);
    out = known(Quantity(here, kind, parts[0].value->kind() == kind ? parts[0].value->unit() : ""), std::move(from));
    out.doubt = propagated(each, si, here, [&] { return value(si); });
    return out;
}

Term evaluated(std::string_view formulaId, ListOf<Argument> arguments, SharedString from)
{
    const physics::Formula* formula = physics::findFormula(formulaId);
    assert(formula != nullptr);
    return evaluated(*formula, arguments, std::move(from));
}

Term evaluated(const physics::Formula& formula, ListOf<Argument> arguments, SharedString from)
{
    Term out;
    for (const auto& [symbol, part] : arguments) addLack(out, part);
    if (out.cannot || !out.missing.empty()) return out;
    assert(arguments.size() <= physics::kMostArguments);
    std::array<physics::NamedRef, physics::kMostArguments> named{};
    bool certain = true;
    for (std::size_t i = 0; i < arguments.size(); ++i) {
        named[i] = {arguments[i].first, &*arguments[i].second.value};
        certain = certain && arguments[i].second.doubt.empty();
    }
    Result<Quantity> result = physics::evaluate(formula, std::span(named).first(arguments.size()));
    if (!result) return impossible(result.error());
    const double here = result->si();
    out = known(std::move(result).value(), std::move(from));
    if (certain) return out;

    // In the order in which the catalogue wants them.
    std::array<const Term*, physics::kMostArguments> ordered{};
    std::array<double, physics::kMostArguments> si{};
    std::size_t count = 0;
    for (const physics::Argument& wanted : formula.arguments)
        for (const auto& [symbol, part] : arguments)
            if (symbol == wanted.symbol) {
                ordered[count] = &part;
                si[count++] = part.value->si();
            }
    const std::span<double> values = std::span(si).first(count);
    out.doubt = propagated(std::span(ordered).first(count), values, here, [&] { return formula.value(values); });
    return out;
}

Term doubted(Term term, double expanded, const SharedString& source)
{
    if (term.known() && expanded > 0) term.doubt.of(source) += expanded;
    return term;
}

double expandedOf(const Doubt& doubt)
{
    double sum = 0;
    for (const Doubt::Part& part : doubt) sum += part.value * part.value;
    return std::sqrt(sum);
}

Given given(SharedString symbol, Text name, TargetValue value, SharedString from)
{
    return Given{std::move(symbol), std::move(name), std::move(value), std::move(from)};
}

}  // namespace taut::targets
