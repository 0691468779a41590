// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include <QWidget>

#include "core/run/command.h"
#include "core/run/run.h"

class QPushButton;
class QVBoxLayout;

namespace taut::app {

/// Who holds a stop and where, each with a button that gives it up by name. One holder gives up everything they hold in
/// one saying.
class HeldStops : public QWidget {
    Q_OBJECT

public:
    explicit HeldStops(QWidget* parent = nullptr);
    /// One row for each holder; nothing is seen when there is none.
    void show(const std::vector<run::HeldStop>& held);
    /// The first holder's button; nullptr when nobody holds one.
    [[nodiscard]] QPushButton* first() const { return m_first; }

signals:
    /// GiveUpStop of one holder.
    void command(const taut::run::Command& command);

private:
    QVBoxLayout* m_rows;
    QPushButton* m_first = nullptr;
};

}  // namespace taut::app
