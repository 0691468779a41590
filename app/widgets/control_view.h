// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include <QWidget>

#include "core/report/report.h"

namespace taut::app {

/// A control chart in which one value is chosen, by a tap, or by the arrow keys, Home and End; Enter or a second tap on
/// it opens it.
class ControlView : public QWidget {
    Q_OBJECT

public:
    explicit ControlView(QWidget* parent = nullptr);
    /// The newest value is chosen, or the one from which on it moved.
    void show(report::ControlFigure figure, UnitSystem system);
    void clear();
    [[nodiscard]] const report::ControlFigure& figure() const { return m_figure; }
    [[nodiscard]] std::optional<std::size_t> chosen() const { return m_chosen; }
    void choose(std::size_t dot);
    /// What is told of a value to those who do not see it; the owner knows it.
    void tellChosen(const QString& sentence);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

signals:
    void dotChosen(std::size_t dot);
    void dotOpened(std::size_t dot);

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    report::ControlFigure m_figure;
    UnitSystem m_system{};
    std::optional<std::size_t> m_chosen;
};

}  // namespace taut::app
