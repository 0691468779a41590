// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QElapsedTimer>
#include <QTimer>

#include "app/widgets/controls.h"

namespace taut::app {

/// A button that answers only after it was held down for 0.8 s, by finger, mouse, Space or Enter: for facts nobody may
/// wave through. Assistive technology, which cannot hold, presses it twice. Never used where the press moves.
class HoldButton : public WordButton {
    Q_OBJECT

public:
    static constexpr int kHoldMs = 800;
    explicit HoldButton(const QString& text, QWidget* parent = nullptr);
    [[nodiscard]] double progress() const;

signals:
    void held();

protected:
    void mousePressEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void keyReleaseEvent(QKeyEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void begin();
    void cancel();
    void advance();
    QTimer m_tick;
    QElapsedTimer m_since;
    bool m_armed = false;
};

}  // namespace taut::app
