// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/practice/web.h"

// Where the web lies sideways, at every roller, as it is carried along. A web enters a roller square to its axis (S61):
// a span is a lag of the first order (G2), or, as a beam under its tension, of the second (G4); what a turned roller or
// one that is shifted does to it follows from the same equations. Positions are to the drive side of the press's
// centreline; angles are small, in radians, and positive where they lead the web to the drive side.
namespace taut::practice {

/// How a roller stands: shifted sideways, and turned as the span before it and the span behind it see it. A guide whose
/// entry and exit spans only twist turns for the span between its rollers alone.
struct Stand {
    Length shift;
    Speed shiftRate;
    double turnedIn = 0, turnedOut = 0;
};
/// Position and its rate at each roller; one more at the end, for the rewind. SI.
struct LateralState {
    std::vector<double> at, rate;
    friend bool operator==(const LateralState&, const LateralState&) = default;
};
/// Everywhere at this place, at rest.
[[nodiscard]] LateralState lyingAt(const WebLine& line, Length place);
/// Goes on by this much time while the web runs as it does now: `leaves` is where it leaves the unwind, `stands` says
/// how each roller stands ({} = all straight). A slack span carries nothing: its web stays where it lies.
void advance(const WebLine& line, const WebState& web, LateralState& state, Length leaves,
             const std::vector<Stand>& stands, Time by);
/// Between two rollers, so far behind the first of them (counted as in spans: 0 = after the unwind).
[[nodiscard]] Length placeIn(const WebLine& line, const LateralState& state, std::size_t span, Length behind,
                             Length leaves);

}  // namespace taut::practice
