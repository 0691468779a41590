// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/targets/book.h"
#include "core/targets/setting.h"
#include "core/targets/tension_window.h"

namespace taut::targets {

namespace {

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

void stateStops(Book& book)
{
    const inputs::Press& press = book.press();
    const bool us = press.units == UnitSystem::Us;
    Term reserve = press.unwind ? term(press.unwind->stopReserve, "press.unwind.stop_reserve")
                                : missing("press.unwind.stop_reserve");
    Stated stop = book.formula("stop.diameter", "Diameter at which the automatic stop acts", "R6",
                               {{"d", book.coreOuter(Book::Wall::Thickest)}, {"t", book.caliper()}, {"L", reserve}},
                               us ? "in" : "mm");
    if (const Quantity* q = stop.ready() ? &std::get<Quantity>(stop.ready()->value) : nullptr) {
        stop.window(*q, Quantity(q->si() + 0.01, Kind::Length, q->unit()), Rule::Policy,
                    "never below: the web would run off; 10 mm above at most: policy")
            .advice("Reckoned on the outside of the core. Set it here or a little larger.");
        if (!book.knowsWall())
            stop.advice(
                Text("The core's wall is not known: reckoned with one of %1, the thickest, so that the stop comes "
                     "early and never too late. Measure the wall.",
                     {book.row("core_wall_most").value->magnitude()}));
    }

    // Even slowing over the measured stop time; an emergency stop may be quicker than an ordinary one.
    auto over = [&](const std::optional<Quantity>& time, const std::string& key) {
        return combine(
            {book.speed(), term(time, key)}, "job.speed over " + key,
            [](const std::vector<double>& v) { return v[0] / v[1]; }, Kind::Acceleration);
    };
    const Term ordinary = over(press.stopTime.value, "press.speeds.stop_time");
    const bool quicker = press.emergencyStopTime.value.has_value();
    const std::string emergencyKey = quicker ? "press.speeds.emergency_stop_time" : "press.speeds.stop_time";
    const std::optional<Quantity>& emergencyTime = quicker ? press.emergencyStopTime.value : press.stopTime.value;
    const Term slowing = over(emergencyTime, emergencyKey);
    book.formula("stop.distance", "Web that passes while the press stops", "V1.distance",
                 {{"v", book.speed()},
                  {"tr", known(Quantity(0, Kind::Time), "policy:reaction_in_stop_time")},
                  {"a", ordinary}},
                 us ? "ft" : "m")
        .advice("Web that still passes after a stop; not for placing guards or light curtains.");
    const Limit late = book.limit("stop_time_over");
    Stated time = book.value("stop.emergency_time", "Time to standstill after an emergency stop", "stated",
                             term(emergencyTime, emergencyKey), "press profile");
    if (const Quantity* q = time.ready() ? &std::get<Quantity>(time.ready()->value) : nullptr)
        time.window({}, Quantity(q->si() * (1 + late.si()), Kind::Time, q->unit()), late.rule, late.source)
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
        if (const Ready* r = slack.ready(); r && std::get<Quantity>(r->value).si() <= 0)
            book.note(
                Finding{"stop.slack", Severity::Warn, "press.zone." + zone.id,
                        Text("In an emergency stop from job speed the unwind goes slack: the brake as set does not "
                             "hold this roll."),
                        Text("Run slower while the roll is large, and look for a slack web before starting again.")});
        book.formula("stop.unwind.hold_torque", "Torque that would keep the unwind's tension in an emergency stop",
                     "V6.hold",
                     {{"T", book.target("tension." + zone.id + ".total")},
                      {"J", book.target("roll.inertia")},
                      {"a", slowing},
                      {"R", radius}},
                     us ? "lbf in" : "N m")
            .advice("Hold it against the torque on the roll: what is missing comes out as slack.");
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
        const Term mass = evaluated(
            "R5",
            {{"D", full}, {"d", core}, {"t", book.caliper()}, {"w", zoneWidth(book, zone)}, {"g", book.grammage()}},
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
            // An overlap hangs on its bond alone, a butt joint on the tape and its bond.
            strength = tape.joint == "overlap" || shear.value->si() < tensile.value->si() ? shear : tensile;
            const Term web = weakestStrength(book);
            if (web.known() && web.value->si() < strength.value->si()) strength = web;
            if (label && !tape.bothFaces)
                strength = impossible(refuse(
                    "splice.one_face", "substrate." + substrate.id,
                    Text("Taped on one face only, the other ply hangs on a release layer that is made to let go."),
                    Text("Tape both faces, and enter both_faces in the substrate's splice tape.")));
        }
    }
    const Limit factor = book.limit("splice_factor"), inStop = book.limit("splice_transient");
    // A leaning cut is opened only by the pull square to it.
    const inputs::Maybe<Kind::Angle>& cut = book.press().spliceTable.angle;
    auto margin = [&](const char* id, const Text& what, const Term& pull) {
        Arguments arguments{{"S", strength}, {"Tw", pull}};
        if (cut) arguments.emplace_back("alpha", term(cut, "press.splice_table.angle"));
        return book.formula(id, what, cut ? "P5.margin" : "P1", std::move(arguments));
    };
    Stated running = margin("splice.margin", name, highestPerWidth(book));
    running.window(factor.value, {}, factor.rule, factor.source)
        .advice("Least of tape, bond and web. Heat in a dryer lowers it.");
    // The hardest pull on any product rewind, over the web that runs there.
    Term worst = missing("press.speeds.stop_time");
    for (const inputs::Zone& zone : book.press().zones) {
        const inputs::Rewind* rewind =
            endOf(book.press(), zone) == ZoneEnd::Rewind ? rewindOf(book.press(), zone) : nullptr;
        if (rewind == nullptr) continue;
        const Term pull = combine(
            {book.target("stop." + rewind->id + ".tension"), zoneWidth(book, zone)},
            "target:stop." + rewind->id + ".tension over the width",
            [](const std::vector<double>& v) { return v[0] / v[1]; }, Kind::ForcePerWidth);
        if (!worst.known() || !pull.known() || pull.value->si() > worst.value->si()) worst = pull;
        if (!worst.known()) break;
    }
    Stated shock = margin("splice.transient_margin", shockName, worst);
    shock.window(inStop.value, {}, inStop.rule, inStop.source)
        .advice("An emergency stop pulls hardest where the finished roll winds up.");
    for (const Stated* s : {&running, &shock})
        if (const Ready* r = s->ready(); r && r->window.low && std::get<Quantity>(r->value).si() < r->window.low->si())
            book.note(
                Finding{"splice.weak", Severity::Warn, "substrate." + substrate.id,
                        Text("The splice holds only %1 times the tension.", {std::get<Quantity>(r->value).magnitude()}),
                        Text("Use a stronger tape or a longer overlap, or run at less tension.")});
}

}  // namespace taut::targets
