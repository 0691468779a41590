// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QRectF>
#include <QString>

#include "app/drawing/palette.h"
#include "core/run/run.h"

class QPainter;

namespace taut::app {

/// One stage on the taut line.
struct TautSpan {
    QString name, stateWord;
    run::StageState state = run::StageState::NotBegun;
    bool shown = false;  ///< the stage that the page shows now
    double sag = 0;      ///< of a closed stage while it is being pulled straight: 1 hangs slack, 0 is straight
};

/// Whether the words of every span stand under the line or, where room is short, those of the shown one in one line.
enum class TautWords { All, ShownOnly };

/// Our signature: a web across the page, one span per stage between drawn rollers. Not begun it hangs slack, in work it
/// is being pulled, done it is straight and thick, with a deviation it carries a knot, blocked it is parted. Under each
/// span stand its name and its state in words.
void paintTautLine(QPainter& painter, const QRectF& box, const std::vector<TautSpan>& spans, const Look& look,
                   TautWords words = TautWords::All);

/// Where each span with its words lies; the same as painted.
[[nodiscard]] std::vector<QRectF> tautLineCells(const QRectF& box, std::size_t count);
/// The height that the names need at this width.
[[nodiscard]] double tautLineHeight(double width, const std::vector<TautSpan>& spans, const Look& look,
                                    TautWords words = TautWords::All);

}  // namespace taut::app
