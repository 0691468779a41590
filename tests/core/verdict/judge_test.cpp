// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>
#include <cmath>
#include <limits>

#include "core/verdict/verdict.h"

using namespace taut;
using namespace taut::verdict;

namespace {

targets::Window window(std::optional<double> low, std::optional<double> high, Kind kind = Kind::Force)
{
    targets::Window w;
    if (low) w.low = Quantity(*low, kind);
    if (high) w.high = Quantity(*high, kind);
    w.rule = targets::Rule::Policy;
    return w;
}
Judgement judged(double y, double u, const targets::Window& w) { return judge(Quantity(y, Kind::Force), u, w); }

}  // namespace

TEST_CASE("a verdict's word reads back to the verdict")
{
    for (const Verdict v : {Verdict::Inside, Verdict::Near, Verdict::Outside, Verdict::Missing, Verdict::Recorded})
        CHECK(verdictFrom(verdictWord(v)) == v);
    CHECK_FALSE(verdictFrom("pass"));
}

// ILAC-G8:09/2019 section 4.2.3, non-binary statement with guard band w = U. The rows are computed from that rule for
// limits 18.0 and 27.0 N and U = 0.8 N; in its words inside is pass, near conditional pass, doubtful conditional fail.
TEST_CASE("readings of a guarded window get the four answers of ILAC-G8")
{
    struct Row {
        double y;
        Verdict verdict;
        bool doubtful;
    };
    const Row rows[] = {
        {17.1, Verdict::Outside, false}, {17.2, Verdict::Outside, true},  {17.9, Verdict::Outside, true},
        {18.0, Verdict::Near, false},    {18.4, Verdict::Near, false},    {18.7, Verdict::Near, false},
        {18.8, Verdict::Inside, false},  {22.5, Verdict::Inside, false},  {26.2, Verdict::Inside, false},
        {26.3, Verdict::Near, false},    {27.0, Verdict::Near, false},    {27.4, Verdict::Outside, true},
        {27.8, Verdict::Outside, true},  {28.0, Verdict::Outside, false},
    };
    for (const Row& row : rows) {
        INFO("y = " << row.y);
        const Judgement j = judged(row.y, 0.8, window(18.0, 27.0));
        CHECK(j.verdict == row.verdict);
        CHECK(j.doubtful == row.doubtful);
        // The same limits with one of them open: only the other can object.
        const Judgement lowOnly = judged(row.y, 0.8, window(18.0, std::nullopt));
        CHECK(lowOnly == (row.y < 22 ? j : Judgement{Verdict::Inside, false}));
        const Judgement highOnly = judged(row.y, 0.8, window(std::nullopt, 27.0));
        CHECK(highOnly == (row.y > 22 ? j : Judgement{Verdict::Inside, false}));
    }
}

// JCGM 106:2012 7.3.3 (from memory): for a normal distribution the chance to conform at a limit is one half, at u = U/2
// inside it 97.7 %. So nothing that is called inside may conform less often than the normal integral says there.
TEST_CASE("what is called inside conforms with at least 97.7 percent, what is called outside and not doubtful with "
          "less than 2.3")
{
    const double u = 0.4;
    const auto phi = [](double z) { return 0.5 * std::erfc(-z / std::sqrt(2.0)); };
    for (int i = 1500; i <= 3000; ++i) {
        const double y = i / 100.0;
        const double p = phi((27.0 - y) / u) - phi((18.0 - y) / u);
        const Judgement j = judged(y, 2 * u, window(18.0, 27.0));
        INFO("y = " << y << ", p = " << p);
        if (j.verdict == Verdict::Inside) CHECK(p > 0.977);
        if (j.verdict == Verdict::Near) CHECK((p >= 0.4999 && p < 0.9773));
        if (j.verdict == Verdict::Outside) CHECK(p < 0.5);
        if (j.verdict == Verdict::Outside && !j.doubtful) CHECK(p < 0.0228);
    }
}

TEST_CASE("without an uncertainty a limit itself is inside and the next digit is outside")
{
    const auto w = window(18.0, 27.0);
    CHECK(judged(18.0, 0, w) == Judgement{Verdict::Inside, false});
    CHECK(judged(27.0, 0, w) == Judgement{Verdict::Inside, false});
    CHECK(judged(27.0001, 0, w) == Judgement{Verdict::Outside, false});
    CHECK(judged(17.9999, 0, w) == Judgement{Verdict::Outside, false});
}

// IEEE 754: 0.1 + 0.2 is 0.30000000000000004 in binary; in decimal it is 0.3.
TEST_CASE("limits are met in decimal and not in binary")
{
    CHECK(judged(0.1 + 0.2, 0, window(0.0, 0.3)).verdict == Verdict::Inside);
    CHECK(judged(0.3, 0, window(0.1 + 0.2, 1.0)).verdict == Verdict::Inside);
    CHECK(judged(0.3, 0.1, window(0.2, 1.0)).verdict == Verdict::Inside);   // 0.2 + 0.1 is the edge of inside
    CHECK(judged(0.7, 0.1, window(-1.0, 0.8)).verdict == Verdict::Inside);  // 0.8 - 0.1 too
    CHECK(judged(-0.3, 0, window(-(0.1 + 0.2), 0.0)).verdict == Verdict::Inside);
    CHECK(judged(0.1 + 0.2 - 0.3, 0, window(0.0, 0.0)).verdict == Verdict::Outside);  // a real, tiny number
    // 20 psi through two roads of arithmetic; 1 psi = 6894.757293168361 Pa (NIST SP 811 App. B).
    CHECK(judged(20 * 6894.757293168361, 0, window(0.0, 137895.1458633672)).verdict == Verdict::Inside);
    // The twelfth digit still counts.
    CHECK(judged(300000000001.0, 0, window(0.0, 300000000000.0)).verdict == Verdict::Outside);
    CHECK(judged(3000000000001.0, 0, window(0.0, 3000000000000.0)).verdict == Verdict::Inside);
}

TEST_CASE("without limits a reading is recorded, and what is no number is missing")
{
    CHECK(judged(12.0, 0.1, window({}, {})) == Judgement{Verdict::Recorded, false});
    CHECK(judged(std::numeric_limits<double>::quiet_NaN(), 0.1, window(1.0, 2.0)).verdict == Verdict::Missing);
    CHECK(judged(std::numeric_limits<double>::infinity(), 0.1, window({}, {})).verdict == Verdict::Missing);
}

TEST_CASE("a gauge is too coarse when the guarded limits cross, and then nothing is inside")
{
    const auto w = window(18.0, 27.0);
    CHECK_FALSE(tooCoarse(0.8, w));
    CHECK_FALSE(tooCoarse(4.5, w));  // one value, 22.5, can still be inside
    CHECK(judged(22.5, 4.5, w).verdict == Verdict::Inside);
    const auto finding = tooCoarse(4.6, w);
    REQUIRE(finding);
    CHECK(finding->code == "window.too_coarse");
    CHECK_FALSE(finding->remedy.empty());
    for (double y = 17; y < 28; y += 0.1) CHECK(judged(y, 4.6, w).verdict != Verdict::Inside);
    CHECK_FALSE(tooCoarse(100, window(18.0, {})));
    CHECK_FALSE(tooCoarse(100, window({}, {})));
}

// 0.35 bar to 0.55 bar on a gauge of EN 837-1 class 1.6 and 10 bar span, so 0.16 bar either way: computed, 0.51 to
// 0.39.
TEST_CASE("a class 1.6 gauge of 10 bar cannot judge a window of 0.2 bar")
{
    CHECK(tooCoarse(0.16e5, window(0.35e5, 0.55e5, Kind::Pressure)));
    CHECK_FALSE(tooCoarse(0.10e5, window(0.35e5, 0.55e5, Kind::Pressure)));
}

// Common practice, no source: a lift that has not moved well above the figure is stuck; the figure itself proves
// nothing.
TEST_CASE("short of an alarm a reading is recorded and never called inside, and beyond it it is outside")
{
    targets::Window alarm = window(std::nullopt, 120.0);
    alarm.rule = targets::Rule::Alarm;
    for (const double y : {0.0, 100.0, 119.5, 120.0}) {
        INFO(y);
        CHECK(judged(y, 1.0, alarm) == Judgement{Verdict::Recorded, false});
    }
    CHECK(judged(120.5, 1.0, alarm) == Judgement{Verdict::Outside, true});
    CHECK(judged(150, 1.0, alarm) == Judgement{Verdict::Outside, false});
}

TEST_CASE("of what must not be there at all, none seen is inside and the least seen is outside")
{
    const auto none = window(0.0, 0.0, Kind::Length);
    CHECK(judge(Quantity(0, Kind::Length, "mm"), 0.0003, none).verdict == Verdict::Inside);
    CHECK(judge(Quantity(0.0004, Kind::Length, "mm"), 0.0003, none).verdict == Verdict::Outside);
    CHECK(judge(Quantity(-0.0004, Kind::Length, "mm"), 0.0003, none).verdict == Verdict::Outside);
}

TEST_CASE("edges that touch are inside, and a share has its guard band at nought as anywhere")
{
    const auto gap = [](double si) {
        return judge(Quantity(si, Kind::Length), 0.0001, window(0.0, 0.0005, Kind::Length));
    };
    CHECK(gap(0).verdict == Verdict::Inside);
    CHECK(gap(0.00005).verdict == Verdict::Inside);
    CHECK(gap(0.00045).verdict == Verdict::Near);
    CHECK(gap(-0.00005) == Judgement{Verdict::Outside, true});  // over one another, or just not
    CHECK(gap(-0.001) == Judgement{Verdict::Outside, false});
    const auto draw = [](double si) {
        return judge(Quantity(si, Kind::Share), 0.0001, window(0.0, 0.002, Kind::Share));
    };
    CHECK(draw(0).verdict == Verdict::Near);
    CHECK(draw(0.0002).verdict == Verdict::Inside);
    CHECK(draw(-0.00005) == Judgement{Verdict::Outside, true});
    // What may not be there at all.
    const auto tail = [](double si) {
        return judge(Quantity(si, Kind::Length), 0.001, window(std::nullopt, 0.0, Kind::Length)).verdict;
    };
    CHECK(tail(0) == Verdict::Inside);
    CHECK(tail(0.0005) == Verdict::Outside);
}
