// SPDX-License-Identifier: GPL-3.0-or-later
// How long all targets of one press, job, substrate and roll take, for every combination of the demo shop.
#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <iterator>

#include "core/targets/ramp.h"
#include "core/targets/target.h"
#include "tests/bench/demo.h"
#include "tests/bench/stopwatch.h"
#include "tests/bench/told.h"

using namespace taut;

namespace {

constexpr int kPoints = 1000;

/// Every point of a schedule, from the start of the roll to its end.
void followed(const targets::Ramp& ramp)
{
    for (int i = 0; i < kPoints; ++i)
        if (!targets::pointAt(ramp, ramp.start + (ramp.end - ramp.start) * i / (kPoints - 1))) std::exit(4);
}

}  // namespace

int main()
{
    constexpr double kLimit = 1e-3, kScheduleLimit = 10e-3;
    constexpr int kCalls = 101;
    struct Case {
        const char *press, *job, *roll;
    };
    const Case cases[] = {{"north", "quince-jelly", "R0041"},
                          {"north", "parcel-tag", "R0045"},
                          {"south", "cold-brew", "R0048"},
                          {"south", "seed-window", "R0049"}};
    bool within = true;
    double most = 0, mostSchedule = 0;
    std::printf("%-44s %8s %10s %8s\n", "all targets of", "targets", "median", "limit");
    for (const Case& c : cases) {
        const inputs::Inputs in =
            bench::inputsOf(bench::resource("presses/" + std::string(c.press) + ".toml"), c.job, c.roll);
        std::size_t count = 0;
        const double time = bench::median(kCalls, [&] { count = targets::computeTargets(in).all.size(); });
        within = within && time <= kLimit;
        most = std::max(most, time);
        std::printf("%-8s %-20s %-14s %8zu %7.3f ms %5.1f ms\n", c.press, c.job, c.roll, count, time * 1e3,
                    kLimit * 1e3);
    }
    std::printf("\n%-44s %8s %10s %8s\n", "schedule against diameter of", "points", "median", "limit");
    for (const auto& [c, zone] : {std::pair{cases[0], "unwind"}, std::pair{cases[0], "rewind"}}) {
        const inputs::Inputs in =
            bench::inputsOf(bench::resource("presses/" + std::string(c.press) + ".toml"), c.job, c.roll);
        const auto ramp = targets::rampOf(*in.press, targets::computeTargets(in), zone);
        if (!ramp) {
            std::fprintf(stderr, "%s %s has no schedule\n", c.press, zone);
            return 4;
        }
        const double time = bench::median(kCalls, [&] { followed(*ramp); });
        within = within && time <= kScheduleLimit;
        mostSchedule = std::max(mostSchedule, time);
        std::printf("%-8s %-20s %-14s %8d %7.3f ms %5.1f ms\n", c.press, c.job, zone, kPoints, time * 1e3,
                    kScheduleLimit * 1e3);
    }
    std::printf("\n");
    within =
        bench::tell({"all targets, the longest of four", most * 1e3, 0, kLimit * 1e3, bench::Held::AtMost}) && within;
    within = bench::tell({"schedule of 1000 points, the longer of two", mostSchedule * 1e3, 0, kScheduleLimit * 1e3,
                          bench::Held::AtMost}) &&
             within;
    return within ? 0 : 1;
}
