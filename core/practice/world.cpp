// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/practice/world.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/inputs/key_reader.h"
#include "core/physics/brake.h"
#include "core/physics/dancer.h"
#include "core/physics/lift.h"
#include "core/practice/watch.h"

namespace taut::practice {

namespace {

constexpr double kSeconds = World::kTick.si();  ///< of a tick
/// What the mains pipe gives (common practice, no source).
constexpr double kAirSupply = 6.2e5;
/// Up to speed, down again, and in an emergency, where the press does not say (common practice, no source).
constexpr double kUsualRise = 0.3, kUsualFall = 0.5, kUsualEmergency = 2;
constexpr double kOverspeed = 0.1;

double ratePer(const inputs::Sourced& said, const inputs::Sourced& largest, double usual)
{
    if (!said.value || said.value->si() <= 0) return usual;
    const double from = said.at ? said.at->si() : largest.value ? largest.value->si() : 0;
    return from > 0 ? from / said.value->si() : usual;
}
/// Whether there is such a fault, and such an item of it at this press.
std::optional<Finding> noFault(const Fault& fault, const inputs::Press& press)
{
    std::vector<std::string> items;
    for (const Suspect& suspect : suspectsOf(press)) {
        if (isMeant(suspect, fault.what, fault.item)) return std::nullopt;
        if (suspect.what == fault.what) items.push_back(suspect.item);
    }
    const auto& names = faultNames();
    if (std::find(names.begin(), names.end(), fault.what) == names.end())
        return refuse("practice.fault", fault.what, {"There is no fault %1 to practise with.", {fault.what}},
                      {"Choose among: %1.", {inputs::listedWords(names)}});
    return refuse("practice.fault", fault.what,
                  {"This press has nothing called \"%2\" that the fault %1 could be of.", {fault.what, fault.item}},
                  items.empty() ? Text("Leave this fault out.")
                                : Text("Choose among: %1.", {inputs::listedWords(items)}));
}

/// The truth, where a label or a profile says something else.
Result<inputs::Inputs> truthOf(const Setup& setup)
{
    inputs::Inputs truth = setup.inputs;
    for (const Fault& fault : setup.faults) {
        if (auto why = noFault(fault, *truth.press)) return *std::move(why);
        if (fault.what != "roll.mislabelled" || !truth.roll->outerDiameter) continue;
        auto roll = *truth.roll;
        roll.outerDiameter = Entry<Kind::Length>(fault.amount * roll.outerDiameter->measure());
        truth.roll = std::make_shared<const inputs::Roll>(roll);
    }
    return truth;
}

}  // namespace

Result<World> World::build(const Setup& setup)
{
    auto truth = truthOf(setup);
    if (!truth) return truth.error();
    auto line = lineOf(*truth, inputs::Feed::Over);
    if (!line) return line.error();
    World world;
    world.m_setup = setup;
    world.m_setup.inputs = *std::move(truth);
    world.m_line = *std::move(line);
    const inputs::Press& press = *setup.inputs.press;
    world.m_web = atRest(world.m_line.web, Length{}, Length{}, Force{});
    const std::size_t spans = world.m_line.web.spans.size();
    world.m_table = spans > 2 ? 1 : 0;
    for (std::size_t i = 0; i < world.m_line.places.size(); ++i)
        if (world.m_line.places[i].id == press.spliceTable.after) world.m_table = i + 1;
    world.m_web.parted.assign(spans, false);
    for (std::size_t s = 0; s <= world.m_table; ++s) world.m_web.parted[s] = true;
    // The old web ends on the table; before it there is none.
    for (std::size_t s = 0; s < world.m_table; ++s) world.m_web.held[s] = kNoWeb.si();
    world.m_web.parted.back() = true;  // its end hangs where the last roll was taken off
    world.m_lateral = lyingAt(world.m_line.web, Length{});
    world.m_guides = guidesOf(press, world.m_line);
    world.m_guideStates.resize(world.m_guides.size());
    world.m_heat.assign(world.m_line.places.size(), 0);
    if (press.wakesStopped && !press.emergencyStops.empty())
        world.m_press.stops.insert(press.emergencyStops.front().id);
    for (const inputs::Device& guard : press.guards) world.m_press.open.insert(guard.id);
    for (const inputs::Station& station : press.stations)
        if (!station.dryer.empty() && station.dryer != "none")
            world.m_press.lampsOpen.insert(std::to_string(station.number));
    if (world.has("tail.left")) {
        // The last shift's joint lies just behind the table, and something stands over.
        double before = 0;
        for (std::size_t s = 0; s <= world.m_table; ++s) before += world.m_web.held[s];
        world.m_marks.push_back({Mark::What::Tail, -before - 0.1, 1, world.m_table + 1});
    }
    return world;
}

bool World::has(const std::string& fault, const std::string& item) const
{
    return std::any_of(m_setup.faults.begin(), m_setup.faults.end(), [&](const Fault& f) {
        return f.what == fault && (f.item.empty() || item.empty() || f.item == item);
    });
}

double World::amountOf(const std::string& fault, const std::string& item, double otherwise) const
{
    for (const Fault& f : m_setup.faults)
        if (f.what == fault && (f.item.empty() || f.item == item)) return f.amount;
    return otherwise;
}

void World::advance(Time by)
{
    for (auto ticks = static_cast<std::int64_t>(std::llround(by.si() / kSeconds)); ticks > 0; --ticks) tick();
}

void World::tick()
{
    runUp();
    lift();
    warm();
    practice::advance(m_line.web, m_web, drives(), Time::si(kSeconds));
    guide();
    // Counted, so that a thousand ticks are ten seconds and not a little less.
    m_web.time = static_cast<double>(++m_ticks) * kSeconds;
    Watch(*this).look();
}

Length World::leaves() const { return m_press.offCentre + steered(m_guides, m_guideStates, m_line).unwind; }

/// The web goes sideways as rollers and roll stand, and its guides look and move.
void World::guide()
{
    const Steered now = steered(m_guides, m_guideStates, m_line);
    practice::advance(m_line.web, m_web, m_lateral, m_press.offCentre + now.unwind, now.stands, Time::si(kSeconds));
    for (std::size_t g = 0; g < m_guides.size(); ++g) {
        const Guide& one = m_guides[g];
        const Length place = placeIn(m_line.web, m_lateral, one.span, one.after, m_press.offCentre + now.unwind);
        steer(one, m_guideStates[g], place, m_speed, m_setup.seed, Time::si(kSeconds), sees(one.id));
    }
}

/// The press goes to the speed that it was told, as fast as it can.
void World::runUp()
{
    const inputs::Press& press = *m_setup.inputs.press;
    if (m_press.motion != Motion::Standing && !mayMove()) {
        m_press.motion = Motion::Standing;
        m_emergency = true;
    }
    const double wanted = m_press.motion == Motion::Standing ? 0 : m_press.asked.si(), now = m_speed.si();
    const double rise = ratePer(press.rampUp, press.largest, kUsualRise);
    const double fall = m_emergency ? ratePer(press.emergencyStopTime, press.largest, kUsualEmergency)
                                    : ratePer(press.stopTime, press.largest, kUsualFall);
    m_speed =
        Speed::si(wanted > now ? std::min(wanted, now + rise * kSeconds) : std::max(wanted, now - fall * kSeconds));
    if (m_speed == Speed{}) m_emergency = false;
}

Result<Done> World::mayMove() const
{
    const inputs::Press& press = *m_setup.inputs.press;
    if (!m_press.mains)
        return refuse("press.dead", "main_disconnect", "Nothing stirs: the press has no power.", "Switch it on.");
    for (const inputs::Device& stop : press.emergencyStops)
        if (m_press.stops.count(stop.id) != 0)
            return refuse("press.stopped", stop.id, {"The press does not start: %1 is latched.", {stop.name}},
                          "Find out why it was, release it, and reset.");
    if (!m_press.reset)
        return refuse("press.stopped", "emergency_reset", "The press does not start: it was not reset.",
                      "Look round the press, then reset.");
    for (const inputs::Device& guard : press.guards)
        if (m_press.open.count(guard.id) != 0 && !has("guard.sticks", guard.id))
            return refuse("press.guard_open", guard.id, {"The press does not start: %1 is open.", {guard.name}},
                          "Close it, with nobody inside.");
    if (m_press.held)
        return refuse("press.held", "hold_stop", "The press does not start: a stop is held.",
                      "Whoever holds it gives it up, in person.");
    return Done{};
}

Pressure World::supply() const { return Pressure::si(m_press.air ? kAirSupply * amountOf("air.low", {}, 1) : 0); }

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

bool World::hasTail() const
{
    return std::any_of(m_marks.begin(), m_marks.end(),
                       [&](const Mark& mark) { return mark.what == Mark::What::Tail && spotOf(paidOut() - mark.in); });
}

/// What the zone's setting makes of its brake or clutch, as this press is and not as its profile says.
Torque World::torqueOf(const inputs::Zone& zone) const
{
    const auto found = m_press.settings.find(zone.id);
    const bool unwind = std::any_of(m_line.zones.begin(), m_line.zones.end(),
                                    [&](const LineZone& z) { return z.id == zone.id && z.first == 0; });
    const Length radius = unwind ? unwindRadius(m_line.web, m_web) : rewindRadius(m_line.web, m_web);
    const double worn = amountOf("brake.worn", zone.id, 1);
    const bool air = zone.actuator == inputs::Actuator::Pneumatic;
    const double supply = this->supply().si();
    if (m_emergency && zone.stopAction == "releases") return {};
    double setting = found == m_press.settings.end() ? 0 : found->second.si();
    if (air) {
        if (supply == 0 && zone.airLoss != "holds")
            setting = zone.airLoss == "brakes" ? kAirSupply : 0;
        else if (supply > 0)
            setting = std::min(setting, supply);
    }
    if (zone.control == inputs::Control::OpenLoop) {
        if (!zone.torquePerSetting) return {};
        const double zero = zone.zeroSetting ? zone.zeroSetting->si() : 0;
        return Torque::si(worn * zone.torquePerSetting->si() * std::max(0.0, setting - zero));
    }
    // A regulated zone gives the tension that was asked, as long as its brake can.
    double pull = setting;
    if (zone.control == inputs::Control::LoadCell && found != m_press.settings.end() &&
        found->second.kind() == Kind::Share)
        pull = zone.loadCell && zone.loadCell->range ? setting * zone.loadCell->range->si() : 0;
    // What its cell shows too much the loop takes away.
    if (pull > 0) pull -= cellOff(zone).si();
    if (zone.control == inputs::Control::Dancer && zone.dancer) {
        const auto& dancer = *zone.dancer;
        const auto* arc = m_line.path.arc(dancer.roller);
        const double wrap = dancer.wrap ? dancer.wrap->si() : arc ? arc->wrap : 0;
        if (dancer.load == "pneumatic" && dancer.bore && dancer.armCylinder && dancer.armRoller)
            pull = physics::dancerTension(dancer.cylinders.value_or(1), Pressure::si(setting),
                                          std::numbers::pi / 4 * dancer.bore->measure() * dancer.bore->measure(),
                                          dancer.armCylinder->measure(), dancer.armRoller->measure(), wrap)
                       .si();
    }
    return Torque::si(worn * std::max(0.0, std::isfinite(pull) ? pull : 0.0)) * radius.si();
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

Pressure World::liftBalance() const
{
    const auto& unwind = m_setup.inputs.press->unwind;
    if (!unwind || !unwind->lift || !unwind->lift->bore) return {};
    const inputs::Lift& lift = *unwind->lift;
    const WebLine& web = m_line.web;
    const Length outer = m_setup.inputs.roll->outerDiameter->measure() / 2;
    const double wound = webOn(web, outer, web.unwind.core).si() * web.width.si() * web.grammage.si();
    const auto& core = m_setup.inputs.roll->coreMass;
    const double carried = wound + (core ? core->si() : 0.9) + (lift.carriage ? lift.carriage->si() : 0);
    return physics::liftPressure(Mass::si(carried), lift.pistons.value_or(1), lift.bore->measure(),
                                 lift.efficiency.value_or(1), lift.ratio.value_or(1));
}

/// A roll rises as fast as its pressure is over the balance; far over it, it jumps.
void World::lift()
{
    constexpr double kRise = 0.5, kCreep = 0.05, kJump = 1.5;
    if (!m_lifting || m_press.roll != RollAt::Lift) return;
    const Pressure balance = liftBalance();
    const double over = balance > Pressure{} ? (m_press.liftAir / balance).si() : 2;
    const Cause cause{"lift.pressure", {}, "The pressure of the lift was not that of this roll."};
    if (over < 1) {
        happens("lift.stays", "unwind",
                {"The lift does not raise the roll: %1 is less than it weighs.",
                 {Quantity(m_press.liftAir, Kind::Pressure, "bar").magnitude()}},
                {cause});
        return;
    }
    if (over > kJump && m_press.lifted < 1)
        happens("lift.jumped", "unwind",
                {"The roll jumps up: %1 is far more than it weighs.",
                 {Quantity(m_press.liftAir, Kind::Pressure, "bar").magnitude()}},
                {cause});
    m_press.lifted = std::min(1.0, m_press.lifted + kSeconds * (kCreep + kRise * (over - 1)));
}

/// What lies under an open dryer: web that stands, or what somebody left there.
void World::warm()
{
    constexpr double kHot = 380, kSlow = 12;
    if (!m_press.mains) return;
    for (std::size_t i = 0; i < m_line.places.size(); ++i) {
        if (!m_line.places[i].station) continue;
        const std::string station = std::to_string(*m_line.places[i].station);
        const bool lies = m_press.rags.count(station) != 0 || (m_speed == Speed{} && !isParted(m_web, i + 1));
        const bool lit = m_press.lampsOpen.count(station) != 0;
        m_heat[i] += ((lit && lies ? kHot : 0) - m_heat[i]) * kSeconds / kSlow;
    }
}

std::optional<World::Spot> World::spotOf(double behindUnwind) const
{
    if (behindUnwind < 0) return {};
    double from = 0;
    for (std::size_t s = 0; s < m_web.held.size(); ++s) {
        if (behindUnwind < from + m_web.held[s])
            return Spot{s, m_line.web.spans[s] * ((behindUnwind - from) / m_web.held[s])};
        from += m_web.held[s];
    }
    return {};
}

std::optional<World::Spot> World::joint() const
{
    for (const Mark& mark : m_marks)
        if (mark.what == Mark::What::Joint) return spotOf(paidOut() - mark.in);
    return {};
}

void World::happens(std::string code, std::string where, Text text, std::vector<Cause> causes)
{
    const std::string key = code + ' ' + where;
    if (std::find(m_told.begin(), m_told.end(), key) != m_told.end()) return;
    m_told.push_back(key);
    m_consequences.push_back({time(), std::move(code), std::move(where), std::move(text), std::move(causes)});
}

}  // namespace taut::practice
