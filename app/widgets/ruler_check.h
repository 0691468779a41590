// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "core/units/unit.h"

class QLabel;
class QLineEdit;
class QPushButton;

namespace taut::app {

class FindingStrip;

/// A bar that should be a hundred millimetres long (four inches where people read inches) on this screen, and how long
/// a ruler that is held to it says that it is: screens say wrongly how large they are, and what is touched with a
/// finger has its size in millimetres.
class RulerCheck : public QWidget {
    Q_OBJECT

public:
    explicit RulerCheck(QWidget* parent = nullptr);
    /// In the units in which people's rulers are.
    void setUnits(UnitSystem system);
    /// How long the bar is meant to be, in millimetres.
    [[nodiscard]] double meantMm() const;
    /// Where whoever comes to it begins.
    [[nodiscard]] QWidget* first() const;

signals:
    /// What ThemeChoice::rulerScale is from now on.
    void scaled(double rulerScale);

protected:
    void changeEvent(QEvent* event) override;

private:
    class Bar;
    void take();
    void say();
    UnitSystem m_system = UnitSystem::Metric;
    Bar* m_bar;
    QLabel *m_ask, *m_said;
    QLineEdit* m_read;
    QPushButton* m_take;
    FindingStrip* m_finding;
};

}  // namespace taut::app
