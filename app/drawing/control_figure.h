// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include <QPointF>
#include <QRectF>

#include "app/drawing/chart.h"

class QPainter;

namespace taut::app {

/// How a control chart lies in its box.
struct ControlFrame {
    ChartAxis y;
    QRectF plot;
    double line = 0;  ///< height of a line of text
    std::size_t dots = 0;
    /// Where a value stands: the first at the left, the last at the right, whatever the time between them.
    [[nodiscard]] double x(std::size_t dot) const;
    [[nodiscard]] QPointF at(std::size_t dot, const Quantity& value) const { return {x(dot), y.at(value)}; }
    /// The value nearest to a place in the drawing; nullopt where there is none.
    [[nodiscard]] std::optional<std::size_t> dotAt(double x) const;
};
[[nodiscard]] ControlFrame controlFrame(const QRectF& box, const report::ControlFigure& figure, UnitSystem system,
                                        const Look& look);

/// Values as small rings joined by a line, those of a pattern as filled diamonds, those outside their window as
/// triangles; centre solid, control limits dashed, zones dotted, a phase parted from the next by a rule: without colour
/// the same. `chosen` is ringed.
void paintControlFigure(QPainter& painter, const QRectF& box, const report::ControlFigure& figure, UnitSystem system,
                        const Look& look, std::optional<std::size_t> chosen = {});
/// The least size in which its words can be read.
[[nodiscard]] QSizeF controlFigureSize(const Look& look);

/// Bars of one scale, a row each: name, bar, and what is said of it.
void paintBars(QPainter& painter, const QRectF& box, const report::Bars& bars, UnitSystem system, const Look& look);
/// The height that the bars take at this width; names that are too long for their third of it take a second line.
[[nodiscard]] double barsHeight(const report::Bars& bars, double width, UnitSystem system, const Look& look);

}  // namespace taut::app
