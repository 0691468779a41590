// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <optional>

#include <QLabel>
#include <QPrinter>
#include <QPushButton>
#include <QWidget>

#include "app/print/print.h"
#include "core/report/report.h"

class QPrintPreviewWidget;
class QScrollBar;
class QVBoxLayout;

namespace taut::app {

class FlowRow;

/// A report as its paper: what is seen here is what is printed and saved. Pages are turned by its buttons.
class ReportPane : public QWidget {
    Q_OBJECT

public:
    /// `name` is what the paper is called for those who do not see it.
    explicit ReportPane(const QString& name, QWidget* parent = nullptr);
    /// Shows it from its first page; `file` is the name under which it is saved, without its ending.
    void show(report::Report report, const QString& file);
    /// Nothing to be shown, and why.
    void showNothing(const QString& why);
    [[nodiscard]] const std::optional<report::Report>& report() const { return m_report; }
    /// A sentence above the paper; empty takes it away.
    void say(const QString& sentence);
    /// A further button in the row above the paper, before saving and printing.
    void addButton(QPushButton* button);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void turn(int pages);
    void toTop();
    void settle();
    void savePdf();
    void printOnPaper();
    [[nodiscard]] print::Pages pages() const;
    std::optional<report::Report> m_report;
    std::optional<int> m_held;  ///< the page that is kept in sight while the paper takes another size
    bool m_fresh = false;       ///< nobody has scrolled or turned pages since it was shown
    QString m_file;
    FlowRow* m_row;
    QPushButton *m_back, *m_on, *m_first, *m_save, *m_print;
    QLabel *m_page, *m_said;
    QPrintPreviewWidget* m_preview;
    QScrollBar* m_scroll = nullptr;
    std::unique_ptr<QPrinter> m_printer;
};

}  // namespace taut::app
