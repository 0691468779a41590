// SPDX-License-Identifier: GPL-3.0-or-later
// Which pages the window has, how each is made when it is first wanted, and what leads from it to others.
#include <QButtonGroup>
#include <QTimer>

#include "app/pages/history/history_desk.h"
#include "app/pages/practice/practice_page.h"
#include "app/pages/run/run_page.h"
#include "app/pages/setup/choose_page.h"
#include "app/pages/setup/setup_page.h"
#include "app/pages/start/start_page.h"
#include "app/shell/echo.h"
#include "app/shell/help_view.h"
#include "app/shell/main_window.h"
#include "app/shell/no_logbook_page.h"
#include "app/shell/page_shelf.h"
#include "app/widgets/controls.h"

namespace taut::app {

void MainWindow::keepPages()
{
    for (const auto& [place, make] :
         {std::pair(kStartPage, &MainWindow::makeStartPage), std::pair(kRunPage, &MainWindow::makeRunPage),
          std::pair(kHistoryPage, &MainWindow::makeHistoryPage), std::pair(kShopPage, &MainWindow::makeShopPage),
          std::pair(kChoosePage, &MainWindow::makeChoosePage),
          std::pair(kNoLogbookPage, &MainWindow::makeNoLogbookPage), std::pair(kHelpPage, &MainWindow::makeHelpPage),
          std::pair(kPracticePage, &MainWindow::makePracticePage)})
        m_pages->keep(place, [this, make = make](QWidget* parent) { return (this->*make)(parent); });
    connect(m_pages, &PageShelf::pageMade, m_body, [this](QWidget* page) {
        // The Tab key leads from who signs in through the page to the doors.
        tabsBefore(m_doors->button(kRunDoor), page);
        m_echo->goLast();
    });
}

/// The window is painted before anything stands in it: whoever starts it sees at once that it comes.
void MainWindow::paintEvent(QPaintEvent* event)
{
    QWidget::paintEvent(event);
    if (!m_begun) QTimer::singleShot(0, this, &MainWindow::begin);
}

/// The logbook is opened on the session's thread while the page is made that will show it.
void MainWindow::begin()
{
    if (std::exchange(m_begun, true)) return;
    m_session->open();
    m_pages->bring(kStartPage);
}

QWidget* MainWindow::makeStartPage(QWidget* parent)
{
    auto* page = new StartPage(m_session, parent);
    connect(page, &StartPage::tourWanted, this, &MainWindow::lookRound);
    connect(page, &StartPage::runWanted, this, &MainWindow::showInHistory);
    connect(page, &StartPage::sheetScanned, this, [this](const QString& code) {
        choose(kHistoryDoor);
        historyPage()->runs()->openScanned(code);
    });
    return page;
}

QWidget* MainWindow::makeRunPage(QWidget* parent)
{
    auto* page = new RunPage(m_session, parent);
    connect(page, &RunPage::sheetWanted, this, &MainWindow::showInHistory);
    connect(page, &RunPage::constantWanted, this, [this](const QString& press, const QString& zone) {
        choose(kShopDoor);
        shopPage()->findConstant(press.toStdString(), zone.toStdString());
    });
    return page;
}

QWidget* MainWindow::makeChoosePage(QWidget* parent)
{
    auto* page = new ChoosePage(m_session, parent);
    connect(page, &ChoosePage::left, this, [this] {
        if (!m_session->people().empty()) showChoosing(false);
    });
    return page;
}

HistoryDesk* MainWindow::historyPage() { return static_cast<HistoryDesk*>(m_pages->page(kHistoryPage)); }

SetupPage* MainWindow::shopPage() { return static_cast<SetupPage*>(m_pages->page(kShopPage)); }

ChoosePage* MainWindow::choosePage() { return static_cast<ChoosePage*>(m_pages->page(kChoosePage)); }

NoLogbookPage* MainWindow::noLogbookPage() { return static_cast<NoLogbookPage*>(m_pages->page(kNoLogbookPage)); }

HelpView* MainWindow::helpPage() { return static_cast<HelpView*>(m_pages->page(kHelpPage)); }

PracticePage* MainWindow::practicePage() { return static_cast<PracticePage*>(m_pages->page(kPracticePage)); }

const StartPage* MainWindow::madeStartPage() const { return static_cast<const StartPage*>(m_pages->made(kStartPage)); }

RunPage* MainWindow::madeRunPage() const { return static_cast<RunPage*>(m_pages->made(kRunPage)); }

}  // namespace taut::app
