// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "core/inputs/parts.h"
#include "core/inputs/words.h"
#include "core/units/unit.h"

namespace taut::inputs {

namespace {

std::vector<Kind> actuatorKinds(Actuator actuator)
{
    switch (actuator) {
    case Actuator::Pneumatic: return {Kind::Pressure};
    case Actuator::Particle: return {Kind::Current, Kind::Share};
    case Actuator::Servo: return {Kind::Share};
    case Actuator::None: break;
    }
    return {Kind::Pressure, Kind::Current, Kind::Share};
}

std::vector<Kind> torqueKinds(Actuator actuator)
{
    switch (actuator) {
    case Actuator::Pneumatic: return {Kind::TorquePerPressure};
    case Actuator::Particle: return {Kind::TorquePerCurrent, Kind::TorquePerShare};
    case Actuator::Servo: return {Kind::TorquePerShare};
    case Actuator::None: break;
    }
    return {Kind::TorquePerPressure, Kind::TorquePerCurrent, Kind::TorquePerShare};
}

Kind settingOf(Kind torque)
{
    if (torque == Kind::TorquePerPressure) return Kind::Pressure;
    return torque == Kind::TorquePerCurrent ? Kind::Current : Kind::Share;
}

/// What the operator of such a zone turns, types or hangs.
std::vector<Kind> settingKinds(const Zone& zone)
{
    switch (zone.control) {
    case Control::OpenLoop: return actuatorKinds(zone.actuator);
    case Control::Draw: return {Kind::Share};
    case Control::Dancer:
        if (zone.dancer && zone.dancer->load == "pneumatic") return {Kind::Pressure};
        if (zone.dancer && zone.dancer->load == "weight") return {Kind::Mass};
        if (zone.dancer && zone.dancer->load == "spring") return {Kind::Share};
        return {Kind::Pressure, Kind::Mass, Kind::Share};
    case Control::LoadCell:
        if (!zone.loadCell || zone.loadCell->setIn.empty()) return {Kind::Force, Kind::Share};
        return {zone.loadCell->setIn == "%" ? Kind::Share : Kind::Force};
    }
    return {};
}

Dancer readDancer(KeyReader keys, const Names& names)
{
    Dancer dancer;
    dancer.roller = keys.reference("roller", names.rollers);
    dancer.load = keys.word("load", kLoadWords);
    dancer.cylinders = keys.whole("cylinders", 1, 20);
    dancer.bore = keys.get<Kind::Length>("bore", {0.005, 1});
    if (std::optional<KeyReader> arm = keys.table("arm")) {
        dancer.armCylinder = arm->get<Kind::Length>("cylinder", sane::kSmallLength);
        dancer.armRoller = arm->get<Kind::Length>("roller", sane::kSmallLength);
        arm->done();
    }
    dancer.wrap = keys.get<Kind::Angle>("wrap", sane::kAngle);
    keys.done();
    return dancer;
}

LoadCell readLoadCell(KeyReader keys, const Names& names)
{
    LoadCell cell;
    cell.roller = keys.reference("roller", names.rollers);
    cell.range = keys.get<Kind::Force>("range", sane::kForce);
    cell.setIn = keys.text("set_in");
    if (!cell.setIn.empty() && cell.setIn != "%" && findUnit(Kind::Force, cell.setIn) == nullptr) {
        keys.complain("set_in", refuse("input.unknown_word", {}, {"\"%1\" is not a unit of force.", {cell.setIn}},
                                       "Write the unit in which the panel takes the tension, such as N or lbf, or %."));
        cell.setIn.clear();
    }
    keys.done();
    return cell;
}

/// The torque of a setting, where it begins, and the range must speak of one thing that is set.
void checkAgreement(KeyReader& keys, Zone& zone, const Setting& range)
{
    if (!zone.torquePerSetting) return;
    const Kind kind = settingOf(zone.torquePerSetting->kind());
    const auto differs = [&](const std::optional<Quantity>& q) { return q && q->kind() != kind; };
    if (!differs(zone.zeroSetting) && !differs(range.least) && !differs(range.most)) return;
    keys.complain("torque_per_setting",
                  refuse("input.settings_differ", {},
                         {"The torque is given per %1, which is not what the zone's setting is given in.",
                          {std::vector<Text>{kindName(kind)}}},
                         "Give torque_per_setting, zero_setting and the range in the same kind of unit."));
    zone.torquePerSetting.reset();
    zone.zeroSetting.reset();
}

/// A brake or clutch whose torque begins at or above the most that can be set never gives any.
void checkBegins(KeyReader& keys, Zone& zone, const Setting& range)
{
    if (!zone.zeroSetting || !range.most || range.most->kind() != zone.zeroSetting->kind() ||
        zone.zeroSetting->si() < range.most->si())
        return;
    keys.complain("zero_setting", refuse("input.torque_never_begins", {},
                                         {"The torque is said to begin at %1, and no more than %2 can be set.",
                                          {zone.zeroSetting->magnitude(), range.most->magnitude()}},
                                         "Enter where the torque begins, and the most that can be set, each by its own "
                                         "figure."));
    zone.zeroSetting.reset();
}

void readTaper(KeyReader keys, Zone& zone)
{
    zone.taper = keys.oneOf<TaperShape>("shape", kTaperWords).value_or(TaperShape::None);
    zone.taperFraction = keys.share("fraction", sane::kShare);
    if (zone.taper == TaperShape::Linear && zone.taperFraction && *zone.taperFraction >= 1) {
        keys.complain("fraction", refuse("input.taper_to_nothing", {},
                                         "A linear taper of 100 % leaves no tension at all on the finished roll.",
                                         "Enter by what share of the tension it falls, less than all of it."));
        zone.taperFraction.reset();
    }
    keys.done();
}

std::optional<Zone> readZone(KeyReader& keys, const Names& names)
{
    Zone zone;
    zone.id = keys.id("id", true);
    zone.name = keys.text("name");
    if (zone.name.empty()) zone.name = zone.id;
    zone.from = keys.reference("from", names.rollers);
    zone.to = keys.reference("to", names.rollers);
    const std::optional<Control> control = keys.oneOf<Control>("control", kControlWords);
    if (!control && !keys.has("control"))
        keys.complain("control",
                      refuse("input.missing_key", {}, "This zone does not say how its tension is controlled.",
                             "Write control = \"open_loop\", \"dancer\", \"load_cell\" or \"draw\"; the zone "
                             "is left out until then."));
    if (!control || zone.id.empty()) {
        keys.ignoreRest();
        return std::nullopt;
    }
    zone.control = *control;
    zone.actuator = keys.oneOf<Actuator>("actuator", kActuatorWords).value_or(Actuator::None);
    if (std::optional<KeyReader> dancer = keys.table("dancer")) zone.dancer = readDancer(std::move(*dancer), names);
    if (std::optional<KeyReader> cell = keys.table("load_cell")) zone.loadCell = readLoadCell(std::move(*cell), names);
    zone.torquePerSetting = keys.quantity("torque_per_setting", torqueKinds(zone.actuator), std::nullopt);
    zone.zeroSetting = keys.quantity("zero_setting", actuatorKinds(zone.actuator), std::nullopt);
    zone.setting = readSetting(keys, "setting", settingKinds(zone));
    zone.actuatorRange = readSetting(keys, "actuator_range", actuatorKinds(zone.actuator));
    zone.overspeed = keys.share("overspeed", {0.001, 3});
    zone.torqueUncertainty = keys.share("torque_uncertainty", {0.001, 1});
    zone.torqueSource = keys.text("torque_source");
    zone.slipPowerMost = keys.get<Kind::Power>("slip_power_most", sane::kPower);
    if (std::optional<KeyReader> taper = keys.table("taper")) readTaper(std::move(*taper), zone);
    zone.needsDiameter = keys.flag("needs_diameter").value_or(false);
    zone.airLoss = keys.word("air_loss", kAirLossWords);
    zone.stopAction = keys.word("stop_action", kAirLossWords);
    zone.carries = keys.word("carries", kCarriesWords);
    const Setting& drives = zone.control == Control::OpenLoop ? zone.setting : zone.actuatorRange;
    checkAgreement(keys, zone, drives);
    checkBegins(keys, zone, drives);
    keys.done();
    return zone;
}

const Rewind* rewindAt(const std::vector<Rewind>& rewinds, const std::string& end)
{
    const auto found = std::find_if(rewinds.begin(), rewinds.end(),
                                    [&](const Rewind& r) { return !end.empty() && (r.roller == end || r.id == end); });
    return found == rewinds.end() ? nullptr : &*found;
}

/// A rewind pulls one web: what is computed of it bears its name once.
bool isRewindTaken(KeyReader& keys, const Zone& zone, const std::vector<Zone>& all, const std::vector<Rewind>& rewinds)
{
    const Rewind* rewind = rewindAt(rewinds, zone.to);
    if (rewind == nullptr) return false;
    const auto other =
        std::find_if(all.begin(), all.end(), [&](const Zone& z) { return rewindAt(rewinds, z.to) == rewind; });
    if (other == all.end()) return false;
    keys.complain("to",
                  refuse("input.rewind_taken", {},
                         {"Zone %1 ends at rewind %2, where zone %3 ends already.", {zone.id, rewind->id, other->id}},
                         "Name the roller where this zone's tension ends; the zone is left out until then."));
    return true;
}

}  // namespace

std::vector<Zone> readZones(KeyReader& top, const Names& names, const std::vector<Rewind>& rewinds)
{
    std::vector<Zone> out;
    for (KeyReader& keys : top.tables("zone")) {
        std::optional<Zone> zone = readZone(keys, names);
        if (!zone || isTaken(keys, zone->id, out) || isRewindTaken(keys, *zone, out, rewinds)) continue;
        out.push_back(std::move(*zone));
    }
    return out;
}

}  // namespace taut::inputs
