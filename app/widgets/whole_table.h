// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QTableWidget>

#include "app/drawing/marks.h"

namespace taut::app {

/// A table to read in which every text stands whole: its columns share the width, and a long text goes on in the next
/// line instead of pushing the others away. By keyboard it is one place: arrows go through its rows.
class WholeTable : public QTableWidget {
    Q_OBJECT

public:
    /// `shares`: what each column has of the width; they add up to 1.
    WholeTable(const QStringList& heads, std::vector<double> shares, QWidget* parent = nullptr);
    /// Shows these texts in a row; all of it may be given anew at any time.
    void put(int row, int column, const QString& text);
    /// The mark of a state before the text of a cell that was put.
    void mark(int row, int column, MarkShape shape);
    /// Settles the heights after rows were put.
    void spread();

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    std::vector<double> m_shares;
};

}  // namespace taut::app
