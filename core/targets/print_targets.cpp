// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/targets/book.h"

// Register, printed repeat and ink: what the print stations are set to and hand over.
namespace taut::targets {

namespace {

/// The zone in which the web is printed: round the first print roller; where none is bounded there, the first draw.
const inputs::Zone* printedUnder(const inputs::Press& press)
{
    for (const inputs::Roller& roller : press.rollers)
        if (roller.kind == "print")
            if (const inputs::Zone* zone = zoneRound(press, roller)) return zone;
    for (const inputs::Zone& zone : press.zones)
        if (zone.control == inputs::Control::Draw) return &zone;
    return nullptr;
}

/// Ten repeats, measured on the web let go, against ten by the gear: shorter by what the tension stretched them. Where
/// the material does not say how far it stretches, by anything up to what print may be made under.
void statePrintedRepeat(Book& book)
{
    const Limit drift = book.limit("printed_repeat");
    const std::string unit = book.press().units == UnitSystem::Us ? "in" : "mm";
    const Term repeat = book.target("job.repeat"), change = book.target("register.repeat_change");
    const Text name = "Ten printed repeats, longer than ten by the gear";
    if (!repeat.known()) {
        book.value("register.printed_repeat", name, "rule", repeat, "definition");
        return;
    }
    const double reach = drift.si() * 10 * repeat.value->si();
    if (change.known()) {
        Term shorter = combine(
            {change}, "target:register.repeat_change", [](const std::vector<double>& v) { return -10 * v[0]; },
            Kind::Length);
        book.value("register.printed_repeat", name, "rule", shorter, "definition",
                   {{"R", called(repeat, "repeat by the gear")},
                    {"s", called(change, "by what a repeat is shorter when the web is let go")}})
            .in(unit)
            .symbols("x = P - 10 R, P measured; it should be -10 s")
            .within(reach, reach, drift.rule, drift.source())
            .advice("Measured over ten on the web let go, which is shorter by what the tension stretched it. Off this "
                    "says undercut, tape or another tension than set.");
        return;
    }
    const Limit most = book.limit(book.substrate().family == "pe" ? "strain_most_pe" : "strain_most");
    book.value("register.printed_repeat", name, "rule", known(Quantity(0, Kind::Length, unit), "policy:printed_repeat"),
               "definition", {{"R", called(repeat, "repeat by the gear")}})
        .symbols("x = P - 10 R, P measured")
        .within(reach + 10 * repeat.value->si() * most.si(), reach, drift.rule,
                Text("%1; shorter besides by what tension may stretch it: %2",
                     {std::vector<Text>{drift.source()}, std::vector<Text>{most.source()}}))
        .advice("Measured over ten on the web let go. How far this web stretches is not known: it may be shorter by "
                "that. Off this says undercut, tape or too much tension.");
}

}  // namespace

void stateRegisterAndInk(Book& book)
{
    const bool us = book.press().units == UnitSystem::Us;
    for (const inputs::Station& station : book.press().stations) {
        const std::string id = "register." + std::to_string(station.number) + ".";
        const std::string key = "press.printing.station." + std::to_string(station.number) + ".";
        const std::string name = std::to_string(station.number);
        const Limit mid = book.limit("register_centre");
        Stated along = book.value(id + "along", Text("Station %1: register left along the web, each way", {name}),
                                  "stated", term(station.registerAlong, key + "register_along"), "press profile");
        if (station.registerAlong) {
            const Quantity way = station.registerAlong->quantity();
            const double off = mid.si() * way.si();
            along.within(off, off, mid.rule, mid.source())
                .most(Quantity(2 * way.si(), way.kind(), way.unit()))  // from one end to the other
                .advice("When its adjuster stands at its mid mark.");
        }
        Stated centre = book.value(
            id + "centre", Text("Station %1: register adjuster from its mid mark", {name}), "stated",
            station.registerAlong
                ? known(Quantity(0, Kind::Length, station.registerAlong->quantity().unit()), key + "register_along")
                : missing(key + "register_along"),
            "policy");
        if (station.registerAlong)
            centre
                .within(mid.si() * station.registerAlong->si(), mid.si() * station.registerAlong->si(), mid.rule,
                        mid.source())
                .advice("From the middle it can follow the print to both sides; across goes by the same share.");
        book.value(id + "across", Text("Station %1: register left across the web, each way", {name}), "stated",
                   term(station.registerAcross, key + "register_across"), "press profile")
            .advice("When its adjuster stands at its mid mark.");
    }
    if (const inputs::Zone* zone = printedUnder(book.press()))
        book.formula("register.repeat_change", "By what a repeat is shorter when the web is let go", "D1.repeat",
                     {{"R", book.target("job.repeat")}, {"e", book.target("tension." + zone->id + ".strain")}},
                     us ? "in" : "mm")
            .advice("A die or a finisher that works on the slack web meets the shorter repeat.");
    statePrintedRepeat(book);
    for (const inputs::Station& station : book.press().stations) {
        const auto deck = std::find_if(book.job().decks.begin(), book.job().decks.end(),
                                       [&](const inputs::Deck& d) { return d.station == station.number; });
        if (!station.undercut || deck == book.job().decks.end()) continue;
        const std::string number = std::to_string(station.number);
        const Limit most = book.limit("undercut");
        const Term plate = term(deck->plate, "job.deck." + number + ".plate.thickness");
        const Term tape = term(deck->tape, "job.deck." + number + ".tape");
        const Term under = term(station.undercut, "press.printing.station." + number + ".undercut");
        const Term error = combine(
            {plate, tape, under}, "plate and tape less the undercut",
            [](const std::vector<double>& v) { return v[0] + v[1] - v[2]; }, Kind::Length);
        book.value("register." + number + ".undercut_error",
                   Text("Station %1: plate and tape over the undercut", {number}), "rule", error, "definition",
                   {{"plate", called(plate, "plate")},
                    {"tape", called(tape, "mounting tape")},
                    {"u", called(under, "undercut")}})
            .symbols("x = plate + tape - u")
            .window(Quantity(-most.si(), Kind::Length), most.value, most.rule, most.source())
            .advice("Off this, the print is longer or shorter than the gear says, and the pressure wrong.");
    }
    // What of the cells reaches the web: from a quarter (public rule, S79) to a half (an ink maker's chart, S80), one
    // share for the film and for the mass.
    const Term least = book.row("anilox_share_least"), most = book.row("anilox_share_most");
    const Term reaches = doubted(combine(
                                     {least, most}, "middle of " + least.from + " and " + most.from,
                                     [](const std::vector<double>& v) { return (v[0] + v[1]) / 2; }, Kind::Share),
                                 (most.value->si() - least.value->si()) / 2, "k");
    const bool usual = least.from.starts_with("policy:") && most.from.starts_with("policy:");
    const Text said =
        usual ? Text("From a quarter (a public rule, S79) to a half (an ink maker's chart, S80) of the cells "
                     "reaches the web: the middle, for film and mass alike; pan and hoses come on top.")
              : Text("By the share of the cells that this shop has found to reach the web, for film and "
                     "mass alike; pan and hoses come on top.");
    for (const inputs::Deck& deck : book.job().decks) {
        const std::string station = std::to_string(deck.station);
        const std::string id = "ink." + station + ".";
        const std::string key = "job.deck." + station + ".";
        const Term volume = term(deck.aniloxVolume, key + "anilox.volume");
        book.formula(id + "plate_stretch", Text("Station %1: length of the film against the print", {station}), "F3",
                     {{"R", book.target("job.repeat")},
                      {"tp", term(deck.plate, key + "plate.thickness")},
                      {"tb", term(deck.plateBase, key + "plate.base")}},
                     "%");
        book.formula(id + "film", Text("Station %1: wet ink on the web", {station}), "F7",
                     {{"V", volume}, {"c", reaches}}, "um")
            .advice(said);
        const Term area = combine(
            {book.target("job.length"), book.width()}, "job.length times the width",
            [](const std::vector<double>& v) { return v[0] * v[1]; }, Kind::Area);
        Stated mass = book.formula(id + "mass", Text("Station %1: ink to have ready", {station}), "F8",
                                   {{"A", area},
                                    {"c", number(deck.coverage, key + "coverage", Kind::Share)},
                                    {"V", volume},
                                    {"k", reaches},
                                    {"rho", term(deck.inkDensity, key + "ink_density")}},
                                   us ? "lb" : "kg");
        mass.advice(said);
    }
}

}  // namespace taut::targets
