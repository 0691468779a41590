// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <set>

#include "core/report/parts.h"

namespace taut::report {

namespace {

using targets::Schedule;

/// "tension.unwind.schedule" -> "unwind"
std::string instanceOf(std::string_view id)
{
    const std::size_t from = id.find('.') + 1, to = id.rfind('.');
    return std::string(id.substr(from, to - from));
}

std::string zoneNameOf(const Ground& ground, const std::string& zoneId)
{
    const inputs::Zone* zone = ground.inputs.press ? ground.inputs.press->zone(zoneId) : nullptr;
    return zone != nullptr && !zone->name.empty() ? zone->name : zoneId;
}

bool isGrave(procedure::SignalWord word) { return word == procedure::SignalWord::Danger; }

/// A cell for something that may not be said.
template <class T>
Cell orNothing(const T& maybe)
{
    return maybe ? cell(maybe->quantity()) : Cell{};
}

Cell number(int n) { return cell(Text("%1", {static_cast<std::int64_t>(n)})); }

std::vector<Cell> stationRow(const inputs::Station& station, const inputs::Deck* deck)
{
    std::vector<Cell> row(7);
    row[0] = number(station.number);
    if (!station.dryer.empty()) row[6] = cell(Text(station.dryer));
    if (deck == nullptr) {
        row[1] = cell("off impression");
        return row;
    }
    row[1] = cell(data(deck->ink));
    row[1].strong = true;
    row[2] = orNothing(deck->aniloxScreen);
    row[3] = orNothing(deck->aniloxVolume);
    row[4] = orNothing(deck->plate);
    row[5] = orNothing(deck->tape);
    return row;
}

}  // namespace

std::vector<Table> schedules(const Ground& ground)
{
    std::vector<Table> all;
    for (const Schedule& schedule : ground.targets->schedules) {
        Table table;
        const bool changes = schedule.id.size() > 8 && schedule.id.compare(schedule.id.size() - 8, 8, ".changes") == 0;
        table.caption = Text(changes ? "%1: set it again at these diameters at the latest"
                                     : "%1: what to set as the diameter changes",
                             {zoneNameOf(ground, instanceOf(schedule.id))});
        for (const std::string& column : schedule.columns) table.columns.push_back({Text(column), Align::Right, 1});
        for (const auto& row : schedule.rows) {
            table.rows.emplace_back();
            for (const Quantity& quantity : row) table.rows.back().push_back(cell(quantity));
        }
        all.push_back(std::move(table));
    }
    return all;
}

std::optional<Table> stations(const Ground& ground)
{
    if (!ground.inputs.press || ground.inputs.press->stations.empty()) return std::nullopt;
    Table table;
    table.caption = "Stations";
    table.columns = {{"no.", Align::Left, 1},    {"ink", Align::Left, 4},    {"screen", Align::Right, 2},
                     {"cells", Align::Right, 2}, {"plate", Align::Right, 2}, {"tape", Align::Right, 2},
                     {"dryer", Align::Left, 2}};
    table.size = Size::Small;
    for (const inputs::Station& station : ground.inputs.press->stations) {
        const inputs::Deck* deck = nullptr;
        if (ground.inputs.job)
            for (const inputs::Deck& one : ground.inputs.job->decks)
                if (one.station == station.number) deck = &one;
        table.rows.push_back(stationRow(station, deck));
    }
    return table;
}

std::vector<Caution> cautions(const Ground& ground)
{
    std::vector<Caution> all;
    all.push_back({procedure::SignalWord::Notice,
                   "This sheet tells what was computed and what people said they saw. The press manual, this site's "
                   "procedures, local rules and the people authorised here come before it."});
    for (const Finding& finding : ground.targets->findings)
        if (finding.severity != Severity::Note) all.push_back({procedure::SignalWord::Caution, finding.text});
    std::set<std::string> said;
    for (const procedure::Step& step : ground.plan->steps)
        if (isGrave(step.signal) && !step.caution.empty() && said.insert(step.caution.source.str()).second)
            all.push_back({step.signal, step.caution});
    return all;
}

std::optional<Table> otherTargets(const Ground& ground)
{
    std::set<std::string> read;
    for (const procedure::Step& step : ground.plan->steps) read.insert(step.target);
    Table table;
    table.caption = "Also computed for this press, job, substrate and roll";
    table.columns = {{"what", Align::Left, 10},
                     {"value", Align::Right, 5},
                     {"window", Align::Left, 8},
                     {"id", Align::Left, 9},
                     {"by", Align::Left, 4}};
    for (const targets::Target& target : ground.targets->all) {
        const targets::Ready* ready = target.ready();
        if (read.count(target.id) != 0 || ready == nullptr) continue;
        Cell value = valueCell(&target, ground.units);
        value.strong = true;
        table.rows.push_back({cell(target.name), std::move(value), windowCell(ready->window), cell(data(target.id)),
                              cell(data(ready->because.formula.str()))});
    }
    if (table.rows.empty()) return std::nullopt;
    return table;
}

}  // namespace taut::report
