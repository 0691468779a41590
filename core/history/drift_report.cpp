// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/history/drift_report.h"

#include <algorithm>
#include <cmath>

#include "core/report/parts.h"

namespace taut::history {

namespace {

using report::data;

TextArg number(double value) { return Quantity(value, Kind::Count).magnitude(); }

Text rulesSaid(const Drift& drift)
{
    if (drift.chart.patterns.empty()) return "No pattern that chance seldom makes.";
    return {"Patterns that chance seldom makes: %1.", {static_cast<std::int64_t>(drift.chart.patterns.size())}};
}

Text phaseName(std::size_t index, const stats::Phase& phase, std::size_t all)
{
    if (!phase.limits) return {"phase %1: one reading", {static_cast<std::int64_t>(index + 1)}};
    if (phase.limits->provisional)
        return all == 1 ? Text("limits provisional")
                        : Text("phase %1, limits provisional", {static_cast<std::int64_t>(index + 1)});
    return all == 1 ? Text() : Text("phase %1", {static_cast<std::int64_t>(index + 1)});
}

Text nameOf(const Drift& drift, Names& names)
{
    Text name = names.target(drift.series.press, drift.series.target);
    if (drift.series.measure == Measure::Read) return name;
    return {"%1, away from its target", {std::vector<Text>{name}}};
}

Text fromTo(std::string from, const std::string& to) { return data(from.append(" \u2026 ").append(to)); }

report::Table signalsTable(const Drift& drift, int offsetMinutes)
{
    report::Table table;
    table.caption = "Patterns, newest first";
    table.columns = {{"What", report::Align::Left, 5},
                     {"Which way", report::Align::Left, 2},
                     {"Runs", report::Align::Left, 4},
                     {"Days", report::Align::Left, 3}};
    constexpr std::size_t kMost = 20;
    for (auto it = drift.chart.patterns.rbegin(); it != drift.chart.patterns.rend() && table.rows.size() < kMost;
         ++it) {
        const Point& first = drift.series.points[it->points.front()];
        const Point& last = drift.series.points[it->points.back()];
        const Text side = it->side == 0 ? Text() : it->side > 0 ? Text("upwards") : Text("downwards");
        const bool one = first.run == last.run;
        const std::string from = dayText(first.atMs, offsetMinutes), to = dayText(last.atMs, offsetMinutes);
        table.rows.push_back({report::cell(stats::nameOf(it->rule)), report::cell(side),
                              report::cell(one ? data(first.run) : fromTo(first.run, last.run)),
                              report::cell(from == to ? data(from) : fromTo(from, to))});
    }
    return table;
}

/// "1.33 (0.91 to 1.75)", or why it is not to be had.
Text indexSaid(const Result<stats::Index>& index)
{
    if (!index) return index.error().text;
    return {"%1, with 95 % between %2 and %3",
            {number(index->value), number(index->interval.low), number(index->interval.high)}};
}

report::Table capabilityTable(const Drift& drift)
{
    report::Table table;
    table.caption = "Does it fit its window?";
    table.columns = {{"Index", report::Align::Left, 4}, {"Of the last phase", report::Align::Left, 6}};
    const auto row = [&](Text name, Text said) {
        table.rows.push_back({report::cell(std::move(name)), report::cell(std::move(said))});
    };
    if (!drift.capability) {
        row("Cp, Cpk, Pp, Ppk", Text("Not said: %1", {std::vector<Text>{drift.capability.error().text}}));
        return table;
    }
    const stats::Capability& all = *drift.capability;
    if (all.capability) {
        row("Cp (spread from run to run)", indexSaid(all.capability->both));
        row("Cpk (the nearer limit)", indexSaid(all.capability->least));
    } else {
        row("Cp, Cpk", Text("Not said: %1", {std::vector<Text>{all.capability.error().text}}));
    }
    if (all.performance) {
        row("Pp (spread of all)", indexSaid(all.performance->both));
        row("Ppk (the nearer limit)", indexSaid(all.performance->least));
    } else {
        row("Pp, Ppk", Text("Not said: %1", {std::vector<Text>{all.performance.error().text}}));
    }
    row("Readings below the window, and above it",
        Text("%1 and %2", {static_cast<std::int64_t>(all.below), static_cast<std::int64_t>(all.above)}));
    return table;
}

/// Whether any of these readings came with it; a procedure may have been behind any.
bool concerns(const Series& series, const ChangedThen& change)
{
    return change.what == "procedure" ||
           std::any_of(series.points.begin(), series.points.end(), [&](const Point& point) {
               return change.id == (change.what == "press" ? point.press
                                    : change.what == "job" ? point.job
                                                           : point.substrate);
           });
}

Text changeSaid(const ChangedThen& change)
{
    const std::vector<TextArg> args{change.id, static_cast<std::int64_t>(change.edition)};
    if (change.what == "press") return Text("profile of the press %1, edition %2", args);
    if (change.what == "job") return Text("job %1, edition %2", args);
    return change.what == "substrate" ? Text("substrate %1, edition %2", args) : Text("procedure %1, edition %2", args);
}

Result<report::Table> changesTable(const records::Reader& reader, const Drift& drift, int offsetMinutes)
{
    report::Table table;
    table.caption = "What changed then";
    table.columns = {
        {"Day", report::Align::Left, 2}, {"What", report::Align::Left, 6}, {"Sealed by", report::Align::Left, 3}};
    const Point& since = drift.series.points[drift.moved->since];
    const auto changes = changedAround(reader, since.atMs);
    if (!changes) return changes.error();
    for (const ChangedThen& change : *changes)
        if (concerns(drift.series, change))
            table.rows.push_back({report::cell(data(dayText(change.atMs, offsetMinutes))),
                                  report::cell(changeSaid(change)), report::cell(data(change.byName))});
    const auto first = [&](auto of, Text said) {
        for (std::size_t i = 0; i < drift.moved->since; ++i)
            if (of(drift.series.points[i]) == of(since)) return;
        if (drift.moved->since == 0) return;
        table.rows.push_back({report::cell(data(dayText(since.atMs, offsetMinutes))), report::cell(std::move(said)),
                              report::cell(Text())});
    };
    first([](const Point& p) { return p.substrate; }, {"first run with the substrate %1", {since.substrate}});
    first([](const Point& p) { return p.job; }, {"first run of the job %1", {since.job}});
    if (table.rows.empty())
        table.rows.push_back({report::cell(Text()),
                              report::cell("No edition of press, job, substrate or procedure was "
                                           "sealed around then: look at the press itself."),
                              report::cell(Text())});
    return table;
}

}  // namespace

Result<std::vector<ChangedThen>> changedAround(const records::Reader& reader, std::int64_t atMs)
{
    constexpr std::int64_t kBefore = 21 * kDayMs, kAfter = 7 * kDayMs;
    std::vector<ChangedThen> all;
    for (const char* what : {"press", "job", "substrate", "procedure"}) {
        const auto editions = reader.editions(what);
        if (!editions) return editions.error();
        for (const records::Edition& edition : *editions)
            // The first edition of all is how it came in, not a change.
            if (edition.edition > 1 && edition.atMs >= atMs - kBefore && edition.atMs <= atMs + kAfter)
                all.push_back({what, edition.id, edition.edition, edition.byName, edition.atMs});
    }
    std::stable_sort(all.begin(), all.end(),
                     [](const ChangedThen& a, const ChangedThen& b) { return a.atMs < b.atMs; });
    return all;
}

Text movedSaid(const Drift& drift, int offsetMinutes)
{
    if (!drift.moved && drift.last().end - drift.last().begin < kFewestWatched)
        return Text("There are too few readings to tell whether it has moved: %1 are wanted.",
                    {static_cast<std::int64_t>(kFewestWatched)});
    if (!drift.moved)
        return drift.chart.phases.size() > 1 ? Text("It has stayed where it began under the present profile.")
                                             : Text("It has stayed where it began.");
    const Moved& moved = *drift.moved;
    const Point& since = drift.series.points[moved.since];
    const Quantity by = drift.series.quantity(std::abs(moved.by));
    const std::vector<TextArg> args{dayText(since.atMs, offsetMinutes), since.run, by.magnitude(),
                                    number(std::abs(moved.sigmas))};
    if (moved.stands)
        return moved.side > 0 ? Text("Since %1 (run %2) it is %3 higher: %4 times its usual scatter.", args)
                              : Text("Since %1 (run %2) it is %3 lower: %4 times its usual scatter.", args);
    return moved.side > 0 ? Text("From %1 (run %2) it was %3 higher for a time: %4 times its usual scatter.", args)
                          : Text("From %1 (run %2) it was %3 lower for a time: %4 times its usual scatter.", args);
}

report::ControlFigure valuesFigure(const Drift& drift, Names& names, int offsetMinutes)
{
    report::ControlFigure figure;
    figure.caption = "Single values";
    figure.yName = nameOf(drift, names);
    const Series& series = drift.series;
    for (const Point& point : series.points)
        figure.dots.push_back({series.quantity(point.value), false, point.outside, dayText(point.atMs, offsetMinutes)});
    for (const stats::Signal& signal : drift.chart.patterns)
        for (const std::size_t point : signal.points) figure.dots[point].signal = true;
    for (std::size_t i = 0; i < drift.chart.phases.size(); ++i) {
        const stats::Phase& phase = drift.chart.phases[i];
        report::ControlFigure::Phase drawn;
        drawn.begin = phase.begin;
        drawn.end = phase.end;
        drawn.name = phaseName(i, phase, drift.chart.phases.size());
        if (phase.limits) {
            constexpr double kControl = 3;
            drawn.centre = series.quantity(phase.limits->centre);
            drawn.sigma = series.quantity(phase.limits->sigma);
            drawn.low = series.quantity(phase.limits->line(-kControl));
            drawn.high = series.quantity(phase.limits->line(kControl));
            drawn.provisional = phase.limits->provisional;
        }
        figure.phases.push_back(std::move(drawn));
    }
    if (drift.moved) figure.since = drift.moved->since;
    figure.summary = {Text("Readings: %1. Phases: %2.", {static_cast<std::int64_t>(series.points.size()),
                                                         static_cast<std::int64_t>(drift.chart.phases.size())}),
                      movedSaid(drift, offsetMinutes), rulesSaid(drift)};
    return figure;
}

report::ControlFigure rangesFigure(const Drift& drift, Names& names, int offsetMinutes)
{
    report::ControlFigure figure;
    figure.caption = "From one reading to the next";
    figure.yName = Text("Difference to the one before, %1", {std::vector<Text>{nameOf(drift, names)}});
    const Series& series = drift.series;
    const std::vector<std::size_t>& widened = drift.chart.widened;
    for (const stats::Phase& phase : drift.chart.phases) {
        if (!phase.limits) continue;
        // The first reading of a phase has none before it, and so no dot.
        report::ControlFigure::Phase drawn;
        drawn.begin = figure.dots.size();
        for (std::size_t i = phase.begin + 1; i < phase.end; ++i)
            figure.dots.push_back({series.quantity(*drift.chart.ranges[i]),
                                   std::binary_search(widened.begin(), widened.end(), i), false,
                                   dayText(series.points[i].atMs, offsetMinutes)});
        drawn.end = figure.dots.size();
        drawn.centre = series.quantity(phase.limits->meanRange);
        drawn.high = series.quantity(phase.limits->rangeLimit());
        figure.phases.push_back(std::move(drawn));
    }
    figure.summary = {Text("Differences beyond their limit: %1.", {static_cast<std::int64_t>(widened.size())})};
    return figure;
}

Result<report::Report> driftReport(const records::Reader& reader, const Drift& drift, Names& names, int offsetMinutes)
{
    const Series& series = drift.series;
    report::Report report;
    report.title = nameOf(drift, names);
    std::vector<Text> chosen{series.press.empty() ? Text("every press") : data(series.press)};
    for (const std::string* one : {&series.job, &series.substrate})
        if (!one->empty()) chosen.emplace_back("only %1", std::vector<TextArg>{*one});
    report.subtitle = Text("%1", {std::move(chosen)});
    report.foot = "Told from sealed runs";
    report.units = names.units(series.press);
    report::Facts facts;
    const Point& first = series.points.front();
    const Point& last = series.points.back();
    facts.pairs = {{Text("Readings"), report::cell(Text("%1", {static_cast<std::int64_t>(series.points.size())}))},
                   {"First day", report::cell(data(dayText(first.atMs, offsetMinutes)))},
                   {"Last day", report::cell(data(dayText(last.atMs, offsetMinutes)))},
                   {Text("Newest"), report::cell(series.quantity(last.value))}};
    if (const auto& limits = drift.last().limits) {
        facts.pairs.emplace_back(Text("Centre"), report::cell(series.quantity(limits->centre)));
        facts.pairs.emplace_back(Text("Usual scatter (sigma)"), report::cell(series.quantity(limits->sigma)));
    }
    report.sections.emplace_back(std::move(facts));
    report.sections.emplace_back(report::Paragraph{movedSaid(drift, offsetMinutes), true});
    report.sections.emplace_back(report::Paragraph{rulesSaid(drift), false});
    if (series.unaimed > 0)
        report.sections.emplace_back(
            report::Paragraph{Text("Readings left out, since there was no target to hold them against: %1.",
                                   {static_cast<std::int64_t>(series.unaimed)}),
                              false});
    if (series.older)
        report.sections.emplace_back(
            report::Paragraph{"Older readings are not shown: choose a time to see them.", false});
    report.sections.emplace_back(valuesFigure(drift, names, offsetMinutes));
    if (auto ranges = rangesFigure(drift, names, offsetMinutes); !ranges.dots.empty())
        report.sections.emplace_back(std::move(ranges));
    if (drift.moved) {
        auto changes = changesTable(reader, drift, offsetMinutes);
        if (!changes) return changes.error();
        report.sections.emplace_back(*std::move(changes));
    }
    if (!drift.chart.patterns.empty()) report.sections.emplace_back(signalsTable(drift, offsetMinutes));
    report.sections.emplace_back(capabilityTable(drift));
    if (drift.capability)
        report.sections.emplace_back(report::Paragraph{
            "At 1 the usual scatter just fills the window, below 1 it does not fit; 1.33 and more is what is commonly "
            "asked for. Cpk and Ppk are smaller where the centre is not in the middle.",
            false});
    const bool baseline = std::any_of(drift.chart.phases.begin(), drift.chart.phases.end(), [](const auto& phase) {
        return phase.limits && phase.limits->from < phase.end - phase.begin;
    });
    report.sections.emplace_back(report::Paragraph{
        baseline
            ? Text("Control limits stand three sigma from the centre. Centre and sigma are reckoned from the first %1 "
                   "readings of a phase: sigma is their mean difference to the one before, over 1.128 "
                   "(NIST/SEMATECH handbook, 6.3.2.2).",
                   {static_cast<std::int64_t>(kBaseline)})
            : Text("Control limits stand three sigma from the centre. Centre and sigma are reckoned from all readings "
                   "of a "
                   "phase: sigma is their mean difference to the one before, over 1.128 (NIST/SEMATECH handbook, "
                   "6.3.2.2)."),
        false});
    report.sections.emplace_back(report::Paragraph{
        "A new phase begins where the profile of the press changed. Since when a reading has moved is found by "
        "cumulative sums (6.3.2.3) and told where chance alone would seldom do it. A pattern may come by chance, about "
        "once in a hundred readings.",
        false});
    return report;
}

}  // namespace taut::history
