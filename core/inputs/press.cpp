// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/inputs/press.h"

#include <algorithm>

namespace taut::inputs {

namespace {

template <class T>
const T* byId(const std::vector<T>& all, std::string_view id)
{
    const auto it = std::find_if(all.begin(), all.end(), [&](const T& t) { return t.id == id; });
    return it == all.end() ? nullptr : &*it;
}

}  // namespace

const Roller* Press::roller(std::string_view rollerId) const { return byId(rollers, rollerId); }
const Zone* Press::zone(std::string_view zoneId) const { return byId(zones, zoneId); }
const Place* Press::place(std::string_view placeId) const { return byId(places, placeId); }

const std::string* Press::label(std::string_view role) const
{
    const auto it = std::find_if(labels.begin(), labels.end(), [&](const auto& l) { return l.first == role; });
    return it == labels.end() ? nullptr : &it->second;
}

}  // namespace taut::inputs
