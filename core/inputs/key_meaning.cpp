// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/inputs/key_meaning.h"

#include <algorithm>
#include <string>

#include "core/inputs/policy.h"

namespace taut::inputs {

namespace {

struct Meaning {
    std::string_view key;  ///< "group key", or the end of a key where it means the same in all groups
    std::string_view says;
};

constexpr Meaning kOf[] = {
    {"press id", "The name that runs and targets of this press bear. Keep it in every edition."},
    {"press site", "Where it stands: firm, hall."},
    {"press units", "How the people of this press say quantities."},
    {"press web_width.least", "The narrowest web that it runs."},
    {"press web_width.most", "The widest web that it runs."},
    {"press measure_from", "The frame from whose inner face everything across is measured."},
    {"press centreline", "From that face to the middle of the web."},
    {"press between_frames", "From the inner face of one frame to that of the other."},
    {"press print_side.feed", "With this feed and winding a roll shows its face to the plates: how it is hung."},
    {"press print_side.winding", "With this feed and winding a roll shows its face to the plates: how it is wound."},
    {"press air", "Whether it needs compressed air."},
    {"press wakes_stopped", "Whether its emergency stop is latched when power comes on."},
    {"press drawn_by", "What pulls the web while it is threaded."},
    {"press register_mark", "How this press shows the middle of a register adjuster."},
    {"unwind feeds", "How a roll may be hung: over, the web leaves its top; under, its bottom."},
    {"unwind core_wall", "The wall of a core, where the roll does not say."},
    {"unwind largest_mass", "The heaviest roll that it carries."},
    {"unwind stop_reserve", "The web that must be left when the automatic stop acts."},
    {"unwind lift.kind", "What lifts the roll."},
    {"unwind lift.pistons", "How many pistons lift together."},
    {"unwind lift.bore", "The inner diameter of a lifting cylinder."},
    {"unwind lift.ratio", "How far the roll moves for each length that the piston moves."},
    {"unwind lift.efficiency", "The share of the piston's force that arrives at the roll."},
    {"unwind lift.carriage", "What is moved with the roll."},
    {"unwind lift.rated", "The most that its plate allows."},
    {"unwind.adapters core", "The inner diameter of the cores that this adapter fits."},
    {"unwind.adapters mass", "What it weighs."},
    {"rewind takes", "Whether finished rolls or waste are wound here."},
    {"rewind winds", "How it can wind, first what it does as a rule: over or under its core."},
    {"rewind core_wall", "The wall of its cores."},
    {"rewind core_wraps", "Turns on the core before the web pulls."},
    {"rewind core_friction", "Friction of the web on the core and on itself."},
    {"zone from", "The roller at which this stretch of even tension begins."},
    {"zone to", "The roller at which it ends."},
    {"zone control", "What keeps the tension: a setting alone, a dancer, a load cell, or a draw between two speeds."},
    {"zone actuator", "What makes the torque."},
    {"zone torque_per_setting",
     "The torque that each unit of the setting makes. \"Find what a setting does\" finds it."},
    {"zone zero_setting", "The setting from which on there is torque."},
    {"zone torque_uncertainty", "How well the torque is known, plus or minus, as a share."},
    {"zone torque_source", "Whence the torque is known: its maker's sheet, or the runs that measured it."},
    {"zone slip_power_most", "The heat that brake or clutch bears without end, from its maker."},
    {"zone overspeed", "Of a slip clutch: how much faster its input is than the empty core, as a share."},
    {"zone taper.shape", "How tension falls while the finished roll grows."},
    {"zone taper.fraction", "By what share it falls."},
    {"zone needs_diameter", "Whether the roll's diameter is typed into the drive."},
    {"zone air_loss", "What it does when the air fails."},
    {"zone stop_action", "What it does in an emergency stop."},
    {"zone carries", "Which layers bear this tension: all, or the liner alone behind the die."},
    {"zone dancer.load", "What loads the dancer."},
    {"zone dancer.cylinders", "How many cylinders load it."},
    {"zone dancer.bore", "The inner diameter of its cylinder."},
    {"zone dancer.arm.cylinder", "From its pivot to the cylinder."},
    {"zone dancer.arm.roller", "From its pivot to the roller."},
    {"zone dancer.wrap", "The angle over which the web lies on it, where the rollers do not tell."},
    {"zone load_cell.range", "The force at which it reads full."},
    {"zone load_cell.set_in", "In what the panel takes the tension: a unit of force, or %."},
    {"splice_table after", "The roller behind which the table lies."},
    {"splice_table length", "How much web lies on it."},
    {"splice_table clamps", "How many clamps hold the web there."},
    {"splice_table angle", "The angle of its cutting guide, from the straight cross cut."},
    {"web.roller kind", "What it is: rows stand in web order, the main path first."},
    {"web.roller path", "The name of a further path, a lane or the waste; nothing for the main one."},
    {"web.roller leaves", "The roller at which a further path leaves."},
    {"web.roller station", "The number of its print station."},
    {"web.roller at[0]", "Its middle along the press, to the right, seen from the operator's side."},
    {"web.roller at[1]", "Its middle, upwards."},
    {"web.roller diameter", "Across its face. Of unwind and rewind the roll's own counts."},
    {"web.roller turn", "How it turns in forward running, seen from the operator's side: cw with the clock."},
    {"web.roller friction", "Of web on roller, where it is not the substrate's."},
    {"web.roller roughness", "Of its surface: more of it lets air out, so that it grips at speed."},
    {"web.roller extra", "Web that leaves the drawn plane behind it, over turn bars."},
    {"web.roller inertia", "What an idler has to be turned up with."},
    {"lengths whole", "Web from unwind to rewind, measured, where no rollers are given."},
    {"lengths table_to_rewind", "Web from the splice table to the rewind."},
    {"lengths guide_span", "Web between the guide's two rollers."},
    {"lengths guide_entry", "Free web before the guide."},
    {"lengths guide_exit", "Free web behind it."},
    {"guide kind", "How it moves the web."},
    {"guide guides", "What it keeps in place: the middle or one edge."},
    {"guide rollers", "The rollers that it moves, first and last."},
    {"guide stroke", "How far it moves in all."},
    {"guide angle_most", "The most that it turns."},
    {"guide sensor", "What its sensor sees by."},
    {"guide sensor_window", "The width that the sensor sees."},
    {"guide sensor_after", "How far behind the guide the sensor stands."},
    {"guide correction_speed", "How fast it moves."},
    {"printing.station number", "Its number on the press."},
    {"printing.station dryer", "What dries or cures behind it."},
    {"printing.station register_along", "How far register can be moved along the web, each way."},
    {"printing.station register_across", "How far register can be moved across the web, each way."},
    {"printing.station undercut", "How far the plate cylinder lies under its pitch line; plate and tape fill it."},
    {"speeds inch.value", "How far the web moves at one touch of the inch control."},
    {"speeds crawl.value", "The speed of creeping."},
    {"speeds idle.value", "The slowest steady speed."},
    {"speeds largest.value", "The fastest that the press may run."},
    {"speeds stop_time.value", "From running to standstill by the ordinary stop."},
    {"speeds emergency_stop_time.value", "From running to standstill by the emergency stop."},
    {"speeds ramp_up.value", "From standstill to running."},
    {"safety trip_bars", "Whether trip bars stop the press."},
    {"check every", "How often it is due: \"30 d\"."},
    {"check step",
     "The step of a procedure that shows that it was done: its stage, place and name, with dots between."},
    {"place hold_stop", "The maintained stop within reach there."},
    {"place sees", "What can be seen from there."},
    {"job id", "The name that runs of this job bear."},
    {"job title", "What people call it."},
    {"job customer_reference", "How the customer calls it."},
    {"job substrate", "The id of its substrate."},
    {"job web_width", "As ordered."},
    {"job gear.teeth", "Teeth of the print cylinder's gear."},
    {"job gear.circular_pitch", "Tooth to tooth along the pitch circle. One of the three pitches is enough."},
    {"job gear.module", "Pitch diameter for each tooth."},
    {"job gear.diametral_pitch", "Teeth for each inch of pitch diameter."},
    {"job across", "Pieces beside each other."},
    {"job around", "Pieces on one turn of the cylinder."},
    {"job quantity", "Good pieces ordered."},
    {"job waste", "The share that is lost while it runs."},
    {"job speed", "The speed at which it is to run."},
    {"job winding", "Where the face of the finished roll is to be."},
    {"job rewind_core", "Inner diameter of the finished rolls' cores."},
    {"job rewind_diameter", "How large the finished rolls may be."},
    {"job make_ready", "Web that setting up takes."},
    {"job splice_waste", "Web lost at each splice."},
    {"job repeat_wanted", "The repeat wished for, where teeth are still to be chosen."},
    {"deck station", "The station where this colour stands."},
    {"deck ink", "What is printed here."},
    {"deck coverage", "The share of the web that it covers."},
    {"deck ink_density", "Of the ink as it is used."},
    {"deck anilox.screen", "Cells along a length."},
    {"deck anilox.volume", "Of its cells, for each area."},
    {"deck plate.thickness", "Of the whole plate."},
    {"deck plate.base", "Of its base alone."},
    {"deck tape", "Thickness of the tape under the plate."},
    {"substrate id", "The name by which jobs and rolls mean it."},
    {"substrate caliper_tolerance", "How far the caliper may lie from it, as a share."},
    {"substrate roughness", "Of its surface, where it meets rollers."},
    {"substrate clear", "Whether light goes through it: optical sensors may not see it."},
    {"substrate porous", "Whether air goes through it: none is drawn in between web and roller."},
    {"splice_tape.strength", "What the tape holds for each width before it tears."},
    {"splice_tape.shear", "What its glue holds for each width before it slides."},
    {"splice_tape.both_faces", "Whether both faces are taped."},
    {"splice_tape.joint", "Edge to edge, or one over the other."},
};

/// Where a key means the same wherever it stands; the longest that fits counts.
constexpr Meaning kAnywhere[] = {
    {"id", "The name by which others in this file mean it."},
    {"name", "What people call it."},
    {"roller", "The roller where it is."},
    {"rollers", "The rollers that belong to it."},
    {"place", "The place where one stands for it."},
    {"by", "The roller next to it."},
    {"source", "Who says so, or when it was measured."},
    {"at", "The speed at which that was measured."},
    {"grips.least", "The smallest core, by its inside, that it holds."},
    {"grips.most", "The largest core, by its inside, that it holds."},
    {"mandrel.kind", "What holds the core."},
    {"mandrel.support", "What holds it on the press."},
    {"mandrel.pressure.least", "The least air in its shaft, from its plate."},
    {"mandrel.pressure.most", "The most air in its shaft, from its plate."},
    {"largest_diameter", "The largest roll that finds room there."},
    {"shaft_inertia", "Of what turns with the roll: shaft, chucks, disc."},
    {"least", "The least that it can be set to."},
    {"most", "The most that it can be set to."},
    {"uncertainty", "How far its reading may be off, either way."},
    {"low", "The lower end of the window."},
    {"high", "The upper end of the window."},
    {"family", "What sort of material it is."},
    {"caliper", "Its thickness."},
    {"grammage", "Its mass for each area."},
    {"modulus", "Its stiffness: stress over strain."},
    {"strength", "What it bears for each width before it breaks."},
    {"friction", "Between web and roller, where the roller does not say."},
    {"carries_alone", "Whether this layer bears the tension behind the die by itself."},
};

}  // namespace

Text keyMeaning(std::string_view group, std::string_view key)
{
    if (group == "policy") {
        const PolicyRow* row = findPolicy(key);
        return row == nullptr ? Text() : Text(std::string(row->says));
    }
    if (group == "labels") return "What this shop calls this control.";
    std::string full(group);
    // The rows of a list that stands in a row of another are told apart by number in its name.
    for (std::size_t open = full.find('['); open != std::string::npos; open = full.find('['))
        full.erase(open, std::min(full.find(']', open), full.size() - 1) + 1 - open);
    full += ' ' + std::string(key);
    const auto ends = [&](std::string_view tail) {
        return full.size() > tail.size() && full.ends_with(tail) &&
               (full[full.size() - tail.size() - 1] == ' ' || full[full.size() - tail.size() - 1] == '.');
    };
    for (const Meaning& one : kOf)
        if (full == one.key || ends(one.key)) return Text(SharedString::ofTable(one.says));
    const Meaning* best = nullptr;
    for (const Meaning& one : kAnywhere)
        if (ends(one.key) && (best == nullptr || one.key.size() > best->key.size())) best = &one;
    return best == nullptr ? Text() : Text(SharedString::ofTable(best->says));
}

}  // namespace taut::inputs
