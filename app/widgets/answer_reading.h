// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "app/widgets/answer.h"
#include "core/base/result.h"

class QBoxLayout;
class QHBoxLayout;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace taut::app {

class FlowRow;
class HintLine;
class LimitBarWidget;
class NumberPad;

/// A value with its unit: typed, or touched on a number pad. The limit bar follows while typing; what counts is what
/// was typed, with the unit that was typed or chosen.
class ReadingArea final : public AnswerArea {
    Q_OBJECT

public:
    ReadingArea(const StepContent& content, QWidget* parent);
    void enter() override;
    [[nodiscard]] QLineEdit* field() const override { return m_field; }
    [[nodiscard]] QWidget* first() const override;
    void setRefused(bool refused) override;
    void reserveHint(bool reserved) override;
    void setTight(bool tight) override;
    void openPad(bool open) override;
    void addBeside(QPushButton* button) override;
    /// As it will be sent: "1.4 bar". A unit in the field wins over the chosen one.
    [[nodiscard]] QString entered() const;

private:
    void addUnits(QHBoxLayout* row);
    void place();
    void follow();
    [[nodiscard]] std::optional<Quantity> reading() const;
    StepContent m_content;
    const targets::Ready* m_ready = nullptr;  // into m_content
    QLineEdit* m_field;
    LimitBarWidget* m_bar;
    NumberPad* m_pad;
    HintLine* m_hint;
    QVBoxLayout *m_whole, *m_left;
    QBoxLayout* m_row;
    FlowRow* m_actions;
    QPushButton *m_padToggle, *m_enter, *m_beside = nullptr;
    QString m_unit;
    bool m_tight = false, m_actionsBeside = false;
};

/// Field and unit of a quantity anywhere: the text with the chosen unit when none was typed.
[[nodiscard]] QString withUnit(const QString& typed, const QString& unit);
/// The units offered for a kind to people of a system, the usual one for this value first; three at most.
[[nodiscard]] std::vector<std::string> offeredUnits(const Quantity& like, UnitSystem system);

}  // namespace taut::app
