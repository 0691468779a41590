// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QPushButton>
#include <QWidget>

#include "app/drawing/chart.h"
#include "app/drawing/elevation.h"
#include "app/drawing/limit_bar.h"
#include "app/drawing/marks.h"
#include "app/drawing/taut_line.h"

class QVariantAnimation;

namespace taut::app {

/// The taut line as a way to move between stages: each span is a button by mouse, by key and by name.
class TautLineWidget : public QWidget {
    Q_OBJECT

public:
    explicit TautLineWidget(QWidget* parent = nullptr);
    /// One for each stage.
    void setSpans(std::vector<TautSpan> spans);
    /// As they were set.
    [[nodiscard]] const std::vector<TautSpan>& spans() const { return m_spans; }
    /// Whether a stage that has just been closed is being pulled straight: once, for less than half a second, and not
    /// where nothing is to move (ThemeChoice::still, or a desktop without effects).
    [[nodiscard]] bool moving() const;
    /// Where room is short only the shown stage is named; the buttons keep every name.
    void setWords(TautWords words);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] int heightForWidth(int width) const override;

signals:
    /// Counted from 0.
    void stageChosen(int stage);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void placeButtons();
    /// Pulls straight what has been closed since.
    void pullStraight(const std::vector<TautSpan>& before);
    std::vector<TautSpan> m_spans;
    std::vector<std::size_t> m_pulled;
    QVariantAnimation* m_pull;
    TautWords m_words = TautWords::All;
    std::vector<QPushButton*> m_buttons;
};

/// The limit bar of a reading, live while somebody types.
class LimitBarWidget : public QWidget {
    Q_OBJECT

public:
    explicit LimitBarWidget(QWidget* parent = nullptr);
    /// Shows this bar.
    void setBar(LimitBar bar);
    /// As it was set.
    [[nodiscard]] const LimitBar& bar() const { return m_bar; }
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    LimitBar m_bar;
};

/// The press from the operator's side, as wide as there is room.
class ElevationWidget : public QWidget {
    Q_OBJECT

public:
    explicit ElevationWidget(QWidget* parent = nullptr);
    /// Shows this view.
    void setView(ElevationView view);
    /// As it was set.
    [[nodiscard]] const ElevationView& view() const { return m_view; }
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] int heightForWidth(int width) const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    ElevationView m_view;
};

/// One chart, as large as there is room.
class ChartWidget : public QWidget {
    Q_OBJECT

public:
    explicit ChartWidget(QWidget* parent = nullptr);
    /// Shows this chart in these units.
    void setChart(report::Chart chart, UnitSystem system);
    /// As it was set.
    [[nodiscard]] const report::Chart& chart() const { return m_chart; }
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    report::Chart m_chart;
    UnitSystem m_system{};
};

/// The mark of a state; the word stands beside it in a label.
class MarkWidget : public QWidget {
    Q_OBJECT

public:
    explicit MarkWidget(QWidget* parent = nullptr);
    /// Shows this shape.
    void setMark(MarkShape shape);
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    MarkShape m_shape = MarkShape::None;
};

}  // namespace taut::app
