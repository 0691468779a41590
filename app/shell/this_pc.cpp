// SPDX-License-Identifier: GPL-3.0-or-later
#include <QCoreApplication>
#include <QProcess>

#include "app/pages/setup/setup_page.h"
#include "app/pages/setup/this_pc_page.h"
#include "app/shell/main_window.h"
#include "app/shell/screen_menu.h"
#include "app/shell/tongue.h"
#include "app/text/language.h"

namespace taut::app {

/// What is chosen for this PC behind the door "Shop" reaches the whole window.
QWidget* MainWindow::makeShopPage(QWidget* parent)
{
    auto* page = new SetupPage(m_session, parent);
    connect(page, &SetupPage::idleChosen, this, [this](int minutes) { m_idle.start(minutes * kMinute); });
    ThisPcPage* pc = page->thisPc();
    // Later: it makes everything anew, and the list that was chosen from is part of that.
    connect(
        pc, &ThisPcPage::languageChosen, this,
        [this](const QString& id) {
            m_tongue->choose({id, {}, true});
        },
        Qt::QueuedConnection);
    connect(
        pc, &ThisPcPage::unitsChosen, this,
        [this](UnitsWish wish) {
            m_tongue->choose({{}, wish, true});
        },
        Qt::QueuedConnection);
    connect(pc, &ThisPcPage::scaled, this, &setByRuler);
    connect(pc, &ThisPcPage::demoWanted, this, &MainWindow::startDemo);
    connect(pc, &ThisPcPage::left, this, [this, pc] {
        if (pc->isFirstTime()) choose(kRunDoor);
    });
    return page;
}

/// In a window of its own, in the language of this one.
void MainWindow::startDemo()
{
    QProcess::startDetached(QCoreApplication::applicationFilePath(),
                            {QStringLiteral("--demo"), QStringLiteral("--language"), language()});
}

}  // namespace taut::app
