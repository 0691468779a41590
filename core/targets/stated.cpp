// SPDX-License-Identifier: GPL-3.0-or-later
#include <cassert>

#include "core/targets/book.h"

namespace taut::targets {

Term termOf(const Target& target, const Doubt* doubt)
{
    if (const auto* needs = std::get_if<Needs>(&target.state)) return Term{{}, {}, needs->keys, {}};
    if (const auto* no = std::get_if<Cannot>(&target.state)) return impossible(no->why);
    const Quantity* q = target.quantity();
    assert(q != nullptr);
    Term term = known(*q, "target:" + target.id);
    if (doubt != nullptr) term.doubt = *doubt;
    return term;
}

Stated& Stated::window(std::optional<Quantity> low, std::optional<Quantity> high, Rule rule, Text source)
{
    if (auto* r = std::get_if<Ready>(&m_target->state)) {
        const Quantity* value = std::get_if<Quantity>(&r->value);
        auto spoken = [&](std::optional<Quantity> q) -> std::optional<Quantity> {
            if (q && value && q->unit().empty()) return q->in(value->unit());
            return q;
        };
        r->window = Window{spoken(std::move(low)), spoken(std::move(high)), rule, std::move(source)};
    }
    return *this;
}

Stated& Stated::window(std::optional<Quantity> low, std::optional<Quantity> high, Rules rules, Text source)
{
    window(std::move(low), std::move(high), rules.high, std::move(source));
    if (auto* r = std::get_if<Ready>(&m_target->state); r != nullptr && rules.low != rules.high)
        r->window.lowRule = rules.low;
    return *this;
}

Stated& Stated::within(double below, double above, Rule rule, Text source)
{
    const Quantity* value = m_target->quantity();
    if (value == nullptr) return *this;
    const Quantity low(value->si() - below, value->kind(), value->unit());
    const Quantity high(value->si() + above, value->kind(), value->unit());
    return window(low, high, rule, std::move(source));
}

Stated& Stated::advice(Text text)
{
    if (auto* r = std::get_if<Ready>(&m_target->state))
        r->advice = std::move(text);
    else if (auto* needs = std::get_if<Needs>(&m_target->state))
        needs->advice = std::move(text);
    return *this;
}

Stated& Stated::symbols(SharedString relation)
{
    if (auto* r = std::get_if<Ready>(&m_target->state)) r->because.symbols = std::move(relation);
    return *this;
}

Stated& Stated::instrument(const std::optional<Quantity>& u)
{
    if (auto* r = std::get_if<Ready>(&m_target->state)) r->instrument = u;
    return *this;
}

Stated& Stated::most(const std::optional<Quantity>& end)
{
    if (auto* r = std::get_if<Ready>(&m_target->state)) {
        const Quantity* value = std::get_if<Quantity>(&r->value);
        if (end && value != nullptr && end->kind() == value->kind()) r->most = end;
    }
    return *this;
}

Stated& Stated::cannot(Finding why)
{
    SharedString source;
    if (const Ready* was = m_target->ready()) source = was->because.source;
    if (const auto* needs = std::get_if<Needs>(&m_target->state)) source = needs->source;
    if (const auto* no = std::get_if<Cannot>(&m_target->state)) source = no->source;
    m_target->state = Cannot{std::move(why), {}, std::move(source)};
    return *this;
}

Stated& Stated::in(const SharedString& unit)
{
    if (auto* r = std::get_if<Ready>(&m_target->state))
        if (auto* q = std::get_if<Quantity>(&r->value)) {
            *q = q->in(unit);
            if (r->uncertainty) r->uncertainty = r->uncertainty->in(unit);
        }
    return *this;
}

Term Stated::term() const { return termOf(*m_target, m_doubt); }

}  // namespace taut::targets
