// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/unit.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <set>
#include <string>

#include "core/units/quantity.h"
#include "core/units/range.h"

using namespace taut;

TEST_CASE("the SI unit of every kind is the one that JSON is written with")
{
    const std::vector<std::pair<Kind, const char*>> rows{
        {Kind::Count, "1"},
        {Kind::Share, "1"},
        {Kind::Angle, "rad"},
        {Kind::Length, "m"},
        {Kind::VolumePerArea, "m3/m2"},
        {Kind::Area, "m2"},
        {Kind::Mass, "kg"},
        {Kind::Grammage, "kg/m2"},
        {Kind::Density, "kg/m3"},
        {Kind::AreaPerMass, "m2/kg"},
        {Kind::Force, "N"},
        {Kind::ForcePerWidth, "N/m"},
        {Kind::Pressure, "Pa"},
        {Kind::Torque, "N m"},
        {Kind::TorquePerPressure, "N m/Pa"},
        {Kind::TorquePerCurrent, "N m/A"},
        {Kind::TorquePerShare, "N m/1"},
        {Kind::Speed, "m/s"},
        {Kind::Acceleration, "m/s2"},
        {Kind::Time, "s"},
        {Kind::Frequency, "1/s"},
        {Kind::Inertia, "kg m2"},
        {Kind::CountPerLength, "1/m"},
        {Kind::Power, "W"},
        {Kind::Current, "A"},
        {Kind::Viscosity, "Pa s"},
    };
    REQUIRE(rows.size() == kKindCount);
    for (const auto& [kind, symbol] : rows) {
        CHECK(siUnit(kind).symbol == symbol);
        CHECK(siUnit(kind).toSi == 1.0);
        CHECK(siUnit(kind).kind == kind);
    }
}

TEST_CASE("a symbol stands once in its kind, also when written without its spaces")
{
    std::size_t count = 0;
    for (std::size_t i = 0; i < kKindCount; ++i) {
        std::set<std::string> seen;
        for (const Unit& unit : unitsOf(static_cast<Kind>(i))) {
            ++count;
            CHECK(unit.kind == static_cast<Kind>(i));
            CHECK(findUnit(unit.kind, unit.symbol) == &unit);
            std::string tight(unit.symbol);
            tight.erase(std::remove(tight.begin(), tight.end(), ' '), tight.end());
            INFO(unit.symbol);
            CHECK(seen.insert(tight).second);
            CHECK(unit.leastDecimals <= unit.mostDecimals);
            CHECK(unit.toSi > 0);
        }
    }
    CHECK(count == allUnits().size());
    CHECK(findUnit(Kind::Length, "psi") == nullptr);
    CHECK(findUnit(Kind::Length, "") == nullptr);
    CHECK(findUnit(Kind::Pressure, "PSI") == nullptr);
}

TEST_CASE("every size of every kind has a usual unit in both systems")
{
    for (std::size_t i = 0; i < kKindCount; ++i) {
        for (const double si : {0.0, 1e-9, -1e-4, 0.02, 0.5, 1.0, -70.0, 5e3, 1e6, 5e9}) {
            const auto kind = static_cast<Kind>(i);
            const Unit& metric = usualUnit(kind, UnitSystem::Metric, si);
            const Unit& us = usualUnit(kind, UnitSystem::Us, si);
            INFO(metric.symbol << ' ' << us.symbol << ' ' << si);
            CHECK(metric.kind == kind);
            CHECK(us.kind == kind);
            CHECK(metric.metric);
            CHECK(us.us);
        }
    }
}

TEST_CASE("measures multiply and divide into the measure that is meant")
{
    constexpr auto tension = ForcePerWidth::si(180.0) * Length::si(0.33);
    static_assert(std::is_same_v<decltype(tension), const Force>);
    static_assert(tension.si() == 180.0 * 0.33);
    static_assert(std::is_same_v<decltype(tension * Length::si(0.25)), Torque>);
    static_assert(std::is_same_v<decltype(Torque::si(1) / Pressure::si(1)), TorquePerPressure>);
    static_assert(std::is_same_v<decltype(Force::si(1) * Speed::si(1)), Power>);
    static_assert(!std::is_convertible_v<double, Length>);
    static_assert(Length::si(1) < Length::si(2));
    CHECK(Quantity(tension, Kind::Force).as<Kind::Force>().si() == 180.0 * 0.33);
}

TEST_CASE("a range is closed and an end left out is open")
{
    const Quantity one(1, Kind::Length);
    const Quantity two(2, Kind::Length);
    const Range both{one, two};
    CHECK(both.contains(1));
    CHECK(both.contains(2));
    CHECK_FALSE(both.contains(0.999));
    CHECK_FALSE(both.contains(2.001));
    CHECK(Range{std::nullopt, two}.contains(-1e9));
    CHECK(Range{one, std::nullopt}.contains(1e9));
    CHECK_FALSE(Range{one, std::nullopt}.contains(0));
    CHECK(Range{}.contains(0));
}
