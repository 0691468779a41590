// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/practice/strip_charts.h"

#include <algorithm>

#include <QVBoxLayout>

#include "app/widgets/controls.h"
#include "app/widgets/room.h"
#include "app/widgets/theme.h"

namespace taut::app {

namespace {

using report::Chart;

/// Of ten samples a second these are drawn: a swing of a second is still seen, and lines stay lines.
constexpr std::size_t kEvery = 2;
/// Where the web lies is told for so many rollers, in the order of the web: more lines are not told apart.
constexpr std::size_t kMostPlaces = 4;

/// Seconds before now.
Quantity when(const StripSample& sample, double now) { return {sample.at - now, Kind::Time, "s"}; }

template <class Of>
Chart::Line lineOf(const PracticeSession& practice, Text name, const Of& value)
{
    Chart::Line line{std::move(name), {}};
    const auto& samples = practice.samples();
    const double now = samples.back().at;
    for (std::size_t i = (samples.size() - 1) % kEvery; i < samples.size(); i += kEvery)
        line.points.emplace_back(when(samples[i], now), value(samples[i]));
    // Before the first minute is over the chart is as wide as after it.
    constexpr double kMinute = 60;
    if (samples.back().at - samples.front().at < kMinute - 1)
        line.points.insert(line.points.begin(), {Quantity(-kMinute, Kind::Time, "s"), line.points.front().second});
    return line;
}

Chart tensionChart(const PracticeSession& practice, std::size_t zone)
{
    const Lesson& lesson = *practice.lesson();
    const std::string& id = practice.world()->line().zones[zone].id;
    const inputs::Zone* said = lesson.inputs.press->zone(id);
    Chart chart;
    chart.caption = Text("Tension of the zone %1, the last minute", {said != nullptr ? said->name : id});
    chart.xName = "Seconds before now";
    chart.yName = Text("Tension: %1", {said != nullptr ? said->name : id});
    chart.lines.push_back(
        lineOf(practice, {}, [&](const StripSample& one) { return Quantity(one.tensions[zone], Kind::Force, "N"); }));
    const targets::Target* target = lesson.targets.find("tension." + id + ".total");
    if (const targets::Ready* ready = target != nullptr ? target->ready() : nullptr)
        if (ready->window.low && ready->window.high)
            chart.band = Chart::Band{*ready->window.low, *ready->window.high, "window of this job"};
    chart.summary.push_back(Text("Now %1.", {chart.lines.front().points.back().second.magnitude()}));
    if (chart.band)
        chart.summary.push_back(
            Text("The window goes from %1 to %2.", {chart.band->low.magnitude(), chart.band->high.magnitude()}));
    return chart;
}

/// The rollers behind which a guide looks, and the print stations.
std::vector<std::size_t> placesOf(const practice::World& world)
{
    std::vector<std::size_t> all;
    for (const practice::Guide& guide : world.guides())
        all.push_back(std::min(guide.span, world.line().places.size() - 1));
    for (std::size_t i = 0; i < world.line().places.size(); ++i)
        if (world.line().places[i].station) all.push_back(i);
    std::sort(all.begin(), all.end());
    all.erase(std::unique(all.begin(), all.end()), all.end());
    if (all.size() > kMostPlaces) all.resize(kMostPlaces);
    return all;
}

Chart placeChart(const PracticeSession& practice)
{
    const practice::World& world = *practice.world();
    Chart chart;
    chart.caption = "Where the web lies sideways, the last minute";
    chart.xName = "Seconds before now";
    chart.yName = "To the drive side";
    for (const std::size_t at : placesOf(world)) {
        const practice::LinePlace& place = world.line().places[at];
        const Text name = place.station ? Text("station %1", {std::int64_t{*place.station}}) : Text("%1", {place.id});
        chart.lines.push_back(lineOf(
            practice, name, [&](const StripSample& one) { return Quantity(one.places[at], Kind::Length, "mm"); }));
        chart.summary.push_back(
            Text("At %1 now %2.", {std::vector<Text>{name}, chart.lines.back().points.back().second.magnitude()}));
    }
    return chart;
}

}  // namespace

std::vector<Chart> stripChartsOf(const PracticeSession& practice)
{
    std::vector<Chart> all;
    if (practice.world() == nullptr || practice.samples().empty()) return all;
    for (std::size_t zone = 0; zone < practice.world()->line().zones.size(); ++zone)
        all.push_back(tensionChart(practice, zone));
    if (Chart places = placeChart(practice); !places.lines.empty()) all.push_back(std::move(places));
    return all;
}

StripCharts::StripCharts(QWidget* parent) : QWidget(parent)
{
    auto* body = new QWidget;
    m_rows = new QVBoxLayout(body);
    m_rows->setContentsMargins(0, 4, 6, 4);
    m_rows->addWidget(wrapped(tr("The press itself does not show all of this."), "small", body));
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(new ScrollRoom(body, this));
}

void StripCharts::show(const PracticeSession& practice)
{
    const std::vector<Chart> all = stripChartsOf(practice);
    while (m_charts.size() < all.size()) {
        m_charts.push_back(new ChartWidget(this));
        m_rows->addWidget(m_charts.back());
    }
    while (m_charts.size() > all.size()) {
        delete m_charts.back();
        m_charts.pop_back();
    }
    for (std::size_t i = 0; i < all.size(); ++i) m_charts[i]->setChart(all[i], practice.lesson()->inputs.press->units);
}

}  // namespace taut::app
