// SPDX-License-Identifier: GPL-3.0-or-later
// A gauge study against the worked example of the manual, and the set-up ratio of the standard.
#include "core/history/set_up_ratio.h"
#include "core/stats/gauge_study.h"
#include "tests/published/evidence.h"

using namespace taut::stats;
using namespace evidence;

TEST_CASE("the gauge study of the manual's worked example comes out as it has it")
{
    // Three people, ten parts, three trials: readings and results from memory (average and range method).
    const double people[3][3][10] = {{{0.29, -0.56, 1.34, 0.47, -0.80, 0.02, 0.59, -0.31, 2.26, -1.36},
                                      {0.41, -0.68, 1.17, 0.50, -0.92, -0.11, 0.75, -0.20, 1.99, -1.25},
                                      {0.64, -0.58, 1.27, 0.64, -0.84, -0.21, 0.66, -0.17, 2.01, -1.31}},
                                     {{0.08, -0.47, 1.19, 0.01, -0.56, -0.20, 0.47, -0.63, 1.80, -1.68},
                                      {0.25, -1.22, 0.94, 1.03, -1.20, 0.22, 0.55, 0.08, 2.12, -1.62},
                                      {0.07, -0.68, 1.34, 0.20, -1.28, 0.06, 0.83, -0.34, 2.19, -1.50}},
                                     {{0.04, -1.38, 0.88, 0.14, -1.46, -0.29, 0.02, -0.46, 1.77, -1.49},
                                      {-0.11, -1.13, 1.09, 0.20, -1.07, -0.67, 0.01, -0.56, 1.45, -1.77},
                                      {-0.15, -0.96, 0.67, 0.11, -1.45, -0.49, 0.21, -0.49, 1.87, -2.16}}};
    GaugeReadings readings(3, std::vector<std::vector<double>>(10, std::vector<double>(3)));
    for (std::size_t person = 0; person < 3; ++person)
        for (std::size_t trial = 0; trial < 3; ++trial)
            for (std::size_t part = 0; part < 10; ++part) readings[person][part][trial] = people[person][trial][part];
    const auto study = gaugeStudyOf(readings);
    REQUIRE(study);
    const Page page = fromMemory("statistics", "MSA", "gauge study by averages and ranges, worked example");
    page.check("–", "repeatability", study->repeatability, 0.2019, "", within(0.0002));
    page.check("–", "reproducibility", study->reproducibility, 0.2297, "", within(0.0002));
    page.check("–", "both together", study->gauge, 0.3058, "", within(0.0002));
    page.check("–", "between the parts", study->parts, 1.1046, "", within(0.0002));
    page.check("–", "in all", study->total, 1.1461, "", within(0.0002));
    page.check("–", "share of the gauge", 100 * study->share, 26.68, "%", within(0.01));
    page.check("–", "sorts told apart, cut off", std::floor(study->categories), 5, "", kExact);
    // Below 10 % good, up to 30 % it may do, five sorts at least: the same practice, from memory.
    CHECK(study->reading() == GaugeReading::MayDo);
    CHECK(study->tellsEnoughApart());
}

TEST_CASE("the set-up ratio is setting up over processing")
{
    taut::history::SetUpRatio one;
    one.setUp.median = 38 * 60;
    one.runningSeconds = 152 * 60;
    fromMemory("statistics", "ISO 22400-2", "set-up ratio")
        .check("–", "38 min over 152 min", *one.ratio(), 0.25, "", kExact);
}
