// SPDX-License-Identifier: GPL-3.0-or-later
#include <utility>

#include <QButtonGroup>
#include <QShortcut>

#include "app/pages/history/history_desk.h"
#include "app/pages/practice/practice_page.h"
#include "app/pages/run/run_page.h"
#include "app/pages/setup/choose_page.h"
#include "app/pages/setup/setup_page.h"
#include "app/pages/start/start_page.h"
#include "app/seams/kept_settings.h"
#include "app/shell/help_view.h"
#include "app/shell/main_window.h"
#include "app/shell/no_logbook_page.h"
#include "app/shell/sign_in_strip.h"
#include "app/shell/tour.h"
#include "app/widgets/theme.h"

namespace taut::app {

void MainWindow::makeHelp()
{
    m_help = new HelpView(m_session->options().resources, m_body);
    m_pages->addWidget(m_help);
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
    connect(m_help, &HelpView::left, this, &MainWindow::leaveHelp);
    connect(m_help, &HelpView::tourWanted, this, &MainWindow::lookRound);
    connect(m_start, &StartPage::tourWanted, this, &MainWindow::lookRound);
}

QString MainWindow::helpOfPage() const
{
    const QWidget* page = m_pages->currentWidget();
    if (page == m_run) return QStringLiteral("run");
    if (page == m_history) return m_history->helpPage();
    if (page == m_shop) return m_shop->helpPage();
    if (page == m_choose) return m_session->people().empty() ? QStringLiteral("first_start") : QStringLiteral("setup");
    if (page == m_practicePage) return QStringLiteral("practice");
    if (page != m_noLogbook) return QStringLiteral("start");
    return m_noLogbook->isMissing() ? QStringLiteral("first_start") : QStringLiteral("pc_down");
}

void MainWindow::openHelp()
{
    if (m_pages->currentWidget() == m_help) return leaveHelp();
    m_focusBeforeHelp = focusWidget();
    m_beforeHelp = m_pages->currentWidget();
    const QString page = helpOfPage();
    m_pages->setCurrentWidget(m_help);
    m_help->open(page);
}

/// Back to the page, and to what had the focus on it. A run may have begun or ended meanwhile.
void MainWindow::leaveHelp()
{
    if (m_pages->currentWidget() != m_help) return;
    if (m_beforeHelp == m_start || m_beforeHelp == m_run)
        m_pages->setCurrentWidget(m_session->run() != nullptr ? static_cast<QWidget*>(m_run) : m_start);
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
