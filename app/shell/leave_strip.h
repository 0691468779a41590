// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLabel>
#include <QPointer>
#include <QPushButton>
#include <QStringList>
#include <QWidget>

#include "core/run/run.h"

namespace taut::app {

/// Asks whoever closes the window in the middle of something. Of a run nothing is lost by it, and they are told where
/// it goes on; of a definition that is being written all is that was not sealed. In line like every other question,
/// with the focus on what changes nothing.
class LeaveStrip : public QWidget {
    Q_OBJECT

public:
    explicit LeaveStrip(QWidget* parent = nullptr);
    /// Says that this run stays open (nullptr = none is), and that what was changed in these definitions is lost.
    void ask(const run::Run* run, const QStringList& unsealed);
    /// Gives the focus back to what had it.
    void stay();

signals:
    /// All the same.
    void quit();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    QLabel* m_text;
    QPushButton *m_stay, *m_quit;
    QPointer<QWidget> m_before;
};

}  // namespace taut::app
