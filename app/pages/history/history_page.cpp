// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/history/history_page.h"

#include <QFileDialog>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QPrintDialog>
#include <QPrintPreviewWidget>
#include <QPrinterInfo>
#include <QSplitter>
#include <QVBoxLayout>

#include "app/print/print.h"
#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/theme.h"
#include "core/records/texts.h"
#include "core/seal/document.h"

namespace taut::app {

namespace {

constexpr std::size_t kPage = 50;

QString stateWords(const records::RunRow& row)
{
    if (row.state == "open") return HistoryPage::tr("open");
    const QString state = row.state == "abandoned" ? HistoryPage::tr("abandoned") : HistoryPage::tr("signed");
    if (row.deviations == 0) return state;
    return HistoryPage::tr("%1, %2 deviations").arg(state).arg(row.deviations);
}

}  // namespace

HistoryPage::HistoryPage(Session* session, QWidget* parent) : QWidget(parent), m_session(session)
{
    m_filter = new QLineEdit(this);
    m_filter->setMinimumHeight(sizes().control);
    m_filter->setPlaceholderText(tr("Job, roll or run"));
    m_filter->setClearButtonEnabled(true);
    named(m_filter, tr("Find runs by job, roll or run"));
    m_list = new QTreeWidget(this);
    m_list->setRootIsDecorated(false);
    m_list->setUniformRowHeights(true);
    m_list->setAllColumnsShowFocus(true);
    m_list->setAccessibleName(tr("Runs"));
    m_list->setHeaderLabels({tr("Begun"), tr("Run"), tr("Job"), tr("Roll"), tr("Operator"), tr("State")});
    m_list->header()->setSectionResizeMode(QHeaderView::ResizeToContents);
    m_more = worded(tr("Older runs"), "quiet", this);
    m_save = worded(tr("Save as PDF"), "answer", this);
    m_print = worded(tr("Print"), "answer", this);
    m_said = wrapped(QString(), "soft", this);

    m_printer = std::make_unique<QPrinter>(QPrinter::ScreenResolution);
    print::choosePaper(*m_printer, print::Paper::A4);
    m_preview = new QPrintPreviewWidget(m_printer.get(), this);
    m_preview->setZoomMode(QPrintPreviewWidget::FitToWidth);
    m_preview->setViewMode(QPrintPreviewWidget::SinglePageView);
    m_preview->setAccessibleName(tr("The sheet of the chosen run"));

    auto* left = new QWidget(this);
    auto* column = new QVBoxLayout(left);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_filter);
    column->addWidget(m_list, 1);
    column->addWidget(m_more);
    auto* right = new QWidget(this);
    auto* sheet = new QVBoxLayout(right);
    sheet->setContentsMargins(0, 0, 0, 0);
    auto* buttons = new QHBoxLayout;
    auto* back = worded(tr("Page back"), "quiet", right);
    auto* on = worded(tr("Page on"), "quiet", right);
    buttons->addWidget(back);
    buttons->addWidget(on);
    buttons->addStretch(1);
    buttons->addWidget(m_save);
    buttons->addWidget(m_print);
    sheet->addLayout(buttons);
    sheet->addWidget(m_said);
    sheet->addWidget(m_preview, 1);
    auto* split = new QSplitter(this);
    split->addWidget(left);
    split->addWidget(right);
    split->setStretchFactor(0, 2);
    split->setStretchFactor(1, 3);
    split->setChildrenCollapsible(false);
    auto* whole = new QVBoxLayout(this);
    whole->addWidget(split);

    m_soon.setSingleShot(true);
    m_soon.setInterval(150);
    connect(&m_soon, &QTimer::timeout, this, &HistoryPage::refill);
    connect(m_filter, &QLineEdit::textChanged, &m_soon, qOverload<>(&QTimer::start));
    connect(m_list, &QTreeWidget::currentItemChanged, this, &HistoryPage::openCurrent);
    connect(m_more, &QPushButton::clicked, this, &HistoryPage::more);
    connect(m_save, &QPushButton::clicked, this, &HistoryPage::savePdf);
    connect(m_print, &QPushButton::clicked, this, &HistoryPage::printOnPaper);
    connect(back, &QPushButton::clicked, this, [this] { m_preview->setCurrentPage(m_preview->currentPage() - 1); });
    connect(on, &QPushButton::clicked, this, [this] { m_preview->setCurrentPage(m_preview->currentPage() + 1); });
    connect(m_preview, &QPrintPreviewWidget::paintRequested, this, [this](QPrinter* printer) {
        if (m_report) static_cast<void>(print::paintReport(*printer, *m_report));
    });
    connect(session, &Session::opened, this, &HistoryPage::refill);
    connect(session, &Session::sealed, this, [this] { refill(); });
    say(tr("Choose a run to see its sheet."));
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
}

void HistoryPage::refill()
{
    m_next.clear();
    const QSignalBlocker quiet(m_list);
    m_list->clear();
    more();
}

void HistoryPage::more()
{
    if (m_session->reader() == nullptr) return;
    records::RunQuery query;
    query.text = m_filter->text().trimmed().toStdString();
    query.limit = kPage;
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
    auto* item = new QTreeWidgetItem(m_list, {momentText(row.begunMs, 0), dataText(row.run), dataText(row.job),
                                              dataText(row.roll), dataText(row.operatorName), stateWords(row)});
    item->setData(0, Qt::UserRole, QString::fromStdString(row.run));
}

void HistoryPage::openCurrent()
{
    if (const QTreeWidgetItem* item = m_list->currentItem()) open(item->data(0, Qt::UserRole).toString().toStdString());
}

void HistoryPage::open(const std::string& runId)
{
    m_report.reset();
    const records::Reader* reader = m_session->reader();
    if (reader == nullptr) return;
    const auto seal = reader->sealOfRun(runId);
    if (!seal) {
        say(words(seal.error(), UnitSystem::Metric));
        m_preview->updatePreview();
        return;
    }
    const auto document = seal::read(seal->document);
    const auto anchor = reader->anchor();
    auto report = document ? report::reportOf(*document, anchor ? std::optional(*anchor) : std::nullopt,
                                              records::textsOf(*reader))
                           : Result<report::Report>(document.error());
    if (report) m_report = *std::move(report);
    say(m_report ? QString() : words(report.error(), UnitSystem::Metric));
    m_preview->updatePreview();
}

void HistoryPage::savePdf()
{
    if (!m_report) return;
    QString file = QFileDialog::getSaveFileName(
        this, tr("Save the sheet"), QString::fromStdString(m_report->runId + ".pdf"), tr("PDF files (*.pdf)"));
    if (file.isEmpty()) return;
    const auto printed = print::writePdf(*m_report, file.toStdString(), print::Paper::A4);
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
    QPrintDialog dialog(&printer, this);
    if (dialog.exec() != QDialog::Accepted) return;
    const auto printed = print::paintReport(printer, *m_report);
    say(printed ? tr("Sent to the printer.") : words(printed.error(), UnitSystem::Metric));
}

}  // namespace taut::app
