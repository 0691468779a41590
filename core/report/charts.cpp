// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "core/report/report.h"
#include "core/targets/ramp.h"

namespace taut::report {

namespace {

using targets::Ramp;
using targets::RampPoint;
using targets::Schedule;

constexpr int kSteps = 48;  // pieces of a drawn curve

/// What one zone's charts are made from; `ramp` is missing where the press's profile is.
struct Zone {
    const targets::Targets* targets = nullptr;
    const Schedule* schedule = nullptr;
    std::optional<Ramp> ramp;
    std::string id, name;
};

std::size_t columnOf(const Schedule& schedule, std::string_view name)
{
    const auto at = std::find(schedule.columns.begin(), schedule.columns.end(), name);
    return static_cast<std::size_t>(at - schedule.columns.begin());
}

Chart::Line rowsOf(const Schedule& schedule, std::size_t x, std::size_t y)
{
    Chart::Line line;
    for (const auto& row : schedule.rows) line.points.emplace_back(row[x], row[y]);
    return line;
}

/// A curve through the ramp; the rows of the schedule lie on it.
Chart::Line curveOf(const Ramp& ramp, std::optional<Quantity> (*value)(const RampPoint&))
{
    Chart::Line line;
    for (int i = 0; i <= kSteps; ++i) {
        // The ends themselves, and not what rounding makes of them.
        const double share = static_cast<double>(i) / kSteps;
        const double d = i == 0 ? ramp.start : i == kSteps ? ramp.end : ramp.start + (ramp.end - ramp.start) * share;
        const auto point = targets::pointAt(ramp, d);
        if (!point) continue;
        if (auto y = value(*point)) line.points.emplace_back(point->diameter, *std::move(y));
    }
    return line;
}

std::optional<Quantity> settingOf(const RampPoint& p) { return p.setting; }
std::optional<Quantity> tensionOf(const RampPoint& p) { return p.tension; }

double largestOf(const Chart::Line& line)
{
    double largest = 0;
    for (const auto& [x, y] : line.points) largest = std::max(largest, y.si());
    return largest;
}

/// A limit far beyond everything drawn would press the line flat, and tell nothing.
bool worthDrawing(const Quantity& limit, const Chart::Line& line) { return limit.si() <= 1.6 * largestOf(line); }

Text at(const std::pair<Quantity, Quantity>& first, const std::pair<Quantity, Quantity>& last)
{
    return {"%1 at a diameter of %2, %3 at %4.",
            {first.second.magnitude(), first.first.magnitude(), last.second.magnitude(), last.first.magnitude()}};
}

Text nowName(const Zone& zone) { return zone.ramp && !zone.ramp->unwinding ? Text("empty core") : Text("now"); }

/// Where it must be set again, and where it cannot be set any more.
void addSpots(const Zone& zone, Chart& chart)
{
    if (const Schedule* changes = zone.targets->schedule("tension." + zone.id + ".changes")) {
        std::vector<Text> diameters;
        for (const auto& row : changes->rows) {
            chart.spots.push_back({Chart::What::Change, row[0], row[1], "set again"});
            diameters.emplace_back("%1", std::vector<TextArg>{row[0].magnitude()});
        }
        chart.summary.emplace_back("To be set again at these diameters at the latest: %1.",
                                   std::vector<TextArg>{std::move(diameters)});
    }
    if (!zone.ramp) return;
    for (const targets::Crossing& crossing : targets::rangeCrossings(*zone.ramp)) {
        const auto point = targets::pointAt(*zone.ramp, crossing.diameter);
        if (!point || !point->setting) continue;
        chart.spots.push_back({Chart::What::Leaves, point->diameter, *point->setting, "leaves its range"});
        chart.summary.emplace_back("At a diameter of %1 it crosses %2, the end of what can be set.",
                                   std::vector<TextArg>{point->diameter.magnitude(), point->setting->magnitude()});
    }
}

std::optional<Chart> settingChart(const Zone& zone)
{
    const std::size_t x = columnOf(*zone.schedule, "diameter"), y = columnOf(*zone.schedule, "setting");
    const std::size_t columns = zone.schedule->columns.size();
    if (x == columns || y == columns || zone.schedule->rows.size() < 2) return std::nullopt;
    Chart chart;
    chart.caption = Text("%1: setting", {zone.name});
    chart.xName = "diameter";
    chart.yName = "setting";
    Chart::Line line = zone.ramp ? curveOf(*zone.ramp, settingOf) : rowsOf(*zone.schedule, x, y);
    if (line.points.size() < 2) return std::nullopt;
    chart.summary.push_back(at(line.points.front(), line.points.back()));
    if (zone.ramp) {
        const inputs::Setting& range = zone.ramp->zone.setting;
        if (range.least && worthDrawing(*range.least, line)) chart.levels.push_back({*range.least, "least"});
        if (range.most && worthDrawing(*range.most, line)) chart.levels.push_back({*range.most, "most"});
    }
    const auto& first = zone.schedule->rows.front();
    chart.spots.push_back({Chart::What::Now, first[x], first[y], nowName(zone)});
    addSpots(zone, chart);
    chart.lines.push_back(std::move(line));
    return chart;
}

/// What the tension becomes when nobody touches the setting: as far as it is still near the window.
Chart::Line leftAlone(const Ramp& ramp)
{
    constexpr double kBeyond = 1.25;
    const double most = kBeyond * std::max(ramp.total, ramp.high.value_or(ramp.total));
    Chart::Line line{"left alone", {}};
    for (int i = 0; i <= kSteps; ++i) {
        const auto point = targets::pointAt(ramp, ramp.start + (ramp.end - ramp.start) * i / kSteps);
        if (!point || point->leftAlone.si() > most) break;
        line.points.emplace_back(point->diameter, point->leftAlone);
    }
    return line;
}

std::optional<Chart> tensionChart(const Zone& zone)
{
    const std::size_t x = columnOf(*zone.schedule, "diameter"), y = columnOf(*zone.schedule, "tension");
    const std::size_t columns = zone.schedule->columns.size();
    if (x == columns || y == columns || zone.schedule->rows.size() < 2) return std::nullopt;
    Chart chart;
    chart.xName = "diameter";
    chart.yName = "tension";
    Chart::Line line = zone.ramp ? curveOf(*zone.ramp, tensionOf) : rowsOf(*zone.schedule, x, y);
    if (line.points.size() < 2) return std::nullopt;
    const bool tapers = line.points.front().second.si() != line.points.back().second.si();
    chart.caption = tapers ? Text("%1: tension with taper", {zone.name}) : Text("%1: tension", {zone.name});
    chart.summary.push_back(at(line.points.front(), line.points.back()));
    const auto& first = zone.schedule->rows.front();
    chart.spots.push_back({Chart::What::Now, first[x], first[y], nowName(zone)});
    const targets::Target* total = zone.targets->find("tension." + zone.id + ".total");
    const targets::Ready* ready = total == nullptr ? nullptr : total->ready();
    if (ready != nullptr && ready->window.low && ready->window.high) {
        chart.band = Chart::Band{*ready->window.low, *ready->window.high, "window"};
        chart.summary.emplace_back("The window is %1 to %2.", std::vector<TextArg>{ready->window.low->magnitude(),
                                                                                   ready->window.high->magnitude()});
    }
    const bool byHand = zone.ramp && zone.ramp->byHand;
    if (byHand) line.name = tapers ? Text("with taper") : Text("as set");
    chart.lines.push_back(std::move(line));
    if (byHand) {
        Chart::Line left = leftAlone(*zone.ramp);
        if (left.points.size() > 1) {
            const auto& [diameter, tension] = left.points.back();
            chart.summary.emplace_back("With the setting left alone it would be %1 at %2.",
                                       std::vector<TextArg>{tension.magnitude(), diameter.magnitude()});
            chart.lines.push_back(std::move(left));
        }
    }
    return chart;
}

/// "tension.unwind.schedule" -> "unwind"; "" for another kind of schedule.
std::string zoneOf(std::string_view id)
{
    constexpr std::string_view kFamily = "tension.", kEnd = ".schedule";
    if (id.substr(0, kFamily.size()) != kFamily || id.size() <= kFamily.size() + kEnd.size()) return {};
    if (id.substr(id.size() - kEnd.size()) != kEnd) return {};
    return std::string(id.substr(kFamily.size(), id.size() - kFamily.size() - kEnd.size()));
}

}  // namespace

std::vector<Chart> chartsOf(const inputs::Inputs& inputs, const targets::Targets& targets)
{
    // In web order, the unwind first: it is the one turned by hand all shift long.
    std::vector<std::string> zones;
    if (inputs.press)
        for (const inputs::Zone& zone : inputs.press->zones) zones.push_back(zone.id);
    for (const Schedule& schedule : targets.schedules)
        if (const std::string id = zoneOf(schedule.id);
            !id.empty() && std::find(zones.begin(), zones.end(), id) == zones.end())
            zones.push_back(id);
    std::vector<Chart> all;
    for (const std::string& id : zones) {
        Zone zone{&targets, targets.schedule("tension." + id + ".schedule"), std::nullopt, id, id};
        if (zone.schedule == nullptr) continue;
        if (inputs.press) {
            zone.ramp = targets::rampOf(*inputs.press, targets, id);
            if (const inputs::Zone* said = inputs.press->zone(id); said != nullptr && !said->name.empty())
                zone.name = said->name;
        }
        if (auto chart = settingChart(zone)) all.push_back(std::move(*chart));
        if (auto chart = tensionChart(zone)) all.push_back(std::move(*chart));
    }
    return all;
}

}  // namespace taut::report
