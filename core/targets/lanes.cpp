// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/targets/lanes.h"

#include <algorithm>

#include "core/targets/book.h"

namespace taut::targets {

namespace {

const inputs::Zone* zoneOf(const inputs::Press& press, const inputs::Rewind& rewind)
{
    for (const inputs::Zone& zone : press.zones)
        if (rewindOf(press, zone) == &rewind) return &zone;
    return nullptr;
}

}  // namespace

std::optional<Finding> noLane(const inputs::Press& press, const inputs::Job& job, const inputs::Rewind& rewind)
{
    const auto products =
        std::count_if(press.rewinds.begin(), press.rewinds.end(), [](const inputs::Rewind& r) { return !r.waste; });
    if (rewind.waste || products < 2 || !job.across) return std::nullopt;
    int before = 0;
    for (const inputs::Rewind& r : press.rewinds) {
        if (&r == &rewind) break;
        if (!r.waste) ++before;
    }
    if (before < *job.across) return std::nullopt;
    const inputs::Zone* zone = zoneOf(press, rewind);
    const std::string name = zone == nullptr ? rewind.id : zone->name.empty() ? zone->id : zone->name;
    return Finding{"tension." + (zone == nullptr ? rewind.id : zone->id) + ".no_lane", Severity::Note, "job.across",
                   Text("%1 has no lane to wind: the job has %2 across, and the rewinds listed before it take them.",
                        {name, std::int64_t{*job.across}}),
                   "Leave it off. If it winds one, list its rewind first in the press profile."};
}

bool LeftOff::speaksOf(std::string_view id) const
{
    const std::size_t first = id.find('.'), last = id.rfind('.');
    if (first == std::string_view::npos || first == last) return false;
    const std::string_view family = id.substr(0, first), of = id.substr(first + 1, last - first - 1),
                           what = id.substr(last + 1);
    if (family == "tension") return !zone.empty() && of == zone;
    if (family == "traction" && what == "ratio") return std::find(rollers.begin(), rollers.end(), of) != rollers.end();
    if (family == "thread" && what == "length") return !path.empty() && of == path;
    const bool ofRewinds =
        family == "thread" || family == "stop" || family == "start" || family == "traction" || family == "mandrel";
    return ofRewinds && of == rewind;
}

std::vector<LeftOff> leftOff(const inputs::Press& press, const inputs::Job& job)
{
    std::vector<LeftOff> all;
    for (const inputs::Rewind& rewind : press.rewinds) {
        std::optional<Finding> why = noLane(press, job, rewind);
        if (!why) continue;
        const inputs::Zone* zone = zoneOf(press, rewind);
        LeftOff off{*std::move(why), rewind.id, zone == nullptr ? "" : zone->id, {}, {}};
        // On the main path the web still runs to where the lanes part.
        if (const inputs::Roller* roller = press.roller(rewind.roller); roller != nullptr && roller->path != "main")
            off.path = roller->path;
        if (!off.path.empty())
            for (const inputs::Roller& roller : press.rollers)
                if (roller.path == off.path) off.rollers.push_back(roller.id);
        all.push_back(std::move(off));
    }
    return all;
}

}  // namespace taut::targets
