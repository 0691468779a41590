// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/print/report_pane.h"

#include <utility>

#include <QEvent>
#include <QFileDialog>
#include <QGraphicsScene>
#include <QGraphicsView>
#include <QKeySequence>
#include <QPrintDialog>
#include <QPrintPreviewWidget>
#include <QPrinterInfo>
#include <QScrollBar>
#include <QVBoxLayout>

#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/room.h"
#include "app/widgets/theme.h"

namespace taut::app {

ReportPane::ReportPane(const QString& name, QWidget* parent) : QWidget(parent)
{
    m_back = worded(tr("Page back"), "quiet", this);
    m_on = worded(tr("Page on"), "quiet", this);
    m_first = worded(tr("Page 1 alone"), "quiet", this);
    m_first->setObjectName(QStringLiteral("firstPage"));
    m_first->setCheckable(true);
    m_save = worded(tr("Save as PDF"), "", this);
    m_print = worded(tr("Print"), "", this);
    m_print->setShortcut(QKeySequence::Print);
    m_page = withRole(new QLabel(this), "soft");
    m_said = wrapped(QString(), "soft", this);

    m_printer = std::make_unique<QPrinter>(QPrinter::ScreenResolution);
    m_preview = new QPrintPreviewWidget(m_printer.get(), this);
    m_preview->setZoomMode(QPrintPreviewWidget::FitToWidth);
    m_preview->setViewMode(QPrintPreviewWidget::SinglePageView);
    m_preview->setAccessibleName(name);
    m_preview->setFocusPolicy(Qt::NoFocus);
    if (auto* paper = m_preview->findChild<QGraphicsView*>()) {
        paper->setAccessibleName(m_preview->accessibleName());
        paper->viewport()->setFocusPolicy(Qt::NoFocus);  // its pages are turned by the buttons
        // The sheet lies on the window's own ground.
        paper->scene()->setBackgroundBrush(Qt::NoBrush);
        paper->installEventFilter(this);
        m_scroll = paper->verticalScrollBar();
        connect(m_scroll, &QScrollBar::actionTriggered, this, [this] { m_fresh = false; });
    }

    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    m_row = new FlowRow;
    m_row->setSpacing(6);
    for (QWidget* w : std::initializer_list<QWidget*>{m_back, m_page, m_on, m_first, m_save, m_print})
        m_row->addWidget(w);
    layout->addLayout(m_row);
    layout->addWidget(m_said);
    layout->addWidget(m_preview, 1);
    // Without a sheet the buttons stay as high as they are.
    layout->addStretch(0);

    connect(m_save, &QPushButton::clicked, this, &ReportPane::savePdf);
    connect(m_print, &QPushButton::clicked, this, &ReportPane::printOnPaper);
    connect(m_back, &QPushButton::clicked, this, [this] { turn(-1); });
    connect(m_on, &QPushButton::clicked, this, [this] { turn(1); });
    connect(m_first, &QPushButton::toggled, this, [this] {
        m_preview->setCurrentPage(1);
        m_preview->updatePreview();
        settle();
    });
    connect(m_preview, &QPrintPreviewWidget::previewChanged, this, &ReportPane::settle);
    connect(m_preview, &QPrintPreviewWidget::paintRequested, this, [this](QPrinter* printer) {
        if (m_report) static_cast<void>(print::paintReport(*printer, *m_report, pages()));
    });
    showNothing({});
}

void ReportPane::addButton(QPushButton* button)
{
    // Before saving and printing, which stand last on every page.
    for (QPushButton* last : {m_save, m_print}) m_row->removeWidget(last);
    m_row->addWidget(button);
    for (QPushButton* last : {m_save, m_print}) m_row->addWidget(last);
    setTabOrder(m_first, button);
    setTabOrder(button, m_save);
}

void ReportPane::show(report::Report report, const QString& file)
{
    m_report = std::move(report);
    m_file = file;
    if (m_held) m_held = 1;
    say({});
    m_preview->setVisible(true);
    print::choosePaper(*m_printer, print::paperHere(*m_report));
    m_preview->setCurrentPage(1);
    m_preview->updatePreview();
    m_preview->setCurrentPage(1);  // new pages lie under where the last ones were scrolled to
    m_fresh = true;
    toTop();
    settle();
}

void ReportPane::showNothing(const QString& why)
{
    m_report.reset();
    say(why);
    settle();
}

void ReportPane::say(const QString& sentence)
{
    m_said->setText(sentence);
    m_said->setVisible(!sentence.isEmpty());
    for (QPushButton* button : {m_save, m_print, m_first}) button->setEnabled(m_report.has_value());
}

/// What is shown, saved and printed.
print::Pages ReportPane::pages() const { return m_first->isChecked() ? print::Pages::First : print::Pages::All; }

void ReportPane::toTop()
{
    if (m_fresh && m_scroll != nullptr) m_scroll->setValue(m_scroll->minimum());
}

void ReportPane::turn(int pages)
{
    m_fresh = false;
    m_preview->setCurrentPage(m_preview->currentPage() + pages);
    settle();
}

void ReportPane::settle()
{
    const int pages = m_report ? m_preview->pageCount() : 0, at = m_preview->currentPage();
    m_back->setEnabled(pages > 0 && at > 1);
    m_on->setEnabled(at < pages);
    m_page->setText(pages > 0 ? tr("%1 of %2").arg(at).arg(pages) : QString());
    m_preview->setVisible(m_report.has_value());
}

/// Paper that is fitted to another width would be seen at another page, or, before the first layout, in its middle.
bool ReportPane::eventFilter(QObject* watched, QEvent* event)
{
    if ((event->type() == QEvent::Resize || event->type() == QEvent::Show) && !m_held) {
        m_held = m_preview->currentPage();
        QMetaObject::invokeMethod(
            this,
            [this] {
                m_preview->setCurrentPage(*std::exchange(m_held, {}));
                toTop();
                settle();
            },
            Qt::QueuedConnection);
    }
    return QWidget::eventFilter(watched, event);
}

void ReportPane::savePdf()
{
    if (!m_report) return;
    const QString file = QFileDialog::getSaveFileName(
        this, tr("Save the sheet"), m_file + QString::fromLatin1(print::endingOf(pages())), tr("PDF files (*.pdf)"));
    if (file.isEmpty()) return;
    const auto printed = print::writePdf(*m_report, file.toStdString(), print::paperHere(*m_report), pages());
    say(printed ? tr("Saved: %1").arg(dataText(file)) : words(printed.error(), UnitSystem::Metric));
}

void ReportPane::printOnPaper()
{
    if (!m_report) return;
    if (QPrinterInfo::availablePrinterNames().isEmpty()) {
        say(tr("No printer is set up on this PC. Save the sheet as PDF and print it elsewhere."));
        return;
    }
    QPrinter printer(QPrinter::HighResolution);
    printer.setDocName(m_file);
    print::choosePaper(printer, print::paperHere(*m_report));
    QPrintDialog dialog(&printer, this);
    if (dialog.exec() != QDialog::Accepted) return;
    const auto printed = print::paintReport(printer, *m_report, pages());
    say(printed ? tr("Sent to the printer.") : words(printed.error(), UnitSystem::Metric));
}

}  // namespace taut::app
