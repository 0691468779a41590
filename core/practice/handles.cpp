// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/practice/handles.h"

#include <algorithm>

namespace taut::practice {

namespace {

using Sort = Handle::Sort;

/// Where a device of the profile is reached.
At atOf(const std::string& place)
{
    if (place == "unwind" || place == "lift") return At::Unwind;
    if (place == "splice_table") return At::Table;
    if (place == "stations") return At::Stations;
    if (place == "guide") return At::Guide;
    if (place == "rewind") return At::Rewind;
    return At::Panel;
}

class Builder {
public:
    explicit Builder(const inputs::Press& press) : m_press(press) {}

    std::vector<Handle> build()
    {
        power();
        devices();
        moving();
        unwind();
        table();
        guides();
        stations();
        rewinds();
        zones();
        std::stable_sort(m_all.begin(), m_all.end(), [](const Handle& a, const Handle& b) {
            const auto order = [](At at) { return std::find(std::begin(kEverywhere), std::end(kEverywhere), at); };
            return order(a.at) < order(b.at);
        });
        return std::move(m_all);
    }

private:
    struct Words {
        Text does, undoes = {}, stands = {}, rests = {};
    };
    /// Under the shop's own word for its role, where it has one.
    Handle& add(At at, Sort sort, const std::string& what, const std::string& item, Text called, Words words)
    {
        Handle one;
        one.at = at;
        one.sort = sort;
        one.deed.what = what;
        one.deed.item = item;
        one.name = std::move(called);
        if (const std::string* label = m_press.label(what); label != nullptr && !label->empty()) {
            one.what = std::move(one.name);
            one.name = Text("%1", {*label});
        }
        one.does = std::move(words.does);
        one.undoes = std::move(words.undoes);
        one.stands = std::move(words.stands);
        one.rests = std::move(words.rests);
        one.kinds = kindsOf(what, m_press);
        return m_all.emplace_back(std::move(one));
    }

    void either(At at, const std::string& what, Text called, Words words, const char* first, const char* second)
    {
        Handle& one = add(at, Sort::Either, what, {}, std::move(called), std::move(words));
        one.ways[0] = first;
        one.ways[1] = second;
    }

    void power()
    {
        add(At::Panel, Sort::Switch, "main_disconnect", {}, "Main disconnect",
            {"Switch on", "Switch off", "is on", "is off"});
        if (m_press.hasAir)
            add(At::Panel, Sort::Switch, "air_supply", {}, "Compressed air", {"Open", "Shut", "is open", "is shut"});
    }
    /// A stop that is drawn is a stop of the drawing: its words say so.
    void devices()
    {
        for (const inputs::Device& stop : m_press.emergencyStops)
            add(atOf(stop.place), Sort::Switch, "emergency_stop", stop.id, {"Pretend emergency stop: %1", {stop.name}},
                {"Pretend to press it", "Release", "is latched", "is released"});
        add(At::Panel, Sort::Push, "emergency_reset", {}, "Reset after a stop",
            {"Reset", {}, "was reset", "is not reset"});
        add(At::Panel, Sort::Switch, "hold_stop", {}, "A stop that you hold",
            {"Hold it", "Give it up", "is held", "is not held"});
        for (const inputs::Device& guard : m_press.guards)
            add(atOf(guard.place), Sort::Switch, "guard", guard.id, {"%1", {guard.name}},
                {"Close", "Open", "is closed", "is open"});
    }
    void moving()
    {
        if (m_press.inch.value)
            add(At::Panel, Sort::Motion, "inch", {}, "Move a short way and stand", {"Move a little"});
        add(At::Panel, Sort::Motion, "hold_to_run", {}, "Move slowly, as long as it is held",
            {"Move slowly", "Let go", "is held", "is let go"});
        add(At::Panel, Sort::Motion, "run", {}, "Run", {"Run", {}, "was started", "was not started"});
        add(At::Panel, Sort::Push, "stop", {}, "Stop from running", {"Pretend to stop"});
    }
    void unwind()
    {
        if (!m_press.unwind) return;
        const bool lift = m_press.unwind->lift.has_value();
        add(At::Unwind, Sort::Push, "roll_to_lift", {}, "The new roll",
            {lift ? Text("Roll it onto the lift") : Text("Bring it to the shaft"),
             {},
             "is at the press",
             "is on the floor"});
        if (lift) {
            if (m_press.hasAir) add(At::Unwind, Sort::Value, "lift_pressure", {}, "Air of the roll lift", {"Set"});
            add(At::Unwind, Sort::Switch, "lift_up", {}, "The lift, upwards",
                {"Raise the roll", "Stop raising", "is rising", "stands still"});
        }
        add(At::Unwind, Sort::Push, "fit_adapter", {}, "Adapters between core and shaft",
            {"Fit them", {}, "are fitted", "are not fitted"});
        either(At::Unwind, "hang_roll", "The roll on its shaft", {"Over the top", "Under", "is hung", "is not hung"},
               "over", "under");
        if (m_press.hasAir && m_press.unwind->mandrel.kind == "air_shaft")
            add(At::Unwind, Sort::Switch, "mandrel_air", m_press.unwind->roller, "Air of the unwind's shaft",
                {"Inflate", "Let the air out", "is inflated", "has no air"});
        if (lift) add(At::Unwind, Sort::Push, "lift_down", {}, "The lift, downwards", {"Lower it clear"});
        add(At::Unwind, Sort::Push, "strip_wraps", {}, "The outer wraps",
            {"Take them off", {}, "are off", "are on the roll"});
        add(At::Unwind, Sort::Push, "lead_web", {}, "The new web",
            {"Lead it to the table", {}, "lies on the table", "is on the roll"});
    }
    void table()
    {
        add(At::Table, Sort::Push, "trim_old_joint", {}, "The last shift's joint, on the web that is in",
            {"Trim it", {}, "is clean", "has tape or web that stands over"});
        add(At::Table, Sort::Switch, "clamp_web", {}, "Clamps of the splice table",
            {"Clamp both webs", "Open them", "are closed", "are open"});
        either(At::Table, "cut_ends", "Both ends",
               {"Cut along a rule", "Cut by eye", "are cut", "are not cut together"}, "rule", "eye");
        either(At::Table, "tape_joint", "The joint",
               {"Tape it along an edge", "Tape it by eye", "is taped", "is not taped"}, "rule", "eye");
        add(At::Table, Sort::Push, "trim_tails", {}, "Tape and web that stand over",
            {"Trim them", {}, "are trimmed", "are not trimmed"});
    }
    void guides()
    {
        const bool several = m_press.guides.size() > 1;
        for (const inputs::Guide& guide : m_press.guides) {
            if (guide.kind == "rewind_shift") continue;
            const auto called = [&](Text one) {
                return several ? Text("%1: %2", {guide.id, std::vector<Text>{std::move(one)}}) : one;
            };
            add(At::Guide, Sort::Push, "guide_middle", guide.id, called("The web guide, to its middle"),
                {"To the middle"});
            add(At::Guide, Sort::Push, "clean_sensor", guide.id, called("The sensor's window"),
                {"Wipe it", {}, "was wiped", "was not wiped"});
            add(At::Guide, Sort::Value, "guide_sensor", guide.id, called("Sensor of the web guide"),
                {"Place and calibrate", {}, "is calibrated", "is not calibrated"});
            add(At::Guide, Sort::Switch, "guide_automatic", guide.id, called("The web guide, by itself"),
                {"Switch on", "Switch off", "is on", "is off"});
        }
    }
    void stations()
    {
        for (const inputs::Roller& roller : m_press.rollers) {
            if (roller.kind != "nip" || !roller.path.empty()) continue;
            // A nip is closed where its guard is.
            At at = At::Stations;
            for (const inputs::Device& guard : m_press.guards)
                if (guard.by == roller.id) at = atOf(guard.place);
            add(at, Sort::Switch, roller.id + "_nip", {}, {"Nip on %1", {roller.id}},
                {"Close", "Open", "is closed", "is open"});
        }
        for (const inputs::Station& station : m_press.stations) {
            const std::string number = std::to_string(station.number);
            if (station.registerAlong)
                adjuster("register_along", number, {"Register along the web: station %1", {number}});
            if (station.registerAcross)
                adjuster("register_across", number, {"Register across the web: station %1", {number}});
            if (station.dryer.empty() || station.dryer == "none") continue;
            const Text dryer("Dryer of station %1", {number});
            add(At::Stations, Sort::Switch, "lamp_park", number, dryer,
                {"Park it", "Open it", "is parked", "is open over the web"});
            if (Handle& last = m_all.back(); !last.what.empty())
                last.name = Text("%1: %2", {*m_press.label("lamp_park"), number});
            add(At::Stations, Sort::Switch, "lay_rag", number, {"A rag, on the dryer of station %1", {number}},
                {"Lay it there", "Take it away", "lies there", "is not there"});
        }
    }
    /// Of several that bear one label each says its station.
    void adjuster(const char* what, const std::string& number, Text called)
    {
        Handle& one = add(At::Stations, Sort::Value, what, number, std::move(called), {"Set"});
        if (!one.what.empty()) one.name = Text("%1: %2", {*m_press.label(what), number});
    }
    void rewinds()
    {
        for (const inputs::Rewind& rewind : m_press.rewinds) {
            if (!m_press.hasAir) continue;
            add(At::Rewind, Sort::Switch, "mandrel_air", rewind.id, {"Air of the shaft: %1", {rewind.id}},
                {"Inflate", "Let the air out", "is inflated", "has no air"});
        }
        add(At::Rewind, Sort::Push, "tape_core", {}, "The web, onto the rewind's core",
            {"Tape it and wrap it", {}, "is on the core", "is not on the core"});
    }
    void zones()
    {
        for (std::size_t i = 0; i < m_press.zones.size(); ++i) {
            const inputs::Zone& zone = m_press.zones[i];
            const bool draw = zone.control == inputs::Control::Draw;
            const bool first = m_press.unwind && zone.from == m_press.unwind->roller;
            const bool last = std::any_of(m_press.rewinds.begin(), m_press.rewinds.end(),
                                          [&](const inputs::Rewind& one) { return one.roller == zone.to; });
            const At at = draw ? At::Panel : first ? At::Unwind : last ? At::Rewind : At::Panel;
            add(at, Sort::Value, zone.id + "_setting", {}, {"Tension setting: %1", {zone.name}}, {"Set"});
            if (zone.needsDiameter)
                add(at, Sort::Value, zone.id + "_diameter", {}, {"Diameter that the drive works with: %1", {zone.name}},
                    {"Set"});
            if (zone.control == inputs::Control::Dancer)
                add(at, Sort::Switch, "dancer_pin", zone.id, {"Lock pin of the dancer: %1", {zone.name}},
                    {"Put it in", "Take it out", "is in", "is out"});
            if (first && zone.control == inputs::Control::OpenLoop && zone.actuator == inputs::Actuator::Pneumatic)
                add(at, Sort::Push, "engage_calipers", zone.id, {"Calipers of the brake: %1", {zone.name}},
                    {"Engage all of them", {}, "are engaged", "were not looked at"});
            if (zone.control == inputs::Control::LoadCell)
                add(at, Sort::Push, "zero_cell", zone.id, {"Load cells at nought, web slack: %1", {zone.name}},
                    {"Set to nought", {}, "were set", "were not set"});
        }
    }

    const inputs::Press& m_press;
    std::vector<Handle> m_all;
};

}  // namespace

std::vector<Kind> kindsOf(std::string_view what, const inputs::Press& press)
{
    if (what == "lift_pressure") return {Kind::Pressure};
    if (what == "run") return {Kind::Speed};
    if (what == "hang_roll" || what == "guide_sensor" || what == "register_along" || what == "register_across")
        return {Kind::Length};
    for (const inputs::Zone& zone : press.zones) {
        if (what == zone.id + "_diameter") return {Kind::Length};
        if (what != zone.id + "_setting") continue;
        if (zone.control == inputs::Control::Draw) return {Kind::Share};
        if (zone.setting.least) return {zone.setting.least->kind()};
        return {Kind::Pressure, Kind::Share, Kind::Current, Kind::Force, Kind::Mass};
    }
    return {};
}

std::vector<Handle> handlesOf(const inputs::Press& press) { return Builder(press).build(); }

std::optional<bool> stands(const World& world, const Handle& handle)
{
    const PressState& p = world.press();
    const std::string& what = handle.deed.what;
    const std::string& item = handle.deed.item;
    const auto has = [&](const std::set<std::string>& all) { return all.count(item) != 0; };
    const std::pair<const char*, bool> all[] = {
        {"main_disconnect", p.mains},
        {"air_supply", p.air},
        {"emergency_stop", has(p.stops)},
        {"emergency_reset", p.reset},
        {"hold_stop", p.held},
        {"guard", !has(p.open)},
        {"hold_to_run", p.motion == Motion::HeldToRun},
        {"run", p.motion == Motion::Running},
        {"roll_to_lift", p.roll != RollAt::Floor},
        {"lift_up", world.lifting()},
        {"hang_roll", p.roll == RollAt::Shaft},
        {"strip_wraps", p.stripped},
        {"lead_web", p.joint.led},
        {"clamp_web", p.tableClamps},
        {"cut_ends", p.joint.cut},
        {"tape_joint", p.joint.taped},
        {"trim_tails", p.joint.trimmed},
        {"trim_old_joint", !world.hasOldTail()},
        {"lamp_park", p.lampsOpen.count(item) == 0},
        {"lay_rag", has(p.rags)},
        {"tape_core", p.coreHeld},
        {"fit_adapter", p.adapted},
        {"dancer_pin", has(p.pinned)},
        {"engage_calipers", has(p.engaged)},
        {"clean_sensor", has(p.cleaned)},
        {"zero_cell", has(p.zeroed)},
    };
    for (const auto& [name, on] : all)
        if (what == name) return on;
    if (what == "mandrel_air") return handle.at == At::Rewind ? p.rewindAir : p.shaftAir;
    for (std::size_t g = 0; g < world.guides().size(); ++g) {
        if (world.guides()[g].id != item) continue;
        if (what == "guide_automatic") return world.guideStates()[g].automatic;
        if (what == "guide_sensor") return world.guideStates()[g].calibrated;
    }
    for (const LinePlace& place : world.line().places)
        if (place.nip && what == place.id + "_nip") return p.nips.count(place.id) != 0;
    return std::nullopt;
}

std::optional<Quantity> setTo(const World& world, const Handle& handle)
{
    const std::string& what = handle.deed.what;
    const PressState& p = world.press();
    if (what == "lift_pressure")
        return p.liftAir > Pressure{} ? std::optional(Quantity(p.liftAir, Kind::Pressure)) : std::nullopt;
    for (const inputs::Zone& zone : world.truly().press->zones)
        if (what == zone.id + "_setting") return world.shownSetting(zone);
    for (const auto& [zone, diameter] : p.diameters)
        if (what == zone + "_diameter") return Quantity(diameter, Kind::Length);
    for (const inputs::Station& station : world.truly().press->stations) {
        const auto left = p.registers.find(std::to_string(station.number));
        if (left == p.registers.end() || handle.deed.item != left->first) continue;
        // In the unit of its scale.
        if (what == "register_along" && station.registerAlong)
            return Quantity(left->second.along, Kind::Length, station.registerAlong->quantity().unit());
        if (what == "register_across" && station.registerAcross)
            return Quantity(left->second.across, Kind::Length, station.registerAcross->quantity().unit());
    }
    return std::nullopt;
}

}  // namespace taut::practice
