// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/inputs/spoken.h"
#include "core/targets/book.h"
#include "core/targets/reach.h"
#include "core/targets/setting.h"
#include "core/targets/tension_table.h"
#include "core/targets/tension_window.h"

namespace taut::targets {

ZoneEnd endOf(const inputs::Press& press, const inputs::Zone& zone)
{
    const inputs::Roller* to = press.roller(zone.to);
    const inputs::Roller* from = press.roller(zone.from);
    // A name that is not known was left out: two that are missing are not the same.
    const bool atUnwind = press.unwind && !zone.from.empty() && zone.from == press.unwind->roller;
    if (atUnwind || (press.unwind && from != nullptr && from->kind == "unwind")) return ZoneEnd::Unwind;
    if (const inputs::Rewind* r = rewindOf(press, zone)) return r->waste ? ZoneEnd::Waste : ZoneEnd::Rewind;
    if (to != nullptr && to->kind == "waste_rewind") return ZoneEnd::Waste;
    if (to != nullptr && to->kind == "rewind") return ZoneEnd::Rewind;
    return ZoneEnd::Between;
}

const inputs::Rewind* rewindOf(const inputs::Press& press, const inputs::Zone& zone)
{
    for (const inputs::Rewind& r : press.rewinds)
        if (!zone.to.empty() && (r.roller == zone.to || r.id == zone.to)) return &r;
    return nullptr;
}

std::string zoneKey(const inputs::Zone& zone, const char* key) { return "press.zone." + zone.id + "." + key; }

namespace {

/// A zone that ends at a rewind which no entry of the profile names: one that does not say where it stands may be it.
Term rewindLack(const inputs::Press& press)
{
    for (const inputs::Rewind& rewind : press.rewinds)
        if (rewind.roller.empty()) return missing("press.rewind." + rewind.id + ".roller");
    return missing("press.rewind");
}

/// The key that would tell which roll a zone without one acts on.
Term endLack(const inputs::Zone& zone) { return missing(zoneKey(zone, zone.to.empty() ? "to" : "from")); }

}  // namespace

Term zoneWidth(const Book& book, const inputs::Zone& zone)
{
    std::vector<const inputs::Rewind*> products;
    for (const inputs::Rewind& rewind : book.press().rewinds)
        if (!rewind.waste) products.push_back(&rewind);
    if (endOf(book.press(), zone) != ZoneEnd::Rewind || products.size() < 2) return book.width();
    // Neighbouring lanes go to different shafts, so that their rolls clear each other: the first lane to the rewind
    // that is listed first, and so round. Where nobody says how many lanes, the rewinds share the web evenly.
    const std::size_t rewinds = products.size();
    const inputs::Rewind* own = rewindOf(book.press(), zone);
    if (own == nullptr) return rewindLack(book.press());
    const std::size_t lanes = book.job().across ? static_cast<std::size_t>(*book.job().across) : rewinds;
    const auto here = static_cast<std::size_t>(std::find(products.begin(), products.end(), own) - products.begin());
    if (std::optional<Finding> none = noLane(book.press(), book.job(), *own)) return impossible(*std::move(none));
    const std::size_t taken = (lanes - here + rewinds - 1) / rewinds;
    const double share = static_cast<double>(taken) / static_cast<double>(lanes);
    Term w = book.width();
    if (!w.known()) return w;
    Term lane = known(Quantity(w.value->si() * share, Kind::Length, w.value->unit()),
                      book.job().across ? "roll.width by the lanes of job.across that this rewind takes"
                                        : "roll.width over the product rewinds");
    for (const Doubt::Part& part : w.doubt) lane.doubt.of(part.source) = part.value * share;
    return lane;
}

Term rollDiameterOf(const Book& book, const inputs::Zone& zone)
{
    switch (endOf(book.press(), zone)) {
    case ZoneEnd::Unwind: return book.runningDiameter();
    case ZoneEnd::Rewind:
    case ZoneEnd::Waste: {
        const inputs::Rewind* r = rewindOf(book.press(), zone);
        if (r == nullptr) return rewindLack(book.press());
        Term core = book.job().rewindCore && !r->waste ? term(book.job().rewindCore, "job.rewind_core")
                    : r->mandrel.gripsLeast
                        ? term(r->mandrel.gripsLeast, "press.rewind." + r->id + ".grips.least")
                        : missing(r->waste ? "press.rewind." + r->id + ".grips" : "job.rewind_core");
        return combine(
            {core, term(r->coreWall, "press.rewind." + r->id + ".core_wall")},
            core.from + " + 2 press.rewind." + r->id + ".core_wall",
            [](const std::vector<double>& v) { return v[0] + 2 * v[1]; }, Kind::Length);
    }
    case ZoneEnd::Between: break;
    }
    return endLack(zone);
}

namespace {

/// What the customer takes, but no more than the rewind winds: larger ones are taken off earlier.
Term finishedDiameter(const Book& book, const inputs::Zone& zone)
{
    Term wanted = term(book.job().rewindDiameter, "job.rewind_diameter");
    const inputs::Rewind* r = rewindOf(book.press(), zone);
    if (r == nullptr || !r->largestDiameter || !wanted.known() || wanted.value->si() <= r->largestDiameter->si())
        return wanted;
    return term(r->largestDiameter, "press.rewind." + r->id + ".largest_diameter");
}

}  // namespace

Term lastDiameterOf(const Book& book, const inputs::Zone& zone)
{
    switch (endOf(book.press(), zone)) {
    case ZoneEnd::Unwind: return book.coreOuter(Book::Wall::Thinnest);  // there the pull of a brake left alone is most
    case ZoneEnd::Rewind: {
        Term full = finishedDiameter(book, zone);
        const Term core = rollDiameterOf(book, zone);
        if (!full.known() || !core.known() || full.value->si() > core.value->si()) return full;
        return impossible(refuse("tension." + zone.id + ".finished_below_core", full.from.str(),
                                 Text("A finished roll of %1 is no more than its core, %2 outside.",
                                      {full.value->magnitude(), core.value->magnitude()}),
                                 "Enter the largest diameter that the customer takes, core included."));
    }
    case ZoneEnd::Waste: {
        // What is stripped off winds up as large as its own rewind allows, whatever the job's rolls are.
        const inputs::Rewind* r = rewindOf(book.press(), zone);
        return r == nullptr ? rewindLack(book.press())
                            : term(r->largestDiameter, "press.rewind." + r->id + ".largest_diameter");
    }
    case ZoneEnd::Between: break;
    }
    return endLack(zone);
}

namespace {

Term middle(const TensionChoice& c)
{
    return combine(
        {c.low, c.high}, "middle of " + c.low.from + " and " + c.high.from,
        [](const std::vector<double>& v) { return (v[0] + v[1]) / 2; }, Kind::ForcePerWidth);
}

/// The speed at which a brake takes no more than it may, and whether a tension inside the window does it too.
Text coolerText(const Book& book, const Ready& heat, const Entry<Kind::Power>& most, const SettingTerms& terms)
{
    const double share = most.si() / std::get<Quantity>(heat.value).si();
    const Quantity speed = *book.speed().value;
    const Magnitude slower{speed.si() * share, Kind::Speed, speed.unit()};
    const bool lower = terms.low.known() && terms.low.value->si() * speed.si() <= most.si();
    return lower ? Text("Run at %1 or slower, or lower in the tension window.", {slower})
                 : Text("Run at %1 or slower: at job speed no tension inside the window is low enough.", {slower});
}

/// One zone: per width, total, strain, torque, in that order, each with the window of the one before; then what its
/// setting follows from.
SettingTerms stateZone(Book& book, const inputs::Zone& zone)
{
    const std::string id = "tension." + zone.id + ".";
    const bool us = book.press().units == UnitSystem::Us;
    const std::string zoneName = inputs::spokenName(zone);
    const TensionChoice choice = chooseTension(book, zone);
    for (const Finding& said : choice.said)
        if (!book.isNoted(said.text)) book.note(said);
    const Text perWidthName("%1: tension per width", {zoneName});

    const Term width = zoneWidth(book, zone), diameter = rollDiameterOf(book, zone);
    auto totalOf = [&](const Term& tw) { return evaluated("T1", {{"Tw", tw}, {"w", width}}, id + "total"); };
    SettingTerms terms{{}, totalOf(choice.low), totalOf(choice.high), diameter, choice.rules, totalOf(middle(choice))};
    if (width.cannot && width.cannot->code == "tension." + zone.id + ".no_lane") book.note(*width.cannot);
    const Arguments ends{{"low", called(choice.low, "lowest tension per width")},
                         {"high", called(choice.high, "highest tension per width")}};
    // The middle of the window, unless that cannot be set: then the nearest that can, and all else follows from it.
    const std::optional<Force> held = heldTension(book, zone, terms);
    Arguments nearest = ends;
    if (held) {
        nearest.emplace_back(
            "T", called(known(Quantity(held->si(), Kind::Force, us ? "lbf" : "N"), zoneKey(zone, "setting")),
                        "nearest web tension that can be set"));
        nearest.emplace_back("w", called(width, "width"));
    }
    Stated perWidth =
        held ? book.value(id + "per_width", perWidthName, "rule",
                          known(Quantity(held->si() / width.value->si(), Kind::ForcePerWidth), ""), choice.sourceId,
                          nearest)
                   .symbols("Tw = T / w")
        : choice.how == "T2"
            ? book.formula(id + "per_width", perWidthName, "T2", {{"s", choice.stress}, {"t", book.caliper()}},
                           us ? "lbf/in" : "N/mm")
            : book.value(id + "per_width", perWidthName, choice.how, middle(choice), choice.sourceId, ends);
    perWidth.in(us ? "lbf/in" : "N/mm");
    if (choice.low.known() && choice.high.known())
        perWidth.window(choice.low.value, choice.high.value, choice.rules, choice.source());
    perWidth.advice(held ? Text("The middle of the range cannot be set here: this is the nearest that can.")
                    : choice.advice.empty()
                        ? Text("The middle of the range; the least that keeps the web in hand is best.")
                        : choice.advice);

    // Where a load cell's panel shows it, in the panel's unit.
    const std::string panel = zone.loadCell ? panelForce(book, *zone.loadCell) : std::string();
    Stated total = book.formula(id + "total", Text("%1: web tension", {zoneName}), "T1",
                                {{"Tw", perWidth.term()}, {"w", width}}, panel.empty() ? us ? "lbf" : "N" : panel);
    terms.total = total.term();
    const Text inherited("the window of tension per width, times the width");
    if (terms.low.known() && terms.high.known())
        total.window(terms.low.value, terms.high.value, choice.rules, inherited);
    if (zone.loadCell && zone.setting.uncertainty && zone.setting.uncertainty->kind() == Kind::Force)
        total.instrument(zone.setting.uncertainty);
    total.advice("All of the web across its width.");

    const Limit strain = book.limit(book.substrate().family == "pe" ? "strain_most_pe" : "strain_most");
    const Carrier web = carrierOf(book, zone);
    book.formula(id + "strain", Text("%1: strain of the web", {zoneName}), "D1",
                 {{"T", total.term()}, {"E", web.modulus}, {"w", width}, {"t", web.caliper}}, "%")
        .window({}, strain.value.in("%"), strain.rule, strain.source())
        .advice(zone.carries == "liner"
                    ? Text("The liner carries alone here: it is stretched more than the whole web at the same tension.")
                    : Text("What the print shortens by when the web is let go."));

    const ZoneEnd end = endOf(book.press(), zone);
    const bool hasRoll = zone.control != inputs::Control::Draw && end != ZoneEnd::Between;
    const Limit match = book.limit("diameter_match");
    if (hasRoll) {
        book.formula(id + "torque", Text("%1: torque on the roll", {zoneName}), "B1",
                     {{"T", total.term()}, {"D", diameter}}, us ? "lbf in" : "N m")
            .advice(end == ZoneEnd::Unwind ? Text("At the diameter the roll has now.")
                                           : Text("At the empty core; it grows with the roll."));
        // A brake's heat is T v; a slip clutch's is not, so it is not claimed for a rewind.
        const bool friction =
            zone.actuator == inputs::Actuator::Pneumatic || zone.actuator == inputs::Actuator::Particle;
        if (end == ZoneEnd::Unwind && friction) {
            Stated heat = book.formula(id + "slip_power", Text("%1: heat in the brake", {zoneName}), "B3",
                                       {{"T", total.term()}, {"v", book.speed()}}, "W");
            heat.advice("The same from full roll to core. A brake that runs hot grips less.");
            if (zone.slipPowerMost) {
                heat.window({}, zone.slipPowerMost->quantity(), Rule::Press, "what the brake may turn into heat");
                if (const Ready* r = heat.ready(); r && std::get<Quantity>(r->value).si() > zone.slipPowerMost->si())
                    book.note(Finding{
                        id + "too_hot", Severity::Warn, "press.zone." + zone.id,
                        Text("At job speed the brake takes %1, it may take %2.",
                             {std::get<Quantity>(r->value).magnitude(), zone.slipPowerMost->quantity().magnitude()}),
                        coolerText(book, *r, *zone.slipPowerMost, terms)});
            }
        }
        if (zone.needsDiameter)
            book.value(id + "diameter", Text("%1: diameter the drive works with", {zoneName}), "stated", diameter,
                       "the roll's data")
                .within(diameter.known() ? match.si() * diameter.value->si() : 0,
                        diameter.known() ? match.si() * diameter.value->si() : 0, match.rule, match.source())
                .most(book.mostAcross(rewindOf(book.press(), zone)))
                .advice("Type the measured diameter into the drive and read it back: half the diameter is half the "
                        "tension.");
    }
    return terms;
}

/// Lanes that do not go round evenly: which rewind takes more of them is by the order in the profile, and that is said.
void sayLanes(Book& book)
{
    const auto products = std::count_if(book.press().rewinds.begin(), book.press().rewinds.end(),
                                        [](const inputs::Rewind& r) { return !r.waste; });
    const std::optional<int>& across = book.job().across;
    if (products < 2 || !across || *across < products || *across % products == 0) return;
    book.note(Finding{"tension.lanes_uneven", Severity::Note, "job.across",
                      Text("%1 lanes go to %2 rewinds in turn: those listed first in the press profile wind one more.",
                           {std::int64_t{*across}, static_cast<std::int64_t>(products)}),
                      "Look that the slitter is threaded so: each rewind's tension goes by the lanes that it winds."});
}

/// Beside the windows, for a laminate that tells what its plies are: it makes none and moves none.
void statePlies(Book& book)
{
    Arguments plies;
    const Term sum = summedPlies(book, plies);
    if (!sum.known()) return;
    book.value("tension.plies", "Tension per width by the plies' own tables", "rule", sum, "S18a, S20", plies)
        .symbols("Tw = T1 + T2 + ... + a")
        .advice("A starting value for laminates, to compare the windows with: what the tables say of each ply, and a "
                "tenth of lbf/in.");
}

}  // namespace

void stateTension(Book& book)
{
    statePlies(book);
    sayLanes(book);
    // A draw's setting asks the zone before it, wherever that stands in the profile.
    std::vector<SettingTerms> terms;
    for (const inputs::Zone& zone : book.press().zones) terms.push_back(stateZone(book, zone));
    for (std::size_t i = 0; i < terms.size(); ++i) {
        stateSetting(book, book.press().zones[i], terms[i]);
        stateCourse(book, book.press().zones[i], terms[i]);
    }
}

}  // namespace taut::targets
