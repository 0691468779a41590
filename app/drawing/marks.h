// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QRectF>

#include "app/drawing/palette.h"
#include "core/report/report.h"
#include "core/run/run.h"

class QPainter;

namespace taut::app {

/// A state told by shape; the word stands beside it, colour only helps.
enum class MarkShape : std::uint8_t {
    None,
    Tick,         ///< done or inside: tick in a circle
    HalfDiamond,  ///< near a limit
    Octagon,      ///< outside: cross in an octagon
    DashedBox,    ///< not done yet
    Knot,         ///< accepted with a deviation: the knot of the taut line
    DashBox,      ///< does not apply
    Dot,          ///< recorded, nothing to judge
    TurnArrow     ///< to be done or said again
};
/// The shape of a state on a sheet, or of a step of a run.
[[nodiscard]] MarkShape markOf(report::Mark mark);
[[nodiscard]] MarkShape markOf(const run::StepStanding& standing);

/// Draws the shape into the largest square in the middle of the box.
void paintMark(QPainter& painter, const QRectF& box, MarkShape shape, const Look& look);

}  // namespace taut::app
