// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/history/history_page.h"

#include <QFileDialog>
#include <QGraphicsScene>
#include <QGraphicsView>
#include <QHBoxLayout>
#include <QKeySequence>
#include <QPrintDialog>
#include <QPrintPreviewWidget>
#include <QPrinterInfo>
#include <QVBoxLayout>

#include "app/pages/history/record_acts.h"
#include "app/text/words.h"
#include "app/widgets/attachment_panel.h"
#include "app/widgets/controls.h"
#include "app/widgets/room.h"
#include "app/widgets/row_list.h"
#include "app/widgets/scan_catcher.h"
#include "app/widgets/theme.h"
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

/// What has become of a sealed run since; "" while nobody has looked at it.
QString presentWords(const records::RunRow& row)
{
    switch (seal::presentFrom(row.present).value_or(seal::Present::Sealed)) {
    case seal::Present::Sealed: return {};
    case seal::Present::Reviewed: return HistoryPage::tr("accepted by %1").arg(dataText(row.reviewedBy));
    case seal::Present::SentBack: return HistoryPage::tr("sent back");
    case seal::Present::Corrected: return HistoryPage::tr("corrected, to be reviewed");
    case seal::Present::Void: return HistoryPage::tr("VOID");
    }
    return {};
}

QString stateWords(const records::RunRow& row)
{
    if (row.state == "open") return HistoryPage::tr("open");
    if (row.present == seal::presentWord(seal::Present::Void)) return HistoryPage::tr("void");
    const QString state = row.state == "abandoned" ? HistoryPage::tr("abandoned") : HistoryPage::tr("signed");
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
    m_more = worded(tr("Older runs"), "quiet", this);
    m_back = worded(tr("Page back"), "quiet", this);
    m_on = worded(tr("Page on"), "quiet", this);
    m_first = worded(tr("Page 1 alone"), "quiet", this);
    m_first->setObjectName(QStringLiteral("firstPage"));
    m_first->setCheckable(true);
    m_save = worded(tr("Save as PDF"), "", this);
    m_print = worded(tr("Print"), "", this);
    m_files = worded(tr("Pictures and files"), "quiet", this);
    m_files->setObjectName(QStringLiteral("files"));
    m_print->setShortcut(QKeySequence::Print);
    m_page = withRole(new QLabel(this), "soft");
    m_said = wrapped(QString(), "soft", this);

    m_printer = std::make_unique<QPrinter>(QPrinter::ScreenResolution);
    m_preview = new QPrintPreviewWidget(m_printer.get(), this);
    m_preview->setZoomMode(QPrintPreviewWidget::FitToWidth);
    m_preview->setViewMode(QPrintPreviewWidget::SinglePageView);
    m_preview->setAccessibleName(tr("The sheet of the chosen run"));

    m_preview->setFocusPolicy(Qt::NoFocus);
    if (auto* paper = m_preview->findChild<QGraphicsView*>()) {
        paper->setAccessibleName(m_preview->accessibleName());
        paper->viewport()->setFocusPolicy(Qt::NoFocus);  // its pages are turned by the buttons
        // The sheet lies on the window's own ground.
        paper->scene()->setBackgroundBrush(Qt::NoBrush);
    }

    m_acts = new RecordActs(session, this);
    auto* paperBox = new QWidget(this);
    auto* paper = new QVBoxLayout(paperBox);
    paper->setContentsMargins(0, 0, 0, 0);
    m_right = new QStackedWidget(this);
    m_right->addWidget(paperBox);
    m_right->addWidget(m_acts->panel());
    m_attachments = new AttachmentPanel(this);
    m_right->addWidget(m_attachments);

    auto* left = new QVBoxLayout;
    left->addWidget(m_filter);
    left->addWidget(m_which);
    left->addWidget(m_list, 1);
    left->addWidget(m_more);
    auto* buttons = new FlowRow;
    buttons->setSpacing(6);
    for (QWidget* w : std::initializer_list<QWidget*>{m_back, m_page, m_on, m_files, m_first, m_save, m_print})
        buttons->addWidget(w);
    paper->addLayout(buttons);
    paper->addWidget(m_said);
    paper->addWidget(m_preview, 1);
    // Without a sheet, in a window that has no logbook, the buttons stay as high as they are.
    paper->addStretch(0);
    paper->addWidget(m_acts);
    auto* halves = new QHBoxLayout(this);
    halves->addLayout(left, 2);
    halves->addSpacing(sizes().gap);
    halves->addWidget(m_right, 3);

    m_soon.setSingleShot(true);
    m_soon.setInterval(150);
    connect(&m_soon, &QTimer::timeout, this, &HistoryPage::refill);
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
    connect(m_save, &QPushButton::clicked, this, &HistoryPage::savePdf);
    connect(m_print, &QPushButton::clicked, this, &HistoryPage::printOnPaper);
    connect(m_back, &QPushButton::clicked, this, [this] { turn(-1); });
    connect(m_on, &QPushButton::clicked, this, [this] { turn(1); });
    connect(m_first, &QPushButton::toggled, this, [this] {
        m_preview->setCurrentPage(1);
        m_preview->updatePreview();
        settlePages();
    });
    connect(m_preview, &QPrintPreviewWidget::previewChanged, this, &HistoryPage::settlePages);
    connect(m_preview, &QPrintPreviewWidget::paintRequested, this, [this](QPrinter* printer) {
        if (m_report) static_cast<void>(print::paintReport(*printer, *m_report, pages()));
    });
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
    refill();
}

void HistoryPage::say(const QString& sentence)
{
    m_said->setText(sentence);
    m_said->setVisible(!sentence.isEmpty());
    m_save->setEnabled(m_report.has_value());
    m_print->setEnabled(m_report.has_value());
    m_first->setEnabled(m_report.has_value());
}

/// What is shown, saved and printed.
print::Pages HistoryPage::pages() const { return m_first->isChecked() ? print::Pages::First : print::Pages::All; }

void HistoryPage::turn(int pages)
{
    m_preview->setCurrentPage(m_preview->currentPage() + pages);
    settlePages();
}

void HistoryPage::settlePages()
{
    const int pages = m_report ? m_preview->pageCount() : 0, at = m_preview->currentPage();
    m_back->setEnabled(pages > 0 && at > 1);
    m_on->setEnabled(at < pages);
    m_page->setText(pages > 0 ? tr("%1 of %2").arg(at).arg(pages) : QString());
    m_preview->setVisible(m_report.has_value());
}

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
    // A draft may have gone on meanwhile.
    if (m_list->chosen() != before || !m_report || !m_report->draft.empty()) openCurrent();
}

void HistoryPage::showRun(const QString& runId)
{
    if (m_list->chosen() == runId || !m_list->choose(runId)) open(runId.toStdString());
}

void HistoryPage::focusList() { m_list->setFocus(); }

void HistoryPage::find()
{
    m_filter->setFocus();
    m_filter->selectAll();
}

void HistoryPage::more()
{
    if (m_session->reader() == nullptr) return;
    records::RunQuery query;
    query.text = m_filter->text().trimmed().toStdString();
    query.limit = kPage;
    query.present = m_which->currentData().toString().toStdString();
    auto page = m_session->reader()->runs(query, m_next);
    if (!page) {
        say(words(page.error(), UnitSystem::Metric));
        return;
    }
    for (const records::RunRow& row : page->rows) addRow(row);
    m_next = page->next;
    m_more->setVisible(!m_next.empty());
}

void HistoryPage::addRow(const records::RunRow& row)
{
    const QString title = tr("%1 \u00B7 Roll %2").arg(dataText(row.job), dataText(row.roll));
    QStringList more{momentHereText(row.begunMs), dataText(row.operatorName), dataText(row.run)};
    if (const QString present = presentWords(row); !present.isEmpty()) more.prepend(present);
    m_list->add({QString::fromStdString(row.run), title, stateWords(row), more.join(QStringLiteral(" \u00B7 ")),
                 stateMark(row)});
}

void HistoryPage::openCurrent()
{
    if (const QString run = m_list->chosen(); !run.isEmpty()) return open(run.toStdString());
    m_report.reset();
    m_files->hide();
    m_acts->showRun({});
    if (m_session->reader() == nullptr)
        say(tr("The logbook is not open in this window."));
    else
        say(!m_filter->text().trimmed().isEmpty() ? tr("No run of this logbook has that in it.")
            : m_which->currentIndex() > 0         ? tr("No run of this logbook stands so just now.")
                                                  : tr("No run has been begun in this logbook yet."));
    settlePages();
}

void HistoryPage::showAttachments()
{
    const records::Reader* reader = m_session->reader();
    if (reader == nullptr || !m_report) return;
    const auto run = records::runOf(*reader, m_report->runId);
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
    m_report.reset();
    m_files->hide();
    if (m_right->currentWidget() == m_attachments) m_right->setCurrentIndex(0);
    const records::Reader* reader = m_session->reader();
    if (reader == nullptr) return;
    auto report = records::sheetOf(*reader, runId);
    if (report) m_report = *std::move(report);
    if (const auto kept = records::documentOf(*reader, runId))
        m_files->setVisible(!seal::filesOf(kept->document).empty());
    m_acts->showRun(QString::fromStdString(runId));
    say(!m_report                 ? words(report.error(), UnitSystem::Metric)
        : m_report->draft.empty() ? QString()
                                  : words(m_report->draft, m_report->units));
    m_preview->setVisible(m_report.has_value());
    if (m_report) print::choosePaper(*m_printer, print::paperHere(*m_report));
    m_preview->setCurrentPage(1);
    m_preview->updatePreview();
    m_preview->setCurrentPage(1);  // new pages lie under where the last ones were scrolled to
    settlePages();
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

void HistoryPage::savePdf()
{
    if (!m_report) return;
    QString file = QFileDialog::getSaveFileName(
        this, tr("Save the sheet"),
        QString::fromStdString(m_report->runId + (m_report->draft.empty() ? "" : "-draft") + print::endingOf(pages())),
        tr("PDF files (*.pdf)"));
    if (file.isEmpty()) return;
    const auto printed = print::writePdf(*m_report, file.toStdString(), print::paperHere(*m_report), pages());
    say(printed ? tr("Saved: %1").arg(dataText(file)) : words(printed.error(), UnitSystem::Metric));
}

void HistoryPage::printOnPaper()
{
    if (!m_report) return;
    if (QPrinterInfo::availablePrinterNames().isEmpty()) {
        say(tr("No printer is set up on this PC. Save the sheet as PDF and print it elsewhere."));
        return;
    }
    QPrinter printer(QPrinter::HighResolution);
    printer.setDocName(QString::fromStdString(m_report->runId));
    print::choosePaper(printer, print::paperHere(*m_report));
    QPrintDialog dialog(&printer, this);
    if (dialog.exec() != QDialog::Accepted) return;
    const auto printed = print::paintReport(printer, *m_report, pages());
    say(printed ? tr("Sent to the printer.") : words(printed.error(), UnitSystem::Metric));
}

}  // namespace taut::app
