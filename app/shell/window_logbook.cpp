// SPDX-License-Identifier: GPL-3.0-or-later
// The logbook that the window stands on: which one it is, and what works while none is open.
#include <QButtonGroup>
#include <QFileDialog>
#include <QFileInfo>
#include <QTimer>

#include "app/shell/echo.h"
#include "app/shell/main_window.h"
#include "app/shell/no_logbook_page.h"
#include "app/shell/page_shelf.h"
#include "app/shell/read_only_strip.h"
#include "app/shell/sign_in_strip.h"

namespace taut::app {

/// Another window that holds the logbook may be closed at any moment: this one then goes on by itself.
void MainWindow::takeOverWhenFree()
{
    constexpr int kAgainMs = 2000;
    auto* again = new QTimer(m_body);
    again->setSingleShot(true);
    again->setInterval(kAgainMs);
    connect(again, &QTimer::timeout, m_session, &Session::open);
    connect(m_echo, &Echo::refused, again, [this, again](const Finding& finding) {
        if (!m_session->isOpen() && finding.code == "logbook.pen_held") again->start();
    });
}

/// Without a logbook nothing else of the window works: it says why, and offers what can be done.
void MainWindow::offerLogbooks()
{
    connect(m_echo, &Echo::refused, m_body, [this](const Finding& finding) {
        if (m_session->isOpen()) return;
        m_readOnly->say(finding);
        if (m_session->onlyReads()) return;
        leaveOnly(false, false);
        noLogbookPage()->show(QString::fromStdString(m_session->options().logbook.string()), finding);
        m_pages->bring(kNoLogbookPage);
    });
    connect(m_echo, &Echo::opened, m_body, [this] {
        if (!m_session->isOpen()) return;
        leaveOnly(true, true);
        if (m_pages->shows(kNoLogbookPage)) choose(m_doors->checkedId());
    });
    connect(m_echo, &Echo::openedToRead, m_body, [this] {
        leaveOnly(false, true);
        m_readOnly->tell(m_session->notes());
        choose(kHistoryDoor);
    });
    connect(m_readOnly, &ReadOnlyStrip::again, m_session, &Session::open);
    connect(m_readOnly, &ReadOnlyStrip::another, this, &MainWindow::openAnother);
}

QWidget* MainWindow::makeNoLogbookPage(QWidget* parent)
{
    auto* page = new NoLogbookPage(parent);
    connect(page, &NoLogbookPage::look, m_session, &Session::openToRead);
    connect(page, &NoLogbookPage::again, m_session, &Session::open);
    connect(page, &NoLogbookPage::begin, this, [this] {
        const QString there = QString::fromStdString(m_session->options().logbook.string());
        const QString file =
            !QFileInfo::exists(there)
                ? there
                : QFileDialog::getSaveFileName(this, tr("Begin a new logbook"),
                                               QFileInfo(there).path() + QStringLiteral("/new.logbook"));
        if (!file.isEmpty()) m_session->beginLogbook(file.toStdString());
    });
    connect(page, &NoLogbookPage::another, this, &MainWindow::openAnother);
    connect(page, &NoLogbookPage::demo, this, &MainWindow::startDemo);
    return page;
}

void MainWindow::openAnother()
{
    const QString folder = QString::fromStdString(m_session->options().logbook.parent_path().string());
    const QString file = QFileDialog::getOpenFileName(this, tr("Open another logbook"), folder);
    if (!file.isEmpty()) m_session->openAt(file.toStdString());
}

/// What of the window works: everything, the history alone, or nothing.
void MainWindow::leaveOnly(bool open, bool read)
{
    for (QAbstractButton* door : m_doors->buttons())
        door->setEnabled(open || (read && door == m_doors->button(kHistoryDoor)));
    m_signIn->setEnabled(open);
    m_readOnly->setVisible(read && !open);
}

}  // namespace taut::app
