// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <array>
#include <string>
#include <string_view>
#include <utility>

#include "core/inputs/parts.h"

namespace taut::inputs {

namespace {

/// What a target is a quantity of, by the last part of its id, or by the first and the last where that alone does not
/// tell. What is set at a panel stands here for no kind: that goes by the press. A test holds this against all targets.
constexpr auto kKinds = std::to_array<std::pair<std::string_view, Kind>>({
    {"across", Kind::Length},
    {"air", Kind::Pressure},
    {"air_film", Kind::Length},
    {"along", Kind::Length},
    {"arm_swing", Kind::Share},
    {"caliper", Kind::Length},
    {"ceiling", Kind::ForcePerWidth},
    {"centre", Kind::Length},
    {"change_diameter", Kind::Length},
    {"colour", Kind::Length},
    {"core_hold", Kind::Count},
    {"core_tension", Kind::Force},
    {"crawl_time", Kind::Time},
    {"diameter", Kind::Length},
    {"die", Kind::Length},
    {"distance", Kind::Length},
    {"draw_step", Kind::ForcePerWidth},
    {"drive_edge", Kind::Length},
    {"drive_sensor", Kind::Length},
    {"drop", Kind::Pressure},
    {"edge_strain", Kind::Share},
    {"emergency_time", Kind::Time},
    {"emergency_time_at_speed", Kind::Time},
    {"film", Kind::Length},
    {"finished", Kind::Force},
    {"floor_diameter", Kind::Length},
    {"gap", Kind::Length},
    {"guide.rest", Kind::Length},
    {"hold_torque", Kind::Torque},
    {"inches", Kind::Count},
    {"inertia", Kind::Inertia},
    {"least", Kind::Count},
    {"left_alone", Kind::Force},
    {"length", Kind::Length},
    {"length_by_diameter", Kind::Length},
    {"length_by_mass", Kind::Length},
    {"lengths_apart", Kind::Share},
    {"load", Kind::Mass},
    {"margin", Kind::Count},
    {"mark", Kind::Length},
    {"mass", Kind::Mass},
    {"operator_edge", Kind::Length},
    {"operator_sensor", Kind::Length},
    {"overhang", Kind::Length},
    {"per_width", Kind::ForcePerWidth},
    {"plate_stretch", Kind::Share},
    {"plies", Kind::ForcePerWidth},
    {"pressure", Kind::Pressure},
    {"printed_repeat", Kind::Length},
    {"proving_time", Kind::Time},
    {"pull", Kind::Length},
    {"ramp_swing", Kind::Share},
    {"ratio", Kind::Count},
    {"reach", Kind::Length},
    {"repeat", Kind::Length},
    {"repeat_change", Kind::Length},
    {"response_time", Kind::Time},
    {"rolls", Kind::Count},
    {"room_time", Kind::Time},
    {"run_time", Kind::Time},
    {"sensor_after", Kind::Length},
    {"sensor_mid", Kind::Share},
    {"slack_angle", Kind::Angle},
    {"slip_power", Kind::Power},
    {"spacing", Kind::Length},
    {"splices", Kind::Count},
    {"square", Kind::Length},
    {"step", Kind::Length},
    {"strain", Kind::Share},
    {"stroke_needed", Kind::Length},
    {"stroke_used", Kind::Share},
    {"supply", Kind::Pressure},
    {"swing", Kind::Share},
    {"teeth", Kind::Count},
    {"tension", Kind::Force},
    {"tension.rest", Kind::Share},
    {"torque", Kind::Torque},
    {"total", Kind::Force},
    {"transient_margin", Kind::Count},
    {"treatment", Kind::ForcePerWidth},
    {"trial_speed", Kind::Speed},
    {"trial_time", Kind::Time},
    {"undercut_error", Kind::Length},
    {"usable", Kind::Length},
    {"wander", Kind::Length},
    {"web", Kind::Length},
    {"web_mass", Kind::Mass},
    {"width", Kind::Length},
    {"wraps", Kind::Count},
});

std::optional<Kind> kindOf(const std::string& id)
{
    const std::string last = id.substr(id.rfind('.') + 1), ends = id.substr(0, id.find('.') + 1) + last;
    for (const auto& [name, kind] : kKinds)
        if (name == last || name == ends) return kind;
    return std::nullopt;
}

}  // namespace

void readLimits(KeyReader keys, Press& press)
{
    constexpr std::array kUnited{
        Kind::Pressure,        Kind::Length,         Kind::Force,          Kind::ForcePerWidth,
        Kind::Share,           Kind::Speed,          Kind::Time,           Kind::Mass,
        Kind::Angle,           Kind::Torque,         Kind::Power,          Kind::Current,
        Kind::Grammage,        Kind::Density,        Kind::VolumePerArea,  Kind::Area,
        Kind::AreaPerMass,     Kind::Frequency,      Kind::Inertia,        Kind::Acceleration,
        Kind::Viscosity,       Kind::CountPerLength, Kind::TorquePerShare, Kind::TorquePerPressure,
        Kind::TorquePerCurrent};
    static_assert(kUnited.size() == kKindCount - 1);  // all but counts
    for (const std::string& id : keys.keys()) {
        std::optional<KeyReader> range = keys.table(id);
        if (!range) continue;
        const std::optional<Kind> kind = kindOf(id);
        const auto end = [&](std::string_view key) {
            if (kind == Kind::Count) return range->factor(key, sane::kAny);
            return kind ? range->quantity(key, std::array{*kind}, sane::kAny)
                        : range->quantity(key, kUnited, sane::kAny);
        };
        Range limits{end("low"), end("high")};
        checkOrder(*range, "low", limits.low, limits.high);
        range->done();
        if (limits.low || limits.high) press.limits.emplace_back(id, std::move(limits));
    }
    keys.done();
}

}  // namespace taut::inputs
