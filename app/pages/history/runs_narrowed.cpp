// SPDX-License-Identifier: GPL-3.0-or-later
// What narrows the list of runs, and how many are left.
#include <QFileDialog>
#include <QSaveFile>
#include <QVBoxLayout>

#include "app/pages/history/history_page.h"
#include "app/pages/history/narrowing.h"
#include "app/pages/history/report_pane.h"
#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/room.h"
#include "app/widgets/row_list.h"
#include "app/widgets/theme.h"
#include "core/records/listed.h"

namespace taut::app {

namespace {

/// Nobody counts further by eye, and counting is not to hold up the window.
constexpr std::int64_t kMostCounted = 10000;

}  // namespace

void HistoryPage::buildNarrowing()
{
    m_choose = worded(tr("Narrow down"), "", this);
    m_choose->setObjectName(QStringLiteral("narrow"));
    m_choose->setCheckable(true);
    m_choose->setMinimumHeight(sizes().control);
    m_count = withRole(new QLabel(this), "soft");
    m_count->setObjectName(QStringLiteral("count"));
    auto* box = new QWidget(this);
    auto* layout = new QVBoxLayout(box);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(4);
    m_person = new PickList(box);
    m_person->setObjectName(QStringLiteral("ofPerson"));
    named(m_person, tr("Whose run"));
    m_person->addItem(tr("Everybody"), QString());
    m_deviations = new StatementBox(tr("Only runs in which something outside was accepted"), box);
    m_deviations->setObjectName(QStringLiteral("onlyDeviations"));
    m_narrow = new Narrowing(Narrowing::Press::Any, box);
    m_saveList = worded(tr("Save this list"), "quiet", box);
    m_saveList->setObjectName(QStringLiteral("saveList"));
    const auto add = [&](const QString& name, PickList* list) {
        auto* label = withRole(new QLabel(name, box), "soft");
        label->setBuddy(list);
        list->setMinimumHeight(sizes().control);
        layout->addWidget(label);
        layout->addWidget(list);
    };
    layout->addWidget(m_narrow);
    add(tr("Whose run"), m_person);
    layout->addWidget(m_deviations);
    layout->addWidget(m_saveList);
    layout->addStretch(1);
    m_narrowRoom = new ScrollRoom(box, this);
    m_narrowRoom->hide();
    // The list, or what narrows it: on a small screen there is no room for both.
    connect(m_choose, &QPushButton::toggled, this, [this](bool chooses) {
        m_list->setVisible(!chooses);
        m_more->setVisible(!chooses && !m_next.empty());
        m_narrowRoom->setVisible(chooses);
        m_choose->setText(chooses ? tr("Back to the list") : tr("Narrow down"));
    });
}

records::RunQuery HistoryPage::query() const
{
    const records::CourseQuery course = m_narrow->query();
    records::RunQuery query;
    query.press = course.press;
    query.job = course.job;
    query.substrate = course.substrate;
    query.sinceMs = course.sinceMs;
    query.text = m_filter->text().trimmed().toStdString();
    query.present = m_which->currentData().toString().toStdString();
    query.person = m_person->currentData().toString().toStdString();
    query.withDeviations = m_deviations->isChecked();
    return query;
}

void HistoryPage::tellCount()
{
    m_count->clear();
    if (m_session->reader() == nullptr) return;
    const auto many = m_session->reader()->count(query(), kMostCounted);
    if (!many) return;
    m_count->setText(*many >= kMostCounted ? tr("more than %1 runs").arg(kMostCounted)
                     : *many == 1          ? tr("1 run")
                                           : tr("%1 runs").arg(*many));
}

void HistoryPage::saveList()
{
    if (m_session->reader() == nullptr) return;
    const QString file = QFileDialog::getSaveFileName(
        this, tr("Save the list of runs"), tr("runs") + QStringLiteral(".csv"), tr("Tables (*.csv);;Data (*.json)"));
    if (file.isEmpty()) return;
    const auto text = file.endsWith(QStringLiteral(".json"), Qt::CaseInsensitive)
                          ? records::runsJson(*m_session->reader(), query())
                          : records::runsCsv(*m_session->reader(), query());
    if (!text) return say(words(text.error(), UnitSystem::Metric));
    QSaveFile out(file);
    const bool written =
        out.open(QIODevice::WriteOnly) &&
        out.write(text->data(), static_cast<qint64>(text->size())) == static_cast<qint64>(text->size()) && out.commit();
    say(written ? tr("Saved: %1").arg(dataText(file))
                : tr("The list could not be written to %1: %2").arg(dataText(file), out.errorString()));
}

}  // namespace taut::app
