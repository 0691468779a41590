// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QRectF>

#include "app/drawing/palette.h"
#include "core/report/report.h"

class QPainter;

namespace taut::app {

/// The numbers of one axis in the unit that is shown, and where they stand in the drawing.
struct AxisScale {
    double from = 0, to = 1, start = 0, end = 1;
    [[nodiscard]] double at(double value) const { return start + (value - from) / (to - from) * (end - start); }
};
/// Round numbers across a range, 4 to 7 of them.
[[nodiscard]] std::vector<double> roundSteps(double from, double to);

/// Lines told apart by their dash and by a label at their end, limits as ruled lines, "now" as a cross.
void paintChart(QPainter& painter, const QRectF& box, const report::Chart& chart, UnitSystem system, const Look& look);

}  // namespace taut::app
