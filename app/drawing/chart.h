// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include <QRectF>
#include <QString>

#include "app/drawing/palette.h"
#include "core/report/report.h"

class QPainter;

namespace taut::app {

/// All numbers of an axis in one unit: where they stand in the drawing, and the round ones that are written beside it.
struct ChartAxis {
    std::string unit;  ///< symbol; "" or "1" for a plain number
    double toSi = 1;
    double from = 0, to = 1;    ///< in that unit
    double start = 0, end = 1;  ///< in the drawing
    std::vector<double> steps;  ///< in that unit, rising
    /// A quantity in the unit of the axis.
    [[nodiscard]] double of(const Quantity& q) const { return q.si() / toSi; }
    /// Where a value of the axis, or a quantity, lies on the paper.
    [[nodiscard]] double at(double value) const { return start + (value - from) / (to - from) * (end - start); }
    [[nodiscard]] double at(const Quantity& q) const { return at(of(q)); }
};
/// How a chart lies in its box; what is painted and what is tested.
struct ChartFrame {
    ChartAxis x, y;
    QRectF plot;
    double line = 0;  ///< height of a line of text
};
/// Axes and plot of a chart in a box; labels are measured in the look's font.
[[nodiscard]] ChartFrame chartFrame(const QRectF& box, const report::Chart& chart, UnitSystem system, const Look& look);
/// Round numbers across a range, about `wanted` steps apart: 1, 2, 2.5 or 5 times a power of ten.
[[nodiscard]] std::vector<double> roundSteps(double from, double to, int wanted = 5);

/// Lines told apart by their dash and by a name that stands beside them, limits as ruled lines, a window as a band,
/// "now" as a cross, where to set again as a diamond, where the range ends as a triangle: without colour the same.
void paintChart(QPainter& painter, const QRectF& box, const report::Chart& chart, UnitSystem system, const Look& look);
/// The least width and the height that a chart wants for its text.
[[nodiscard]] QSizeF chartSize(const Look& look);
/// The chart in sentences, for whoever does not see it.
[[nodiscard]] QString chartInWords(const report::Chart& chart, UnitSystem system);

}  // namespace taut::app
