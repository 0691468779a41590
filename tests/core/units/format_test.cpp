// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/format.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <random>

#include "core/base/json.h"
#include "core/units/parse.h"

using namespace taut;

namespace {

constexpr auto kNearest = Rounding::Nearest;
constexpr auto kUp = Rounding::Up;
constexpr auto kDown = Rounding::Down;
constexpr auto kMetric = UnitSystem::Metric;
constexpr auto kUs = UnitSystem::Us;

}  // namespace

// ISO 80000-1:2009 annex B, rules for rounding: 12.223, 12.251, 12.275 at 0.1; ties to the even multiple (rule A);
// 1223.3, 1225.0, 1235.0 at 10. From memory. NIST SP 811 (2008) B.7.1: 6.974 951 5 and 6.974 950 5. From memory.
TEST_CASE("numbers are rounded once, ties to even, as the standards' examples are")
{
    struct Row {
        double value;
        int decimals;
        const char* text;
    };
    for (const Row& row : {
             Row{12.223, 1, "12.2"},
             Row{12.251, 1, "12.3"},
             Row{12.275, 1, "12.3"},
             Row{12.25, 1, "12.2"},
             Row{12.35, 1, "12.4"},
             Row{-12.25, 1, "-12.2"},
             Row{-12.35, 1, "-12.4"},
             Row{12.249, 1, "12.2"},
             Row{1223.3, -1, "1220"},
             Row{1225.0, -1, "1220"},
             Row{1235.0, -1, "1240"},
             Row{6.9749515, 2, "6.97"},
             Row{6.9749515, 4, "6.9750"},
             Row{6.9749515, 6, "6.974952"},
             Row{6.9749505, 6, "6.974950"},
             Row{2.675, 2, "2.68"},
             Row{2.665, 2, "2.66"},
             Row{0.1 + 0.2, 2, "0.30"},
             Row{0, 2, "0.00"},
             Row{-0.0, 0, "0"},
             Row{-0.04, 1, "0.0"},
             Row{0.05, 1, "0.0"},
             Row{0.051, 1, "0.1"},
             Row{0.5, 0, "0"},
             Row{1.5, 0, "2"},
             Row{0.004, 1, "0.0"},
             Row{9.96, 1, "10.0"},
             Row{99.5, 0, "100"},
             Row{999.95, 1, "1000.0"},
             Row{1e22, 0, "10000000000000000000000"},
             Row{1e-7, 3, "0.000"},
             Row{4, -1, "0"},
             Row{5, -1, "0"},
             Row{6, -1, "10"},
             Row{15, -1, "20"},
             Row{1234.5678, 4, "1234.5678"},
             Row{7, 3, "7.000"},
         }) {
        INFO(row.value << " at " << row.decimals);
        CHECK(roundedDecimal(row.value, row.decimals, kNearest) == row.text);
    }
}

TEST_CASE("up and down are towards plus and minus infinity and leave what needs no rounding")
{
    struct Row {
        double value;
        int decimals;
        const char* up;
        const char* down;
    };
    for (const Row& row : {
             Row{12.21, 1, "12.3", "12.2"},
             Row{-12.21, 1, "-12.2", "-12.3"},
             Row{12.2, 1, "12.2", "12.2"},
             Row{-12.2, 1, "-12.2", "-12.2"},
             Row{0.001, 1, "0.1", "0.0"},
             Row{-0.001, 1, "0.0", "-0.1"},
             Row{9.99, 1, "10.0", "9.9"},
             Row{0, 1, "0.0", "0.0"},
             Row{1221, -1, "1230", "1220"},
             Row{0.000001, -1, "10", "0"},
         }) {
        INFO(row.value);
        CHECK(roundedDecimal(row.value, row.decimals, kUp) == row.up);
        CHECK(roundedDecimal(row.value, row.decimals, kDown) == row.down);
    }
}

TEST_CASE("a rounded number lies within half a step, and on the right side when a side is asked for")
{
    std::mt19937_64 random(5);
    std::uniform_real_distribution<double> size(-6, 6);
    for (int i = 0; i < 20'000; ++i) {
        const double value = (i % 2 == 0 ? 1 : -1) * std::pow(10.0, size(random));
        const int decimals = i % 6;
        const double step = std::pow(10.0, -decimals);
        const double slack = 1e-12 * std::fabs(value);
        INFO(value << " at " << decimals);
        REQUIRE(std::fabs(std::stod(roundedDecimal(value, decimals, kNearest)) - value) <= step / 2 + slack);
        REQUIRE(std::stod(roundedDecimal(value, decimals, kUp)) >= value - slack);
        REQUIRE(std::stod(roundedDecimal(value, decimals, kUp)) < value + step + slack);
        REQUIRE(std::stod(roundedDecimal(value, decimals, kDown)) <= value + slack);
        REQUIRE(std::stod(roundedDecimal(value, decimals, kDown)) > value - step - slack);
    }
}

TEST_CASE("a quantity is shown in its own unit where that belongs to the system, else in the usual one")
{
    struct Row {
        double si;
        Kind kind;
        const char* unit;
        const char* metric;
        const char* us;
    };
    for (const Row& row : {
             Row{138750, Kind::Pressure, "bar", "1.39 bar", "20.1 psi"},
             Row{109557.352, Kind::Pressure, "bar", "1.10 bar", "15.9 psi"},
             Row{138750, Kind::Pressure, "", "1.39 bar", "20.1 psi"},
             Row{138750, Kind::Pressure, "kPa", "138.8 kPa", "20.1 psi"},
             Row{137895.14586336722, Kind::Pressure, "psi", "1.38 bar", "20.0 psi"},
             Row{3.8e9, Kind::Pressure, "", "3.80 GPa", "551.1 kpsi"},
             Row{9e7, Kind::Pressure, "", "90.0 MPa", "13.1 kpsi"},
             Row{1343.9013049741563, Kind::Length, "m", "1344 m", "4409 ft"},
             Row{0.33, Kind::Length, "mm", "330 mm", "12.99 in"},
             Row{0.1022, Kind::Length, "mm", "102.2 mm", "4.02 in"},
             Row{0.3302, Kind::Length, "in", "330.2 mm", "13.00 in"},
             Row{0.000762, Kind::Length, "in", "0.76 mm", "0.030 in"},
             Row{0.00014, Kind::Length, "um", "140 um", "5.51 mil"},
             Row{6.604e-5, Kind::Length, "mil", "66 um", "2.60 mil"},
             Row{0.215, Kind::Length, "", "215 mm", "8.46 in"},
             Row{14.2, Kind::Length, "", "14.2 m", "46.6 ft"},
             Row{1, Kind::Length, "mm", "1000 mm", "39.37 in"},
             Row{0, Kind::Length, "", "0 mm", "0.00 in"},
             Row{59.4, Kind::Force, "N", "59.4 N", "13.4 lbf"},
             Row{140, Kind::ForcePerWidth, "N/mm", "0.14 N/mm", "0.799 lbf/in"},
             Row{116, Kind::ForcePerWidth, "N/mm", "0.116 N/mm", "0.662 lbf/in"},
             Row{210.1522, Kind::ForcePerWidth, "N/m", "210.2 N/m", "1.20 lbf/in"},
             Row{14.85, Kind::Torque, "N m", "14.8 N m", "11.0 lbf ft"},
             Row{0.00012, Kind::TorquePerPressure, "N m/bar", "12.0 N m/bar", "0.827 N m/psi"},
             Row{55, Kind::TorquePerShare, "N m/%", "0.550 N m/%", "0.550 N m/%"},
             Row{1344, Kind::Time, "", "22.4 min", "22.4 min"},
             Row{3, Kind::Time, "s", "3.00 s", "3.00 s"},
             Row{45.25, Kind::Time, "", "45.2 s", "45.2 s"},
             Row{5400, Kind::Time, "", "1.50 h", "1.50 h"},
             Row{2.5, Kind::Speed, "m/min", "150 m/min", "492 ft/min"},
             Row{2.54, Kind::Speed, "ft/min", "152 m/min", "500 ft/min"},
             Row{0.005, Kind::Share, "%", "0.5 %", "0.5 %"},
             Row{0.05, Kind::Share, "1", "5 %", "5 %"},
             Row{0.00125, Kind::Share, "", "0.125 %", "0.125 %"},
             Row{0.000338, Kind::Share, "%", "0.0338 %", "0.0338 %"},
             Row{0.148 * 1.5707963267948966 / 90, Kind::Angle, "deg", "0.148 deg", "0.148 deg"},
             Row{1412.67, Kind::Count, "", "1413", "1413"},
             Row{3, Kind::Count, "1", "3", "3"},
             Row{2.375, Kind::Count, "", "2.38", "2.38"},
             Row{0.155, Kind::Grammage, "g/m2", "155 g/m2", "95.2 lb/3000ft2"},
             Row{67.51, Kind::Mass, "kg", "67.5 kg", "149 lb"},
             Row{362.87389, Kind::Mass, "lb", "363 kg", "800 lb"},
             Row{5.58e-6, Kind::VolumePerArea, "BCM", "5.58 cm3/m2", "3.60 BCM"},
             Row{14000, Kind::CountPerLength, "lines/cm", "140 lines/cm", "356 lines/in"},
             Row{393.7007874015748, Kind::CountPerLength, "1/in", "3.9 lines/cm", "10 1/in"},
             Row{1.5707963267948966, Kind::Angle, "deg", "90.0 deg", "90.0 deg"},
             Row{0.00001813, Kind::Viscosity, "", "0.0000181 Pa s", "0.0000181 Pa s"},
             Row{0.25, Kind::Current, "A", "0.250 A", "0.250 A"},
             Row{58.4, Kind::Power, "W", "58.4 W", "58.4 W"},
             Row{5, Kind::Frequency, "rpm", "300 rpm", "300 rpm"},
             Row{2.15868, Kind::Inertia, "", "2.16 kg m2", "51.2 lb ft2"},
             Row{-0.0015, Kind::Length, "mm", "-1.5 mm", "-0.059 in"},
             Row{99.96, Kind::Force, "N", "100 N", "22.5 lbf"},
             Row{9.996, Kind::Force, "N", "10.0 N", "2.25 lbf"},
             Row{999.7, Kind::Force, "N", "1000 N", "225 lbf"},
             Row{6894757.293168361, Kind::Pressure, "psi", "6.89 MPa", "1000 psi"},
         }) {
        INFO(row.si << ' ' << row.unit);
        const Quantity q(row.si, row.kind, row.unit);
        CHECK(format(q, kMetric) == row.metric);
        CHECK(format(q, kUs) == row.us);
    }
}

TEST_CASE("number and unit can be shown apart")
{
    const Shown shown = show(Quantity(138750, Kind::Pressure, "bar"), kMetric);
    CHECK(shown.number == "1.39");
    CHECK(shown.unit == "bar");
    CHECK(show(Quantity(3, Kind::Count), kUs).unit.empty());
}

// The rule that a converted limit is rounded into the permitted range: CSA B125.1 annex A e), read in public copy; the
// figures are computed from 1 lbf/in = 175.1268 N/m.
TEST_CASE("a limit rounded inward is never loosened, and one that needs no rounding is not moved")
{
    const Quantity low(87.56341762323819, Kind::ForcePerWidth, "N/m");
    const Quantity high(210.15220229577168, Kind::ForcePerWidth, "N/m");
    CHECK(format(low, kMetric, kUp) == "87.6 N/m");
    CHECK(format(high, kMetric, kDown) == "210.1 N/m");
    CHECK(format(high, kMetric) == "210.2 N/m");

    CHECK(format(Quantity(109557.352, Kind::Pressure, "bar"), kMetric, kUp) == "1.10 bar");
    CHECK(format(Quantity(136946.69, Kind::Pressure, "bar"), kMetric, kDown) == "1.36 bar");
    CHECK(format(Quantity(111250, Kind::Pressure, "bar"), kMetric, kUp) == "1.12 bar");

    for (const char* text :
         {"20 psi", "20.3 psi", "1.1 bar", "0.35 N/mm", "13 in", "0.1 lbf/in", "33.3 %", "0.7 N m/psi", "2.6 mil",
          "60 m/min", "45 deg", "3.6 BCM", "500 ft/min", "12.3 N m/bar", "0.03 in"}) {
        for (const Unit& unit : allUnits()) {
            const auto q = parseQuantity(text, unit.kind);
            if (!q) continue;
            const UnitSystem system = findUnit(q->kind(), q->unit())->metric ? kMetric : kUs;
            INFO(text);
            CHECK(format(*q, system, kUp) == format(*q, system));
            CHECK(format(*q, system, kDown) == format(*q, system));
            break;
        }
    }
}

TEST_CASE("the ends of a window, rounded inward, never pass one another")
{
    const auto ends = [](const char* low, const char* high) {
        const auto [from, to] =
            showRange(*parseQuantity(low, Kind::Pressure), *parseQuantity(high, Kind::Pressure), kMetric);
        return from.text() + " to " + to.text();
    };
    CHECK(ends("0.433 bar", "0.438 bar") == "0.433 bar to 0.438 bar");
    CHECK(ends("0.4334 bar", "0.4338 bar") == "0.4334 bar to 0.4338 bar");
    CHECK(ends("0.433 bar", "0.467 bar") == "0.44 bar to 0.46 bar");
    CHECK(ends("1.39 bar", "1.39 bar") == "1.39 bar to 1.39 bar");
    std::mt19937 random(20261126);
    std::uniform_real_distribution<double> at(0.01, 9), wide(1e-4, 0.05);
    for (int i = 0; i < 2000; ++i) {
        const double low = at(random) * 1e5, high = low + wide(random) * 1e5;
        const auto [from, to] =
            showRange(Quantity(low, Kind::Pressure, "bar"), Quantity(high, Kind::Pressure, "bar"), kMetric);
        const double a = *parseNumber(from.number) * 1e5, b = *parseNumber(to.number) * 1e5;
        INFO(from.text() << " to " << to.text() << " of " << low << " to " << high);
        CHECK(a <= b);
        CHECK(a >= low * (1 - 1e-12));
        CHECK(b <= high * (1 + 1e-12));
    }
}

TEST_CASE("a unit that is a fact is kept in either system, and one decimal more is shown where a unit asks for it")
{
    CHECK(panelUnit(Kind::Force, "N", UnitSystem::Us) == "N!");
    CHECK(panelUnit(Kind::Force, "N", UnitSystem::Metric) == "N");
    CHECK(panelUnit(Kind::Force, "lbf", UnitSystem::Us) == "lbf");
    CHECK(panelUnit(Kind::Share, "%", UnitSystem::Us) == "%");
    CHECK(panelUnit(Kind::Pressure, "nonsense", UnitSystem::Us) == "nonsense");
    const Quantity pull(14.45, Kind::Force, "N!");
    for (const UnitSystem system : {kMetric, kUs}) {
        CHECK(format(pull, system) == "14.4 N");
        CHECK(format(pull.in("N!+1"), system) == "14.45 N");
    }
    CHECK(format(pull.in("N"), kUs) == "3.25 lbf");
    CHECK(format(Quantity(0.438512e5, Kind::Pressure, "bar+1"), kMetric) == "0.439 bar");
    for (const Manner& manner : {Manner{"N m/bar", false, 0}, Manner{"N", true, 0}, Manner{"bar", true, 2}, Manner{}}) {
        const std::string written = unitIn(manner);
        const Manner back = mannerOf(written);
        CHECK(back.symbol == manner.symbol);
        CHECK(back.fixed == manner.fixed);
        CHECK(back.finer == manner.finer);
    }
    // No symbol has a mark of its own.
    for (const Unit& unit : allUnits()) CHECK(unitIn(mannerOf(unit.symbol)) == unit.symbol);
}
