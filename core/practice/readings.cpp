// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/practice/readings.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace taut::practice {

namespace {

/// How far two people read the same thing apart, where no instrument of the press says (common practice, no source).
constexpr double kGauge = 2e4, kAcross = 0.003, kAlong = 1e-3, kEdge = 1e-3, kJoint = 5e-4, kArm = 0.17, kPull = 2,
                 kOfPull = 0.1, kOfRoll = 0.005, kOfSetting = 0.02;

std::optional<Shown> pressure(Pressure value, double tolerance = kGauge)
{
    return Shown{Quantity(value, Kind::Pressure, "bar"), {}, tolerance};
}
std::optional<Shown> length(double si, const char* unit, double tolerance)
{
    return Shown{Quantity(si, Kind::Length, unit), {}, tolerance};
}
const LineZone* zoneOf(const World& w, const std::string& id)
{
    for (const LineZone& zone : w.line().zones)
        if (zone.id == id) return &zone;
    return nullptr;
}

std::optional<Shown> supply(const World& w, const std::string&) { return pressure(w.supply()); }
std::optional<Shown> liftPressure(const World& w, const std::string&)
{
    const auto& unwind = w.truly().press->unwind;
    const bool gauged = unwind && unwind->lift && unwind->lift->pressure.uncertainty;
    return pressure(w.press().liftAir, gauged ? unwind->lift->pressure.uncertainty->si() : kGauge);
}
std::optional<Shown> shaftAir(const World& w, const std::string&)
{
    return pressure(w.press().shaftAir ? w.supply() : Pressure{});
}
std::optional<Shown> rewindAir(const World& w, const std::string&)
{
    return pressure(w.press().rewindAir ? w.supply() : Pressure{});
}
std::optional<Shown> rollDiameter(const World& w, const std::string&)
{
    const double across = w.truly().roll->outerDiameter->si();
    return length(across, "mm", std::max(kAcross, kOfRoll * across));
}
std::optional<Shown> rollWidth(const World& w, const std::string&)
{
    return length(w.line().web.width.si(), "mm", kEdge);
}
std::optional<Shown> stripped(const World& w, const std::string&)
{
    if (w.press().roll != RollAt::Shaft) return std::nullopt;
    auto shown = length(2 * unwindRadius(w.line().web, w.web()).si(), "mm", kAcross);
    if (!w.press().stripped) shown->missing = "No outer wraps were taken off the roll.";
    return shown;
}

/// To the drive side of the centreline, as it is measured from the frame that this press's people measure from.
std::optional<Shown> fromFrame(const World& w, double toDriveSide)
{
    const inputs::Press& press = *w.truly().press;
    if (!press.centreline || !press.measureFrom) return std::nullopt;
    const double sign = *press.measureFrom == inputs::Side::Operator ? 1 : -1;
    return length(press.centreline->si() + sign * toDriveSide, "mm", kAlong);
}
std::optional<Shown> centre(const World& w, const std::string&)
{
    if (w.press().roll != RollAt::Shaft) return std::nullopt;
    return fromFrame(w, w.press().offCentre.si());
}

const GuideState* guideOf(const World& w, const std::string& id)
{
    for (std::size_t g = 0; g < w.guides().size(); ++g)
        if (w.guides()[g].id == id) return &w.guideStates()[g];
    return nullptr;
}
std::optional<Shown> guideRest(const World& w, const std::string& guide)
{
    const GuideState* state = guideOf(w, guide);
    if (state == nullptr) return std::nullopt;
    auto shown = length(std::abs(state->moved), "mm", kAlong);
    shown->sized = true;  // which way is plus differs between presses
    return shown;
}
std::optional<Shown> sensor(const World& w, const std::string& guide, double edge)
{
    const GuideState* state = guideOf(w, guide);
    return state == nullptr ? std::nullopt : fromFrame(w, edge * w.line().web.width.si() / 2 + state->sensor.si());
}
std::optional<Shown> operatorSensor(const World& w, const std::string& guide) { return sensor(w, guide, -1); }
std::optional<Shown> driveSensor(const World& w, const std::string& guide) { return sensor(w, guide, 1); }

std::optional<Shown> setting(const World& w, const std::string& zone)
{
    const inputs::Zone* said = w.truly().press->zone(zone);
    if (said == nullptr || zoneOf(w, zone) == nullptr) return std::nullopt;
    const auto set = w.press().settings.find(zone);
    if (set == w.press().settings.end()) return Shown{{}, {"The tension of %1 was not set at all.", {said->name}}, 0};
    const double instrument = said->setting.uncertainty ? said->setting.uncertainty->si() : 0;
    return Shown{set->second, {}, std::max(instrument, kOfSetting * std::abs(set->second.si()))};
}
std::optional<Shown> total(const World& w, const std::string& id)
{
    const LineZone* zone = zoneOf(w, id);
    if (zone == nullptr) return std::nullopt;
    const double pull = w.shownPull(*zone).si();
    return Shown{Quantity(pull, Kind::Force, "N"), {}, std::max(kPull, kOfPull * std::abs(pull))};
}

/// With the web slack its load cell shows what its zero is off; nobody reads a zero under tension.
std::optional<Shown> zero(const World& w, const std::string& id)
{
    const LineZone* zone = zoneOf(w, id);
    if (zone == nullptr || w.truly().press->zone(id)->control != inputs::Control::LoadCell) return std::nullopt;
    const double pull = w.shownPull(*zone).si();
    return Shown{Quantity(pull, Kind::Force, "N"), {}, std::max(kPull, kOfPull * std::abs(pull))};
}
std::optional<Shown> told(const World& w, const std::string& id)
{
    const inputs::Zone* zone = w.truly().press->zone(id);
    if (zone == nullptr || !zone->needsDiameter || zoneOf(w, id) == nullptr) return std::nullopt;
    return length(w.toldDiameter(*zone).si(), "mm", kAlong);
}

/// What hands made of the joint is measured on the table, and where it went by.
std::optional<Shown> madeOf(bool made, Text missing, Length value)
{
    if (!made) return Shown{{}, std::move(missing), 0};
    auto shown = length(std::abs(value.si()), "mm", kJoint);
    shown->sized = true;
    return shown;
}
std::optional<Shown> square(const World& w, const std::string&)
{
    return madeOf(w.press().joint.cut, "Both ends are not cut together.", w.press().joint.square);
}
std::optional<Shown> gap(const World& w, const std::string&)
{
    return madeOf(w.press().joint.taped, "The new web is not joined to the old one.", w.press().joint.gap);
}
std::optional<Shown> step(const World& w, const std::string&)
{
    return madeOf(w.press().joint.taped, "The new web is not joined to the old one.", w.press().joint.step);
}

/// Register adjusters: how far from the mid mark, and what is left to the nearer end.
std::optional<Shown> adjuster(const World& w, const std::string& number, bool along, bool left)
{
    const auto found = w.press().registers.find(number);
    if (found == w.press().registers.end()) return std::nullopt;
    const double off = std::abs(along ? found->second.along.si() : found->second.across.si());
    for (const inputs::Station& station : w.truly().press->stations) {
        if (std::to_string(station.number) != number) continue;
        const auto& way = along ? station.registerAlong : station.registerAcross;
        if (!way) return std::nullopt;
        auto shown = length(left ? way->si() - off : off, "mm", kJoint);
        shown->sized = true;
        return shown;
    }
    return std::nullopt;
}
std::optional<Shown> leftAlong(const World& w, const std::string& station) { return adjuster(w, station, true, true); }
std::optional<Shown> leftAcross(const World& w, const std::string& station)
{
    return adjuster(w, station, false, true);
}
std::optional<Shown> fromMid(const World& w, const std::string& station) { return adjuster(w, station, true, false); }

/// Whoever reads where the arm rests reads it while the web runs.
std::optional<Shown> arm(const World& w, const std::string& zone)
{
    const auto rests = w.armOf(zone);
    if (!rests || w.speed() == Speed{}) return std::nullopt;
    return Shown{Quantity(*rests, Kind::Share, "%"), {}, kArm};
}

/// Whoever says how many wraps are on says that the web is on the core; how many there are nobody counts here.
std::optional<Shown> wraps(const World& w, const std::string&)
{
    if (w.press().coreHeld) return std::nullopt;
    return Shown{{}, "The web is not on the rewind's core.", 0};
}

struct Row {
    std::string_view before, after;  ///< of the instance in the target's id; where there is none, `after` is empty
    std::optional<Shown> (*shown)(const World&, const std::string& instance);
};
constexpr std::array kRows{
    Row{"air.supply", "", supply},
    Row{"lift.pressure", "", liftPressure},
    Row{"mandrel.air", "", shaftAir},
    Row{"mandrel.", ".air", rewindAir},
    Row{"roll.diameter", "", rollDiameter},
    Row{"roll.width", "", rollWidth},
    Row{"strip.diameter", "", stripped},
    Row{"align.centre", "", centre},
    Row{"guide.", ".rest", guideRest},
    Row{"guide.", ".operator_sensor", operatorSensor},
    Row{"guide.", ".drive_sensor", driveSensor},
    Row{"tension.", ".setting", setting},
    Row{"tension.", ".total", total},
    Row{"tension.", ".zero", zero},
    Row{"tension.", ".diameter", told},
    Row{"tension.", ".rest", arm},
    Row{"splice.square", "", square},
    Row{"splice.gap", "", gap},
    Row{"splice.step", "", step},
    Row{"register.", ".along", leftAlong},
    Row{"register.", ".across", leftAcross},
    Row{"register.", ".centre", fromMid},
    Row{"thread.", ".wraps", wraps},
};

}  // namespace

std::optional<Shown> shownAt(const World& world, std::string_view target)
{
    for (const Row& row : kRows) {
        if (row.after.empty()) {
            if (target == row.before) return row.shown(world, {});
            continue;
        }
        if (target.size() <= row.before.size() + row.after.size() || !target.starts_with(row.before) ||
            !target.ends_with(row.after))
            continue;
        target.remove_prefix(row.before.size());
        target.remove_suffix(row.after.size());
        return row.shown(world, std::string(target));
    }
    return std::nullopt;
}

}  // namespace taut::practice
