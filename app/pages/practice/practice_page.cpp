// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/practice/practice_page.h"

#include <QLabel>
#include <QPushButton>
#include <QRandomGenerator>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "app/pages/practice/after_lesson.h"
#include "app/pages/practice/choose_lesson.h"
#include "app/pages/practice/live_page.h"
#include "app/pages/practice/scenario_form.h"
#include "app/pages/practice/training_page.h"
#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/theme.h"

namespace taut::app {

PracticePage::PracticePage(Session* shop, PracticeSession* practice, QWidget* runPage, QWidget* sheet,
                           ReportPane* attempt, QWidget* parent)
    : QWidget(parent),
      m_shop(shop),
      m_practice(practice)
{
    m_stack = new QStackedWidget(this);
    m_closed = buildClosed();
    m_choose = new ChooseLesson(shop, m_stack);
    m_live = new LivePage(practice, runPage, m_stack);
    m_sheetPage = new QWidget(m_stack);
    auto* column = new QVBoxLayout(m_sheetPage);
    column->setContentsMargins(0, 0, 0, 0);
    QPushButton* leaveSheet = worded(tr("&Back to the lesson"), "", m_sheetPage);
    leaveSheet->setObjectName(QStringLiteral("leaveSheet"));
    column->addWidget(leaveSheet, 0, Qt::AlignLeft);
    sheet->setParent(m_sheetPage);
    column->addWidget(sheet, 1);
    m_after = new AfterLesson(attempt, m_stack);
    m_build = new ScenarioForm(shop, m_stack);
    for (QWidget* one : std::initializer_list<QWidget*>{m_closed, m_choose, m_live, m_sheetPage, m_after, m_build})
        m_stack->addWidget(one);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_stack);
    connect(leaveSheet, &QPushButton::clicked, this, [this] { m_stack->setCurrentWidget(m_live); });
    connect(m_choose, &ChooseLesson::begin, this, &PracticePage::begin);
    connect(m_choose, &ChooseLesson::buildWanted, this, [this] {
        m_build->show(m_choose->chosen());
        m_stack->setCurrentWidget(m_build);
        m_build->first()->setFocus();
    });
    const auto back = [this] {
        m_choose->refresh();
        m_stack->setCurrentWidget(m_choose);
        m_choose->first()->setFocus();
    };
    connect(m_build, &ScenarioForm::begin, this, &PracticePage::begin);
    connect(m_build, &ScenarioForm::left, this, back);
    connect(m_build, &ScenarioForm::saved, this, [this, back](const QString& file) {
        m_choose->open(file.toStdString());
        back();
    });
    connect(m_live, &LivePage::stepWanted, this, &PracticePage::stepWanted);
    connect(m_live, &LivePage::left, practice, &PracticeSession::end);
    connect(m_live, &LivePage::again, this, &PracticePage::again);
    connect(practice, &PracticeSession::begun, this, [this] {
        m_live->begin();
        m_stack->setCurrentWidget(m_live);
    });
    connect(practice, &PracticeSession::ended, this, &PracticePage::ended);
    connect(m_after, &AfterLesson::again, this, &PracticePage::again);
    connect(m_after, &AfterLesson::left, this, [this, back] {
        if (m_fromRecord) return openTraining();
        back();
    });
    connect(practice, &PracticeSession::refused, this, &PracticePage::refuse);
    connect(shop, &Session::actorChanged, this, &PracticePage::lookWho);
    if (practice->lesson() != nullptr) m_live->begin();
}

QWidget* PracticePage::buildClosed()
{
    auto* page = new QWidget(m_stack);
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(0, 20, 0, 0);
    column->addWidget(wrapped(tr("The practice press is closed"), "head", page));
    m_why = wrapped({}, "strong", page);
    m_why->setObjectName(QStringLiteral("whyClosed"));
    column->addWidget(m_why);
    m_toRun = worded(tr("To the &run"), "main", page);
    m_toRun->setObjectName(QStringLiteral("toOpenRun"));
    column->addWidget(m_toRun, 0, Qt::AlignLeft);
    column->addStretch(1);
    connect(m_toRun, &QPushButton::clicked, this, &PracticePage::runWanted);
    return page;
}

bool PracticePage::enter()
{
    const std::vector<std::string> open = m_shop->openRuns();
    const bool closed = m_shop->run() != nullptr || !open.empty();
    if (closed) {
        const std::string id = m_shop->run() != nullptr ? m_shop->run()->id() : open.front();
        m_why->setText(
            tr("Run %1 is open at this PC, on a real press, and nobody is to mistake one for the other. Sign it "
               "off or abandon it; then the practice press opens.")
                .arg(dataText(id)));
        m_stack->setCurrentWidget(m_closed);
        return false;
    }
    if (m_practice->lesson() == nullptr) {
        if (m_stack->currentWidget() == m_after) return true;
        m_choose->refresh();
        m_stack->setCurrentWidget(m_choose);
    } else if (m_stack->currentWidget() == m_closed || m_stack->currentWidget() == m_choose) {
        m_stack->setCurrentWidget(m_live);
    }
    return true;
}

void PracticePage::focusFirst()
{
    if (m_stack->currentWidget() == m_closed) m_toRun->setFocus();
    if (m_stack->currentWidget() == m_choose) m_choose->first()->setFocus();
}

void PracticePage::showSheet()
{
    m_practice->setPace(Pace::Stopped);
    m_stack->setCurrentWidget(m_sheetPage);
}

void PracticePage::setTraining(TrainingPage* page)
{
    m_training = page;
    m_stack->addWidget(page);
    connect(m_choose, &ChooseLesson::trainingWanted, this, &PracticePage::openTraining);
    connect(m_training, &TrainingPage::attemptWanted, this, &PracticePage::lookAt);
    connect(m_training, &TrainingPage::left, this, [this] {
        m_choose->refresh();
        m_stack->setCurrentWidget(m_choose);
        m_choose->first()->setFocus();
    });
}

void PracticePage::openTraining()
{
    m_training->refresh();
    m_stack->setCurrentWidget(m_training);
    m_training->first()->setFocus();
}

void PracticePage::begin(const practice::Scenario& scenario, const QString& text)
{
    if (!m_shop->actor()) return;
    const auto lesson = lessonOf(scenario, text.toStdString(), *m_shop);
    if (!lesson) return refuse(lesson.error());
    m_practice->begin(*lesson, {m_shop->actor()->id().value, m_shop->actor()->name()});
}

/// What it came to is seen first, where there is anything to be seen, by whoever practised.
void PracticePage::ended(bool attempted)
{
    m_choose->refresh();
    const auto& actor = m_shop->actor();
    if (!attempted || !actor || actor->id().value != m_practice->last()->who.id)
        return m_stack->setCurrentWidget(m_choose);
    m_shownTo = m_practice->last()->who.id;
    m_fromRecord = false;
    m_after->show(*m_practice->last(), m_practice->lastLesson()->sources, true);
    m_stack->setCurrentWidget(m_after);
    m_after->first()->setFocus();
}

/// An attempt out of the training record.
void PracticePage::lookAt(const practice::Attempt& attempt)
{
    Findings notes;
    const auto scenario = practice::readScenario(attempt.scenario.text, attempt.scenario.id, notes);
    if (!scenario) return refuse(scenario.error());
    const auto lesson = lessonOf(*scenario, attempt.scenario.text, *m_shop);
    if (!lesson) return refuse(lesson.error());
    m_shownTo = m_shop->actor() ? m_shop->actor()->id().value : std::string();
    m_fromRecord = true;
    m_after->show(attempt, lesson->sources, false);
    m_stack->setCurrentWidget(m_after);
    m_after->first()->setFocus();
}

void PracticePage::again(bool sameSeed)
{
    const Lesson* lesson = m_practice->lesson() != nullptr ? m_practice->lesson() : m_practice->lastLesson();
    if (lesson == nullptr) return;
    practice::Scenario scenario = lesson->scenario;
    const QString text = QString::fromStdString(lesson->file.text);
    constexpr std::uint32_t kMostSeed = 1'000'000'000;
    if (!sameSeed) scenario.seed = QRandomGenerator::global()->bounded(kMostSeed);
    begin(scenario, text);
}

void PracticePage::refuse(const Finding& finding)
{
    m_stack->setCurrentWidget(m_choose);
    m_choose->refuse(finding);
}

/// A lesson is one person's: whoever locks the screen finds it standing still, and another begins their own.
void PracticePage::lookWho()
{
    m_practice->setPace(Pace::Stopped);
    const auto& actor = m_shop->actor();
    m_live->setEnabled(actor.has_value());
    // What an attempt came to is for whom it was shown to.
    const std::string who = actor ? actor->id().value : std::string();
    if (m_stack->currentWidget() == m_after && who != m_shownTo) {
        m_choose->refresh();
        m_stack->setCurrentWidget(m_choose);
    }
    if (actor && m_practice->lesson() != nullptr && actor->id().value != m_practice->person().id) m_practice->end();
}

/// Nobody looks: time stands still.
void PracticePage::hideEvent(QHideEvent* event)
{
    m_practice->setPace(Pace::Stopped);
    QWidget::hideEvent(event);
}

}  // namespace taut::app
