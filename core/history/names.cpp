// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/history/names.h"

#include <algorithm>
#include <set>

#include "core/records/sheet.h"
#include "core/report/parts.h"

namespace taut::history {

const std::vector<run::Run>& Names::runsOf(const std::string& press)
{
    if (const auto found = m_runs.find(press); found != m_runs.end()) return found->second;
    std::vector<run::Run>& runs = m_runs[press];
    records::RunQuery query;
    query.press = press;
    query.state = "completed";
    const auto page = m_reader.runs(query, "");
    if (!page) return runs;
    std::set<std::string> kinds;
    for (const records::RunRow& row : page->rows) {
        if (!kinds.insert(row.kind).second) continue;
        if (auto run = records::runOf(m_reader, row.run)) runs.push_back(*std::move(run));
    }
    return runs;
}

Text Names::target(const std::string& press, const std::string& id)
{
    for (const run::Run& run : runsOf(press))
        if (const targets::Target* target = run.targets().find(id)) return target->name;
    return report::data(id);
}

Text Names::step(const std::string& press, const std::string& id)
{
    for (const run::Run& run : runsOf(press))
        if (const procedure::Step* step = run.plan().find(run::StepId{id}))
            return report::nameOf(*step, run.targets().find(step->target));
    return report::data(id);
}

Text Names::said(const std::string& press, const std::string& id)
{
    for (const run::Run& run : runsOf(press))
        if (const procedure::Step* step = run.plan().find(run::StepId{id})) return report::firstSentence(step->say);
    return report::data(id);
}

Text Names::stage(const std::string& press, const std::string& id)
{
    for (const run::Run& run : runsOf(press))
        for (const procedure::PlanStage& stage : run.plan().stages)
            if (stage.id == id) return stage.title;
    return report::data(id);
}

Text Names::remedy(const std::string& press, const std::string& stepId, int number)
{
    for (const run::Run& run : runsOf(press))
        if (const procedure::Step* step = run.plan().find(run::StepId{stepId}))
            if (number > 0 && static_cast<std::size_t>(number) <= step->tries.size())
                return step->tries[static_cast<std::size_t>(number) - 1];
    return {};
}

UnitSystem Names::units(const std::string& press)
{
    if (!press.empty()) {
        const std::vector<run::Run>& runs = runsOf(press);
        return runs.empty() ? UnitSystem::Metric : runs.front().began().units;
    }
    const auto page = m_reader.runs({}, "");
    if (!page || page->rows.empty()) return UnitSystem::Metric;
    std::set<std::string> presses;
    for (const records::RunRow& row : page->rows) presses.insert(row.press);
    return std::all_of(presses.begin(), presses.end(), [this](const auto& one) { return units(one) == UnitSystem::Us; })
               ? UnitSystem::Us
               : UnitSystem::Metric;
}

std::string dayText(std::int64_t utcMs, int offsetMinutes)
{
    constexpr std::size_t kDay = 10;
    return report::localTime(utcMs, offsetMinutes).substr(0, kDay);
}

}  // namespace taut::history
