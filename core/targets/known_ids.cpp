// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <array>

#include "core/targets/book.h"

namespace taut::targets {

namespace {

// Every id that some press, job, substrate and roll can have; the middle of three parts is an instance where it says
// {..}. A test holds this list against what computeTargets gives for the demo inputs.
constexpr std::array kPatterns{"air.drop",
                               "air.supply",
                               "align.centre",
                               "align.drive_edge",
                               "align.mark",
                               "align.operator_edge",
                               "core.adapter",
                               "guide.{guide}.drive_sensor",
                               "guide.{guide}.edge_strain",
                               "guide.{guide}.operator_sensor",
                               "guide.{guide}.reach",
                               "guide.{guide}.response_time",
                               "guide.{guide}.rest",
                               "guide.{guide}.sensor_after",
                               "guide.{guide}.sensor_mid",
                               "guide.{guide}.slack_angle",
                               "guide.{guide}.spacing",
                               "guide.{guide}.stroke_needed",
                               "guide.{guide}.stroke_used",
                               "guide.{guide}.wander",
                               "ink.{station}.film",
                               "ink.{station}.mass",
                               "ink.{station}.plate_stretch",
                               "job.covered",
                               "job.enough",
                               "job.length",
                               "job.repeat",
                               "job.rolls",
                               "job.splices",
                               "job.teeth",
                               "job.web",
                               "lift.load",
                               "lift.pressure",
                               "mandrel.air",
                               "mandrel.{rewind}.air",
                               "motion.crawl_class",
                               "motion.inch_class",
                               "register.colour",
                               "register.die",
                               "register.printed_repeat",
                               "register.repeat_change",
                               "register.{station}.across",
                               "register.{station}.along",
                               "register.{station}.centre",
                               "register.{station}.undercut_error",
                               "roll.caliper",
                               "roll.diameter",
                               "roll.feed",
                               "roll.inertia",
                               "roll.length",
                               "roll.length_by_diameter",
                               "roll.length_by_mass",
                               "roll.lengths_apart",
                               "roll.mass",
                               "roll.room_time",
                               "roll.run_time",
                               "roll.treatment",
                               "roll.usable",
                               "roll.web_mass",
                               "roll.width",
                               "roll.wraps",
                               "splice.gap",
                               "splice.margin",
                               "splice.overhang",
                               "splice.square",
                               "splice.step",
                               "splice.transient_margin",
                               "start.unwind.tension",
                               "start.{rewind}.tension",
                               "stop.diameter",
                               "stop.distance",
                               "stop.emergency_time",
                               "stop.emergency_time_at_speed",
                               "stop.unwind.hold_torque",
                               "stop.unwind.tension",
                               "stop.{rewind}.core_tension",
                               "stop.{rewind}.tension",
                               "strip.diameter",
                               "strip.length",
                               "tension.plies",
                               "tension.{zone}.arm_swing",
                               "tension.{zone}.ceiling",
                               "tension.{zone}.change_diameter",
                               "tension.{zone}.diameter",
                               "tension.{zone}.draw_step",
                               "tension.{zone}.finished",
                               "tension.{zone}.floor_diameter",
                               "tension.{zone}.left_alone",
                               "tension.{zone}.per_width",
                               "tension.{zone}.ramp_swing",
                               "tension.{zone}.rest",
                               "tension.{zone}.setting",
                               "tension.{zone}.slip_power",
                               "tension.{zone}.strain",
                               "tension.{zone}.swing",
                               "tension.{zone}.torque",
                               "tension.{zone}.total",
                               "tension.{zone}.zero",
                               "thread.crawl_time",
                               "thread.inches",
                               "thread.pull",
                               "thread.{path}.length",
                               "thread.{rewind}.core_hold",
                               "thread.{rewind}.winding",
                               "thread.{rewind}.wraps",
                               "traction.air_film",
                               "traction.first_to_slip",
                               "traction.least",
                               "traction.{rewind}.film",
                               "traction.{roller}.ratio"};

}  // namespace

// One pattern against one id: equal part by part, an instance part matching anything, itself included.
bool fitsPattern(std::string_view pattern, std::string_view id)
{
    for (;;) {
        const auto pEnd = pattern.find('.');
        const auto iEnd = id.find('.');
        const std::string_view p = pattern.substr(0, pEnd);
        const std::string_view i = id.substr(0, iEnd);
        if (i.empty() || (p.front() != '{' && p != i)) return false;
        if (pEnd == std::string_view::npos || iEnd == std::string_view::npos)
            return pEnd == std::string_view::npos && iEnd == std::string_view::npos;
        pattern.remove_prefix(pEnd + 1);
        id.remove_prefix(iEnd + 1);
    }
}

std::span<const char* const> knownPatterns() { return kPatterns; }

bool isKnownTarget(std::string_view id)
{
    return std::any_of(kPatterns.begin(), kPatterns.end(), [&](const char* p) { return fitsPattern(p, id); });
}

}  // namespace taut::targets
