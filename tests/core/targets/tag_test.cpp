// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <algorithm>

#include "core/targets/target.h"
#include "tests/core/targets/demo_inputs.h"
#include "tests/core/targets/stated.h"

// What a tag and a label count for: all that nobody entered, until something was taken off the roll.
using namespace taut;
using namespace demo::stated;
using targets::Targets;

namespace {

template <class Change>
Targets withRoll(const char* roll, Change change, std::optional<Length> present = {})
{
    inputs::Inputs in = demo::inputs("north", "quince-jelly", roll);
    inputs::Roll changed = *in.roll;
    change(changed);
    in.roll = std::make_shared<const inputs::Roll>(std::move(changed));
    return targets::computeTargets(in, present);
}
std::vector<std::string> needs(const Targets& t, const std::string& id)
{
    const targets::Target* target = t.find(id);
    REQUIRE(target != nullptr);
    const auto* open = std::get_if<targets::Needs>(&target->state);
    return open == nullptr ? std::vector<std::string>() : open->keys;
}
bool comesFrom(const Targets& t, const std::string& id, const std::string& from)
{
    const auto& given = ready(t, id).because.given;
    return std::any_of(given.begin(), given.end(),
                       [&](const targets::Given& g) { return g.from.find(from) != std::string::npos; });
}

}  // namespace

// The tag's field 8001 is 0330 01360 076 0 1: width mm, length m, core mm, face out, splices (GS1 General
// Specifications, section 3, AI 8001, from memory).
TEST_CASE("what the roll's file leaves open its own tag tells, and that is where it comes from")
{
    const auto open = [](inputs::Roll& r) {
        r.length.reset();
        r.core.reset();
        r.splices.reset();
    };
    const Targets t = withRoll("R0041", open);
    CHECK(si(t, "roll.length") == Approx(1360));
    CHECK(comesFrom(t, "roll.length", "roll.tag"));
    CHECK(ready(t, "core.adapter").value == targets::TargetValue(false));
    CHECK(comesFrom(t, "roll.wraps", "roll.tag"));
    CHECK_FALSE(comesFrom(t, "roll.wraps", "roll.core "));
    CHECK(comesFrom(t, "job.web", "roll.tag"));
    for (const targets::Given& g : ready(t, "job.web").because.given)
        if (g.symbol == "n") CHECK(std::get<Quantity>(g.value).si() == 1);
    // The tag of another roll tells nothing of this one, and of an opened roll the length on it is gone.
    const Targets other = withRoll("R0041", [&](inputs::Roll& r) {
        open(r);
        r.id = "R0099";
    });
    CHECK(needs(other, "core.adapter") == std::vector<std::string>{"roll.core"});
    const Targets opened = withRoll("R0041", [&](inputs::Roll& r) {
        open(r);
        r.opened = true;
    });
    CHECK(comesFrom(opened, "roll.length", "roll.tag + 2"));  // by the diameters, on the tag's core
    // What was entered counts.
    const Targets entered = withRoll("R0041", [](inputs::Roll&) {});
    CHECK_FALSE(comesFrom(entered, "roll.length", "roll.tag"));
}

TEST_CASE("a length in doubt is still what hangs on the lift and what the caliper is compared by")
{
    const Targets t = withRoll("R0041", [](inputs::Roll& r) { r.length = Entry<Kind::Length>(Length::si(1600), "m"); });
    // Counting on it would run the web out.
    CHECK(si(t, "roll.length") < 1400);
    const double grammage = demo::substrate("paper-label-80")->grammage->si();
    CHECK(si(t, "roll.mass") == Approx(1600 * 0.33 * grammage + 0.9));
    CHECK(needs(t, "roll.caliper").empty());
    CHECK(si(t, "roll.caliper") == Approx(3.14159265358979 * (0.25 - 0.1022 * 0.1022) / 4 / 1600));
}

TEST_CASE("a roll that something was taken off is not held against its label")
{
    for (const Targets& t : {withRoll("R0046", [](inputs::Roll&) {}),
                             withRoll(
                                 "R0041", [](inputs::Roll&) {}, Length::si(0.2)),
                             withRoll(
                                 "R0041", [](inputs::Roll&) {}, Length::si(0.15))}) {
        CHECK(t.find("roll.lengths_apart") == nullptr);
        CHECK_FALSE(noted(t, "roll.lengths_differ"));
        CHECK(needs(t, "roll.caliper").empty());
    }
    // Opened and weighed: diameters and mass are both of what is left.
    const Targets weighed = withRoll("R0046", [](inputs::Roll& r) {
        r.mass = Entry<Kind::Mass>(Mass::si(30), "kg");
        r.coreMass = Entry<Kind::Mass>(Mass::si(0.9), "kg");
    });
    CHECK(weighed.find("roll.lengths_apart") != nullptr);
    CHECK(si(weighed, "roll.lengths_apart") < 1);
}

TEST_CASE("what the lengths cannot be compared without is what is missing")
{
    inputs::Inputs in = demo::inputs("north", "quince-jelly", "R0041");
    inputs::Substrate thin = *in.substrate;
    thin.caliper.reset();
    in.substrate = std::make_shared<const inputs::Substrate>(std::move(thin));
    CHECK(needs(targets::computeTargets(in), "roll.lengths_apart") == std::vector<std::string>{"substrate.caliper"});
    // A rewind that does not say where it stands.
    inputs::Press press = *demo::press("north");
    press.rewinds.front().roller.clear();
    press.rewinds.front().id = "winder";
    in = demo::inputs("north", "quince-jelly", "R0041");
    in.press = std::make_shared<const inputs::Press>(std::move(press));
    const Targets t = targets::computeTargets(in);
    CHECK(needs(t, "thread.main.length") == std::vector<std::string>{"press.rewind.winder.roller"});
    CHECK(needs(t, "tension.rewind.torque") == std::vector<std::string>{"press.rewind.winder.roller"});
}
