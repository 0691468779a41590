// SPDX-License-Identifier: GPL-3.0-or-later
// What leads to the history from other pages, and from it to the shop.
#include <utility>

#include "app/pages/history/history_desk.h"
#include "app/pages/history/waiting_page.h"
#include "app/pages/setup/setup_page.h"
#include "app/shell/echo.h"
#include "app/shell/main_window.h"

namespace taut::app {

void MainWindow::showInHistory(const QString& run)
{
    choose(kHistoryDoor);
    historyPage()->runs()->showRun(run);
}

/// A run that was sealed is looked at where it stands now.
void MainWindow::showSealed()
{
    connect(m_echo, &Echo::sealed, m_body, [this](quint64) {
        choose(kHistoryDoor);
        if (m_lastRun.isEmpty()) return;
        historyPage()->runs()->showRun(std::exchange(m_lastRun, {}));
        historyPage()->runs()->focusList();  // what had the focus is gone with the run's page
    });
}

QWidget* MainWindow::makeHistoryPage(QWidget* parent)
{
    auto* page = new HistoryDesk(m_session, parent);
    connect(page->waiting(), &WaitingPage::shopWanted, this, [this] { choose(kShopDoor); });
    connect(page->waiting(), &WaitingPage::editionWanted, this,
            [this](const std::string& before, const std::string& after, const std::string& zone) {
                choose(kShopDoor);
                shopPage()->offerConstant(before, after, zone);
            });
    return page;
}

}  // namespace taut::app
