// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <optional>

#include <QLabel>
#include <QLineEdit>
#include <QPrinter>
#include <QPushButton>
#include <QStackedWidget>
#include <QTimer>
#include <QWidget>

#include "app/print/print.h"
#include "app/sessions/session.h"
#include "core/report/report.h"

class QPrintPreviewWidget;

namespace taut::app {

class AttachmentPanel;
class PickList;
class RecordActs;
class RowList;

/// The runs of this logbook, newest first, and the chosen one as its sheet: what is seen here is what is printed.
class HistoryPage : public QWidget {
    Q_OBJECT

public:
    explicit HistoryPage(Session* session, QWidget* parent = nullptr);
    /// Asks the logbook again from the newest run on.
    void refill();
    /// Shows this run's sheet; when it cannot be had, why.
    void open(const std::string& runId);
    /// The same, chosen in the list where it stands there.
    void showRun(const QString& runId);
    /// To the list of runs.
    void focusList();
    /// The run of a printed sheet, by its code.
    void openScanned(const QString& code);
    /// To where a run is looked for by its job, roll or number.
    void find();

protected:
    void showEvent(QShowEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void more();
    void addRow(const records::RunRow& row);
    void openCurrent();
    void tellPresent(const std::string& runId);
    void savePdf();
    void showAttachments();
    void printOnPaper();
    void say(const QString& sentence);
    void turn(int pages);
    void settlePages();
    [[nodiscard]] print::Pages pages() const;
    Session* m_session;
    QLineEdit* m_filter;
    PickList* m_which;
    RowList* m_list;
    QStackedWidget* m_right;
    RecordActs* m_acts;
    AttachmentPanel* m_attachments;
    QPushButton *m_more, *m_back, *m_on, *m_first, *m_save, *m_print, *m_files;
    QLabel *m_page, *m_said;
    QPrintPreviewWidget* m_preview;
    std::unique_ptr<QPrinter> m_printer;
    std::optional<report::Report> m_report;
    std::string m_next;
    QTimer m_soon{this};
};

}  // namespace taut::app
