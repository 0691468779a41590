// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QLabel>
#include <QPointer>
#include <QPushButton>
#include <QWidget>

namespace taut::app {

/// A frame round something in the window. It takes no touch: what it points at works as ever.
class PointingFrame : public QWidget {
    Q_OBJECT

public:
    explicit PointingFrame(QWidget* window);
    /// Goes along with it; nothing to point at: is not seen.
    void pointAt(QWidget* target);

protected:
    void paintEvent(QPaintEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void settle();
    QPointer<QWidget> m_target;
};

/// A first look round, one sentence at a time, in line above the page: nobody has to wait for it or follow it.
class Tour : public QWidget {
    Q_OBJECT

public:
    /// One sentence, what it is about, and a drawing of it (drawing/help_pictures.h) where it is not in sight.
    struct Stop {
        QPointer<QWidget> target;
        QString words, picture;
    };
    explicit Tour(QWidget* window);
    /// From the first stop on.
    void begin(std::vector<Stop> stops);
    /// Leaves it, wherever it is.
    void leave();

signals:
    /// All was seen, or somebody had enough.
    void over();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void step(int by);
    void showStop(std::size_t stop);
    std::vector<Stop> m_stops;
    std::size_t m_at = 0;
    QLabel *m_words, *m_picture, *m_count;
    QPushButton *m_back, *m_next, *m_skip;
    PointingFrame* m_frame;
};

}  // namespace taut::app
