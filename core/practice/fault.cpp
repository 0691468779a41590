// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/practice/fault.h"

#include <algorithm>
#include <array>

#include "core/base/chance.h"

namespace taut::practice {

namespace {

using Items = std::vector<std::pair<std::string, std::string>>;  ///< ids and what people call them

Items guards(const inputs::Press& press)
{
    Items items;
    for (const inputs::Device& guard : press.guards) items.emplace_back(guard.id, guard.name);
    return items;
}
template <class Is>
Items zones(const inputs::Press& press, Is is)
{
    Items items;
    for (const inputs::Zone& zone : press.zones)
        if (is(zone)) items.emplace_back(zone.id, zone.name);
    return items;
}
/// A draw has no brake that wears.
Items brakes(const inputs::Press& press)
{
    return zones(press, [](const inputs::Zone& zone) { return zone.control != inputs::Control::Draw; });
}
/// With a load cell that can be off; with a drive into which a diameter is typed.
Items cells(const inputs::Press& press)
{
    return zones(press, [](const inputs::Zone& zone) { return zone.control == inputs::Control::LoadCell; });
}
Items drives(const inputs::Press& press)
{
    return zones(press, [](const inputs::Zone& zone) { return zone.needsDiameter; });
}
Items dancers(const inputs::Press& press)
{
    return zones(press, [](const inputs::Zone& zone) { return zone.control == inputs::Control::Dancer; });
}
/// With calipers of which more or fewer can be engaged: an air brake on the unwind.
Items calipers(const inputs::Press& press)
{
    return zones(press, [&](const inputs::Zone& zone) {
        return press.unwind && zone.from == press.unwind->roller && zone.control == inputs::Control::OpenLoop &&
               zone.actuator == inputs::Actuator::Pneumatic;
    });
}
/// Of air that is set by a gauge.
Items gauges(const inputs::Press& press)
{
    return zones(press, [](const inputs::Zone& zone) {
        return zone.control != inputs::Control::Draw && zone.setting.least &&
               zone.setting.least->kind() == Kind::Pressure;
    });
}
Items guides(const inputs::Press& press)
{
    Items items;
    for (const inputs::Guide& guide : press.guides) items.emplace_back(guide.id, guide.id);
    return items;
}

struct Row {
    const char* what;
    double usual;
    const char* says;
    Items (*items)(const inputs::Press&) = nullptr;  ///< nullptr: a press has it once
};
constexpr std::array kRows{
    Row{"air.low", 0.4, "The compressed air is low."},
    Row{"brake.worn", 0.6, "Brake or clutch of %1 is worn.", brakes},
    Row{"calipers.wrong", 0.5, "Not all the calipers of the brake of %1 are engaged.", calipers},
    Row{"cell.off", 0.1, "The load cell of %1 does not stand on its zero.", cells},
    Row{"core.wrong", 0.2, "The core is not of the size that the shaft holds."},
    Row{"dancer.pinned", 0, "The dancer of %1 is still pinned.", dancers},
    Row{"diameter.stale", 1, "The drive of %1 still works with the last roll's diameter.", drives},
    Row{"gauge.off", 0.1, "The gauge of %1 does not go back to nought.", gauges},
    Row{"guard.sticks", 0, "The switch of %1 sticks.", guards},
    Row{"roll.eccentric", 0.02, "The roll is out of round."},
    Row{"roll.mislabelled", 1.15, "The roll is not of the size that its label says."},
    Row{"sensor.dirty", 0.02, "The sensor of guide %1 is dirty.", guides},
    Row{"tail.left", 0, "The last shift left a tail at its joint."},
    Row{"wraps.nicked", 0, "The outer wraps of the roll are nicked."},
};

const Row* rowOf(std::string_view what)
{
    const auto* const found =
        std::find_if(kRows.begin(), kRows.end(), [&](const Row& row) { return row.what == what; });
    return found == kRows.end() ? nullptr : found;
}

}  // namespace

const std::vector<std::string>& faultNames()
{
    static const std::vector<std::string> kNames = [] {
        std::vector<std::string> names;
        names.reserve(kRows.size());
        for (const Row& row : kRows) names.emplace_back(row.what);
        return names;
    }();
    return kNames;
}

double usualAmount(std::string_view fault)
{
    const Row* row = rowOf(fault);
    return row == nullptr ? 0 : row->usual;
}

std::vector<Suspect> suspectsOf(const inputs::Press& press)
{
    std::vector<Suspect> suspects;
    for (const Row& row : kRows) {
        if (row.items == nullptr)
            suspects.push_back({row.what, {}});
        else
            for (const auto& [id, name] : row.items(press)) suspects.push_back({row.what, id});
    }
    return suspects;
}

bool isMeant(const Suspect& suspect, std::string_view what, std::string_view item)
{
    return suspect.what == what && (item.empty() || suspect.item == item);
}

Text suspectText(const Suspect& suspect, const inputs::Press& press)
{
    const Row* row = rowOf(suspect.what);
    if (row == nullptr) return {};
    if (row->items == nullptr) return SharedString::ofTable(row->says);
    for (const auto& [id, name] : row->items(press))
        if (id == suspect.item) return {SharedString::ofTable(row->says), {name.empty() ? id : name}};
    return {SharedString::ofTable(row->says), {suspect.item}};
}

std::vector<Fault> drawnFaults(const inputs::Press& press, std::uint64_t seed, std::size_t number)
{
    constexpr std::uint64_t kStream = 4711;
    std::vector<Suspect> left = suspectsOf(press);
    std::vector<Fault> drawn;
    Chance chance(seed, kStream);
    while (drawn.size() < number && !left.empty()) {
        const auto at = left.begin() + static_cast<std::ptrdiff_t>(chance.below(left.size()));
        drawn.push_back({at->what, at->item, usualAmount(at->what)});
        left.erase(at);
    }
    return drawn;
}

}  // namespace taut::practice
