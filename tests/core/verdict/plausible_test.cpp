// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/verdict/plausible.h"

#include <catch2/catch.hpp>

#include "core/units/parse.h"
#include "core/units/plain.h"

using namespace taut;
using namespace taut::verdict;

namespace {

Quantity typed(const char* text, Kind kind)
{
    const auto q = parseQuantity(text, kind);
    REQUIRE(q);
    return *q;
}

/// A target of this value; low, high and most are left out where they are "".
targets::Target target(Kind kind, const char* value, const char* low = "", const char* high = "", const char* most = "")
{
    const auto end = [&](const char* text) { return *text == '\0' ? std::nullopt : std::optional(typed(text, kind)); };
    targets::Ready ready;
    ready.value = typed(value, kind);
    ready.window.low = end(low);
    ready.window.high = end(high);
    ready.most = end(most);
    return {"some.target", targets::Shape::Quantity, Text("Lift pressure"), std::move(ready)};
}

std::string codeOf(const std::optional<Finding>& finding) { return finding ? finding->code : ""; }

}  // namespace

TEST_CASE("what cannot be less than nothing is refused below zero, what is measured about zero is not")
{
    struct Row {
        Kind kind;
        const char* read;
        targets::Target target;
        bool refused;
    };
    const Row rows[] = {
        {Kind::Pressure, "-1 bar", target(Kind::Pressure, "2 bar"), true},
        {Kind::Pressure, "0 bar", target(Kind::Pressure, "2 bar"), false},
        {Kind::Mass, "-3 kg", target(Kind::Mass, "90 kg"), true},
        {Kind::Time, "-3 s", target(Kind::Time, "3 s"), true},
        {Kind::Speed, "-3 m/min", target(Kind::Speed, "3 m/min"), true},
        {Kind::Length, "-300 mm", target(Kind::Length, "300 mm"), true},
        {Kind::Length, "-300 mm", target(Kind::Length, "300 mm", "299 mm", "301 mm"), true},
        {Kind::Length, "-1 mm", target(Kind::Length, "0 mm", "-3 mm", "3 mm"), false},      // where the guide rests
        {Kind::Length, "-1 mm", target(Kind::Length, "0.25 mm", "0 mm", "0.5 mm"), false},  // a gap, or an overlap
        {Kind::Force, "-1 N", target(Kind::Force, "60 N"), true},
        {Kind::Force, "-1 N", target(Kind::Force, "0 N", "-4 N", "4 N"), false},  // a load cell's zero
        {Kind::Share, "-0.05 %", target(Kind::Share, "0.1 %"), false},            // a draw
    };
    for (const Row& row : rows) {
        INFO(row.read << " of " << plain(Text("%1", {row.target.quantity()->magnitude()})));
        const auto found = implausible(typed(row.read, row.kind), &row.target);
        CHECK(codeOf(found) == (row.refused ? "reading.below_zero" : ""));
    }
    CHECK(codeOf(implausible(typed("-1 bar", Kind::Pressure), nullptr)) == "reading.below_zero");
    CHECK(codeOf(implausible(typed("-1 mm", Kind::Length), nullptr)).empty());
}

TEST_CASE("a step to either side is said without a sign, a gap with it")
{
    targets::Target fault = target(Kind::Length, "0 mm", "0 mm", "0.5 mm");
    for (const char* id : {"splice.step", "splice.square", "splice.overhang"}) {
        INFO(id);
        fault.id = id;
        const auto found = implausible(typed("-0.2 mm", Kind::Length), &fault);
        CHECK(codeOf(found) == "reading.no_sign");
        CHECK_FALSE(found->remedy.empty());
        CHECK_FALSE(implausible(typed("0.2 mm", Kind::Length), &fault));
        CHECK_FALSE(implausible(typed("0 mm", Kind::Length), &fault));
    }
    fault.id = "splice.gap";  // less than none is an overlap
    CHECK_FALSE(implausible(typed("-0.2 mm", Kind::Length), &fault));
}

TEST_CASE("a reading beyond the end of its control is refused with the slip it probably was")
{
    const targets::Target lift = target(Kind::Pressure, "2 bar", "", "", "6 bar");
    struct Row {
        const char* read;
        const char* code;
        const char* remedy;
    };
    const Row rows[] = {
        {"6 bar", "", ""},
        {"3.1 bar", "", ""},
        {"20 bar", "reading.beyond_end", "A tenth of it would fit."},
        {"29 bar", "reading.beyond_end", "The same number with \"psi\" as its unit would fit."},
        {"2000 bar", "reading.beyond_end", "A thousandth of it would fit."},
        {"7 bar", "reading.beyond_end", "the press's profile is wrong"},
        {"1000000000 psi", "reading.beyond_end", "the unit and the decimal mark"},
    };
    for (const Row& row : rows) {
        INFO(row.read);
        const auto found = implausible(typed(row.read, Kind::Pressure), &lift);
        CHECK(codeOf(found) == row.code);
        if (!found) continue;
        CHECK(plain(found->text).find("it goes to 6.00 bar at most") != std::string::npos);
        CHECK(plain(found->text).find("Lift pressure") != std::string::npos);
        CHECK(plain(found->remedy).find(row.remedy) != std::string::npos);
    }
}

TEST_CASE("a control's end is read with the uncertainty of its instrument")
{
    targets::Target lift = target(Kind::Pressure, "2 bar", "", "", "6 bar");
    std::get<targets::Ready>(lift.state).instrument = typed("0.1 bar", Kind::Pressure);
    CHECK_FALSE(implausible(typed("6.05 bar", Kind::Pressure), &lift));
    CHECK(implausible(typed("6.2 bar", Kind::Pressure), &lift));
}

TEST_CASE("where nothing says how far a gauge goes, more than a press has is refused")
{
    const targets::Target lift = target(Kind::Pressure, "2 bar");
    CHECK(codeOf(implausible(typed("1000000000 psi", Kind::Pressure), &lift)) == "reading.beyond_belief");
    CHECK(codeOf(implausible(typed("1000000000 psi", Kind::Pressure), nullptr)) == "reading.beyond_belief");
    CHECK_FALSE(implausible(typed("15 bar", Kind::Pressure), &lift));
    const auto slip = implausible(typed("29 bar", Kind::Pressure), &lift);
    REQUIRE(slip);
    CHECK(plain(slip->remedy).find("\"psi\" as its unit would fit") != std::string::npos);
    CHECK(codeOf(implausible(typed("1000000 m", Kind::Length), nullptr)) == "reading.beyond_belief");
}

TEST_CASE("a reading of another kind than its target is judged by its kind alone")
{
    const targets::Target lift = target(Kind::Pressure, "2 bar", "", "", "6 bar");
    CHECK_FALSE(implausible(typed("30 kg", Kind::Mass), &lift));
}
