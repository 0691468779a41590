// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>
#include <QWidget>

#include "app/sessions/asker.h"
#include "core/history/drift.h"
#include "core/report/report.h"

namespace taut::app {

class ControlView;
class Narrowing;
class PickList;
class ReportPane;
class RowList;

/// Which readings move away from where they were, since when, and what changed then: what moved most first, the chosen
/// one as a chart whose points open their runs, and as a sheet.
class DriftPage : public QWidget {
    Q_OBJECT

public:
    explicit DriftPage(Session* session, QWidget* parent = nullptr);
    /// Asks the logbook again.
    void refill();

signals:
    void runWanted(const QString& run);

protected:
    void showEvent(QShowEvent* event) override;

private:
    /// What the list holds: a reading of a press, and how it is followed.
    struct Item {
        history::Watched watched;
        QString name;
    };
    void showList(std::vector<Item> items);
    void askSeries();
    void showSeries(const history::Drift& drift, report::Report report, UnitSystem units, report::ControlFigure figure);
    void tell(std::size_t dot);
    void openChosen();
    void savePicture();
    [[nodiscard]] const Item* chosen() const;
    Session* m_session;
    Asker m_listAsker, m_seriesAsker;
    Narrowing* m_narrow;
    PickList *m_rules, *m_measure;
    RowList* m_list;
    QStackedWidget* m_right;
    ControlView* m_chart;
    ReportPane* m_paper;
    QLabel *m_only, *m_name, *m_moved, *m_point;
    QPushButton *m_choose, *m_open, *m_sheet, *m_chartAgain, *m_picture;
    std::vector<Item> m_items;
    std::optional<history::Drift> m_drift;
    UnitSystem m_units{};
};

}  // namespace taut::app
