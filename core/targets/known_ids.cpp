// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/targets/known_ids.h"

#include <algorithm>
#include <array>

#include "core/targets/target.h"

namespace taut::targets {

namespace {

// Every id that some press, job, substrate and roll can have; the middle of three parts is an instance where it says
// {..}. A test holds this list against what computeTargets gives for the demo inputs. Beside an id stands what a
// press's own limits may do to its window where that is not to take its place, and whether it is an aim.
constexpr auto kIds = std::to_array<KnownId>({
    {"air.drop", OwnLimits::OnlyNarrow, Figure::Fault},
    {"air.supply", OwnLimits::Replace, Figure::Aim},
    {"align.centre", OwnLimits::Replace, Figure::Aim},
    {"align.drive_edge", OwnLimits::Replace, Figure::Aim},
    {"align.mark", OwnLimits::Replace, Figure::Aim},
    {"align.operator_edge", OwnLimits::Replace, Figure::Aim},
    {"core.adapter"},
    {"guide.{guide}.drive_sensor", OwnLimits::Replace, Figure::Aim},
    {"guide.{guide}.edge_strain", OwnLimits::OnlyNarrow},
    {"guide.{guide}.operator_sensor", OwnLimits::Replace, Figure::Aim},
    {"guide.{guide}.reach"},
    {"guide.{guide}.response_time"},
    {"guide.{guide}.rest", OwnLimits::Replace, Figure::Aim},
    {"guide.{guide}.sensor_after"},
    {"guide.{guide}.sensor_mid", OwnLimits::Replace, Figure::Aim},
    {"guide.{guide}.slack_angle"},
    {"guide.{guide}.spacing", OwnLimits::Replace, Figure::Aim},
    {"guide.{guide}.stroke_needed"},
    {"guide.{guide}.stroke_used"},
    {"guide.{guide}.wander", OwnLimits::Replace, Figure::Aim},
    {"ink.{station}.film"},
    {"ink.{station}.mass"},
    {"ink.{station}.plate_stretch"},
    {"job.covered"},
    {"job.enough"},
    {"job.length"},
    {"job.repeat"},
    {"job.rolls"},
    {"job.splices"},
    {"job.teeth"},
    {"job.web"},
    {"lift.load", OwnLimits::OnlyNarrow},
    {"lift.pressure", OwnLimits::NotJudged},
    {"mandrel.air", OwnLimits::OnlyNarrow, Figure::Aim},
    {"mandrel.{rewind}.air", OwnLimits::OnlyNarrow, Figure::Aim},
    {"motion.crawl_class"},
    {"motion.inch_class"},
    {"register.colour", OwnLimits::Replace, Figure::Aim},
    {"register.die", OwnLimits::Replace, Figure::Aim},
    {"register.printed_repeat"},
    {"register.repeat_change"},
    {"register.{station}.across", OwnLimits::Replace, Figure::Aim},
    {"register.{station}.along", OwnLimits::Replace, Figure::Aim},
    {"register.{station}.centre", OwnLimits::Replace, Figure::Aim},
    {"register.{station}.undercut_error"},
    {"roll.caliper"},
    {"roll.diameter", OwnLimits::OnlyNarrow},
    {"roll.feed"},
    {"roll.inertia"},
    {"roll.length"},
    {"roll.length_by_diameter"},
    {"roll.length_by_mass"},
    {"roll.lengths_apart"},
    {"roll.mass", OwnLimits::OnlyNarrow},
    {"roll.room_time", OwnLimits::Replace, Figure::Aim},
    {"roll.run_time"},
    {"roll.treatment", OwnLimits::Replace, Figure::Aim},
    {"roll.usable"},
    {"roll.web_mass"},
    {"roll.width"},
    {"roll.wraps"},
    {"setup.web", OwnLimits::Replace, Figure::Aim},
    {"splice.gap", OwnLimits::OnlyNarrow, Figure::Aim},
    {"splice.margin", OwnLimits::OnlyNarrow},
    {"splice.overhang", OwnLimits::OnlyNarrow, Figure::Fault},
    {"splice.square", OwnLimits::OnlyNarrow, Figure::Fault},
    {"splice.step", OwnLimits::OnlyNarrow, Figure::Fault},
    {"splice.transient_margin", OwnLimits::OnlyNarrow},
    {"start.unwind.tension", OwnLimits::OnlyNarrow},
    {"start.{rewind}.tension", OwnLimits::OnlyNarrow},
    {"stop.diameter", OwnLimits::OnlyNarrow, Figure::Aim},
    {"stop.distance", OwnLimits::OnlyNarrow},
    {"stop.emergency_time", OwnLimits::OnlyNarrow},
    {"stop.emergency_time_at_speed", OwnLimits::OnlyNarrow},
    {"stop.trial_speed", OwnLimits::Replace, Figure::Aim},
    {"stop.trial_time", OwnLimits::OnlyNarrow},
    {"stop.unwind.hold_torque", OwnLimits::OnlyNarrow},
    {"stop.unwind.tension", OwnLimits::OnlyNarrow},
    {"stop.{rewind}.core_tension", OwnLimits::OnlyNarrow},
    {"stop.{rewind}.tension", OwnLimits::OnlyNarrow},
    {"strip.diameter", OwnLimits::OnlyNarrow},
    {"strip.length"},
    {"tension.plies"},
    {"tension.{zone}.arm_swing", OwnLimits::Replace, Figure::Aim},
    {"tension.{zone}.ceiling", OwnLimits::OnlyNarrow},
    {"tension.{zone}.change_diameter"},
    {"tension.{zone}.diameter", OwnLimits::OnlyNarrow},
    {"tension.{zone}.draw_step"},
    {"tension.{zone}.finished"},
    {"tension.{zone}.floor_diameter"},
    {"tension.{zone}.left_alone", OwnLimits::OnlyNarrow},
    {"tension.{zone}.per_width"},
    {"tension.{zone}.ramp_swing", OwnLimits::Replace, Figure::Aim},
    {"tension.{zone}.rest", OwnLimits::Replace, Figure::Aim},
    {"tension.{zone}.setting", OwnLimits::ByTension},
    {"tension.{zone}.slip_power", OwnLimits::OnlyNarrow},
    {"tension.{zone}.strain", OwnLimits::OnlyNarrow},
    {"tension.{zone}.swing", OwnLimits::Replace, Figure::Aim},
    {"tension.{zone}.torque", OwnLimits::ByTension},
    {"tension.{zone}.total", OwnLimits::ByTension},
    {"tension.{zone}.zero", OwnLimits::Replace, Figure::Aim},
    {"thread.crawl_time"},
    {"thread.inches"},
    {"thread.proving_time", OwnLimits::Replace, Figure::Aim},
    {"thread.pull"},
    {"thread.{path}.length"},
    {"thread.{rewind}.core_hold", OwnLimits::OnlyNarrow},
    {"thread.{rewind}.winding"},
    {"thread.{rewind}.wraps", OwnLimits::OnlyNarrow, Figure::Aim},
    {"traction.air_film"},
    {"traction.first_to_slip"},
    {"traction.least", OwnLimits::OnlyNarrow},
    {"traction.{rewind}.film"},
    {"traction.{roller}.ratio", OwnLimits::OnlyNarrow},
});

}  // namespace

// One pattern against one id: equal part by part, an instance part matching anything, itself included.
bool fitsPattern(std::string_view pattern, std::string_view id)
{
    // Most patterns are told from an id by their first letter: no id begins with an instance.
    if (pattern.empty() || id.empty() || pattern.front() != id.front()) return false;
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

std::span<const KnownId> knownIds() { return kIds; }

bool isKnownTarget(std::string_view id)
{
    return std::any_of(kIds.begin(), kIds.end(), [&](const KnownId& one) { return fitsPattern(one.pattern, id); });
}

bool isAim(std::string_view id)
{
    return std::any_of(kIds.begin(), kIds.end(),
                       [&](const KnownId& one) { return one.figure != Figure::Fact && fitsPattern(one.pattern, id); });
}

bool hasNoSign(std::string_view id)
{
    return std::any_of(kIds.begin(), kIds.end(),
                       [&](const KnownId& one) { return one.figure == Figure::Fault && fitsPattern(one.pattern, id); });
}

OwnLimits ownLimitsOf(std::string_view id)
{
    // An id may fit two patterns, "stop.unwind.tension" that of the rewinds too: the stricter counts.
    OwnLimits strictest = OwnLimits::Replace;
    for (const KnownId& one : kIds)
        if (fitsPattern(one.pattern, id)) strictest = std::max(strictest, one.limits);
    return strictest;
}

}  // namespace taut::targets
