// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/inputs/spoken.h"
#include "core/targets/aim.h"
#include "core/targets/ramp.h"
#include "core/targets/reach.h"
#include "core/targets/schedule.h"
#include "core/targets/setting.h"
#include "core/targets/tension_window.h"

// What becomes of a zone's tension: where strength caps it, what the setting does when it is left alone, what the
// finished roll wants, and what one step of a draw moves.
namespace taut::targets {

namespace {

void stateCeiling(Book& book, const inputs::Zone& zone, const std::string& name)
{
    if (endOf(book.press(), zone) == ZoneEnd::Waste) return;
    const std::string id = "tension." + zone.id + ".";
    const char* unit = book.press().units == UnitSystem::Us ? "lbf/in" : "N/mm";
    const Ceiling ceiling = ceilingOf(book, zone);
    if (ceiling.byStrain)
        book.value(id + "ceiling", Text("%1: tension per width that strain allows", {name}), "rule", ceiling.value,
                   ceiling.sourceId, ceiling.arguments)
            .symbols("Tw = e E t")
            .advice("A ceiling only: it never raises a window. Print may be stretched no further.");
    else
        book.formula(id + "ceiling", Text("%1: tension per width that strength allows", {name}), "T4",
                     ceiling.arguments, unit)
            .advice("A ceiling only: it never raises a window. A rule of thumb on the weakest layer that may carry "
                    "alone.");
}

/// A brake left alone tightens the web as the roll shrinks; a clutch left alone slackens it as the roll grows.
void stateLeftAlone(Book& book, const inputs::Zone& zone, const SettingTerms& terms, const std::string& name)
{
    const ZoneEnd end = endOf(book.press(), zone);
    if (zone.control != inputs::Control::OpenLoop || end == ZoneEnd::Between) return;
    const bool us = book.press().units == UnitSystem::Us;
    const std::string id = "tension." + zone.id + ".";
    const Term setting = book.target(id + "setting");
    const Term k = term(zone.torquePerSetting, zoneKey(zone, "torque_per_setting"));
    const Term zero = term(zone.zeroSetting, zoneKey(zone, "zero_setting"));
    const bool unwinding = end == ZoneEnd::Unwind;
    const Term last = lastDiameterOf(book, zone);
    book.formula(id + "left_alone",
                 unwinding ? Text("%1: tension at the core if the setting is left alone", {name})
                           : Text("%1: tension on the full roll if the setting is left alone", {name}),
                 "B5.tension", {{"D", last}, {"k", k}, {"p0", zero}, {"p", setting}}, us ? "lbf" : "N")
        .advice(unwinding ? Text("The same air on a smaller roll pulls harder: that is why it is turned down.")
                          : Text("The same torque on a larger roll pulls less: that is why it is raised."));
    const Text changeName = unwinding ? Text("%1: diameter at which the setting must have been lowered", {name})
                                      : Text("%1: diameter at which the setting must have been raised", {name});
    const std::optional<Ramp> ramp = courseOf(book, zone, terms, "");
    const std::optional<Length> leaves = ramp ? leavesAt(*ramp) : std::nullopt;
    Term outside = unwinding ? terms.high : terms.low;
    if (ramp && outside.known() && setting.known() && !leaves) {
        book.lacking(id + "change_diameter", changeName, Shape::Quantity,
                     impossible(Finding{
                         id + "change_diameter", Severity::Note, "press.zone." + zone.id,
                         Text("%1: the setting never has to be changed for this roll: it is done at %2, and until "
                              "then the tension stays inside its window, or as near to its taper as it may swing.",
                              {name, Magnitude{ramp->end, Kind::Length, ramp->lengthUnit}}),
                         "Nothing to do."}),
                     "S32, S33");
        return;
    }
    const std::optional<Quantity> least =
        setting.known() ? settingRange(zone, setting.value->kind()).least : std::nullopt;
    if (unwinding && leaves && least && setting.value->si() <= least->si() * (1 + 1e-9)) {
        const Magnitude at{leaves->si(), Kind::Length, us ? "in" : "mm"};
        book.lacking(id + "change_diameter", changeName, Shape::Quantity,
                     impossible(Finding{id + "change_diameter", Severity::Warn, "press.zone." + zone.id,
                                        Text("%1: the setting stands at %2 already, the least that can be set, and "
                                             "cannot be lowered where the tension leaves its window, at %3.",
                                             {name, least->magnitude(), at}),
                                        Text("Take the roll off at %1.", {at})}),
                     "S32, S33");
        return;
    }
    // Where the taper ends below the window, what it may fall to there instead.
    if (leaves && !unwinding && outside.known())
        if (const auto lowest = lowestTension(*ramp, *leaves); lowest && lowest->si() < outside.value->si()) {
            outside.value = Quantity(lowest->si(), Kind::Force, outside.value->unit());
            outside.from = outside.from + ", under the taper";
        }
    book.formula(id + "change_diameter", changeName, "B5.diameter",
                 {{"T", outside}, {"k", k}, {"p0", zero}, {"p", setting}}, us ? "in" : "mm")
        .advice("Here the tension leaves its window if nobody touches the setting; see the schedule.");
}

/// A taper that takes the finished roll's tension below the window is meant by whoever set it, but not by the window.
void sayTaperLeaves(Book& book, const inputs::Zone& zone, const SettingTerms& terms, const std::string& name)
{
    const Term finished = book.target("tension." + zone.id + ".finished");
    if (!finished.known() || !terms.low.known() || !terms.high.known() || !terms.total.known()) return;
    const Quantity low = terms.low.value->in(finished.value->unit());
    if (finished.value->si() >= low.si() * (1 - 1e-12)) return;
    const bool starting = terms.rules.low == Rule::Table || terms.rules.low == Rule::Policy;
    const double keeps = finished.value->si() / terms.total.value->si(), from = low.si() / keeps;
    const bool startHigher = from <= terms.high.value->si();
    const Magnitude begins = shownLimit(low, book.press().units, true);
    const Text said =
        book.hasSchedule("tension." + zone.id + ".changes")
            ? Text("%1: the taper leaves %2 on the finished roll, less than the %3 at which the window "
                   "of the tension begins. The changes listed let it fall %4 under the taper from where "
                   "that leads out of the window.",
                   {name, finished.value->magnitude(), begins, book.limit("tension_swing").value.magnitude()})
            : Text("%1: the taper leaves %2 on the finished roll, less than the %3 at which the window "
                   "of the tension begins.",
                   {name, finished.value->magnitude(), begins});
    book.note(Finding{"tension." + zone.id + ".taper_leaves", starting ? Severity::Note : Severity::Warn,
                      "press.zone." + zone.id + ".taper", said,
                      startHigher
                          ? Text("Taper less, or begin with %1.", {Magnitude{from, Kind::Force, low.unit()}})
                          : Text("Taper less, or see that the outer wraps do not slide; wherever in the window it "
                                 "begins, this taper ends below it.")});
}

/// Tension on the finished roll with this zone's taper.
void stateFinished(Book& book, const inputs::Zone& zone, const SettingTerms& terms, const std::string& name)
{
    if (endOf(book.press(), zone) != ZoneEnd::Rewind || zone.control == inputs::Control::Draw) return;
    const bool us = book.press().units == UnitSystem::Us;
    const std::string id = "tension." + zone.id + ".";
    const Term full = lastDiameterOf(book, zone);
    const Text finishedName("%1: web tension on the finished roll", {name});
    if (zone.taper == inputs::TaperShape::None) {
        book.value(id + "finished", finishedName, "rule", terms.total, "definition", {{"T", terms.total}});
    } else {
        Arguments arguments{{"T0", terms.total},
                            {"tau", number(zone.taperFraction, zoneKey(zone, "taper.fraction"), Kind::Share)},
                            {"D", full},
                            {"d0", terms.diameter}};
        const bool linear = zone.taper == inputs::TaperShape::Linear;
        if (linear) arguments.emplace_back("Dm", full);
        book.formula(id + "finished", finishedName, linear ? "B6.linear" : "B6.hyperbolic", arguments, us ? "lbf" : "N")
            .advice("Falling tension keeps the inner turns from being crushed and the outer from sliding.");
        sayTaperLeaves(book, zone, terms, name);
    }
}

/// The heat of the slip clutch that winds a roll, product or waste, when it is full: there it slips most.
void stateClutchHeat(Book& book, const inputs::Zone& zone, const SettingTerms& terms, const std::string& name)
{
    const ZoneEnd end = endOf(book.press(), zone);
    if (end != ZoneEnd::Rewind && end != ZoneEnd::Waste) return;
    const bool friction = zone.actuator == inputs::Actuator::Pneumatic || zone.actuator == inputs::Actuator::Particle;
    if (!friction || zone.control != inputs::Control::OpenLoop) return;
    const std::string id = "tension." + zone.id + ".";
    const Term full = lastDiameterOf(book, zone);
    const Term pull = end == ZoneEnd::Rewind ? book.target(id + "finished") : terms.total;
    // The input turns faster than the empty core by what the profile says; full roll slips most.
    const Term overspeed = number(zone.overspeed, zoneKey(zone, "overspeed"), Kind::Share);
    const Term input = combine(
        {evaluated("B2", {{"v", book.speed()}, {"D", terms.diameter}}, ""), overspeed},
        "turns of the empty core at job speed and " + zoneKey(zone, "overspeed"),
        [](const std::vector<double>& v) { return v[0] * (1 + v[1]); }, Kind::Frequency);
    const Term output = evaluated("B2", {{"v", book.speed()}, {"D", full}}, "turns of the finished roll at job speed");
    const Term torque = evaluated("B1", {{"T", pull}, {"D", full}}, "torque on the finished roll");
    Stated heat = book.formula(id + "slip_power", Text("%1: heat in the clutch, finished roll", {name}), "B3.clutch",
                               {{"M", torque}, {"ni", input}, {"no", output}}, "W");
    heat.advice(
        "A slip clutch's heat is its torque times its slip, most at the finished roll; not tension times speed.");
    if (!zone.slipPowerMost) return;
    heat.window({}, zone.slipPowerMost->quantity(), Rule::Press, "what the clutch may turn into heat");
    if (const Ready* r = heat.ready(); r && std::get<Quantity>(r->value).si() > zone.slipPowerMost->si())
        book.note(Finding{id + "too_hot", Severity::Warn, "press.zone." + zone.id,
                          Text("On the finished roll the clutch takes %1, it may take %2.",
                               {std::get<Quantity>(r->value).magnitude(), zone.slipPowerMost->quantity().magnitude()}),
                          Text("Run slower, wind a smaller roll, or lower the drive of the clutch.")});
}

/// The same band that says whether a draw is judged.
void stateDrawStep(Book& book, const inputs::Zone& zone, const std::string& name)
{
    if (zone.control != inputs::Control::Draw) return;
    Arguments arguments;
    (void)drawBand(book, zone, &arguments);
    book.formula("tension." + zone.id + ".draw_step",
                 Text("%1: tension per width that the draw leaves open, by how well it is known", {name}), "D3",
                 arguments, book.press().units == UnitSystem::Us ? "lbf/in" : "N/mm")
        .advice("From one end to the other of what the draw is known to. Where that is wider than the window of "
                "tension per width, draw does not set this web.");
}

}  // namespace

Term drawBand(const Book& book, const inputs::Zone& zone, Arguments* arguments)
{
    const Term step = combine(
        {term(zone.setting.uncertainty, zoneKey(zone, "setting.uncertainty")), book.speed()},
        "twice " + zoneKey(zone, "setting.uncertainty") + " of job.speed",
        [](const std::vector<double>& v) { return 2 * v[0] * v[1]; }, Kind::Speed);
    const Carrier web = carrierOf(book, zone);
    const Arguments all{{"E", web.modulus}, {"t", web.caliper}, {"v", book.speed()}, {"dv", step}};
    if (arguments != nullptr) *arguments = all;
    return evaluated("D3", all, "D3");
}

void stateCourse(Book& book, const inputs::Zone& zone, const SettingTerms& terms)
{
    const std::string name = inputs::spokenName(zone);
    stateCeiling(book, zone, name);
    stateLeftAlone(book, zone, terms, name);
    stateFinished(book, zone, terms, name);
    stateClutchHeat(book, zone, terms, name);
    stateDrawStep(book, zone, name);
    if (zone.control == inputs::Control::Draw || endOf(book.press(), zone) == ZoneEnd::Waste) return;
    const Limit swing = book.limit("tension_swing"), ramp = book.limit("tension_ramp");
    book.value("tension." + zone.id + ".swing", Text("%1: swing of the shown tension, share of its mean", {name}),
               "stated", known(Quantity(0, Kind::Share, "%"), "policy:tension_swing"), "policy")
        .window({}, swing.value.in("%"), swing.rule, swing.source())
        .advice("At steady speed. More says: roll out of round, sticking brake, hunting loop.");
    book.value("tension." + zone.id + ".ramp_swing",
               Text("%1: swing of the shown tension while the speed changes, share of its mean", {name}), "stated",
               known(Quantity(0, Kind::Share, "%"), "policy:tension_ramp"), "policy")
        .window({}, ramp.value.in("%"), ramp.rule, ramp.source())
        .advice("Starting and stopping pull more than running; more than this parts a splice or leaves the web slack.");
}

}  // namespace taut::targets
