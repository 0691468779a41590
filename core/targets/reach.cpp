// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/targets/reach.h"

#include <algorithm>
#include <cmath>

namespace taut::targets {

namespace {

std::string nameOf(const inputs::Zone& zone) { return zone.name.empty() ? zone.id : zone.name; }

/// What somebody can do about a control that ends too early (or begins too late), by its kind.
Text remedyFor(const Book& book, const inputs::Zone& zone, bool tooHigh)
{
    const bool unwind = endOf(book.press(), zone) == ZoneEnd::Unwind;
    switch (zone.control) {
    case inputs::Control::OpenLoop:
        if (unwind)
            return tooHigh ? Text("Take a smaller roll or a narrower web, or engage more of the brake.")
                           : Text("Take part of the brake out of use, or a larger core.");
        return tooHigh ? Text("Wind a smaller roll, or run lower in the tension window.")
                       : Text("Wind on a larger core, or run higher in the tension window.");
    case inputs::Control::Dancer:
        return tooHigh ? Text("Run lower in the tension window, or have a larger cylinder or a longer lever fitted to "
                              "the dancer.")
                       : Text("Run higher in the tension window, or have a smaller cylinder or a shorter lever fitted "
                              "to the dancer.");
    case inputs::Control::LoadCell:
        return tooHigh ? Text("Run lower in the tension window, or have a load cell of a larger range fitted.")
                       : Text("Run higher in the tension window, or have a load cell of a smaller range fitted.");
    case inputs::Control::Draw: break;
    }
    return Text("Set it by eye and by the neighbouring zones.");
}

/// The same for what a loop drives by itself.
Text remedyForActuator(bool unwind, bool tooHigh)
{
    if (unwind)
        return tooHigh ? Text("Take a smaller roll or a narrower web, or engage more of the brake.")
                       : Text("Take part of the brake out of use, or run higher in the tension window.");
    return tooHigh ? Text("Wind a smaller roll, or run lower in the tension window.")
                   : Text("Wind on a larger core, or run higher in the tension window.");
}

void dropOthers(std::optional<Quantity>& end, Kind kind)
{
    if (end && end->kind() != kind) end.reset();
}

/// A share of what the actuator has cannot be more than all of it.
void endAtAll(inputs::Setting& range, Kind kind)
{
    if (kind == Kind::Share && (!range.most || range.most->si() > 1)) range.most = Quantity(1, Kind::Share, "%");
}

inputs::Setting actuatorRange(const inputs::Zone& zone)
{
    inputs::Setting range = zone.actuatorRange;
    const Kind kind = zone.zeroSetting ? zone.zeroSetting->kind() : Kind::Count;
    dropOthers(range.least, kind);
    dropOthers(range.most, kind);
    endAtAll(range, kind);
    return range;
}

std::optional<Quantity> beyond(const inputs::Setting& range, double value)
{
    if (range.most && value > range.most->si()) return range.most;
    if (range.least && value < range.least->si()) return range.least;
    return std::nullopt;
}

/// What a loop asks of its brake or drive at the diameter now, over the tension window.
void checkActuatorNow(Book& book, const inputs::Zone& zone, const Ramp& ramp, Stated& setting)
{
    const std::optional<double> now = actuatorAt(ramp, ramp.start);
    const inputs::Setting range = actuatorRange(zone);
    if (!now) return;
    const std::optional<Quantity> end = beyond(range, *now);
    if (!end) return;
    const auto atTension = [&](const std::optional<double>& tension) {
        Ramp other = ramp;
        if (tension) other.total = *tension;
        return actuatorAt(other, ramp.start).value_or(*now);
    };
    const bool tooHigh = range.most && *now > range.most->si();
    const bool never = beyond(range, atTension(tooHigh ? ramp.low : ramp.high)).has_value();
    const Kind kind = zone.zeroSetting->kind();
    const Finding why{"tension." + zone.id + (never ? ".out_of_range" : ".edge_of_range"),
                      never ? Severity::Stop : Severity::Warn, "press.zone." + zone.id,
                      Text(tooHigh ? "%1: for the middle of the window the loop would have to drive its brake or drive "
                                     "to %2; it ends at %3."
                                   : "%1: for the middle of the window the loop would have to drive its brake or drive "
                                     "to %2; it begins at %3.",
                           {nameOf(zone), Magnitude{*now, kind, end->unit()}, end->magnitude()}),
                      remedyForActuator(ramp.unwinding, tooHigh)};
    if (never) setting.cannot(why);
    book.note(why);
}

/// A figure that is inside its range at the start and not on all of the way.
void checkWay(Book& book, const inputs::Zone& zone, const Ramp& ramp, const inputs::Setting& range,
              const FigureAt& figure, Kind kind, bool ofLoop)
{
    const std::optional<double> first = figure(ramp.start), last = figure(ramp.end);
    if (!first || beyond(range, *first)) return;  // that is said of the setting itself
    // Torque goes one way with the diameter, and tension with its taper; torque under a linear taper may turn.
    const bool turns = !ramp.unwinding && ramp.zone.taper == inputs::TaperShape::Linear;
    if (!turns && last && !beyond(range, *last)) return;
    const std::vector<Crossing> all = crossings(ramp, range, figure);
    if (all.empty()) return;
    // The one that the roll comes to first.
    const Crossing& where = *std::min_element(all.begin(), all.end(), [&](const Crossing& a, const Crossing& b) {
        return std::abs(a.diameter - ramp.start) < std::abs(b.diameter - ramp.start);
    });
    const Quantity& end = where.below ? *range.least : *range.most;
    static constexpr const char* kTexts[2][2][2] = {
        {{"%1: above a diameter of %2 it would have to be set to more than %3, where it ends; %4 at %5.",
          "%1: above a diameter of %2 it would have to be set to less than %3, where it begins; %4 at %5."},
         {"%1: above a diameter of %2 the loop would have to drive its brake or drive beyond %3, where it ends; %4 at "
          "%5.",
          "%1: above a diameter of %2 the loop would have to drive its brake or drive below %3, where it begins; %4 at "
          "%5."}},
        {{"%1: below a diameter of %2 it would have to be set to more than %3, where it ends; %4 at %5.",
          "%1: below a diameter of %2 it would have to be set to less than %3, where it begins; %4 at %5."},
         {"%1: below a diameter of %2 the loop would have to drive its brake or drive beyond %3, where it ends; %4 at "
          "%5.",
          "%1: below a diameter of %2 the loop would have to drive its brake or drive below %3, where it begins; %4 at "
          "%5."}}};
    book.note(Finding{
        "tension." + zone.id + ".leaves_range", Severity::Warn, "press.zone." + zone.id,
        Text(kTexts[ramp.unwinding ? 1 : 0][ofLoop ? 1 : 0][where.below ? 1 : 0],
             {nameOf(zone), Magnitude{where.diameter, Kind::Length, ramp.lengthUnit}, end.magnitude(),
              Magnitude{last.value_or(*first), kind, end.unit()}, Magnitude{ramp.end, Kind::Length, ramp.lengthUnit}}),
        ofLoop ? remedyForActuator(ramp.unwinding, !where.below) : remedyFor(book, zone, !where.below)});
}

}  // namespace

inputs::Setting settingRange(const inputs::Zone& zone, Kind kind)
{
    inputs::Setting range = zone.setting;
    dropOthers(range.least, kind);
    dropOthers(range.most, kind);
    if (zone.control == inputs::Control::Draw) return range;
    endAtAll(range, kind);
    if (zone.control != inputs::Control::LoadCell || kind != Kind::Force || !zone.loadCell || !zone.loadCell->range)
        return range;
    const Quantity shown = zone.loadCell->range->quantity();
    if (!range.most || range.most->si() > shown.si()) range.most = shown;
    return range;
}

void bound(Book& book, const inputs::Zone& zone, Stated& setting, const Term& low, const Term& high, Rules rules)
{
    const Ready* r = setting.ready();
    if (r == nullptr) return;
    const Quantity value = std::get<Quantity>(r->value);
    const inputs::Setting range = settingRange(zone, value.kind());
    setting.instrument(zone.setting.uncertainty).most(range.most);
    std::optional<Quantity> lowest = low.value, highest = high.value;
    const bool tooHigh = range.most && lowest && lowest->si() > range.most->si();
    const bool tooLow = range.least && highest && highest->si() < range.least->si();
    if (tooHigh || tooLow) {
        const Quantity& end = tooHigh ? *range.most : *range.least;
        const Finding why = refuse("tension." + zone.id + ".out_of_range", "press.zone." + zone.id,
                                   Text(tooHigh ? "%1 would have to be set to %2; it ends at %3."
                                                : "%1 would have to be set to %2; it begins at %3.",
                                        {nameOf(zone), value.magnitude(), end.magnitude()}),
                                   remedyFor(book, zone, tooHigh));
        setting.cannot(why);
        book.note(why);
        return;
    }
    Text source("the window of the tension, through the same formula");
    if (range.least && lowest && lowest->si() < range.least->si()) {
        lowest = range.least;
        rules.low = Rule::Press;
        source = Text("the window of the tension, through the same formula, from where this control begins");
    }
    if (range.most && highest && highest->si() > range.most->si()) {
        highest = range.most;
        rules.high = Rule::Press;
        source = Text("the window of the tension, through the same formula, to where this control ends");
    }
    setting.window(lowest, highest, rules, source);
    if (beyond(range, value.si()))
        book.note(Finding{
            "tension." + zone.id + ".edge_of_range", Severity::Warn, "press.zone." + zone.id,
            Text("%1: the middle of the window, %2, is beyond what can be set; part of the window can be reached.",
                 {nameOf(zone), value.magnitude()}),
            Text("Set it inside the window shown.")});
}

void checkCourse(Book& book, const inputs::Zone& zone, const SettingTerms& terms, Stated& setting,
                 const std::string& settingUnit)
{
    const std::optional<Ramp> ramp = courseOf(book, zone, terms, settingUnit);
    if (!ramp) return;
    if (ramp->byHand) {
        if (!zone.zeroSetting) return;
        const Kind kind = zone.zeroSetting->kind();
        checkWay(
            book, zone, *ramp, settingRange(zone, kind), [&](double d) { return actuatorAt(*ramp, d); }, kind, false);
        return;
    }
    if (zone.zeroSetting) {
        checkActuatorNow(book, zone, *ramp, setting);
        checkWay(
            book, zone, *ramp, actuatorRange(zone), [&](double d) { return actuatorAt(*ramp, d); },
            zone.zeroSetting->kind(), true);
    }
    // A set point that falls with the taper.
    const Ready* ready = setting.ready();
    if (ready == nullptr || zone.control != inputs::Control::LoadCell || ramp->total <= 0 ||
        zone.taper == inputs::TaperShape::None)
        return;
    const Quantity& now = std::get<Quantity>(ready->value);
    checkWay(
        book, zone, *ramp, settingRange(zone, now.kind()),
        [&](double d) -> std::optional<double> {
            const std::optional<double> tension = taperedTension(*ramp, d);
            if (!tension) return std::nullopt;
            return now.si() * *tension / ramp->total;
        },
        now.kind(), false);
}

}  // namespace taut::targets
