// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/history/history_page.h"

#include <algorithm>

#include <QHBoxLayout>
#include <QVBoxLayout>

#include "app/pages/history/list_setup.h"
#include "app/pages/history/record_acts.h"
#include "app/pages/history/run_line.h"
#include "app/print/report_pane.h"
#include "app/text/words.h"
#include "app/widgets/attachment_panel.h"
#include "app/widgets/controls.h"
#include "app/widgets/room.h"
#include "app/widgets/scan_catcher.h"
#include "app/widgets/theme.h"
#include "core/base/clock.h"
#include "core/history/compare.h"
#include "core/records/checked.h"
#include "core/records/scanned.h"
#include "core/records/sheet.h"
#include "core/seal/document.h"
#include "core/seal/files.h"

namespace taut::app {

namespace {

constexpr std::size_t kPage = 50;

/// The same shapes as for a run's steps.
MarkShape stateMark(const records::RunRow& row)
{
    if (row.state == "open") return MarkShape::DashedBox;
    if (row.present == seal::presentWord(seal::Present::Void)) return MarkShape::DashBox;
    if (row.state == "abandoned") return MarkShape::DashBox;
    return row.deviations == 0 ? MarkShape::Tick : MarkShape::Knot;
}

QString stateWords(const records::RunRow& row)
{
    if (row.state == "open") return HistoryPage::tr("open");
    if (row.present == seal::presentWord(seal::Present::Void)) return HistoryPage::tr("void");
    QString state = row.state == "abandoned" ? HistoryPage::tr("abandoned") : HistoryPage::tr("signed");
    if (row.deviations == 0) return state;
    if (row.deviations == 1) return HistoryPage::tr("%1, 1 deviation").arg(state);
    return HistoryPage::tr("%1, %2 deviations").arg(state).arg(row.deviations);
}

}  // namespace

HistoryPage::HistoryPage(Session* session, QWidget* parent) : QWidget(parent), m_session(session)
{
    m_filter = new QLineEdit(this);
    m_filter->setMinimumHeight(sizes().control);
    m_filter->setClearButtonEnabled(true);
    named(m_filter, tr("Find runs by job, roll or run"));
    m_filter->setToolTip(tr("Or scan the code of a printed sheet"));
    m_list = new RowList(this);
    m_list->setObjectName(QStringLiteral("runs"));
    m_list->setAccessibleName(tr("Runs"));
    m_which = new PickList(this);
    named(m_which, tr("Which runs"));
    m_which->addItem(tr("Every run"), QString());
    m_which->addItem(QString(), QString::fromLatin1(records::kWantsReview));
    m_which->addItem(tr("Sent back"), QString::fromLatin1(seal::presentWord(seal::Present::SentBack)));
    m_which->addItem(tr("Void"), QString::fromLatin1(seal::presentWord(seal::Present::Void)));
    m_which->addItem(tr("Abandoned"), kOfState + QStringLiteral("abandoned"));
    m_which->addItem(tr("Open"), kOfState + QStringLiteral("open"));
    m_more = worded(tr("Older runs"), "quiet", this);
    m_files = worded(tr("Pictures and files"), "quiet", this);
    m_files->setObjectName(QStringLiteral("files"));
    m_best = worded(tr("Beside the best"), "quiet", this);
    m_best->setObjectName(QStringLiteral("best"));
    m_best->setToolTip(tr("This run beside the best one so far of its job, press and kind"));
    m_keep = worded(tr("Keep to compare"), "quiet", this);
    m_keep->setObjectName(QStringLiteral("keep"));
    m_keep->setCheckable(true);
    m_compare = worded(tr("Compare"), "quiet", this);
    m_compare->setObjectName(QStringLiteral("compare"));
    m_paper = new ReportPane(tr("The sheet of the chosen run"), this);
    for (QPushButton* button : {m_files, m_best, m_keep, m_compare}) m_paper->addButton(button);

    m_acts = new RecordActs(session, this);
    auto* paperBox = new QWidget(this);
    auto* paper = new QVBoxLayout(paperBox);
    paper->setContentsMargins(0, 0, 0, 0);
    m_right = new QStackedWidget(this);
    m_right->addWidget(paperBox);
    m_right->addWidget(m_acts->panel());
    m_attachments = new AttachmentPanel(this);
    m_right->addWidget(m_attachments);

    buildSetup();
    auto* left = new QVBoxLayout;
    left->addWidget(m_filter);
    auto* top = new FlowRow;
    top->setSpacing(6);
    m_which->setMinimumHeight(sizes().control);
    top->addWidget(m_which);
    top->addWidget(m_choose);
    top->addWidget(m_count);
    left->addLayout(top);
    left->addWidget(m_searches);
    left->addWidget(m_list, 1);
    left->addWidget(m_more);
    left->addWidget(m_setupRoom, 1);
    paper->addWidget(m_paper, 1);
    paper->addWidget(m_acts);
    auto* halves = new QHBoxLayout(this);
    halves->addLayout(left, 2);
    halves->addSpacing(sizes().gap);
    halves->addWidget(m_right, 3);

    m_soon.setSingleShot(true);
    m_soon.setInterval(150);
    connect(&m_soon, &QTimer::timeout, this, &HistoryPage::refill);
    for (QTimer* timer : {&m_countSoon, &m_openSoon}) timer->setSingleShot(true);
    connect(&m_countSoon, &QTimer::timeout, this, &HistoryPage::tellCount);
    connect(&m_openSoon, &QTimer::timeout, this, &HistoryPage::openCurrent);
    // The scanner types whatever has the keyboard here: a sheet's code opens its run, anything else is looked for.
    connect(new ScanCatcher(this), &ScanCatcher::scanned, this, [this](const QString& text) {
        records::isSheetCode(text.toStdString()) ? openScanned(text) : m_filter->setText(text);
    });
    connect(m_filter, &QLineEdit::textChanged, &m_soon, qOverload<>(&QTimer::start));
    connect(m_filter, &QLineEdit::returnPressed, this, &HistoryPage::refill);
    connect(m_which, &QComboBox::currentIndexChanged, &m_soon, qOverload<>(&QTimer::start));
    connect(m_list, &QListWidget::currentItemChanged, this, &HistoryPage::openCurrent);
    connect(m_acts, &RecordActs::asking, this, [this](bool asks) { m_right->setCurrentIndex(asks ? 1 : 0); });
    connect(m_more, &QPushButton::clicked, this, &HistoryPage::more);
    connect(m_files, &QPushButton::clicked, this, &HistoryPage::showAttachments);
    connect(m_attachments, &AttachmentPanel::closed, this, [this] {
        m_right->setCurrentIndex(0);
        m_files->setFocus();
    });
    connect(m_best, &QPushButton::clicked, this, &HistoryPage::compareWithBest);
    connect(m_keep, &QPushButton::clicked, this, &HistoryPage::keep);
    connect(m_compare, &QPushButton::clicked, this, [this] { compare(m_kept, {}); });
    connect(session, &Session::opened, this, &HistoryPage::refill);
    connect(session, &Session::openedToRead, this, &HistoryPage::refill);
    connect(session, &Session::sealed, this, [this] { refill(); });
    connect(session, &Session::recordChanged, this, [this](const QString& run) {
        refill();
        openCurrent();
        tellPresent(run.toStdString());
    });
    openCurrent();
}

void HistoryPage::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    // What may be typed, said as fully as there is room for.
    const int around = 2 * m_filter->fontMetrics().averageCharWidth() + sizes().gap;
    const QString whole = tr("Job, roll or run");
    const bool fits = m_filter->fontMetrics().horizontalAdvance(whole) + around < m_filter->width();
    m_filter->setPlaceholderText(fits ? whole : tr("Find"));
}

void HistoryPage::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    m_setup->fill();
    fillSearches();
    refill();
}

void HistoryPage::say(const QString& sentence) { m_paper->say(sentence); }

/// A sheet's code, scanned where one types what to find, opens its run and says whether the sheet is of this logbook.
void HistoryPage::openScanned(const QString& code)
{
    if (m_session->reader() == nullptr) return;
    {
        const QSignalBlocker quiet(m_filter);
        m_filter->clear();
    }
    m_which->setCurrentIndex(0);
    refill();
    const auto sheet = records::sheetScanned(*m_session->reader(), code.toStdString());
    if (!sheet) return say(words(sheet.error(), UnitSystem::Metric));
    showRun(QString::fromStdString(sheet->run));
    say(sheet->differs ? words(*sheet->differs, UnitSystem::Metric)
                       : tr("The sheet is of this logbook: seal %1 is the one that it names.").arg(sheet->count));
}

void HistoryPage::refill()
{
    if (const QString text = m_filter->text().trimmed(); records::isSheetCode(text.toStdString()))
        return openScanned(text);
    m_next.clear();
    m_rows.clear();
    if (m_session->reader() != nullptr)
        if (const auto waiting = m_session->reader()->wantingReview())
            m_which->setItemText(1, tr("To be reviewed: %1").arg(*waiting));
    const QString before = m_list->chosen();
    {
        const QSignalBlocker quiet(m_list);
        m_list->clear();
        more();
        if (!m_list->choose(before)) m_list->choose(m_list->first());
    }
    m_countSoon.start();
    settleSearches();
    // A draft may have gone on meanwhile.
    const auto& shown = m_paper->report();
    if (m_list->chosen() != before || !shown || !shown->draft.empty()) m_openSoon.start();
}

void HistoryPage::showRun(const QString& runId)
{
    if (m_list->chosen() == runId || m_list->choose(runId)) {
        if (m_openSoon.isActive() || !m_paper->report() || m_paper->report()->runId != runId.toStdString())
            open(runId.toStdString());
        return;
    }
    // It does not stand in the list: then none of those that do is the one that is shown.
    {
        const QSignalBlocker quiet(m_list);
        m_list->setCurrentRow(-1);
    }
    settleKept();
    open(runId.toStdString());
}

/// Where none of its lines is chosen, having the keyboard would choose the first.
void HistoryPage::focusList() { m_list->chosen().isEmpty() ? m_filter->setFocus() : m_list->setFocus(); }

void HistoryPage::find()
{
    m_filter->setFocus();
    m_filter->selectAll();
}

void HistoryPage::more()
{
    if (m_session->reader() == nullptr) return;
    auto page = m_session->reader()->runs(query(), m_next);
    if (!page) {
        say(words(page.error(), UnitSystem::Metric));
        return;
    }
    for (const records::RunRow& row : page->rows) {
        m_rows[row.run] = row;
        addRow(row);
    }
    m_next = page->next;
    m_more->setVisible(!m_next.empty() && !m_choose->isChecked());
}

RowList::Row HistoryPage::lineOfRun(const records::RunRow& row) const
{
    return {QString::fromStdString(row.run), tr("%1 \u00B7 Roll %2").arg(dataText(row.job), dataText(row.roll)),
            stateWords(row), lineOf(row, m_setup->line()), stateMark(row)};
}

void HistoryPage::addRow(const records::RunRow& row) { m_list->add(lineOfRun(row)); }

/// The lines that are there, said anew: how far one had gone back stays.
void HistoryPage::sayLines()
{
    for (int i = 0; i < m_list->count(); ++i)
        if (const auto row = m_rows.find(m_list->idAt(i).toStdString()); row != m_rows.end())
            m_list->say(i, lineOfRun(row->second));
}

void HistoryPage::openCurrent()
{
    m_openSoon.stop();
    settleKept();
    if (const QString run = m_list->chosen(); !run.isEmpty()) return open(run.toStdString());
    m_files->hide();
    m_acts->showRun({});
    if (m_session->reader() == nullptr)
        m_paper->showNothing(tr("The logbook is not open in this window."));
    else
        m_paper->showNothing(!m_filter->text().trimmed().isEmpty() ? tr("No run of this logbook has that in it.")
                             : m_which->currentIndex() > 0         ? tr("No run of this logbook stands so just now.")
                                                                   : tr("No run has been begun in this logbook yet."));
}

void HistoryPage::showAttachments()
{
    const records::Reader* reader = m_session->reader();
    if (reader == nullptr || !m_paper->report()) return;
    const auto run = records::runOf(*reader, m_paper->report()->runId);
    if (!run) return say(words(run.error(), UnitSystem::Metric));
    m_attachments->show(
        *run,
        [session = m_session](const std::string& sha256) {
            const records::Reader* now = session->reader();
            return now ? now->attachment(sha256) : Result<std::optional<std::string>>(std::optional<std::string>());
        },
        false);
    m_right->setCurrentWidget(m_attachments);
    m_attachments->first()->setFocus();
}

void HistoryPage::open(const std::string& runId)
{
    m_openSoon.stop();
    m_files->hide();
    if (m_right->currentWidget() == m_attachments) m_right->setCurrentIndex(0);
    const records::Reader* reader = m_session->reader();
    if (reader == nullptr) return m_paper->showNothing({});
    auto report = records::sheetOf(*reader, runId);
    if (const auto kept = records::documentOf(*reader, runId))
        m_files->setVisible(!seal::filesOf(kept->document).empty());
    m_acts->showRun(QString::fromStdString(runId));
    if (!report) return m_paper->showNothing(words(report.error(), UnitSystem::Metric));
    const Text draft = report->draft;
    const UnitSystem units = report->units;
    m_paper->show(*std::move(report), QString::fromStdString(runId + (draft.empty() ? "" : "-draft")));
    if (!draft.empty()) return say(words(draft, units));
    // Looked at anew each time it is opened: what was changed behind the program's back shows here.
    const auto holds = records::sealsHold(*reader, runId);
    say(!holds       ? words(holds.error(), units)
        : *holds > 1 ? tr("Checked just now: its %1 seals are as they were sealed, each in its place.").arg(*holds)
                     : tr("Checked just now: its seal is as it was sealed, in its place."));
}

/// What has just come of a run, also when the list that was chosen does not show it any more.
void HistoryPage::tellPresent(const std::string& runId)
{
    records::RunQuery query;
    query.text = runId;
    if (m_session->reader() == nullptr) return;
    const auto page = m_session->reader()->runs(query, {});
    if (!page) return;
    for (const records::RunRow& row : page->rows)
        if (row.run == runId) say(tr("Run %1: %2.").arg(dataText(runId), presentWords(row)));
}

std::optional<records::RunRow> HistoryPage::chosenRow() const
{
    const auto found = m_rows.find(m_list->chosen().toStdString());
    return found == m_rows.end() || found->second.seq == 0 ? std::nullopt : std::optional(found->second);
}

void HistoryPage::compareWithBest()
{
    const auto row = chosenRow();
    if (!row || m_session->reader() == nullptr) return;
    const auto best = history::bestRun(*m_session->reader(), *row);
    if (!best) return say(words(best.error(), UnitSystem::Metric));
    if (!*best) return say(tr("There is no other completed run of this job and kind on this press yet."));
    compare({(*best)->run, row->run}, (*best)->run);
}

void HistoryPage::compare(const std::vector<std::string>& runs, const std::string& best)
{
    if (m_session->reader() == nullptr) return;
    auto report = history::compareRuns(*m_session->reader(), runs, best, SystemClock().now().offsetMinutes);
    if (!report) return say(words(report.error(), UnitSystem::Metric));
    m_acts->showRun({});
    m_paper->show(*std::move(report), tr("comparison"));
    say(tr("Choose the run in the list to see its own sheet again."));
}

void HistoryPage::keep(bool kept)
{
    const std::string run = m_list->chosen().toStdString();
    std::erase(m_kept, run);
    if (kept) m_kept.push_back(run);
    if (m_kept.size() > history::kMostCompared) m_kept.erase(m_kept.begin());
    settleKept();
}

void HistoryPage::settleKept()
{
    const auto row = chosenRow();
    for (QPushButton* button : {m_best, m_keep}) button->setEnabled(row.has_value());
    m_keep->setChecked(row && std::find(m_kept.begin(), m_kept.end(), row->run) != m_kept.end());
    m_compare->setVisible(m_kept.size() > 1);
    m_compare->setText(tr("Compare %1").arg(m_kept.size()));
}

}  // namespace taut::app
