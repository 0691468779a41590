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

/// The hardest pull on any product rewind in an emergency stop, per width of the web that runs there: on the finished
/// roll, or where the roll has just begun.
Term worstInStop(const Book& book)
{
    Term worst = missing("press.speeds.stop_time");
    for (const inputs::Zone& zone : book.press().zones) {
        const inputs::Rewind* rewind =
            endOf(book.press(), zone) == ZoneEnd::Rewind ? rewindOf(book.press(), zone) : nullptr;
        if (rewind == nullptr) continue;
        const std::string stop = "stop." + rewind->id + ".";
        std::vector<std::string> ids{stop + "tension", "tension." + zone.id + ".total"};
        if (book.target(stop + "core_tension").known()) ids.push_back(stop + "core_tension");
        for (const std::string& id : ids) {
            const Term pull = combine(
                {book.target(id), zoneWidth(book, zone)}, "target:" + id + " over the width",
                [](const std::vector<double>& v) { return v[0] / v[1]; }, Kind::ForcePerWidth);
            if (!pull.known()) return pull;
            if (!worst.known() || pull.value->si() > worst.value->si()) worst = pull;
        }
    }
    return worst;
}

}  // namespace

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
    // A cut that leans spreads the joint over more web and eases it into a nip. It is credited with no strength: what
    // the joint gains in length it bears in shear, and the web behind it gains nothing.
    auto margin = [&](const char* id, const Text& what, const Term& pull) {
        return book.formula(id, what, "P1", {{"S", strength}, {"Tw", pull}});
    };
    Stated running = margin("splice.margin", name, highestPerWidth(book));
    running.window(factor.value, {}, factor.rule, factor.source)
        .advice("Least of tape, bond and web. Heat in a dryer lowers it.");
    Stated shock = margin("splice.transient_margin", shockName, worstInStop(book));
    shock.window(inStop.value, {}, inStop.rule, inStop.source)
        .advice("An emergency stop pulls hardest where the web winds up.");
    for (const Stated* s : {&running, &shock})
        if (const Ready* r = s->ready(); r && r->window.low && std::get<Quantity>(r->value).si() < r->window.low->si())
            book.note(
                Finding{"splice.weak", Severity::Warn, "substrate." + substrate.id,
                        Text("The splice holds only %1 times the tension.", {std::get<Quantity>(r->value).magnitude()}),
                        Text("Use a stronger tape or a longer overlap, or run at less tension.")});
}

}  // namespace taut::targets
