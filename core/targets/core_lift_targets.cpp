// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/targets/book.h"

namespace taut::targets {

namespace {

struct AdapterAnswer {
    bool needed = false;
    const inputs::Adapter* adapter = nullptr;
};

/// Whether the mandrel takes this core as it is, or through an adapter; nullopt when neither.
std::optional<AdapterAnswer> holds(const inputs::Unwind& unwind, double core)
{
    constexpr double kFits = 0.0005;  // half a millimetre between a nominal core and its adapter
    const bool least = !unwind.mandrel.gripsLeast || core >= unwind.mandrel.gripsLeast->si();
    const bool most = !unwind.mandrel.gripsMost || core <= unwind.mandrel.gripsMost->si();
    if (least && most) return AdapterAnswer{};
    for (const inputs::Adapter& a : unwind.adapters)
        if (std::abs(a.core.si() - core) <= kFits) return AdapterAnswer{true, &a};
    return std::nullopt;
}

const inputs::Adapter* stateAdapter(Book& book)
{
    const inputs::Press& press = book.press();
    const Text name = "Core adapter needed";
    std::vector<std::string> lacks;
    if (!press.unwind || (!press.unwind->mandrel.gripsLeast && !press.unwind->mandrel.gripsMost))
        lacks.emplace_back("press.unwind.grips");
    if (!book.roll().core) lacks.emplace_back("roll.core");
    if (!lacks.empty()) {
        book.lacking("core.adapter", name, Shape::YesNo, Term{{}, {}, lacks, {}}, "press profile");
        return nullptr;
    }
    const Quantity& core = book.roll().core->quantity();
    const std::optional<AdapterAnswer> answer = holds(*press.unwind, core.si());
    std::vector<Given> why{given("c", "core inner diameter", core, "roll.core")};
    if (press.unwind->mandrel.gripsLeast)
        why.push_back(
            given("a", "smallest core held", press.unwind->mandrel.gripsLeast->quantity(), "press.unwind.grips.least"));
    if (press.unwind->mandrel.gripsMost)
        why.push_back(
            given("b", "largest core held", press.unwind->mandrel.gripsMost->quantity(), "press.unwind.grips.most"));
    Stated stated = book.yesNo("core.adapter", name, answer && answer->needed, "press profile", std::move(why));
    stated.window({}, {}, Rule::Press, "what the mandrel grips");
    if (!answer) {
        stated.cannot(refuse(
            "core.not_held", "roll." + book.roll().id,
            Text("A core of %1 is neither held by the mandrel nor is there an adapter for it.", {core.magnitude()}),
            Text("Take a roll on another core, or fetch an adapter and enter it in the press's profile.")));
        return nullptr;
    }
    stated.advice(answer->needed ? Text("Put the adapter on both ends, keyed and locked, before the roll goes on.")
                                 : Text("The mandrel grips this core as it is."));
    return answer->adapter;
}

/// What hangs beside the roll's own mass: its adapter, where it needs one.
Term adapterMass(const inputs::Adapter* adapter)
{
    return adapter ? term(adapter->mass, "press.unwind.adapters.mass")
                   : known(Quantity(0, Kind::Mass), "target:core.adapter");
}

/// Whose plate says what a roll and its adapter may weigh.
enum class Carries : std::uint8_t { Unwind, Lift };

/// A roll that with its adapter is more than that, said once; nullopt where it is not, or nobody knows.
std::optional<Finding> tooHeavy(Book& book, Carries who, const inputs::Maybe<Kind::Mass>& most, const Term& extra)
{
    const Term mass = book.target("roll.mass");
    if (!most || !mass.known()) return std::nullopt;
    const double hangs = mass.value->si() + (extra.known() ? extra.value->si() : 0);
    if (hangs <= most->si()) return std::nullopt;
    const std::vector<TextArg> figures{Magnitude{hangs, Kind::Mass, mass.value->unit()}, most->quantity().magnitude()};
    const bool lift = who == Carries::Lift;
    const char* text = hangs > mass.value->si() ? (lift ? "With its adapter the roll weighs %1, this lift carries %2."
                                                        : "With its adapter the roll weighs %1, this press takes %2.")
                                                : (lift ? "The roll weighs %1, this lift carries %2."
                                                        : "The roll weighs %1, this press takes %2.");
    Finding why = refuse(lift ? "lift.too_heavy" : "unwind.too_heavy", "roll." + book.roll().id, Text(text, figures),
                         lift ? Text("Take a smaller roll. Do not lift this one here.")
                              : Text("Take a smaller roll. Do not hang this one here."));
    book.note(why);
    return why;
}

void stateLift(Book& book, const Term& extra, std::optional<Finding> unfit)
{
    const inputs::Press& press = book.press();
    if (!press.unwind || !press.unwind->lift) return;
    const inputs::Lift& lift = *press.unwind->lift;
    const bool us = press.units == UnitSystem::Us;
    Term mass = book.target("roll.mass");
    Term carriage = term(lift.carriage, "press.unwind.lift.carriage");
    Term load = combine(
        {mass, extra, carriage}, "roll, adapter and carriage",
        [](const std::vector<double>& v) { return v[0] + v[1] + v[2]; }, Kind::Mass);
    Stated stated = book.value("lift.load", "Load on the lift", "rule", load, "definition",
                               {{"roll", called(mass, "roll with its core")},
                                {"adapter", called(extra, "core adapter")},
                                {"carriage", called(carriage, "what the lift moves with the roll")}});
    stated.in(us ? "lb" : "kg");

    // What may be lifted is what the plate says, never what the pressure would allow.
    const inputs::Maybe<Kind::Mass>& rated = lift.rated ? lift.rated : press.unwind->largestMass;
    Term heavy;
    if (!unfit) unfit = tooHeavy(book, Carries::Lift, rated, extra);
    if (unfit) {
        stated.cannot(*unfit);
        heavy = impossible(*unfit);
    } else if (rated) {
        const double carried = carriage.known() ? carriage.value->si() : 0;
        // What the lift may carry, and no roll heavier than the unwind takes.
        const double most =
            press.unwind->largestMass ? std::min(rated->si(), press.unwind->largestMass->si()) : rated->si();
        stated.window({}, Quantity(most + carried, Kind::Mass), Rule::Press, "what the lift or unwind is rated for")
            .advice("The roll is held by the lift, not by hands.");
    }
    if (lift.kind != "pneumatic") return;

    Term weight = heavy.cannot ? heavy : stated.term();
    Stated pressure = book.formula("lift.pressure", "Lift pressure at which it begins to rise", "N2",
                                   {{"m", weight},
                                    {"n", number(lift.pistons, "press.unwind.lift.pistons")},
                                    {"D", term(lift.bore, "press.unwind.lift.bore")},
                                    {"eta", number(lift.efficiency, "press.unwind.lift.efficiency", Kind::Share)},
                                    {"i", number(lift.ratio, "press.unwind.lift.ratio", Kind::Share)}},
                                   lift.pressure.least ? lift.pressure.least->unit() : (us ? "psi" : "bar"));
    // A pressure proves nothing about what hangs on the lift; but well above the figure something is stuck.
    if (const Ready* r = pressure.ready()) {
        const Quantity value = std::get<Quantity>(r->value);
        const Limit over = book.limit("lift_stuck");
        double stuck = value.si() * (1 + over.si());
        if (lift.pressure.least) stuck = std::max(stuck, lift.pressure.least->si());
        const Quantity alarm(stuck, Kind::Pressure, value.unit());
        pressure.instrument(lift.pressure.uncertainty).most(lift.pressure.most);
        pressure.window({}, alarm, Rule::Alarm, over.source());
        if (lift.pressure.most && value.si() > lift.pressure.most->si()) {
            const Finding why = refuse("lift.pressure_out_of_range", "roll." + book.roll().id,
                                       Text("Lifting this roll would take %1; this lift ends at %2.",
                                            {value.magnitude(), lift.pressure.most->magnitude()}),
                                       Text("Take a smaller roll. Do not lift this one here."));
            pressure.cannot(why);
            book.note(why);
        } else if (lift.pressure.least && value.si() < lift.pressure.least->si()) {
            const Text low("It begins to rise at %1, less than the %2 at which this lift's pressure begins.",
                           {value.magnitude(), lift.pressure.least->magnitude()});
            // Where even the heaviest roll that this press takes would rise so, it is the profile and not the roll.
            const bool profile =
                rated && weight.known() && value.si() * (rated->si() / weight.value->si()) < lift.pressure.least->si();
            book.note(Finding{
                "lift.rises_at_once", Severity::Warn, "press.unwind.lift", low,
                profile
                    ? Text("Expect it to move as soon as air is on: stand clear and let the air in slowly. Check the "
                           "bore, the pistons and the least pressure in the press profile: the heaviest roll would "
                           "rise so too.")
                    : Text("It is a light roll. Expect it to move as soon as air is on: stand clear and let the air "
                           "in slowly.")});
            pressure.advice(Text(
                "Less than the %1 at which this lift's pressure begins: it moves as soon as air is on. Let the air "
                "in slowly, beside the roll, never under it. If nothing has moved at %2, stop: something is "
                "stuck.",
                {lift.pressure.least->magnitude(), alarm.magnitude()}));
        } else {
            pressure.advice(
                Text("Come up to it slowly from below, beside the roll, never under it. If nothing has moved at %1, "
                     "stop: something is stuck. Never raise the pressure with anybody near the roll.",
                     {alarm.magnitude()}));
        }
    }
}

}  // namespace

void stateCoreAndLift(Book& book)
{
    const Term extra = adapterMass(stateAdapter(book));
    const auto& unwind = book.press().unwind;
    stateLift(book, extra, unwind ? tooHeavy(book, Carries::Unwind, unwind->largestMass, extra) : std::nullopt);
}

}  // namespace taut::targets
