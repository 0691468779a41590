// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QListWidget>

#include "app/drawing/marks.h"

namespace taut::app {

/// A list that is read from where one stands: each row says one thing in large type, what it comes to at the right, and
/// more below in small type. Rows are never lower than a finger is wide, and wrap rather than being cut.
class RowList : public QListWidget {
    Q_OBJECT

public:
    /// What one row shows.
    struct Row {
        QString id;  ///< what chosen() gives; "" for a headline, which is never the current row
        QString text, value, more;
        MarkShape mark = MarkShape::None;
    };
    explicit RowList(QWidget* parent = nullptr);
    /// Below the last.
    void add(const Row& row);
    /// What the row at this place says from now on.
    void say(int at, const Row& row);
    [[nodiscard]] QString idAt(int at) const;
    /// The id of the row that is chosen; "" when none is.
    [[nodiscard]] QString chosen() const;
    /// False when no such row is there.
    bool choose(const QString& id);
    /// The first row that can be chosen; "" when there is none.
    [[nodiscard]] QString first() const;

protected:
    QModelIndex moveCursor(CursorAction action, Qt::KeyboardModifiers modifiers) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
};

}  // namespace taut::app
