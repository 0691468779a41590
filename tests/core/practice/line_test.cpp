// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/practice/line.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>

#include "core/inputs/path_of.h"
#include "tests/core/targets/demo_inputs.h"

using namespace taut;
using namespace taut::practice;

namespace {

Line northLine()
{
    const auto line = lineOf(demo::inputs("north", "quince-jelly", "R0041"), inputs::Feed::Over);
    REQUIRE(line);
    return *line;
}

}  // namespace

TEST_CASE("the line of a press has its path's spans, its rollers and what turns them")
{
    const Line line = northLine();
    const auto in = demo::inputs("north", "quince-jelly", "R0041");
    const auto path = inputs::pathOf(*in.press, "main", in.roll->outerDiameter->measure(), inputs::Feed::Over);
    REQUIRE(path);
    REQUIRE(line.web.spans.size() == path->path.spans.size());
    REQUIRE(line.web.rollers.size() + 1 == line.web.spans.size());
    REQUIRE(line.places.size() == line.web.rollers.size());
    for (std::size_t s = 0; s < line.web.spans.size(); ++s)
        CHECK(line.web.spans[s].si() == path->path.spans[s].length.si());
    // E w t of 3.8 GPa, 330 mm, 140 um; 3.5 and 5.5 N/mm of its layers.
    CHECK(line.web.stiffness.si() == Approx(3.8e9 * 0.33 * 140e-6));
    CHECK(line.breaks.si() == Approx(9000 * 0.33));
    const auto place = [&](const char* id) {
        const auto found =
            std::find_if(line.places.begin(), line.places.end(), [&](const LinePlace& p) { return p.id == id; });
        REQUIRE(found != line.places.end());
        return *found;
    };
    CHECK(place("infeed").nip);
    CHECK(place("infeed").turned == Turned::Drive);
    CHECK(place("impression 2").station == 2);
    CHECK(place("impression 2").turned == Turned::Drive);
    CHECK_FALSE(place("impression 2").nip);
    CHECK(place("turn up").turned == Turned::Free);
    CHECK(line.web.rollers.front().inertia.si() == 0.004);
    CHECK(line.assumed.empty());
}

TEST_CASE("zones of tension are the spans between the rollers that they name")
{
    const Line line = northLine();
    REQUIRE(line.zones.size() == 3);
    CHECK(line.zones[0].id == "unwind");
    CHECK(line.zones[0].first == 0);
    CHECK(line.places[line.zones[0].last].id == "infeed");
    CHECK(line.zones[1].first == line.zones[0].last + 1);
    CHECK(line.zones[2].last + 1 == line.web.spans.size());
}

TEST_CASE("the roll and the empty core weigh and measure what their files say")
{
    const Line line = northLine();
    // 76.2 mm and two walls of 13 mm.
    CHECK(line.web.unwind.core.si() == Approx(0.0511));
    const Length onIt = webOn(line.web, Length::si(0.25), line.web.unwind.core);
    CHECK(onIt.si() == Approx(1343.9).epsilon(1e-4));
    const WebState state = atRest(line.web, onIt, Length::si(1), Force::si(60));
    CHECK(unwindRadius(line.web, state).si() == Approx(0.25));
}

TEST_CASE("every demo press, job and roll makes a line that runs")
{
    for (const demo::Case& one : demo::cases()) {
        CAPTURE(one.press, one.job, one.roll);
        const auto in = demo::inputs(one.press, one.job, one.roll);
        const auto line = lineOf(in, inputs::Feed::Over);
        INFO((line ? std::string() : line.error().code + " " + line.error().subject));
        REQUIRE(line);
        WebState state =
            atRest(line->web, webOn(line->web, in.roll->outerDiameter->measure() / 2, line->web.unwind.core),
                   Length::si(1), Force::si(40));
        Drives drives;
        drives.driven.resize(line->web.rollers.size());
        drives.nipped.resize(line->web.rollers.size());
        for (std::size_t i = 0; i < line->places.size(); ++i) {
            if (line->places[i].turned == Turned::Drive) drives.driven[i] = Speed::si(0.3);
            drives.nipped[i] = line->places[i].nip;
        }
        drives.brake = Force::si(40) * unwindRadius(line->web, state);
        drives.clutch = Force::si(40) * rewindRadius(line->web, state);
        drives.clutchInput = Frequency::si(0.5 / rewindRadius(line->web, state).si());
        const double before = webOf(state).si();
        advance(line->web, state, drives, Time::si(5));
        CHECK(webOf(state).si() == Approx(before).epsilon(1e-12));
        for (std::size_t s = 0; s < line->web.spans.size(); ++s)
            CHECK(std::isfinite(tensionIn(line->web, state, s).si()));
        CHECK(state.rewound > 1.2);
    }
}

TEST_CASE("what a file leaves out is taken as usual and said, or named as missing")
{
    const auto thermal = lineOf(demo::inputs("north", "parcel-tag", "R0045"), inputs::Feed::Over);
    REQUIRE(thermal);
    CHECK(std::any_of(thermal->assumed.begin(), thermal->assumed.end(),
                      [](const Finding& f) { return f.subject == "substrate.modulus"; }));
    CHECK(thermal->web.stiffness.si() > 0);
    auto in = demo::inputs("north", "quince-jelly", "R0041");
    auto roll = *in.roll;
    roll.outerDiameter.reset();
    in.roll = std::make_shared<const inputs::Roll>(roll);
    const auto none = lineOf(in, inputs::Feed::Over);
    REQUIRE_FALSE(none);
    CHECK(none.error().code == "practice.needs");
    CHECK(none.error().subject == "roll.outer_diameter");
}
