// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include <QAbstractButton>
#include <QApplication>
#include <QLayout>
#include <QLineEdit>

#include "app/pages/run/run_page.h"
#include "app/pages/run/run_view.h"
#include "app/pages/setup/choose_page.h"
#include "app/pages/setup/constant_card.h"
#include "app/pages/setup/definition_editor.h"
#include "app/pages/setup/once_card.h"
#include "app/pages/setup/setup_page.h"
#include "app/pages/setup/this_pc_page.h"
#include "app/pages/start/start_page.h"
#include "app/shell/carry_over.h"
#include "app/shell/leave_strip.h"
#include "app/shell/main_window.h"
#include "app/shell/page_shelf.h"
#include "app/shell/tongue.h"
#include "app/widgets/ask_panel.h"
#include "app/widgets/attachment_panel.h"
#include "app/widgets/roll_form.h"
#include "app/widgets/tag_panel.h"

namespace taut::app {

/// Whether something is under way that could not be taken over into a window made anew: a question that is open, a
/// secret that is half typed, a code that is shown once, a trial, a file that is being changed, a tag that was read, a
/// button that is held.
bool MainWindow::isEntering() const
{
    const StartPage* start = madeStartPage();
    if (m_session->busy() || (start != nullptr && start->onTrial()) || m_leave->isVisible()) return true;
    if (QApplication::activeModalWidget() != nullptr || QApplication::activePopupWidget() != nullptr) return true;
    const auto seen = [](const auto& widgets) {
        return std::any_of(widgets.begin(), widgets.end(), [](const QWidget* one) { return one->isVisible(); });
    };
    if (seen(m_body->findChildren<OnceCard*>()) || seen(m_body->findChildren<RollForm*>()) ||
        seen(m_body->findChildren<AttachmentPanel*>()) || seen(m_body->findChildren<ConstantCard*>()))
        return true;
    for (const DefinitionEditor* editor : m_body->findChildren<DefinitionEditor*>())
        if (editor->changed()) return true;
    for (const TagPanel* panel : m_body->findChildren<TagPanel*>())
        if (panel->isVisible() && panel->tag() != nullptr) return true;
    for (const AskPanel* panel : m_body->findChildren<AskPanel*>()) {
        if (!panel->isVisible()) continue;
        const QStringList typed = panel->typed();
        const bool empty = std::all_of(typed.begin(), typed.end(), [](const QString& one) { return one.isEmpty(); });
        // Whoever begins with the program may choose their language first: that question is asked again.
        if (!empty || !m_pages->shows(kChoosePage)) return true;
    }
    for (const QLineEdit* line : m_body->findChildren<QLineEdit*>())
        if (line->echoMode() != QLineEdit::Normal && !line->text().isEmpty()) return true;
    for (const QAbstractButton* button : m_body->findChildren<QAbstractButton*>())
        if (button->isDown()) return true;
    return false;
}

/// In another language, or other units, everything is made anew and what was entered is put back. What cannot be put
/// back is waited for.
void MainWindow::sayAnew()
{
    constexpr int kAgainMs = 400;
    if (!m_tongue->differs()) {
        m_waits = false;
        return;
    }
    if (isEntering()) {
        if (!m_waits && !m_session->busy())
            sayRefusal({"language.waits",
                        Severity::Note,
                        {},
                        Text("The window speaks otherwise as soon as what is being entered here is done."),
                        Text("Finish it, or leave it.")});
        m_waits = true;
        QTimer::singleShot(kAgainMs, this, &MainWindow::sayAnew);
        return;
    }
    m_waits = false;
    const int door = m_doors->checkedId();
    const bool choosing = m_pages->shows(kChoosePage);
    const std::vector<int> places = m_pages->places();
    const CarryOver entered(m_body);
    const RunPage* run = madeRunPage();
    const RunView::Kept kept = run != nullptr ? run->view()->kept() : RunView::Kept();
    const QString lastRun = m_lastRun;
    const ThisPcPage* thisPc = m_pages->shows(kShopPage) ? shopPage()->thisPc() : nullptr;
    const bool pc = thisPc != nullptr && thisPc->isVisible(), firstTime = pc && thisPc->isFirstTime();
    m_tongue->take();
    setUpdatesEnabled(false);
    delete m_body;
    build();
    for (const int place : places) m_pages->page(place);
    // What was told and not yet confirmed is told again.
    m_keepingSeen.erase(m_keepingSaid);
    m_keepingSaid.clear();
    if (!m_faults.empty()) tellOfFaults(std::vector(m_faults));
    if (RunPage* anew = madeRunPage()) anew->view()->take(kept);
    m_body->show();
    m_session->sayAgain();
    m_lastRun = lastRun;
    if (!choosing) choose(door);
    if (pc) shopPage()->showThisPc(firstTime);
    layout()->activate();
    entered.into(m_body);
    setUpdatesEnabled(true);
}

}  // namespace taut::app
