// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/targets/setting.h"
#include "core/targets/tension_window.h"

// What becomes of a zone's tension: where strength caps it, what the setting does when it is left alone, what the
// finished roll wants, and what one step of a draw moves.
namespace taut::targets {

namespace {

void stateCeiling(Book& book, const inputs::Zone& zone, const std::string& name)
{
    if (endOf(book.press(), zone) == ZoneEnd::Waste) return;
    book.formula("tension." + zone.id + ".ceiling", Text("%1: tension per width that strength allows", {name}), "T4",
                 {{"c", book.row("strength_share")}, {"S", weakestStrength(book)}},
                 book.press().units == UnitSystem::Us ? "lbf/in" : "N/mm")
        .advice(
            "A ceiling only: it never makes a window and never raises one. A rule of thumb on the weakest layer that "
            "may carry alone.");
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
    book.formula(id + "change_diameter",
                 unwinding ? Text("%1: diameter at which the setting must have been lowered", {name})
                           : Text("%1: diameter at which the setting must have been raised", {name}),
                 "B5.diameter", {{"T", unwinding ? terms.high : terms.low}, {"k", k}, {"p0", zero}, {"p", setting}},
                 us ? "in" : "mm")
        .advice("Here the tension leaves its window if nobody touches the setting; see the schedule.");
}

/// Tension on the finished roll with this zone's taper.
void stateFinished(Book& book, const inputs::Zone& zone, const SettingTerms& terms, const std::string& name)
{
    if (endOf(book.press(), zone) != ZoneEnd::Rewind || zone.control == inputs::Control::Draw) return;
    const bool us = book.press().units == UnitSystem::Us;
    const std::string id = "tension." + zone.id + ".";
    const Term full = term(book.job().rewindDiameter, "job.rewind_diameter");
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

/// D3: what the smallest step of a draw does to the tension of this web.
void stateDrawStep(Book& book, const inputs::Zone& zone, const std::string& name)
{
    if (zone.control != inputs::Control::Draw) return;
    const Term step = combine(
        {term(zone.setting.uncertainty, zoneKey(zone, "setting.uncertainty")), book.speed()},
        zoneKey(zone, "setting.uncertainty") + " of job.speed",
        [](const std::vector<double>& v) { return v[0] * v[1]; }, Kind::Speed);
    book.formula("tension." + zone.id + ".draw_step",
                 Text("%1: tension per width that one step of the draw moves", {name}), "D3",
                 {{"E", book.modulus()}, {"t", book.caliper()}, {"v", book.speed()}, {"dv", step}},
                 book.press().units == UnitSystem::Us ? "lbf/in" : "N/mm")
        .advice("Hold it against the window of tension per width: where it is as wide, draw does not set this web.");
}

}  // namespace

void stateCourse(Book& book, const inputs::Zone& zone, const SettingTerms& terms)
{
    const std::string name = zone.name.empty() ? zone.id : zone.name;
    stateCeiling(book, zone, name);
    stateLeftAlone(book, zone, terms, name);
    stateFinished(book, zone, terms, name);
    stateClutchHeat(book, zone, terms, name);
    stateDrawStep(book, zone, name);
    if (zone.control == inputs::Control::Draw || endOf(book.press(), zone) == ZoneEnd::Waste) return;
    const Limit swing = book.limit("tension_swing"), ramp = book.limit("tension_ramp");
    book.value("tension." + zone.id + ".swing", Text("%1: swing of the shown tension, share of its mean", {name}),
               "stated", known(Quantity(0, Kind::Share, "%"), "policy:tension_swing"), "policy")
        .window({}, swing.value.in("%"), swing.rule, swing.source)
        .advice("At steady speed. More says: roll out of round, sticking brake, hunting loop.");
    book.value("tension." + zone.id + ".ramp_swing",
               Text("%1: swing of the shown tension while the speed changes, share of its mean", {name}), "stated",
               known(Quantity(0, Kind::Share, "%"), "policy:tension_ramp"), "policy")
        .window({}, ramp.value.in("%"), ramp.rule, ramp.source)
        .advice("Starting and stopping pull more than running; more than this parts a splice or leaves the web slack.");
}

}  // namespace taut::targets
