// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "core/base/finding.h"

class QLabel;
class QPushButton;

namespace taut::app {

/// No logbook could be opened: which one, why not, and what can be done about it here. Nothing is written or changed
/// by looking at this page.
class NoLogbookPage : public QWidget {
    Q_OBJECT

public:
    explicit NoLogbookPage(QWidget* parent = nullptr);
    /// Why this file could not be opened, and what can be done.
    void show(const QString& file, const Finding& why);
    /// There is no logbook yet where it was looked for.
    [[nodiscard]] bool isMissing() const { return m_missing; }

signals:
    void again();    ///< the same file once more
    void look();     ///< to read only
    void another();  ///< another one
    void demo();     ///< the demo shop, in a window of its own
    void begin();    ///< a new one: where this one was looked for when none is there, else where it is chosen

private:
    QLabel* m_title;
    QPushButton *m_again, *m_begin, *m_look, *m_demo;
    QLabel *m_file, *m_why, *m_remedy;
    bool m_missing = false;
};

}  // namespace taut::app
