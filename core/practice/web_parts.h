// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/practice/web.h"

// What web.cpp and web_stepper.cpp reckon alike; plain numbers in SI.
namespace taut::practice {

/// Of a span of this length that holds so much web at rest; 0 where it hangs.
[[nodiscard]] inline double strainOf(double length, double held) { return held < length ? length / held - 1 : 0; }

/// Outer radius of a roll with so much web.
[[nodiscard]] inline double radius(const WoundRoll& roll, const WebLine& line, double wound)
{
    const double core = roll.core.si();
    return std::sqrt(core * core + line.caliper.si() * std::max(0.0, wound) / std::numbers::pi);
}

/// Of core, shaft and web (V4): the web is a hollow cylinder on the core.
[[nodiscard]] inline double inertia(const WoundRoll& roll, const WebLine& line, double wound, double outer)
{
    const double mass = line.grammage.si() * line.width.si() * std::max(0.0, wound), core = roll.core.si();
    return roll.bare.si() + mass * (outer * outer + core * core) / 2;
}

/// How the surface of an eccentric roll is off its mean radius at this turn: the web leaves at a radius that goes up
/// and down once a turn.
[[nodiscard]] inline double offCentre(const WoundRoll& roll, double turn)
{
    return 1 + roll.eccentric * std::sin(turn);
}

/// A body that a friction device holds to a speed, as settled for one step.
struct Hold {
    double toward = 0;  ///< the speed to which friction pulls it
    double most = 0;    ///< what friction can do
    bool stuck = false;
    int way = 0;  ///< sign of friction while it slides

    void settle(double speed, double pull)
    {
        stuck = speed == toward && std::abs(pull) <= most;
        const double off = speed != toward ? speed - toward : pull;
        way = off > 0 ? -1 : off < 0 ? 1 : 0;
    }
    [[nodiscard]] double friction() const { return way * most; }
    /// Sliding that has come to its end within the step.
    [[nodiscard]] double ended(double before, double after) const
    {
        return (before - toward) * (after - toward) < 0 ? toward : after;
    }
};

/// What a step changes: the state's numbers in a row.
struct Row {
    double unwound = 0, rewound = 0, unwindTurn = 0, rewindTurn = 0, unwindSpeed = 0, rewindSpeed = 0;
    double given = 0, taken = 0;
    std::vector<double> held, speed, slid;
};

/// What a roll that came to its end within a step gave beyond what it had, comes back from its span.
inline void takeBack(double& wound, double& held)
{
    if (wound >= 0) return;
    held += wound;
    wound = 0;
}

/// A span that gave more within a step than it held gets it back from whichever neighbour has more.
inline void takeBack(std::vector<double>& held)
{
    constexpr double kLeast = 1e-6;
    for (std::size_t s = 0; s < held.size(); ++s) {
        if (held[s] > 0) continue;
        const bool behind = s + 1 < held.size() && (s == 0 || held[s + 1] > held[s - 1]);
        (behind ? held[s + 1] : held[s - 1]) -= kLeast - held[s];
        held[s] = kLeast;
    }
}

/// One line of three diagonals; one that does not stand leaves its unknown at nought and parts the lines before it from
/// those behind.
struct Equation {
    bool stands = false;
    double left = 0, middle = 1, right = 0, want = 0;
};
/// By Thomas's way.
inline void solve(std::vector<Equation>& lines, std::vector<double>& unknown)
{
    for (std::size_t i = 1; i < lines.size(); ++i) {
        if (!lines[i].stands || !lines[i - 1].stands) continue;
        const double share = lines[i].left / lines[i - 1].middle;
        lines[i].middle -= share * lines[i - 1].right;
        lines[i].want -= share * lines[i - 1].want;
    }
    double behind = 0;
    for (std::size_t i = lines.size(); i-- > 0;)
        unknown[i] = behind = lines[i].stands ? (lines[i].want - lines[i].right * behind) / lines[i].middle : 0;
}

/// So many steps of this length; the drives are engaged first.
void goOn(const WebLine& line, WebState& state, const Drives& drives, double step, std::int64_t times);

}  // namespace taut::practice
