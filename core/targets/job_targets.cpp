// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/targets/roll_length.h"

namespace taut::targets {

namespace {

std::string lengthUnit(const Book& book) { return book.press().units == UnitSystem::Us ? "ft" : "m"; }

/// The splices that a roll like this one has inside it.
Term splicesInside(const Book& book)
{
    const std::optional<int>& said = book.roll().splices;
    return number(std::optional<int>(said.value_or(0)), said ? "roll.splices" : "roll.splices not given: none");
}

/// So little of the roll when it was full, and nobody plans a job with its like (policy).
constexpr double kRemnant = 0.25;

/// A roll that something was taken off until little was left, by its label or its file.
bool isRemnant(const Book& book)
{
    const Term left = book.target("roll.length");
    if ((book.untouched() && !book.onlyLeft() && !chooseLength(book).fullRoll) || !left.known()) return false;
    const inputs::Roll& roll = book.roll();
    Term full = term(roll.length, "roll.length");
    if (!full.known() && book.measuredDiameter())
        full = evaluated(
            "R1",
            {{"D", term(roll.outerDiameter, "roll.outer_diameter")}, {"d", book.coreOuter()}, {"t", book.caliper()}},
            "");
    return full.known() && left.value->si() < kRemnant * full.value->si();
}

Finding remnantSaid(const Book& book, const Term& usable)
{
    return Finding{"job.roll_remnant", Severity::Note, "roll." + book.roll().id,
                   Text("This roll is nearly used up: %1 of it can be run. Rolls and splices are planned by full ones.",
                        {usable.value->magnitude()}),
                   "Have the next roll ready, and plan with that one."};
}

/// How many rolls like this one: each has `usable` metres less what its joint and its own splices lose, but the first,
/// whose splices the job's web counts already.
void stateRolls(Book& book, const Term& usable, const Term& need, const Term& lostAtSplice)
{
    const Term inside = splicesInside(book);
    const Term lost = combine(
        {lostAtSplice, inside}, lostAtSplice.from + " at the joint and each splice inside",
        [](const std::vector<double>& v) { return v[0] * (1 + v[1]); }, Kind::Length);
    const double each = usable.value->si() - lost.value->si();
    const Text rollsName = "Rolls like this one", splicesName = "Splices to expect";
    if (isRemnant(book)) {
        const Term never = impossible(remnantSaid(book, usable));
        book.lacking("job.rolls", rollsName, Shape::Quantity, never);
        book.lacking("job.splices", splicesName, Shape::Quantity, never);
        return;
    }
    if (each <= 0) {
        const Term never = impossible(refuse("job.splices_take_all", "job.splice_waste",
                                             Text("What is lost at the splices, %1 a roll, is as much as a roll like "
                                                  "this one has.",
                                                  {lost.value->magnitude()}),
                                             "Take longer rolls, or correct what a splice loses."));
        book.lacking("job.rolls", rollsName, Shape::Quantity, never);
        book.lacking("job.splices", splicesName, Shape::Quantity, never);
        return;
    }
    const double rolls = std::max(1.0, std::ceil((need.value->si() - lost.value->si()) / each));
    const Stated stated =
        book.value("job.rolls", rollsName, "rule", known(Quantity(rolls, Kind::Count), ""), "definition",
                   {{"U", called(usable, "web of this roll that can be run")},
                    {"N", called(need, "web the job needs")},
                    {"w", called(lost, "web lost at the joint to the next roll and inside it")}});
    book.value("job.splices", splicesName, "rule",
               known(Quantity(rolls * (1 + inside.value->si()) - 1, Kind::Count), ""), "definition",
               {{"n", called(stated.term(), "rolls planned")}, {"s", called(inside, "splices inside each")}})
        .advice("Between the rolls and inside each of them; tell whoever takes the finished rolls.");
}

/// Whether this roll is enough, how surely, and how many of its like if it is not: all by what of it can be run.
void stateEnough(Book& book, const Term& need, const Term& lostAtSplice)
{
    const Term usable = book.target("roll.usable");
    const Term both = lack({need, usable});
    const Text coveredName = "This roll is enough for the job",
               enoughName = "How surely this roll is enough for the job";
    if (both.cannot || !both.missing.empty()) {
        book.lacking("job.covered", coveredName, Shape::YesNo, both);
        book.lacking("job.enough", enoughName, Shape::Word, both);
        book.lacking("job.rolls", "Rolls like this one", Shape::Quantity, both);
        book.lacking("job.splices", "Splices to expect", Shape::Quantity, both);
        return;
    }
    const double wanted = need.value->si(), have = usable.value->si();
    const bool covered = have >= wanted;
    // What the length is known to decides between enough and probably (practice): short of it is no.
    const double band = std::hypot(expandedOf(usable.doubt), expandedOf(need.doubt));
    const std::string answer = !covered ? "no" : have - band >= wanted ? "enough" : "probably";
    std::vector<Given> why{given("U", "web of this roll that can be run", *usable.value, "target:roll.usable"),
                           given("N", "web the job needs", *need.value, "target:job.web"),
                           given("u", "how well the two lengths are known",
                                 Quantity(band, Kind::Length, usable.value->unit()), "target:roll.usable uncertainty")};
    const Text next("%1 short: have the next roll stand by, and a splice ready.",
                    {Magnitude{wanted - have, Kind::Length, need.value->unit()}});
    const Text perhaps =
        "It is enough by less than the roll's length is known to: have the next roll ready, and watch the diameter.";
    book.yesNo("job.covered", coveredName, covered, "definition", why)
        .advice(answer == "enough" ? Text("One roll does it.")
                : covered          ? perhaps
                                   : next);
    book.word("job.enough", enoughName, answer, "definition", why)
        .symbols("enough when U - u >= N, probably when U >= N, else no")
        .advice(answer == "enough" ? Text("One roll does it, however the length is measured.")
                : covered          ? perhaps
                                   : next);
    stateRolls(book, usable, need, lostAtSplice);
    if (covered) return;
    const Term rolls = book.target("job.rolls");
    book.note(Finding{"job.roll_too_short", Severity::Warn, "roll." + book.roll().id,
                      Text("The job needs %1; of this roll %2 can be run, outer wraps and reserve taken off.",
                           {need.value->magnitude(), usable.value->magnitude()}),
                      rolls.known()
                          ? Text("Plan %1 rolls, or take a longer one.", {static_cast<std::int64_t>(rolls.value->si())})
                      : isRemnant(book) ? Text("It is nearly used up: have a full roll ready, and plan with that one.")
                                        : Text("Take a longer one.")});
}

}  // namespace

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
    length.advice("The waste share included.");
    const auto orNone = [](const inputs::Maybe<Kind::Length>& entry, const char* key) {
        return entry ? term(entry, key) : known(Quantity(0, Kind::Length), std::string(key) + " not given: none");
    };
    const Term lostAtSplice = orNone(job.spliceWaste, "job.splice_waste");
    // What set-up takes; the splices of this roll lose what the job says of one.
    Stated whole = book.formula("job.web", "Web the job needs, set-up included", "F5.total",
                                {{"Lj", length.term()},
                                 {"Lm", orNone(job.makeReady, "job.make_ready")},
                                 {"n", splicesInside(book)},
                                 {"Ls", lostAtSplice},
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

    stateEnough(book, whole.term(), lostAtSplice);
}

}  // namespace taut::targets
