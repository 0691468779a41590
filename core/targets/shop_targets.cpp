// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/targets/book.h"

namespace taut::targets {

namespace {

/// A reading that no formula gives: the middle of a range that the press's plate or our policy says.
void readingBetween(Book& book, const std::string& id, Text name, std::optional<Quantity> low,
                    std::optional<Quantity> high, Rule rule, Text source, Text advice, const std::string& from)
{
    const Quantity& some = low ? *low : *high;
    const double value = low && high ? (low->si() + high->si()) / 2 : some.si();
    book.value(id, std::move(name), "stated", known(Quantity(value, some.kind(), some.unit()), from),
               rule == Rule::Press ? "press profile" : "policy")
        .window(low, high, rule, std::move(source))
        .advice(std::move(advice));
}

Quantity bar(double v, bool us) { return Quantity(v * 1e5, Kind::Pressure, us ? "psi" : "bar"); }
Quantity mm(double v, bool us) { return Quantity(v * 1e-3, Kind::Length, us ? "in" : "mm"); }

void shaftAir(Book& book, const std::string& id, const Text& name, const inputs::Mandrel& mandrel, bool us)
{
    if (mandrel.kind != "air_shaft") return;
    const bool plate = mandrel.airLeast || mandrel.airMost;
    std::optional<Quantity> low = bar(5.5, us), high = bar(6.9, us);
    if (plate) {
        low = mandrel.airLeast ? std::optional(mandrel.airLeast->quantity()) : std::nullopt;
        high = mandrel.airMost ? std::optional(mandrel.airMost->quantity()) : std::nullopt;
    }
    readingBetween(book, id, name, low, high, plate ? Rule::Press : Rule::Policy,
                   plate ? Text("the shaft's plate") : Text("usual for air shafts: from memory"),
                   "Watch it for a minute: a leaking shaft lets the roll go.",
                   plate ? "press.mandrel.pressure" : "policy:air_shaft");
}

}  // namespace

void stateShopReadings(Book& book)
{
    const inputs::Press& press = book.press();
    const bool us = press.units == UnitSystem::Us;
    if (press.hasAir)
        readingBetween(book, "air.supply", "Air supply at the press", bar(5.5, us), bar(7, us), Rule::Policy,
                       "5.5 to 7 bar unless the press's plate says otherwise: common practice, no source",
                       "Low air lets brakes, nips and shafts go when you need them.", "policy:air_supply");
    if (press.unwind) shaftAir(book, "mandrel.air", "Air in the unwind shaft", press.unwind->mandrel, us);
    for (const inputs::Rewind& rewind : press.rewinds)
        shaftAir(book, "mandrel." + rewind.id + ".air", Text("Air in rewind shaft %1", {rewind.id}), rewind.mandrel,
                 us);

    const Text practice = "common practice, no source";
    readingBetween(book, "splice.gap", "Gap between the butted edges", mm(0, us), mm(0.5, us), Rule::Policy, practice,
                   "Touching, never over one another: an overlap strikes every nip.", "policy:splice_gap");
    readingBetween(book, "splice.step", "Sideways step at the joint", mm(0, us), mm(0.5, us), Rule::Policy, practice,
                   "A step runs through the guide as a jump.", "policy:splice_step");
    readingBetween(book, "splice.square", "Cut out of square across the web", mm(0, us), mm(1, us), Rule::Policy,
                   "policy", "Measure it against the web's edge with a square.", "policy:splice_square");
}

}  // namespace taut::targets
