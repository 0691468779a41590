// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QStackedWidget>
#include <QTimer>
#include <QWidget>

#include "app/pages/history/kept_searches.h"
#include "app/sessions/session.h"
#include "app/widgets/row_list.h"
#include "core/report/report.h"

namespace taut::app {

class AttachmentPanel;
class ListSetup;
class PickList;
class RecordActs;
class ReportPane;

/// Stands before a state in the list of which runs, where what has come of a run since stands alone.
inline const QString kOfState = QStringLiteral("state:");

/// The runs of this logbook, newest first, and the chosen one as its sheet: what is seen here is what is printed.
class HistoryPage : public QWidget {
    Q_OBJECT

public:
    explicit HistoryPage(Session* session, QWidget* parent = nullptr);
    /// Asks the logbook again from the newest run on; how many there are, and the chosen one's sheet, come right after.
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
    void buildSetup();
    void more();
    /// What is asked for, by all that narrows it.
    [[nodiscard]] Search search() const;
    [[nodiscard]] records::RunQuery query() const;
    void keepSearchAs(const QString& name);
    void fillSearches();
    void settleSearches();
    void chooseSearch(const QString& name);
    [[nodiscard]] RowList::Row lineOfRun(const records::RunRow& row) const;
    void sayLines();
    void tellCount();
    void saveList();
    void addRow(const records::RunRow& row);
    void openCurrent();
    void tellPresent(const std::string& runId);
    void showAttachments();
    void say(const QString& sentence);
    void compare(const std::vector<std::string>& runs, const std::string& best);
    void compareWithBest();
    void keep(bool kept);
    void settleKept();
    /// The chosen run as its row says it; nullopt when it is not sealed.
    [[nodiscard]] std::optional<records::RunRow> chosenRow() const;
    Session* m_session;
    QLineEdit* m_filter;
    PickList *m_which, *m_searches;
    ListSetup* m_setup;
    QWidget* m_setupRoom;
    QLabel* m_count;
    RowList* m_list;
    QStackedWidget* m_right;
    RecordActs* m_acts;
    AttachmentPanel* m_attachments;
    ReportPane* m_paper;
    QPushButton *m_choose, *m_more, *m_files, *m_best, *m_keep, *m_compare;
    std::map<std::string, records::RunRow> m_rows;  ///< of the list, by run
    std::vector<std::string> m_kept;                ///< to be compared, in the order in which they were kept
    std::string m_next;
    QTimer m_soon{this};
    /// What follows once the list shows: in events of their own, so that a large store does not hold up the window.
    QTimer m_countSoon{this}, m_openSoon{this};
};

}  // namespace taut::app
