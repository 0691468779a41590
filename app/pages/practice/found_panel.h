// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QWidget>

#include "core/practice/lesson.h"

class QPushButton;
class QVBoxLayout;

namespace taut::app {

/// Everything that can be wrong at a press, whether it is or not: whoever practises says what they found. What was said
/// stays said, so that nobody tries one after the other.
class FoundPanel : public QWidget {
    Q_OBJECT

public:
    explicit FoundPanel(QWidget* parent = nullptr);
    void build(const inputs::Press& press);
    /// What was said so far.
    void show(const practice::Lesson& lesson);

signals:
    void named(const taut::practice::Suspect& suspect);

private:
    struct Row {
        practice::Suspect suspect;
        QString text;
        QPushButton* button = nullptr;
    };
    QWidget* m_box;
    QVBoxLayout* m_rows;
    std::vector<Row> m_all;
};

}  // namespace taut::app
