// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <optional>

#include <QTimer>
#include <QWidget>

#include "core/practice/replay.h"

class QLabel;
class QPushButton;
class QSlider;
class QStackedWidget;

namespace taut::app {

class Gauges;
class PressPicture;
class ReportPane;
class RowList;

/// A lesson that has ended: what it came to, and the press as it was at any time of it, played anew from the seed.
class AfterLesson : public QWidget {
    Q_OBJECT

public:
    /// sheet: on which the report is shown; taken over.
    explicit AfterLesson(ReportPane* sheet, QWidget* parent = nullptr);
    ~AfterLesson() override;
    /// sources: of the press, job, substrate, roll and procedure that it went by.
    /// own: of whoever is at the screen, who may begin it again.
    void show(const practice::Attempt& attempt, const run::Sources& sources, bool own);
    [[nodiscard]] QWidget* first() const;

signals:
    /// The same scenario is to begin once more.
    void again(bool sameSeed);
    void left();

private:
    QWidget* buildReplay();
    void replay();
    void fillTimeLine();
    void showAt(double seconds);
    void play(bool plays);
    std::optional<practice::Attempt> m_attempt;
    std::optional<run::Basis> m_basis;
    std::shared_ptr<const practice::Replay> m_replay;
    int m_asked = 0;  ///< which attempt the one that is being made belongs to
    QStackedWidget* m_stack;
    ReportPane* m_sheet;
    QWidget* m_played;
    PressPicture* m_picture;
    Gauges* m_gauges;
    RowList* m_marks;
    QSlider* m_slider;
    QLabel *m_clock, *m_said;
    QPushButton *m_look, *m_same, *m_other, *m_leave, *m_play;
    QTimer m_timer{this};
    double m_at = 0;
    bool m_moves = false;  ///< the slider, by itself
};

}  // namespace taut::app
