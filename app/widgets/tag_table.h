// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "core/inputs/tag_rows.h"
#include "core/units/unit.h"

class QGridLayout;

namespace taut::app {

/// The lines of a tag one under the other: what it is, its identifier, its value, what becomes of it, and under a line
/// what is wrong with it and what to do.
class TagTable : public QWidget {
    Q_OBJECT

public:
    explicit TagTable(QWidget* parent = nullptr);
    /// Shows these lines.
    void show(inputs::TagRows rows, UnitSystem system);
    /// As they are shown.
    [[nodiscard]] const inputs::TagRows& rows() const { return m_rows; }

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void build();
    void addFinding(const Finding& finding);
    [[nodiscard]] bool hasRoom() const;
    inputs::TagRows m_rows;
    UnitSystem m_system{};
    QGridLayout* m_grid;
    bool m_wide = false;
};

}  // namespace taut::app
