// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QListWidget>

#include "core/run/run.h"

namespace taut::app {

/// The places of a stage, and the steps of the place that is shown, each with its state by shape and word.
class StepList : public QListWidget {
    Q_OBJECT

public:
    explicit StepList(QWidget* parent = nullptr);
    /// The places of the shown step's stage, the steps of its own place among them.
    void show(const run::Run& run, const procedure::StepId& current);

signals:
    /// By mouse or key.
    void stepChosen(const QString& stepId);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void showWholeRows();
    void choose(QListWidgetItem* item);
    bool m_filling = false;
};

}  // namespace taut::app
