// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <set>

#include "core/report/parts.h"

namespace taut::report {

namespace {

using targets::Schedule;

std::size_t columnOf(const Schedule& schedule, std::string_view name)
{
    const auto at = std::find(schedule.columns.begin(), schedule.columns.end(), name);
    return static_cast<std::size_t>(at - schedule.columns.begin());
}

/// "tension.unwind.schedule" -> "unwind"
std::string instanceOf(std::string_view id)
{
    const std::size_t from = id.find('.') + 1, to = id.rfind('.');
    return std::string(id.substr(from, to - from));
}

/// One line of a chart, and what frames it.
struct Drawn {
    Chart::Line line;
    Kind kind{};
    std::vector<Quantity> limits;
    std::optional<std::pair<Quantity, Quantity>> now;
};

std::optional<Drawn> drawnOf(const Ground& ground, const Schedule& schedule)
{
    const std::size_t x = columnOf(schedule, "diameter"), y = columnOf(schedule, "setting");
    if (x == schedule.columns.size() || y == schedule.columns.size() || schedule.rows.size() < 2) return std::nullopt;
    const std::string zoneId = instanceOf(schedule.id);
    const inputs::Zone* zone = ground.inputs.press ? ground.inputs.press->zone(zoneId) : nullptr;
    Drawn drawn;
    drawn.line.name = data(zone != nullptr && !zone->name.empty() ? zone->name : zoneId);
    for (const auto& row : schedule.rows) drawn.line.points.emplace_back(row[x], row[y]);
    drawn.kind = schedule.rows.front()[y].kind();
    if (zone != nullptr) {
        for (const auto& limit : {zone->setting.least, zone->setting.most})
            if (limit && limit->kind() == drawn.kind) drawn.limits.push_back(*limit);
    }
    const targets::Target* setting = ground.targets->find("tension." + zoneId + ".setting");
    const Quantity* now = setting == nullptr ? nullptr : setting->quantity();
    if (now != nullptr && now->kind() == drawn.kind) {
        for (const auto& row : schedule.rows)
            if (row[y].si() == now->si()) drawn.now = std::pair{row[x], *now};
    }
    return drawn;
}

Text yNameOf(const std::vector<Text>& names) { return names.size() == 1 ? Text("setting") : Text("settings"); }

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
    std::vector<Cell> row{
        number(station.number), {}, {}, {}, {}, cell(station.dryer.empty() ? Text() : data(station.dryer))};
    if (deck == nullptr) {
        row[1] = cell("off impression");
        return row;
    }
    row[1] = cell(data(deck->ink));
    row[1].strong = true;
    row[2] = orNothing(deck->aniloxScreen);
    row[3] = orNothing(deck->aniloxVolume);
    row[4] = orNothing(deck->plate);
    return row;
}

}  // namespace

std::vector<Chart> charts(const Ground& ground)
{
    std::vector<Chart> all;
    std::vector<Kind> kinds;
    std::vector<std::vector<Text>> names;
    const auto add = [&](const Schedule& schedule) {
        auto drawn = drawnOf(ground, schedule);
        if (!drawn) return;
        const auto known = std::find(kinds.begin(), kinds.end(), drawn->kind);
        const auto index = static_cast<std::size_t>(known - kinds.begin());
        if (known == kinds.end()) {
            kinds.push_back(drawn->kind);
            names.emplace_back();
            all.push_back(Chart{"Settings against diameter", "diameter", {}, {}, {}, std::nullopt});
        }
        Chart& chart = all[index];
        names[index].push_back(drawn->line.name);
        chart.yName = yNameOf(names[index]);
        if (chart.lines.empty()) {
            chart.limits = drawn->limits;
            chart.now = drawn->now;
        } else if (chart.limits != drawn->limits) {
            chart.limits.clear();  // limits that hold for one line only would mislead
        }
        chart.lines.push_back(std::move(drawn->line));
    };
    // The zone at the unwind first: it is the one turned by hand all shift long.
    const std::string first = ground.inputs.press && !ground.inputs.press->zones.empty()
                                  ? "tension." + ground.inputs.press->zones.front().id + ".schedule"
                                  : std::string();
    if (const Schedule* schedule = ground.targets->schedule(first)) add(*schedule);
    for (const Schedule& schedule : ground.targets->schedules)
        if (schedule.id != first) add(schedule);
    return all;
}

std::optional<Table> stations(const Ground& ground)
{
    if (!ground.inputs.press || ground.inputs.press->stations.empty()) return std::nullopt;
    Table table;
    table.caption = "Stations";
    table.columns = {{"no.", Align::Left, 2},    {"ink", Align::Left, 9},    {"screen", Align::Right, 8},
                     {"cells", Align::Right, 7}, {"plate", Align::Right, 7}, {"dryer", Align::Left, 5}};
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
        if (isGrave(step.signal) && !step.caution.empty() && said.insert(step.caution.source).second)
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
        Cell value = valueCell(&target);
        value.strong = true;
        table.rows.push_back({cell(target.name), std::move(value), windowCell(ready->window), cell(data(target.id)),
                              cell(data(ready->because.formula))});
    }
    if (table.rows.empty()) return std::nullopt;
    return table;
}

}  // namespace taut::report
