// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/inputs/policy.h"

#include <algorithm>
#include <array>
#include <unordered_map>

#include "core/inputs/press.h"

namespace taut::inputs {

namespace {

// Every default names where it comes from; "policy" is ours. Sorted by name.
constexpr std::array<PolicyRow, 66> kRows{{
    {"air_drop_most", Kind::Pressure, 30000.0, "bar", 0, 300000.0, "fall of the air supply while nips close, at most",
     "policy"},
    {"air_shaft_least", Kind::Pressure, 550000.0, "bar", 100000.0, 1200000.0,
     "air in a shaft without a plate, at least", "policy, from memory"},
    {"air_shaft_most", Kind::Pressure, 690000.0, "bar", 100000.0, 1600000.0, "air in a shaft without a plate, at most",
     "policy, from memory"},
    {"air_supply_least", Kind::Pressure, 550000.0, "bar", 100000.0, 1200000.0, "air supply at the press, at least",
     "common practice, no source"},
    {"air_supply_most", Kind::Pressure, 700000.0, "bar", 100000.0, 1600000.0, "air supply at the press, at most",
     "common practice, no source"},
    {"anilox_share_least", Kind::Share, 0.25, "%", 0.02, 1, "share of the anilox volume that reaches the web, at least",
     "S79"},
    {"anilox_share_most", Kind::Share, 0.5, "%", 0.02, 1, "share of the anilox volume that reaches the web, at most",
     "S80"},
    {"caliper_tolerance", Kind::Share, 0.05, "%", 0.001, 0.3, "how far the wound caliper may lie from the data",
     "S12, S17"},
    {"centre_guided", Kind::Length, 0.0015, "mm", 0.0001, 0.02,
     "roll centre to the centreline where a guide follows, either way", "common practice, no source"},
    {"centre_stroke", Kind::Share, 0.1, "%", 0.01, 1, "share of a guide's stroke that an off-centre roll may take",
     "policy"},
    {"centre_unguided", Kind::Length, 0.0005, "mm", 0.0001, 0.02,
     "roll centre to the centreline where no guide follows, either way", "policy"},
    {"colour_to_colour", Kind::Length, 0.00013, "mm", 1e-05, 0.002, "colour to colour, either way",
     "policy, from memory"},
    {"competence_asked", Kind::Count, 0, "", 0, 1,
     "whether only who is competent at this press signs a set-up alone: 1 asks it, 0 does not", "policy", true, true},
    {"competence_away", Kind::Time, 15724800.0, "d", 604800.0, 157680000.0,
     "time without setting this press up after which a competence ends", "policy", false, true},
    {"competence_runs", Kind::Count, 3, "", 0, 50, "observed set-ups at this press that a competence wants, at least",
     "common practice, no source", true, true},
    {"core_wall_least", Kind::Length, 0.003, "mm", 0.0005, 0.05, "wall of a core that nobody has measured, at least",
     "policy"},
    {"core_wall_most", Kind::Length, 0.015, "mm", 0.0005, 0.05, "wall of a core that nobody has measured, at most",
     "policy"},
    {"dancer_rest_least", Kind::Share, 0.3333333333333333, "%", 0.05, 0.5,
     "dancer at rest, share of its travel at least", "S39"},
    {"dancer_rest_most", Kind::Share, 0.6666666666666666, "%", 0.5, 0.95, "dancer at rest, share of its travel at most",
     "S39"},
    {"dancer_swing", Kind::Share, 0.1, "%", 0.01, 0.5, "steady swing of a dancer, share of its travel", "policy"},
    {"diameter_match", Kind::Share, 0.02, "%", 0.001, 0.2,
     "diameter measured, or told to a drive, against the one computed with, either way", "policy"},
    {"diameter_reading", Kind::Length, 0.002, "mm", 0.0001, 0.02, "how well a roll's diameter is measured", "policy"},
    {"die_to_print", Kind::Length, 0.0004, "mm", 1e-05, 0.005, "die to print, either way",
     "common practice, no source"},
    {"edge_place", Kind::Length, 0.001, "mm", 0.0001, 0.02, "sensor over the web's edge, either way", "policy"},
    {"film_treatment", Kind::ForcePerWidth, 0.038, "mN/m", 0.02, 0.08, "treatment of film, at least",
     "policy, from memory"},
    {"friction_tolerance", Kind::Share, 0.25, "%", 0, 1, "how well a friction is known", "policy"},
    {"grammage_tolerance", Kind::Share, 0.04, "%", 0.001, 0.3, "how well a grammage is known", "policy, from memory"},
    {"guide_rest", Kind::Share, 0.25, "%", 0.01, 1, "guide at rest after a proving run, share of its stroke either way",
     "policy"},
    {"job_width_over", Kind::Length, 0.002, "mm", 0, 0.05, "web wider than ordered, at most", "policy"},
    {"job_width_under", Kind::Length, 0.001, "mm", 0, 0.05, "web narrower than ordered, at most", "policy"},
    {"label_stock_film_high", Kind::ForcePerWidth, 250, "N/mm", 50, 2000,
     "film label stock without a maker's range, at most", "common practice, no source"},
    {"label_stock_film_low", Kind::ForcePerWidth, 100, "N/mm", 10, 1000,
     "film label stock without a maker's range, at least", "common practice, no source"},
    {"label_stock_paper_high", Kind::ForcePerWidth, 350, "N/mm", 50, 2000,
     "paper label stock without a maker's range, at most", "common practice, no source"},
    {"label_stock_paper_low", Kind::ForcePerWidth, 150, "N/mm", 10, 1000,
     "paper label stock without a maker's range, at least", "common practice, no source"},
    {"lift_stuck", Kind::Share, 0.2, "%", 0.02, 1,
     "lift pressure over the figure at which it should have moved, at most", "policy"},
    {"load_cell_zero", Kind::Share, 0.01, "%", 0.001, 0.1,
     "load cell with the web slack, share of its range either way", "policy"},
    {"mark", Kind::Length, 0.0005, "mm", 0.0001, 0.02, "centre mark on the lead edge, either way", "policy"},
    {"mass_reading", Kind::Share, 0.01, "%", 0.0001, 0.1, "how well a roll is weighed", "policy"},
    {"modulus_tolerance", Kind::Share, 0.2, "%", 0, 1, "how well a modulus is known", "S27, S28"},
    {"outer_wraps", Kind::Count, 3, "", 0, 200, "outer wraps to take off", "common practice, no source", true},
    {"printed_repeat", Kind::Share, 0.0005, "%", 1e-05, 0.01, "printed repeat over ten against the gear's, either way",
     "policy"},
    {"proving_length", Kind::Length, 50, "m", 5, 2000, "web that the proving run at idle draws",
     "common practice, no source"},
    {"proving_speed", Kind::Share, 0.5, "%", 0.1, 1, "speed of the proving run, share of the job's", "policy"},
    {"register_centre", Kind::Share, 0.1, "%", 0.005, 0.5,
     "register adjuster from its mid mark at set-up, share of its reach either way", "policy"},
    {"room_time", Kind::Time, 86400.0, "h", 0, 2592000.0, "a roll in the press room before use",
     "common practice, no source"},
    {"sensor_middle", Kind::Share, 0.05, "%", 0.005, 0.3, "sensor's reading from the middle of its window, either way",
     "policy"},
    {"set_up_web", Kind::Length, 100, "m", 0, 20000, "web that a set-up is taken to use where the job says nothing",
     "policy"},
    {"splice_factor", Kind::Count, 4, "", 1.5, 20, "splice over running tension, at least",
     "policy, the web's own factor of S26"},
    {"splice_gap", Kind::Length, 0.0005, "mm", 0, 0.01, "gap between butted edges", "common practice, no source"},
    {"splice_overhang", Kind::Length, 0.0, "mm", 0, 0.005, "splice tape beyond the web's edge",
     "common practice, no source"},
    {"splice_square", Kind::Length, 0.001, "mm", 0.0001, 0.02, "cut out of square across the web", "policy"},
    {"splice_step", Kind::Length, 0.0005, "mm", 0, 0.01, "sideways step at the joint", "common practice, no source"},
    {"splice_transient", Kind::Count, 1.5, "", 1.5, 20, "splice over the worst tension in a stop, at least", "policy"},
    {"stop_time_over", Kind::Share, 0.2, "%", 0.01, 1, "emergency stop over the measured time", "policy"},
    {"stop_time_under", Kind::Share, 0.5, "%", 0.01, 0.95, "emergency stop under the measured time", "policy"},
    {"strain_most", Kind::Share, 0.001, "%", 0.0001, 0.02, "strain that print may be made under",
     "policy; 0.05 % typical, S92"},
    {"strain_most_pe", Kind::Share, 0.003, "%", 0.0001, 0.05, "strain that print on polyethylene may be made under",
     "policy"},
    {"strength_share", Kind::Share, 0.1, "%", 0.02, 0.25, "share of the breaking strength that caps a tension",
     "S26, S27"},
    {"table_spread", Kind::Share, 0.2, "%", 0, 0.6, "a table's single starting value, either way", "policy"},
    {"tag_length", Kind::Share, 0.02, "%", 0.001, 0.2, "how well a length on a label is known", "policy"},
    {"tension_ramp", Kind::Share, 0.25, "%", 0.01, 1,
     "swing of the displayed tension while speed changes, share of its mean", "policy"},
    {"tension_swing", Kind::Share, 0.1, "%", 0.01, 1,
     "swing of the displayed tension at steady speed, share of its mean", "policy"},
    {"torque_tolerance", Kind::Share, 0.25, "%", 0, 1,
     "how well a brake's torque per setting is known until it was fitted", "common practice, no source"},
    {"undercut", Kind::Length, 2e-05, "mm", 1e-06, 0.001, "plate and tape against the cylinder's undercut, either way",
     "policy"},
    {"web_wander", Kind::Length, 0.0005, "mm", 1e-05, 0.02, "web wander at steady speed, either way", "S73"},
    {"width_reading", Kind::Length, 0.0005, "mm", 1e-05, 0.01, "how far a slit width may lie from its label",
     "common practice, no source"},
}};

}  // namespace

std::span<const PolicyRow> policyRows() noexcept { return kRows; }

const PolicyRow* findPolicy(std::string_view name) noexcept
{
    static const auto byName = [] {
        std::unordered_map<std::string_view, const PolicyRow*> all;
        for (const PolicyRow& row : kRows) all.emplace(row.name, &row);
        return all;
    }();
    const auto at = byName.find(name);
    return at == byName.end() ? nullptr : at->second;
}

double policyFigure(const Press& press, std::string_view name) noexcept
{
    for (const auto& [row, value] : press.policy)
        if (row == name) return value.si();
    const PolicyRow* usual = findPolicy(name);
    return usual == nullptr ? 0 : usual->si;
}

}  // namespace taut::inputs
