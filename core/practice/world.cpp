// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/practice/world.h"

#include <algorithm>
#include <cmath>

#include "core/inputs/key_reader.h"
#include "core/physics/lift.h"
#include "core/practice/watch.h"

namespace taut::practice {

namespace {

constexpr double kSeconds = World::kTick.si();  ///< of a tick
/// Up to speed, down again, and in an emergency, where the press does not say (common practice, no source).
constexpr double kUsualRise = 0.3, kUsualFall = 0.5, kUsualEmergency = 2;

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
    // How the last job left its register adjusters follows from the seed; nobody puts them back for the next.
    constexpr std::uint64_t kAdjusters = 6000;
    constexpr double kLeft = 0.8;
    for (const inputs::Station& station : press.stations) {
        if (!station.registerAlong && !station.registerAcross) continue;
        Chance chance(setup.seed, kAdjusters + static_cast<std::uint64_t>(station.number));
        Adjusted& left = world.m_press.registers[std::to_string(station.number)];
        if (station.registerAlong) left.along = station.registerAlong->measure() * chance.between(-kLeft, kLeft);
        if (station.registerAcross) left.across = station.registerAcross->measure() * chance.between(-kLeft, kLeft);
    }
    for (const inputs::Zone& zone : press.zones)
        if (world.has("dancer.pinned", zone.id)) world.m_press.pinned.insert(zone.id);
    if (world.has("tail.left")) {
        // The last shift's joint lies just behind the table, and something stands over.
        double before = 0;
        for (std::size_t s = 0; s <= world.m_table; ++s) before += world.m_web.held[s];
        world.m_marks.push_back({Mark::What::OldTail, -before - 0.1, 1, world.m_table + 1});
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
    takeUp();
    guide();
    // Counted, so that a thousand ticks are ten seconds and not a little less.
    m_web.time = static_cast<double>(++m_ticks) * kSeconds;
    Watch(*this).look();
}

/// While the web creeps and its end hangs at the rewind, whoever stands there draws it along by hand.
void World::takeUp()
{
    const std::size_t last = m_web.held.size() - 1;
    const bool creeps = m_press.motion == Motion::HeldToRun || m_press.motion == Motion::Inching;
    if (!creeps || m_press.coreHeld || !isParted(m_web, last)) return;
    for (std::size_t s = last; s-- > 0;) {
        const LinePlace& over = m_line.places[s];
        if (m_press.nips.count(over.id) != 0 || over.turned == Turned::Drive || isParted(m_web, s)) return;
        const double hangs = slackIn(m_line.web, m_web, s).si();
        m_web.held[s] -= hangs;
        m_web.held[last] += hangs;
    }
}

Length World::leaves() const { return m_press.offCentre + steered(m_guides, m_guideStates, m_line).unwind; }

/// The web goes sideways as rollers and roll stand, and its guides look and move.
void World::guide()
{
    const Steered now = steered(m_guides, m_guideStates, m_line);
    // Joined with a step, the new web lies beside the line that the old one draws behind it: the line alone is led.
    const Length beside = m_press.joint.taped ? m_press.joint.step : Length{};
    const auto at = joint();
    const std::size_t joined = at ? at->span : m_press.joint.taped ? m_lateral.at.size() : 0;
    for (std::size_t i = 0; i < joined; ++i) m_lateral.at[i] -= beside.si();
    practice::advance(m_line.web, m_web, m_lateral, m_press.offCentre + now.unwind - beside, now.stands,
                      Time::si(kSeconds));
    for (std::size_t i = 0; i < joined; ++i) m_lateral.at[i] += beside.si();
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
    const double now = m_speed.si();
    const double rise = ratePer(press.rampUp, press.largest, kUsualRise);
    const double fall = m_emergency ? ratePer(press.emergencyStopTime, press.largest, kUsualEmergency)
                                    : ratePer(press.stopTime, press.largest, kUsualFall);
    if (m_press.motion == Motion::Inching) {
        // It stands when it has gone so far, with the way in which it stops.
        m_toInch -= now * kSeconds;
        if (m_toInch <= now * now / (2 * fall)) m_press.motion = Motion::Standing;
    }
    const double wanted = m_press.motion == Motion::Standing ? 0 : m_press.asked.si();
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

bool World::hasOldTail() const
{
    return std::any_of(m_marks.begin(), m_marks.end(), [&](const Mark& mark) {
        return mark.what == Mark::What::OldTail && spotOf(paidOut() - mark.in);
    });
}

bool World::hasTail() const
{
    return std::any_of(m_marks.begin(), m_marks.end(),
                       [&](const Mark& mark) { return mark.standsOver() && spotOf(paidOut() - mark.in); });
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

/// What lies under an open dryer: web that stands, or what somebody left there. Lamps light with the reset, take some
/// minutes to come to their power, and go out with a stop (common practice, no source).
void World::warm()
{
    constexpr double kHot = 380, kSlow = 12, kLamp = 240, kOut = 20;
    const bool lights = m_press.mains && m_press.reset;
    m_lamps += ((lights ? 1 : 0) - m_lamps) * kSeconds / (lights ? kLamp : kOut);
    for (std::size_t i = 0; i < m_line.places.size(); ++i) {
        if (!m_line.places[i].station) continue;
        const std::string station = std::to_string(*m_line.places[i].station);
        const bool lies = m_press.rags.count(station) != 0 || (m_speed == Speed{} && !isParted(m_web, i + 1));
        const bool lit = m_press.lampsOpen.count(station) != 0;
        m_heat[i] += ((lit && lies ? kHot * m_lamps : 0) - m_heat[i]) * kSeconds / kSlow;
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
