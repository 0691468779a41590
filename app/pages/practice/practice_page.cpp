// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/practice/practice_page.h"

#include <QLabel>
#include <QPushButton>
#include <QRandomGenerator>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "app/pages/practice/choose_lesson.h"
#include "app/pages/practice/live_page.h"
#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/theme.h"

namespace taut::app {

PracticePage::PracticePage(Session* shop, PracticeSession* practice, QWidget* runPage, QWidget* sheet, QWidget* parent)
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
    QPushButton* back = worded(tr("&Back to the lesson"), "", m_sheetPage);
    back->setObjectName(QStringLiteral("leaveSheet"));
    column->addWidget(back, 0, Qt::AlignLeft);
    sheet->setParent(m_sheetPage);
    column->addWidget(sheet, 1);
    for (QWidget* one : std::initializer_list<QWidget*>{m_closed, m_choose, m_live, m_sheetPage})
        m_stack->addWidget(one);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_stack);
    connect(back, &QPushButton::clicked, this, [this] { m_stack->setCurrentWidget(m_live); });
    connect(m_choose, &ChooseLesson::begin, this, &PracticePage::begin);
    connect(m_live, &LivePage::stepWanted, this, &PracticePage::stepWanted);
    connect(m_live, &LivePage::left, practice, &PracticeSession::end);
    connect(m_live, &LivePage::again, this, &PracticePage::again);
    connect(practice, &PracticeSession::begun, this, [this] {
        m_live->begin();
        m_stack->setCurrentWidget(m_live);
    });
    connect(practice, &PracticeSession::ended, this, [this] {
        m_choose->refresh();
        m_stack->setCurrentWidget(m_choose);
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

void PracticePage::begin(const practice::Scenario& scenario)
{
    if (!m_shop->actor()) return;
    const auto lesson = lessonOf(scenario, *m_shop);
    if (!lesson) return refuse(lesson.error());
    m_practice->begin(*lesson, m_shop->actor()->name());
}

void PracticePage::again(bool sameSeed)
{
    if (m_practice->lesson() == nullptr) return;
    practice::Scenario scenario = m_practice->lesson()->scenario;
    constexpr std::uint32_t kMostSeed = 1'000'000'000;
    if (!sameSeed) scenario.seed = QRandomGenerator::global()->bounded(kMostSeed);
    begin(scenario);
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
    if (actor && m_practice->lesson() != nullptr && actor->name() != m_practice->person()) m_practice->end();
}

/// Nobody looks: time stands still.
void PracticePage::hideEvent(QHideEvent* event)
{
    m_practice->setPace(Pace::Stopped);
    QWidget::hideEvent(event);
}

}  // namespace taut::app
