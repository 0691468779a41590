// SPDX-License-Identifier: GPL-3.0-or-later
// What settings, air and drives make of the press as it is, and what its instruments show of that.
#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

#include "core/physics/dancer.h"
#include "core/practice/world.h"

namespace taut::practice {

namespace {

/// What the mains pipe gives (common practice, no source).
constexpr double kAirSupply = 6.2e5;
constexpr double kOverspeed = 0.1;  ///< of a slip clutch's input, where the press does not say

}  // namespace

Pressure World::supply() const { return Pressure::si(m_press.air ? kAirSupply * amountOf("air.low", {}, 1) : 0); }

/// By how much a zone's gauge shows too much: what is left on it without air.
Pressure World::gaugeOff(const std::string& zone) const
{
    return has("gauge.off", zone) ? Pressure::si(kAirSupply * amountOf("gauge.off", zone, 0)) : Pressure{};
}

std::optional<Quantity> World::shownSetting(const inputs::Zone& zone) const
{
    const auto found = m_press.settings.find(zone.id);
    if (found != m_press.settings.end()) return found->second;
    if (!zone.setting.least || zone.setting.least->kind() != Kind::Pressure) return std::nullopt;
    return Quantity(gaugeOff(zone.id), Kind::Pressure, zone.setting.least->unit());
}

Force World::shownPull(const LineZone& zone) const
{
    std::size_t span = zone.last;
    const auto& cell = m_setup.inputs.press->zone(zone.id)->loadCell;
    for (std::size_t i = 0; cell && i < m_line.places.size(); ++i)
        if (m_line.places[i].id == cell->roller) span = i;
    return tensionIn(m_line.web, m_web, span) + cellOff(*m_setup.inputs.press->zone(zone.id));
}

double World::sees(const std::string& guide) const
{
    return m_press.cleaned.count(guide) != 0 ? 1 : amountOf("sensor.dirty", guide, 1);
}

/// By how much a load cell shows too much.
Force World::cellOff(const inputs::Zone& zone) const
{
    if (zone.control != inputs::Control::LoadCell || !zone.loadCell || !zone.loadCell->range) return {};
    if (m_press.zeroed.count(zone.id) != 0) return {};
    return zone.loadCell->range->measure() * amountOf("cell.off", zone.id, 0);
}

Length World::toldDiameter(const inputs::Zone& zone) const
{
    const auto told = m_press.diameters.find(zone.id);
    if (told != m_press.diameters.end()) return told->second;
    const Length core = m_line.web.rewind.core * 2;
    if (!has("diameter.stale", zone.id)) return core;
    for (const inputs::Rewind& rewind : m_setup.inputs.press->rewinds)
        if (rewind.roller == zone.to && rewind.largestDiameter)
            return rewind.largestDiameter->measure() * amountOf("diameter.stale", zone.id, 1);
    return core;
}

/// Of the roll that a zone's brake or clutch turns.
Length World::radiusOf(const inputs::Zone& zone) const
{
    const bool unwind = std::any_of(m_line.zones.begin(), m_line.zones.end(),
                                    [&](const LineZone& z) { return z.id == zone.id && z.first == 0; });
    return unwind ? unwindRadius(m_line.web, m_web) : rewindRadius(m_line.web, m_web);
}

/// The most that brake or clutch of a regulated zone can do, worn as it is; without end where the press does not say.
double World::torqueMost(const inputs::Zone& zone) const
{
    const inputs::Setting& range = zone.actuatorRange;
    if (!zone.torquePerSetting || !range.most) return std::numeric_limits<double>::infinity();
    const double zero = zone.zeroSetting ? zone.zeroSetting->si() : 0;
    return amountOf("brake.worn", zone.id, 1) * zone.torquePerSetting->si() * std::max(0.0, range.most->si() - zero);
}

/// The pull that a regulated zone is asked for.
double World::askedPull(const inputs::Zone& zone, double setting) const
{
    const auto found = m_press.settings.find(zone.id);
    if (found == m_press.settings.end()) return 0;
    if (zone.control == inputs::Control::LoadCell && found->second.kind() == Kind::Share)
        return zone.loadCell && zone.loadCell->range ? setting * zone.loadCell->range->si() : 0;
    if (zone.control != inputs::Control::Dancer || !zone.dancer) return setting;
    const auto& dancer = *zone.dancer;
    if (dancer.load != "pneumatic" || !dancer.bore || !dancer.armCylinder || !dancer.armRoller) return setting;
    const auto* arc = m_line.path.arc(dancer.roller);
    return physics::dancerTension(dancer.cylinders.value_or(1), Pressure::si(setting),
                                  std::numbers::pi / 4 * dancer.bore->measure() * dancer.bore->measure(),
                                  dancer.armCylinder->measure(), dancer.armRoller->measure(),
                                  dancer.wrap ? dancer.wrap->si()
                                  : arc       ? arc->wrap
                                              : 0)
        .si();
}

/// What the zone's setting makes of its brake or clutch, as this press is and not as its profile says.
Torque World::torqueOf(const inputs::Zone& zone) const
{
    const auto found = m_press.settings.find(zone.id);
    const bool air = found != m_press.settings.end() ? found->second.kind() == Kind::Pressure
                                                     : zone.actuator == inputs::Actuator::Pneumatic;
    const double supply = this->supply().si();
    if (m_emergency && zone.stopAction == "releases") return {};
    double setting = found == m_press.settings.end() ? 0 : found->second.si();
    if (air) setting = std::max(0.0, setting - gaugeOff(zone.id).si());
    if (zone.actuator == inputs::Actuator::Pneumatic) {
        if (supply == 0 && zone.airLoss != "holds")
            setting = zone.airLoss == "brakes" ? kAirSupply : 0;
        else if (supply > 0)
            setting = std::min(setting, supply);
    }
    const double engaged = m_press.engaged.count(zone.id) != 0 ? 1 : amountOf("calipers.wrong", zone.id, 1);
    const double worn = amountOf("brake.worn", zone.id, 1) * engaged;
    if (zone.control == inputs::Control::OpenLoop) {
        if (!zone.torquePerSetting) return {};
        const double zero = zone.zeroSetting ? zone.zeroSetting->si() : 0;
        return Torque::si(worn * zone.torquePerSetting->si() * std::max(0.0, setting - zero));
    }
    // A regulated zone gives the tension that was asked, as long as its brake can.
    double pull = askedPull(zone, setting);
    const double most = torqueMost(zone);
    // An arm that is pinned where it lies without web tells its loop that the web is slack.
    if (pull > 0 && m_press.pinned.count(zone.id) != 0 && std::isfinite(most)) return Torque::si(most);
    // What its cell shows too much the loop takes away.
    if (pull > 0) pull -= cellOff(zone).si();
    const double wanted = worn * std::max(0.0, std::isfinite(pull) ? pull : 0.0) * radiusOf(zone).si();
    return Torque::si(std::min(wanted, most));
}

std::optional<double> World::armOf(const std::string& id) const
{
    constexpr double kMiddle = 0.5;
    const inputs::Zone* zone = m_setup.inputs.press->zone(id);
    if (zone == nullptr || zone->control != inputs::Control::Dancer) return std::nullopt;
    const auto found = m_press.settings.find(id);
    if (m_press.pinned.count(id) != 0 || found == m_press.settings.end()) return 0;
    // Its loop holds it in the middle, as long as the brake can pull what the arm is loaded with.
    const double pull = askedPull(*zone, std::max(0.0, found->second.si() - gaugeOff(id).si()));
    const bool taut = m_speed > Speed{} && torqueOf(*zone).si() >= (1 - 1e-9) * pull * radiusOf(*zone).si();
    return taut && pull > 0 ? kMiddle : 0;
}

Drives World::drives() const
{
    const inputs::Press& press = *m_setup.inputs.press;
    const std::size_t rollers = m_line.places.size();
    Drives drives;
    drives.driven.resize(rollers);
    drives.nipped.assign(rollers, false);
    std::vector<double> draw(rollers, 1);
    drives.unwindHeld = !unwinding();
    drives.rewindHeld = !m_press.coreHeld;
    for (const LineZone& zone : m_line.zones) {
        const inputs::Zone& said = *press.zone(zone.id);
        const auto set = m_press.settings.find(zone.id);
        if (said.control == inputs::Control::Draw) {
            if (set == m_press.settings.end()) continue;
            for (std::size_t i = zone.last; i < rollers; ++i) draw[i] *= 1 + set->second.si();
        } else if (zone.first == 0) {
            // A roll that its shaft does not hold turns on it, and no brake reaches it.
            if (m_press.shaftAir || !press.unwind || press.unwind->mandrel.kind != "air_shaft")
                drives.brake = coreHolds() ? torqueOf(said) : amountOf("core.wrong", {}, 1) * torqueOf(said);
        } else if (zone.last + 1 == m_line.web.spans.size()) {
            drives.clutch = torqueOf(said);
            const double over = 1 + said.overspeed.value_or(kOverspeed);
            // Of a drive that is told a diameter the speed follows from it.
            const double radius = said.needsDiameter ? toldDiameter(said).si() / 2 : m_line.web.rewind.core.si();
            drives.clutchInput = Frequency::si(over * m_speed.si() / radius);
        }
    }
    for (std::size_t i = 0; i < rollers; ++i) {
        const LinePlace& place = m_line.places[i];
        if (place.turned == Turned::Drive) drives.driven[i] = m_speed * draw[i];
        drives.nipped[i] = place.nip && m_press.nips.count(place.id) != 0;
        const bool clamped = m_press.tableClamps && (i + 1 == m_table || i == m_table);
        if (clamped || std::find(m_caught.begin(), m_caught.end(), i) != m_caught.end()) {
            drives.driven[i] = Speed{};
            drives.nipped[i] = true;
        }
    }
    return drives;
}

}  // namespace taut::practice
