// SPDX-License-Identifier: GPL-3.0-or-later
// The door to the practice press. Behind it nothing of the shop's logbook is written in: its page has a session of its
// own, on a file of its own kind.
#include "app/pages/practice/live_page.h"
#include "app/pages/practice/practice_page.h"
#include "app/pages/practice/training_page.h"
#include "app/pages/run/run_page.h"
#include "app/pages/run/run_view.h"
#include "app/print/report_pane.h"
#include "app/shell/main_window.h"
#include "app/shell/page_shelf.h"
#include "app/shell/practice_frame.h"
#include "app/text/words.h"
#include "app/widgets/theme.h"
#include "core/records/sheet.h"

namespace taut::app {

QWidget* MainWindow::makePracticePage(QWidget* parent)
{
    if (m_practice == nullptr)
        m_practice = new PracticeSession(usualPracticeLogbook(), m_session->options().resources, this);
    auto* run = new RunPage(m_practice->runs(), parent);
    auto* sheet = new ReportPane(tr("The sheet"), parent);
    auto* attempt = new ReportPane(tr("What the lesson came to"), parent);
    auto* page = new PracticePage(m_session, m_practice, run, sheet, attempt, parent);
    // Whoever tells by heart is shown less of each step; help brings it back.
    const auto veil = [this, run] {
        if (m_practice->played() == nullptr) return run->view()->setVeil({}, true);
        run->view()->setVeil(
            [this](StepContent& content) { veilStep(content, m_practice->helpFor(content.step.id.value)); },
            practice::helpIn(m_practice->played()->scenario().mode).say);
    };
    connect(m_practice, &PracticeSession::begun, run, veil);
    connect(m_practice, &PracticeSession::helped, run, veil);
    connect(m_practice, &PracticeSession::ended, run, veil);
    veil();
    page->live()->setShown([run] { return run->view()->shownStep().value; });
    auto* paper = new ReportPane(tr("The training record"), page);
    auto* training = new TrainingPage(m_session, m_practice, paper, page);
    page->setTraining(training);
    connect(training, &TrainingPage::reportMade, paper,
            [paper](const report::Report& report, const QString& file) { paper->show(report, file); });
    connect(training, &TrainingPage::nothingToShow, paper, &ReportPane::showNothing);
    connect(page, &PracticePage::stepWanted, run,
            [run](const QString& step) { run->view()->showStep(procedure::StepId{step.toStdString()}); });
    connect(page, &PracticePage::runWanted, this, [this] { choose(kRunDoor); });
    connect(run, &RunPage::sheetWanted, page, [this, page, sheet](const QString& id) {
        const records::Reader* reader = m_practice->runs()->reader();
        if (reader == nullptr) return;
        auto report = records::sheetOf(*reader, id.toStdString());
        if (report)
            sheet->show(*std::move(report), id);
        else
            sheet->showNothing(words(report.error(), UnitSystem::Metric));
        page->showSheet();
    });
    return page;
}

void MainWindow::showPracticeDoor()
{
    PracticePage* page = practicePage();
    setPractising(page->enter());
    m_pages->bring(kPracticePage);
    page->focusFirst();
}

/// The whole window looks otherwise while somebody practises.
void MainWindow::setPractising(bool practises)
{
    m_frame->setHatched(practises);
    m_band->setVisible(practises);
    setPractisingLook(practises);
}

}  // namespace taut::app
