// SPDX-License-Identifier: GPL-3.0-or-later
#include <QButtonGroup>
#include <QKeySequence>
#include <QShortcut>

#include "app/pages/history/history_desk.h"
#include "app/shell/help_view.h"
#include "app/shell/main_window.h"
#include "app/shell/page_shelf.h"

namespace taut::app {

/// The keys that work on every page; what a page offers has its keys there.
void MainWindow::makeKeys()
{
    const auto key = [this](const QKeySequence& sequence, const auto& act) {
        auto* shortcut = new QShortcut(sequence, m_body);
        shortcut->setAutoRepeat(false);
        connect(shortcut, &QShortcut::activated, this, act);
    };
    for (QAbstractButton* button : m_doors->buttons()) {
        const int door = m_doors->id(button);
        key(QKeySequence(Qt::ALT | static_cast<Qt::Key>(Qt::Key_1 + door)), [this, door] {
            if (m_doors->button(door)->isEnabled()) choose(door);
        });
    }
    key(QKeySequence(Qt::CTRL | Qt::Key_Q), [this] { close(); });
    key(QKeySequence::Find, [this] {
        if (m_pages->shows(kHelpPage)) return helpPage()->find();
        if (!m_doors->button(kHistoryDoor)->isEnabled()) return;
        choose(kHistoryDoor);
        if (m_pages->shows(kHistoryPage)) historyPage()->runs()->find();
    });
}

}  // namespace taut::app
