// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/targets/book.h"

namespace taut::targets {

namespace {

Term spanBefore(const Book& book, const std::string& roller)
{
    if (const physics::WebPath* path = book.mainPath()) {
        for (const physics::PathSpan& span : path->spans)
            if (span.to == roller) return known(Quantity(span.length, Kind::Length), "path:" + span.from);
        return missing("press.web.roller." + roller);
    }
    if (book.press().lengths && book.press().lengths->guideEntry)
        return term(book.press().lengths->guideEntry, "press.lengths.guide_entry");
    return lack({book.target("thread.main.length")});
}

/// Of the zone in which a guide stands: the unwind's.
const inputs::Zone* steeredZone(const inputs::Press& press)
{
    for (const inputs::Zone& zone : press.zones)
        if (endOf(press, zone) == ZoneEnd::Unwind) return &zone;
    return nullptr;
}
Term runningStrain(const Book& book)
{
    const inputs::Zone* zone = steeredZone(book.press());
    return zone == nullptr ? missing("press.zone") : book.target("tension." + zone->id + ".strain");
}

Term guideSpan(const Book& book, const inputs::Guide& guide)
{
    if (const physics::WebPath* path = book.mainPath(); path != nullptr && guide.rollers.size() == 2) {
        if (const auto way = path->between(guide.rollers[0], guide.rollers[1]))
            return known(Quantity(*way, Kind::Length), "path:" + guide.rollers[0]);
    }
    if (book.press().lengths && book.press().lengths->guideSpan)
        return term(book.press().lengths->guideSpan, "press.lengths.guide_span");
    return guide.rollers.empty() ? missing("press.guide." + guide.id + ".rollers")
                                 : spanBefore(book, guide.rollers.front());
}

void stateSensors(Book& book, const inputs::Guide& guide)
{
    const inputs::Press& press = book.press();
    const std::string id = "guide." + guide.id + ".";
    const bool fromOperator = press.measureFrom.value_or(inputs::Side::Operator) == inputs::Side::Operator;
    const Limit place = book.limit("edge_place"), sensorMiddle = book.limit("sensor_middle");
    for (const bool operatorSide : {true, false}) {
        const bool has = guide.guides.empty() || guide.guides == "centre" ||
                         guide.guides == (operatorSide ? "operator_edge" : "drive_edge");
        if (!has) continue;
        const Term side = press.measureFrom ? known(Quantity(operatorSide == fromOperator ? -1 : 1, Kind::Count),
                                                    "press.measure_from")
                                            : missing("press.measure_from");
        book.formula(
                id + (operatorSide ? "operator_sensor" : "drive_sensor"),
                operatorSide ? Text("Operator-side sensor from the frame") : Text("Drive-side sensor from the frame"),
                "G10.edge", {{"c", term(press.centreline, "press.centreline")}, {"w", book.width()}, {"side", side}},
                press.centreline ? press.centreline->quantity().unit() : "")
            .within(place.si(), place.si(), place.rule, place.source)
            .advice("The middle of the sensor's window stands over the edge of the web that is there.");
    }
    if (guide.guides.empty() || guide.guides == "centre")
        book.value(id + "spacing", "Distance between the two sensors", "rule", book.width(), "definition",
                   {{"w", book.width()}});
    book.value(id + "sensor_mid", "Sensor's reading with the edge where it belongs", "stated",
               known(Quantity(0.5, Kind::Share), "policy:sensor_middle"), "half the window: common practice, no source")
        .in("%")
        .within(sensorMiddle.si(), sensorMiddle.si(), sensorMiddle.rule, sensorMiddle.source)
        .advice("Half covered, half open: then it sees both ways equally far.");
}

/// From the guide's last roller to the next.
Term exitSpan(const Book& book, const inputs::Guide& guide)
{
    if (guide.rollers.empty()) return missing("press.guide." + guide.id + ".rollers");
    if (const physics::WebPath* path = book.mainPath()) {
        if (const physics::PathSpan* span = path->spanAfter(guide.rollers.back()))
            return known(Quantity(span->length, Kind::Length), "path:" + span->from);
        return missing("press.web.roller." + guide.rollers.back());
    }
    if (book.press().lengths && book.press().lengths->guideExit)
        return term(book.press().lengths->guideExit, "press.lengths.guide_exit");
    return lack({book.target("thread.main.length")});
}

/// Where along the web the sensor of a displacement or steering guide stands; an unwind's or rewind's goes by its
/// stand.
void stateSensorPlace(Book& book, const inputs::Guide& guide)
{
    if (guide.kind != "displacement" && guide.kind != "steering") return;
    const std::string key = "press.guide." + guide.id + ".";
    const Term after = term(guide.sensorAfter, key + "sensor_after"), span = exitSpan(book, guide);
    const Term both = lack({after, span});
    const Text name = "Sensor behind the guide's last roller";
    if (both.cannot || !both.missing.empty()) {
        book.lacking("guide." + guide.id + ".sensor_after", name, Shape::Quantity, both);
        return;
    }
    const std::string unit = after.value->unit();
    const double third = span.value->si() / 3;
    book.value("guide." + guide.id + ".sensor_after", name, "stated", after, "press profile",
               {{"x", after}, {"L", called(span, "span behind the guide")}})
        .symbols("x, at most L / 3")
        .window(Quantity(0, Kind::Length, unit), Quantity(third, Kind::Length, unit), Rule::Table,
                "S69: within the first third of the span behind the guide")
        .advice("As near to the guide's last roller as it will go: further on it sees too late, and the guide hunts.");
    if (after.value->si() > third)
        book.note(Finding{"guide.sensor_far", Severity::Warn, key + "sensor_after",
                          Text("The sensor stands %1 behind the guide, in a span of %2: it sees the web too late.",
                               {after.value->magnitude(), Magnitude{span.value->si(), Kind::Length, unit}}),
                          Text("Move it into the first third of the span, as near to the guide as it will go.")});
}

/// What a guide can shift the web by: to the end of its angle, or to where the web begins to hang slack.
Term stateReach(Book& book, const inputs::Guide& guide)
{
    const std::string id = "guide." + guide.id + ".", key = "press.guide." + guide.id + ".";
    const char* small = book.press().units == UnitSystem::Us ? "in" : "mm";
    const bool steering = guide.kind == "steering";
    const Term entry = guide.rollers.empty() ? missing(key + "rollers") : spanBefore(book, guide.rollers.front());
    const Term most = term(guide.angleMost, key + "angle_most");
    book.formula(id + "edge_strain", "Strain of the web's edge at the end of the stroke", steering ? "G5" : "G8",
                 {{steering ? "theta" : "alpha", most}, {"w", book.width()}, {"L", entry}}, "%")
        .advice(steering
                    ? Text("Compare it with the running strain: above that an edge goes slack.")
                    : Text("The edges beyond the middle. At three times the running strain the middle hangs slack."));
    const Stated slack =
        book.formula(id + "slack_angle", "Angle of the guide at which the web begins to hang slack",
                     steering ? "G5.limit" : "G8.limit",
                     {{"e", runningStrain(book)}, {"w", book.width()}, {"L", entry}}, "deg")
            .advice(steering ? Text("Turned further, one edge of the web carries nothing.")
                             : Text("Twisted further, the middle of the web carries nothing and the edges all."));
    if (!steering && guide.rollers.size() != 2) return missing(key + "rollers");
    const Term limit = slack.term();
    const bool slackFirst = limit.known() && most.known() && limit.value->si() < most.value->si();
    const Term& angle = slackFirst ? limit : most;
    const Text name = slackFirst ? Text("What the guide shifts the web before it hangs slack")
                                 : Text("What the guide shifts the web at its largest angle");
    const inputs::Zone* zone = steeredZone(book.press());
    const Arguments bending{
        {"T", zone == nullptr ? missing("press.zone") : book.target("tension." + zone->id + ".total")},
        {"E", book.modulus()},
        {"w", book.width()},
        {"t", book.caliper()},
        {"L", entry},
        {"theta", angle}};
    const Stated reach =
        steering
            ? book.formula(id + "reach", name, "G3", bending, small)
                  .advice("The web bends in the span before the guide; a longer span reaches further. Less than its "
                          "stroke says that the angle ends first.")
            : book.formula(id + "reach", name, "G7", {{"L", guideSpan(book, guide)}, {"alpha", angle}}, small)
                  .advice("Less than its stroke says that the angle ends first.");
    const Term way = reach.term();
    if (slackFirst && way.known())
        book.note(Finding{"guide.slack_first", Severity::Note, "press.guide." + guide.id,
                          Text(steering ? "Turned beyond %1, one edge of this web hangs slack. The guide can turn %2; "
                                          "until then it shifts the web %3."
                                        : "Twisted beyond %1, the middle of this web hangs slack. The guide can turn "
                                          "%2; until then it shifts the web %3.",
                               {limit.value->magnitude(), most.value->magnitude(), way.value->magnitude()}),
                          Text("Load the roll so that the guide has little to do, and look for a slack edge when it "
                               "stands far out.")});
    return way;
}

/// How far a guide goes for this web: its stroke, or what it can shift the web by where that ends first.
Term strokeFor(const Term& stroke, const Term& reach)
{
    return stroke.known() && reach.known() && reach.value->si() < stroke.value->si() ? reach : stroke;
}

/// What this roll's wander takes of a guide, against its stroke and against what it can shift this web.
void stateStroke(Book& book, const inputs::Guide& guide, const Term& reach)
{
    const std::string id = "guide." + guide.id + ".";
    const Term stroke = term(guide.stroke, "press.guide." + guide.id + ".stroke");
    const Term error = combine(
        {term(book.roll().offCentre, "roll.off_centre")}, "roll.off_centre",
        [](const std::vector<double>& v) { return std::abs(v[0]); }, Kind::Length);
    Stated needed = book.value(id + "stroke_needed", "Stroke that this roll's wander takes", "rule", error,
                               "definition", {{"y", term(book.roll().offCentre, "roll.off_centre")}});
    const Term goes = strokeFor(stroke, reach);
    const bool reachEnds = goes.from != stroke.from;
    if (stroke.known()) {
        const Quantity& way = *goes.value;
        needed.window({}, way, Rule::Press,
                      reachEnds ? Text("what the guide can shift this web each way")
                                : Text("the guide's stroke each way"));
        if (error.known() && error.value->si() > way.si()) {
            const Finding why = refuse("guide.stroke_too_short", "press.guide." + guide.id,
                                       Text("This roll wanders %1, the guide reaches %2 each way.",
                                            {error.value->magnitude(), way.magnitude()}),
                                       Text("Set the roll over by the difference, or take another."));
            needed.cannot(why);
            book.note(why);
        }
    }
    const Limit half = book.limit("centre_stroke");
    Stated used =
        book.formula(id + "stroke_used",
                     reachEnds ? Text("Share of what the guide can shift this web that this roll's wander takes")
                               : Text("Share of the stroke that this roll's wander takes"),
                     "G11", {{"y", error}, {"s", goes}}, "%");
    used.window({}, half.value.in("%"), half.rule, half.source)
        .advice("What the roll takes the guide no longer has for the web.");
    if (const Ready* r = used.ready(); r != nullptr && std::get<Quantity>(r->value).si() > half.si())
        book.note(Finding{"guide.stroke_used", Severity::Warn, "press.guide." + guide.id,
                          Text(reachEnds ? "This roll's wander takes %1 of what the guide can shift this web, at most "
                                           "%2 is meant to go there."
                                         : "This roll's wander takes %1 of the guide's stroke, at most %2 is meant to "
                                           "go there.",
                               {std::get<Quantity>(r->value).magnitude(), half.value.in("%").magnitude()}),
                          Text("Set the roll over until its web runs in the middle, or take another.")});
}

}  // namespace

void stateGuides(Book& book)
{
    for (const inputs::Guide& guide : book.press().guides) {
        const std::string id = "guide." + guide.id + ".";
        const char* small = book.press().units == UnitSystem::Us ? "in" : "mm";
        stateSensors(book, guide);
        stateSensorPlace(book, guide);
        const Term stroke = term(guide.stroke, "press.guide." + guide.id + ".stroke");
        const Term reach = stateReach(book, guide);
        stateStroke(book, guide, reach);
        const Term goes = strokeFor(stroke, reach);
        const Limit resting = book.limit("guide_rest");
        book.value(id + "rest", "Guide at rest, from its middle", "stated",
                   known(Quantity(0, Kind::Length, small), "policy:guide_rest"), "policy")
            .window(goes.known() ? std::optional(Quantity(-resting.si() * goes.value->si(), Kind::Length, small))
                                 : std::nullopt,
                    goes.known() ? std::optional(Quantity(resting.si() * goes.value->si(), Kind::Length, small))
                                 : std::nullopt,
                    goes.known() ? resting.rule : Rule::None, resting.source)
            .advice("If it rests to one side, move the roll, not the sensor.");
        const Limit wander = book.limit("web_wander");
        book.value(id + "wander", "Wander of the web behind the guide at steady speed", "stated",
                   known(Quantity(0, Kind::Length, small), "policy:web_wander"), "S73")
            .within(wander.si(), wander.si(), wander.rule, wander.source)
            .advice("More than this: look upstream before you touch the guide.");
        book.formula(id + "response_time", "How long the web takes to follow the guide", "D5",
                     {{"L", guideSpan(book, guide)}, {"v", book.speed()}}, "s")
            .advice("At crawl it takes far longer: wait before you judge.");
        if (guide.sensor == "infrared" && book.substrate().clear)
            book.note(refuse("guide.sensor_blind", "press.guide." + guide.id,
                             Text("Light passes through this web: an infrared edge sensor does not see it."),
                             Text("Fit an ultrasonic sensor, or guide on a printed line.")));
    }
}

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
            along.within(off, off, mid.rule, mid.source)
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
                        mid.source)
                .advice("From the middle it can follow the print to both sides; across goes by the same share.");
        book.value(id + "across", Text("Station %1: register left across the web, each way", {name}), "stated",
                   term(station.registerAcross, key + "register_across"), "press profile")
            .advice("When its adjuster stands at its mid mark.");
    }
    const Limit drift = book.limit("printed_repeat");
    const Term repeat = book.target("job.repeat");
    const Term off =
        repeat.known() ? known(Quantity(0, Kind::Length, us ? "in" : "mm"), "policy:printed_repeat") : repeat;
    Stated printed = book.value("register.printed_repeat", "Ten printed repeats, longer than ten by the gear", "rule",
                                off, "definition", {{"R", called(repeat, "repeat by the gear")}});
    printed.symbols("x = P - 10 R, P measured");
    if (repeat.known())
        printed
            .within(drift.si() * 10 * repeat.value->si(), drift.si() * 10 * repeat.value->si(), drift.rule,
                    drift.source)
            .advice("Measured over ten on the web let go: off this says undercut, tape or too much tension.");
    for (const inputs::Zone& zone : book.press().zones) {
        if (zone.control != inputs::Control::Draw) continue;
        book.formula("register.repeat_change", "By what a repeat is shorter when the web is let go", "D1.repeat",
                     {{"R", book.target("job.repeat")}, {"e", book.target("tension." + zone.id + ".strain")}},
                     us ? "in" : "mm")
            .advice("A die or a finisher that works on the slack web meets the shorter repeat.");
        break;
    }
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
            .window(Quantity(-most.si(), Kind::Length), most.value, most.rule, most.source)
            .advice("Off this, the print is longer or shorter than the gear says, and the pressure wrong.");
    }
    // What of the cells reaches the web: from a quarter (public rule, S79) to a half (an ink maker's chart, S80), one
    // share for the film and for the mass.
    const Term least = book.row("anilox_share_least"), most = book.row("anilox_share_most");
    const Term reaches = doubted(combine(
                                     {least, most}, "middle of " + least.from + " and " + most.from,
                                     [](const std::vector<double>& v) { return (v[0] + v[1]) / 2; }, Kind::Share),
                                 (most.value->si() - least.value->si()) / 2, "k");
    const bool usual = least.from.rfind("policy:", 0) == 0 && most.from.rfind("policy:", 0) == 0;
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
