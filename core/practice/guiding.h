// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "core/inputs/press.h"
#include "core/practice/lateral.h"
#include "core/practice/line.h"

namespace taut::practice {

/// A web guide as hands left it and as it stands.
struct GuideState {
    bool automatic = false;
    bool calibrated = false;
    Length sensor;                 ///< how far its sensor stands from where the web is to be, to the drive side
    double moved = 0;              ///< by how much it corrects, m, from the middle of its stroke
    double rate = 0;               ///< m/s
    double read = 0;               ///< how far off the web its sensor said it was, m
    double heard = 0, pushed = 0;  ///< what has come of that through its amplifier, m, and to its drive, m/s
    int way = 0;                   ///< in which it moved last
    int turns = 0;                 ///< how often it changed that since the web last lay still
    double still = 0;              ///< for how long the web has lain where it is to be, s
    double off = 0;                ///< for how long the web has been well off, s
    friend bool operator==(const GuideState&, const GuideState&) = default;
};
/// A guide of a line: which rollers move, where its sensor looks.
struct Guide {
    std::string id, kind;
    std::vector<std::size_t> rollers;  ///< by their places in the line, in web order
    std::size_t span = 0;              ///< in which the sensor looks
    Length after;                      ///< so far behind the roller before it
    double most = 0;                   ///< what it can correct either way, m
    double fastest = 0;                ///< m/s
    double window = 0;                 ///< m; beyond half of it the sensor says no more
    double lever = 1;                  ///< correction a radian makes: length of the guide's span, or of its entry
};
/// The guides of a press that stand on this line. One that moves the unwind stands before its first roller.
[[nodiscard]] std::vector<Guide> guidesOf(const inputs::Press& press, const Line& line);
/// How the rollers of all guides stand, and what the unwind is shifted by.
struct Steered {
    std::vector<Stand> stands;
    Length unwind;
};
[[nodiscard]] Steered steered(const std::vector<Guide>& guides, const std::vector<GuideState>& states,
                              const Line& line);
/// Looks at the web and moves for this much time. A sensor that is calibrated says what is, of which it sees the share
/// `sees` (a clean one all of it); one that is not says too little of it or far too much, as `seed` has it. The gain is
/// calm for what lies between sensor and drive (amplifier and drive, each a lag) and for the web's way to the sensor
/// (G9): a guide that is faster than that hunts.
void steer(const Guide& guide, GuideState& state, Length place, Speed web, std::uint64_t seed, Time by,
           double sees = 1);

}  // namespace taut::practice
