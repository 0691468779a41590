// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>
#include <cmath>

#include "core/units/parse.h"
#include "core/units/plain.h"
#include "core/verdict/slip.h"
#include "core/verdict/verdict.h"

using namespace taut;
using namespace taut::verdict;

namespace {

Quantity typed(const char* text, Kind kind)
{
    auto q = parseQuantity(text, kind);
    INFO(text);
    REQUIRE(q);
    return *q;
}
targets::Window window(const char* low, const char* high, Kind kind)
{
    targets::Window w;
    w.low = typed(low, kind);
    w.high = typed(high, kind);
    return w;
}

}  // namespace

// JCGM 100:2008 (GUM) 4.3.7 and F.2.2.1: a digit of size r is a rectangle of standard uncertainty r / sqrt(12);
// expanded with k = 2. For r = 0.5 N that is 0.289 N.
TEST_CASE("the last digit typed gives the uncertainty when the instrument says nothing")
{
    struct Row {
        const char* text;
        Kind kind;
        double r;  // in SI
    };
    constexpr double kInch = 0.0254;
    const Row rows[] = {
        {"22.5 N", Kind::Force, 0.1},
        {"22 N", Kind::Force, 1},
        {"22.50 N", Kind::Force, 0.01},
        {"1,4 bar", Kind::Pressure, 0.1e5},
        {"20 psi", Kind::Pressure, 6894.757293168361},
        {"13 1/4 in", Kind::Length, kInch / 4},
        {"13-1/16 in", Kind::Length, kInch / 16},
        {"13.25 in", Kind::Length, kInch / 100},
        {"5 ft 3 in", Kind::Length, kInch},
        {"5 ft 3 1/2 in", Kind::Length, kInch / 2},
        {"5 ft", Kind::Length, 0.3048},
        {"1e-3 m", Kind::Length, 1e-3},
        {"2.5e-3 m", Kind::Length, 1e-4},
        {"-0.5 %", Kind::Share, 0.001},
        {"140 um", Kind::Length, 1e-6},
        {"0.0 bar", Kind::Pressure, 0.1e5},
    };
    for (const Row& row : rows) {
        INFO(row.text);
        CHECK(uncertaintyOf(typed(row.text, row.kind), std::nullopt) ==
              Approx(2 * row.r / std::sqrt(12.0)).epsilon(1e-12));
    }
    CHECK(2 * 0.5 / std::sqrt(12.0) == Approx(0.289).epsilon(2e-3));
}

TEST_CASE("the instrument's own uncertainty comes before the last digit, and a computed value has none")
{
    const Quantity gauge(0.1e5, Kind::Pressure, "bar");
    CHECK(uncertaintyOf(typed("1.40 bar", Kind::Pressure), gauge) == Approx(0.1e5));
    CHECK(uncertaintyOf(Quantity(1.4e5, Kind::Pressure, "bar"), std::nullopt) == 0);
}

TEST_CASE("a count is exact: three wraps where three are wanted are inside")
{
    const Quantity three(3, Kind::Count, "1", "3");
    CHECK(uncertaintyOf(three, std::nullopt) == 0);
    targets::Window window;
    window.low = Quantity(3, Kind::Count);
    CHECK(judge(three, uncertaintyOf(three, std::nullopt), window).verdict == Verdict::Inside);
}

// The slips by name are common practice, no source.
TEST_CASE("a usual slip is recognised by its window")
{
    struct Row {
        const char* text;
        const char* low;
        const char* high;
        Kind kind;
        const char* says;  // part of the hint, "" = no hint
    };
    const Row rows[] = {
        {"20 bar", "18 psi", "24 psi", Kind::Pressure, "psi"},
        {"1.4 psi", "1.1 bar", "1.7 bar", Kind::Pressure, "bar"},
        {"330 in", "329 mm", "331 mm", Kind::Length, "mm"},
        {"13 mm", "12.9 in", "13.1 in", Kind::Length, "in"},
        {"33 mm", "329 mm", "331 mm", Kind::Length, "cm"},
        {"1571 mm", "495 mm", "505 mm", Kind::Length, "round the roll"},
        {"0.14 bar", "1.1 bar", "1.7 bar", Kind::Pressure, "Ten times"},
        {"14 bar", "1.1 bar", "1.7 bar", Kind::Pressure, "tenth"},
        {"0.0014 bar", "1.1 bar", "1.7 bar", Kind::Pressure, "thousand times"},
        {"1400 bar", "1.1 bar", "1.7 bar", Kind::Pressure, "thousandth"},
        {"2.0 bar", "1.1 bar", "1.7 bar", Kind::Pressure, ""},  // simply outside
        {"1.4 bar", "1.1 bar", "1.7 bar", Kind::Pressure, ""},  // inside: nothing to hint at
        {"3 mm", "-1 mm", "1 mm", Kind::Length, ""},            // round zero every slip would fit
    };
    for (const Row& row : rows) {
        INFO(row.text);
        const auto found = likelySlip(typed(row.text, row.kind), window(row.low, row.high, row.kind));
        CHECK(found.has_value() == (*row.says != '\0'));
        if (!found) continue;
        CHECK(found->code == "window.slip");
        CHECK(found->severity == Severity::Note);
        std::string words = found->text.source.str();
        for (const TextArg& arg : found->text.args)
            if (const auto* said = std::get_if<std::string>(&arg)) words += ' ' + *said;
        CHECK(words.find(row.says) != std::string::npos);
    }
}

TEST_CASE("the length round a roll is told as the diameter that it would be, in the unit that was typed")
{
    // A roll of 500 mm measures 500 pi mm round, 1570.8 mm.
    const auto metric = likelySlip(typed("1571 mm", Kind::Length), window("495 mm", "505 mm", Kind::Length));
    REQUIRE(metric);
    CHECK(plain(metric->text).find("a diameter of 500.1 mm") != std::string::npos);
    // 20 in across is 62 27/32 in round.
    const auto us = likelySlip(typed("62.84 in", Kind::Length), window("19.8 in", "20.2 in", Kind::Length));
    REQUIRE(us);
    CHECK(plain(us->text, UnitSystem::Us).find("a diameter of 20.00 in") != std::string::npos);
}

TEST_CASE("far beyond a window round zero another thing was measured, near beyond it the joint is poor")
{
    const auto gap = window("0 mm", "0.5 mm", Kind::Length);
    const auto far = likelySlip(typed("150 mm", Kind::Length), gap);
    REQUIRE(far);
    CHECK(far->code == "window.slip");
    CHECK(plain(far->text) == "This is more than 20 times the limit.");
    CHECK(likelySlip(typed("-12 mm", Kind::Length), window("-0.5 mm", "0.3 mm", Kind::Length)));
    CHECK_FALSE(likelySlip(typed("5 mm", Kind::Length), gap));
    CHECK_FALSE(likelySlip(typed("0.4 mm", Kind::Length), gap));
    CHECK_FALSE(likelySlip(typed("3 mm", Kind::Length), window("0 mm", "0 mm", Kind::Length)));
}

TEST_CASE("a window open at one end gives no hint")
{
    targets::Window w;
    w.high = typed("1.7 bar", Kind::Pressure);
    CHECK_FALSE(likelySlip(typed("20 bar", Kind::Pressure), w));
}
