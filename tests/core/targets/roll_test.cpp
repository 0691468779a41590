// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <cmath>

#include "core/targets/target.h"
#include "core/units/plain.h"
#include "tests/core/targets/demo_inputs.h"
#include "tests/core/targets/stated.h"

using namespace taut;
using namespace demo::stated;
using targets::Targets;

namespace {

constexpr double kPi = 3.14159265358979323846;

/// The good roll of the north press, changed.
template <class Change>
inputs::Inputs withRoll(Change change)
{
    inputs::Inputs in = demo::inputs("north", "quince-jelly", "R0041");
    inputs::Roll roll = *in.roll;
    change(roll);
    in.roll = std::make_shared<const inputs::Roll>(std::move(roll));
    return in;
}
Entry<Kind::Length> metres(double si) { return Entry<Kind::Length>(Length::si(si), "m"); }
Entry<Kind::Mass> kilograms(double si) { return Entry<Kind::Mass>(Mass::si(si), "kg"); }

std::string answer(const Targets& t, const std::string& id) { return std::get<std::string>(ready(t, id).value); }

}  // namespace

// Arithmetic of R7 (length of the outer wraps) and of what the words say; the reserve stands in the press's profile.
TEST_CASE("what can be run of a roll leaves out its outer wraps and the reserve, and everything goes by that")
{
    const Targets t = targets::computeTargets(withRoll([](inputs::Roll& roll) {
        roll.tag.clear();
        roll.length = metres(1190);
        roll.outerDiameter = metres(0.470);
    }));
    const double strip = kPi * 3 * (0.470 - 3 * 140e-6), usable = 1190 - strip - 60;
    CHECK(usable == Approx(1125.6).margin(0.05));
    CHECK(si(t, "roll.usable") == Approx(usable));
    CHECK(si(t, "roll.run_time") == Approx(usable / 1.5));
    // The job wants 1147 m: more than can be run, though less than the label says.
    CHECK(si(t, "job.web") > usable);
    CHECK(si(t, "job.web") < 1190 - 2 * 0.02 * 1190 + 10);
    CHECK_FALSE(std::get<bool>(ready(t, "job.covered").value));
    CHECK(answer(t, "job.enough") == "no");
    CHECK(si(t, "job.rolls") == 2);
    CHECK(plain(finding(t, "job.roll_too_short").text).find("can be run") != std::string::npos);
    CHECK(targets::isKnownTarget("roll.usable"));
}

TEST_CASE("rolls are planned by what can be run of each, and their splices are those inside them and between them")
{
    inputs::Inputs in = demo::inputs("north", "quince-jelly", "R0041");
    inputs::Roll small = *in.roll;  // a small one from the start: of a remnant nobody plans more
    small.outerDiameter = metres(0.2);
    small.length.reset();
    small.tag.clear();
    in.roll = std::make_shared<const inputs::Roll>(small);
    const Targets t = targets::computeTargets(in);
    const double each =
        kPi * (0.2 * 0.2 - 0.1022 * 0.1022) / (4 * 140e-6) - kPi * 3 * (0.2 - 3 * 140e-6) - 60;  // R1, R7
    CHECK(si(t, "roll.usable") == Approx(each));
    CHECK(si(t, "job.rolls") == std::ceil(si(t, "job.web") / each));
    // One splice inside each of them and one between each two.
    CHECK(si(t, "job.splices") == 2 * si(t, "job.rolls") - 1);
    CHECK(plain(finding(t, "job.roll_too_short").remedy).find(std::to_string(static_cast<int>(si(t, "job.rolls")))) !=
          std::string::npos);

    // What a splice loses is lost at each of them: n U >= N + (n - 1) 2 Ls, with the fewest n.
    inputs::Job job = *in.job;
    job.spliceWaste = metres(8);
    in.job = std::make_shared<const inputs::Job>(job);
    const Targets wasting = targets::computeTargets(in);
    const double n = si(wasting, "job.rolls"), need = si(wasting, "job.web");
    CHECK(need == Approx(si(t, "job.web") + 8));
    CHECK(n * each >= need + (n - 1) * 2 * 8);
    CHECK((n - 1) * each < need + (n - 2) * 2 * 8);
    CHECK(n > si(t, "job.rolls"));
    // Where splices take all that a roll has, no number of rolls does it.
    job.spliceWaste = metres(60);
    in.job = std::make_shared<const inputs::Job>(job);
    const Targets never = targets::computeTargets(in);
    CHECK(std::holds_alternative<targets::Cannot>(never.find("job.rolls")->state));
    CHECK(std::holds_alternative<targets::Cannot>(never.find("job.splices")->state));
}

TEST_CASE("a roll that is all outer wraps and reserve cannot be run, and says so once")
{
    const Targets t = targets::computeTargets(demo::inputs("north", "quince-jelly", "R0041"), Length::si(0.14));
    for (const char* id : {"roll.usable", "roll.run_time", "job.covered", "job.enough", "job.rolls", "job.splices"}) {
        INFO(id);
        CHECK(cannot(t, id).why.code == "roll.nothing_usable");
    }
    CHECK(std::count_if(t.findings.begin(), t.findings.end(),
                        [](const Finding& f) { return f.code == "roll.nothing_usable"; }) == 1);
}

TEST_CASE("lengths that disagree are told by the two furthest apart, in the one measure, with which is used and why")
{
    // 120 kg on this web are 80 % more than its label says: R4, m / (w g).
    const Targets t = targets::computeTargets(withRoll([](inputs::Roll& r) { r.mass = kilograms(120); }));
    const double byMass = si(t, "roll.length_by_mass"), byDiameter = si(t, "roll.length_by_diameter");
    REQUIRE(byMass > 1360);
    const double apart = (byMass - byDiameter) / byMass;
    CHECK(si(t, "roll.lengths_apart") == Approx(apart));
    const Finding& told = finding(t, "roll.lengths_differ");
    CHECK(told.severity == Severity::Warn);
    CHECK(plain(told.text).find("The diameters say") == 0);
    CHECK(plain(told.text).find("the mass says") != std::string::npos);
    CHECK(std::get<Magnitude>(told.text.args.at(2)).si == Approx(apart));
    CHECK(plain(told.remedy).find("The label is used, since") == 0);
    CHECK(ready(t, "roll.lengths_apart").advice == told.remedy);

    // A label that tells of the full roll: the same measure in finding and target.
    const Targets opened = targets::computeTargets(withRoll([](inputs::Roll& r) { r.outerDiameter = metres(0.33); }));
    const double part = (1360 - si(opened, "roll.length_by_diameter")) / 1360;
    CHECK(si(opened, "roll.lengths_apart") == Approx(part));
    const Finding& full = finding(opened, "roll.lengths_differ");
    CHECK(std::get<Magnitude>(full.text.args.at(2)).si == Approx(part));
    CHECK(plain(full.text).find("The label says") == 0);
    CHECK(plain(full.remedy)
              .find("The diameters are used, since the label seems to be that of the roll when it was full") == 0);

    // Without a label the other two are told.
    const Targets silent = targets::computeTargets(withRoll([](inputs::Roll& r) {
        r.tag.clear();
        r.length.reset();
        r.mass = kilograms(90);
    }));
    CHECK(plain(finding(silent, "roll.lengths_differ").text).find("The diameters say") == 0);
    CHECK(plain(finding(silent, "roll.lengths_differ").remedy).find("no label") != std::string::npos);
}

TEST_CASE("what hangs on the lift is the largest mass that diameters, label and scale make of the roll")
{
    const inputs::Inputs in = demo::inputs("north", "quince-jelly", "R0041");
    const Targets t = targets::computeTargets(in);
    // The label says more web than the diameters at the material's caliper.
    const double grammage = in.substrate->grammage->si();
    CHECK(si(t, "roll.mass") == Approx(1360 * 0.33 * grammage + 0.9));
    CHECK(si(t, "roll.mass") > si(t, "roll.web_mass") + 0.9);
    CHECK(plain(ready(t, "roll.mass").advice).find("label's length") != std::string::npos);
    CHECK(si(t, "lift.load") == Approx(si(t, "roll.mass") + 25));
    const Targets heavy = targets::computeTargets(withRoll([](inputs::Roll& r) { r.mass = kilograms(120); }));
    CHECK(si(heavy, "roll.mass") == Approx(120));
    CHECK(plain(ready(heavy, "roll.mass").advice).find("As weighed") == 0);
    const Targets light = targets::computeTargets(withRoll([](inputs::Roll& r) { r.mass = kilograms(60); }));
    CHECK(si(light, "roll.mass") == Approx(si(t, "roll.mass")));
    // One that looks part used and is not said to be hangs on the lift as heavy as its label makes it.
    const Targets doubt = targets::computeTargets(withRoll([](inputs::Roll& r) { r.outerDiameter = metres(0.33); }));
    CHECK(si(doubt, "roll.mass") == Approx(1360 * 0.33 * grammage + 0.9));
    // A label that tells of the full roll tells nothing of the mass that is left.
    const Targets part = targets::computeTargets(withRoll([](inputs::Roll& r) {
        r.outerDiameter = metres(0.33);
        r.opened = true;
    }));
    CHECK(si(part, "roll.mass") == Approx(si(part, "roll.web_mass") + 0.9));
}

TEST_CASE("the caliper as wound is held against the material's, with which of them everything is reckoned by")
{
    const Targets t = targets::computeTargets(demo::inputs("north", "quince-jelly", "R0041"));
    // R1 solved for its caliper: pi (0.5^2 - 0.1022^2) / (4 * 1360).
    CHECK(si(t, "roll.caliper") == Approx(kPi * (0.25 - 0.1022 * 0.1022) / (4 * 1360)));
    const targets::Ready& wound = ready(t, "roll.caliper");
    CHECK(wound.window.low->si() == Approx(140e-6 * 0.95));
    CHECK(wound.window.high->si() == Approx(140e-6 * 1.05));
    CHECK(plain(wound.advice).find("material's own caliper") != std::string::npos);
    CHECK(plain(wound.advice).find("agree") != std::string::npos);
    const Targets apart = targets::computeTargets(withRoll([](inputs::Roll& r) {
        r.tag.clear();
        r.length = metres(1500);
    }));
    CHECK(si(apart, "roll.caliper") < 140e-6 * 0.95);
    CHECK(plain(ready(apart, "roll.caliper").advice).find("beyond its tolerance") != std::string::npos);
}

// Two hollow cylinders, each J = m (R^2 + r^2) / 2 (S84); tests/published checks V4.roll.
TEST_CASE("a roll's inertia is that of its web and that of its core")
{
    const Targets t = targets::computeTargets(demo::inputs("north", "quince-jelly", "R0041"));
    const double web = si(t, "roll.mass") - 0.9, rim = 0.25, core = 0.0511, bore = 0.0381;
    CHECK(si(t, "roll.inertia") ==
          Approx(web * (rim * rim + core * core) / 2 + 0.9 * (core * core + bore * bore) / 2).epsilon(1e-12));
    CHECK(ready(t, "roll.inertia").because.formula == "V4.roll");
}

TEST_CASE("the last part of a press of the inch control is a press")
{
    const Targets t = targets::computeTargets(demo::inputs("north", "quince-jelly", "R0041"));
    const double presses = si(t, "thread.pull") / 0.024;
    CHECK(presses == Approx(282.04).margin(0.01));
    CHECK(si(t, "thread.inches") == 283);
}
