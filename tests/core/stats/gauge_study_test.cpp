// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/gauge_study.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <limits>

using namespace taut;
using namespace taut::stats;

namespace {

/// Two people, three parts, two trials.
GaugeReadings small() { return {{{1.0, 1.2}, {2.0, 2.2}, {3.0, 3.2}}, {{1.1, 1.3}, {2.1, 2.3}, {3.1, 3.3}}}; }
std::string codeOf(const GaugeReadings& readings)
{
    const auto study = gaugeStudyOf(readings);
    return study ? std::string() : study.error().code;
}

}  // namespace

TEST_CASE("spreads come from mean ranges, and what lies within the repeatability is nobody's")
{
    const auto study = gaugeStudyOf(small());
    REQUIRE(study);
    CHECK(study->repeatability == Approx(0.2 * 0.8862));
    // The means of the two are 0.1 apart: less than the repeatability alone would make them.
    const double between = 0.1 * 0.7071;
    CHECK(between * between < study->repeatability * study->repeatability / 6);
    CHECK(study->reproducibility == 0);
    CHECK(study->gauge == study->repeatability);
    CHECK(study->parts == Approx(2 * 0.5231));
    CHECK(study->total == Approx(std::hypot(study->gauge, study->parts)));
    // One of them reads half a unit higher: that is no repeatability.
    GaugeReadings apart = small();
    for (auto& part : apart[1])
        for (double& value : part) value += 0.4;
    const auto other = gaugeStudyOf(apart);
    REQUIRE(other);
    CHECK(other->repeatability == Approx(study->repeatability));
    CHECK(other->reproducibility ==
          Approx(std::sqrt(std::pow(0.5 * 0.7071, 2) - std::pow(other->repeatability, 2) / 6)));
    CHECK(other->share > study->share);
}

TEST_CASE("a study keeps its shares in another unit and about another zero")
{
    const auto study = gaugeStudyOf(small());
    GaugeReadings other = small();
    for (auto& person : other)
        for (auto& part : person)
            for (double& value : part) value = 25.4 * value - 7;
    const auto inches = gaugeStudyOf(other);
    REQUIRE(inches);
    CHECK(inches->share == Approx(study->share));
    CHECK(inches->categories == Approx(study->categories));
    CHECK(inches->total == Approx(25.4 * study->total));
}

TEST_CASE("below a tenth a gauge is good, above three tenths it does not, and five sorts are the least")
{
    GaugeStudy study;
    for (const auto& [share, reading] :
         {std::pair(0.0999, GaugeReading::Good), std::pair(0.1, GaugeReading::MayDo),
          std::pair(0.3, GaugeReading::MayDo), std::pair(0.3001, GaugeReading::DoesNot)}) {
        study.share = share;
        CHECK(study.reading() == reading);
    }
    study.categories = 4.99;
    CHECK_FALSE(study.tellsEnoughApart());
    study.categories = 5;
    CHECK(study.tellsEnoughApart());
}

TEST_CASE("what is no study is refused")
{
    CHECK(codeOf({}) == "gauge.size");
    CHECK(codeOf({small()[0]}) == "gauge.size");
    CHECK(codeOf({{}, {}}) == "gauge.size");
    CHECK(codeOf({{{}, {}}, {{}, {}}}) == "gauge.size");
    CHECK(codeOf({{{1, 2}}, {{1, 2}}}) == "gauge.size");
    CHECK(codeOf({small()[0], small()[1], small()[0], small()[1]}) == "gauge.size");
    auto missing = small();
    missing[1].pop_back();
    CHECK(codeOf(missing) == "gauge.uneven");
    missing = small();
    missing[1][2].pop_back();
    CHECK(codeOf(missing) == "gauge.uneven");
    auto nan = small();
    nan[0][1][1] = std::numeric_limits<double>::quiet_NaN();
    CHECK(codeOf(nan) == "stats.not_finite");
    CHECK(codeOf({{{1, 1}, {2, 2}}, {{1, 1}, {2, 2}}}) == "gauge.no_gauge_spread");
    CHECK(codeOf({{{1, 2}, {1, 2}}, {{1, 2}, {1, 2}}}) == "gauge.same_parts");
}
