// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <array>

#include "core/inputs/sane.h"
#include "core/targets/book.h"
#include "core/targets/setting.h"

// What a stop does: where the automatic one acts, how much web still passes, and what the inertia of the rolls does to
// the tension while the speed changes.
namespace taut::targets {

namespace {

std::string forceUnit(const Book& book) { return book.press().units == UnitSystem::Us ? "lbf" : "N"; }

Term halfOf(const Term& diameter, const std::string& from)
{
    return combine(
        {diameter}, from, [](const std::vector<double>& v) { return v[0] / 2; }, Kind::Length);
}

/// Even change of speed over a measured time, from or to the speed at which it was measured; where nobody said that,
/// job speed is taken for it.
Term over(const Book& book, const inputs::Sourced& time, const std::string& key)
{
    const Term speed = time.at ? known(*time.at, key + ".at") : book.speed();
    return combine(
        {speed, term(time.value, key)}, speed.from + " over " + key,
        [](const std::vector<double>& v) { return v[0] / v[1]; }, Kind::Acceleration);
}

/// A stop of unknown speed is taken for one from job speed, by which a press that was timed from less stops sooner than
/// it does.
void sayJobSpeedTaken(Book& book, const inputs::Sourced& time, const std::string& key)
{
    if (!time.value || time.at || !book.speed().known()) return;
    book.note(Finding{"stop.speed_not_said", Severity::Warn, key + ".at",
                      Text("From what speed %1 was measured is not said: it is taken for that from the job's, %2.",
                           {time.value->magnitude(), book.speed().value->magnitude()}),
                      "Enter that speed beside it, as at. Measured from less, the press takes more web to stop than is "
                      "reckoned."});
}

/// The roll and what turns with it, where the profile says that.
Term withShaft(const Term& roll, const inputs::Maybe<Kind::Inertia>& shaft, const std::string& key)
{
    if (!shaft) return roll;
    return combine(
        {roll, term(shaft, key)}, roll.from + " + " + key, [](const std::vector<double>& v) { return v[0] + v[1]; },
        Kind::Inertia);
}

/// V6, unless the torque does not even slow the roll as fast as the press: a web cannot push, it hangs slack.
Stated stateLeft(Book& book, const std::string& id, const Text& name, const Arguments& arguments)
{
    Term left = evaluated("V6", arguments, "");
    if (!left.known() || left.value->si() > 0) return book.formula(id, name, "V6", arguments, forceUnit(book));
    constexpr std::array kNames{"torque on the roll", "inertia", "change of speed", "radius"};
    Arguments named = arguments;
    for (std::size_t i = 0; i < named.size(); ++i) named[i].second = called(named[i].second, kNames.at(i));
    return book
        .value(id, name, "rule", known(Quantity(0, Kind::Force, forceUnit(book)), ""), "V6 gives less than nothing",
               named)
        .symbols("T = 0 where M / R < J a / R^2");
}

/// Torque on the unwinding roll in an emergency stop: as set, none where the brake lets go, all of it where it bites.
Term stopTorque(const Book& book, const inputs::Zone& zone)
{
    if (zone.stopAction == "releases") return known(Quantity(0, Kind::Torque), zoneKey(zone, "stop_action"));
    if (zone.stopAction != "brakes") return book.target("tension." + zone.id + ".torque");
    const bool openLoop = zone.control == inputs::Control::OpenLoop;
    const char* key = openLoop ? "setting.most" : "actuator_range.most";
    return combine(
        {term(zone.torquePerSetting, zoneKey(zone, "torque_per_setting")),
         term(zone.zeroSetting, zoneKey(zone, "zero_setting")),
         term(openLoop ? zone.setting.most : zone.actuatorRange.most, zoneKey(zone, key))},
        zoneKey(zone, "torque_per_setting") + " at " + zoneKey(zone, key),
        [](const std::vector<double>& v) { return v[0] * (v[2] - v[1]); }, Kind::Torque);
}

/// What a measured time to standstill holds already.
Term reaction() { return known(Quantity(0, Kind::Time), "policy:reaction_in_stop_time"); }

/// V1.distance of an ordinary stop from job speed, which is how the automatic one stops.
Arguments ordinaryStop(const Book& book)
{
    return {
        {"v", book.speed()}, {"tr", reaction()}, {"a", over(book, book.press().stopTime, "press.speeds.stop_time")}};
}

Term enteredReserve(const inputs::Press& press)
{
    return press.unwind ? term(press.unwind->stopReserve, "press.unwind.stop_reserve")
                        : missing("press.unwind.stop_reserve");
}

}  // namespace

Term finishedTension(const Book& book, const inputs::Zone& zone)
{
    return book.target("tension." + zone.id + (zone.control == inputs::Control::Draw ? ".total" : ".finished"));
}

namespace {

/// A reserve that is gone before the press stands: the web's end runs through it.
void sayReserveShort(Book& book, const Term& reserve)
{
    const Term entered = enteredReserve(book.press());
    if (!entered.known() || !reserve.known() || reserve.value->si() <= entered.value->si()) return;
    const Magnitude passes = reserve.value->in(book.press().units == UnitSystem::Us ? "ft" : "m").magnitude();
    book.note(Finding{"stop.reserve_short", Severity::Warn, "press.unwind.stop_reserve",
                      Text("From job speed the press takes %1 of web to stop; the automatic stop's reserve is %2: the "
                           "end of the web would run off the roll.",
                           {passes, entered.value->magnitude()}),
                      Text("Set the automatic stop to the diameter shown, which leaves %1 on the roll, and enter no "
                           "less as the reserve; or run slower.",
                           {passes})});
}

void stateAutomaticStop(Book& book)
{
    const inputs::Press& press = book.press();
    const Term reserve = stopReserve(book);
    sayReserveShort(book, reserve);
    Stated stop = book.formula("stop.diameter", "Diameter at which the automatic stop acts", "R6",
                               {{"d", book.coreOuter(Book::Wall::Thickest)}, {"t", book.caliper()}, {"L", reserve}},
                               press.units == UnitSystem::Us ? "in" : "mm");
    const Quantity* q = stop.ready() ? &std::get<Quantity>(stop.ready()->value) : nullptr;
    if (q == nullptr) return;
    stop.most(book.mostAcross(nullptr));
    stop.window(*q, Quantity(q->si() + 0.01, Kind::Length, q->unit()), Rule::Policy,
                "never below: the web would run off; 10 mm above at most: policy")
        .advice("The least, reckoned on the outside of the core, at which the reserve is still on the roll. Aim "
                "between it and "
                "the largest: neither the setting nor the caliper is exact.");
    if (!book.knowsWall())
        stop.advice(Text("The core's wall is not known: reckoned with one of %1, the thickest, so that the stop comes "
                         "early and never too late. Measure the wall.",
                         {book.row("core_wall_most").value->magnitude()}));
}

void stateUnwindStop(Book& book, const inputs::Zone& zone, const Term& slowing)
{
    const bool us = book.press().units == UnitSystem::Us;
    const Term radius = halfOf(book.runningDiameter(), book.roll().strippedDiameter ? "half of roll.stripped_diameter"
                                                                                    : "half of the diameter");
    const Term inertia =
        withShaft(book.target("roll.inertia"), book.press().unwind ? book.press().unwind->shaftInertia : std::nullopt,
                  "press.unwind.shaft_inertia");
    Stated tension = stateLeft(book, "stop.unwind.tension", "Tension at the unwind during an emergency stop",
                               {{"M", stopTorque(book, zone)}, {"J", inertia}, {"a", slowing}, {"R", radius}});
    const bool slack = tension.ready() != nullptr && std::get<Quantity>(tension.ready()->value).si() <= 0;
    if (slack && zone.stopAction == "releases") {
        tension.advice("The brake lets go in an emergency stop: the roll runs on and the web hangs slack.");
    } else if (slack) {
        tension.advice("The brake as set does not hold this roll: expect slack web and a run-on at an emergency stop.");
    } else {
        tension.advice(zone.stopAction == "brakes"
                           ? Text("With all that the brake has, as it bites in an emergency stop.")
                           : Text("With the brake left as it is set."));
    }
    if (slack)
        book.note(
            Finding{"stop.slack", Severity::Warn, "press.zone." + zone.id,
                    zone.stopAction == "releases"
                        ? Text("In an emergency stop from job speed the unwind goes slack: its brake lets go.")
                        : Text("In an emergency stop from job speed the unwind goes slack: the brake as set does "
                               "not hold this roll."),
                    Text("Look for a slack web before starting again. A smaller roll runs on less; running slower "
                         "changes nothing, since the press slows no more gently from it.")});
    book.formula("stop.unwind.hold_torque", "Torque that would keep the unwind's tension in an emergency stop",
                 "V6.hold",
                 {{"T", book.target("tension." + zone.id + ".total")}, {"J", inertia}, {"a", slowing}, {"R", radius}},
                 us ? "lbf in" : "N m")
        .advice("Hold it against the torque on the roll: what is missing comes out as slack.");
    if (!book.press().rampUp.value || zone.control != inputs::Control::OpenLoop) return;
    const Term total = book.target("tension." + zone.id + ".total");
    const Limit ramp = book.limit("tension_ramp");
    Stated start = book.formula(
        "start.unwind.tension", "Tension at the unwind while the press speeds up", "V7",
        {{"T0", total}, {"J", inertia}, {"a", over(book, book.press().rampUp, "press.speeds.ramp_up")}, {"R", radius}},
        forceUnit(book));
    if (start.ready() != nullptr)
        start
            .window({}, Quantity(total.value->si() * (1 + ramp.si()), Kind::Force, forceUnit(book)), ramp.rule,
                    ramp.source())
            .advice(
                "The web has to drag the roll up to speed. Above the limit, speed up more slowly while it is large.");
}

void stateRewindStop(Book& book, const inputs::Zone& zone, const inputs::Rewind& rewind, const Term& slowing)
{
    const std::string id = "tension." + zone.id + ".";
    const Term core = rollDiameterOf(book, zone);
    const Term full = lastDiameterOf(book, zone);
    const Term mass = evaluated(
        "R5", {{"D", full}, {"d", core}, {"t", book.caliper()}, {"w", zoneWidth(book, zone)}, {"g", book.grammage()}},
        "mass of the finished roll");
    const Term radius = halfOf(full, "half of " + full.from);
    const Term inertia =
        withShaft(evaluated("V4", {{"m", mass}, {"R", radius}, {"r", halfOf(core, "half of the core")}},
                            "V4 of the finished roll"),
                  rewind.shaftInertia, "press.rewind." + rewind.id + ".shaft_inertia");
    const bool pulls = zone.stopAction.empty() || zone.stopAction == "holds";
    // Taper: the finished roll runs at less than the empty core did.
    const Term finished = finishedTension(book, zone);
    book.formula("stop." + rewind.id + ".tension", "Tension at the rewind during an emergency stop, finished roll",
                 "V7",
                 {{"T0", pulls ? finished : known(Quantity(0, Kind::Force), zoneKey(zone, "stop_action"))},
                  {"J", inertia},
                  {"a", slowing},
                  {"R", radius}},
                 forceUnit(book))
        .advice(pulls ? Text("If the clutch keeps its torque. A weak splice parts here.")
                      : Text("The drive no longer pulls; what is left is the finished roll that runs on."));
    if (rewind.shaftInertia && pulls)
        book.formula("stop." + rewind.id + ".core_tension",
                     "Tension at the rewind during an emergency stop, empty core", "V7",
                     {{"T0", book.target(id + "total")},
                      {"J", term(rewind.shaftInertia, "press.rewind." + rewind.id + ".shaft_inertia")},
                      {"a", slowing},
                      {"R", halfOf(core, "half of the core")}},
                     forceUnit(book))
            .advice("Shaft and chucks run on round so small a core: as the roll has just begun, this pulls hardest.");
    if (!book.press().rampUp.value || zone.control != inputs::Control::OpenLoop) return;
    const Limit ramp = book.limit("tension_ramp");
    Stated start = stateLeft(book, "start." + rewind.id + ".tension",
                             "Tension at the rewind while the press speeds up, finished roll",
                             {{"M", evaluated("B1", {{"T", finished}, {"D", full}}, "torque on the finished roll")},
                              {"J", inertia},
                              {"a", over(book, book.press().rampUp, "press.speeds.ramp_up")},
                              {"R", radius}});
    if (start.ready() != nullptr)
        start
            .window(Quantity(finished.value->si() * (1 - ramp.si()), Kind::Force, forceUnit(book)), {}, ramp.rule,
                    ramp.source())
            .advice("Part of the torque goes into the roll itself. Below the limit the wraps wind soft: speed up more "
                    "slowly.");
}

/// The time to standstill as it was measured, and what the same deceleration makes of it at job speed: a press that
/// runs faster than it was measured at takes longer and is none the worse.
void stateStopTime(Book& book, const inputs::Sourced& measured, const std::string& key, const Term& slowing)
{
    const Limit late = book.limit("stop_time_over");
    Stated scaled = book.formula(
        "stop.emergency_time_at_speed", "Time to standstill after an emergency stop from job speed", "V1.time",
        {{"v", book.speed()}, {"tr", reaction()}, {"a", measured.at ? slowing : lack({slowing, missing(key + ".at")})}},
        "s");
    const auto most = [&late](const Quantity& time) {
        return Quantity(time.si() * (1 + late.si()), Kind::Time, time.unit());
    };
    if (scaled.ready() != nullptr && std::get<Quantity>(scaled.ready()->value).si() < 0.1) scaled.in("ms");
    const auto* atSpeed = scaled.ready() ? &std::get<Quantity>(scaled.ready()->value) : nullptr;
    if (atSpeed != nullptr) scaled.window({}, most(*atSpeed), late.rule, late.source());
    scaled.advice("The deceleration is the press's own: the time grows with the speed that it is stopped from.");

    const Term share = called(book.row("proving_speed"), "share of the job's speed");
    const Term job = called(book.speed(), "speed of the job");
    // No slower than the press idles, and no faster than it can.
    const inputs::Press& press = book.press();
    Arguments because{{"v", job}, {"k", share}};
    if (press.idle.value) because.emplace_back("vi", called(term(press.idle.value, "press.speeds.idle"), "idle speed"));
    if (press.largest.value)
        because.emplace_back("vm", called(term(press.largest.value, "press.speeds.largest"), "largest speed"));
    Term trial = combine(
        {job, share}, "", [](const std::vector<double>& v) { return v[0] * v[1]; }, Kind::Speed);
    std::optional<Quantity> fastest;
    if (trial.known()) {
        const double planned = job.value->si(), largest = press.largest.value ? press.largest.value->si() : planned;
        double v = std::min(trial.value->si(), largest);
        if (press.idle.value) v = std::max(v, press.idle.value->si());
        trial.value = Quantity(v, Kind::Speed, job.value->unit());
        // A shop's own limits may have it faster, up to the job's speed.
        fastest = Quantity(std::max(v, std::min(planned, largest)), Kind::Speed, trial.value->unit());
    }
    book.value("stop.trial_speed", "Speed of the proving run", "rule", trial, "policy", because)
        .symbols("k v, at least vi, at most vm")
        .most(fastest)
        .advice("Reached step by step: slack, swings and wrinkles show on the way.");
    // Where nobody said from which speed it was measured, job speed is taken for it here as in the distance: a press
    // that was timed from less then takes longer than this, and is looked at.
    Stated timed = book.formula("stop.trial_time", "Time to standstill, emergency stop on trial", "V1.time",
                                {{"v", book.settled("stop.trial_speed")}, {"tr", reaction()}, {"a", slowing}}, "s");
    if (timed.ready() != nullptr) {
        // So much quicker than it was measured, it was another speed or a late watch.
        const Quantity reckoned = std::get<Quantity>(timed.ready()->value);
        const Limit early = book.limit("stop_time_under");
        timed
            .window(Quantity(reckoned.si() * (1 - early.si()), Kind::Time, reckoned.unit()), most(reckoned), late.rule,
                    Text("%1; %2", {std::vector<Text>{late.source()}, std::vector<Text>{early.source()}}))
            .most(Quantity(inputs::sane::kStopTime.most, Kind::Time, "s"));
    }
    timed.advice("Longer than this: withdraw the press and have it looked at. Shorter: it was another speed, or the "
                 "watch was started late.");

    Stated time =
        book.value("stop.emergency_time",
                   measured.at ? Text("Time to standstill after an emergency stop from %1", {measured.at->magnitude()})
                               : Text("Time to standstill after an emergency stop"),
                   "stated", term(measured.value, key), "press profile");
    if (time.ready() == nullptr) return;
    time.window({}, most(*measured.value), late.rule, late.source());
    time.most(Quantity(inputs::sane::kStopTime.most, Kind::Time, "s"));
    if (measured.at)
        time.advice(
            "Longer than this: withdraw the press and have it looked at. Timed from another speed it is longer or "
            "shorter as the speed is: see the time from job speed.");
    else
        time.advice(
            "Longer than this: withdraw the press and have it looked at. Time it from the speed at which it was "
            "measured, and enter that speed beside it: until then it is taken for that from job speed.");
}

}  // namespace

Term stopReserve(const Book& book)
{
    Term entered = enteredReserve(book.press());
    if (!entered.known()) return entered;
    Term passes = evaluated("V1.distance", ordinaryStop(book), "V1.distance of job.speed and press.speeds.stop_time");
    return passes.known() && passes.value->si() > entered.value->si() ? passes : entered;
}

void stateStops(Book& book)
{
    const inputs::Press& press = book.press();
    stateAutomaticStop(book);
    // An emergency stop may be quicker than an ordinary one.
    const bool quicker = press.emergencyStopTime.value.has_value();
    const std::string emergencyKey = quicker ? "press.speeds.emergency_stop_time" : "press.speeds.stop_time";
    const inputs::Sourced& emergency = quicker ? press.emergencyStopTime : press.stopTime;
    const Term slowing = over(book, emergency, emergencyKey);
    const bool us = press.units == UnitSystem::Us;
    const Arguments stopping = ordinaryStop(book);
    // At crawl it is less than the last place of the large unit.
    const Term passes = evaluated("V1.distance", stopping, "");
    const bool little = passes.known() && passes.value->si() < 0.5;
    book.formula("stop.distance", "Web that passes while the press stops", "V1.distance", stopping,
                 little ? (us ? "in" : "mm") : (us ? "ft" : "m"))
        .advice("Web that still passes after a stop; not for placing guards or light curtains.");
    stateStopTime(book, emergency, emergencyKey, slowing);
    sayJobSpeedTaken(book, press.stopTime, "press.speeds.stop_time");
    sayJobSpeedTaken(book, press.emergencyStopTime, "press.speeds.emergency_stop_time");
    for (const inputs::Zone& zone : press.zones)
        if (endOf(press, zone) == ZoneEnd::Unwind) {
            stateUnwindStop(book, zone, slowing);
            break;
        }
    for (const inputs::Zone& zone : press.zones) {
        const inputs::Rewind* rewind = endOf(press, zone) == ZoneEnd::Rewind ? rewindOf(press, zone) : nullptr;
        if (rewind != nullptr) stateRewindStop(book, zone, *rewind, slowing);
    }
}

}  // namespace taut::targets
