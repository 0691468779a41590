// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <string>

#include "core/inputs/parts.h"
#include "core/inputs/policy.h"

namespace taut::inputs {

namespace {

/// Two rows that are the ends of one window must stay in order, also when only one of them was set.
void checkPair(KeyReader& keys, Press& press, const std::string& low, const std::string& high)
{
    if (findPolicy(low) == nullptr || findPolicy(high) == nullptr) return;
    if (policyFigure(press, low) <= policyFigure(press, high)) return;
    const std::string& named = keys.has(low) ? low : high;
    keys.complain(named, refuse("input.order", {}, {"With this row %1 lies above %2.", {low, high}},
                                "Check both rows; the usual values hold until then."));
    press.policy.erase(std::remove_if(press.policy.begin(), press.policy.end(),
                                      [&](const auto& row) { return row.first == low || row.first == high; }),
                       press.policy.end());
}

}  // namespace

void readPolicy(KeyReader keys, Press& press)
{
    // Every row is asked for, so that a name which is none is answered with the nearest that is.
    for (const PolicyRow& row : policyRows()) {
        const Sane sane{row.least, row.most, row.least == 0};
        if (row.kind == Kind::Count) {
            std::optional<Quantity> n = keys.factor(row.name, sane);
            // Turns that are counted as they come off: 3.5 is as likely a slip for 35.
            if (n && row.whole && n->si() != std::round(n->si())) {
                keys.complain(row.name, refuse("input.not_whole", {},
                                               {"\"%1\" is not a whole number, and these are counted one by one.",
                                                {n->entered().str()}},
                                               "Write a whole number; the usual value holds until then."));
                n.reset();
            }
            if (n) press.policy.emplace_back(row.name, *std::move(n));
            continue;
        }
        const Kind kinds[] = {row.kind};
        if (std::optional<Quantity> q = keys.quantity(row.name, kinds, sane))
            press.policy.emplace_back(row.name, std::move(*q));
    }
    for (const auto& [lowEnd, highEnd] : {std::pair{"_least", "_most"}, std::pair{"_low", "_high"}})
        for (const PolicyRow& row : policyRows()) {
            const std::string name(row.name);
            const std::size_t cut = name.size() - std::min(name.size(), std::string(lowEnd).size());
            if (name.compare(cut, std::string::npos, lowEnd) == 0)
                checkPair(keys, press, name, name.substr(0, cut) + highEnd);
        }
    keys.done();
}

}  // namespace taut::inputs
