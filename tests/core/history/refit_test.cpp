// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <cmath>
#include <filesystem>
#include <random>

#include "core/base/file.h"
#include "core/history/refit.h"
#include "core/inputs/inputs.h"
#include "core/units/plain.h"

using namespace taut;
using namespace taut::history;

namespace {

std::string northText()
{
    const auto text = readFile(std::filesystem::path(TAUTWEB_SOURCE_DIR) / "resources" / "presses" / "north.toml");
    REQUIRE(text);
    return *text;
}

inputs::Press pressFrom(const std::string& text)
{
    Findings notes;
    const auto press = inputs::readPress(text, "north", notes);
    REQUIRE(press);
    return *press;
}

/// Runs of a brake that makes `slope` N m/bar from `zero` bar on; rolls from 300 to 900 mm, the tension read to 2 %.
std::vector<RunPull> pullsOf(double slope, double zero, std::size_t count, double scatter = 0.02)
{
    std::mt19937 chance(41);
    std::vector<RunPull> pulls;
    for (std::size_t i = 0; i < count; ++i) {
        const double diameter = 0.3 + 0.6 * static_cast<double>(i) / static_cast<double>(count);
        const double bar = 0.6 + 1.4 * static_cast<double>((i * 7) % count) / static_cast<double>(count);
        const double off = 1 + scatter * (static_cast<double>(chance() % 2001) / 1000.0 - 1);
        const double torque = slope * (bar - zero) * off;
        const double tension = torque * 2 / diameter;
        pulls.push_back({"north-2026-01-" + std::to_string(10 + i), static_cast<std::int64_t>(i) * 86400000,
                         Quantity(bar * 1e5, Kind::Pressure, "bar"), Quantity(tension, Kind::Force, "N"),
                         Quantity(diameter, Kind::Length, "mm"), torque});
    }
    return pulls;
}

double perBar(const Quantity& torquePerPressure) { return torquePerPressure.si() * 1e5; }

}  // namespace

TEST_CASE("the constant that the runs measured is found, and whether the profile has it")
{
    const inputs::Press press = pressFrom(northText());  // 12 N m/bar from 0.15 bar on
    const auto worn = refitFrom(pullsOf(10.2, 0.15, 20), press, "unwind");
    REQUIRE(worn);
    CHECK(perBar(worn->now.torquePerSetting) == Approx(10.2).epsilon(0.03));
    CHECK(worn->now.zeroSetting.si() / 1e5 == Approx(0.15).margin(0.06));
    CHECK(worn->drifted);
    const physics::Interval interval = worn->fit.coefficients[1].interval;
    CHECK(interval.low * 1e5 < 10.2);
    CHECK(interval.high * 1e5 > 10.2);
    CHECK(worn->fit.outliers.empty());

    const auto sound = refitFrom(pullsOf(12, 0.15, 20), press, "unwind");
    REQUIRE(sound);
    CHECK_FALSE(sound->drifted);
}

TEST_CASE("a run that does not belong to the others is marked, and not left out")
{
    auto pulls = pullsOf(12, 0.15, 20);
    pulls[7].torque *= 1.6;
    const auto refit = refitFrom(pulls, pressFrom(northText()), "unwind");
    REQUIRE(refit);
    REQUIRE(refit->fit.outliers.size() == 1);
    CHECK(refit->fit.outliers.front() == 7);
    CHECK(refit->pulls.size() == 20);
    const report::Report report = refitReport(*refit, UnitSystem::Metric, 60);
    CHECK(plain(report.title) == "What the setting of " + refit->zoneName + " makes now");
    CHECK(plain(report.subtitle) == "North press, by its signed runs");
    std::size_t marked = 0;
    for (const report::Section& section : report.sections)
        if (const auto* table = std::get_if<report::Table>(&section))
            for (const auto& row : table->rows)
                if (const auto* said = std::get_if<Text>(&row.back().value); said && said->source == "does not belong")
                    ++marked;
    CHECK(marked == 1);
}

TEST_CASE("too few runs, settings too near together and a zone without a constant are refused")
{
    const inputs::Press press = pressFrom(northText());
    const auto few = refitFrom(pullsOf(12, 0.15, kFewestPulls - 1), press, "unwind");
    REQUIRE_FALSE(few);
    CHECK(few.error().code == "refit.too_few");
    REQUIRE(refitFrom(pullsOf(12, 0.15, kFewestPulls), press, "unwind"));

    auto near = pullsOf(12, 0.15, 20);
    for (RunPull& pull : near) {
        const double bar = 1.0 + 0.001 * static_cast<double>(&pull - near.data());
        pull.setting = Quantity(bar * 1e5, Kind::Pressure, "bar");
        pull.torque = 12 * (bar - 0.15);
    }
    const auto narrow = refitFrom(near, press, "unwind");
    REQUIRE_FALSE(narrow);
    CHECK(narrow.error().code == "refit.no_spread");

    const auto draw = refitFrom(pullsOf(12, 0.15, 20), press, "print");
    REQUIRE_FALSE(draw);
    CHECK(draw.error().code == "refit.no_zone");
    CHECK(refittable(press) == std::vector<std::string>{"unwind", "rewind"});
}

TEST_CASE("the new edition has the constant and names the runs, and all else as it was")
{
    const std::string text = northText();
    const auto refit = refitFrom(pullsOf(10.2, 0.15, 20), pressFrom(text), "unwind");
    REQUIRE(refit);
    const auto edited = refitted(text, *refit);
    REQUIRE(edited);
    const inputs::Press before = pressFrom(text), after = pressFrom(*edited);
    REQUIRE(after.zone("unwind")->torquePerSetting);
    CHECK(perBar(*after.zone("unwind")->torquePerSetting) == Approx(perBar(refit->now.torquePerSetting)).epsilon(1e-3));
    CHECK(after.zone("unwind")->torqueSource.starts_with("20 runs: north-2026-01-10 "));
    CHECK(after.zone("unwind")->torqueSource.ends_with("north-2026-01-29"));
    CHECK(after.zone("rewind")->torquePerSetting->si() == before.zone("rewind")->torquePerSetting->si());
    CHECK(after.rollers.size() == before.rollers.size());

    // Found anew with a scale, the runs are no longer where it comes from.
    const auto scaled = inputs::withConstant(*edited, "unwind", refit->now);
    REQUIRE(scaled);
    CHECK(pressFrom(*scaled).zone("unwind")->torqueSource.empty());
}
