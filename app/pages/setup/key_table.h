// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>

#include <QTableWidget>

#include "core/inputs/form.h"

namespace taut::app {

/// One group of a form as a table: the rows of a list below each other, or the keys of a table, of nested rows beside
/// each other. A cell that something is wrong with has a mark and says it in its tip. Arrows go from cell to cell,
/// Enter or F2 opens one; Tab then goes to the next cell and opens it, and otherwise goes on from the table.
class KeyTable : public QTableWidget {
    Q_OBJECT

public:
    explicit KeyTable(QWidget* parent = nullptr);
    /// Shows this group; the cell that has the focus keeps it. `said` turns a finding into a sentence.
    void show(const inputs::Form& form, const inputs::FormGroup& group,
              const std::function<QString(const Finding&)>& said, bool mayWrite);
    /// Nothing to show.
    void showNothing();
    /// The row of a list that the focus is in; the last where it is in none.
    [[nodiscard]] std::size_t focused() const;
    /// The key that the focus is on; "" where it is on none.
    [[nodiscard]] std::string focusedKey() const;
    /// To the cell of this key.
    void goTo(std::size_t item, const std::string& key);

signals:
    /// Somebody is typing this into a cell, and has not left it.
    void typing(const taut::inputs::FormCell& cell, const QString& text);
    /// Left with this in it.
    void typed(const taut::inputs::FormCell& cell, const QString& text);
    /// Left as it was.
    void untouched();

protected:
    void changeEvent(QEvent* event) override;

private:
    friend class KeyDelegate;
    [[nodiscard]] const inputs::FormCell* cellAt(int row, int column) const;
    void fit();
    inputs::FormGroup m_group;
    bool m_across = false;  // the rows of the list are rows of the table
};

}  // namespace taut::app
