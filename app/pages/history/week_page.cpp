// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/history/week_page.h"

#include <utility>

#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

#include "app/print/report_pane.h"
#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/row_list.h"
#include "app/widgets/theme.h"
#include "core/base/clock.h"
#include "core/history/week.h"

namespace taut::app {

namespace {

constexpr int kWeeks = 104;
constexpr std::int64_t kWeekMs = 7 * kDayMs;

QString dayHereText(std::int64_t utcMs)
{
    // Without " 06:41".
    constexpr int kClock = 6;
    return momentHereText(utcMs).chopped(kClock);
}

}  // namespace

WeekPage::WeekPage(Session* session, QWidget* parent) : QWidget(parent), m_session(session), m_asker(session, this)
{
    m_press = new PickList(this);
    m_press->setObjectName(QStringLiteral("weekOf"));
    m_press->setMinimumHeight(sizes().control);
    named(m_press, tr("Press"));
    m_weeks = new RowList(this);
    m_weeks->setObjectName(QStringLiteral("weeks"));
    m_weeks->setAccessibleName(tr("Weeks"));
    m_paper = new ReportPane(tr("The week on one page"), this);
    auto* left = new QVBoxLayout;
    auto* label = withRole(new QLabel(tr("Press"), this), "soft");
    label->setBuddy(m_press);
    left->addWidget(label);
    left->addWidget(m_press);
    left->addWidget(m_weeks, 1);
    auto* all = new QHBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->addLayout(left, 1);
    all->addSpacing(sizes().gap);
    all->addWidget(m_paper, 3);
    connect(m_press, &QComboBox::currentIndexChanged, this, [this] {
        if (!m_filling) askWeek();
    });
    connect(m_weeks, &QListWidget::currentItemChanged, this, [this] {
        if (!m_filling) askWeek();
    });
    connect(&m_asker, &Asker::refused, this,
            [this](const Finding& finding) { m_paper->showNothing(words(finding, UnitSystem::Metric)); });
}

void WeekPage::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    fill();
}

void WeekPage::fill()
{
    if (m_session->reader() == nullptr) return m_paper->showNothing(tr("The logbook is not open in this window."));
    m_filling = true;
    const QVariant press = m_press->currentData();
    m_press->clear();
    if (const auto all = m_session->reader()->definitions("press"))
        for (const run::Source& source : *all) m_press->addItem(dataText(source.id), QString::fromStdString(source.id));
    m_press->setCurrentIndex(qMax(0, m_press->findData(press)));
    const Instant now = SystemClock().now();
    const QString before = m_weeks->chosen();
    m_weeks->clear();
    std::int64_t begin = history::weekBegin(now.utcMs, now.offsetMinutes);
    for (int week = 0; week < kWeeks; ++week, begin -= kWeekMs)
        m_weeks->add({QString::number(begin), dayHereText(begin), week == 0 ? tr("this week") : QString(),
                      tr("to %1").arg(dayHereText(begin + kWeekMs - 1)), MarkShape::None});
    if (!m_weeks->choose(before)) m_weeks->choose(m_weeks->first());
    m_filling = false;
    askWeek();
}

void WeekPage::askWeek()
{
    const std::string press = m_press->currentData().toString().toStdString();
    const std::int64_t begin = m_weeks->chosen().toLongLong();
    if (press.empty()) return m_paper->showNothing(tr("This logbook has no press yet."));
    const int offset = SystemClock().now().offsetMinutes;
    m_asker.ask(
        [this, press, begin, offset](const records::Reader& reader, const Asker::GoOn& goOn) -> std::function<void()> {
            history::Names names(reader);
            auto report = history::weekReport(reader, press, begin, names, offset, goOn);
            if (!report) return [this, why = report.error()] { m_paper->showNothing(words(why, UnitSystem::Metric)); };
            const QString file = QString::fromStdString(press + '-' + history::dayText(begin, offset));
            return [this, file, report = *std::move(report)] { m_paper->show(report, file); };
        });
}

}  // namespace taut::app
