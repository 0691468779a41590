// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <algorithm>

#include "core/report/report.h"
#include "core/units/plain.h"
#include "tests/core/targets/demo_inputs.h"

using namespace taut;
using report::Chart;

namespace {

struct Drawn {
    inputs::Inputs in;
    targets::Targets targets;
    std::vector<Chart> charts;
    explicit Drawn(const demo::Case& c) : Drawn(demo::inputs(c.press, c.job, c.roll)) {}
    explicit Drawn(inputs::Inputs inputs)
        : in(std::move(inputs)),
          targets(targets::computeTargets(in)),
          charts(report::chartsOf(in, targets))
    {}
    [[nodiscard]] const Chart& called(const std::string& words) const
    {
        for (const Chart& chart : charts)
            if (plain(chart.caption).rfind(words, 0) == 0) return chart;
        FAIL("no chart " << words);
        return charts.front();
    }
};

std::vector<const Chart::Spot*> spots(const Chart& chart, Chart::What what)
{
    std::vector<const Chart::Spot*> all;
    for (const Chart::Spot& spot : chart.spots)
        if (spot.what == what) all.push_back(&spot);
    return all;
}

const Chart::Line& line(const Chart& chart, const std::string& name)
{
    for (const Chart::Line& one : chart.lines)
        if (one.name.source == name) return one;
    FAIL("no line " << name);
    return chart.lines.front();
}

/// The line's height at a diameter, between its points.
double heightAt(const Chart::Line& l, double x)
{
    for (std::size_t i = 1; i < l.points.size(); ++i) {
        const double x0 = l.points[i - 1].first.si(), x1 = l.points[i].first.si();
        if ((x0 - x) * (x1 - x) <= 0 && x0 != x1) {
            const double y0 = l.points[i - 1].second.si(), y1 = l.points[i].second.si();
            return y0 + (y1 - y0) * (x - x0) / (x1 - x0);
        }
    }
    FAIL("beyond the line: " << x);
    return 0;
}

const demo::Case kNorth{"north", "quince-jelly", "R0041"}, kSouth{"south", "cold-brew", "R0048"};

}  // namespace

TEST_CASE("the north press has a chart of what is set and of the tension for its brake and for its clutch")
{
    const Drawn d(kNorth);
    REQUIRE(d.charts.size() == 4);
    const char* captions[] = {"Unwind: setting", "Unwind: tension", "Rewind: setting", "Rewind: tension with taper"};
    for (std::size_t i = 0; i < 4; ++i) CHECK(plain(d.charts[i].caption) == captions[i]);
}

TEST_CASE("a chart begins where one stands now, with the value of the target")
{
    for (const demo::Case& c : demo::cases()) {
        const Drawn d(c);
        INFO(c.press << " " << c.job << " " << c.roll);
        for (const Chart& chart : d.charts) {
            INFO(plain(chart.caption));
            const auto now = spots(chart, Chart::What::Now);
            REQUIRE(now.size() == 1);
            CHECK(chart.lines.front().points.front() == std::pair(now[0]->x, now[0]->y));
            const std::string zone = chart.caption.args.empty() ? "" : std::get<std::string>(chart.caption.args[0]);
            const std::string what = chart.yName.source == "setting" ? "setting" : "total";
            for (const inputs::Zone& z : d.in.press->zones)
                if (z.name == zone)
                    if (const Quantity* target = d.targets.find("tension." + z.id + "." + what)->quantity()) {
                        CHECK(now[0]->y.si() == Approx(target->si()).epsilon(1e-12));
                        CHECK(now[0]->y.kind() == target->kind());
                        CHECK(now[0]->y.unit() == target->unit());
                    }
        }
    }
}

TEST_CASE("every row of a schedule lies on the curve that is drawn")
{
    for (const demo::Case& c : demo::cases()) {
        const Drawn d(c);
        for (const inputs::Zone& z : d.in.press->zones) {
            const auto* schedule = d.targets.schedule("tension." + z.id + ".schedule");
            if (schedule == nullptr) continue;
            INFO(c.press << " " << c.roll << " " << z.id);
            const Chart& tension = d.called(z.name + ": tension");
            for (const auto& row : schedule->rows) {
                CHECK(heightAt(tension.lines.front(), row[0].si()) == Approx(row.back().si()).epsilon(2e-3));
                if (schedule->columns[2] == "setting")
                    CHECK(heightAt(d.called(z.name + ": setting").lines.front(), row[0].si()) ==
                          Approx(row[2].si()).epsilon(2e-3));
            }
        }
    }
}

TEST_CASE("a brake is turned down all the way to the core, and the web tightens when nobody does")
{
    const Drawn d(kNorth);
    const auto& setting = d.called("Unwind: setting").lines.front().points;
    for (std::size_t i = 1; i < setting.size(); ++i) CHECK(setting[i].second.si() < setting[i - 1].second.si());
    const auto& left = line(d.called("Unwind: tension"), "left alone").points;
    REQUIRE(left.size() > 10);
    // Constant torque: T D stays (B1).
    for (const auto& [x, y] : left) CHECK(x.si() * y.si() == Approx(0.5 * 59.4));
    const auto& as = line(d.called("Unwind: tension"), "as set").points;
    for (const auto& [x, y] : as) CHECK(y.si() == Approx(59.4));
}

TEST_CASE("a rewind's tension falls with its taper by the fraction that the press says, and never rises")
{
    const Drawn d(kNorth);
    const auto& taper = line(d.called("Rewind: tension"), "with taper").points;
    for (std::size_t i = 1; i < taper.size(); ++i) CHECK(taper[i].second.si() < taper[i - 1].second.si());
    // B6.hyperbolic with 20 %: T = T0 (1 - 0.2 (1 - d0 / D)).
    const double d0 = taper.front().first.si(), t0 = taper.front().second.si(), end = taper.back().first.si();
    CHECK(taper.back().second.si() == Approx(t0 * (1 - 0.2 * (1 - d0 / end))));
}

TEST_CASE("a loop that follows by itself shows its taper and asks for no turning")
{
    const Drawn d(kSouth);
    const Chart& rewind = d.called("Rewind 1: tension with taper");
    CHECK(rewind.lines.size() == 1);
    CHECK(spots(rewind, Chart::What::Change).empty());
    const auto& points = rewind.lines.front().points;
    CHECK(points.back().second.si() == Approx(0.7 * points.front().second.si()));  // linear, 30 %
    CHECK(d.targets.schedule("tension.rewind_1.changes") == nullptr);
}

TEST_CASE("where a brake must be set again is where the tension left alone reaches its window, as the schedule says")
{
    const Drawn d(kNorth);
    const Chart& chart = d.called("Unwind: setting");
    const auto* schedule = d.targets.schedule("tension.unwind.changes");
    REQUIRE(schedule != nullptr);
    const auto changes = spots(chart, Chart::What::Change);
    REQUIRE(changes.size() == schedule->rows.size());
    REQUIRE(changes.size() >= 3);
    const double high = d.targets.find("tension.unwind.total")->ready()->window.high->si();
    const double setting = d.targets.find("tension.unwind.setting")->quantity()->si();
    // 12 N m/bar from 0.15 bar on: what a setting gives on a diameter.
    const auto tension = [](double pressure, double diameter) { return 2 * 12 * (pressure - 15000) / 1e5 / diameter; };
    double shown = setting;  // what it was set to last
    for (std::size_t i = 0; i < changes.size(); ++i) {
        CHECK(changes[i]->x == schedule->rows[i][0]);
        CHECK(changes[i]->y == schedule->rows[i][1]);
        CHECK(tension(shown, changes[i]->x.si()) == Approx(high));
        // To the line, or where that is a smaller step than the 0.1 bar that the gauge shows, by such a step.
        const double onLine = heightAt(chart.lines.front(), changes[i]->x.si());
        CHECK(changes[i]->y.si() == Approx(std::min(onLine, shown - 10000)));
        shown = changes[i]->y.si();
    }
    // To the core the last setting holds.
    CHECK(tension(shown, 0.1022) <= high * (1 + 1e-9));
}

TEST_CASE("where a setting leaves its range is marked at the diameter that the target names")
{
    // A light web: at the core the brake would have to be set below what it can.
    auto in = demo::inputs("north", "quince-jelly", "R0041");
    auto press = *in.press;
    for (inputs::Zone& zone : press.zones)
        if (zone.id == "unwind") zone.setting.least = Quantity(0.6e5, Kind::Pressure, "bar");
    in.press = std::make_shared<const inputs::Press>(press);
    const Drawn d(in);
    const Chart& chart = d.called("Unwind: setting");
    const auto leaves = spots(chart, Chart::What::Leaves);
    REQUIRE(leaves.size() == 1);
    CHECK(leaves[0]->x.si() == Approx(d.targets.find("tension.unwind.floor_diameter")->quantity()->si()).epsilon(1e-9));
    CHECK(leaves[0]->y.si() == Approx(0.6e5));
    REQUIRE(chart.levels.size() == 1);
    CHECK(chart.levels[0].at.si() == Approx(0.6e5));
    CHECK(spots(Drawn(kNorth).called("Unwind: setting"), Chart::What::Leaves).empty());
}

TEST_CASE("a chart says in sentences what it shows")
{
    const Drawn d(kNorth);
    std::string said;
    for (const Text& sentence : d.called("Unwind: setting").summary) said += plain(sentence) + ' ';
    CHECK(said.find("1.39 bar at a diameter of 500 mm") != std::string::npos);
    CAPTURE(said);
    CHECK(said.find("set again at these diameters at the latest: 409.1 mm, ") != std::string::npos);
    for (const demo::Case& c : demo::cases())
        for (const Chart& chart : Drawn(c).charts) CHECK_FALSE(chart.summary.empty());
}

TEST_CASE("without the press a chart still draws what the target set holds")
{
    Drawn d(kNorth);
    inputs::Inputs none = d.in;
    none.press = nullptr;
    const auto charts = report::chartsOf(none, d.targets);
    REQUIRE(charts.size() == 4);
    for (const Chart& chart : charts) {
        CHECK(chart.levels.empty());
        CHECK(chart.lines.size() == 1);
    }
    const auto* schedule = d.targets.schedule("tension.rewind.schedule");
    CHECK(std::any_of(charts.begin(), charts.end(), [&](const Chart& chart) {
        return chart.lines.front().points.size() == schedule->rows.size() &&
               chart.lines.front().points.back().second == schedule->rows.back()[3];
    }));
}
