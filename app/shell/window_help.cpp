// SPDX-License-Identifier: GPL-3.0-or-later
#include <utility>

#include <QButtonGroup>
#include <QShortcut>

#include "app/pages/history/history_desk.h"
#include "app/pages/setup/setup_page.h"
#include "app/shell/help_view.h"
#include "app/shell/main_window.h"
#include "app/shell/no_logbook_page.h"
#include "app/shell/page_shelf.h"
#include "app/shell/sign_in_strip.h"
#include "app/shell/tour.h"
#include "app/widgets/theme.h"

namespace taut::app {

void MainWindow::makeHelp()
{
    m_helpButton = worded(tr("Help"), "quiet", m_body);
    m_helpButton->setObjectName(QStringLiteral("help"));
    named(m_helpButton, tr("Help for this page (F1)"));
    m_helpButton->setMinimumHeight(sizes().control);
    // As of the keys: the focus stays where somebody works.
    m_helpButton->setFocusPolicy(Qt::NoFocus);
    auto* key = new QShortcut(QKeySequence::HelpContents, m_body);
    key->setAutoRepeat(false);
    connect(key, &QShortcut::activated, this, &MainWindow::openHelp);
    connect(m_helpButton, &QPushButton::clicked, this, &MainWindow::openHelp);
}

QWidget* MainWindow::makeHelpPage(QWidget* parent)
{
    auto* page = new HelpView(m_session->options().resources, parent);
    connect(page, &HelpView::left, this, &MainWindow::leaveHelp);
    connect(page, &HelpView::tourWanted, this, &MainWindow::lookRound);
    return page;
}

QString MainWindow::helpOfPage()
{
    if (m_pages->shows(kRunPage)) return QStringLiteral("run");
    if (m_pages->shows(kHistoryPage)) return historyPage()->helpPage();
    if (m_pages->shows(kShopPage)) return shopPage()->helpPage();
    if (m_pages->shows(kChoosePage))
        return m_session->people().empty() ? QStringLiteral("first_start") : QStringLiteral("setup");
    if (m_pages->shows(kPracticePage)) return QStringLiteral("practice");
    if (!m_pages->shows(kNoLogbookPage)) return QStringLiteral("start");
    return noLogbookPage()->isMissing() ? QStringLiteral("first_start") : QStringLiteral("pc_down");
}

void MainWindow::openHelp()
{
    if (m_pages->shows(kHelpPage)) return leaveHelp();
    m_focusBeforeHelp = focusWidget();
    m_beforeHelp = m_pages->currentWidget();
    const QString page = helpOfPage();
    m_pages->bring(kHelpPage);
    helpPage()->open(page);
}

/// Back to the page, and to what had the focus on it. A run may have begun or ended meanwhile.
void MainWindow::leaveHelp()
{
    if (!m_pages->shows(kHelpPage)) return;
    if (m_beforeHelp && (m_beforeHelp == m_pages->made(kStartPage) || m_beforeHelp == m_pages->made(kRunPage)))
        m_pages->bring(m_session->run() != nullptr ? kRunPage : kStartPage);
    else if (m_beforeHelp)
        m_pages->setCurrentWidget(m_beforeHelp);
    else
        choose(m_doors->checkedId());  // the window was made anew meanwhile, in another language
    if (m_focusBeforeHelp && m_focusBeforeHelp->isVisible()) m_focusBeforeHelp->setFocus();
}

/// A first look round: what the window has, and what a run looks like.
void MainWindow::lookRound()
{
    leaveHelp();
    const auto door = [this](Door one) { return QPointer<QWidget>(m_doors->button(one)); };
    m_tour->begin(
        {{nullptr,
          tr("Tautweb leads you from a cold press to the point where ink can go on. It moves nothing and stops "
             "nothing: the press manual and local rules come first."),
          {}},
         {door(kRunDoor), tr("Run: choose what is to run, see what follows from it, and go from step to step."), {}},
         {door(kHistoryDoor), tr("History: what was set, read and signed, each with its sheet to print."), {}},
         {door(kShopDoor), tr("Shop: people, presses and jobs, and the copies of the logbook."), {}},
         {door(kPracticeDoor), tr("Practice: a press that answers as a real one does, and nothing of it counts."), {}},
         {m_signIn, tr("Sign in here: every answer is somebody's. Lock the screen when you walk away."), {}},
         {nullptr,
          tr("The taut line is the run at a glance: slack is not begun, drawn tight is done, parted is held up."),
          QStringLiteral("taut-line")},
         {nullptr,
          tr("A card is one step: where to stand, what to do, and one answer. A reading is judged while you type."),
          QStringLiteral("card")},
         {m_helpButton, tr("Help, or F1, tells about the page you are on. This look round is there, too."), {}}});
}

}  // namespace taut::app
