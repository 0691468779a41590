// SPDX-License-Identifier: GPL-3.0-or-later
// What leads to the history from other pages, and from it to the shop.
#include <utility>

#include <QButtonGroup>
#include <QStackedWidget>

#include "app/pages/history/history_desk.h"
#include "app/pages/history/waiting_page.h"
#include "app/pages/run/run_page.h"
#include "app/pages/setup/setup_page.h"
#include "app/pages/start/start_page.h"
#include "app/shell/main_window.h"

namespace taut::app {

void MainWindow::showInHistory(const QString& run)
{
    choose(kHistoryDoor);
    m_history->runs()->showRun(run);
}

void MainWindow::joinHistory()
{
    connect(m_session, &Session::sealed, m_body, [this](quint64) {
        choose(kHistoryDoor);
        if (m_lastRun.isEmpty()) return;
        m_history->runs()->showRun(std::exchange(m_lastRun, {}));
        m_history->runs()->focusList();  // what had the focus is gone with the run's page
    });
    connect(m_start, &StartPage::sheetScanned, this, [this](const QString& code) {
        choose(kHistoryDoor);
        m_history->runs()->openScanned(code);
    });
    connect(m_start, &StartPage::runWanted, this, &MainWindow::showInHistory);
    connect(m_run, &RunPage::sheetWanted, this, &MainWindow::showInHistory);
    connect(m_history->waiting(), &WaitingPage::shopWanted, this, [this] { choose(kShopDoor); });
    connect(m_history->waiting(), &WaitingPage::editionWanted, this,
            [this](const std::string& before, const std::string& after, const std::string& zone) {
                choose(kShopDoor);
                m_shop->offerConstant(before, after, zone);
            });
}

}  // namespace taut::app
