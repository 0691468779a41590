// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/history/drift_report.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "core/report/parts.h"

namespace taut::history {

namespace {

using report::Cell;
using report::data;

constexpr std::int64_t kDayMs = 24 * 3600 * 1000LL;

TextArg number(double value) { return Quantity(value, Kind::Count).magnitude(); }

Text rulesSaid(const Drift& drift)
{
    std::set<std::string> ids;
    std::vector<Text> names;
    for (const stats::Signal& signal : drift.chart.patterns)
        if (ids.insert(std::string(stats::idOf(signal.rule))).second) names.push_back(stats::nameOf(signal.rule));
    if (names.empty()) return "No pattern that chance seldom makes.";
    return {"%1 patterns that chance seldom makes.", {static_cast<std::int64_t>(drift.chart.patterns.size())}};
}

Text phaseName(std::size_t index, const stats::Phase& phase, std::size_t all)
{
    if (!phase.limits) return {"phase %1: too few", {static_cast<std::int64_t>(index + 1)}};
    if (phase.limits->provisional)
        return all == 1 ? Text("limits provisional")
                        : Text("phase %1, limits provisional", {static_cast<std::int64_t>(index + 1)});
    return all == 1 ? Text() : Text("phase %1", {static_cast<std::int64_t>(index + 1)});
}

Text nameOf(const Drift& drift, Names& names)
{
    const Text name = names.target(drift.series.press, drift.series.target);
    if (drift.series.measure == Measure::Read) return name;
    return {"%1, away from its target", {std::vector<Text>{name}}};
}

report::Table signalsTable(const Drift& drift, int offsetMinutes)
{
    report::Table table;
    table.caption = "Patterns, newest first";
    table.columns = {
        {"What", report::Align::Left, 5}, {"Runs", report::Align::Left, 4}, {"Days", report::Align::Left, 3}};
    constexpr std::size_t kMost = 20;
    for (auto it = drift.chart.patterns.rbegin(); it != drift.chart.patterns.rend() && table.rows.size() < kMost;
         ++it) {
        const Point& first = drift.series.points[it->points.front()];
        const Point& last = drift.series.points[it->points.back()];
        Text side = stats::nameOf(it->rule);
        if (it->side != 0)
            side = it->side > 0 ? Text("%1, upwards", {std::vector<Text>{side}})
                                : Text("%1, downwards", {std::vector<Text>{side}});
        const bool one = first.run == last.run;
        const std::string from = dayText(first.atMs, offsetMinutes), to = dayText(last.atMs, offsetMinutes);
        table.rows.push_back({report::cell(side),
                              report::cell(one ? data(first.run) : data(first.run + " \u2026 " + last.run)),
                              report::cell(from == to ? data(from) : data(from + " \u2026 " + to))});
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
    row("Readings below and above the window",
        Text("%1 and %2", {static_cast<std::int64_t>(all.below), static_cast<std::int64_t>(all.above)}));
    return table;
}

Result<report::Table> changesTable(const records::Reader& reader, const Drift& drift, int offsetMinutes)
{
    report::Table table;
    table.caption = "What changed then";
    table.columns = {{"Day", report::Align::Left, 2}, {"What", report::Align::Left, 6}, {"By", report::Align::Left, 3}};
    const Point& since = drift.series.points[drift.moved->since];
    const auto changes = changedAround(reader, since.atMs);
    if (!changes) return changes.error();
    for (const ChangedThen& change : *changes) {
        if (change.what == "press" && !drift.series.press.empty() && change.id != drift.series.press) continue;
        static const std::map<std::string, const char*> kSaid{{"press", "profile of the press %1, edition %2"},
                                                              {"job", "job %1, edition %2"},
                                                              {"substrate", "substrate %1, edition %2"},
                                                              {"procedure", "procedure %1, edition %2"}};
        const auto found = kSaid.find(change.what);
        if (found == kSaid.end()) continue;
        table.rows.push_back({report::cell(data(dayText(change.atMs, offsetMinutes))),
                              report::cell(Text(found->second, {change.id, static_cast<std::int64_t>(change.edition)})),
                              report::cell(data(change.byName))});
    }
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
    if (!drift.moved) return "It stayed where it began.";
    const Moved& moved = *drift.moved;
    const Point& since = drift.series.points[moved.since];
    const Quantity by = drift.series.quantity(std::abs(moved.by));
    const std::vector<TextArg> args{dayText(since.atMs, offsetMinutes), since.run, by.magnitude(),
                                    number(std::abs(moved.sigmas))};
    if (moved.stands)
        return moved.side > 0 ? Text("Since %1 (run %2) it is %3 higher, %4 sigma.", args)
                              : Text("Since %1 (run %2) it is %3 lower, %4 sigma.", args);
    return moved.side > 0 ? Text("From %1 (run %2) it was %3 higher for a time, %4 sigma.", args)
                          : Text("From %1 (run %2) it was %3 lower for a time, %4 sigma.", args);
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
    figure.summary = {Text("%1 readings of %2 phases.", {static_cast<std::int64_t>(series.points.size()),
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
    for (std::size_t i = 0; i < series.points.size(); ++i) {
        const double range = drift.chart.ranges[i].value_or(0);
        figure.dots.push_back({series.quantity(range), false, false, dayText(series.points[i].atMs, offsetMinutes)});
    }
    for (const std::size_t point : drift.chart.widened) figure.dots[point].signal = true;
    for (const stats::Phase& phase : drift.chart.phases) {
        report::ControlFigure::Phase drawn;
        drawn.begin = phase.begin;
        drawn.end = phase.end;
        if (phase.limits) {
            drawn.centre = series.quantity(phase.limits->meanRange);
            drawn.high = series.quantity(phase.limits->rangeLimit());
        }
        figure.phases.push_back(std::move(drawn));
    }
    figure.summary = {
        Text("%1 differences beyond their limit.", {static_cast<std::int64_t>(drift.chart.widened.size())})};
    return figure;
}

Result<report::Report> driftReport(const records::Reader& reader, const Drift& drift, Names& names, int offsetMinutes)
{
    const Series& series = drift.series;
    report::Report report;
    report.title = nameOf(drift, names);
    report.subtitle = series.press.empty() ? Text("every press") : data(series.press);
    report.units = names.units(series.press);
    report::Facts facts;
    const Point& first = series.points.front();
    const Point& last = series.points.back();
    facts.pairs = {{"Readings", report::cell(Text("%1", {static_cast<std::int64_t>(series.points.size())}))},
                   {"From", report::cell(data(dayText(first.atMs, offsetMinutes)))},
                   {"To", report::cell(data(dayText(last.atMs, offsetMinutes)))},
                   {"Newest", report::cell(series.quantity(last.value))}};
    if (const auto& limits = drift.last().limits) {
        facts.pairs.emplace_back("Centre", report::cell(series.quantity(limits->centre)));
        facts.pairs.emplace_back("Sigma", report::cell(series.quantity(limits->sigma)));
    }
    report.sections.emplace_back(std::move(facts));
    report.sections.emplace_back(report::Paragraph{movedSaid(drift, offsetMinutes), true});
    report.sections.emplace_back(report::Paragraph{rulesSaid(drift), false});
    if (series.unaimed > 0)
        report.sections.emplace_back(
            report::Paragraph{{"%1 readings had no target to be compared with and are left out.",
                               {static_cast<std::int64_t>(series.unaimed)}},
                              false});
    if (series.older)
        report.sections.emplace_back(
            report::Paragraph{"Older readings are not shown: choose a time to see them.", false});
    report.sections.emplace_back(valuesFigure(drift, names, offsetMinutes));
    report.sections.emplace_back(rangesFigure(drift, names, offsetMinutes));
    if (drift.moved) {
        auto changes = changesTable(reader, drift, offsetMinutes);
        if (!changes) return changes.error();
        report.sections.emplace_back(*std::move(changes));
    }
    if (!drift.chart.patterns.empty()) report.sections.emplace_back(signalsTable(drift, offsetMinutes));
    report.sections.emplace_back(capabilityTable(drift));
    report.sections.emplace_back(report::Paragraph{
        "Control limits stand three sigma from the centre; sigma is the mean moving range over 1.128, of the first 30 "
        "readings of a phase where it has more (NIST/SEMATECH handbook, 6.3.2.2). A new phase begins where the profile "
        "of "
        "the press changed. Since when is by cumulative sums (6.3.2.3). A pattern may come by chance, about once in a "
        "hundred readings.",
        false});
    return report;
}

}  // namespace taut::history
