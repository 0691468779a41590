// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/unit_json.h"

#include <algorithm>

#include "core/units/format.h"

namespace taut {

void setUnit(Json& object, const std::string& key, std::string_view unit)
{
    const Manner manner = mannerOf(unit);
    object.set(key, manner.symbol);
    if (manner.fixed) object.set(key + "_fixed", true);
    if (manner.finer > 0) object.set(key + "_finer", manner.finer);
}

std::string unitFrom(const Json& object, const std::string& key)
{
    const std::string unit = object[key].text();
    Manner manner = mannerOf(unit);
    if (object[key + "_fixed"].isBool()) manner.fixed = object[key + "_fixed"].boolean();
    if (object[key + "_finer"].isWhole())
        manner.finer = static_cast<int>(std::clamp<std::int64_t>(object[key + "_finer"].integer(), 0, 9));
    return unitIn(manner);
}

}  // namespace taut
