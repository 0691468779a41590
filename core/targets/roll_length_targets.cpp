// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <array>
#include <cmath>

#include "core/targets/roll_length.h"

// How much web a roll has, by the three ways of knowing it, and how much of that can be run.
namespace taut::targets {

namespace {

using Way = LengthChoice::Way;

/// A label that says so much more than the diameters is that of the roll when it was full (policy).
constexpr double kFullRoll = 0.15;

std::string lengthUnit(const Book& book) { return book.press().units == UnitSystem::Us ? "ft" : "m"; }

Arguments geometryOf(const Book& book)
{
    return {{"D", book.countedDiameter()}, {"d", book.coreOuter()}, {"t", book.caliper()}};
}

/// Whether label and weight speak of the roll that is counted.
bool isAsLabelled(const Book& book) { return book.untouched() && !book.onlyLeft(); }

/// How far the material's caliper may lie off, and who says so.
struct Tolerance {
    double share{};
    Rule rule{};
    Text source;
};
Tolerance caliperTolerance(const Book& book)
{
    if (const std::optional<double>& own = book.substrate().caliperTolerance)
        return {*own, Rule::Maker, "the tolerance of the caliper"};
    const Limit usual = book.limit("caliper_tolerance");
    return {usual.si(), usual.rule, usual.source()};
}

/// Which length counts and why, and what to do when they lie too far apart.
Text whichCounts(const Book& book, const LengthChoice& choice, bool fits)
{
    switch (choice.way) {
    case Way::Label:
        return fits ? Text("None needed; the label is used: nobody has opened the roll.")
                    : Text("The label is used, since nobody is said to have opened the roll. Measure the diameter and "
                           "weigh again, and ask whether it was opened.");
    case Way::Diameters:
        if (!book.roll().length)
            return fits ? Text("None needed; the diameters are used: no label says a length.")
                        : Text("The diameters are used, since no label says a length. Measure and weigh again.");
        return choice.fullRoll
                   ? Text("The diameters are used, since the label seems to be that of the roll when it was "
                          "full. Measure the diameter again, and ask whether the roll was opened.")
                   : Text("The diameters are used, since this roll was opened or measured again.");
    case Way::Mass: break;
    }
    return "The mass is used, since the roll was opened and a diameter is missing. Measure it.";
}

/// The lengths that are known against one another: which two lie furthest apart, by how much, which is used and why.
void stateLengthsApart(Book& book, const LengthChoice& choice, const std::array<Term, 3>& ways)
{
    constexpr std::array kSymbols{"Lt", "Ld", "Lm"};
    constexpr std::array kNames{"by the label", "by the diameters", "by the mass"};
    std::vector<Term> lengths;
    std::vector<std::size_t> of;
    Arguments said;
    for (std::size_t i = 0; i < ways.size(); ++i)
        if (ways[i].known()) {
            of.push_back(i);
            lengths.push_back(ways[i]);
            lengths.back().doubt.clear();
            said.emplace_back(kSymbols[i], called(ways[i], kNames[i]));
        }
    const Text name = "How far the lengths of this roll lie apart";
    if (lengths.size() < 2) {
        // Of a roll that something was taken off, only what it is now counts: there is nothing to compare.
        if (!isAsLabelled(book)) return;
        std::vector<Term> lacks;
        for (const std::size_t way : {std::size_t{0}, std::size_t{1}})
            if (!ways[way].known()) lacks.push_back(ways[way]);
        book.lacking("roll.lengths_apart", name, Shape::Quantity, lack(lacks));
        return;
    }
    const Term apart = combine(
        lengths, "",
        [](const std::vector<double>& v) {
            const auto [least, most] = std::minmax_element(v.begin(), v.end());
            return (*most - *least) / *most;
        },
        Kind::Share);
    const Tolerance tolerance = caliperTolerance(book);
    const bool fits = apart.value->si() <= tolerance.share;
    const Text which = whichCounts(book, choice, fits);
    book.value("roll.lengths_apart", name, "rule", apart, "definition", said)
        .in("%")
        .window({}, Quantity(tolerance.share, Kind::Share, "%"), tolerance.rule, tolerance.source)
        .advice(which);

    // The two that lie furthest apart, the label before the diameters before the mass.
    const auto [least, most] = std::minmax_element(
        lengths.begin(), lengths.end(), [](const Term& a, const Term& b) { return a.value->si() < b.value->si(); });
    auto one = static_cast<std::size_t>(least - lengths.begin());
    auto other = static_cast<std::size_t>(most - lengths.begin());
    if (one > other) std::swap(one, other);
    if (one == other) other = 1;  // all the same
    const char* const words = of[one] == 1 ? "The diameters say %1, the mass says %2: %3 apart; up to %4 is usual."
                              : of[other] == 1
                                  ? "The label says %1, the diameters say %2: %3 apart; the caliper is known to %4."
                                  : "The label says %1, the mass says %2: %3 apart; up to %4 is usual.";
    book.note(Finding{
        "roll.lengths_differ", fits ? Severity::Note : Severity::Warn, "roll." + book.roll().id,
        Text(words, {lengths[one].value->magnitude(), lengths[other].value->magnitude(),
                     Magnitude{apart.value->si(), Kind::Share, "%"}, Magnitude{tolerance.share, Kind::Share, "%"}}),
        which});
}

/// What the label's length makes of the caliper, against the material's.
void stateWoundCaliper(Book& book)
{
    const Term label = isAsLabelled(book)
                           ? labelLength(book)
                           : impossible(Finding{"roll.caliper", Severity::Note, "roll." + book.roll().id,
                                                "What a label says of the length is of the roll before anything was "
                                                "taken off: it tells no caliper of what is left.",
                                                "Nothing to do."});
    Stated wound = book.formula("roll.caliper", "Caliper as wound", "R1.caliper",
                                {{"D", book.diameter()}, {"d", book.coreOuter()}, {"L", label}},
                                book.press().units == UnitSystem::Us ? "mil" : "um");
    wound.advice("What a roll of known length says of its thickness, air and pressure included.");
    const Term data = book.caliper();
    if (wound.ready() == nullptr || !data.known()) return;
    const Tolerance tolerance = caliperTolerance(book);
    const double nominal = data.value->si();
    wound.window(Quantity(nominal * (1 - tolerance.share), Kind::Length),
                 Quantity(nominal * (1 + tolerance.share), Kind::Length), tolerance.rule, tolerance.source);
    const bool fits = std::abs(std::get<Quantity>(wound.ready()->value).si() - nominal) <= tolerance.share * nominal;
    wound.advice(
        fits ? Text("Everything is reckoned with the material's own caliper: the two agree within its tolerance, "
                    "and a label's length is no measurement.")
             : Text("Everything is reckoned with the material's own caliper, and this lies beyond its tolerance: "
                    "run a roll off by a counter, and enter the caliper that its length gives."));
}

/// Taking wraps off makes no roll larger; two readings of one roll lie within what is allowed between them.
Stated onlySmaller(Book& book, Stated stripped, const Term& whole)
{
    stripped.most(book.mostAcross(nullptr));
    if (!whole.known()) return stripped;
    const Limit match = book.limit("diameter_match");
    const Quantity& q = *whole.value;
    const Term core = book.coreOuter(Book::Wall::Thinnest);
    const std::optional<Quantity> least =
        core.known() ? std::optional(Quantity(core.value->si(), Kind::Length, q.unit())) : std::nullopt;
    return stripped.window(
        least, Quantity((1 + match.si()) * q.si(), Kind::Length, q.unit()), match.rule,
        Text("no larger than before, and more than the core; %1", {std::vector<Text>{match.source()}}));
}

/// The first less all others.
double lessAll(const std::vector<double>& v)
{
    double left = v.front();
    for (std::size_t i = 1; i < v.size(); ++i) left -= v[i];
    return left;
}

/// What comes off before the roll is run, and what is left of it above the reserve.
void stateUsable(Book& book)
{
    const inputs::Press& press = book.press();
    const bool us = press.units == UnitSystem::Us;
    // Without a diameter, the one that the length makes does for a few outer wraps.
    Term across = book.diameter();
    if (!across.known() && !across.cannot && !book.onlyLeft())
        if (Term made =
                evaluated("R6", {{"d", book.coreOuter()}, {"t", book.caliper()}, {"L", book.target("roll.length")}},
                          "R6 of target:roll.length");
            made.known())
            across = std::move(made);
    const Arguments outer{{"D", across}, {"t", book.caliper()}, {"N", book.row("outer_wraps")}};
    const Text stripName = "Web in the outer wraps taken off", afterName = "Diameter after the outer wraps";
    const Term wraps = evaluated("R2", geometryOf(book), ""), strips = book.row("outer_wraps");
    if (wraps.known() && wraps.value->si() < strips.value->si()) {
        const Finding why =
            refuse("roll.nothing_usable", "roll." + book.roll().id,
                   Text("Nothing of this roll can be run: it has %1 wraps, and %2 outer ones are to come off.",
                        {wraps.value->magnitude(), strips.value->magnitude()}),
                   "Take another roll.");
        book.note(why);
        book.lacking("strip.length", stripName, Shape::Quantity, impossible(why), "definition");
        book.lacking("strip.diameter", afterName, Shape::Quantity, impossible(why), "definition");
    } else if (book.roll().strippedDiameter) {
        const Term left = book.runningDiameter();
        // By what is left of the area, so that a label that counts for the whole roll counts for what is left as well.
        // What came off a roll of which only the rest was measured nobody knows.
        const Term core = book.coreOuter(), whole = book.target("roll.length");
        book.value("strip.length", stripName, "rule",
                   combine(
                       {whole, across, left, core}, "",
                       [](const std::vector<double>& v) {
                           return v[0] * (v[1] * v[1] - v[2] * v[2]) / (v[1] * v[1] - v[3] * v[3]);
                       },
                       Kind::Length),
                   "definition",
                   {{"L", called(whole, "web on the roll")},
                    {"D", called(across, "diameter before")},
                    {"Ds", called(left, "diameter after")},
                    {"d", called(core, "outside of the core")}})
            .in(lengthUnit(book))
            .symbols("s = L (D^2 - Ds^2) / (D^2 - d^2)")
            .advice("By the diameters before and after: so much of the roll is gone.");
        onlySmaller(book, book.value("strip.diameter", afterName, "stated", left, "the roll's data"), across)
            .advice("As it was measured: brake, running time and what is enough for the job go by it.");
    } else {
        book.formula("strip.length", stripName, "R7.length", outer, lengthUnit(book))
            .advice("So many wraps are assumed; take off more until the web is clean and without nicks.");
        onlySmaller(book, book.formula("strip.diameter", afterName, "R7.diameter", outer, us ? "in" : "mm"), across);
    }

    const Term length = book.target("roll.length"), strip = book.target("strip.length");
    const Term reserve = stopReserve(book);
    // Counted by what was left of it, nothing comes off any more.
    std::vector<Term> parts{length};
    Arguments because{{"L", called(length, "web on the roll")}};
    if (!book.onlyLeft()) {
        parts.push_back(strip);
        because.emplace_back("s", called(strip, "outer wraps taken off"));
    }
    const Term stripped =
        combine(parts, book.onlyLeft() ? "target:roll.length" : "target:roll.length - target:strip.length", lessAll,
                Kind::Length);
    parts.push_back(reserve);
    because.emplace_back("r", called(reserve, "reserve at which the automatic stop acts"));
    const Term usable = combine(parts, "", lessAll, Kind::Length);
    Stated stated =
        book.value("roll.usable", "Web of this roll that can be run", "rule", usable, "definition", because);
    stated.in(lengthUnit(book)).advice("What comes off outside and what stays on the core print nothing.");
    if (usable.known() && usable.value->si() <= 0) {
        const Finding why = refuse("roll.nothing_usable", "roll." + book.roll().id,
                                   Text("Nothing of this roll can be run: of its %1 the outer wraps and the reserve of "
                                        "the automatic stop take all.",
                                        {length.value->magnitude()}),
                                   "Take another roll.");
        stated.cannot(why);
        book.note(why);
    }
    const Text runTime = "Running time to the reserve";
    const Term left = book.target("roll.usable");
    if (left.cannot) {
        book.lacking("roll.run_time", runTime, Shape::Quantity, left);
        return;
    }
    book.formula("roll.run_time", runTime, "R8", {{"L", stripped}, {"Lr", reserve}, {"v", book.speed()}}, "min")
        .advice("At job speed, the outer wraps off, until the automatic stop leaves its reserve.");
}

}  // namespace

Term labelLength(const Book& book) { return book.share(term(book.roll().length, "roll.length"), "tag_length", "L"); }

LengthChoice chooseLength(const Book& book)
{
    const inputs::Roll& roll = book.roll();
    const Term byDiameters = evaluated("R1", geometryOf(book), "");
    // A roll much smaller than its label makes it was opened, whether that was said or not: counting on the label runs
    // it out.
    const bool label = roll.length && isAsLabelled(book);
    const bool full = label && byDiameters.known() && roll.length->si() > (1 + kFullRoll) * byDiameters.value->si();
    if (label && !full) return {Way::Label, false};
    const bool weighable =
        !book.onlyLeft() && roll.mass && roll.coreMass && book.width().known() && book.grammage().known();
    return {byDiameters.known() || !weighable ? Way::Diameters : Way::Mass, full};
}

void stateRollLength(Book& book)
{
    const inputs::Roll& roll = book.roll();
    const std::string unit = lengthUnit(book);
    if (roll.core && !book.knowsWall())
        book.note(Finding{
            "roll.core_wall_unknown", Severity::Warn, "roll.core_wall",
            Text("Nobody has entered the wall of this roll's core: it is taken to be %1 to %2 thick. Length "
                 "and mass are known so much the less, and the automatic stop is set for the thickest.",
                 {book.row("core_wall_least").value->magnitude(), book.row("core_wall_most").value->magnitude()}),
            Text("Measure the wall once for each supplier and enter it as core_wall.")});
    const Arguments geometry = geometryOf(book);
    Stated geometric =
        book.formula("roll.length_by_diameter", "Web on the roll, by its diameters", "R1", geometry, unit);
    geometric.advice("A free sheet's caliper is not the wound caliper; a roll of known length teaches it.");

    const Term webMass = combine(
        {book.share(term(roll.mass, "roll.mass"), "mass_reading", "m"), term(roll.coreMass, "roll.core_mass")},
        "roll.mass - roll.core_mass", [](const std::vector<double>& v) { return v[0] - v[1]; }, Kind::Mass);
    const Arguments weighed{{"m", webMass}, {"w", book.width()}, {"g", book.grammage()}};
    Stated massed = book.formula("roll.length_by_mass", "Web on the roll, by its mass", "R4", weighed, unit);
    massed.advice("Good when the roll was weighed; the core's mass must be taken off.");

    const LengthChoice choice = chooseLength(book);
    const Text name = "Web on the roll";
    switch (choice.way) {
    case Way::Label:
        book.value("roll.length", name, "stated", labelLength(book), "roll tag or delivery note")
            .advice("As the roll's label says; compare it with the length by diameters.");
        break;
    case Way::Diameters:
        book.formula("roll.length", name, "R1", geometry, unit).advice("From the diameters measured now.");
        break;
    case Way::Mass:
        book.formula("roll.length", name, "R4", weighed, unit).advice("From the mass, since a diameter is missing.");
        break;
    }
    // A label counts of a roll that nobody opened; what was weighed, until the diameter was measured again.
    const Term label = isAsLabelled(book) ? term(roll.length, "roll.length") : missing("roll.length");
    const bool weighedAsItWas = !book.measuredDiameter() && !book.onlyLeft();
    stateLengthsApart(book, choice, {label, geometric.term(), weighedAsItWas ? massed.term() : missing("roll.mass")});
    stateWoundCaliper(book);
    stateUsable(book);
}

}  // namespace taut::targets
