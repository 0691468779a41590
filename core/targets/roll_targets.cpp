// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/targets/roll_length.h"

namespace taut::targets {

namespace {

void stateMass(Book& book)
{
    const inputs::Roll& roll = book.roll();
    const std::string unit = book.press().units == UnitSystem::Us ? "lb" : "kg";
    Stated web = book.formula("roll.web_mass", "Mass of the web", "R5",
                              {{"D", book.diameter()},
                               {"d", book.coreOuter()},
                               {"t", book.caliper()},
                               {"w", book.width()},
                               {"g", book.grammage()}},
                              unit);
    Term core = term(roll.coreMass, "roll.core_mass");
    if (!core.known()) {
        // A paper tube of 700 kg/m3: common practice, no source. A kilogram or two on a roll of sixty.
        core = combine(
            {book.coreOuter(), term(roll.core, "roll.core"), book.width()}, "policy:core_density",
            [](const std::vector<double>& v) {
                constexpr double kQuarterPi = 0.78539816339744830962, kTube = 700.0;
                return kTube * kQuarterPi * (v[0] * v[0] - v[1] * v[1]) * v[2];
            },
            Kind::Mass);
    }
    const auto plusCore = [&core](const Term& of, const char* from) {
        return combine(
            {of, core}, from, [](const std::vector<double>& v) { return v[0] + v[1]; }, Kind::Mass);
    };
    // Where tag, geometry and scale differ the largest counts, since it hangs on the lift (practice). What is said of
    // the full roll says nothing of one that was opened.
    const Term labelled =
        book.untouched() && roll.length
            ? combine(
                  {labelLength(book), book.width(), book.grammage()}, "roll.length times width and grammage",
                  [](const std::vector<double>& v) { return v[0] * v[1] * v[2]; }, Kind::Mass)
            : missing("roll.length");
    const Term scale = book.untouched() ? term(roll.mass, "roll.mass") : missing("roll.mass");
    const struct {
        Term mass;
        Text who;
    } ways[] = {{plusCore(web.term(), "target:roll.web_mass + core"),
                 "By the diameters, which give the most of all ways: it hangs on the lift."},
                {plusCore(labelled, "roll.length times width and grammage, + core"),
                 "By the label's length, which gives the most of all ways: it hangs on the lift."},
                {scale, "As weighed, which is the most of all ways: it hangs on the lift."}};
    Term mass = ways[0].mass;
    Text who = ways[0].who;
    for (const auto& way : ways)
        if (way.mass.known() && (!mass.known() || way.mass.value->si() > mass.value->si())) {
            mass = way.mass;
            who = way.who;
        }
    book.value("roll.mass", "Mass of the roll with its core", "rule", mass, "definition",
               {{"web", called(web.term(), "web on the roll, by the diameters")},
                {"label", called(labelled, "web on the roll, by the label's length")},
                {"core", called(core, "core")},
                {"stated", called(scale, "roll as weighed")}})
        .in(unit)
        .advice(who);
    book.formula("roll.wraps", "Wraps on the roll", "R2",
                 {{"D", book.countedDiameter()}, {"d", book.coreOuter()}, {"t", book.caliper()}});
    const auto half = [](const Term& diameter, const std::string& from) {
        return combine(
            {diameter}, from, [](const std::vector<double>& v) { return v[0] / 2; }, Kind::Length);
    };
    Term unwound = combine(
        {book.target("roll.mass"), core}, "target:roll.mass - core",
        [](const std::vector<double>& v) { return std::max(0.0, v[0] - v[1]); }, Kind::Mass);
    if (book.onlyLeft())
        unwound = evaluated("R5",
                            {{"D", book.runningDiameter()},
                             {"d", book.coreOuter()},
                             {"t", book.caliper()},
                             {"w", book.width()},
                             {"g", book.grammage()}},
                            "R5 of roll.stripped_diameter");
    else if (roll.strippedDiameter)
        unwound = combine(
            {unwound, book.diameter(), book.runningDiameter(), book.coreOuter()}, unwound.from + ", of what was left",
            [](const std::vector<double>& v) {
                return v[0] * (v[2] * v[2] - v[3] * v[3]) / (v[1] * v[1] - v[3] * v[3]);
            },
            Kind::Mass);
    book.formula("roll.inertia", "Inertia of the roll", "V4.roll",
                 {{"m", unwound},
                  {"R", half(book.runningDiameter(),
                             roll.strippedDiameter ? "half of roll.stripped_diameter" : "half of the diameter")},
                  {"r", half(book.coreOuter(), "half of the core's outside")},
                  {"mc", core},
                  {"b", half(term(roll.core, "roll.core"), "half of roll.core")}});
}

void stateFeed(Book& book)
{
    const inputs::Press& press = book.press();
    const inputs::Roll& roll = book.roll();
    const Text name = "How the roll hangs";
    std::vector<std::string> lacks;
    if (!press.printFeed || !press.printWinding) lacks.emplace_back("press.print_side");
    if (roll.winding == inputs::Winding::Unknown) lacks.emplace_back("roll.winding");
    if (!lacks.empty()) {
        book.lacking("roll.feed", name, Shape::Word, Term{{}, {}, lacks, {}}, "geometry");
        return;
    }
    const bool same = roll.winding == *press.printWinding;
    const bool over = same == (*press.printFeed == inputs::Feed::Over);
    const inputs::Feed feed = over ? inputs::Feed::Over : inputs::Feed::Under;
    const std::string winding = roll.winding == inputs::Winding::FaceOut ? "face_out" : "face_in";
    Stated word = book.word(
        "roll.feed", name, over ? "over" : "under", "geometry",
        {given("winding", "how the roll is wound", winding, "roll.winding"),
         given("side", "the feed that shows a face-out roll's face to the plates",
               std::string((*press.printFeed == inputs::Feed::Over) == (*press.printWinding == inputs::Winding::FaceOut)
                               ? "over"
                               : "under"),
               "press.print_side")});
    word.window({}, {}, Rule::Press, "the press's print side")
        .advice(over ? Text("Hang it so that the web leaves the roll's top: then its face meets the plates.")
                     : Text("Hang it so that the web leaves the roll's underside: then its face meets the plates."));
    const bool can =
        !press.unwind || press.unwind->feeds.empty() ||
        std::find(press.unwind->feeds.begin(), press.unwind->feeds.end(), feed) != press.unwind->feeds.end();
    if (!can)
        word.cannot(refuse("roll.wound_wrong_way", "roll." + roll.id,
                           Text("Wound like this, the roll would print on its back: this unwind cannot be fed %1.",
                                {std::vector<Text>{over ? Text("over") : Text("under")}}),
                           Text("Take a roll wound the other way, or have this one rewound.")));
}

}  // namespace

void stateRoll(Book& book)
{
    stateRollLength(book);
    stateMass(book);
    stateFeed(book);
    const Limit match = book.limit("diameter_match");
    const Term diameter = book.givenDiameter();
    const double reach = diameter.known() ? match.si() * diameter.value->si() : 0;
    book.value("roll.diameter", "Outer diameter, measured", "stated", diameter, "the roll's data")
        .within(reach, reach, match.rule, match.source())
        .most(book.mostAcross(nullptr))
        .advice("Measure twice at right angles and take the mean; a tape round the roll gives the circumference, not "
                "this.");
    Stated width = book.value("roll.width", "Width of the web, measured", "stated", book.width(), "the roll's data");
    if (book.job().webWidth) {
        const Quantity& ordered = book.job().webWidth->quantity();
        width.window(Quantity(ordered.si() - book.row("job_width_under").value->si(), Kind::Length, ordered.unit()),
                     Quantity(ordered.si() + book.row("job_width_over").value->si(), Kind::Length, ordered.unit()),
                     Rule::Job, Text("ordered width; policy rows job_width_under and job_width_over"));
    }
    width.most(book.mostWide());
    width.advice("Guides and sensors follow the width that is there, not the one ordered.");
}

}  // namespace taut::targets
