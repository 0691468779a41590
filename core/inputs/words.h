// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <span>
#include <string>
#include <string_view>
#include <utility>

#include "core/inputs/press.h"

namespace taut::inputs {

// The words of the files, format 1. One list a key; what a program tests for is one of these.
template <class E>
using Word = std::pair<std::string_view, E>;

inline constexpr std::array<Word<UnitSystem>, 2> kUnitWords{{{"metric", UnitSystem::Metric}, {"us", UnitSystem::Us}}};
inline constexpr std::array<Word<Side>, 2> kSideWords{{{"operator_side", Side::Operator}, {"drive_side", Side::Drive}}};
inline constexpr std::array<Word<Feed>, 2> kFeedWords{{{"over", Feed::Over}, {"under", Feed::Under}}};
inline constexpr std::array<Word<Winding>, 3> kWindingWords{
    {{"face_out", Winding::FaceOut}, {"face_in", Winding::FaceIn}, {"unknown", Winding::Unknown}}};
inline constexpr std::array<Word<Control>, 4> kControlWords{{{"open_loop", Control::OpenLoop},
                                                             {"dancer", Control::Dancer},
                                                             {"load_cell", Control::LoadCell},
                                                             {"draw", Control::Draw}}};
inline constexpr std::array<Word<Actuator>, 3> kActuatorWords{
    {{"pneumatic", Actuator::Pneumatic}, {"particle", Actuator::Particle}, {"servo", Actuator::Servo}}};
inline constexpr std::array<Word<TaperShape>, 3> kTaperWords{
    {{"none", TaperShape::None}, {"linear", TaperShape::Linear}, {"hyperbolic", TaperShape::Hyperbolic}}};

inline constexpr std::array<std::string_view, 2> kTakesWords{"product", "waste"};
inline constexpr std::array<std::string_view, 2> kTurnWords{"cw", "ccw"};
inline constexpr std::array<std::string_view, 5> kMandrelWords{"air_shaft", "expanding_chuck", "cones", "plain_shaft",
                                                               "differential"};
inline constexpr std::array<std::string_view, 3> kSupportWords{"cantilever", "outboard", "safety_chucks"};
inline constexpr std::array<std::string_view, 4> kLiftWords{"pneumatic", "powered", "hoist", "arms"};
inline constexpr std::array<std::string_view, 3> kAirLossWords{"holds", "releases", "brakes"};
inline constexpr std::array<std::string_view, 2> kCarriesWords{"all", "liner"};
inline constexpr std::array<std::string_view, 2> kJointWords{"butt", "overlap"};
inline constexpr std::array<std::string_view, 3> kLoadWords{"pneumatic", "weight", "spring"};
inline constexpr std::array<std::string_view, 15> kRollerWords{
    "unwind", "idler",    "nip", "displacement", "steering", "dancer", "load_cell",   "print",
    "chill",  "turn_bar", "die", "strip",        "slitter",  "rewind", "waste_rewind"};
inline constexpr std::array<std::string_view, 4> kGuideWords{"displacement", "steering", "unwind_shift",
                                                             "rewind_shift"};
inline constexpr std::array<std::string_view, 3> kGuidesWords{"centre", "operator_edge", "drive_edge"};
inline constexpr std::array<std::string_view, 4> kSensorWords{"ultrasonic", "infrared", "visible", "line"};
inline constexpr std::array<std::string_view, 4> kDryerWords{"none", "air", "infrared", "uv"};
inline constexpr std::array<std::string_view, 3> kDrawnWords{"outfeed", "rewind", "hand"};
inline constexpr std::array<std::string_view, 15> kFamilyWords{
    "paper", "board", "paper_label", "film_label", "pet",     "bopp",       "pp",         "pe",
    "nylon", "foil",  "thermal",     "vinyl",      "acetate", "cellophane", "polystyrene"};
inline constexpr std::array<std::string_view, 5> kConditionWords{"clean", "cold", "dusty", "nicked", "crushed"};

/// The controls of a press by role, and what each is called where its profile has no label for it. The setting of a
/// zone is ZONE_setting.
inline constexpr std::array<std::pair<std::string_view, std::string_view>, 20> kControlRoles{{
    {"main_disconnect", "the main disconnect"},
    {"air_supply", "the air supply valve"},
    {"emergency_reset", "the reset for the emergency stops"},
    {"hold_to_run", "the hold-to-run button"},
    {"run", "the run button at idle speed"},
    {"stop", "the ordinary stop button"},
    {"lift_up", "the lift's up control"},
    {"lift_down", "the lift's down control"},
    {"lift_pressure", "the lift's pressure regulator"},
    {"mandrel_air", "the air of the unwind shaft"},
    {"automatic_stop", "the automatic stop at the end of the roll"},
    {"infeed_nip", "the infeed nip"},
    {"outfeed_nip", "the outfeed nip"},
    {"register_along", "the adjuster for register along the web"},
    {"register_across", "the adjuster for register across the web"},
    {"lamp_park", "the control that parks the lamps"},
    {"guide_middle", "the control that sets the guide to its middle"},
    {"guide_automatic", "the control that sets the guide to automatic"},
    {"guide_sensor", "the control that calibrates the guide's sensors"},
    {"hold_stop", "the isolator, locked by your site's procedure"},
}};
inline constexpr std::string_view kSettingRole = "_setting";

/// The word that a file writes for this value.
template <class E>
[[nodiscard]] std::string_view wordFor(std::span<const Word<E>> words, E value)
{
    for (const Word<E>& w : words)
        if (w.second == value) return w.first;
    return {};
}
/// The text of a quantity for a file: as it was entered, else number and unit that read back to the same value.
[[nodiscard]] std::string asWritten(const Quantity& q);

}  // namespace taut::inputs
