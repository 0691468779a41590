// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/inputs/sane.h"
#include "core/inputs/spoken.h"
#include "core/targets/book.h"

namespace taut::targets {

namespace {

std::string longUnit(const Book& book) { return book.press().units == UnitSystem::Us ? "ft" : "m"; }

/// What keeps the path from being known: the keys its finding names, or the finding itself.
Term pathLack(const Book& book)
{
    const inputs::Press& press = book.press();
    if (press.rollers.empty()) return missing("press.web.roller");
    if (!book.givenDiameter().known() && !book.roll().strippedDiameter) return missing("roll.outer_diameter");
    const Finding& why = book.paths().error();
    // A missing coordinate is a key to fill in; an impossible lay-out is a contradiction.
    if (why.code == "press.web.needs") return missing(why.subject);
    return impossible(why);
}

void statePathLength(Book& book, const inputs::NamedPath& named, const Text& name)
{
    Arguments parts;
    for (const physics::PathSpan& span : named.path.spans)
        parts.emplace_back("s", called(known(Quantity(span.length, Kind::Length), "path:" + span.from),
                                       Text("from %1 to %2", {span.from, span.to})));
    for (const physics::PathArc& arc : named.path.arcs)
        if (arc.length.si() > 0)
            parts.emplace_back("b", called(known(Quantity(arc.length, Kind::Length), "path:" + arc.roller),
                                           Text("round %1", {arc.roller})));
    book.value("thread." + named.name + ".length", name, "rule",
               known(Quantity(named.path.length(), Kind::Length, longUnit(book)), ""), "V3, sum of spans and arcs",
               parts)
        .advice("From the roll to the rewind along the drawn path; a leader wants a metre more at each end.");
}

void statePathLengths(Book& book)
{
    const inputs::Press& press = book.press();
    const Text name = "Web along the path";
    if (book.paths() && !book.paths()->empty()) {
        for (const inputs::NamedPath& named : *book.paths()) statePathLength(book, named, name);
        return;
    }
    // On a path that leaves the main one the roll plays no part.
    if (const auto* some = book.pathsOfSomeRoll())
        for (const inputs::NamedPath& named : *some)
            if (named.name != "main") statePathLength(book, named, name);
    if (press.lengths && press.lengths->whole) {
        book.value("thread.main.length", name, "stated", term(press.lengths->whole, "press.lengths.whole"),
                   "press profile");
        return;
    }
    Term lackTerm = pathLack(book);
    if (!lackTerm.cannot && press.rollers.empty()) lackTerm.missing = {"press.web.roller"};
    book.lacking("thread.main.length", name, Shape::Quantity, lackTerm, "V3, sum of spans and arcs");
    // Rollers that cannot be threaded were named when the inputs were checked against each other: not said twice.
    if (lackTerm.cannot && !book.isNoted(lackTerm.cannot->text)) book.note(*lackTerm.cannot);
}

Term pull(const Book& book)
{
    const inputs::Press& press = book.press();
    if (press.lengths && press.lengths->tableToRewind)
        return term(press.lengths->tableToRewind, "press.lengths.table_to_rewind");
    const physics::WebPath* path = book.mainPath();
    // Behind the roll's own span it does not matter how large the roll is.
    if (const auto* some = book.pathsOfSomeRoll();
        some != nullptr && press.spliceTable.after != some->front().path.rollers.front().id)
        path = &some->front().path;
    if (path == nullptr) return pathLack(book);
    if (press.spliceTable.after.empty()) return missing("press.splice_table.after");
    const std::optional<Length> way = path->between(press.spliceTable.after, path->rollers.back().id);
    if (!way)
        return impossible(refuse(
            "path.no_splice_table", "press.splice_table.after",
            Text("The splice table follows roller %1, which is not on the main path.", {press.spliceTable.after}),
            Text("Correct splice_table.after in the press's profile.")));
    return known(Quantity(*way, Kind::Length), "path:" + press.spliceTable.after);
}

void stateMotionClass(Book& book)
{
    const inputs::Press& press = book.press();
    // Guidance for presses older than today's standard; the manual and the site's own assessment prevail.
    const char* source = "S81, public guidance for older presses";
    const Text advice =
        "Guidance for older presses: your manual and risk assessment prevail. Measure both; wear makes them grow.";
    if (press.inch.value) {
        const double s = press.inch.value->si();
        const std::string cls = s <= 0.025 ? "true_inch" : s <= 0.075 ? "limited_inch" : "out_of_class";
        book.word("motion.inch_class", "Class of the inch movement", cls, source,
                  {given("i", "travel of one press", *press.inch.value, "press.speeds.inch")})
            .advice(advice);
        if (cls == "out_of_class")
            book.note(Finding{"motion.inch_out_of_class", Severity::Warn, "press." + press.id,
                              Text("One press of the inch control moves the web %1, more than the guidance for set-up.",
                                   {press.inch.value->magnitude()}),
                              Text("Thread at crawl or with the drives isolated, or have the inch set shorter.")});
    } else {
        book.lacking("motion.inch_class", "Class of the inch movement", Shape::Word, missing("press.speeds.inch"),
                     source);
    }
    if (press.crawl.value) {
        const double perMinute = press.crawl.value->si() * 60;
        std::string cls = "out_of_class";
        if (perMinute <= 1.0 + 1e-9)
            cls = "slow_crawl";
        else if (perMinute <= 5.0 + 1e-9)
            cls = press.tripBars ? "continuous_crawl" : "fast_crawl";
        else if (press.tripBars && perMinute <= 10.0 + 1e-9)
            cls = "continuous_crawl";
        book.word("motion.crawl_class", "Class of the crawl movement", cls, source,
                  {given("v", "crawl speed", *press.crawl.value, "press.speeds.crawl")})
            .advice(advice);
        if (cls == "out_of_class")
            book.note(Finding{"motion.crawl_out_of_class", Severity::Warn, "press." + press.id,
                              Text("The slowest hold-to-run movement, %1, is faster than the guidance for set-up.",
                                   {press.crawl.value->magnitude()}),
                              Text("Thread with the drives isolated, or have the press's crawl speed set down.")});
    } else {
        book.lacking("motion.crawl_class", "Class of the crawl movement", Shape::Word, missing("press.speeds.crawl"),
                     source);
    }
}

Text wayOn(inputs::Feed feed)
{
    return feed == inputs::Feed::Over ? Text("onto the core's top") : Text("onto the core's underside");
}

/// The job wants it wound another way than this rewind does first: somebody would thread it by habit.
bool windsOtherThanFirst(const Book& book, const inputs::Rewind& rewind)
{
    const auto wanted = inputs::windFor(book.press(), rewind, book.job().winding);
    return wanted && !rewind.winds.empty() && *wanted != rewind.winds.front() &&
           std::find(rewind.winds.begin(), rewind.winds.end(), *wanted) != rewind.winds.end();
}

/// Over or under, so that the finished roll has its face where the job wants it.
void stateWinding(Book& book, const inputs::Rewind& rewind)
{
    const inputs::Press& press = book.press();
    if (rewind.waste) return;
    const std::string id = "thread." + rewind.id + ".winding";
    const std::string& rewindName = spokenName(press, rewind);
    const Text name("How %1 winds", {rewindName});
    const std::optional<inputs::Feed> wanted = inputs::windFor(press, rewind, book.job().winding);
    if (!wanted) {
        std::vector<std::string> lacks;
        if (!press.printFeed || !press.printWinding) lacks.emplace_back("press.print_side");
        if (!book.job().winding || *book.job().winding == inputs::Winding::Unknown) lacks.emplace_back("job.winding");
        if (lacks.empty() && press.rollers.empty()) lacks.emplace_back("press.web.roller");
        if (lacks.empty() && press.roller(rewind.roller) == nullptr)
            lacks.emplace_back("press.rewind." + rewind.id + ".roller");
        const Finding look{id, Severity::Note, "press.web",
                           Text("Which way %1 must wind is not told by the rollers as they are drawn.", {rewindName}),
                           "Look which side of the web is printed where it arrives."};
        book.lacking(id, name, Shape::Word, lacks.empty() ? impossible(look) : Term{{}, {}, lacks, {}}, "geometry");
        return;
    }
    const bool over = *wanted == inputs::Feed::Over, out = *book.job().winding == inputs::Winding::FaceOut;
    Stated word = book.word(
        id, name, over ? "over" : "under", "geometry",
        {given("winding", "how the finished roll is wound", std::string(out ? "face_out" : "face_in"), "job.winding"),
         given("side", "the feed that shows a face-out roll's face to the plates",
               std::string((*press.printFeed == inputs::Feed::Over) == (*press.printWinding == inputs::Winding::FaceOut)
                               ? "over"
                               : "under"),
               "press.print_side")});
    const Text face = out ? Text("the finished roll then has its face outside, as the job wants it")
                          : Text("the finished roll then has its face inside, as the job wants it");
    word.window({}, {}, Rule::Job, "how the job's finished roll is wound")
        .advice(Text("Lead the web %1: %2.", {std::vector<Text>{wayOn(*wanted)}, std::vector<Text>{face}}));
    if (word.ready() == nullptr) return;  // it winds nothing
    const bool can =
        rewind.winds.empty() || std::find(rewind.winds.begin(), rewind.winds.end(), *wanted) != rewind.winds.end();
    if (!can) {
        word.cannot(inputs::cannotWindFinished(rewindName, out ? inputs::Winding::FaceOut : inputs::Winding::FaceIn));
        return;
    }
    if (windsOtherThanFirst(book, rewind))
        book.note(Finding{"thread.winds_other_way", Severity::Warn, "job.winding",
                          Text("%1 has to wind %2 for this job, not as it does first.",
                               {rewindName, std::vector<Text>{over ? Text("over") : Text("from underneath")}}),
                          Text("Lead the web %1: %2.", {std::vector<Text>{wayOn(*wanted)}, std::vector<Text>{face}})});
}

}  // namespace

void stateThreading(Book& book, bool webInPress)
{
    statePathLengths(book);
    const inputs::Press& press = book.press();
    Term way = webInPress ? pull(book) : book.target("thread.main.length");
    Arguments parts;
    if (way.known()) parts.emplace_back("s", way);
    Term spoken = way;
    if (spoken.known()) spoken.value = spoken.value->in(longUnit(book));
    book.value("thread.pull",
               webInPress ? Text("Web to draw from the splice table to the rewind")
                          : Text("Web to draw from the roll to the rewind"),
               "rule", spoken, "V3, sum of spans and arcs", parts);
    book.formula("thread.inches", "Presses of the inch control to draw it through", "V2.inches",
                 {{"s", way}, {"i", term(press.inch.value, "press.speeds.inch")}})
        .advice("Count on more: the splice is watched through every station.");
    book.formula("thread.crawl_time", "Time at crawl to draw it through", "V2.crawl",
                 {{"s", way}, {"v", term(press.crawl.value, "press.speeds.crawl")}}, "min");
    const Term proving = called(book.row("proving_length"), "web drawn at idle"),
               idle = called(term(press.idle.value, "press.speeds.idle"), "idle speed");
    book.value("thread.proving_time", "Time of the proving run at idle", "rule",
               combine(
                   {proving, idle}, "", [](const std::vector<double>& v) { return v[0] / v[1]; }, Kind::Time),
               "definition", {{"s", proving}, {"v", idle}})
        .in("min")
        .symbols("t = s / v")
        .advice("So long everything runs together for the first time, slow enough to be stopped by eye.");
    for (const inputs::Rewind& rewind : press.rewinds) {
        stateWinding(book, rewind);
        const std::string key = "press.rewind." + rewind.id + ".";
        const std::string& name = spokenName(press, rewind);
        Term wraps = number(rewind.coreWraps, key + "core_wraps", Kind::Count);
        Stated turns = book.value("thread." + rewind.id + ".wraps", Text("%1: wraps round its core", {name}), "stated",
                                  wraps, "press profile");
        if (wraps.known())
            turns.window(*wraps.value, std::nullopt, Rule::Press, "wraps that this press wants on the core")
                .most(Quantity(inputs::sane::kCoreWraps.most, Kind::Count))
                .advice(windsOtherThanFirst(book, rewind)
                            ? Text("Turned by hand with the stop held, %1; three are common practice, no source.",
                                   {std::vector<Text>{wayOn(*inputs::windFor(press, rewind, book.job().winding))}})
                            : Text("Turned by hand with the stop held; three are common practice, no source."));
        book.formula("thread." + rewind.id + ".core_hold",
                     Text("%1: what the wraps hold, as a multiple of the tail's pull", {name}), "C2",
                     {{"mu", book.share(number(rewind.coreFriction, key + "core_friction", Kind::Count),
                                        "friction_tolerance", key + "core_friction")},
                      {"n", wraps}})
            .advice("The tape only has to hold the tail; the wraps hold the web.");
    }
    stateMotionClass(book);
}

}  // namespace taut::targets
