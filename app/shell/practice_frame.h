// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QLabel;

namespace taut::app {

/// Holds everything of the window. While somebody practises it is hatched all round, so that from across the room
/// nobody takes the screen for that of a press.
class PracticeFrame : public QWidget {
    Q_OBJECT

public:
    explicit PracticeFrame(QWidget* parent = nullptr);
    void setHatched(bool hatched);
    [[nodiscard]] bool isHatched() const { return m_hatched; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    bool m_hatched = false;
};

/// Over every page of the practice press: the word, and what is done in an emergency.
class PracticeBand : public QWidget {
    Q_OBJECT

public:
    explicit PracticeBand(QWidget* parent = nullptr);

protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void dress();
    QLabel *m_word, *m_told;
};

}  // namespace taut::app
