// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QLineF>
#include <QRectF>
#include <QString>

#include "app/drawing/palette.h"

class QPainter;

namespace taut::app {

/// Finds room for the words inside a chart: each beside what it names, across as few lines and other words as can be.
class ChartLabels {
public:
    /// Nothing is put outside these bounds.
    ChartLabels(QRectF bounds, Look look);
    /// Something that words had better not cover.
    void avoid(const QLineF& line);
    /// A line of the grid: better not, but rather than any other.
    void avoidGrid(const QLineF& line);
    /// Room that is taken already.
    void avoid(const QRectF& rect);
    /// Words that belong to a point; `away` keeps them clear of its mark.
    void addBeside(const QString& text, QPointF point, double away, bool strong);
    /// Words that may stand anywhere along a line, above or below it.
    void addAlong(const QString& text, const std::vector<QPointF>& line);
    /// Draws what was added, in the order in which it was added.
    void paint(QPainter& painter) const;
    /// Where labels were put so far.
    [[nodiscard]] std::vector<QRectF> places() const;

private:
    struct Placed {
        QString text;
        QRectF rect;
        bool strong = false, crowded = false;
    };
    [[nodiscard]] QSizeF sizeOf(const QString& text, bool strong) const;
    void place(const QString& text, bool strong, const std::vector<QRectF>& candidates);
    QRectF m_bounds;
    Look m_look;
    std::vector<QLineF> m_lines, m_grid;
    std::vector<QRectF> m_rects;
    std::vector<Placed> m_placed;
};

}  // namespace taut::app
