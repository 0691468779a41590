// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <string>

#include "core/targets/target.h"
#include "tests/core/targets/demo_inputs.h"
#include "tests/core/targets/stated.h"

using namespace taut;
using namespace demo::stated;
using targets::Targets;

namespace {

/// The north press with lines put behind others of its file.
inputs::Inputs north(const std::vector<std::pair<std::string, std::string>>& behind = {})
{
    std::string toml = demo::text("presses/north.toml");
    for (const auto& [line, more] : behind) {
        const auto at = toml.find(line);
        REQUIRE(at != std::string::npos);
        toml.insert(at + line.size(), '\n' + more + '\n');
    }
    inputs::Inputs in = demo::inputs("north", "quince-jelly", "R0041");
    in.press = demo::pressOf(toml);
    return in;
}
const std::string kUnwindZone = "id = \"unwind\"\nname = \"Unwind\"",
                  kRewindZone = "id = \"rewind\"\nname = \"Rewind\"";

/// The stop time of the north press as its file said it before the speed had a key.
inputs::Inputs withoutSpeed()
{
    std::string toml = demo::text("presses/north.toml");
    const std::string at = ", at = \"60 m/min\"";
    REQUIRE(toml.find(at) != std::string::npos);
    toml.erase(toml.find(at), at.size());
    inputs::Inputs in = demo::inputs("north", "quince-jelly", "R0041");
    in.press = demo::pressOf(toml);
    return in;
}

}  // namespace

TEST_CASE("what an emergency stop does to the unwind follows from what its brake does then")
{
    const Targets holds = targets::computeTargets(north());
    const double inertia = si(holds, "roll.inertia"), radius = 0.25;
    const double slowing = 1.0 / 3;  // 60 m/min in 3 s, as measured; the job runs 90
    CHECK(si(holds, "stop.unwind.tension") == Approx((14.85 - inertia * slowing / radius) / radius));
    const Targets said = targets::computeTargets(north({{kUnwindZone, "stop_action = \"holds\""}}));
    CHECK(si(said, "stop.unwind.tension") == si(holds, "stop.unwind.tension"));

    const Targets releases = targets::computeTargets(north({{kUnwindZone, "stop_action = \"releases\""}}));
    // A web cannot push: nothing is left of the tension, whatever the speed, and running slower is no help.
    CHECK(si(releases, "stop.unwind.tension") == 0);
    for (const Finding& f : releases.findings)
        if (f.code == "stop.slack") CHECK(f.remedy.source.find("running slower changes nothing") != std::string::npos);
    CHECK(noted(releases, "stop.slack"));
    CHECK_FALSE(noted(holds, "stop.slack"));

    // All of the brake: 12 N m/bar from 0.15 bar to 6 bar.
    const Targets brakes = targets::computeTargets(north({{kUnwindZone, "stop_action = \"brakes\""}}));
    CHECK(si(brakes, "stop.unwind.tension") == Approx((12 * (6 - 0.15) - inertia * slowing / radius) / radius));
}

TEST_CASE("a rewind that lets go in an emergency stop pulls with its roll alone, and spares the splice")
{
    const Targets holds = targets::computeTargets(north());
    const Targets releases = targets::computeTargets(north({{kRewindZone, "stop_action = \"releases\""}}));
    CHECK(si(releases, "stop.rewind.tension") ==
          Approx(si(holds, "stop.rewind.tension") - si(holds, "tension.rewind.finished")));
    CHECK(si(releases, "splice.transient_margin") > si(holds, "splice.transient_margin"));
}

TEST_CASE("shaft and chucks turn with the roll")
{
    const Targets bare = targets::computeTargets(north());
    const Targets shaft = targets::computeTargets(north({{"stop_reserve = \"60 m\"", "shaft_inertia = \"0.5 kg m2\""},
                                                         {"core_wraps = 3", "shaft_inertia = \"0.2 kg m2\""}}));
    CHECK(si(bare, "stop.unwind.tension") - si(shaft, "stop.unwind.tension") == Approx(0.5 / 3 / (0.25 * 0.25)));
    CHECK(si(shaft, "stop.rewind.tension") - si(bare, "stop.rewind.tension") == Approx(0.2 / 3 / (0.28 * 0.28)));
    CHECK(si(shaft, "roll.inertia") == si(bare, "roll.inertia"));
}

// V7 by hand: T = T0 + J a / R^2 with T0 by B6.hyperbolic, 59.4 (1 - 0.2 (1 - 102.2 / 560)).
TEST_CASE("a stop pulls the finished roll from the tension that it has by then, not from the core's")
{
    const double finished = 59.4 * (1 - 0.2 * (1 - 102.2 / 560)), rim = 0.28, core = 0.0511;
    const Targets t = targets::computeTargets(north());
    CHECK(si(t, "tension.rewind.finished") == Approx(finished));
    const inputs::Inputs in = north();
    const double mass = in.substrate->grammage->si() / 140e-6 * 3.14159265358979 * (rim * rim - core * core) * 0.33;
    const double inertia = mass * (rim * rim + core * core) / 2;
    CHECK(si(t, "stop.rewind.tension") == Approx(finished + inertia / 3 / (rim * rim)));
    // From job speed in the same three seconds, as a profile without the speed is read: 72.2 N.
    CHECK(si(targets::computeTargets(withoutSpeed()), "stop.rewind.tension") == Approx(72.2).margin(0.05));
}

TEST_CASE("where the roll has just begun, shaft and chucks may pull harder than the finished roll, and the splice is "
          "held against it")
{
    const Targets bare = targets::computeTargets(north()),
                  shaft = targets::computeTargets(north({{"core_wraps = 3", "shaft_inertia = \"0.2 kg m2\""}}));
    CHECK(bare.find("stop.rewind.core_tension") == nullptr);
    const double atCore = 59.4 + 0.2 / 3 / (0.0511 * 0.0511);
    CHECK(si(shaft, "stop.rewind.core_tension") == Approx(atCore));
    REQUIRE(atCore > si(shaft, "stop.rewind.tension"));
    // Margin times the tension is the strength of the splice, the same in both: from the top of the window, 0.22 N/mm
    // instead of 0.18, of which the finished roll has what the taper leaves.
    const double more = 0.22 / 0.18 - 1;
    CHECK(si(shaft, "splice.transient_margin") * (atCore + more * 59.4) ==
          Approx(si(bare, "splice.transient_margin") *
                 (si(bare, "stop.rewind.tension") + more * si(bare, "tension.rewind.finished"))));
    CHECK(targets::isKnownTarget("stop.{rewind}.core_tension"));
}

// V1.time: t = v / a with a from the time and the speed it was measured at.
TEST_CASE("a stop time is that of the speed it was measured at, and grows with the speed")
{
    const Targets t = targets::computeTargets(north());
    CHECK(si(t, "stop.emergency_time") == Approx(3));
    CHECK(ready(t, "stop.emergency_time").window.high->si() == Approx(3.6));
    CHECK(t.find("stop.emergency_time")->name.args.size() == 1);  // it says from which speed
    // A sound press stops from 90 m/min in 4.5 s; 3.6 s would condemn it.
    CHECK(si(t, "stop.emergency_time_at_speed") == Approx(4.5));
    CHECK(ready(t, "stop.emergency_time_at_speed").window.high->si() == Approx(5.4));
    CHECK(si(t, "stop.distance") == Approx(1.5 * 1.5 / (2.0 / 3)));  // v^2 / (2 a)
    const Targets silent = targets::computeTargets(withoutSpeed());
    CHECK(si(silent, "stop.distance") == Approx(1.5 * 3 / 2));
    const auto* needs = std::get_if<targets::Needs>(&silent.find("stop.emergency_time_at_speed")->state);
    REQUIRE(needs != nullptr);
    CHECK(needs->keys == std::vector<std::string>{"press.speeds.stop_time.at"});
    CHECK(ready(silent, "stop.emergency_time").advice != ready(t, "stop.emergency_time").advice);
    // That job speed was taken for it is said, with the key to enter.
    const Finding& said = finding(silent, "stop.speed_not_said");
    CHECK(said.severity == Severity::Warn);
    CHECK(said.subject == "press.speeds.stop_time.at");
    CHECK(std::get<Magnitude>(said.text.args.at(1)).si == 1.5);
    CHECK_FALSE(noted(t, "stop.speed_not_said"));
    // And the trial is judged all the same: 40 s is no stop.
    CHECK(si(silent, "stop.trial_time") == Approx(1.5));
    CHECK(ready(silent, "stop.trial_time").window.high->si() == Approx(1.8));
    // Half of what is reckoned is another speed, or a late watch.
    CHECK(ready(t, "stop.trial_time").window.low->si() == Approx(1.125));
}

TEST_CASE(
    "a stop on trial is timed from the proving run's speed, no slower than idle and no faster than the press goes")
{
    const Targets t = targets::computeTargets(north());
    // Half of 90 m/min, from which the deceleration of 60 m/min in 3 s takes 2.25 s (V1), and a fifth more.
    CHECK(si(t, "stop.trial_speed") == Approx(0.75));
    CHECK(si(t, "stop.trial_time") == Approx(2.25));
    CHECK(ready(t, "stop.trial_time").window.high->si() == Approx(2.7));
    const auto at = [](double jobSpeed) {
        inputs::Inputs in = north();
        inputs::Job job = *in.job;
        job.speed = Entry<Kind::Speed>(Quantity(jobSpeed, Kind::Speed, "m/min"));
        in.job = std::make_shared<const inputs::Job>(job);
        return si(targets::computeTargets(in), "stop.trial_speed");
    };
    const inputs::Inputs in = north();
    CHECK(at(0.1) == Approx(in.press->idle.value->si()));
    CHECK(at(40) == Approx(in.press->largest.value->si()));
}

TEST_CASE("speeding up pulls the unwind tight and leaves the rewind loose, each against its limit")
{
    const Targets none = targets::computeTargets(north());
    CHECK(none.find("start.unwind.tension") == nullptr);
    const Targets t =
        targets::computeTargets(north({{"[speeds]", "ramp_up = { value = \"15 s\", source = \"measured\" }"}}));
    const double rise = 1.5 / 15;
    CHECK(si(t, "start.unwind.tension") ==
          Approx(si(t, "tension.unwind.total") + si(t, "roll.inertia") * rise / (0.25 * 0.25)));
    CHECK(ready(t, "start.unwind.tension").window.high->si() == Approx(1.25 * si(t, "tension.unwind.total")));
    const double pulledOn = si(t, "stop.rewind.tension") - si(t, "tension.rewind.finished");  // J a / R^2 of the stop
    CHECK(si(t, "start.rewind.tension") == Approx(si(t, "tension.rewind.finished") - pulledOn * rise * 3));
    CHECK(ready(t, "start.rewind.tension").window.low->si() == Approx(0.75 * si(t, "tension.rewind.finished")));
    CHECK(targets::isKnownTarget("start.{rewind}.tension"));
}

TEST_CASE("behind the die the liner carries alone: it is stretched more, and caps the tension sooner")
{
    const Targets whole = targets::computeTargets(north());
    const Targets liner = targets::computeTargets(north({{kRewindZone, "carries = \"liner\""}}));
    // 52 um of 4.0 GPa in place of 140 um of 3.8 GPa, at the middle of the window that is left.
    CHECK(si(whole, "tension.rewind.strain") == Approx(180 / (140e-6 * 3.8e9)));
    CHECK(si(liner, "tension.rewind.strain") == Approx((140 + 208) / 2.0 / (52e-6 * 4.0e9)));
    CHECK(si(liner, "tension.unwind.strain") == si(whole, "tension.unwind.strain"));
    // 0.1 % of the liner is 0.208 N/mm: the job's 0.22 is held down to it.
    CHECK(ready(whole, "tension.rewind.per_width").window.high->si() == Approx(220));
    CHECK(ready(liner, "tension.rewind.per_width").window.high->si() == Approx(0.001 * 4.0e9 * 52e-6));
    // A web without layers has no liner to name.
    inputs::Inputs film = demo::inputs("south", "cold-brew", "R0048");
    inputs::Press press = *film.press;
    const double before = si(targets::computeTargets(film), "tension.rewind_1.strain");
    for (inputs::Zone& zone : press.zones) zone.carries = "liner";
    film.press = std::make_shared<const inputs::Press>(press);
    CHECK(si(targets::computeTargets(film), "tension.rewind_1.strain") == before);
}
