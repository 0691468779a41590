// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/inputs/path_of.h"
#include "core/inputs/spoken.h"
#include "core/targets/aim.h"
#include "core/targets/book.h"

namespace taut::targets {

namespace {

/// The straight web from one roller of the main path to another, both in fixed places, where the whole path cannot be
/// drawn: what it lacks elsewhere says nothing here.
Term fixedStretch(const Book& book, const std::string& from, const std::string& to)
{
    if (const Result<physics::WebPath> part = inputs::fixedStretch(book.press(), from, to))
        if (const auto way = part->between(from, to)) return known(Quantity(*way, Kind::Length), "path:" + from);
    return lack({book.target("thread.main.length")});
}

Term spanBefore(const Book& book, const std::string& roller)
{
    if (const physics::WebPath* path = book.mainPath()) {
        for (const physics::PathSpan& span : path->spans)
            if (span.to == roller) return known(Quantity(span.length, Kind::Length), "path:" + span.from);
        return missing("press.web.roller." + roller);
    }
    if (book.press().lengths && book.press().lengths->guideEntry)
        return term(book.press().lengths->guideEntry, "press.lengths.guide_entry");
    return fixedStretch(book, inputs::neighbourOf(book.press(), roller, true), roller);
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
    if (guide.rollers.size() == 2 && book.mainPath() == nullptr)
        return fixedStretch(book, guide.rollers[0], guide.rollers[1]);
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
            .within(place.si(), place.si(), place.rule, place.source())
            .most(term(press.betweenFrames, "").value)
            .advice("The middle of the sensor's window stands over the edge of the web that is there.");
    }
    if (guide.guides.empty() || guide.guides == "centre")
        book.value(id + "spacing", "Distance between the two sensors", "rule", book.width(), "definition",
                   {{"w", book.width()}});
    book.value(id + "sensor_mid", "Sensor's reading with the edge where it belongs", "stated",
               known(Quantity(0.5, Kind::Share), "policy:sensor_middle"), "half the window: common practice, no source")
        .in("%")
        .within(sensorMiddle.si(), sensorMiddle.si(), sensorMiddle.rule, sensorMiddle.source())
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
    return fixedStretch(book, guide.rollers.back(), inputs::neighbourOf(book.press(), guide.rollers.back(), false));
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
    const SharedString unit = after.value->unit();
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

/// The span that decides what a guide does to the web: a displacement guide twists it alike before and behind, and of
/// two spans the shorter is strained most.
Term decidingSpan(const Book& book, const inputs::Guide& guide, const Term& entry)
{
    if (guide.kind == "steering" || guide.rollers.empty()) return entry;
    const Term exit = exitSpan(book, guide);
    if (!entry.known() || !exit.known()) return lack({entry, exit});
    return exit.value->si() < entry.value->si() ? exit : entry;
}

/// What a guide can shift the web by: to the end of its angle, or to where the web begins to hang slack.
Term stateReach(Book& book, const inputs::Guide& guide)
{
    const std::string id = "guide." + guide.id + ".", key = "press.guide." + guide.id + ".";
    const char* small = book.press().units == UnitSystem::Us ? "in" : "mm";
    const bool steering = guide.kind == "steering";
    const Term entry = decidingSpan(
        book, guide, guide.rollers.empty() ? missing(key + "rollers") : spanBefore(book, guide.rollers.front()));
    const Term most = term(guide.angleMost, key + "angle_most");
    book.formula(id + "edge_strain", "Strain of the web's edge at the end of the stroke", steering ? "G5" : "G8",
                 {{steering ? "theta" : "alpha", most}, {"w", book.width()}, {"L", entry}}, "%")
        .advice(steering
                    ? Text("Compare it with the running strain: above that an edge goes slack.")
                    : Text("The edges beyond the middle, in the shorter of the spans before and behind the guide. At "
                           "three times the running strain the middle hangs slack."));
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
    Term way = reach.term();
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

/// The share of a guide that an off-centre roll may take; on one that can do little for this web, what a roll is placed
/// to where no guide follows: nobody places one nearer with a tape.
double rollShare(const Book& book, const Term& goes)
{
    return std::max(book.limit("centre_stroke").si(), book.limit("centre_unguided").si() / goes.value->si());
}
Text shareSource(const Book& book, const Term& goes)
{
    const Limit share = book.limit("centre_stroke");
    if (rollShare(book, goes) <= share.si()) return share.source();
    return {"%1; no nearer than without a guide: %2",
            {std::vector<Text>{share.source()}, std::vector<Text>{book.limit("centre_unguided").source()}}};
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
                                       Text("Set the roll over until its web runs in the middle, or take another."));
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
    const Quantity most(goes.known() ? rollShare(book, goes) : half.si(), Kind::Share, "%");
    used.window({}, most, half.rule, goes.known() ? shareSource(book, goes) : half.source())
        .advice("What the roll takes the guide no longer has for the web.");
    if (const Ready* r = used.ready(); r != nullptr && std::get<Quantity>(r->value).si() > most.si())
        book.note(Finding{"guide.stroke_used", Severity::Warn, "press.guide." + guide.id,
                          Text(reachEnds ? "This roll's wander takes %1 of what the guide can shift this web, at most "
                                           "%2 is meant to go there."
                                         : "This roll's wander takes %1 of the guide's stroke, at most %2 is meant to "
                                           "go there.",
                               {std::get<Quantity>(r->value).magnitude(), shownLimit(most, book.press().units, false)}),
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
                    goes.known() ? resting.rule : Rule::None, resting.source())
            .advice("If it rests to one side, move the roll, not the sensor.");
        const Limit wander = book.limit("web_wander");
        book.value(id + "wander", "Wander of the web behind the guide at steady speed", "stated",
                   known(Quantity(0, Kind::Length, small), "policy:web_wander"), "S73")
            .within(wander.si(), wander.si(), wander.rule, wander.source())
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

void stateAlignment(Book& book)
{
    const inputs::Press& press = book.press();
    Term centre = term(press.centreline, "press.centreline");
    const bool guided = !press.guides.empty();
    const Limit centring = book.limit(guided ? "centre_guided" : "centre_unguided");
    double reach = centring.si();
    Rule rule = centring.rule;
    Text source = centring.source();
    // An off-centre roll may take only so much of what the guide can shift this web.
    const Limit share = book.limit("centre_stroke");
    for (const inputs::Guide& guide : press.guides) {
        const Term goes = strokeFor(term(guide.stroke, "press.guide." + guide.id + ".stroke"),
                                    book.target("guide." + guide.id + ".reach"));
        const double left = goes.known() ? rollShare(book, goes) * goes.value->si() : reach;
        if (left >= reach) continue;
        reach = left;
        rule = share.rule;
        source = shareSource(book, goes);
    }
    book.value("align.centre", "Roll centre from the frame", "stated", centre, "press profile")
        .within(reach, reach, rule, source)
        .most(term(press.betweenFrames, "").value)
        .advice(press.measureFrom
                    ? Text("Measured from the inner face of the %1, after the roll is retained: that moves it.",
                           {std::vector<Text>{inputs::spokenName(*press.measureFrom)}})
                    : Text("Measured after the roll is retained: that moves it."));
    // The edges lie where the roll's centre is aimed at, and as near.
    centre = book.settled("align.centre");
    const Window* aimed = book.windowOf("align.centre");
    const bool fromOperator = press.measureFrom.value_or(inputs::Side::Operator) == inputs::Side::Operator;
    Term from = press.measureFrom ? Term{} : missing("press.measure_from");
    for (const bool operatorEdge : {true, false}) {
        const std::string id = operatorEdge ? "align.operator_edge" : "align.drive_edge";
        const Text name =
            operatorEdge ? Text("Operator-side edge from the frame") : Text("Drive-side edge from the frame");
        const double side = operatorEdge == fromOperator ? -1 : 1;
        Term sideTerm = press.measureFrom ? known(Quantity(side, Kind::Count), "press.measure_from") : from;
        Stated edge = book.formula(id, name, "G10.edge", {{"c", centre}, {"w", book.width()}, {"side", sideTerm}},
                                   centre.known() ? centre.value->unit() : "");
        if (edge.ready() == nullptr || aimed == nullptr) continue;
        const Quantity& at = std::get<Quantity>(edge.ready()->value);
        const auto moved = [&](const std::optional<Quantity>& end) -> std::optional<Quantity> {
            if (!end) return std::nullopt;
            return Quantity(at.si() + (end->si() - centre.value->si()), at.kind(), at.unit());
        };
        edge.window(moved(aimed->low), moved(aimed->high), aimed->rule, aimed->source);
    }
    const Limit mark = book.limit("mark");
    book.value("align.mark", "Centre mark from the web's edge", "rule",
               combine(
                   {book.width()}, "half of the width", [](const std::vector<double>& v) { return v[0] / 2; },
                   Kind::Length),
               "definition", {{"w", book.width()}})
        .within(mark.si(), mark.si(), mark.rule, mark.source())
        .advice("Mark the middle of the lead edge; it makes centring quick.");
}

}  // namespace taut::targets
