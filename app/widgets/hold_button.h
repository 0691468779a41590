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
    /// How far it is held: 0 to 1.
    [[nodiscard]] double progress() const;
    /// After a touch that was too short: for a moment, how it is held.
    [[nodiscard]] QString shownWords() const override;

signals:
    /// Long enough.
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
    void letGo();
    void advance();
    QTimer m_tick, m_hint, m_release;
    QElapsedTimer m_since;
    bool m_armed = false;
};

}  // namespace taut::app
