// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "app/widgets/answer.h"

class QPushButton;
class QVBoxLayout;

namespace taut::app {

class StatementBox;

/// The press will move. First everybody who holds a stop gives it up by name; then what must be true of the machine is
/// said anew, sentence by sentence; then two touches: everyone is clear, and, after it moved, done. Nothing here is
/// held down, so that nobody takes it for a control.
class MotionArea final : public AnswerArea {
    Q_OBJECT

public:
    static constexpr int kBetweenTouchesMs = 1000;  ///< so that a double touch is not two answers
    MotionArea(const StepContent& content, QWidget* parent);
    void enter() override;
    [[nodiscard]] QWidget* first() const override;

private:
    void addStatements(QVBoxLayout* layout);
    void addTouches(QVBoxLayout* layout);
    void settle();
    void showSecond(bool second);
    StepContent m_content;
    std::vector<std::string> m_states;
    std::vector<StatementBox*> m_boxes;
    QPushButton *m_clear = nullptr, *m_done = nullptr, *m_back = nullptr;
};

}  // namespace taut::app
