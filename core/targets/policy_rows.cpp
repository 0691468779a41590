// SPDX-License-Identifier: GPL-3.0-or-later
#include <cassert>

#include "core/targets/book.h"

namespace taut::targets {

const Quantity* Book::ownRow(std::string_view name) const
{
    for (const auto& [set, value] : m_press->policy)
        if (set == name) return &value;
    return nullptr;
}

Quantity Book::usualRow(const inputs::PolicyRow& row) const
{
    return {row.si, row.kind, m_press->units == UnitSystem::Metric ? SharedString::ofTable(row.unit) : SharedString()};
}

Term Book::row(std::string_view name) const
{
    if (const Quantity* own = ownRow(name)) return known(*own, "press.policy." + std::string(name));
    const inputs::PolicyRow* usual = inputs::findPolicy(name);
    assert(usual != nullptr);
    return known(usualRow(*usual), "policy:" + std::string(name));
}

double Book::figure(std::string_view name) const
{
    if (const Quantity* own = ownRow(name)) return own->si();
    const inputs::PolicyRow* usual = inputs::findPolicy(name);
    assert(usual != nullptr);
    return usual->si;
}

Limit Book::limit(std::string_view name) const
{
    const inputs::PolicyRow* usual = inputs::findPolicy(name);
    assert(usual != nullptr);
    if (const Quantity* own = ownRow(name)) return {*own, Rule::Press, usual};
    return {usualRow(*usual), Rule::Policy, usual};
}

Text Limit::source() const
{
    const std::vector<Text> says{SharedString::ofTable(row->says)};
    if (rule == Rule::Press) return {"%1: this press's policy row %2", {says, std::string(row->name)}};
    return {"%1: %2, policy row %3",
            {says, std::vector<Text>{SharedString::ofTable(row->source)}, std::string(row->name)}};
}

}  // namespace taut::targets
