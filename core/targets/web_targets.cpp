// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/targets/book.h"
#include "core/targets/setting.h"
#include "core/targets/tension_window.h"

namespace taut::targets {

namespace {

/// What the shown tension of a zone may go up to: the end of its window, or what it is set to where it has none.
Term highestOf(const Book& book, const std::string& id)
{
    Term t = book.target(id);
    if (const Window* window = book.windowOf(id); window != nullptr && window->high) {
        t.value = window->high;
        t.from = t.from + " window.high";
        t.doubt.clear();
    }
    return t;
}

/// The largest tension per width that a zone may run at, inside its window: what a splice has to carry.
Term highestPerWidth(const Book& book)
{
    Term highest = missing("press.zone");
    for (const inputs::Zone& zone : book.press().zones) {
        // A rewind without a lane pulls at no joint.
        if (endOf(book.press(), zone) == ZoneEnd::Waste || book.isLeftOff(zone)) continue;
        Term t = highestOf(book, "tension." + zone.id + ".per_width");
        if (!t.known()) return t;
        if (!highest.known() || t.value->si() > highest.value->si()) highest = t;
    }
    return highest;
}

/// The hardest pull on any product rewind in an emergency stop, per width of the web that runs there: on the finished
/// roll, or where the roll has just begun; from the top of the tension's window, of which a taper leaves its part.
Term worstInStop(const Book& book)
{
    Term worst = missing("press.speeds.stop_time");
    for (const inputs::Zone& zone : book.press().zones) {
        const inputs::Rewind* rewind =
            endOf(book.press(), zone) == ZoneEnd::Rewind ? rewindOf(book.press(), zone) : nullptr;
        // A rewind without a lane winds nothing, and its stop pulls at no joint.
        if (rewind == nullptr || book.isLeftOff(zone)) continue;
        const std::string stop = "stop." + rewind->id + ".", total = "tension." + zone.id + ".total";
        const Term set = book.target(total), top = highestOf(book, total), width = zoneWidth(book, zone);
        const bool pulls = zone.stopAction.empty() || zone.stopAction == "holds";
        const Term none = known(Quantity(0, Kind::Force), "");
        const auto perWidth = [&](const Term& pull, const Term& keeps, const std::string& id) {
            return combine(
                {pull, keeps, set, top, width}, "target:" + id + " from the top of the window, over the width",
                [](const std::vector<double>& v) { return (v[0] + v[1] * (v[3] / v[2] - 1)) / v[4]; },
                Kind::ForcePerWidth);
        };
        const Term finished = pulls ? finishedTension(book, zone) : none;
        std::vector<Term> all{perWidth(book.target(stop + "tension"), finished, stop + "tension"),
                              perWidth(set, set, total)};
        if (book.target(stop + "core_tension").known())
            all.push_back(perWidth(book.target(stop + "core_tension"), set, stop + "core_tension"));
        for (const Term& pull : all) {
            if (!pull.known()) return pull;
            if (!worst.known() || pull.value->si() > worst.value->si()) worst = pull;
        }
    }
    return worst;
}

/// What a joint holds per width, and by which of its parts: that part alone is worth making stronger.
struct Joint {
    enum class Part : std::uint8_t { Tape, Bond, Web };
    Term strength;
    Part weakest = Part::Tape;
    bool oneFace = false;
};

Joint jointOf(const Book& book)
{
    const inputs::Substrate& substrate = book.substrate();
    if (!substrate.spliceTape) return {missing("substrate.splice_tape")};
    const inputs::SpliceTape& tape = *substrate.spliceTape;
    const bool label = substrate.family == "paper_label" || substrate.family == "film_label";
    if (label && tape.bothFaces == false)
        return {impossible(
            refuse("splice.one_face", "substrate." + substrate.id,
                   Text("Taped on one face only, the other ply hangs on a release layer that is made to let go."),
                   Text("Tape both faces, and enter both_faces in the substrate's splice tape.")))};
    Term tensile = term(tape.strength, "substrate.splice_tape.strength");
    Term shear = term(tape.shear, "substrate.splice_tape.shear");
    // A single ply hangs together by itself: where nobody says more, one tape is counted on.
    std::vector<Term> needed{tensile, shear};
    if (label && !tape.bothFaces) needed.push_back(missing("substrate.splice_tape.both_faces"));
    Joint joint{lack(needed), Joint::Part::Tape, !tape.bothFaces.value_or(false)};
    if (!joint.strength.missing.empty()) return joint;
    if (!joint.oneFace) {
        const auto twice = [](const std::vector<double>& v) { return 2 * v[0]; };
        tensile = combine({tensile}, "twice substrate.splice_tape.strength", twice, Kind::ForcePerWidth);
        shear = combine({shear}, "twice substrate.splice_tape.shear", twice, Kind::ForcePerWidth);
    }
    // An overlap hangs on its bond alone, a butt joint on the tape and its bond.
    const bool byBond = tape.joint == "overlap" || shear.value->si() < tensile.value->si();
    joint.strength = byBond ? shear : tensile;
    joint.weakest = byBond ? Joint::Part::Bond : Joint::Part::Tape;
    const Term web = weakestStrength(book);
    if (web.known() && web.value->si() < joint.strength.value->si()) {
        joint.strength = web;
        joint.weakest = Joint::Part::Web;
    }
    return joint;
}

/// Only what makes the weakest part of it stronger.
Text remedyFor(const Joint& joint)
{
    switch (joint.weakest) {
    case Joint::Part::Tape:
        return joint.oneFace
                   ? Text("The tape itself gives way: tape both faces, or take a stronger tape, or run at less "
                          "tension. A longer overlap changes nothing.")
                   : Text("The tape itself gives way: take a stronger tape, or run at less tension. A longer overlap "
                          "changes nothing.");
    case Joint::Part::Bond:
        return joint.oneFace ? Text("The bond gives way: tape both faces, or a longer overlap, or a tape that holds "
                                    "better on this web, or run at less tension.")
                             : Text("The bond gives way: a longer overlap, or a tape that holds better on this web, or "
                                    "run at less tension.");
    case Joint::Part::Web: break;
    }
    return "The web itself gives way, whatever the tape: run at less tension, and enter that range with the job.";
}

/// One finding for both margins, of the one that is worse against its limit: a joint that cannot hold at all stops.
void sayWeak(Book& book, const Joint& joint, Stated& running, Stated& shock)
{
    const auto share = [](const Stated& s) {
        const Ready* r = s.ready();
        return r == nullptr || !r->window.low ? 1.0 : std::get<Quantity>(r->value).si() / r->window.low->si();
    };
    const bool byStop = share(shock) < share(running);
    Stated& worse = byStop ? shock : running;
    if (share(worse) >= 1) return;
    const Quantity holds = std::get<Quantity>(worse.ready()->value), wanted = *worse.ready()->window.low;
    const Text text(byStop ? "The splice holds %1 times the worst tension in a stop; it is to hold %2 times."
                           : "The splice holds %1 times the highest tension of the window; it is to hold %2 times.",
                    {holds.magnitude(), wanted.magnitude()});
    const std::string subject = "substrate." + book.substrate().id;
    const auto parts = [](const Stated& s) { return s.ready() && std::get<Quantity>(s.ready()->value).si() < 1; };
    if (!parts(running) && !parts(shock)) {
        book.note(Finding{"splice.weak", Severity::Warn, subject, text, remedyFor(joint)});
        return;
    }
    const Finding why = refuse("splice.parts", subject, text, remedyFor(joint));
    for (Stated* s : {&running, &shock})
        if (parts(*s)) s->cannot(why);
    book.note(why);
}

}  // namespace

void stateSplice(Book& book)
{
    const Joint joint = jointOf(book);
    const Limit factor = book.limit("splice_factor"), inStop = book.limit("splice_transient");
    // A cut that leans spreads the joint over more web and eases it into a nip. It is credited with no strength: what
    // the joint gains in length it bears in shear, and the web behind it gains nothing.
    auto margin = [&](const char* id, const Text& what, const Term& pull) {
        return book.formula(id, what, "P1", {{"S", joint.strength}, {"Tw", pull}});
    };
    Stated running =
        margin("splice.margin", "Splice: how many times the highest running tension it holds", highestPerWidth(book));
    running.window(factor.value, {}, factor.rule, factor.source())
        .advice("Least of tape, bond and web, at the top of the tension's window. Heat in a dryer lowers it.");
    Stated shock = margin("splice.transient_margin", "Splice: how many times the worst tension in a stop it holds",
                          worstInStop(book));
    shock.window(inStop.value, {}, inStop.rule, inStop.source())
        .advice("An emergency stop pulls hardest where the web winds up.");
    if (joint.strength.cannot) book.note(*joint.strength.cannot);
    sayWeak(book, joint, running, shock);
}

}  // namespace taut::targets
