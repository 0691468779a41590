// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/targets/reach.h"

#include <algorithm>
#include <cmath>

#include "core/inputs/spoken.h"
#include "core/targets/tension_window.h"
#include "core/units/format.h"

namespace taut::targets {

namespace {

/// Where a control ends too early or begins too late: for what is to be set now, or somewhere on the roll's way.
struct Trouble {
    bool tooHigh = false, onWay = false;
    bool windowHelps = false;  ///< the other end of the tension window would keep it in its range
    /// Diameter at which that end of the control gives a tension inside the window: of the roll, or of its core.
    std::optional<double> fits{};
};

/// The diameter at which a brake or drive set to the end of its range gives this tension (B5).
std::optional<double> fittingDiameter(const inputs::Zone& zone, const std::optional<Quantity>& end, const Term& tension)
{
    if (!zone.torquePerSetting || !zone.zeroSetting || !end || !tension.known()) return std::nullopt;
    const Term at = evaluated("B5.diameter",
                              {{"T", tension},
                               {"k", known(*zone.torquePerSetting, "")},
                               {"p0", known(*zone.zeroSetting, "")},
                               {"p", known(*end, "")}},
                              "");
    return at.known() ? std::optional(at.value->si()) : std::nullopt;
}

/// Whether a core so large outside can hang on this shaft, as it is or on an adapter.
bool takesCore(const inputs::Mandrel& mandrel, const std::vector<inputs::Adapter>& adapters,
               const inputs::Maybe<Kind::Length>& wall, double outside, bool larger)
{
    const double inside = outside - 2 * (wall ? wall->si() : 0);
    const inputs::Maybe<Kind::Length>& end = larger ? mandrel.gripsMost : mandrel.gripsLeast;
    if (!end || (larger ? inside <= end->si() : inside >= end->si())) return true;
    return larger && std::any_of(adapters.begin(), adapters.end(),
                                 [&](const inputs::Adapter& a) { return a.core.si() >= inside; });
}

/// Another roll or core is offered only where this press takes one of the size that would do.
Text remedyAtUnwind(const Book& book, const Trouble& trouble)
{
    const std::optional<inputs::Unwind>& unwind = book.press().unwind;
    const Magnitude size{trouble.fits.value_or(0), Kind::Length, book.press().units == UnitSystem::Us ? "in" : "mm"};
    const Term core = book.coreOuter();
    if (trouble.tooHigh)
        return trouble.fits && (!core.known() || *trouble.fits > core.value->si())
                   ? Text("Take a roll of at most %1 across, or a narrower web, or engage more of the brake.", {size})
                   : Text("Take a narrower web, or engage more of the brake.");
    if (trouble.onWay)
        return unwind && trouble.fits &&
                       takesCore(unwind->mandrel, unwind->adapters, unwind->coreWall, *trouble.fits, true)
                   ? Text("Take part of the brake out of use, or a roll on a core of at least %1 outside.", {size})
                   : Text("Take part of the brake out of use.");
    return trouble.fits && (!unwind || !unwind->largestDiameter || *trouble.fits <= unwind->largestDiameter->si())
               ? Text("Take part of the brake out of use, or a roll of at least %1 across.", {size})
               : Text("Take part of the brake out of use.");
}

Text remedyAtRewind(const Book& book, const inputs::Zone& zone, const Trouble& trouble, bool byHand)
{
    const inputs::Rewind* rewind = rewindOf(book.press(), zone);
    const bool core = rewind != nullptr && trouble.fits && !trouble.onWay &&
                      takesCore(rewind->mandrel, {}, rewind->coreWall, *trouble.fits, !trouble.tooHigh);
    if (!trouble.onWay && trouble.tooHigh)
        return byHand ? core ? Text("Wind on a smaller core, or engage more of the clutch.")
                             : Text("Engage more of the clutch.")
               : core ? Text("Wind on a smaller core, or have a stronger drive fitted.")
                      : Text("Have a stronger drive fitted.");
    if (!trouble.onWay)
        return byHand ? core ? Text("Wind on a larger core, or take part of the clutch out of use.")
                             : Text("Take part of the clutch out of use.")
               : core ? Text("Wind on a larger core, or have a weaker drive fitted.")
                      : Text("Have a weaker drive fitted.");
    if (trouble.tooHigh)
        return trouble.windowHelps ? Text("Wind a smaller roll, or run lower in the tension window.")
                                   : Text("Wind a smaller roll.");
    return trouble.windowHelps ? Text("Taper less, or run higher in the tension window.") : Text("Taper less.");
}

/// What somebody can do about it at the operator's control, by its kind. Nothing is offered that changes nothing there:
/// what is set now has nothing to do with the roll's last diameter, and a window that lies wholly beyond not with where
/// in it the press runs.
Text remedyFor(const Book& book, const inputs::Zone& zone, const Trouble& trouble)
{
    switch (zone.control) {
    case inputs::Control::OpenLoop:
        return endOf(book.press(), zone) == ZoneEnd::Unwind ? remedyAtUnwind(book, trouble)
                                                            : remedyAtRewind(book, zone, trouble, true);
    case inputs::Control::Dancer:
        return trouble.tooHigh ? Text("Have a larger cylinder or a longer lever fitted to the dancer.")
                               : Text("Have a smaller cylinder or a shorter lever fitted to the dancer.");
    case inputs::Control::LoadCell:
        if (trouble.onWay && !trouble.tooHigh)
            return trouble.windowHelps ? Text("Taper less, or run higher in the tension window.") : Text("Taper less.");
        return trouble.tooHigh ? Text("Have a load cell of a larger range fitted.")
                               : Text("Have a load cell of a smaller range fitted.");
    case inputs::Control::Draw: break;
    }
    return "Set it by eye and by the neighbouring zones.";
}

/// The same for what a loop drives by itself.
Text remedyForActuator(const Book& book, const inputs::Zone& zone, const Trouble& trouble)
{
    if (endOf(book.press(), zone) != ZoneEnd::Unwind) return remedyAtRewind(book, zone, trouble, false);
    if (!trouble.tooHigh && trouble.windowHelps)
        return "Take part of the brake out of use, or run higher in the tension window.";
    return remedyAtUnwind(book, trouble);
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

/// What a loop asks of its brake or drive at the diameter now, over the tension window.
void checkActuatorNow(Book& book, const inputs::Zone& zone, const SettingTerms& terms, const Ramp& ramp,
                      Stated& setting)
{
    const auto atTension = [&](const std::optional<double>& tension) {
        Ramp other = ramp;
        if (tension) other.total = *tension;
        return actuatorAt(other, ramp.start);
    };
    const std::optional<double> now = atTension(terms.middle.value->si());
    const inputs::Setting range = actuatorRange(zone);
    if (!now) return;
    const std::optional<Quantity> end = endBeyond(range, *now);
    if (!end) return;
    const bool tooHigh = range.most && *now > range.most->si();
    const bool never = endBeyond(range, atTension(tooHigh ? ramp.low : ramp.high).value_or(*now)).has_value();
    const Kind kind = zone.zeroSetting->kind();
    const Text text(tooHigh ? "%1: for the middle of the window the loop would have to drive its brake or drive "
                              "to %2; it ends at %3."
                            : "%1: for the middle of the window the loop would have to drive its brake or drive "
                              "to %2; it begins at %3.",
                    {spokenName(zone), Magnitude{*now, kind, end->unit()}, end->magnitude()});
    if (never) {
        const Finding why = refuse("tension." + zone.id + ".out_of_range", "press.zone." + zone.id, text,
                                   remedyForActuator(book, zone,
                                                     {tooHigh, false, false,
                                                      fittingDiameter(zone, tooHigh ? range.most : range.least,
                                                                      tooHigh ? terms.low : terms.high)}));
        setting.cannot(why);
        book.note(why);
        return;
    }
    book.note(Finding{"tension." + zone.id + ".edge_of_range", Severity::Warn, "press.zone." + zone.id, text,
                      "Set it to what is shown: the nearest to the middle of the window that it can hold."});
}

/// A brake that even at the least that can be set pulls more at the core than the window allows: from there on the roll
/// cannot be run. Beyond what the web may bear at all it stops.
bool sayTooMuch(Book& book, const inputs::Zone& zone, const Ramp& ramp, const Quantity& least)
{
    if (!ramp.high || !ramp.zone.torquePerSetting) return false;
    const std::optional<RampPoint> core = pointAt(ramp, ramp.end);
    if (!core || core->tension.si() <= *ramp.high) return false;
    const double from = ramp.end * core->tension.si() / *ramp.high;  // torque left as it is: T goes by 1 / D
    const Term most = evaluated("T1", {{"Tw", ceilingOf(book, zone).value}, {"w", zoneWidth(book, zone)}}, "");
    const bool breaks = most.known() && core->tension.si() > most.value->si();
    const Magnitude at{from, Kind::Length, ramp.lengthUnit};
    book.note(Finding{
        "tension." + zone.id + ".least_too_much", breaks ? Severity::Stop : Severity::Warn, "press.zone." + zone.id,
        Text(
            "%1: below a diameter of %2 even the least that can be set, %3, pulls more than the highest of the window, "
            "%4; %5 at the core of %6.",
            {spokenName(zone), at, least.magnitude(), Magnitude{*ramp.high, Kind::Force, ramp.forceUnit},
             core->tension.magnitude(), Magnitude{ramp.end, Kind::Length, ramp.lengthUnit}}),
        Text("Take the roll off at %1, or take part of the brake out of use and enter its torque.", {at})});
    return true;
}

using FigureOf = std::function<std::optional<double>(const Ramp& ramp, double diameter)>;

/// A figure that is inside its range at the start and not on all of the way.
void checkWay(Book& book, const inputs::Zone& zone, const Ramp& ramp, const inputs::Setting& range,
              const FigureOf& figureOf, Kind kind, bool ofLoop)
{
    const auto figure = [&](double d) { return figureOf(ramp, d); };
    const std::optional<double> first = figure(ramp.start), last = figure(ramp.end);
    if (!first || endBeyond(range, *first)) return;  // that is said of the setting itself
    // Torque goes one way with the diameter, and tension with its taper; torque under a linear taper may turn.
    const bool turns = !ramp.unwinding && ramp.zone.taper == inputs::TaperShape::Linear;
    if (!turns && last && !endBeyond(range, *last)) return;
    const std::vector<Crossing> all = crossings(ramp, range, figure);
    if (all.empty()) return;
    // The one that the roll comes to first.
    const Crossing& where = *std::min_element(all.begin(), all.end(), [&](const Crossing& a, const Crossing& b) {
        return std::abs(a.diameter - ramp.start) < std::abs(b.diameter - ramp.start);
    });
    const Quantity& end = where.below ? *range.least : *range.most;
    const Quantity atLast(last.value_or(*first), kind, end.unit());
    // By less than can be shown it can be left where it ends.
    if (format(atLast, book.press().units) == format(end, book.press().units)) return;
    if (!ofLoop && ramp.byHand && where.below && ramp.unwinding && sayTooMuch(book, zone, ramp, end)) return;
    Trouble trouble{!where.below, true, false, where.diameter};
    if (const std::optional<double>& other = where.below ? ramp.high : ramp.low) {
        Ramp there = ramp;
        there.total = *other;
        const auto otherFigure = [&](double d) { return figureOf(there, d); };
        const std::optional<double> begins = otherFigure(there.start);
        trouble.windowHelps = begins && !endBeyond(range, *begins) && crossings(there, range, otherFigure).empty();
    }
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
    book.note(Finding{"tension." + zone.id + ".leaves_range", Severity::Warn, "press.zone." + zone.id,
                      Text(kTexts[ramp.unwinding ? 1 : 0][ofLoop ? 1 : 0][where.below ? 1 : 0],
                           {spokenName(zone), Magnitude{where.diameter, Kind::Length, ramp.lengthUnit}, end.magnitude(),
                            atLast.magnitude(), Magnitude{ramp.end, Kind::Length, ramp.lengthUnit}}),
                      ofLoop ? remedyForActuator(book, zone, trouble) : remedyFor(book, zone, trouble)});
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

void bound(Book& book, const inputs::Zone& zone, const SettingTerms& terms, const SettingRelation& relation,
           Stated& setting)
{
    bound(book, zone, setting,
          {relation.at(terms.middle), relation.at(terms.low), relation.at(terms.high), terms.rules, terms.low,
           terms.high});
}

void bound(Book& book, const inputs::Zone& zone, Stated& setting, const SettingBand& band)
{
    const Ready* r = setting.ready();
    if (r == nullptr) return;
    const Quantity value = std::get<Quantity>(r->value);
    const inputs::Setting range = settingRange(zone, value.kind());
    setting.instrument(zone.setting.uncertainty).most(range.most);
    std::optional<Quantity> lowest = band.low.value, highest = band.high.value;
    Rules rules = band.rules;
    const bool tooHigh = range.most && lowest && lowest->si() > range.most->si();
    const bool tooLow = range.least && highest && highest->si() < range.least->si();
    if (tooHigh || tooLow) {
        const Quantity& end = tooHigh ? *range.most : *range.least;
        const std::optional<double> fits =
            zone.control == inputs::Control::OpenLoop
                ? fittingDiameter(zone, end, tooHigh ? band.lowTension : band.highTension)
                : std::nullopt;
        const Finding why = refuse("tension." + zone.id + ".out_of_range", "press.zone." + zone.id,
                                   Text(tooHigh ? "%1 would have to be set to %2; it ends at %3."
                                                : "%1 would have to be set to %2; it begins at %3.",
                                        {spokenName(zone), value.magnitude(), end.magnitude()}),
                                   remedyFor(book, zone, {tooHigh, false, false, fits}));
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
    if (band.middle.known() && endBeyond(range, band.middle.value->si()) &&
        format(band.middle.value->in(value.unit()), book.press().units) != format(value, book.press().units))
        book.note(Finding{
            "tension." + zone.id + ".edge_of_range", Severity::Warn, "press.zone." + zone.id,
            Text("%1: the middle of the window, %2, is beyond what can be set; %3 is the nearest that can.",
                 {spokenName(zone), Magnitude{band.middle.value->si(), value.kind(), value.unit()}, value.magnitude()}),
            Text("Set it to what is shown, and no further out in the window shown.")});
}

std::optional<Force> heldTension(const Book& book, const inputs::Zone& zone, const SettingTerms& terms)
{
    constexpr double kInside = 1e-12;  // so that arithmetic does not put what was moved to a limit beyond it
    if (!terms.middle.known() || !terms.low.known() || !terms.high.known()) return std::nullopt;
    const double low = terms.low.value->si(), high = terms.high.value->si(), middle = terms.middle.value->si();
    double least = low, most = high;
    const auto relation = relationOf(book, zone, terms.middle, terms.diameter);
    const Term atLow = relation ? relation->at(terms.low) : Term{},
               atHigh = relation ? relation->at(terms.high) : Term{};
    if (atLow.known() && atHigh.known() && atHigh.value->si() > atLow.value->si()) {
        // Every setting grows evenly with the tension (B5, B7, B8).
        const inputs::Setting range = settingRange(zone, atLow.value->kind());
        const double each = (high - low) / (atHigh.value->si() - atLow.value->si());
        if (range.least) least = std::max(least, low + (range.least->si() - atLow.value->si()) * each);
        if (range.most) most = std::min(most, low + (range.most->si() - atLow.value->si()) * each);
    }
    if (zone.control != inputs::Control::OpenLoop && zone.torquePerSetting && zone.zeroSetting &&
        terms.diameter.known()) {
        const inputs::Setting range = actuatorRange(zone);
        const double each = 2 * zone.torquePerSetting->si() / terms.diameter.value->si(), zero = zone.zeroSetting->si();
        if (range.least) least = std::max(least, each * (range.least->si() - zero));
        if (range.most) most = std::min(most, each * (range.most->si() - zero));
    }
    if (least > most || (middle >= least && middle <= most)) return std::nullopt;
    return Force::si(middle < least ? std::min(least * (1 + kInside), most) : std::max(most * (1 - kInside), least));
}

void checkCourse(Book& book, const inputs::Zone& zone, const SettingTerms& terms, Stated& setting,
                 const SharedString& settingUnit)
{
    const std::optional<Ramp> ramp = courseOf(book, zone, terms, settingUnit);
    if (!ramp) return;
    if (ramp->byHand) {
        if (!zone.zeroSetting) return;
        const Kind kind = zone.zeroSetting->kind();
        checkWay(book, zone, *ramp, settingRange(zone, kind), actuatorAt, kind, false);
        return;
    }
    if (zone.zeroSetting) {
        checkActuatorNow(book, zone, terms, *ramp, setting);
        checkWay(book, zone, *ramp, actuatorRange(zone), actuatorAt, zone.zeroSetting->kind(), true);
    }
    // A set point that falls with the taper.
    const Ready* ready = setting.ready();
    if (ready == nullptr || zone.control != inputs::Control::LoadCell || ramp->total <= 0 ||
        zone.taper == inputs::TaperShape::None)
        return;
    const Quantity& now = std::get<Quantity>(ready->value);
    checkWay(
        book, zone, *ramp, settingRange(zone, now.kind()),
        [each = now.si() / ramp->total](const Ramp& of, double d) -> std::optional<double> {
            const std::optional<double> tension = taperedTension(of, d);
            return tension ? std::optional(*tension * each) : std::nullopt;
        },
        now.kind(), false);
}

}  // namespace taut::targets
