// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/history/times_report.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <set>

#include "core/report/parts.h"
#include "core/run/words.h"

namespace taut::history {

namespace {

using report::cell;
using report::data;
using report::whole;

constexpr double kMinute = 60;

TextArg minutes(double seconds) { return Quantity(seconds, Kind::Time, "min").magnitude(); }
TextArg share(double of) { return Quantity(of, Kind::Share, "%").magnitude(); }

Text rateSaid(const stats::Proportion& rate)
{
    return {"%1 of %2, %3 (%4 to %5 with 95 % confidence)",
            {whole(rate.hits), whole(rate.of), share(rate.share), share(rate.interval.low), share(rate.interval.high)}};
}

report::Facts headOf(const Times& times)
{
    report::Facts facts;
    facts.pairs.emplace_back(Text("Runs"), cell(Text("%1", {whole(times.runs.size())})));
    std::vector<double> seconds, away, metres;
    double external = 0, all = 0;
    for (const RunTime& run : times.runs) {
        if (!run.finished) continue;
        seconds.push_back(static_cast<double>(run.wholeMs()) / 1000);
        away.push_back(static_cast<double>(run.awayMs()) / 1000);
        external += static_cast<double>(run.externalMs());
        all += static_cast<double>(run.wholeMs());
        if (const auto read = times.webM.find(run.seq); read != times.webM.end()) metres.push_back(read->second);
    }
    if (const std::size_t many = givenUpOf(times); many > 0)
        facts.pairs.emplace_back("Abandoned", cell(Text("%1", {whole(many)})));
    if (const auto quartiles = stats::quartilesOf(seconds))
        facts.pairs.emplace_back("Time of a run, median", cell(Text("%1", {minutes(quartiles->median)})));
    if (const auto quartiles = stats::quartilesOf(away))
        facts.pairs.emplace_back("Away or interrupted, upper quartile", cell(Text("%1", {minutes(quartiles->upper)})));
    if (all > 0) facts.pairs.emplace_back("Done beside the running press", cell(Text("%1", {share(external / all)})));
    if (const auto rate = firstGoRate(times)) facts.pairs.emplace_back("At the first go", cell(rateSaid(*rate)));
    if (const auto quartiles = stats::quartilesOf(metres))
        facts.pairs.emplace_back("Web used in setting up, median", cell(webSaid(*quartiles, seconds.size())));
    return facts;
}

report::Bars stageBars(const Times& times, Group group, const std::vector<StageQuartiles>& all,
                       const std::string& press, Names& names)
{
    report::Bars bars;
    bars.caption = "Minutes: half of the runs lie within the bar, the line is the median";
    for (const StageQuartiles& one : all) {
        report::Bars::Row row;
        row.strong = one.stage.empty();
        row.name = one.stage.empty() ? groupSaid(group, one.group) : names.stage(press, one.stage);
        row.from = one.seconds.lower / kMinute;
        row.to = one.seconds.upper / kMinute;
        row.mark = one.seconds.median / kMinute;
        row.said = one.stage.empty() ? Text("%1 in %2 runs", {minutes(one.seconds.median), whole(one.seconds.count)})
                                     : Text("%1", {minutes(one.seconds.median)});
        bars.rows.push_back(std::move(row));
    }
    static_cast<void>(times);
    return bars;
}

report::Table splitTable(const std::vector<StageQuartiles>& all, const std::string& press, Group group, Names& names)
{
    report::Table table;
    table.caption = "At the standing press, and beside the running one";
    table.columns = {{"Stage", report::Align::Left, 5},
                     {"Median", report::Align::Right, 2},
                     {"Beside the running press", report::Align::Right, 3},
                     {"Away, mean of a run", report::Align::Right, 3}};
    table.size = report::Size::Small;
    for (const StageQuartiles& one : all) {
        if (one.stage.empty()) {
            report::Cell head = cell(groupSaid(group, one.group));
            head.strong = true;
            table.rows.push_back({head});
            continue;
        }
        table.rows.push_back({cell(names.stage(press, one.stage)), cell(Text("%1", {minutes(one.seconds.median)})),
                              cell(Text("%1", {share(one.externalShare)})),
                              cell(Text("%1", {minutes(one.awaySeconds)}))});
    }
    return table;
}

report::Table webTable(const std::vector<WebQuartiles>& all, Group group)
{
    report::Table table;
    table.caption = "Web used in setting up";
    table.columns = {{"", report::Align::Left, 5},
                     {"Said by", report::Align::Right, 3},
                     {"Lower quartile", report::Align::Right, 3},
                     {"Median", report::Align::Right, 2},
                     {"Upper quartile", report::Align::Right, 3}};
    table.size = report::Size::Small;
    const auto length = [](double metres) { return cell(Quantity(metres, Kind::Length)); };
    for (const WebQuartiles& one : all)
        table.rows.push_back({cell(groupSaid(group, one.group)),
                              cell(Text("%1 of %2", {whole(one.metres.count), whole(one.of)})),
                              length(one.metres.lower), length(one.metres.median), length(one.metres.upper)});
    return table;
}

/// The jobs that are mostly setting up come first; a page holds so many.
report::Table ratioTable(const std::vector<SetUpRatio>& ratios)
{
    constexpr std::size_t kMost = 12;
    report::Table table;
    table.caption = "Setting up against running: the median full set-up over the running time planned for the job";
    table.columns = {{Text("Job"), report::Align::Left, 4},
                     {"Full set-ups", report::Align::Right, 3},
                     {"Setting up", report::Align::Right, 3},
                     {"Running, planned", report::Align::Right, 3},
                     {"Ratio", report::Align::Right, 2}};
    table.size = report::Size::Small;
    std::size_t untold = 0;
    for (const SetUpRatio& one : ratios) {
        if (!one.ratio()) {
            ++untold;
        } else if (table.rows.size() < kMost) {
            table.rows.push_back({cell(data(one.job)), cell(Text("%1", {whole(one.setUp.count)})),
                                  cell(Text("%1", {minutes(one.setUp.median)})),
                                  cell(Text("%1", {minutes(*one.runningSeconds)})),
                                  cell(Quantity(*one.ratio(), Kind::Share, "%"))});
        }
    }
    if (ratios.size() - untold > kMost)
        table.rows.push_back({cell(Text("and %1 more", {whole(ratios.size() - untold - kMost)}))});
    if (untold > 0)
        table.rows.push_back({cell(Text("%1 jobs do not say how long they run: quantity, pieces across and around, "
                                        "gear and speed are needed.",
                                        {whole(untold)}))});
    return table;
}

Text traitSaid(const InCommon& trait)
{
    if (!trait.incident) return groupSaid(trait.group, trait.value);
    if (trait.value == "outside") return "a reading was outside";
    if (trait.value == "deviated") return "a supervisor accepted a reading outside";
    if (trait.value == "corrected") return "a reading was corrected";
    if (trait.value == "repeated") return "a stage was done again";
    return "it was interrupted";
}

report::Table slowestTable(const std::vector<InCommon>& traits)
{
    report::Table table;
    table.caption = "What the slowest tenth have in common";
    table.columns = {{"What", report::Align::Left, 5},
                     {"Of the slowest tenth", report::Align::Left, 5},
                     {"Of the others", report::Align::Left, 5}};
    table.size = report::Size::Small;
    for (const InCommon& trait : traits)
        table.rows.push_back({cell(traitSaid(trait)), cell(rateSaid(trait.slow)), cell(rateSaid(trait.others))});
    return table;
}

Text lossName(Loss loss)
{
    switch (loss) {
    case Loss::Deviations: return "Deviations, by step";
    case Loss::Outside: return "Outside at first, by step";
    case Loss::Corrections: return "Corrections, by step";
    case Loss::NotApplicable: return "Did not apply, by step";
    case Loss::Repeated: return "Stages done again, by cause";
    case Loss::Interruptions: return "Interruptions, by cause";
    case Loss::Remedies: return "What helped";
    case Loss::LeftOpen: return "Left open in abandoned runs, by step";
    }
    return {};
}

/// A step as the chosen press calls it, or another of these presses where that one has no such step.
Text stepSaid(const Times& times, const std::string& press, const std::string& id, Names& names)
{
    std::set<std::string> asked{press};
    Text said = names.step(press, id);
    for (const RunTime& run : times.runs) {
        if (said != data(id)) break;
        if (asked.insert(run.press).second) said = names.step(run.press, id);
    }
    return said;
}

Text causeSaid(const Times& times, Loss loss, const std::string& name, const std::string& press, Names& names)
{
    if (name == "other") return Text("other");
    if (loss == Loss::Remedies) {
        // The step, the number of the remedy, and words where it was none of the step's own.
        const std::size_t line = name.find('\n');
        const std::string step = name.substr(0, line), detail = name.substr(line + 1);
        int number = 0;  // below nought: nobody knew
        const auto [end, error] = std::from_chars(detail.data(), detail.data() + detail.size(), number);
        if (Text own = names.remedy(press, step, number); error == std::errc{} && !own.empty()) return own;
        const std::string said(end, detail.data() + detail.size());
        const std::size_t word = said.find_first_not_of(' ');
        return word == std::string::npos ? Text("not known") : data(said.substr(word));
    }
    if (loss != Loss::Repeated && loss != Loss::Interruptions) return stepSaid(times, press, name, names);
    return loss == Loss::Repeated ? run::causeSaid(name) : run::interruptionSaid(name);
}

}  // namespace

Text groupSaid(Group group, const std::string& value)
{
    if (group == Group::Shift) {
        if (value == "early") return "early shift (6 to 14)";
        return value == "late" ? Text("late shift (14 to 22)") : Text("night shift (22 to 6)");
    }
    if (group == Group::RunKind) {
        if (value == "full") return "full set-up";
        if (value == "next_roll") return "next roll of the same job";
        if (value == "re_web") return "re-web after a break";
        if (value == "restart") return "restart after a stand";
    }
    return data(value);
}

Text webSaid(const stats::Quartiles& metres, std::size_t of)
{
    return {"%1, said by %2 of %3 runs",
            {Quantity(metres.median, Kind::Length).magnitude(), whole(metres.count), whole(of)}};
}

Text chosenSaid(const records::CourseQuery& query, int offsetMinutes)
{
    std::vector<Text> parts{query.press.empty() ? Text("all presses") : data(query.press)};
    if (!query.job.empty()) parts.push_back(data(query.job));
    if (!query.substrate.empty()) parts.push_back(data(query.substrate));
    if (query.sinceMs) parts.emplace_back("from %1", std::vector<TextArg>{dayText(*query.sinceMs, offsetMinutes)});
    if (query.untilMs) parts.emplace_back("before %1", std::vector<TextArg>{dayText(*query.untilMs, offsetMinutes)});
    return {"%1", {std::move(parts)}};
}

std::optional<report::Bars> lossBars(const Times& times, Loss loss, const std::string& press, Names& names,
                                     std::size_t most)
{
    const std::vector<stats::ParetoRow> rows = lossesOf(times, loss, most);
    if (rows.empty()) return std::nullopt;
    report::Bars bars;
    bars.caption = lossName(loss);
    for (const stats::ParetoRow& row : rows) {
        report::Bars::Row drawn;
        drawn.name = causeSaid(times, loss, row.cause.name, press, names);
        drawn.to = row.cause.amount;
        drawn.said = Text("%1, together %2",
                          {whole(static_cast<std::size_t>(std::lround(row.cause.amount))), share(row.cumulative)});
        bars.rows.push_back(std::move(drawn));
    }
    // Several steps may read the same: then what each says to do tells them apart.
    std::vector<Text> called;
    for (const report::Bars::Row& row : bars.rows) called.push_back(row.name);
    for (std::size_t i = 0; i < rows.size(); ++i)
        if (std::count(called.begin(), called.end(), called[i]) > 1)
            bars.rows[i].name = Text(
                "%1 (%2)", {std::vector<Text>{called[i]}, std::vector<Text>{names.said(press, rows[i].cause.name)}});
    return bars;
}

report::Report timesReport(const Times& times, const records::CourseQuery& query, Group group, Names& names,
                           int offsetMinutes, const std::vector<SetUpRatio>& ratios)
{
    report::Report report;
    report.title = "Time and losses";
    report.foot = "Told from sealed runs";
    report.subtitle = chosenSaid(query, offsetMinutes);
    const std::string press = !query.press.empty() || times.runs.empty() ? query.press : times.runs.front().press;
    report.units = names.units(query.press);
    if (times.runs.empty()) {
        report.sections.emplace_back(report::Paragraph{"No sealed run was chosen.", true});
        return report;
    }
    report.sections.emplace_back(headOf(times));
    if (times.older)
        report.sections.emplace_back(
            report::Paragraph{"Only the newest runs are counted here. Choose a time to see older ones.", false});
    const std::vector<StageQuartiles> quartiles = quartilesBy(times, group);
    report.sections.emplace_back(stageBars(times, group, quartiles, press, names));
    report.sections.emplace_back(splitTable(quartiles, press, group, names));
    if (const auto web = webBy(times, group); !web.empty()) report.sections.emplace_back(webTable(web, group));
    if (!ratios.empty()) report.sections.emplace_back(ratioTable(ratios));
    const std::vector<InCommon> traits = commonToSlowest(times);
    if (traits.empty())
        report.sections.emplace_back(report::Paragraph{
            "The slowest tenth of the runs have nothing in common that the others have less often.", false});
    else
        report.sections.emplace_back(slowestTable(traits));
    for (const Loss loss : {Loss::Deviations, Loss::Outside, Loss::Remedies, Loss::Repeated, Loss::Interruptions,
                            Loss::LeftOpen, Loss::Corrections, Loss::NotApplicable})
        if (auto bars = lossBars(times, loss, press, names)) report.sections.emplace_back(*std::move(bars));
    if (times.lookedInto > 0 && times.lookedInto < givenUpOf(times))
        report.sections.emplace_back(report::Paragraph{
            {"Steps left open are told of the newest %1 abandoned runs.", {whole(times.lookedInto)}}, false});
    report.sections.emplace_back(
        report::Paragraph{"Times, web and the first go are told of runs that were finished.", false});
    report.sections.emplace_back(report::Paragraph{
        "Times lie between answers: they say how long a set-up took on this press, never how well somebody works, and "
        "are told by press, job, kind of run and shift, never by person. A run by people who learn is slower, and "
        "safer.",
        false});
    return report;
}

}  // namespace taut::history
