// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/units/quantity.h"

// The web of a press as it runs: tension in every span, rollers that turn with it or under it, two rolls of changing
// radius. What is counted is web at rest: a span of length L that holds l of it is strained by L / l - 1 and pulls; one
// that holds more than its own length hangs slack. Web that passes a roller keeps the strain of the span it comes from
// (mass balance, S44), so what the unwind gives is what spans and rewind have, to the last bit of a number.
//
// Rollers follow J dv/dt = R^2 (T_after - T_before) - drag (S43). Across a roller that is not nipped the tensions
// differ by no more than the capstan ratio (C1, S47); beyond it web slides over until they do not. Friction brakes,
// slip clutches and bearings hold while they can (Coulomb); which of them hold is settled once a step. Steps are of
// equal length, a share of the fastest swing there is, by the classical Runge-Kutta method: the same beginning and the
// same drives give the same numbers.
namespace taut::practice {

/// A roller between the rolls, in web order.
struct LineRoller {
    std::string id;
    Length radius;
    double wrap = 0;      ///< radians
    double friction = 0;  ///< of web on it
    Inertia inertia;
    Force drag;        ///< of its bearings, at its surface
    Length roughness;  ///< with the web's, for the air that is carried in at speed; 0 = none is
};
/// A core and what is wound on it.
struct WoundRoll {
    Length core;           ///< its outer radius
    Torque drag;           ///< of its bearings
    Inertia bare;          ///< of core, shaft, chucks and disc
    double strain = 0;     ///< with which its web was wound: what it leaves the roll with
    double eccentric = 0;  ///< how far its axis is from its centre, as a share of its radius
};
/// What the web is, and the way it takes.
struct WebLine {
    Force stiffness;  ///< E w t
    Length width, caliper;
    Grammage grammage;
    Time loss;  ///< tension that follows the rate of strain, as strain times this; damps what would ring
    std::vector<LineRoller> rollers;
    std::vector<Length> spans;  ///< one more than rollers: from the unwind, between them, to the rewind
    WoundRoll unwind, rewind;
};

/// What moves and holds the line, kept for a while.
struct Drives {
    Torque brake;             ///< on the unwind, against its turning
    Torque clutch;            ///< on the rewind, towards the speed of its input
    Frequency clutchInput;    ///< radians per second; 0 holds the rewind
    bool unwindHeld = false;  ///< locked: it does not turn at all
    bool rewindHeld = false;
    std::vector<std::optional<Speed>> driven;  ///< surface speed of each roller that a drive turns; {} = none is
    std::vector<bool> nipped;                  ///< each roller on which a nip or clamp holds the web; {} = none
};

/// The state that steps carry on. Plain numbers in SI, one for each span or roller of the line it was made for.
struct WebState {
    double time = 0;
    double unwound = 0, rewound = 0;          ///< web at rest that is still on the unwind, and on the rewind
    double unwindTurn = 0, rewindTurn = 0;    ///< radians since the beginning
    double unwindSpeed = 0, rewindSpeed = 0;  ///< radians per second
    std::vector<double> held;                 ///< web at rest in each span
    std::vector<double> speed;                ///< of each roller's surface
    std::vector<double> slid;                 ///< web that slid over each roller, forward positive
    double given = 0;                         ///< work that drives and clutch put in so far
    double taken = 0;                         ///< work that brake, bearings, slip and damping took out so far
    std::vector<bool> parted;                 ///< spans that pull no more, torn or never joined; {} = none
    friend bool operator==(const WebState&, const WebState&) = default;
};

/// What a span holds that holds none.
inline constexpr Length kNoWeb = Length::si(1e-3);
/// At rest: this much web on the unwind and on the rewind, every span taut with this tension.
[[nodiscard]] WebState atRest(const WebLine& line, Length onUnwind, Length onRewind, Force tension);
/// The step that the line wants in this state: a sixth of the shortest time in which anything on it swings by a radian.
[[nodiscard]] Time stepFor(const WebLine& line, const WebState& state);
/// Goes on by this much time, in equal steps of at most stepFor. The drives stay as they are.
void advance(const WebLine& line, WebState& state, const Drives& drives, Time by);

/// A span that is torn, cut or not yet joined.
[[nodiscard]] inline bool isParted(const WebState& state, std::size_t span)
{
    return !state.parted.empty() && state.parted[span];
}
/// Tension in a span; 0 where it is slack or parted.
[[nodiscard]] Force tensionIn(const WebLine& line, const WebState& state, std::size_t span);
/// Web that hangs in a span beyond its length; 0 where it is taut.
[[nodiscard]] Length slackIn(const WebLine& line, const WebState& state, std::size_t span);
/// Outer radius of the two rolls.
[[nodiscard]] Length unwindRadius(const WebLine& line, const WebState& state);
[[nodiscard]] Length rewindRadius(const WebLine& line, const WebState& state);
/// All web at rest: on both rolls and between them. Steps keep it.
[[nodiscard]] Length webOf(const WebState& state);
/// Energy of motion and of strain.
struct Energy {
    double moving = 0, strained = 0;  ///< J
};
[[nodiscard]] Energy energyOf(const WebLine& line, const WebState& state);
/// The largest ratio of tensions that a roller holds at this speed and tension (C1, and C1.air where roughness is
/// known).
[[nodiscard]] double gripOf(const WebLine& line, const LineRoller& roller, Speed speed, Force tension);

}  // namespace taut::practice
