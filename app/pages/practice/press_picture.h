// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <utility>
#include <vector>

#include <QWidget>

#include "app/drawing/live_press.h"

class QLabel;

namespace taut::app {

/// The practice press as it runs, as wide as there is room.
class PressPicture : public QWidget {
    Q_OBJECT

public:
    explicit PressPicture(QWidget* parent = nullptr);
    /// Where nothing is to move by itself (ThemeChoice::still), what goes with the web is left out.
    void show(LivePress press);
    /// As it was shown last.
    [[nodiscard]] const LivePress& press() const { return m_press; }
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;
    [[nodiscard]] int heightForWidth(int width) const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    LivePress m_press;
};

/// What the press can be read by: its lamps, and a value with its unit for each gauge.
class Gauges : public QWidget {
    Q_OBJECT

public:
    explicit Gauges(QWidget* parent = nullptr);
    /// As they stand in this world now.
    void show(const practice::World& world, const inputs::Press& press);

private:
    void say(const QString& name, const QString& value);
    void light(const practice::World& world, const inputs::Press& press);
    QLabel* m_lamps;
    QWidget* m_row;
    std::vector<std::pair<QLabel*, QLabel*>> m_cells;
    std::size_t m_next = 0;
};

}  // namespace taut::app
