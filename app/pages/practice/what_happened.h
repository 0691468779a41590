// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTimer>
#include <QWidget>

#include "core/practice/world.h"
#include "core/procedure/plan.h"

class QPushButton;
class QVBoxLayout;

namespace taut::app {

/// What came of the state of things, while time stands still: the states that led to it, and of each the step of the
/// procedure that guards against it. It comes up under hands that are busy: for its first second it takes no key and no
/// click, which were meant for what stood there before.
class WhatHappened : public QWidget {
    Q_OBJECT

public:
    explicit WhatHappened(QWidget* parent = nullptr);
    /// plan: nullptr while there is no run; then no step is named.
    void show(const practice::Consequence& happened, const procedure::Plan* plan, UnitSystem system);
    /// Where whoever comes to it begins.
    [[nodiscard]] QWidget* first() const;

signals:
    void stepWanted(const QString& step);
    void goOn();
    /// The same scenario from its beginning, with the same chances or with others.
    void again(bool sameSeed);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    QVBoxLayout* m_told;
    QWidget* m_box;
    QPushButton* m_goOn;
    QTimer m_fresh;       // since it came up
    double m_shown = -1;  // when what is shown happened, s of the world
};

}  // namespace taut::app
