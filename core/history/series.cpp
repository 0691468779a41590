// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/history/series.h"

#include <algorithm>
#include <cmath>

#include "core/units/parse.h"
#include "core/units/unit.h"

namespace taut::history {

namespace {

constexpr std::size_t kPage = 500;

std::optional<Quantity> moved(const std::optional<double>& limit, double by, const Series& series)
{
    if (!limit) return std::nullopt;
    return series.quantity(*limit - by);
}

}  // namespace

std::optional<Quantity> quantityOf(const records::Reading& reading)
{
    for (const Unit& unit : allUnits()) {
        if (&unit != &siUnit(unit.kind) || unit.symbol != reading.unit) continue;
        const auto entered = parseQuantity(reading.entered, unit.kind);
        // A correction of the text that changes nothing of the value is still this reading.
        if (!entered || std::abs(entered->si() - reading.value) > 1e-6 * std::max(1e-9, std::abs(reading.value)))
            continue;
        return Quantity(reading.value, unit.kind, entered->unit());
    }
    for (const Unit& unit : allUnits())
        if (&unit == &siUnit(unit.kind) && unit.symbol == reading.unit) return Quantity(reading.value, unit.kind);
    return std::nullopt;
}

Result<Series> seriesOf(const records::Reader& reader, records::SeriesQuery query, Measure measure, std::size_t most)
{
    Series series;
    series.press = query.press;
    series.target = query.target;
    series.job = query.job;
    series.substrate = query.substrate;
    series.measure = measure;
    std::vector<records::Reading> newestFirst;
    std::string after;
    do {
        query.limit = std::min(kPage, most - newestFirst.size());
        const auto page = reader.readings(query, after);
        if (!page) return page.error();
        for (const records::Reading& reading : page->rows) {
            if (measure == Measure::FromTarget && !reading.aimed)
                ++series.unaimed;
            else
                newestFirst.push_back(reading);
        }
        after = page->next;
    } while (!after.empty() && newestFirst.size() < most);
    series.older = !after.empty();
    if (newestFirst.empty())
        return refuse("stats.too_few", query.target, "There is no such reading in the sealed runs that were chosen.",
                      "Choose another reading, or a longer time.");
    const auto newest = quantityOf(newestFirst.front());
    if (!newest)
        return refuse("history.kind", query.target,
                      {"\"%1\" is in no unit that this program knows.", {newestFirst.front().unit}},
                      "Open the logbook with the program that wrote it.");
    series.kind = newest->kind();
    series.unit = newest->unit();
    for (auto it = newestFirst.rbegin(); it != newestFirst.rend(); ++it) {
        const double by = measure == Measure::FromTarget ? *it->aimed : 0;
        Point point{it->seq,      it->run,  it->step,       it->press, it->job, it->substrate,         it->roll,
                    it->pressSha, it->atMs, it->value - by, {},        {},      it->first == "outside"};
        point.low = moved(it->low, by, series);
        point.high = moved(it->high, by, series);
        series.points.push_back(std::move(point));
    }
    return series;
}

}  // namespace taut::history
