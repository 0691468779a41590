// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>

#include "core/targets/book.h"

namespace taut::targets {

namespace {

std::string longUnit(const Book& book) { return book.press().units == UnitSystem::Us ? "ft" : "m"; }

/// What keeps the path from being known: the keys its finding names, or the finding itself.
Term pathLack(const Book& book)
{
    const inputs::Press& press = book.press();
    if (press.rollers.empty()) return missing("press.web.roller");
    if (!book.givenDiameter().known()) return missing("roll.outer_diameter");
    const Finding& why = book.paths().error();
    // A missing coordinate is a key to fill in; an impossible lay-out is a contradiction.
    if (why.code == "press.web.needs") return missing(why.subject);
    return impossible(why);
}

void statePathLengths(Book& book)
{
    const inputs::Press& press = book.press();
    const Text name = "Web along the path";
    if (book.paths() && !book.paths()->empty()) {
        for (const inputs::NamedPath& named : *book.paths()) {
            Arguments parts;
            for (const physics::PathSpan& span : named.path.spans)
                parts.emplace_back("s", called(known(Quantity(span.length, Kind::Length), "path:" + span.from),
                                               Text("from %1 to %2", {span.from, span.to})));
            for (const physics::PathArc& arc : named.path.arcs)
                if (arc.length.si() > 0)
                    parts.emplace_back("b", called(known(Quantity(arc.length, Kind::Length), "path:" + arc.roller),
                                                   Text("round %1", {arc.roller})));
            book.value("thread." + named.name + ".length", name, "rule",
                       known(Quantity(named.path.length(), Kind::Length, longUnit(book)), ""),
                       "V3, sum of spans and arcs", parts)
                .advice("From the roll to the rewind along the drawn path; a leader wants a metre more at each end.");
        }
        return;
    }
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
    for (const inputs::Rewind& rewind : press.rewinds) {
        const std::string key = "press.rewind." + rewind.id + ".";
        Term wraps = number(rewind.coreWraps, key + "core_wraps", Kind::Count);
        Stated turns = book.value("thread." + rewind.id + ".wraps", Text("Wraps round the core of %1", {rewind.roller}),
                                  "stated", wraps, "press profile");
        if (wraps.known())
            turns.window(*wraps.value, std::nullopt, Rule::Press, "wraps that this press wants on the core")
                .advice("Turned by hand with the stop held; three are common practice, no source.");
        book.formula("thread." + rewind.id + ".core_hold",
                     Text("What the wraps on %1 hold, as a multiple of the tail's pull", {rewind.roller}), "C2",
                     {{"mu", book.share(number(rewind.coreFriction, key + "core_friction", Kind::Count),
                                        "friction_tolerance", key + "core_friction")},
                      {"n", wraps}})
            .advice("The tape only has to hold the tail; the wraps hold the web.");
    }
    stateMotionClass(book);
}

}  // namespace taut::targets
