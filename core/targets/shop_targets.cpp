// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <array>
#include <string_view>

#include "core/inputs/spoken.h"
#include "core/targets/book.h"
#include "core/targets/known_ids.h"

namespace taut::targets {

namespace {

/// A row in the press's units.
Quantity said(const Limit& limit, bool us)
{
    if (!us || limit.rule == Rule::Press) return limit.value;
    return limit.value.in(limit.value.kind() == Kind::Pressure ? "psi" : "in");
}

/// What should not be there at all, up to what the row allows.
void stateFault(Book& book, const std::string& id, Text name, const char* rowName, Text advice)
{
    const Limit most = book.limit(rowName);
    const bool us = book.press().units == UnitSystem::Us;
    const Quantity high = said(most, us);
    const Quantity nothing(0, high.kind(), high.unit());
    const bool own = most.rule == Rule::Press;
    book.value(id, std::move(name), "stated",
               known(nothing, (own ? "press.policy." : "policy:") + std::string(rowName)),
               own ? "press profile" : "policy")
        // Less than none of it cannot be, unless it is that edges lie over one another.
        .window(hasNoSign(id) ? std::nullopt : std::optional(nothing), high, most.rule, most.source())
        .advice(std::move(advice));
}

/// A reading that no formula gives: the middle of a range that the press's plate or our policy says.
void readingBetween(Book& book, const std::string& id, Text name, std::optional<Quantity> low,
                    std::optional<Quantity> high, Rule rule, Text source, Text advice, const std::string& from)
{
    // A row that the shop has set is the press's, under the row's name.
    const std::string key =
        rule == Rule::Press && from.rfind("policy:", 0) == 0 ? "press.policy." + from.substr(7) : from;
    const Quantity& some = low ? *low : *high;
    const double value = low && high ? (low->si() + high->si()) / 2 : some.si();
    book.value(id, std::move(name), "stated", known(Quantity(value, some.kind(), some.unit()), key),
               rule == Rule::Press ? "press profile" : "policy")
        .window(low, high, rule, std::move(source))
        .advice(std::move(advice));
}

void shaftAir(Book& book, const std::string& id, const Text& name, const inputs::Mandrel& mandrel, bool us)
{
    if (mandrel.kind != "air_shaft") return;
    const bool plate = mandrel.airLeast || mandrel.airMost;
    const Limit usual = book.limit("air_shaft_least");
    std::optional<Quantity> low = said(usual, us), high = said(book.limit("air_shaft_most"), us);
    if (plate) {
        low = mandrel.airLeast ? std::optional(mandrel.airLeast->quantity()) : std::nullopt;
        high = mandrel.airMost ? std::optional(mandrel.airMost->quantity()) : std::nullopt;
    }
    readingBetween(book, id, name, low, high, plate ? Rule::Press : usual.rule,
                   plate ? Text("the shaft's plate") : usual.source(),
                   "Watch it for a minute: a leaking shaft lets the roll go.",
                   plate ? "press.mandrel.pressure" : "policy:air_shaft");
}

/// What a set-up is planned to use, to be held beside what it did: nothing limits that, or whoever used more would read
/// less.
void stateWebOfSetUp(Book& book)
{
    const inputs::Maybe<Kind::Length>& planned = book.job().makeReady;
    book.value("setup.web", "Web used in setting up", "stated",
               planned ? term(planned, "job.make_ready") : book.row("set_up_web"),
               planned ? "the job's data" : "policy")
        .advice("What it did use is read and recorded as it is. The job's make_ready plans it.");
}

}  // namespace

void stateShopReadings(Book& book)
{
    const inputs::Press& press = book.press();
    const bool us = press.units == UnitSystem::Us;
    if (press.hasAir)
        readingBetween(book, "air.supply", "Air supply at the press", said(book.limit("air_supply_least"), us),
                       said(book.limit("air_supply_most"), us), book.limit("air_supply_least").rule,
                       book.limit("air_supply_least").source(),
                       "Low air lets brakes, nips and shafts go when you need them.", "policy:air_supply");
    if (press.hasAir)
        stateFault(book, "air.drop", "Fall of the air supply while nips close", "air_drop_most",
                   "Close the nips and watch the gauge: a supply that falls further feeds a leak or a choked line.");
    if (press.unwind) shaftAir(book, "mandrel.air", "Air in the unwind shaft", press.unwind->mandrel, us);
    for (const inputs::Rewind& rewind : press.rewinds)
        shaftAir(book, "mandrel." + rewind.id + ".air", Text("%1: air in its shaft", {spokenName(press, rewind)}),
                 rewind.mandrel, us);

    stateWebOfSetUp(book);
    stateFault(book, "splice.gap", "Gap between the butted edges", "splice_gap",
               "Touching, never over one another: an overlap strikes every nip.");
    stateFault(book, "splice.step", "Sideways step at the joint", "splice_step",
               "A step runs through the guide as a jump.");
    stateFault(book, "splice.square", "Cut out of square across the web", "splice_square",
               "Measure it against the web's edge with a square.");
    stateFault(book, "splice.overhang", "Splice tape beyond the web's edge", "splice_overhang",
               "Trim it flush: a tail sticks to the first roller it meets.");
    const Limit room = book.limit("room_time");
    book.value("roll.room_time", "Time a roll should lie in the press room", "stated",
               known(room.value, "policy:room_time"), "common practice, no source")
        .window(room.value, {}, room.rule, room.source())
        .advice("A cold or damp roll changes its length and its tension on the press. Wait, or note it.");
    constexpr std::array<std::string_view, 8> kTreated{"film_label", "pet",   "bopp",  "pp",
                                                       "pe",         "nylon", "vinyl", "polystyrene"};
    if (std::find(kTreated.begin(), kTreated.end(), book.substrate().family) != kTreated.end()) {
        const Limit treatment = book.limit("film_treatment");
        book.value("roll.treatment", "Treatment of the film", "stated",
                   known(treatment.value.in("mN/m"), "policy:film_treatment"), "policy, from memory")
            .window(treatment.value.in("mN/m"), {}, treatment.rule, treatment.source())
            .advice(
                "Drawn across with test ink; the ink maker's figure comes first. Ink beads on film that has lost it.");
    }
    const Term reach = known(Quantity(0, Kind::Length, us ? "in" : "mm"), "policy:colour_to_colour");
    const Limit colour = book.limit("colour_to_colour"), die = book.limit("die_to_print");
    book.value("register.colour", "Colour to colour", "stated", reach, "policy, from memory")
        .within(colour.si(), colour.si(), colour.rule, colour.source())
        .advice("Where the job says nothing closer.");
    if (std::any_of(press.rollers.begin(), press.rollers.end(), [](const auto& r) { return r.kind == "die"; }))
        book.value("register.die", "Die to print", "stated", reach, "common practice, no source")
            .within(die.si(), die.si(), die.rule, die.source())
            .advice("Where the job says nothing closer.");
}

}  // namespace taut::targets
