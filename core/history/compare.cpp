// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/history/compare.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <tuple>

#include "core/history/names.h"
#include "core/history/times_report.h"
#include "core/records/sheet.h"
#include "core/report/parts.h"
#include "core/units/format.h"

namespace taut::history {

namespace {

using report::Cell;
using report::cell;
using report::data;

/// One line of the comparison: what it is, and what each run says to it.
struct Line {
    Text name;
    std::vector<Cell> cells;
    bool differs = false;
};
/// Lines of one kind, under one heading.
struct Part {
    Text heading;
    std::vector<Line> lines;
};

/// What reads the same is the same: further figures are nobody's.
bool sameCell(const Cell& a, const Cell& b, UnitSystem system)
{
    const auto *left = std::get_if<Quantity>(&a.value), *right = std::get_if<Quantity>(&b.value);
    if (left != nullptr && right != nullptr && left->kind() == right->kind())
        return format(*left, system) == format(*right, system) && a.mark == b.mark;
    return a.value == b.value && a.mark == b.mark;
}

void settle(Line& line, UnitSystem system)
{
    line.differs = std::any_of(line.cells.begin(), line.cells.end(),
                               [&](const Cell& one) { return !sameCell(one, line.cells.front(), system); });
}

Text editionSaid(const run::Source& source)
{
    return {"%1, edition %2", {source.id, static_cast<std::int64_t>(source.edition)}};
}

class Comparison {
public:
    Comparison(const records::Reader& reader, std::vector<run::Run> runs, int offsetMinutes)
        : m_reader(reader),
          m_runs(std::move(runs)),
          m_offset(offsetMinutes)
    {}

    Result<std::vector<Part>> parts()
    {
        std::vector<Part> all{with(), aimedAt(), read()};
        auto took = times();
        if (!took) return took.error();
        all.push_back(*std::move(took));
        return all;
    }

private:
    template <class Of>
    Line line(Text name, Of of) const
    {
        Line one{std::move(name), {}, false};
        for (const run::Run& run : m_runs) one.cells.push_back(of(run));
        settle(one, m_runs.front().began().units);
        return one;
    }

    [[nodiscard]] Part with() const
    {
        Part part{"Run with", {}};
        part.lines.push_back(line(Text("Day"), [&](const run::Run& run) {
            return cell(data(report::localTime(run.events().front().stamp().utcMs, m_offset)));
        }));
        part.lines.push_back(
            line("Kind of run", [](const run::Run& run) { return cell(groupSaid(Group::RunKind, run.began().kind)); }));
        part.lines.push_back(
            line(Text("Press"), [](const run::Run& run) { return cell(editionSaid(run.sources().press)); }));
        part.lines.push_back(
            line(Text("Job"), [](const run::Run& run) { return cell(editionSaid(run.sources().job)); }));
        part.lines.push_back(
            line(Text("Substrate"), [](const run::Run& run) { return cell(editionSaid(run.sources().substrate)); }));
        part.lines.push_back(line(Text("Roll"), [](const run::Run& run) { return cell(data(run.sources().roll.id)); }));
        part.lines.push_back(
            line(Text("Procedure"), [](const run::Run& run) { return cell(editionSaid(run.sources().procedure)); }));
        part.lines.push_back(line(Text("Deviations"), [](const run::Run& run) {
            return cell(Text("%1", {static_cast<std::int64_t>(run.deviations())}));
        }));
        return part;
    }

    /// Every target of every run by its id, in the order of the first run that has it.
    [[nodiscard]] Part aimedAt() const
    {
        Part part{"Aimed at", {}};
        std::set<std::string> seen;
        for (const run::Run& first : m_runs)
            for (const targets::Target& target : first.targets().all) {
                if (!seen.insert(target.id).second) continue;
                part.lines.push_back(line(target.name, [&](const run::Run& run) {
                    return report::valueCell(run.targets().find(target.id), first.began().units);
                }));
            }
        return part;
    }

    [[nodiscard]] Part read() const
    {
        Part part{Text("Read"), {}};
        std::set<std::string> seen;
        for (const run::Run& first : m_runs)
            for (const procedure::Step& step : first.plan().steps) {
                if (step.kind != procedure::StepKind::Reading || !seen.insert(step.id.value).second) continue;
                Line one = line(report::nameOf(step, first.targets().find(step.target)),
                                [&](const run::Run& run) { return readCell(run, step.id); });
                const bool sameMark = std::all_of(one.cells.begin(), one.cells.end(), [&](const Cell& cell) {
                    return cell.mark == one.cells.front().mark;
                });
                one.differs = !sameMark || !tellsSame(step.id);
                part.lines.push_back(std::move(one));
            }
        return part;
    }
    [[nodiscard]] static Cell readCell(const run::Run& run, const run::StepId& step)
    {
        if (run.plan().find(step) == nullptr) return cell(Text());
        const run::StepStanding standing = run.standing(step);
        Cell shown = report::markCell(standing);
        if (standing.answer && standing.answer->value) {
            const report::Mark mark = shown.mark;
            shown = cell(*standing.answer->value);
            shown.mark = mark;
        }
        return shown;
    }
    /// Read alike: no further from the first than the instrument can tell.
    [[nodiscard]] bool tellsSame(const run::StepId& step) const
    {
        const auto answerOf = [&](const run::Run& run) { return run.standing(step).answer; };
        const auto first = m_runs.front().plan().find(step) ? answerOf(m_runs.front()) : std::nullopt;
        return std::all_of(m_runs.begin(), m_runs.end(), [&](const run::Run& run) {
            const auto one = run.plan().find(step) ? answerOf(run) : std::nullopt;
            if (!one || !first) return one.has_value() == first.has_value();
            if (!one->value || !first->value) return one->entered == first->entered;
            const double apart = std::abs(one->value->si() - first->value->si());
            return apart <= std::max({one->uncertainty, first->uncertainty, 1e-9 * std::abs(first->value->si())});
        });
    }

    Result<Part> times()
    {
        Part part{"Minutes, without what was away", {}};
        std::vector<std::optional<RunTime>> all;  // none of a run that is open or void
        std::vector<std::string> stages;
        for (const run::Run& run : m_runs) {
            records::CourseQuery query;
            query.press = run.sources().press.id;
            query.sinceMs = run.events().front().stamp().utcMs;
            query.untilMs = *query.sinceMs + 1;
            const auto took = timesOf(m_reader, query);
            if (!took) return took.error();
            const auto found = std::find_if(took->runs.begin(), took->runs.end(),
                                            [&](const RunTime& one) { return one.run == run.id(); });
            all.push_back(found == took->runs.end() ? std::nullopt : std::optional(*found));
            if (!all.back()) continue;
            for (const RunTime::Stage& stage : all.back()->stages)
                if (std::find(stages.begin(), stages.end(), stage.id) == stages.end()) stages.push_back(stage.id);
        }
        const auto minutes = [](std::int64_t ms) {
            return cell(Quantity(static_cast<double>(ms) / 1000, Kind::Time, "min"));
        };
        const auto timed = [&](Text name, auto of) {
            Line one{std::move(name), {}, false};
            std::int64_t least = INT64_MAX, most = 0;
            for (const std::optional<RunTime>& run : all) {
                if (!run) {
                    one.cells.push_back(cell(Text()));
                    continue;
                }
                const std::int64_t ms = of(*run);
                least = std::min(least, ms);
                most = std::max(most, ms);
                one.cells.push_back(minutes(ms));
            }
            // A quarter and at least a minute apart: less is how a day goes (a proposal, no source).
            constexpr std::int64_t kMinuteMs = 60000;
            one.differs = most - least >= std::max(kMinuteMs, most / 4);
            return one;
        };
        part.lines.push_back(timed("The whole run", [](const RunTime& run) { return run.wholeMs(); }));
        Names names(m_reader);
        for (const std::string& stage : stages)
            part.lines.push_back(timed(names.stage(m_runs.front().sources().press.id, stage), [&](const RunTime& run) {
                for (const RunTime::Stage& one : run.stages)
                    if (one.id == stage) return one.wholeMs();
                return std::int64_t{0};
            }));
        part.lines.push_back(timed(Text("Away"), [](const RunTime& run) { return run.awayMs(); }));
        return part;
    }

    const records::Reader& m_reader;
    std::vector<run::Run> m_runs;
    int m_offset;
};

void addLines(report::Table& table, const std::vector<Part>& parts, bool differing)
{
    for (const Part& part : parts) {
        bool headed = false;
        for (const Line& line : part.lines) {
            if (line.differs != differing) continue;
            if (!headed) {
                Cell heading = cell(part.heading);
                heading.strong = true;
                table.rows.push_back({std::move(heading)});
                headed = true;
            }
            std::vector<Cell> row{cell(line.name)};
            row.insert(row.end(), line.cells.begin(), line.cells.end());
            table.rows.push_back(std::move(row));
        }
    }
}

}  // namespace

Result<std::optional<records::RunRow>> bestRun(const records::Reader& reader, const records::RunRow& like,
                                               std::size_t among)
{
    records::RunQuery query;
    query.press = like.press;
    query.job = like.job;
    query.state = "completed";
    std::optional<records::RunRow> best;
    std::string after;
    std::size_t seen = 0;
    const auto better = [](const records::RunRow& a, const records::RunRow& b) {
        return std::tuple(a.deviations, a.outside, a.endedMs - a.begunMs) <
               std::tuple(b.deviations, b.outside, b.endedMs - b.begunMs);
    };
    do {
        const auto page = reader.runs(query, after);
        if (!page) return page.error();
        for (const records::RunRow& row : page->rows) {
            if (seen++ >= among) break;
            const bool counts = row.seq > 0 && row.run != like.run && row.kind == like.kind &&
                                row.present != seal::presentWord(seal::Present::Void) &&
                                row.present != seal::presentWord(seal::Present::SentBack);
            if (counts && (!best || better(row, *best))) best = row;
        }
        after = page->next;
    } while (!after.empty() && seen < among);
    return best;
}

Result<report::Report> compareRuns(const records::Reader& reader, const std::vector<std::string>& runs,
                                   const std::string& reference, int offsetMinutes)
{
    std::vector<std::string> order = runs;
    std::stable_partition(order.begin(), order.end(), [&](const std::string& id) { return id == reference; });
    const std::set<std::string> different(order.begin(), order.end());
    if (!reference.empty() && !different.contains(reference))
        return refuse("history.compare", reference, "The run to measure the others by is not one of them.",
                      "Choose it as well.");
    if (order.size() < 2 || order.size() > kMostCompared || different.size() != order.size())
        return refuse("history.compare", "compare", "Two to four different runs can stand beside each other.",
                      "Choose them in the list of runs.");
    std::vector<run::Run> folded;
    for (const std::string& id : order) {
        auto run = records::runOf(reader, id);
        if (!run) return run.error();
        folded.push_back(*std::move(run));
    }
    report::Report report;
    report.title = "Runs beside each other";
    report.subtitle = Text("measured by the run %1", {order.front()});
    report.foot = "Told from sealed runs";
    report.units = folded.front().began().units;
    report::Table differing, same;
    differing.caption = "What differs";
    same.caption = "What is the same";
    same.size = report::Size::Small;
    for (report::Table* table : {&differing, &same}) {
        table->columns.push_back({Text(), report::Align::Left, 5});
        for (const std::string& id : order) table->columns.push_back({data(id), report::Align::Left, 4});
    }
    const auto parts = Comparison(reader, std::move(folded), offsetMinutes).parts();
    if (!parts) return parts.error();
    addLines(differing, *parts, true);
    addLines(same, *parts, false);
    report.sections.emplace_back(std::move(differing));
    report.sections.emplace_back(report::Paragraph{
        "Readings no further from those of the first run than their instrument can tell, and times within a quarter of "
        "each other or within a minute, count as the same.",
        false});
    report.sections.emplace_back(std::move(same));
    return report;
}

}  // namespace taut::history
