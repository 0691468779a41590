// SPDX-License-Identifier: GPL-3.0-or-later
// What narrows the list of runs, and how many are left.
#include <QFileDialog>
#include <QSaveFile>
#include <QVBoxLayout>

#include "app/pages/history/history_page.h"
#include "app/pages/history/list_setup.h"
#include "app/pages/history/run_line.h"
#include "app/print/report_pane.h"
#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/room.h"
#include "app/widgets/theme.h"
#include "core/records/listed.h"

namespace taut::app {

namespace {

/// Nobody counts further by eye, and counting is not to hold up the window.
constexpr std::int64_t kMostCounted = 10000;

/// In the list of kept searches: no search of that name can be.
const QString kEveryRun = QStringLiteral("\n");

}  // namespace

void HistoryPage::buildSetup()
{
    m_choose = worded(tr("Set up the list"), "", this);
    m_choose->setObjectName(QStringLiteral("narrow"));
    m_choose->setCheckable(true);
    m_choose->setMinimumHeight(sizes().control);
    m_count = withRole(new QLabel(this), "soft");
    m_count->setObjectName(QStringLiteral("count"));
    m_searches = new PickList(this);
    m_searches->setObjectName(QStringLiteral("searches"));
    m_searches->setMinimumHeight(sizes().control);
    named(m_searches, tr("Kept searches"));
    m_setup = new ListSetup(m_session, this);
    m_setupRoom = new ScrollRoom(m_setup, this);
    m_setupRoom->hide();
    connect(m_setup, &ListSetup::changed, &m_soon, qOverload<>(&QTimer::start));
    connect(m_setup, &ListSetup::lineChanged, this, &HistoryPage::sayLines);
    connect(m_setup, &ListSetup::saveWanted, this, &HistoryPage::saveList);
    connect(m_setup, &ListSetup::keepWanted, this, &HistoryPage::keepSearchAs);
    connect(m_setup, &ListSetup::forgetWanted, this, [this](const QString& name) {
        forgetSearch(whoChooses(*m_session), name);
        fillSearches();
        say(tr("The search %1 is forgotten.").arg(name));
    });
    connect(m_searches, &QComboBox::activated, this, [this] { chooseSearch(m_searches->currentData().toString()); });
    // Whoever comes finds the list as they left it.
    connect(m_session, &Session::actorChanged, this, [this] {
        m_setup->fill();
        fillSearches();
        sayLines();
    });
    // The list, or what narrows it: on a small screen there is no room for both.
    connect(m_choose, &QPushButton::toggled, this, [this](bool chooses) {
        m_list->setVisible(!chooses);
        m_more->setVisible(!chooses && !m_next.empty());
        m_setupRoom->setVisible(chooses);
        m_choose->setText(chooses ? tr("Back to the list") : tr("Set up the list"));
    });
}

Search HistoryPage::search() const
{
    Search search = m_setup->search();
    search.text = m_filter->text().trimmed();
    search.present = m_which->currentData().toString();
    return search;
}

records::RunQuery HistoryPage::query() const
{
    const Search search = this->search();
    const records::CourseQuery course = m_setup->course();
    records::RunQuery query;
    query.press = course.press;
    query.job = course.job;
    query.substrate = course.substrate;
    query.sinceMs = course.sinceMs;
    query.untilMs = course.untilMs;
    query.text = search.text.toStdString();
    if (search.present.startsWith(kOfState))
        query.state = search.present.mid(kOfState.size()).toStdString();
    else
        query.present = search.present.toStdString();
    query.person = search.person.toStdString();
    query.withDeviations = search.withDeviations;
    return query;
}

void HistoryPage::fillSearches()
{
    const QString before = m_searches->currentData().toString();
    m_searches->clear();
    m_searches->addItem(tr("Kept searches"), QString());
    for (const KeptSearch& kept : keptSearches(whoChooses(*m_session))) m_searches->addItem(kept.name, kept.name);
    m_searches->addItem(tr("Every run again"), kEveryRun);
    m_searches->setCurrentIndex(qMax(0, m_searches->findData(before)));
    m_searches->setVisible(m_searches->count() > 2);
}

/// The name of a search stands above the list only as long as the list is what that search asks.
void HistoryPage::settleSearches()
{
    const Search now = search();
    QString name;
    for (const KeptSearch& kept : keptSearches(whoChooses(*m_session)))
        if (kept.search == now) name = kept.name;
    m_searches->setCurrentIndex(qMax(0, m_searches->findData(name)));
}

void HistoryPage::keepSearchAs(const QString& name)
{
    keepSearch(whoChooses(*m_session), {name, search()});
    fillSearches();
    settleSearches();
    say(tr("Kept on this PC: %1 stands above the list.").arg(name));
}

void HistoryPage::chooseSearch(const QString& name)
{
    if (name.isEmpty()) return settleSearches();
    KeptSearch wanted;
    for (const KeptSearch& kept : keptSearches(whoChooses(*m_session)))
        if (kept.name == name) wanted = kept;
    {
        const QSignalBlocker filter(m_filter), which(m_which);
        m_filter->setText(wanted.search.text);
        m_which->setCurrentIndex(qMax(0, m_which->findData(wanted.search.present)));
    }
    m_setup->choose(wanted);
    m_soon.stop();
    refill();
    // Kept by an edition that took such days.
    if (const auto ends = endsOf(wanted.search.period, SystemClock().now()); !ends) {
        openCurrent();
        say(words(ends.error(), UnitSystem::Metric));
    }
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
    const records::Columns columns = savedColumns(m_setup->line());
    const auto text = file.endsWith(QStringLiteral(".json"), Qt::CaseInsensitive)
                          ? records::runsJson(*m_session->reader(), query(), columns)
                          : records::runsCsv(*m_session->reader(), query(), columns);
    if (!text) return say(words(text.error(), UnitSystem::Metric));
    QSaveFile out(file);
    const bool written =
        out.open(QIODevice::WriteOnly) &&
        out.write(text->data(), static_cast<qint64>(text->size())) == static_cast<qint64>(text->size()) && out.commit();
    say(written ? tr("Saved: %1").arg(dataText(file))
                : tr("The list could not be written to %1: %2").arg(dataText(file), out.errorString()));
}

}  // namespace taut::app
