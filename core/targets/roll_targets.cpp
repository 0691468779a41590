// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <tuple>

#include "core/targets/book.h"

namespace taut::targets {

namespace {

/// A label that says so much more than the diameters is that of the roll when it was full (policy).
constexpr double kFullRoll = 0.15;

std::string lengthUnit(const Book& book) { return book.press().units == UnitSystem::Us ? "ft" : "m"; }

void stateLength(Book& book)
{
    const inputs::Roll& roll = book.roll();
    const std::string unit = lengthUnit(book);
    const Text byDiameter = "Web on the roll, by its diameters";
    const Arguments geometry{{"D", book.diameter()}, {"d", book.coreOuter()}, {"t", book.caliper()}};
    Stated geometric = book.formula("roll.length_by_diameter", byDiameter, "R1", geometry, unit);
    geometric.advice("A free sheet's caliper is not the wound caliper; a roll of known length teaches it.");

    Term webMass = combine(
        {book.share(term(roll.mass, "roll.mass"), "mass_reading", "m"), term(roll.coreMass, "roll.core_mass")},
        "roll.mass - roll.core_mass", [](const std::vector<double>& v) { return v[0] - v[1]; }, Kind::Mass);
    const Arguments weighed{{"m", webMass}, {"w", book.width()}, {"g", book.grammage()}};
    Stated massed = book.formula("roll.length_by_mass", "Web on the roll, by its mass", "R4", weighed, unit);
    massed.advice("Good when the roll was weighed; the core's mass must be taken off.");

    // What the label says holds for a roll that nobody has opened; after that geometry wins (practice). A roll much
    // smaller than its label makes it was opened, whether that was said or not: counting on the label runs it out.
    const Quantity* computedLength = geometric.ready() ? std::get_if<Quantity>(&geometric.ready()->value) : nullptr;
    const bool wasFull =
        roll.length && computedLength != nullptr && roll.length->si() > (1 + kFullRoll) * computedLength->si();
    const bool tagHolds = roll.length && !roll.opened && !book.measuredDiameter() && !wasFull;
    const Text name = "Web on the roll";
    if (tagHolds) {
        book.value("roll.length", name, "stated", book.share(term(roll.length, "roll.length"), "tag_length", "L"),
                   "roll tag or delivery note")
            .advice("As the roll's label says; compare it with the length by diameters.");
    } else if (geometric.ready() != nullptr || massed.ready() == nullptr) {
        Stated used = book.formula("roll.length", name, "R1", geometry, unit);
        used.advice("From the diameters measured now.");
    } else {
        book.formula("roll.length", name, "R4", weighed, unit).advice("From the mass, since a diameter is missing.");
    }

    if (roll.length && geometric.ready() != nullptr) {
        const Quantity& stated = roll.length->quantity();
        const Quantity computed = *geometric.term().value;
        const double apart = std::abs(stated.si() - computed.si()) / computed.si();
        const double tolerance = book.substrate().caliperTolerance.value_or(book.row("caliper_tolerance").value->si());
        const bool fits = apart <= tolerance;
        book.note(Finding{
            "roll.lengths_differ", fits ? Severity::Note : Severity::Warn, "roll." + roll.id,
            Text("The label says %1, the diameters say %2: %3 apart; the caliper is known to %4.",
                 {stated.magnitude(), computed.magnitude(), Magnitude{apart, Kind::Share, "%"},
                  Magnitude{tolerance, Kind::Share, "%"}}),
            !tagHolds && wasFull && !roll.opened && !book.measuredDiameter()
                ? Text("The diameters are used. Measure the diameter again, and ask whether the roll was opened.")
            : !tagHolds ? Text("The diameters are used: this roll was opened or measured again.")
            : fits      ? Text("None needed; the label is used.")
                        : Text("The label is used. Measure the diameter again, and ask whether the roll was opened.")});
    }
    // The three lengths against one another, whichever of them are known.
    std::vector<Term> ways;
    Arguments said;
    for (const auto& [symbol, of, what] :
         {std::tuple{"Lt", term(roll.length, "roll.length"), "by the label"},
          std::tuple{"Ld", geometric.term(), "by the diameters"}, std::tuple{"Lm", massed.term(), "by the mass"}})
        if (of.known()) {
            ways.push_back(of);
            ways.back().doubt.clear();
            said.emplace_back(symbol, called(of, what));
        }
    const Text apartName = "How far the lengths of this roll lie apart";
    if (ways.size() < 2) {
        book.lacking("roll.lengths_apart", apartName, Shape::Quantity, missing("roll.length"));
    } else {
        const Term apart = combine(
            ways, "",
            [](const std::vector<double>& v) {
                const auto [least, most] = std::minmax_element(v.begin(), v.end());
                return (*most - *least) / *most;
            },
            Kind::Share);
        const Limit caliper = book.limit("caliper_tolerance");
        const std::optional<double>& own = book.substrate().caliperTolerance;
        book.value("roll.lengths_apart", apartName, "rule", apart, "definition", said)
            .in("%")
            .window({}, own ? Quantity(*own, Kind::Share, "%") : caliper.value.in("%"),
                    own ? Rule::Maker : caliper.rule, own ? Text("the tolerance of the caliper") : caliper.source)
            .advice(tagHolds
                        ? Text("The label is used: the roll is unopened. Further apart than the caliper's tolerance, "
                               "measure and weigh again.")
                        : Text("The label is not used: the roll was opened or measured again."));
    }
    Term knownLength =
        tagHolds ? book.share(term(roll.length, "roll.length"), "tag_length", "L") : missing("roll.length");
    book.formula("roll.caliper", "Caliper as wound", "R1.caliper",
                 {{"D", book.diameter()}, {"d", book.coreOuter()}, {"L", knownLength}},
                 book.press().units == UnitSystem::Us ? "mil" : "um")
        .advice("What the roll itself says of its thickness, air and pressure included.");
}

void stateMass(Book& book)
{
    const inputs::Roll& roll = book.roll();
    const std::string unit = book.press().units == UnitSystem::Us ? "lb" : "kg";
    const std::string lengthUnitSmall = book.press().units == UnitSystem::Us ? "in" : "mm";
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
    Term computed = combine(
        {web.term(), core}, "target:roll.web_mass + core", [](const std::vector<double>& v) { return v[0] + v[1]; },
        Kind::Mass);
    // Where a scale and the geometry differ the larger counts: it hangs on the lift.
    const bool weighed = roll.mass && !roll.opened && !book.measuredDiameter();
    Term mass = computed;
    if (weighed && (!computed.known() || roll.mass->si() >= computed.value->si())) mass = term(roll.mass, "roll.mass");
    book.value("roll.mass", "Mass of the roll with its core", "rule", mass, "definition",
               {{"web", called(web.term(), "web on the roll")},
                {"core", called(core, "core")},
                {"stated", called(weighed ? term(roll.mass, "roll.mass") : Term{}, "roll as weighed")}})
        .in(unit)
        .advice("Web and core; where a scale and the geometry differ the larger is used.");
    book.formula("roll.wraps", "Wraps on the roll", "R2",
                 {{"D", book.diameter()}, {"d", book.coreOuter()}, {"t", book.caliper()}});
    book.formula("roll.inertia", "Inertia of the roll", "V4",
                 {{"m", book.target("roll.mass")},
                  {"R", combine(
                            {book.diameter()}, "half of the diameter",
                            [](const std::vector<double>& v) { return v[0] / 2; }, Kind::Length)},
                  {"r", combine(
                            {term(roll.core, "roll.core")}, "half of roll.core",
                            [](const std::vector<double>& v) { return v[0] / 2; }, Kind::Length)}});
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
        book.lacking("roll.feed", name, Shape::Word, Term{{}, {}, lacks, {}});
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
                                {std::string(over ? "over" : "under")}),
                           Text("Take a roll wound the other way, or have this one rewound.")));
}

}  // namespace

void stateRoll(Book& book)
{
    if (book.roll().core && !book.knowsWall())
        book.note(Finding{
            "roll.core_wall_unknown", Severity::Warn, "roll.core_wall",
            Text("Nobody has entered the wall of this roll's core: it is taken to be %1 to %2 thick. Length "
                 "and mass are known so much the less, and the automatic stop is set for the thickest.",
                 {book.row("core_wall_least").value->magnitude(), book.row("core_wall_most").value->magnitude()}),
            Text("Measure the wall once for each supplier and enter it as core_wall.")});
    stateLength(book);
    stateMass(book);
    stateFeed(book);
    const inputs::Press& press = book.press();
    Term reserve = press.unwind ? term(press.unwind->stopReserve, "press.unwind.stop_reserve")
                                : missing("press.unwind.stop_reserve");
    book.formula("roll.run_time", "Running time to the reserve", "R8",
                 {{"L", book.target("roll.length")}, {"Lr", reserve}, {"v", book.speed()}}, "min")
        .advice("At job speed, until the automatic stop leaves its reserve.");
    const Limit match = book.limit("diameter_match");
    const double reach = book.diameter().known() ? match.si() * book.diameter().value->si() : 0;
    book.value("roll.diameter", "Outer diameter, measured", "stated", book.diameter(), "the roll's data")
        .within(reach, reach, match.rule, match.source)
        .advice("Measure twice at right angles and take the mean; a tape round the roll gives the circumference, not "
                "this.");
    Stated width = book.value("roll.width", "Width of the web, measured", "stated", book.width(), "the roll's data");
    if (book.job().webWidth) {
        const Quantity& ordered = book.job().webWidth->quantity();
        width.window(Quantity(ordered.si() - book.row("job_width_under").value->si(), Kind::Length, ordered.unit()),
                     Quantity(ordered.si() + book.row("job_width_over").value->si(), Kind::Length, ordered.unit()),
                     Rule::Job, Text("ordered width; policy rows job_width_under and job_width_over"));
    }
    width.advice("Guides and sensors follow the width that is there, not the one ordered.");
}

void stateJob(Book& book)
{
    const inputs::Job& job = book.job();
    const bool us = book.press().units == UnitSystem::Us;
    const Text repeatName = "Repeat";
    const std::string small = us ? "in" : "mm";
    Term teeth = job.gear ? known(Quantity(job.gear->teeth, Kind::Count), "job.gear.teeth") : missing("job.gear");
    if (job.gear && job.gear->circularPitch)
        book.formula("job.repeat", repeatName, "F1.circular",
                     {{"Z", teeth}, {"p", term(job.gear->circularPitch, "job.gear.circular_pitch")}}, small);
    else if (job.gear && job.gear->diametralPitch)
        book.formula("job.repeat", repeatName, "F1.diametral",
                     {{"Z", teeth},
                      {"P", known(Quantity(*job.gear->diametralPitch / 0.0254, Kind::CountPerLength, "1/in"),
                                  "job.gear.diametral_pitch")}},
                     small);
    else if (job.gear && job.gear->module)
        book.formula("job.repeat", repeatName, "F1.module",
                     {{"Z", teeth}, {"m", term(job.gear->module, "job.gear.module")}}, small);
    else
        book.lacking("job.repeat", repeatName, Shape::Quantity, missing("job.gear"));

    Stated length = book.formula("job.length", "Web the job needs", "F5",
                                 {{"Q", number(job.quantity, "job.quantity", Kind::Count)},
                                  {"across", number(job.across, "job.across")},
                                  {"around", number(job.around, "job.around")},
                                  {"R", book.target("job.repeat")},
                                  {"waste", number(job.waste, "job.waste", Kind::Share)}},
                                 lengthUnit(book));
    length.advice("Waste included; make-ready and splices come out of that allowance.");

    length.advice("The waste share included.");
    const auto orNone = [](const inputs::Maybe<Kind::Length>& entry, const char* key) {
        return entry ? term(entry, key) : known(Quantity(0, Kind::Length), std::string(key) + " not given: none");
    };
    // What set-up takes; the splices of this roll lose what the job says of one.
    Stated whole = book.formula("job.web", "Web the job needs, set-up included", "F5.total",
                                {{"Lj", length.term()},
                                 {"Lm", orNone(job.makeReady, "job.make_ready")},
                                 {"n", number(std::optional<int>(book.roll().splices.value_or(0)), "roll.splices")},
                                 {"Ls", orNone(job.spliceWaste, "job.splice_waste")},
                                 {"Lp", known(Quantity(0, Kind::Length), "the web that fills the path stays in it")}},
                                lengthUnit(book));
    whole.advice("With what make-ready and splices take; short runs are mostly that.");
    if (job.repeatWanted && job.gear) {
        const Term wanted = term(job.repeatWanted, "job.repeat_wanted");
        const Text teethName = "Teeth for the repeat wanted";
        Stated found =
            job.gear->circularPitch
                ? book.formula("job.teeth", teethName, "F2",
                               {{"R", wanted}, {"p", term(job.gear->circularPitch, "job.gear.circular_pitch")}})
            : job.gear->module ? book.formula("job.teeth", teethName, "F2.module",
                                              {{"R", wanted}, {"m", term(job.gear->module, "job.gear.module")}})
                               : book.formula("job.teeth", teethName, "F2.diametral",
                                              {{"R", wanted},
                                               {"P", known(Quantity(job.gear->diametralPitch.value_or(0) / 0.0254,
                                                                    Kind::CountPerLength, "1/in"),
                                                           "job.gear.diametral_pitch")}});
        found.advice("The next whole tooth up; what is over is gap between the labels.");
    }

    Term onRoll = book.target("roll.length");
    const Term both = lack({whole.term(), onRoll});
    const Text coveredName = "This roll is enough for the job";
    if (both.cannot || !both.missing.empty()) {
        book.lacking("job.covered", coveredName, Shape::YesNo, both);
        book.lacking("job.enough", "How surely this roll is enough for the job", Shape::Word, both);
        book.lacking("job.rolls", "Rolls like this one", Shape::Quantity, both);
        book.lacking("job.splices", "Splices to expect", Shape::Quantity, both);
        return;
    }
    const double need = whole.term().value->si();
    const double have = onRoll.value->si();
    const bool covered = have >= need;
    // What the length is known to decides between enough and probably (practice): short of it is no.
    const double band = std::hypot(expandedOf(onRoll.doubt), expandedOf(whole.term().doubt));
    const std::string answer = !covered ? "no" : have - band >= need ? "enough" : "probably";
    std::vector<Given> why{given("L", "web on the roll", *onRoll.value, "target:roll.length"),
                           given("N", "web the job needs", *whole.term().value, "target:job.web"),
                           given("u", "how well the two lengths are known",
                                 Quantity(band, Kind::Length, onRoll.value->unit()), "target:roll.length uncertainty")};
    const Text next = "Have the next roll and a splice ready.";
    const Text perhaps =
        "It is enough by less than the roll's length is known to: have the next roll ready, and watch the diameter.";
    book.yesNo("job.covered", coveredName, covered, "definition", why)
        .advice(answer == "enough" ? Text("One roll does it.")
                : covered          ? perhaps
                                   : next);
    book.word("job.enough", "How surely this roll is enough for the job", answer, "definition", why)
        .symbols("enough when L - u >= N, probably when L >= N, else no")
        .advice(answer == "enough" ? Text("One roll does it, however the length is measured.")
                : covered          ? perhaps
                                   : next);
    const double rolls = std::ceil(need / have);
    const Arguments because{{"L", called(onRoll, "web on the roll")}, {"N", called(whole.term(), "web the job needs")}};
    book.value("job.rolls", "Rolls like this one", "rule", known(Quantity(rolls, Kind::Count), ""), "definition",
               because);
    book.value("job.splices", "Splices to expect", "rule",
               known(Quantity(rolls - 1 + book.roll().splices.value_or(0), Kind::Count), ""), "definition", because)
        .advice("Between rolls and inside this one; tell whoever takes the finished rolls.");
    if (!covered)
        book.note(Finding{
            "job.roll_too_short", Severity::Warn, "roll." + book.roll().id,
            Text("The job needs %1, this roll has %2.", {whole.term().value->magnitude(), onRoll.value->magnitude()}),
            Text("Plan %1 rolls, or take a longer one.", {static_cast<std::int64_t>(rolls)})});
}

}  // namespace taut::targets
