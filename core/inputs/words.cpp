// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/inputs/words.h"

#include "core/base/json.h"
#include "core/units/parse.h"

namespace taut::inputs {

std::string asWritten(const Quantity& q)
{
    const auto sameAs = [&](std::string_view text) {
        const Result<Quantity> back = parseQuantity(text, q.kind());
        return back && back->si() == q.si();
    };
    if (!q.entered().empty() && sameAs(q.entered())) return q.entered().str();
    if (const Unit* unit = findUnit(q.kind(), q.unit()); unit != nullptr) {
        std::string text = shortest(q.si() / unit->toSi) + ' ' + std::string(unit->symbol);
        if (sameAs(text)) return text;
    }
    return shortest(q.si()) + ' ' + std::string(siUnit(q.kind()).symbol);
}

}  // namespace taut::inputs
