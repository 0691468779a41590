// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>

#include "core/inputs/inputs.h"
#include "core/targets/target.h"
#include "tests/core/targets/demo_inputs.h"
#include "tests/core/targets/stated.h"

// Diameters that cannot be, and a reserve that is none.
using namespace taut;
using namespace demo::stated;
using targets::Targets;

namespace {

Targets measured(const char* press, const char* job, const char* roll, double millimetres)
{
    return targets::computeTargets(demo::inputs(press, job, roll), Length::si(millimetres / 1000));
}
Targets entered(const char* press, const char* job, const char* rollId, double millimetres)
{
    inputs::Inputs in = demo::inputs(press, job, rollId);
    inputs::Roll roll = *in.roll;
    roll.outerDiameter = Entry<Kind::Length>(Quantity(millimetres / 1000, Kind::Length, "mm"));
    in.roll = std::make_shared<const inputs::Roll>(std::move(roll));
    return targets::computeTargets(in);
}
bool isKept(const Targets& t, const std::string& code)
{
    const auto* no = std::get_if<targets::Cannot>(&t.find("tension.unwind.setting")->state);
    return no != nullptr && no->why.code == code && no->why.severity == Severity::Stop && noted(t, code);
}

}  // namespace

TEST_CASE("a roll that measures more than its file or its label allows sets no brake")
{
    CHECK(isKept(measured("north", "quince-jelly", "R0041", 800), "input.diameter_above_full"));
    // 300 mm across, typed as it measures round: neither the file's diameter nor its girth.
    CHECK(isKept(measured("north", "parcel-tag", "R0050", 942), "input.diameter_above_full"));
    // A part-used roll of 1360 m when it was full: at 600 mm it would hold 1961 m.
    CHECK(isKept(entered("north", "quince-jelly", "R0046", 600), "input.diameter_above_full"));
    CHECK(isKept(measured("north", "quince-jelly", "R0041", 1570), "input.diameter_looks_like_circumference"));
    CHECK(isKept(entered("north", "quince-jelly", "R0041", 1570), "input.diameter_looks_like_circumference"));
    CHECK_FALSE(noted(entered("north", "quince-jelly", "R0041", 1570), "lift.too_heavy"));
    // What a tape measure and an old label leave open is believed.
    CHECK(si(measured("north", "quince-jelly", "R0041", 510), "tension.unwind.setting") > 0);
    CHECK(si(entered("north", "quince-jelly", "R0046", 500), "tension.unwind.setting") > 0);
}

TEST_CASE("the automatic stop leaves what the press takes to stop, whatever the reserve says")
{
    const auto with = [](double reserve, double seconds) {
        return demo::withPress("north", "quince-jelly", "R0041", [&](inputs::Press& p) {
            p.unwind->stopReserve = Entry<Kind::Length>(Quantity(reserve, Kind::Length, "m"));
            p.stopTime.value = Quantity(seconds, Kind::Time, "s");
        });
    };
    // 90 m/min and 12 s from 60 m/min: 1 m/s over 12 s, so v^2 / 2a = 1.5^2 / 2 * 12 = 13.5 m.
    const Targets late = with(5, 12), covered = with(13.5, 12), usual = with(60, 3);
    CHECK(si(late, "stop.distance") == Approx(13.5));
    CHECK(noted(late, "stop.reserve_short"));
    CHECK(si(late, "stop.diameter") == Approx(si(covered, "stop.diameter")));
    CHECK(si(late, "roll.usable") == Approx(si(covered, "roll.usable")));
    CHECK_FALSE(noted(covered, "stop.reserve_short"));
    CHECK_FALSE(noted(usual, "stop.reserve_short"));
}

TEST_CASE("of a roll that is nearly used up nobody plans more of its like")
{
    // 150 mm of a roll of 1360 m are 66 m, of which the reserve takes all but a few; 200 mm are 166 m.
    const Targets t = measured("north", "quince-jelly", "R0041", 200);
    for (const char* id : {"job.rolls", "job.splices"}) {
        INFO(id);
        CHECK(cannot(t, id).never());
        CHECK(cannot(t, id).why.code == "job.roll_remnant");
    }
    for (const Finding& f : t.findings)
        if (f.code == "job.roll_too_short") CHECK(f.remedy.source.find("nearly used up") != std::string::npos);
    CHECK(noted(t, "job.roll_too_short"));
    // Half of it is a roll yet.
    CHECK(si(measured("north", "quince-jelly", "R0041", 360), "job.rolls") >= 1);
}

TEST_CASE("a weighed roll without a diameter has a running time")
{
    inputs::Inputs in = demo::inputs("south", "seed-window", "R0049");
    inputs::Roll roll = *in.roll;
    roll.outerDiameter.reset();
    roll.tag.clear();
    roll.opened = true;
    in.roll = std::make_shared<const inputs::Roll>(std::move(roll));
    const Targets t = targets::computeTargets(in);
    const double length = si(t, "roll.length");
    CHECK(si(t, "roll.usable") < length);
    CHECK(si(t, "roll.usable") > 0.9 * length - 80);
    CHECK(si(t, "roll.run_time") > 0);
    CHECK(ready(t, "job.enough").value == targets::TargetValue(std::string("enough")));
}

TEST_CASE("through an empty press the web is drawn from the roll, not from the splice table")
{
    const inputs::Inputs in = demo::inputs("north", "quince-jelly", "R0041");
    const Targets joined = targets::computeTargets(in), empty = targets::computeTargets(in, {}, false);
    CHECK(si(joined, "thread.pull") < si(joined, "thread.main.length"));
    CHECK(si(empty, "thread.pull") == si(empty, "thread.main.length"));
    CHECK(si(empty, "thread.inches") == Approx(std::ceil(si(empty, "thread.pull") / 0.024)));
    CHECK_FALSE(empty.find("thread.pull")->name == joined.find("thread.pull")->name);
}
