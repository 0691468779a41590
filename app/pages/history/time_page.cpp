// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/history/time_page.h"

#include <utility>

#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

#include "app/pages/history/narrowing.h"
#include "app/print/report_pane.h"
#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/room.h"
#include "app/widgets/theme.h"
#include "core/base/clock.h"
#include "core/history/open_steps.h"
#include "core/history/times_report.h"

namespace taut::app {

TimePage::TimePage(Session* session, QWidget* parent) : QWidget(parent), m_session(session), m_asker(session, this)
{
    m_narrow = new Narrowing(Narrowing::Press::Any, Narrowing::Time::Asked, this);
    m_group = new PickList(this);
    m_group->setObjectName(QStringLiteral("group"));
    m_group->setMinimumHeight(sizes().control);
    named(m_group, tr("Put together by"));
    for (const auto& [name, group] :
         {std::pair(tr("Press"), history::Group::Press), std::pair(tr("Kind of run"), history::Group::RunKind),
          std::pair(tr("Shift"), history::Group::Shift), std::pair(tr("Job"), history::Group::Job),
          std::pair(tr("Substrate"), history::Group::Substrate)})
        m_group->addItem(name, static_cast<int>(group));
    auto* label = withRole(new QLabel(tr("Put together by"), this), "soft");
    label->setBuddy(m_group);
    m_paper = new ReportPane(tr("The sheet of times and losses"), this);

    auto* box = new QWidget(this);
    auto* left = new QVBoxLayout(box);
    left->setContentsMargins(0, 0, 0, 0);
    left->addWidget(m_narrow);
    left->addWidget(label);
    left->addWidget(m_group);
    left->addStretch(1);
    auto* all = new QHBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->addWidget(new ScrollRoom(box, this), 1);
    all->addSpacing(sizes().gap);
    all->addWidget(m_paper, 3);

    connect(m_narrow, &Narrowing::changed, this, &TimePage::refill);
    connect(m_group, &QComboBox::currentIndexChanged, this, &TimePage::refill);
    connect(&m_asker, &Asker::refused, this,
            [this](const Finding& finding) { m_paper->showNothing(words(finding, UnitSystem::Metric)); });
}

void TimePage::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    if (m_session->reader() != nullptr) m_narrow->fill(*m_session->reader());
    refill();
}

void TimePage::refill()
{
    if (m_session->reader() == nullptr) return m_paper->showNothing(tr("The logbook is not open in this window."));
    const records::CourseQuery query = m_narrow->query();
    const auto group = static_cast<history::Group>(m_group->currentData().toInt());
    const int offset = SystemClock().now().offsetMinutes;
    if (!m_paper->report()) m_paper->showNothing(tr("It is being worked out."));
    m_asker.ask(
        [this, query, group, offset](const records::Reader& reader, const Asker::GoOn& goOn) -> std::function<void()> {
            const auto refused = [this](const Finding& why) {
                return [this, why] { m_paper->showNothing(words(why, UnitSystem::Metric)); };
            };
            auto times = history::timesOf(reader, query, goOn);
            if (!times) return refused(times.error());
            if (const auto opened = history::addOpenSteps(reader, *times, goOn); !opened)
                return refused(opened.error());
            const auto ratios = history::setUpRatiosOf(reader, *times);
            if (!ratios) return refused(ratios.error());
            history::Names names(reader);
            auto report = history::timesReport(*times, query, group, names, offset, *ratios);
            return [this, report = std::move(report)] { m_paper->show(report, tr("times")); };
        });
}

}  // namespace taut::app
