// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "core/base/finding.h"

class QLabel;

namespace taut::app {

/// Over every page while a logbook is open for looking only: that nothing can be entered, why, and the way out of it.
class ReadOnlyStrip : public QWidget {
    Q_OBJECT

public:
    explicit ReadOnlyStrip(QWidget* parent = nullptr);
    /// Why it could not be opened as usual.
    void say(const Finding& why);
    /// What of it is not shown, as far as something is to be said of that.
    void tell(const Findings& notes);

signals:
    void again();    ///< try to open it as usual
    void another();  ///< leave it for another one

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void name();
    QLabel *m_text, *m_notes;
    QString m_why;  ///< with what to do
};

}  // namespace taut::app
