// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/history/week.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>

#include "core/history/drift.h"
#include "core/history/times_report.h"
#include "core/report/parts.h"

namespace taut::history {

namespace {

using report::cell;
using report::data;
using report::whole;

constexpr std::int64_t kMinuteMs = 60000, kWeekMs = 7 * kDayMs;
/// As many lines as one page holds of each.
constexpr std::size_t kMostRuns = 22, kMostDeviations = 7, kMostDrifts = 5, kMostLosses = 4;

Result<std::vector<records::RunRow>> runsOf(const records::Reader& reader, const std::string& press, std::int64_t begin)
{
    records::RunQuery query;
    query.press = press;
    query.sinceMs = begin;
    query.untilMs = begin + kWeekMs;
    std::vector<records::RunRow> all;
    std::string after;
    do {
        const auto page = reader.runs(query, after);
        if (!page) return page.error();
        all.insert(all.end(), page->rows.begin(), page->rows.end());
        after = page->next;
    } while (!after.empty());
    std::stable_sort(all.begin(), all.end(),
                     [](const records::RunRow& a, const records::RunRow& b) { return a.begunMs < b.begunMs; });
    return all;
}

bool isVoid(const records::RunRow& row) { return row.present == seal::presentWord(seal::Present::Void); }

bool wantsReview(const records::RunRow& row)
{
    return row.present == seal::presentWord(seal::Present::Sealed) ||
           row.present == seal::presentWord(seal::Present::Corrected);
}

Text stateSaid(const records::RunRow& row)
{
    if (row.state == "open") return Text("open");
    if (isVoid(row)) return Text("void");
    if (row.present == seal::presentWord(seal::Present::SentBack)) return "sent back";
    if (wantsReview(row)) return row.state == "abandoned" ? Text("abandoned, not reviewed") : Text("not reviewed");
    return row.state == "abandoned" ? Text("abandoned, reviewed") : Text("reviewed");
}

report::Facts headOf(const std::vector<records::RunRow>& runs, const Times& times)
{
    const auto many = [&](auto what) {
        return whole(static_cast<std::size_t>(std::count_if(runs.begin(), runs.end(), what)));
    };
    report::Facts facts;
    facts.pairs = {{Text("Runs"), cell(Text("%1", {whole(runs.size())}))},
                   {Text("Abandoned"), cell(Text("%1", {many([](const auto& r) { return r.state == "abandoned"; })}))},
                   {"Still open", cell(Text("%1", {many([](const auto& r) { return r.state == "open"; })}))},
                   {"Not reviewed", cell(Text("%1", {many(wantsReview)}))}};
    std::vector<double> seconds, metres;
    for (const RunTime& run : times.runs) {
        if (!run.finished) continue;
        seconds.push_back(static_cast<double>(run.wholeMs()) / 1000);
        if (const auto read = times.webM.find(run.seq); read != times.webM.end()) metres.push_back(read->second);
    }
    if (const auto quartiles = stats::quartilesOf(seconds))
        facts.pairs.emplace_back("Time of a run, median", cell(Quantity(quartiles->median, Kind::Time, "min")));
    if (const auto rate = firstGoRate(times))
        facts.pairs.emplace_back("At the first go", cell(Text("%1 of %2", {whole(rate->hits), whole(rate->of)})));
    if (const auto quartiles = stats::quartilesOf(metres)) {
        const double all = std::accumulate(metres.begin(), metres.end(), 0.0);
        facts.pairs.emplace_back("Web used in setting up", cell(Quantity(all, Kind::Length)));
        facts.pairs.emplace_back("Web of a set-up, median", cell(webSaid(*quartiles, seconds.size())));
    }
    return facts;
}

report::Table runsTable(const std::vector<records::RunRow>& runs, const Times& times, int offsetMinutes)
{
    report::Table table;
    table.caption = "Runs";
    table.size = report::Size::Small;
    table.columns = {{"Begun", report::Align::Left, 4},       {"Run", report::Align::Left, 5},
                     {"Kind of run", report::Align::Left, 5}, {"Job", report::Align::Left, 4},
                     {"Time", report::Align::Right, 3},       {"Outside", report::Align::Right, 2},
                     {"Deviations", report::Align::Right, 3}, {"State", report::Align::Left, 5}};
    std::map<std::uint64_t, std::int64_t> took;
    for (const RunTime& run : times.runs) took[run.seq] = run.wholeMs();
    for (const records::RunRow& row : runs) {
        if (table.rows.size() == kMostRuns) {
            table.rows.push_back({cell(Text("and %1 more", {whole(runs.size() - kMostRuns)}))});
            break;
        }
        const auto found = took.find(row.seq);
        report::Cell time = found == took.end()
                                ? cell(Text())
                                : cell(Quantity(static_cast<double>(found->second) / 1000, Kind::Time, "min"));
        table.rows.push_back({cell(data(report::localTime(row.begunMs, offsetMinutes))), cell(data(row.run)),
                              cell(groupSaid(Group::RunKind, row.kind)), cell(data(row.job)), std::move(time),
                              cell(Text("%1", {row.outside})), cell(Text("%1", {row.deviations})),
                              cell(stateSaid(row))});
    }
    return table;
}

report::Table deviationsTable(const Times& times, const std::string& press, Names& names)
{
    report::Table table;
    table.caption = "Readings outside that a supervisor accepted";
    table.size = report::Size::Small;
    table.columns = {
        {"Run", report::Align::Left, 4}, {"Step", report::Align::Left, 5}, {"Reason", report::Align::Left, 7}};
    std::size_t more = 0;
    for (const records::Incident& incident : times.incidents) {
        if (incident.what != "deviated") continue;
        if (table.rows.size() == kMostDeviations) {
            ++more;
            continue;
        }
        table.rows.push_back(
            {cell(data(incident.run)), cell(names.step(press, incident.step)), cell(data(incident.detail))});
    }
    if (more > 0) table.rows.push_back({cell(Text("and %1 more", {whole(more)}))});
    return table;
}

report::Table driftsTable(const std::vector<Watched>& watched, const std::string& press, Names& names,
                          int offsetMinutes)
{
    report::Table table;
    table.caption = "What has moved away from where it began, and stays there";
    table.size = report::Size::Small;
    table.columns = {{"Reading", report::Align::Left, 6},
                     {"How far", report::Align::Left, 3},
                     {"Times its scatter", report::Align::Right, 3},
                     {"Since", report::Align::Left, 3},
                     {"First run of it", report::Align::Left, 4}};
    for (const Watched& one : watched) {
        if (!one.worth || table.rows.size() == kMostDrifts) break;
        table.rows.push_back({cell(names.target(press, one.name.target)),
                              cell(Quantity(one.moved->by, one.kind, one.unit)),
                              cell(Quantity(std::abs(one.moved->sigmas), Kind::Count)),
                              cell(data(dayText(one.sinceMs, offsetMinutes))), cell(data(one.sinceRun))});
    }
    return table;
}

}  // namespace

std::int64_t weekBegin(std::int64_t utcMs, int offsetMinutes) noexcept
{
    // 1 January 1970 was a Thursday.
    constexpr std::int64_t kThursday = 3;
    const std::int64_t local = utcMs + offsetMinutes * kMinuteMs;
    const std::int64_t day = local >= 0 ? local / kDayMs : -((-local + kDayMs - 1) / kDayMs);
    const std::int64_t sinceMonday = ((day + kThursday) % 7 + 7) % 7;
    return (day - sinceMonday) * kDayMs - offsetMinutes * kMinuteMs;
}

Result<report::Report> weekReport(const records::Reader& reader, const std::string& press, std::int64_t begin,
                                  Names& names, int offsetMinutes, const std::function<bool()>& goOn)
{
    const auto runs = runsOf(reader, press, begin);
    if (!runs) return runs.error();
    records::CourseQuery query;
    query.press = press;
    query.sinceMs = begin;
    query.untilMs = begin + kWeekMs;
    bool stopped = false;
    const auto goesOn = [&] {
        stopped = stopped || (goOn && !goOn());
        return !stopped;
    };
    const auto times = timesOf(reader, query, goesOn);
    if (!times) return times.error();
    records::CourseQuery upToThen = query;
    upToThen.sinceMs.reset();
    const auto watched = watchedOf(reader, upToThen, goesOn);
    if (!watched) return watched.error();
    const auto withdrawals = reader.withdrawals();
    if (!withdrawals) return withdrawals.error();

    report::Report report;
    report.title = Text("The week of %1", {press});
    report.foot = "Told from sealed runs";
    report.subtitle = Text("%1 to %2", {dayText(begin, offsetMinutes), dayText(begin + kWeekMs - 1, offsetMinutes)});
    report.units = names.units(press);
    for (const records::Withdrawal& withdrawal : *withdrawals)
        if (withdrawal.press == press && withdrawal.atMs < begin + kWeekMs)
            report.sections.emplace_back(report::Paragraph{
                {"Out of use since %1: %2", {dayText(withdrawal.atMs, offsetMinutes), withdrawal.reason}}, true});
    if (stopped)
        report.sections.emplace_back(
            report::Paragraph{"This page was not finished: not all runs and readings were looked at.", true});
    report.sections.emplace_back(headOf(*runs, *times));
    if (!runs->empty()) report.sections.emplace_back(runsTable(*runs, *times, offsetMinutes));
    if (auto table = deviationsTable(*times, press, names); !table.rows.empty())
        report.sections.emplace_back(std::move(table));
    if (auto table = driftsTable(*watched, press, names, offsetMinutes); !table.rows.empty())
        report.sections.emplace_back(std::move(table));
    else if (!stopped)
        report.sections.emplace_back(report::Paragraph{"No reading has moved away and stayed there.", false});
    if (auto bars = lossBars(*times, Loss::Outside, press, names, kMostLosses))
        report.sections.emplace_back(*std::move(bars));
    return report;
}

}  // namespace taut::history
