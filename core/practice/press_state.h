// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "core/inputs/press.h"
#include "core/units/quantity.h"

namespace taut::practice {

/// What the press is told to do.
enum class Motion : std::uint8_t { Standing, Inching, HeldToRun, Running };
/// Where the new roll is.
enum class RollAt : std::uint8_t { Floor, Lift, Shaft };
/// How the web of the last job and the new one hang together, and how well that was made.
struct Joint {
    bool led = false;  ///< the new web lies on the splice table
    bool cut = false;  ///< both ends are cut together
    bool taped = false;
    bool trimmed = false;  ///< nothing of tape or web stands over
    Length square;         ///< how far the cut is out of square, across the web
    Length gap;            ///< between the butted edges
    Length step;           ///< of the new web's edge beside the old one's, to the drive side
    int made = 0;          ///< how often hands cut or taped: no two times come out alike
    friend bool operator==(const Joint&, const Joint&) = default;
};

/// How far the register adjusters of a station stand from their mid marks.
struct Adjusted {
    Length along, across;
    friend bool operator==(const Adjusted&, const Adjusted&) = default;
};

/// Everything at the practice press that is not web dynamics: what hands, switches and knobs have left it in.
struct PressState {
    bool mains = false, air = false, reset = false;  ///< reset: the emergency-stop circuit was, since it last fell
    std::set<std::string> stops;                     ///< emergency stops that are latched
    std::set<std::string> open;                      ///< guards that stand open
    std::set<std::string> tried;                     ///< stops that were pressed while it moved, since it has power
    bool held = false;                               ///< somebody's maintained stop is on
    Motion motion = Motion::Standing;
    Speed asked;                                ///< to which a running press goes
    std::map<std::string, Quantity> settings;   ///< of each zone that was set
    std::map<std::string, Length> diameters;    ///< that drives were told, by zone
    std::set<std::string> zeroed;               ///< zones whose load cells were set to zero
    std::set<std::string> cleaned;              ///< guides whose sensors were
    std::set<std::string> engaged;              ///< zones whose brake had the calipers engaged that it is to work with
    std::set<std::string> pinned;               ///< zones whose dancer has its lock pin in
    std::map<std::string, Adjusted> registers;  ///< by the station's number
    bool adapted = false;                       ///< adapters sit between core and shaft
    std::set<std::string> nips;                 ///< closed
    bool tableClamps = false;                   ///< both hold
    RollAt roll = RollAt::Floor;
    Pressure liftAir;
    double lifted = 0;  ///< share of the lift's way
    bool shaftAir = false, rewindAir = false;
    std::optional<inputs::Feed> feed;  ///< how the roll was hung
    Length offCentre;                  ///< of the roll on its shaft, to the drive side
    bool stripped = false;             ///< its outer wraps are off
    bool coreHeld = false;             ///< the web is taped to the rewind's core
    Joint joint;
    std::set<std::string> lampsOpen;  ///< dryers whose shutters stand open, by the station's number
    std::set<std::string> rags;       ///< dryers on which something lies
    friend bool operator==(const PressState&, const PressState&) = default;
};

}  // namespace taut::practice
