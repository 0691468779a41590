// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/targets/book.h"
#include "core/targets/tension_window.h"

namespace taut::targets {

namespace {

/// The zone that a roller stands in decides which tension lies on it; the unwind's where nothing else is known.
Term runningPerWidth(const Book& book)
{
    for (const inputs::Zone& zone : book.press().zones)
        if (endOf(book.press(), zone) == ZoneEnd::Unwind) return book.target("tension." + zone.id + ".per_width");
    if (!book.press().zones.empty()) return book.target("tension." + book.press().zones.front().id + ".per_width");
    return missing("press.zone");
}

Term fasterSpeeds(const Book& book)
{
    return combine(
        {book.speed()}, "twice job.speed", [](const std::vector<double>& v) { return 2 * v[0]; }, Kind::Speed);
}

/// The largest zone tension per width: what a splice has to carry.
Term highestPerWidth(const Book& book)
{
    Term highest = missing("press.zone");
    for (const inputs::Zone& zone : book.press().zones) {
        if (endOf(book.press(), zone) == ZoneEnd::Waste) continue;
        Term t = book.target("tension." + zone.id + ".per_width");
        if (!t.known()) return t;
        if (!highest.known() || t.value->si() > highest.value->si()) highest = t;
    }
    return highest;
}

}  // namespace

void stateTraction(Book& book)
{
    const inputs::Press& press = book.press();
    const Text leastName = "Least grip of the web on a roller, as a tension ratio";
    const inputs::Roller* weakest = nullptr;
    const inputs::Roller* largest = nullptr;
    double leastPower = 0, weakestMu = 0, weakestWrap = 0;
    std::string weakestFrom;
    for (const inputs::Roller& roller : press.rollers) {
        const physics::PathArc* arc = book.arc(roller.id);
        if (arc == nullptr || arc->wrap <= 0 || !roller.path.empty()) continue;
        if (roller.diameter && (largest == nullptr || roller.diameter->si() > largest->diameter->si()))
            largest = &roller;
        const std::optional<double> mu = roller.friction ? roller.friction : book.substrate().friction;
        if (!mu) continue;
        const double power = *mu * arc->wrap;
        if (weakest == nullptr || power < leastPower) {
            weakest = &roller;
            leastPower = power;
            weakestMu = *mu;
            weakestWrap = arc->wrap;
            weakestFrom = roller.friction ? "press.web.roller." + roller.id + ".friction" : "substrate.friction";
        }
    }
    if (weakest != nullptr) {
        book.formula("traction.least", leastName, "C1",
                     {{"mu", known(Quantity(weakestMu, Kind::Count), weakestFrom)},
                      {"beta", known(Quantity(weakestWrap, Kind::Angle, "deg"), "path:" + weakest->id)}})
            .advice("The web holds on this roller until one side pulls so many times as hard as the other.");
        book.word("traction.first_to_slip", "Roller that would slip first", weakest->id, "C1, least of all rollers",
                  {given("r", leastName, *book.target("traction.least").value, "target:traction.least")})
            .advice("If it is driven or heavy; a light idler has nothing to slip against.");
    } else {
        const Term why = press.rollers.empty()        ? missing("press.web.roller")
                         : book.mainPath() == nullptr ? lack({book.target("thread.main.length")})
                                                      : missing("substrate.friction");
        book.lacking("traction.least", leastName, Shape::Quantity, why);
        book.lacking("traction.first_to_slip", "Roller that would slip first", Shape::Word, why);
    }
    Term radius = press.rollers.empty()        ? missing("press.web.roller")
                  : book.mainPath() == nullptr ? lack({book.target("thread.main.length")})
                                               : missing("press.web.roller.diameter");
    if (largest != nullptr)
        radius = combine(
            {term(largest->diameter, "press.web.roller." + largest->id + ".diameter")},
            "half of press.web.roller." + largest->id + ".diameter",
            [](const std::vector<double>& v) { return v[0] / 2; }, Kind::Length);
    Stated film = book.formula("traction.air_film", "Air under the web at job speed", "C4",
                               {{"R", radius},
                                {"eta", policy(1.81e-5, Kind::Viscosity, "air_at_20_C")},
                                {"U", fasterSpeeds(book)},
                                {"Tw", runningPerWidth(book)}},
                               "um");
    film.advice(book.substrate().porous
                    ? Text("This web breathes: less air stays under it than computed.")
                    : Text("On the largest roller. Grip begins to go when it reaches the roughness of both."));
}

void stateStops(Book& book)
{
    const inputs::Press& press = book.press();
    const bool us = press.units == UnitSystem::Us;
    Term reserve = press.unwind ? term(press.unwind->stopReserve, "press.unwind.stop_reserve")
                                : missing("press.unwind.stop_reserve");
    Stated stop = book.formula("stop.diameter", "Diameter at which the automatic stop acts", "R6",
                               {{"d", book.coreOuter()}, {"t", book.caliper()}, {"L", reserve}}, us ? "in" : "mm");
    if (const Quantity* q = stop.ready() ? &std::get<Quantity>(stop.ready()->value) : nullptr)
        stop.window(*q, Quantity(q->si() + 0.01, Kind::Length, q->unit()), Rule::Policy,
                    "never below: the web would run off; 10 mm above at most: policy")
            .advice("Reckoned on the outside of the core. Set it here or a little larger.");

    // Even slowing over the measured stop time.
    Term slowing = combine(
        {book.speed(), term(press.stopTime.value, "press.speeds.stop_time")}, "job.speed over press.speeds.stop_time",
        [](const std::vector<double>& v) { return v[0] / v[1]; }, Kind::Acceleration);
    book.formula("stop.distance", "Web that passes while the press stops", "V1.distance",
                 {{"v", book.speed()}, {"tr", policy(0, Kind::Time, "reaction_in_stop_time")}, {"a", slowing}},
                 us ? "ft" : "m")
        .advice("Web that still passes after a stop; not for placing guards or light curtains.");
    Stated time = book.value("stop.emergency_time", "Time to standstill after an emergency stop", "stated",
                             term(press.stopTime.value, "press.speeds.stop_time"), "press profile");
    if (const Quantity* q = time.ready() ? &std::get<Quantity>(time.ready()->value) : nullptr)
        time.window({}, Quantity(q->si() * 1.2, Kind::Time, q->unit()), Rule::Policy, "20 % over the measured time")
            .advice("Longer than this: withdraw the press and have it looked at.");

    for (const inputs::Zone& zone : press.zones) {
        if (endOf(press, zone) != ZoneEnd::Unwind) continue;
        const Term radius = combine(
            {book.diameter()}, "half of the diameter", [](const std::vector<double>& v) { return v[0] / 2; },
            Kind::Length);
        Stated slack = book.formula("stop.unwind.tension", "Tension at the unwind during an emergency stop", "V6",
                                    {{"M", book.target("tension." + zone.id + ".torque")},
                                     {"J", book.target("roll.inertia")},
                                     {"a", slowing},
                                     {"R", radius}},
                                    us ? "lbf" : "N");
        if (const Ready* r = slack.ready(); r && std::get<Quantity>(r->value).si() <= 0)
            slack.advice(
                "The brake as set does not hold this roll: expect slack web and a run-on at an emergency stop.");
        else
            slack.advice("With the brake left as it is set.");
        break;
    }
    for (const inputs::Zone& zone : press.zones) {
        if (endOf(press, zone) != ZoneEnd::Rewind) continue;
        const inputs::Rewind* rewind = rewindOf(press, zone);
        if (rewind == nullptr) continue;
        const Term core = book.target("tension." + zone.id + ".torque").known()
                              ? combine(
                                    {term(book.job().rewindCore, "job.rewind_core"),
                                     term(rewind->coreWall, "press.rewind." + rewind->id + ".core_wall")},
                                    "job.rewind_core + 2 core_wall",
                                    [](const std::vector<double>& v) { return v[0] + 2 * v[1]; }, Kind::Length)
                              : lack({book.target("tension." + zone.id + ".torque")});
        const Term full = term(book.job().rewindDiameter, "job.rewind_diameter");
        const Term mass = evaluated("R5",
                                    {{"D", full},
                                     {"d", core},
                                     {"t", book.caliper()},
                                     {"w", book.width()},
                                     {"g", term(book.substrate().grammage, "substrate.grammage")}},
                                    "mass of the finished roll");
        auto half = [](const Term& t, const std::string& from) {
            return combine(
                {t}, from, [](const std::vector<double>& v) { return v[0] / 2; }, Kind::Length);
        };
        const Term radius = half(full, "half of job.rewind_diameter");
        const Term inertia = evaluated("V4", {{"m", mass}, {"R", radius}, {"r", half(core, "half of the core")}},
                                       "V4 of the finished roll");
        book.formula(
                "stop." + rewind->id + ".tension", "Tension at the rewind during an emergency stop, finished roll",
                "V7",
                {{"T0", book.target("tension." + zone.id + ".total")}, {"J", inertia}, {"a", slowing}, {"R", radius}},
                us ? "lbf" : "N")
            .advice("If the clutch keeps its torque. A weak splice parts here.");
    }
}

void stateSplice(Book& book)
{
    const inputs::Substrate& substrate = book.substrate();
    const Text name = "Splice: how many times the running tension it holds";
    const Text shockName = "Splice: how many times the worst tension in a stop it holds";
    const bool label = substrate.family == "paper_label" || substrate.family == "film_label";
    Term strength = missing("substrate.splice_tape");
    if (substrate.spliceTape) {
        const inputs::SpliceTape& tape = *substrate.spliceTape;
        Term tensile = term(tape.strength, "substrate.splice_tape.strength");
        Term shear = term(tape.shear, "substrate.splice_tape.shear");
        strength = lack({tensile, shear});
        if (tensile.known() && shear.known()) {
            if (tape.bothFaces) {
                tensile = combine(
                    {tensile}, "twice substrate.splice_tape.strength",
                    [](const std::vector<double>& v) { return 2 * v[0]; }, Kind::ForcePerWidth);
                shear = combine(
                    {shear}, "twice substrate.splice_tape.shear", [](const std::vector<double>& v) { return 2 * v[0]; },
                    Kind::ForcePerWidth);
            }
            strength = tensile.value->si() <= shear.value->si() ? tensile : shear;
            const Term web = weakestStrength(book);
            if (web.known() && web.value->si() < strength.value->si()) strength = web;
            if (label && !tape.bothFaces)
                strength = impossible(refuse(
                    "splice.one_face", "substrate." + substrate.id,
                    Text("Taped on one face only, the other ply hangs on a release layer that is made to let go."),
                    Text("Tape both faces, and enter both_faces in the substrate's splice tape.")));
        }
    }
    Stated running = book.formula("splice.margin", name, "P1", {{"S", strength}, {"Tw", highestPerWidth(book)}});
    running.window(Quantity(4, Kind::Count), {}, Rule::Policy, "four at least: policy, the web's own factor")
        .advice("Least of tape, bond and web. Heat in a dryer lowers it.");
    Term worst = missing("press.speeds.stop_time");
    for (const inputs::Rewind& rewind : book.press().rewinds)
        if (!rewind.waste) {
            Term t = book.target("stop." + rewind.id + ".tension");
            worst = combine(
                {t, book.width()}, "target:stop." + rewind.id + ".tension over the width",
                [](const std::vector<double>& v) { return v[0] / v[1]; }, Kind::ForcePerWidth);
            break;
        }
    Stated shock = book.formula("splice.transient_margin", shockName, "P1", {{"S", strength}, {"Tw", worst}});
    shock.window(Quantity(1.5, Kind::Count), {}, Rule::Policy, "one and a half at least: policy");
    for (const Stated* s : {&running, &shock})
        if (const Ready* r = s->ready(); r && r->window.low && std::get<Quantity>(r->value).si() < r->window.low->si())
            book.note(
                Finding{"splice.weak", Severity::Warn, "substrate." + substrate.id,
                        Text("The splice holds only %1 times the tension.", {std::get<Quantity>(r->value).magnitude()}),
                        Text("Use a stronger tape or a longer overlap, or run at less tension.")});
}

}  // namespace taut::targets
