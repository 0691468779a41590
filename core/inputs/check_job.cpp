// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <numbers>

#include "core/inputs/cross_check.h"
#include "core/inputs/path_of.h"
#include "core/inputs/spoken.h"
#include "core/physics/gearing.h"

namespace taut::inputs {

namespace {

void checkStations(const Press& press, const Job& job, Findings& out)
{
    if (press.stations.empty()) return;
    for (const Deck& deck : job.decks) {
        const bool there = std::any_of(press.stations.begin(), press.stations.end(),
                                       [&](const Station& s) { return s.number == deck.station; });
        if (!there)
            out.push_back(
                refuse("input.no_such_station", "job.deck." + std::to_string(deck.station),
                       {"The job prints at station %1, which this press does not have.", {std::int64_t{deck.station}}},
                       "Give the ink a station of this press, or take another press."));
    }
}

void checkRewinds(const Press& press, const Job& job, Findings& out)
{
    for (const Rewind& rewind : press.rewinds) {
        if (rewind.waste) continue;
        const Mandrel& m = rewind.mandrel;
        if (job.rewindCore && m.gripsLeast && m.gripsMost &&
            (job.rewindCore->si() < m.gripsLeast->si() || job.rewindCore->si() > m.gripsMost->si()))
            out.push_back(
                refuse("input.rewind_core_not_held", "job.rewind_core",
                       {"The job is wound on cores of %1 inside; %2 holds %3 to %4.",
                        {arg(job.rewindCore), spokenName(press, rewind), arg(m.gripsLeast), arg(m.gripsMost)}},
                       "Wind on a core that the shaft holds, and rewind the finished rolls elsewhere."));
        if (job.rewindDiameter && job.rewindCore && rewind.coreWall) {
            const double outside = job.rewindCore->si() + 2 * rewind.coreWall->si();
            if (job.rewindDiameter->si() <= outside)
                out.push_back(refuse(
                    "input.finished_roll_below_core", "job.rewind_diameter",
                    {"Finished rolls are said to be %1 across, no more than the core on %3, %2 outside.",
                     {arg(job.rewindDiameter), Magnitude{outside, Kind::Length, job.rewindCore->quantity().unit()},
                      spokenName(press, rewind)}},
                    "Enter the largest diameter that the customer takes, core included."));
        }
        if (job.rewindDiameter && rewind.largestDiameter && job.rewindDiameter->si() > rewind.largestDiameter->si())
            out.push_back(warn("input.finished_roll_too_large", "job.rewind_diameter",
                               {"Finished rolls may be %1 across; %2 winds %3 at most.",
                                {arg(job.rewindDiameter), spokenName(press, rewind), arg(rewind.largestDiameter)}},
                               "Take the rolls off earlier."));
    }
}

/// A label or its gap smaller than this is cut by no die: a slip in the count of lanes or rows (policy).
constexpr double kSmallestPitch = 0.004;

std::optional<Length> repeatOf(const Gear& gear)
{
    if (gear.circularPitch) return physics::repeatByPitch(gear.teeth, gear.circularPitch->measure());
    if (gear.module) return physics::repeatByModule(gear.teeth, gear.module->measure());
    constexpr double kInch = 0.0254;
    if (!gear.diametralPitch) return std::nullopt;
    return physics::repeatByDiametralPitch(gear.teeth, CountPerLength::si(*gear.diametralPitch / kInch));
}

/// Labels so small as a job's lanes and rows would make them.
void checkLabels(const Job& job, Findings& out)
{
    const auto say = [&](const char* key, const Text& text) {
        out.push_back(warn("input.labels_too_small", key, text,
                           "Count the lanes across the web, and the labels in one turn of the plate cylinder."));
    };
    if (job.across && job.webWidth && job.webWidth->si() / *job.across < kSmallestPitch)
        say("job.across",
            {"%1 across on %2 would be labels of %3 with their gap.",
             {std::int64_t{*job.across}, arg(job.webWidth),
              Magnitude{job.webWidth->si() / *job.across, Kind::Length, job.webWidth->quantity().unit()}}});
    const std::optional<Length> repeat = job.gear ? repeatOf(*job.gear) : std::nullopt;
    if (job.around && repeat && repeat->si() / *job.around < kSmallestPitch)
        say("job.around", {"%1 around in a repeat of %2 would be labels of %3 with their gap.",
                           {std::int64_t{*job.around}, Magnitude{repeat->si(), Kind::Length, "mm"},
                            Magnitude{repeat->si() / *job.around, Kind::Length, "mm"}}});
}

/// A rewind that cannot wind the finished roll as the job wants it.
void checkFinishedWinding(const Press& press, const Job& job, Findings& out)
{
    for (const Rewind& rewind : press.rewinds) {
        const std::optional<Feed> wanted = windFor(press, rewind, job.winding);
        if (!wanted || rewind.winds.empty() ||
            std::find(rewind.winds.begin(), rewind.winds.end(), *wanted) != rewind.winds.end())
            continue;
        out.push_back(cannotWindFinished(spokenName(press, rewind), *job.winding));
    }
}

/// More than this round a roller is rare; less than what cannot be threaded (policy).
constexpr double kUnusualWrap = 240;

void checkWraps(const physics::WebPath& path, Findings& out)
{
    for (const physics::PathArc& arc : path.arcs) {
        const double degrees = arc.wrap * 180 / std::numbers::pi;
        if (degrees > kUnusualWrap)
            out.push_back(warn(
                "input.wrap_unusual", "press.web.roller." + arc.roller + ".turn",
                {"As drawn, the web goes %2 round roller %1.", {arc.roller, Magnitude{arc.wrap, Kind::Angle, "deg"}}},
                "Look which way this roller turns when the web runs forward, and correct its turn."));
    }
}

}  // namespace

void checkJob(const Inputs& inputs, Findings& out)
{
    if (!inputs.press || !inputs.job) return;
    const Press& press = *inputs.press;
    const Job& job = *inputs.job;
    if (job.webWidth && press.webMost && job.webWidth->si() > press.webMost->si())
        out.push_back(
            refuse("input.job_wider_than_press", "job.web_width",
                   {"The job is %1 wide; this press takes %2 at most.", {arg(job.webWidth), arg(press.webMost)}},
                   "Run the job on another press."));
    if (job.speed && press.largest.value && job.speed->si() > press.largest.value->si())
        out.push_back(warn("input.speed_above_press", "job.speed",
                           {"The job is planned at %1; this press runs %2 at most.",
                            {arg(job.speed), press.largest.value->magnitude()}},
                           "Plan the job with the press's speed."));
    checkStations(press, job, out);
    checkLabels(job, out);
    checkRewinds(press, job, out);
    checkFinishedWinding(press, job, out);
}

void checkWeb(const Inputs& inputs, Findings& out)
{
    if (!inputs.press) return;
    const Press& press = *inputs.press;
    std::optional<Length> diameter;
    std::optional<Feed> feed = press.printFeed;
    if (inputs.roll) diameter = diameterAsItRuns(*inputs.roll, {});
    // With no roll named, the largest one that this unwind takes must clear every roller.
    if (!inputs.roll && press.unwind && press.unwind->largestDiameter)
        diameter = press.unwind->largestDiameter->measure();
    if (inputs.roll) feed = feedFor(press, *inputs.roll).value_or(feed.value_or(Feed::Over));
    // A roll that the unwind cannot take is refused for that, not for the web's way round it.
    if (diameter && press.unwind && press.unwind->largestDiameter &&
        *diameter > press.unwind->largestDiameter->measure())
        return;
    for (const std::string& name : pathNames(press)) {
        const std::optional<Winding> finished = inputs.job ? inputs.job->winding : std::nullopt;
        const Result<NamedPath> path = pathOf(press, name, diameter, feed.value_or(Feed::Over), finished);
        if (path) checkWraps(path->path, out);
        if (path || path.error().code == "press.web.needs") continue;
        Finding why = path.error();
        why.code = "input.no_path";
        why.severity = Severity::Stop;
        why.subject = "press.web.roller." + why.subject;
        if (why.remedy.empty()) why.remedy = "Check this roller's place, diameter and turn in the press profile.";
        out.push_back(std::move(why));
    }
}

Finding cannotWindFinished(const std::string& rewind, Winding wanted)
{
    return warn("input.finished_winding", "job.winding",
                {wanted == Winding::FaceIn ? "%1 winds the finished roll face out; the job asks for face in."
                                           : "%1 winds the finished roll face in; the job asks for face out.",
                 {rewind}},
                "Rewind the finished rolls the other way afterwards, or ask the customer.");
}

Findings crossCheck(const Inputs& inputs, std::optional<Length> presentDiameter)
{
    Findings out;
    checkTag(inputs, out);
    checkRoll(inputs, out);
    checkCore(inputs, out);
    checkFrame(inputs, out);
    checkJob(inputs, out);
    if (inputs.roll) checkStripped(inputs, presentDiameter, out);
    const auto impossible = [&out] { return std::any_of(out.begin(), out.end(), blamesDiameter); };
    if (!presentDiameter || !inputs.roll) {
        checkDiameter(inputs, out);
        if (!impossible()) checkWeb(inputs, out);
        return out;
    }
    checkMeasured(inputs, *presentDiameter, out);
    if (!isRollDiameter(*presentDiameter) || impossible()) return out;
    Roll now = *inputs.roll;
    const SharedString unit = now.outerDiameter ? now.outerDiameter->quantity().unit() : SharedString();
    now.outerDiameter = Entry<Kind::Length>(Quantity(*presentDiameter, Kind::Length, unit));
    // What label and tag say of the length is of the roll before anything was taken off it.
    now.length.reset();
    now.tag.clear();
    Inputs measured = inputs;
    measured.roll = std::make_shared<const Roll>(std::move(now));
    checkDiameter(measured, out);
    checkWeb(measured, out);
    return out;
}

}  // namespace taut::inputs
