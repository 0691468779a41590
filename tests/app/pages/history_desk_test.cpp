// SPDX-License-Identifier: GPL-3.0-or-later
// The supervisor's desk over a made history: what drifts, where the time goes, a week, what waits.
#include <catch2/catch.hpp>

#include <algorithm>

#include <QAbstractButton>
#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

#include "app/pages/history/drift_page.h"
#include "app/pages/history/narrowing.h"
#include "app/pages/history/time_page.h"
#include "app/pages/history/waiting_page.h"
#include "app/pages/history/week_page.h"
#include "app/print/report_pane.h"
#include "app/sessions/asker.h"
#include "app/widgets/control_view.h"
#include "app/widgets/controls.h"
#include "app/widgets/row_list.h"
#include "app/widgets/secret_line.h"
#include "core/units/plain.h"
#include "tests/app/pages/made_desk.h"
#include "tests/app/said.h"

using namespace taut;
using namespace taut::app;
using namespace taut::app::shop;

namespace {

bool hasReport(const QWidget* page)
{
    const auto* pane = page->findChild<ReportPane*>();
    return pane != nullptr && pane->report().has_value();
}

}  // namespace

TEST_CASE("the brake that drifts comes first, says since when, and its points open their runs")
{
    Desk d;
    auto* page = d.show<DriftPage>("deskDrift");
    auto* list = page->findChild<RowList*>(QStringLiteral("series"));
    auto* moved = page->findChild<QLabel*>(QStringLiteral("moved"));
    REQUIRE(list);
    REQUIRE(moved);
    until([&] { return list->count() > 0 && !moved->text().isEmpty(); }, "the readings are looked through");
    CHECK(list->chosen() == QStringLiteral("north\ntension.unwind.setting"));
    CHECK(moved->text().contains(QStringLiteral("higher")));

    auto* chart = page->findChild<ControlView*>();
    REQUIRE(chart);
    REQUIRE(chart->chosen());
    REQUIRE(chart->figure().since);
    CHECK(*chart->chosen() == *chart->figure().since);
    QSignalSpy wanted(page, &DriftPage::runWanted);
    QTest::keyClick(chart, Qt::Key_Right);
    CHECK(*chart->chosen() == *chart->figure().since + 1);
    const QString point = page->findChild<QLabel*>(QStringLiteral("point"))->text();
    QTest::keyClick(chart, Qt::Key_Return);
    REQUIRE(wanted.count() == 1);
    CHECK(point.contains(wanted.front().front().toString()));
    // The run is open among the runs.
    CHECK(d.desk.findChild<QPushButton*>(QStringLiteral("deskRuns"))->isChecked());
    const auto* pane = d.desk.runs()->findChild<ReportPane*>();
    REQUIRE(pane->report());
    CHECK(QString::fromStdString(pane->report()->runId) == wanted.front().front().toString());
}

TEST_CASE("a chart has the readings that its line in the list was told from, whatever narrows the list")
{
    Desk d;
    auto* page = d.show<DriftPage>("deskDrift");
    auto* list = page->findChild<RowList*>(QStringLiteral("series"));
    auto* chart = page->findChild<ControlView*>();
    REQUIRE(list);
    REQUIRE(chart);
    const auto same = [&] {
        const auto* line = list->currentItem();
        if (line == nullptr || chart->figure().phases.empty()) return false;
        const auto& last = chart->figure().phases.back();
        return line->text().contains(QStringLiteral("%1 readings").arg(last.end - last.begin));
    };
    until([&] { return list->count() > 0 && !chart->figure().dots.empty(); }, "the readings are looked through");
    CHECK(same());
    const std::size_t all = chart->figure().dots.size();
    const auto newest = d.session.reader()->runs({}, {});
    REQUIRE(newest);
    Narrowing::Choice choice;
    choice.job = QString::fromStdString(newest->rows.front().job);
    auto* only = page->findChild<QLabel*>(QStringLiteral("only"));
    REQUIRE(only);
    CHECK_FALSE(only->isVisible());
    page->findChild<Narrowing*>()->choose(choice);
    until([&] { return chart->figure().dots.size() < all && same(); }, "the chart has the readings of that job");
    // And whoever sees the list, the chart or its sheet is told so.
    CHECK(only->text().contains(choice.job));
    CHECK(only->isVisible());
    CHECK(test::said(*page).contains(QStringLiteral("only ") + choice.job));
    const auto& sheet = page->findChild<ReportPane*>()->report();
    REQUIRE(sheet);
    CHECK(plain(sheet->subtitle).find("only " + choice.job.toStdString()) != std::string::npos);
    // How far back is not asked: what is now is held against where it began.
    CHECK_FALSE(page->findChild<PickList*>(QStringLiteral("since"))->isVisibleTo(page));
}

TEST_CASE("the page in front is the one whose name is lit, also where nobody clicked it")
{
    Desk d;
    auto* drift = d.desk.findChild<QPushButton*>(QStringLiteral("deskDrift"));
    REQUIRE(drift);
    drift->setChecked(true);
    CHECK(d.desk.findChild<DriftPage*>()->isVisible());
    CHECK_FALSE(d.desk.findChild<HistoryPage*>()->isVisible());
}

TEST_CASE("a run that does not stand in the list leaves none of it lit")
{
    Desk d;
    HistoryPage* runs = d.desk.runs();
    auto* list = runs->findChild<RowList*>(QStringLiteral("runs"));
    REQUIRE(list);
    until([&] { return !list->chosen().isEmpty() && hasReport(runs); }, "the newest run is open");
    records::RunQuery far;
    far.limit = 200;
    const auto page = d.session.reader()->runs(far, {});
    REQUIRE(page);
    const QString old = QString::fromStdString(page->rows.back().run);
    runs->showRun(old);
    CHECK(list->chosen().isEmpty());
    CHECK(runs->findChild<ReportPane*>()->report()->runId == old.toStdString());
}

TEST_CASE("runs that were abandoned, and open ones, can be chosen by that")
{
    Desk d;
    HistoryPage* runs = d.desk.runs();
    auto* count = runs->findChild<QLabel*>(QStringLiteral("count"));
    REQUIRE(count);
    until([&] { return count->text() == QStringLiteral("400 runs"); }, "the runs are counted");
    records::RunQuery abandoned;
    abandoned.state = "abandoned";
    const auto many = d.session.reader()->count(abandoned, 1000);
    REQUIRE(many);
    REQUIRE(*many > 1);
    PickList* which = nullptr;
    for (PickList* list : runs->findChildren<PickList*>())
        if (list->findText(QStringLiteral("Abandoned")) > 0) which = list;
    REQUIRE(which);
    which->setCurrentIndex(which->findText(QStringLiteral("Abandoned")));
    until([&] { return count->text() == QStringLiteral("%1 runs").arg(*many); },
          "those that were abandoned are listed");
    which->setCurrentIndex(which->findText(QStringLiteral("Open")));
    until([&] { return count->text() == QStringLiteral("0 runs"); }, "none is open");
}

TEST_CASE("times and a week come as sheets that can be printed")
{
    Desk d;
    auto* time = d.show<TimePage>("deskTime");
    until([&] { return hasReport(time); }, "the times are reckoned");
    std::size_t bars = 0;
    for (const report::Section& section : time->findChild<ReportPane*>()->report()->sections)
        if (std::holds_alternative<report::Bars>(section)) ++bars;
    CHECK(bars >= 2);

    auto* week = d.show<WeekPage>("deskWeek");
    until([&] { return hasReport(week); }, "the week is reckoned");
    auto* weeks = week->findChild<RowList*>(QStringLiteral("weeks"));
    REQUIRE(weeks);
    const Text before = week->findChild<ReportPane*>()->report()->subtitle;
    weeks->setCurrentRow(weeks->currentRow() + 3);
    until([&] { return week->findChild<ReportPane*>()->report()->subtitle != before; }, "another week is shown");
}

TEST_CASE("runs are accepted together when each was looked through, and only by somebody who may")
{
    Desk d;
    auto* page = d.show<WaitingPage>("deskWaiting");
    auto* list = page->findChild<RowList*>(QStringLiteral("waiting"));
    auto* accept = page->findChild<QPushButton*>(QStringLiteral("acceptOpened"));
    REQUIRE(list);
    REQUIRE(accept);
    until([&] { return list->count() > 3; }, "what waits is listed");
    CHECK_FALSE(accept->isEnabled());
    signIn(d.session, "p-1");
    page->refill();
    const auto askers = page->findChildren<Asker*>();
    until([&] { return std::none_of(askers.begin(), askers.end(), [](const Asker* a) { return a->busy(); }); },
          "checks and constants are looked through");
    auto* through = page->findChild<QPushButton*>(QStringLiteral("lookedThrough"));
    REQUIRE(through);
    // Looked through one after the other; what is overdue, and what was sent back, stands between them.
    records::RunQuery waits;
    waits.present = records::kWantsReview;
    waits.limit = 1000;
    const auto waiting = d.session.reader()->runs(waits, {});
    REQUIRE(waiting);
    int opened = 0, passed = 0;
    for (int i = 0; i < 60 && opened < 3; ++i) {
        QTest::keyClick(list, Qt::Key_Down);
        const std::string chosen = list->chosen().toStdString();
        if (std::any_of(waiting->rows.begin(), waiting->rows.end(),
                        [&](const records::RunRow& row) { return chosen.ends_with(row.run); }) &&
            passed++ % 2 == 1) {
            // Who only went past it has not looked through it.
            CHECK(accept->isEnabled() == (opened > 0));
            through->click();
            CHECK(through->isChecked());
            ++opened;
        }
    }
    REQUIRE(opened == 3);
    REQUIRE(accept->isEnabled());
    CHECK(accept->text().contains(QStringLiteral("3")));
    through->click();
    CHECK(accept->text().contains(QStringLiteral("2")));
    through->click();
    const auto before = d.session.reader()->wantingReview();
    REQUIRE(before);
    accept->click();
    auto* secret = visible<SecretLine>(*page);
    REQUIRE(secret);
    secret->setText(passphraseOf(d.session, "p-1"));
    auto* sign = called<QAbstractButton>(*page, "Sign the reviews");
    REQUIRE(sign);
    sign->click();
    until([&] { return !d.session.busy() && *d.session.reader()->wantingReview() < *before; },
          "the reviews are signed");
    CHECK(*before - *d.session.reader()->wantingReview() == 3);
}

TEST_CASE("the list of runs narrows down, is counted, and two of its runs stand beside each other")
{
    Desk d;
    HistoryPage* runs = d.desk.runs();
    settled(*runs);
    auto* count = runs->findChild<QLabel*>(QStringLiteral("count"));
    REQUIRE(count);
    until([&] { return count->text() == QStringLiteral("400 runs"); }, "the runs are counted");
    runs->findChild<QPushButton*>(QStringLiteral("narrow"))->click();
    runs->findChild<QAbstractButton*>(QStringLiteral("onlyDeviations"))->click();
    until([&] { return count->text() != QStringLiteral("400 runs"); }, "the list is narrowed");
    runs->findChild<QAbstractButton*>(QStringLiteral("onlyDeviations"))->click();
    until([&] { return count->text() == QStringLiteral("400 runs"); }, "and widened again");
    runs->findChild<QPushButton*>(QStringLiteral("narrow"))->click();

    const auto* pane = runs->findChild<ReportPane*>();
    auto* list = runs->findChild<RowList*>(QStringLiteral("runs"));
    auto* keep = runs->findChild<QPushButton*>(QStringLiteral("keep"));
    auto* compare = runs->findChild<QPushButton*>(QStringLiteral("compare"));
    REQUIRE(keep);
    keep->click();
    CHECK_FALSE(compare->isVisible());
    QTest::keyClick(list, Qt::Key_Down);
    keep->click();
    REQUIRE(compare->isVisible());
    compare->click();
    REQUIRE(pane->report());
    CHECK(pane->report()->runId.empty());
    CHECK(pane->report()->title == Text("Runs beside each other"));
    // Its own sheet comes back with the next choice.
    QTest::keyClick(list, Qt::Key_Down);
    CHECK_FALSE(pane->report()->runId.empty());
    runs->findChild<QPushButton*>(QStringLiteral("best"))->click();
    CHECK(pane->report().has_value());
}
