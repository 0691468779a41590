// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include <QRectF>
#include <QString>

#include "app/drawing/palette.h"
#include "core/targets/target.h"
#include "core/verdict/verdict.h"

class QPainter;

namespace taut::app {

/// A window from low to high, the bands at its ends in which the instrument cannot tell, what is aimed at, and the
/// reading with its verdict in a word. All numbers SI and of one kind.
struct LimitBar {
    std::optional<double> low, high, aim, reading;
    double uncertainty = 0;  ///< of the instrument, expanded: the width of a guard band
    verdict::Judgement judgement;
    QString lowText, highText, aimText, readingText, word;
    QString why;  ///< why a reading within its limits is only near; "" otherwise
    /// False when nothing is judged: the bar then only shows a value.
    [[nodiscard]] bool hasWindow() const { return low || high; }
};
/// What a bar shows of a window, what is aimed at and what was read, in the units of these people.
[[nodiscard]] LimitBar limitBarOf(const targets::Window& window, double uncertaintySi,
                                  const std::optional<Quantity>& aim, const std::optional<Quantity>& reading,
                                  UnitSystem system);

/// How the bar's numbers lie on its track; what is painted and what is tested.
struct LimitBarScale {
    QRectF track;
    double from = 0, to = 1;
    /// Where a value stands; a value beyond the track's ends stands at the end.
    [[nodiscard]] double x(double si) const;
    /// True when a value lies past an end of the bar.
    [[nodiscard]] bool beyond(double si) const { return si < from || si > to; }
};
/// How the bar lies in a box.
[[nodiscard]] LimitBarScale limitBarScale(const LimitBar& bar, const QRectF& box, const Look& look);
/// In pixels, with its words.
[[nodiscard]] double limitBarHeight(const Look& look);
/// Draws the bar into the box.
void paintLimitBar(QPainter& painter, const QRectF& box, const LimitBar& bar, const Look& look);

}  // namespace taut::app
