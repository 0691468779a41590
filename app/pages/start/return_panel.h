// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "core/records/job_return.h"

class QLabel;
class QPushButton;

namespace taut::app {

class RowList;
class WholeTable;

/// "2026-11-12 07:41, signed by Inka Thorsby, accepted by Matteo Quill": which run is told of.
[[nodiscard]] QString ranHereText(const records::RunRow& run);

/// What was set when this job ran here last, beside what is computed now; and what was written down then. It is there
/// to be looked at: nothing of it is taken over.
class ReturnPanel : public QWidget {
    Q_OBJECT

public:
    explicit ReturnPanel(QWidget* parent = nullptr);
    /// Shows this run in the units of its press.
    void show(const records::RunRow& run, const records::JobReturn& then, UnitSystem system);
    /// Where whoever comes to it begins.
    [[nodiscard]] QWidget* first() const;

signals:
    /// Back to what is to run.
    void left();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    QLabel *m_head, *m_noValues, *m_saidHead;
    QPushButton* m_back;
    WholeTable* m_table;
    RowList* m_said;
};

}  // namespace taut::app
